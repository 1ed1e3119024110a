import { mayFillCells } from "../../formula-text/filling";
import { readRange } from "./address";
import type { Page, SheetCell } from "./definition";

/** Tells the cells of a workbook whose formulas may fill more than their own cell. */
export function fillingCells(pages: readonly Page[]): (cell: SheetCell) => boolean {
  const names = {
    ranges: new Set(
      pages
        .flatMap((page) => page.names ?? [])
        .filter(({ range }) => cellsIn(range) > 1)
        .map(({ name }) => name.toUpperCase()),
    ),
    functions: new Set(
      pages.flatMap((page) => page.functions ?? []).map(({ name }) => name.toUpperCase()),
    ),
  };
  return ({ formula, spill }) =>
    formula !== undefined && (spill !== undefined || mayFillCells(formula, names));
}

function cellsIn(range: string): number {
  const { rows, columns } = readRange(range);
  return rows * columns;
}
