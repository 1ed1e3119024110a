import { en } from "../../sheets/books/workshop/words/en";
import { es } from "../../sheets/books/workshop/words/es";
import { formReader } from "../message-reader";
import { translation } from "../translate";
import { cautions } from "./cautions";
import { composed, workbooks } from "./workbooks";

/** The texts of two things of one shape, side by side. */
function pairs(one: unknown, other: unknown): [string, string][] {
  if (typeof one === "string" && typeof other === "string") return [[one, other]];
  if (typeof one !== "object" || one === null) return [];
  return Object.entries(one).flatMap(([key, inner]) =>
    pairs(inner, (other as Record<string, unknown>)[key]),
  );
}

/** The lessons stand in the workbook too, in the words of their page. */
const lessons = Object.fromEntries([
  ...pairs(en.page, es.page),
  ...pairs(en.pictures, es.pictures),
  ...pairs(en.exercises, es.exercises),
  ...pairs(en.lessons, es.lessons),
]);

/** A text of a ready-made workbook, cautions among them, in Spanish. */
export const sayWorkbook = formReader(
  {
    "{n}.  {ask} (Lesson {lesson})": "{n}.  {ask} (Lección {lesson})",
    ...Object.fromEntries(
      // With nothing but places and signs it would be the form of any text.
      pairs(en.exercises, es.exercises).filter(
        ([text]) => text.includes("{") && /[a-z]{3}/.test(text.replace(/\{\w+\}/g, "")),
      ),
    ),
    ...composed,
  },
  (text) =>
    translation(text, workbooks) ?? translation(text, lessons) ?? translation(text, cautions),
);
