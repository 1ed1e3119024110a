import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, rows, single } from "./cell";

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

/** Reads one required number. */
export function readNumber(name: string, cell: Cell, limit: Limit, unit = ""): number {
  return checked(name, single(name, cell), limit, unit);
}

/**
 * Reads one optional number: undefined when blank. Hosts hand blank cells over as 0, so where 0 is
 * not possible for the argument, 0 is a blank too.
 */
export function readOptionalNumber(
  name: string,
  cell: Cell,
  limit: Limit,
  unit = "",
): number | undefined {
  const value = single(name, cell);
  if (isBlank(value) || (value === 0 && !admits(limit, 0))) return undefined;
  return checked(name, value, limit, unit);
}

/**
 * Reads a row or column of numbers. Blank cells at its end are dropped (0 too, where 0 is not
 * possible: a blank may arrive as 0); a blank between numbers is an error that says which.
 */
export function readNumbers(name: string, cell: Cell, limit: Limit, unit = ""): number[] {
  const grid = rows(cell);
  if (grid.length > 1 && grid.some((row) => row.length > 1)) {
    throw new InvalidInput(`${name} takes one row or one column; got ${describe(cell)}`);
  }
  const cells = grid.length === 1 ? grid[0] : grid.map((row) => row[0]);
  const blank = (value: Cell) => isBlank(value) || (value === 0 && !admits(limit, 0));
  let count = cells.length;
  while (count > 0 && blank(cells[count - 1])) count--;
  if (count === 0) throw missing(name, limit, unit);
  return cells
    .slice(0, count)
    .map((value, i) => checked(count === 1 ? name : `${name} value ${i + 1}`, value, limit, unit));
}

export function missing(name: string, limit: Limit, unit: string): InvalidInput {
  return new InvalidInput(`${name} is missing: it must be ${limitText(limit, unit)}`);
}

/** Checks one cell's value; `name` may carry a place ("inside row 2"). */
export function checked(name: string, value: Cell, limit: Limit, unit = ""): number {
  if (isBlank(value)) throw missing(name, limit, unit);
  if (typeof value !== "number" || !Number.isFinite(value)) {
    const allowed = limitText(limit, unit);
    const kind = allowed.startsWith("a ") ? allowed : `a number, ${allowed}`;
    throw new InvalidInput(`${name} must be ${kind}; got ${describe(value)}`);
  }
  if (!admits(limit, value)) {
    const allowed =
      Math.abs(value) > LARGEST ? `at most ${LARGEST} either way` : limitText(limit, unit);
    throw new InvalidInput(`${name} must be ${allowed}; got ${value}`);
  }
  return value;
}
