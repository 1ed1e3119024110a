import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, rows } from "./cell";

/** A spilled table: one header row, unit in each header, plain numbers (or text) below. */
export type Spill = (string | number)[][];

export interface Column {
  readonly header: string;
  readonly unit?: string;
}

export function headerOf(column: Column): string {
  return column.unit === undefined ? column.header : `${column.header} (${column.unit})`;
}

export function spillTable(columns: readonly Column[], body: Spill): Spill {
  return [columns.map(headerOf), ...body];
}

/** Label and value, the unit in the label. */
export function spillPairs(pairs: readonly (readonly [Column, number | string])[]): Spill {
  return pairs.map(([column, value]) => [headerOf(column), value]);
}

/** One column of numbers, without a header. */
export function column(values: readonly number[]): Spill {
  return values.map((value) => [value]);
}

/** What a table argument must look like. */
export interface TableShape {
  /** "two columns, x (ft) and y (ft)": for messages. */
  readonly columns: string;
  /** How many columns it may have; further ones are taken where the last is followed by "or more". */
  readonly widths: readonly number[];
  /** Whether a column more than the widest is passed over, as in a table another function spilled. */
  readonly more?: boolean;
  readonly least: number;
  readonly most: number;
  /** Whether a row of zeros at the end is a blank one: hosts hand blanks over as 0. */
  readonly zeroIsBlank?: boolean;
}

/**
 * The rows of a table of points, heads or ends. Blank rows at its end are dropped, and so is a row
 * of headers at its top, so that what one function spills another takes as it stands.
 */
export function readTable(name: string, cell: Cell, shape: TableShape): Cell[][] {
  const grid = rows(cell);
  const blank = (value: Cell) => isBlank(value) || (shape.zeroIsBlank === true && value === 0);
  let count = grid.length;
  while (count > 0 && grid[count - 1].every(blank)) count--;
  if (count === 0) throw new InvalidInput(`${name} is missing: it must be ${shape.columns}`);
  const width = grid[0].length;
  const widest = Math.max(...shape.widths);
  const fits = shape.widths.includes(width) || (shape.more === true && width > widest);
  if (!fits || grid.some((row) => row.length !== width)) {
    throw new InvalidInput(`${name} must be ${shape.columns}; got ${describe(cell)}`);
  }
  const body = grid.slice(count > 1 && isHeader(grid[0]) ? 1 : 0, count);
  requireRows(name, body.length, shape.least, shape.most);
  return body;
}

export function requireRows(name: string, count: number, least: number, most: number): void {
  if (count < least || count > most) {
    throw new InvalidInput(`${name} must have ${least} to ${most} rows; got ${count}`);
  }
}

/** Whether a row is of headers: words in every cell. A number typed as text is none. */
function isHeader(row: readonly Cell[]): boolean {
  return row.every(
    (cell) => typeof cell === "string" && /[a-z]/i.test(cell) && Number.isNaN(Number(cell)),
  );
}

/** As readTable; no rows where the argument is left out or blank all through. */
export function readOptionalTable(name: string, cell: Cell, shape: TableShape): Cell[][] {
  return isAllBlank(cell) ? [] : readTable(name, cell, shape);
}

/** Left out, or blank all through. */
export function isAllBlank(cell: Cell): boolean {
  return rows(cell).flat().every(isBlank);
}
