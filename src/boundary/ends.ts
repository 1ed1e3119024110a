import { MOST_RUNS } from "../formulas/field-rows";
import type { NearEnd } from "../formulas/hydrants";
import type { Point } from "../formulas/polygon";
import { type Cell, rows } from "./cell";
import { readPoint } from "./field";
import { MOST_POSITIONS, wholeNumber } from "./limits";
import { checked } from "./numbers";
import { isAllBlank, readTable } from "./rows-of-table";
import { anyLength } from "./units";

/**
 * Near ends of a line: x and y, a row a position; or FIELD.RUNS' table, whose columns begin with
 * position, run, x and y. Any one length unit.
 */
export function readNearEnds(cell: Cell): NearEnd[] {
  const bare = rows(cell)[0]?.length === 2;
  return readTable("ends", cell, {
    columns: "two columns, x and y, or four or more, position, run, x and y",
    widths: [2, 4],
    more: true,
    least: 1,
    most: MOST_RUNS,
    zeroIsBlank: !bare,
  }).map((row, i) => {
    const place = `ends row ${i + 1}`;
    if (bare) return { position: i + 1, run: 1, ...readPoint(anyLength, place, row) };
    return {
      position: checked(`${place} position`, row[0], wholeNumber(1, MOST_POSITIONS)),
      run: checked(`${place} run`, row[1], wholeNumber(1, MOST_RUNS)),
      ...readPoint(anyLength, place, row.slice(2)),
    };
  });
}

/** Hydrants: x and y; or FEEDER.HYDRANTS' table, whose columns begin with hydrant, x and y. */
export function readHydrants(cell: Cell): Point[] {
  const bare = rows(cell)[0]?.length === 2;
  return readTable("hydrants", cell, {
    columns: "two columns, x and y, or three or more, hydrant, x and y",
    widths: [2, 3],
    more: true,
    least: 1,
    most: MOST_RUNS,
    zeroIsBlank: !bare,
  }).map((row, i) => readPoint(anyLength, `hydrants row ${i + 1}`, bare ? row : row.slice(1)));
}

export function readOptionalHydrants(cell: Cell): Point[] {
  return isAllBlank(cell) ? [] : readHydrants(cell);
}
