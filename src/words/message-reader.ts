import type { Messages } from "./es/messages";

export interface MessageTables {
  readonly errors: Messages;
  readonly phrases: Messages;
  readonly labels: Messages;
  readonly verdicts: Messages;
}

export interface MessageReader {
  /** The message of a cell's error; as it came where it is not known. */
  error(message: string): string;
  /** A text that a function gives: a header, a label, a verdict. */
  said(text: string): string;
}

interface Pattern {
  readonly form: RegExp;
  readonly places: readonly string[];
  readonly said: string;
}

const PLACE = /\{(\w+)\}/g;

/**
 * Puts what the functions say in English into another language: the text is found by its form, and
 * what stands in its places is put over likewise.
 */
export function messageReader(tables: MessageTables): MessageReader {
  const errors = patterns(tables.errors);
  const phrases = patterns(tables.phrases);
  const labels = patterns(tables.labels);
  const verdicts = patterns(tables.verdicts);

  const phrase = (text: string): string => cell(text) ?? put(text, phrases, inPhrase) ?? text;
  const label = (text: string): string => put(text, labels, inLabel) ?? text;
  const inLabel = (place: string, text: string) => (place === "label" ? label(text) : text);
  const inPhrase = (place: string, text: string) =>
    place.startsWith("label") ? label(text) : phrase(text);
  const error = (text: string): string =>
    put(text, errors, (place, inner) =>
      place.startsWith("label") ? label(inner) : place === "message" ? error(inner) : phrase(inner),
    ) ?? text;
  const verdict = (text: string): string | undefined =>
    put(text, verdicts, (_, inner) => verdict(inner) ?? inner);

  /** "tubing row 3 number of segments": the argument's name stays, its column is a label. */
  const cell = (text: string): string | undefined => {
    const found = /^(.+?) row (\d+)(?: (.+))?$/.exec(text);
    if (found === null) return undefined;
    const [, name, row, column] = found;
    return `${name} fila ${row}${column === undefined ? "" : `, ${label(column)}`}`;
  };

  /** "2 × tubing, 63 mm; 4 × stand": items that a sentence counts. */
  const counted = (text: string): string =>
    text.replace(
      /(\d+ × )(.+?)(?=; |\. |$)/g,
      (_, count: string, item: string) => count + label(item),
    );

  return { error, said: (text) => counted(verdict(text) ?? label(text)) };
}

/**
 * Puts a text over whole where `known` has it, else by its form, and what stands in its places
 * too; a place whose name begins with "own" holds the user's own words, which stay.
 */
export function formReader(
  forms: Messages,
  known: (text: string) => string | undefined,
): (text: string) => string {
  const candidates = patterns(forms);
  const say = (text: string): string =>
    known(text) ??
    put(text, candidates, (place, inner) => (place.startsWith("own") ? inner : say(inner))) ??
    text;
  return say;
}

function patterns(messages: Messages): readonly Pattern[] {
  return Object.entries(messages).map(([english, said]) => ({
    form: new RegExp(
      `^${english
        .split(PLACE)
        .map((part, i) => (i % 2 === 0 ? part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&") : "(.+?)"))
        .join("")}$`,
      "s",
    ),
    places: [...english.matchAll(PLACE)].map(([, place]) => place),
    said,
  }));
}

function put(
  text: string,
  candidates: readonly Pattern[],
  inPlace: (place: string, text: string) => string,
): string | undefined {
  for (const { form, places, said } of candidates) {
    const found = form.exec(text);
    if (found === null) continue;
    const filled = new Map(places.map((place, i) => [place, inPlace(place, found[i + 1])]));
    return said.replace(PLACE, (_, place: string) => filled.get(place) ?? "");
  }
  return undefined;
}
