import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, rows } from "./cell";
import { atLeast } from "./limits";
import { checked, missing } from "./numbers";

const CATCH = atLeast(0);

/**
 * Reads catches in a range of any shape, in no order: an empty cell is no can and is skipped, a 0 is
 * a can that caught nothing.
 */
export function readCatches(cell: Cell): number[] {
  const catches: number[] = [];
  rows(cell).forEach((row, r) => {
    row.forEach((value, c) => {
      if (!isBlank(value)) {
        catches.push(checked(`catch row ${r + 1} column ${c + 1}`, value, CATCH));
      }
    });
  });
  if (catches.length === 0) throw missing("catch", CATCH, "");
  return catches;
}

/**
 * Reads catches where the place of each can counts: one row or one column, with a number in every
 * cell. None is dropped, since a blank at an end would shift the middle.
 */
export function readCatchesInPlace(cell: Cell): number[] {
  const grid = rows(cell);
  if (grid.length > 1 && grid.some((row) => row.length > 1)) {
    throw new InvalidInput(`catch takes one row or one column; got ${describe(cell)}`);
  }
  const cells = grid.flat();
  if (cells.length === 0) throw missing("catch", CATCH, "");
  return cells.map((value, i) => checked(`catch value ${i + 1}`, value, CATCH));
}
