import { excess, shortfall } from "../formulas/criterion";
import { type Measure, rounded } from "./units";

/** What a check gives where nothing is wrong. A formatting rule can test a cell for it. */
export const OK = "OK";

/** One thing a plan is held to. */
export interface Criterion {
  /** "speed", as the sentence begins. */
  readonly what: string;
  readonly value: number;
  readonly bound: number;
  /** What the bound is: "the limit of 5 ft/s". */
  readonly named: string;
  /** What to change. */
  readonly cure: string;
  /** Says the value and the difference; without it the difference is in percent of the bound. */
  readonly measure?: Measure;
}

/** What is wrong where the value may be at most the bound. */
export function tooHigh(criterion: Criterion): string | undefined {
  return complaint(criterion, excess(criterion.value, criterion.bound), "above");
}

/** What is wrong where the value must be at least the bound. */
export function tooLow(criterion: Criterion): string | undefined {
  return complaint(criterion, shortfall(criterion.value, criterion.bound), "below");
}

function complaint(
  { what, value, bound, named, cure, measure }: Criterion,
  difference: number,
  side: string,
): string | undefined {
  if (difference === 0) return undefined;
  return measure === undefined
    ? `${what} is ${rounded((difference / bound) * 100)} % ${side} ${named}: ${cure}`
    : `${what} of ${measure.say(value)} is ${measure.say(difference)} ${side} ${named}: ${cure}`;
}

/** "OK", or all complaints in one sentence. */
export function verdict(...complaints: (string | undefined)[]): string {
  const sentence = complaints.filter((found) => found !== undefined).join("; ");
  return sentence === "" ? OK : `${sentence[0].toUpperCase()}${sentence.slice(1)}.`;
}
