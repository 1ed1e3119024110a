import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, rows, single } from "./cell";
import { admits, LARGEST, type Limit, limitText } from "./limits";

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
