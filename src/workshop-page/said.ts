import { screenSaid, writesComma } from "../words/spoken";
import { type Exercise, filled, inSystem } from "../sheets/books/workshop/exercises";
import type { InUnits, WorkshopWords } from "../sheets/books/workshop/words/shape";
import type { UnitSystem } from "../sheets/kit/definition";

/** Numbers inside sentences are written as those beside them: "0,65" where the reader writes a comma. */
export function withReadersNumbers(text: string, comma = writesComma()): string {
  return comma ? text.replace(/(\d)\.(?=\d)/g, "$1,") : text;
}

/** The words of a lesson, as the reader writes numbers; a source keeps the names of its parts. */
export function asRead(words: WorkshopWords, comma = writesComma()): WorkshopWords {
  const read = (value: unknown, key: string): unknown => {
    if (typeof value === "string")
      return key === "source" ? value : withReadersNumbers(value, comma);
    if (Array.isArray(value)) return value.map((one) => read(one, key));
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, read(one, name)]));
  };
  return read(words, "") as WorkshopWords;
}

/** A sentence of an exercise with its numbers in it. */
export function exerciseText(said: InUnits, exercise: Exercise, system: UnitSystem): string {
  return withReadersNumbers(filled(inSystem(said, system), exercise));
}

/** "hours" is a word; the other units are signs. */
export const unitText = ({ unit }: Exercise): string => screenSaid(unit);
