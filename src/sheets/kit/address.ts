/** Cells by row and column, both from 0, and the A1 text for them. */
export interface Position {
  readonly row: number;
  readonly column: number;
}

export interface Block extends Position {
  readonly rows: number;
  readonly columns: number;
}

const CELL = /^\$?([A-Z]{1,3})\$?([1-9][0-9]*)$/;

export function readAddress(address: string): Position {
  const match = CELL.exec(address.toUpperCase());
  if (match === null) throw new Error(`"${address}" is no cell address`);
  let column = 0;
  for (const letter of match[1]) column = column * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(match[2]) - 1, column: column - 1 };
}

export function readRange(range: string): Block {
  const [from, to = from] = range.split(":").map(readAddress);
  return {
    row: Math.min(from.row, to.row),
    column: Math.min(from.column, to.column),
    rows: Math.abs(to.row - from.row) + 1,
    columns: Math.abs(to.column - from.column) + 1,
  };
}

export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

export function writeAddress({ row, column }: Position): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** Addresses of the cells of a column's range. */
export function cellsOf(range: string): string[] {
  const { row, column, rows } = readRange(range);
  return Array.from({ length: rows }, (_, i) => writeAddress({ row: row + i, column }));
}
