import { spanishEdition, textsToSay } from "../../build/editions";
import { sources } from "../../src/words/es/help/sources";
import { cautions } from "../../src/cautions";
import { builtReference } from "../support/built";

const { functions } = builtReference();
const edition = spanishEdition(functions);
const texts = textsToSay(functions);

/** Numbers, quoted entries, names of functions and codes of errors are the same in any language. */
const facts = (text: string) =>
  (text.match(/\d[\d.,]*\d|\d|"[^"]*"|[A-Z]+\.[A-Z0-9]+|#VALUE!|#N\/A/g) ?? []).sort().join(" ");

test("what the help says is said in Spanish; a text that is new or reworded may wait for its own", () => {
  const unsaid = texts.filter(([, said]) => said === undefined).map(([text]) => text);
  expect(texts.length).toBeGreaterThan(1000);
  // A number of texts, not a list: so that a new function needs no second language to land.
  const many = texts.length / 20;
  expect(unsaid.length > many ? unsaid : []).toEqual([]);
});

test("every caution is said in Spanish: where work can hurt someone, none may wait", () => {
  const points = (edition: typeof cautions) =>
    Object.values(edition).flatMap(({ title, brief, points }) => [title, brief, ...points]);
  const same = points(edition.cautions).filter((point) => points(cautions).includes(point));
  expect(same).toEqual([]);
});

test("no number, choice, name of a function or code of an error differs between the languages", () => {
  // A sign for a tap says it in the language of those who drink.
  const translatedQuote = /"not for drinking"/;
  const differing = texts.filter(
    ([text, said = text]) => facts(text) !== facts(said) && !translatedQuote.test(text),
  );
  expect(differing).toEqual([]);
});

test("sources say in Spanish what is not a title", () => {
  const english =
    /\b(from memory|common practice|read in|after|friction|water|equations?|chapters?|Arithmetic|Continuity|Plane)\b/;
  expect(edition.functions.filter(({ source }) => english.test(source))).toEqual([]);
  const used = new Set(functions.map(({ source }) => source));
  expect(Object.keys(sources).filter((source) => !used.has(source))).toEqual([]);
});

test("what a call and a link need stays as it is", () => {
  functions.forEach((help, i) => {
    const spanish = edition.functions[i];
    for (const key of ["id", "name", "family", "example", "spills", "cautions"] as const)
      expect(spanish[key]).toEqual(help[key]);
    expect(spanish.arguments.map(({ name }) => name)).toEqual(
      help.arguments.map(({ name }) => name),
    );
    expect(spanish.arguments.map(({ choices }) => choices?.map(({ value }) => value))).toEqual(
      help.arguments.map(({ choices }) => choices?.map(({ value }) => value)),
    );
    expect(spanish.page).toBe(`es/${help.page}`);
  });
});
