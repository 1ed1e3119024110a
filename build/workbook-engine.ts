import type { CellValue } from "../src/formula-text/cell-value";
import type { SheetCell } from "../src/sheets/kit/definition";

export type Value = CellValue;

/** A cell by the index of its page, and by row and column from 0. */
export interface Place {
  readonly page: number;
  readonly row: number;
  readonly column: number;
}

/** What is put into a cell in place of what stands there. */
export interface NewContent {
  readonly place: Place;
  readonly content: Pick<SheetCell, "formula" | "value">;
}

/** Whatever computes a workbook that is open. An error is its code. */
export interface WorkbookEngine {
  value(place: Place): Value;
  /** Why one of our own functions gave the error that the cell shows. */
  message(place: Place): string | undefined;
  /** Computes the workbook as if it had been opened with these. */
  put(contents: readonly NewContent[]): Promise<void>;
  close(): void;
}
