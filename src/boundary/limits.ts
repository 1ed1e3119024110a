/** What an argument allows, in the units of the call. */
export interface Limit {
  readonly low: number;
  readonly high: number;
  /** True where the bound itself is not allowed. */
  readonly lowOpen: boolean;
  readonly whole: boolean;
}

/**
 * No quantity of a field, a pipe or a pump is this large in any unit; above it products of
 * arguments could overflow, so a number beyond is refused by name instead.
 */
export const LARGEST = 1e12;

export const MOST_HEADS = 500;

/** Longest plan a sheet can ask for: it is a row or two a position. */
export const MOST_POSITIONS = 500;

export function above(low: number, high = LARGEST): Limit {
  return { low, high, lowOpen: true, whole: false };
}

export function atLeast(low: number): Limit {
  return { low, high: LARGEST, lowOpen: false, whole: false };
}

export function between(low: number, high: number): Limit {
  return { low, high, lowOpen: false, whole: false };
}

export const anyNumber: Limit = between(-LARGEST, LARGEST);

export const fraction: Limit = between(0, 1);

export function wholeNumber(low: number, high: number): Limit {
  return { low, high, lowOpen: false, whole: true };
}

export const headCount: Limit = wholeNumber(1, MOST_HEADS);

export function admits(limit: Limit, value: number): boolean {
  if (limit.whole && !Number.isInteger(value)) return false;
  return (limit.lowOpen ? value > limit.low : value >= limit.low) && value <= limit.high;
}

/** "4 ft", "12%", and a bare number where there is no unit. */
export function inUnit(value: string, unit: string): string {
  if (unit === "") return value;
  return unit === "%" ? `${value}%` : `${value} ${unit}`;
}

/** "above 0 in", "0 ft or more", "a whole number from 1 to 500". */
export function limitText(limit: Limit, unit = ""): string {
  const withUnit = (value: number) => inUnit(String(value), unit);
  const noHigh = limit.high === LARGEST;
  if (limit.whole) {
    return noHigh
      ? `a whole number, ${limit.low} or more`
      : `a whole number from ${limit.low} to ${limit.high}`;
  }
  if (limit.low === -LARGEST && noHigh) return `a number${unit === "" ? "" : ` in ${unit}`}`;
  if (limit.lowOpen) {
    return noHigh
      ? `above ${withUnit(limit.low)}`
      : `above ${limit.low} and at most ${withUnit(limit.high)}`;
  }
  return noHigh ? `${withUnit(limit.low)} or more` : `from ${limit.low} to ${withUnit(limit.high)}`;
}
