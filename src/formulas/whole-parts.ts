/**
 * How many whole parts there are in a total, for counts of sets, positions and steps.
 *
 * 24 h holds 20 sets of 1.1 h with 0.1 h to move, though 24/(1.1 + 0.1) is 19.999999999999996 in
 * binary numbers: a quotient within a thousand-millionth of a whole number is that number.
 */
const ROUNDING = 1e-9;

/** The nearest whole number where the quotient is one, but for rounding; otherwise undefined. */
export function exactParts(total: number, part: number): number | undefined {
  const quotient = total / part;
  const nearest = Math.round(quotient);
  return Math.abs(quotient - nearest) <= ROUNDING * Math.max(1, quotient) ? nearest : undefined;
}

/** Whole parts that fit into a total. */
export function wholeParts(total: number, part: number): number {
  return exactParts(total, part) ?? Math.floor(total / part);
}

/** Whole parts that it takes to cover a total. */
export function partsToCover(total: number, part: number): number {
  return exactParts(total, part) ?? Math.ceil(total / part);
}
