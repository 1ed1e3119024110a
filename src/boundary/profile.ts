import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, rows } from "./cell";
import { anyNumber } from "./limits";
import type { Units } from "./units";

/** The ground along a line, by points, SI. */
export interface Profile {
  readonly distance: number[];
  readonly elevation: number[];
  /** How many straight runs lie between the points. */
  readonly runs: number;
}

/**
 * Reads the ground along a line. Distances rise, so a blank (or a 0, as hosts hand blanks over)
 * after the first point ends them, and they give the count; a height may be 0 anywhere.
 */
export function readProfile(u: Units, distance: Cell, elevation: Cell): Profile {
  const blank = (value: Cell) => isBlank(value) || value === 0;
  const distanceCells = inOneLine("distance", distance);
  let count = distanceCells.length;
  while (count > 1 && blank(distanceCells[count - 1])) count--;
  const along = distanceCells
    .slice(0, count)
    .map((cell, i) => u.length.readAt(`distance value ${i + 1}`, cell, anyNumber));
  if (count < 2) throw new InvalidInput("distance must have two values or more; got one");
  for (let i = 1; i < count; i++) {
    if (along[i] <= along[i - 1]) {
      throw new InvalidInput(
        `distance must rise from point to point; value ${i + 1} is ${u.length.say(along[i])} after ${u.length.say(along[i - 1])}`,
      );
    }
  }

  const heightCells = inOneLine("elevation", elevation);
  let heights = heightCells.length;
  while (heights > count && blank(heightCells[heights - 1])) heights--;
  if (heights !== count) {
    throw new InvalidInput(
      `distance and elevation must have the same number of values; got ${count} and ${heights}`,
    );
  }
  return {
    distance: along,
    elevation: heightCells
      .slice(0, count)
      .map((cell, i) => u.length.readAt(`elevation value ${i + 1}`, cell, anyNumber)),
    runs: count - 1,
  };
}

/** The cells of one row or one column. */
function inOneLine(name: string, cell: Cell): Cell[] {
  const grid = rows(cell);
  if (grid.length === 0) throw new InvalidInput(`${name} is missing: it must be a row or a column`);
  if (grid.length === 1) return grid[0];
  if (grid.some((row) => row.length !== 1)) {
    throw new InvalidInput(`${name} takes one row or one column; got ${describe(cell)}`);
  }
  return grid.map((row) => row[0]);
}
