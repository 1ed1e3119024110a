import { en } from "../../src/sheets/books/workshop/words/en";
import { es } from "../../src/sheets/books/workshop/words/es";

/** Every text under its key. */
function texts(words: unknown, key = ""): [string, string][] {
  if (typeof words === "string") return [[key, words]];
  if (typeof words !== "object" || words === null) return [[key, String(words)]];
  // A text for both systems and one for each say the same numbers.
  return Object.entries(words).flatMap(([name, inner]) => texts(inner, `${key}.${name}`));
}

const english = new Map(texts(en));
const spanish = new Map(texts(es));
const facts = (text: string) =>
  (text.match(/\{\w+\}|\d[\d.,]*\d|\d|[A-Z]+\.[A-Z]+|[[\]▽]/g) ?? []).sort().join(" ");

test("the workshop has every text in Spanish, and no other", () => {
  expect([...spanish.keys()]).toEqual([...english.keys()]);
});

test("with the same places, numbers, blanks and functions", () => {
  const differing = [...english]
    .filter(([key, text]) => facts(text) !== facts(spanish.get(key) ?? ""))
    .map(([key, text]) => [key, text, spanish.get(key)]);
  expect(differing).toEqual([]);
});

test("and no text left in English", () => {
  const same = [...english].filter(
    ([key, text]) => / [a-z]{3,} /.test(text) && spanish.get(key) === text,
  );
  expect(same).toEqual([]);
});
