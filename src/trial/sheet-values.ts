import type { CallError, CellValue } from "../screen/host";

/** What a cell shows: a value, or an error with the sentence behind its code. */
export interface ShownCell {
  readonly value: CellValue;
  readonly error?: CallError;
  /** Not worked out yet. */
  readonly isPending?: true;
}

export interface CellPlace {
  /** Name of the worksheet. */
  readonly page: string;
  readonly row: number;
  readonly column: number;
}

/**
 * The sheet's values, whoever computes them: the first view's own reckoning until the grid has
 * loaded, the grid from then on.
 */
export interface SheetValues {
  read(place: CellPlace): ShownCell;
  write(place: CellPlace, value: CellValue): void;
  /** Rows of values from a cell on, as one step that Undo takes back whole. */
  writeBlock(place: CellPlace, rows: readonly (readonly CellValue[])[]): void;
  /** Called after every change, when all that follows from it has been computed. */
  onSettled(listener: () => void): void;
}

/** Key of a value that someone typed over the definition's. */
export function typedKey(page: string, at: string): string {
  return `${page}!${at}`;
}
