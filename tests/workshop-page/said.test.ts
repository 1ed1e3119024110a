import { en } from "../../src/sheets/books/workshop/words/en";
import { es } from "../../src/sheets/books/workshop/words/es";
import { asRead, withReadersNumbers } from "../../src/workshop-page/said";

test("a decimal point becomes a comma where the reader writes one, and nowhere else", () => {
  expect(withReadersNumbers("0.65 en calma, 0.60 hasta 5 mph.", true)).toBe(
    "0,65 en calma, 0,60 hasta 5 mph.",
  );
  expect(withReadersNumbers("0.65 en calma", false)).toBe("0.65 en calma");
});

test("all numbers of the lessons are written so; the number of a standard stays", () => {
  const read = asRead(es, true);
  expect(read.lessons[0].source).toContain("S436.1");
  const rest = JSON.stringify({
    ...read,
    lessons: read.lessons.map((all) => ({ ...all, source: "" })),
  });
  expect(rest).not.toMatch(/\d\.\d/);
  expect(read.lessons[4].trainer.answer).toContain("3,61");
  expect(asRead(en, false)).toEqual(en);
});
