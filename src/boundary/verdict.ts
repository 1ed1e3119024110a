import { type Measure, rounded } from "./units";

/** What a check gives where nothing is wrong. A formatting rule can test a cell for it. */
export const OK = "OK";

/** One thing a plan is held to. */
export interface Criterion {
  /** "velocity is", as the sentence begins; the value follows. */
  readonly fact: string;
  readonly value: number;
  readonly bound: number;
  /** What the bound is, from its text: "the limit is 5 ft/s". */
  readonly limit: (bound: string) => string;
  /** What to change, the verb first. */
  readonly cure: string;
  /** Says both numbers; without it both are in one unit that the call does not know. */
  readonly measure?: Measure;
}

/** What is wrong where the value may be at most the bound. */
export function tooHigh(criterion: Criterion): string | undefined {
  return criterion.value > criterion.bound ? complaint(criterion) : undefined;
}

/** What is wrong where the value must be at least the bound. */
export function tooLow(criterion: Criterion): string | undefined {
  return criterion.value < criterion.bound ? complaint(criterion) : undefined;
}

/**
 * Both numbers in one unit. A value that shows as its bound keeps it: nobody can act on "5 ft/s; the
 * limit is 5 ft/s", and no number here is known to a fourth digit.
 */
function complaint({ fact, value, bound, limit, cure, measure }: Criterion): string | undefined {
  const say = (number: number) => (measure === undefined ? rounded(number) : measure.say(number));
  if (say(value) === say(bound)) return undefined;
  return sentences(`${fact} ${say(value)}; ${limit(say(bound))}`, cure);
}

/** What is wrong and what to change, a sentence each. */
export function sentences(wrong: string, cure: string): string {
  const capital = (text: string) => `${text[0].toUpperCase()}${text.slice(1)}.`;
  return `${capital(wrong)} ${capital(cure)}`;
}

/** "OK", or all complaints one after the other. */
export function verdict(...complaints: (string | undefined)[]): string {
  const found = complaints.filter((complaint) => complaint !== undefined).join(" ");
  return found === "" ? OK : found;
}
