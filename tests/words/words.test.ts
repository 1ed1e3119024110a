import { languageFor } from "../../src/words/language";
import { paneWords, referenceWords, supportWords } from "../../src/words/words";

const screens: Record<string, { en: unknown; es: unknown }> = {
  pane: paneWords,
  reference: referenceWords,
  support: supportWords,
};

/** Every text under its key; a text with places is filled with marks, which must all come out. */
function texts(words: unknown, key = ""): [string, string][] {
  if (typeof words === "string") return [[key, words]];
  if (typeof words === "function") return [[key, filled(words as (...given: unknown[]) => string)]];
  return Object.entries(words as object).flatMap(([name, inner]) => texts(inner, `${key}.${name}`));
}

/** A mark that reads as a text, a number and a list alike. */
function filled(write: (...given: unknown[]) => string): string {
  const marks = Array.from({ length: write.length }, (_, place) => 700 + place);
  try {
    return write(...marks);
  } catch {
    return write(...marks.map((mark) => [String(mark)]));
  }
}

const places = (text: string) => [...new Set(text.match(/70\d/g) ?? [])].sort();

describe.each(Object.keys(screens))("%s", (screen) => {
  const english = new Map(texts(screens[screen].en));
  const spanish = new Map(texts(screens[screen].es));

  test("has every key in Spanish, and no other", () => {
    expect([...spanish.keys()].sort()).toEqual([...english.keys()].sort());
  });

  test("has the same places to fill in both", () => {
    const of = (words: Map<string, string>) =>
      [...words].map(([key, text]) => [key, places(text)]).sort();
    expect(of(spanish)).toEqual(of(english));
  });

  test("leaves no Spanish text empty", () => {
    expect([...spanish].filter(([, text]) => text.trim() === "")).toEqual([]);
  });
});

test("the language is what was chosen once, else the reader's first that there is, else English", () => {
  expect(languageFor(["es-MX", "en"])).toBe("es");
  expect(languageFor(["pt-BR", "es-419", "en"])).toBe("es");
  expect(languageFor(["en-US", "es"])).toBe("en");
  expect(languageFor(["fr"])).toBe("en");
  expect(languageFor([])).toBe("en");
  expect(languageFor(["es"], "en")).toBe("en");
  expect(languageFor(["en"], "es")).toBe("es");
  expect(languageFor(["es"], "xx")).toBe("es");
});
