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
  /** A share that is said in percent beside its limit. */
  readonly fraction?: true;
}

/** What is wrong where the value may be at most the bound. */
export function tooHigh(criterion: Criterion): string | undefined {
  return complaint(criterion, excess(criterion.value, criterion.bound), "above");
}

/** What is wrong where the value must be at least the bound. */
export function tooLow(criterion: Criterion): string | undefined {
  return complaint(criterion, shortfall(criterion.value, criterion.bound), "below");
}

function complaint(criterion: Criterion, difference: number, side: string): string | undefined {
  if (difference === 0 || readsAlike(criterion)) return undefined;
  const { what, value, bound, named, cure, measure, fraction } = criterion;
  if (fraction === true) return `${what} by ${inPercent(value)}; ${named}: ${cure}`;
  return measure === undefined
    ? `${what} is ${inPercent(difference / bound)} ${side} ${named}: ${cure}`
    : `${what} of ${measure.say(value)} is ${measure.say(difference)} ${side} ${named}: ${cure}`;
}

/** A value that is said as the bound is said passes: nobody can see the difference, or mend it. */
function readsAlike({ value, bound, measure }: Criterion): boolean {
  return measure === undefined
    ? Math.abs(value - bound) < SHOWN * Math.abs(bound)
    : measure.say(value) === measure.say(bound);
}

/** Half of the last digit of a percentage as the sheets show it. */
const SHOWN = 0.0005;

/** "25.8%" of 0.258. */
export function inPercent(fraction: number): string {
  return `${rounded(fraction * 100)}%`;
}

/** "OK", or all complaints in one sentence. */
export function verdict(...complaints: (string | undefined)[]): string {
  const sentence = complaints.filter((found) => found !== undefined).join("; ");
  return sentence === "" ? OK : `${sentence[0].toUpperCase()}${sentence.slice(1)}.`;
}
