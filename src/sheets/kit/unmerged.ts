import { readAddress, readRange, writeAddress } from "./address";
import type { Page, SheetCell } from "./definition";
import { fillingCells } from "./filling";

/** Characters. */
const WORKING_WIDTH = 28;

/**
 * The pages as a host takes them: no formula that may fill cells stands in merged cells, for a merge
 * blocks a dynamic array, even one of a single value. What takes one line runs on over the empty
 * cells beside it. What wraps is worked out in a cell at the right of the page, outside of what is
 * printed, and the merged cells show that one.
 */
export function unmerged(pages: readonly Page[]): Page[] {
  const fills = fillingCells(pages);
  return pages.map((page) => {
    const beside = page.widths.length;
    const working: SheetCell[] = [];
    const taken = new Set<number>();
    const cells = page.cells.map((cell): SheetCell => {
      const { span = 1, ...rest } = cell;
      if (span === 1 || !fills(cell)) return cell;
      const { row } = readAddress(cell.at);
      if ((page.lines.get(row + 1) ?? 1) === 1) return { ...rest, runsOver: span };
      let column = beside;
      while (taken.has(row * 1000 + column)) column++;
      taken.add(row * 1000 + column);
      const at = writeAddress({ row, column });
      working.push({ at, role: "working", formula: cell.formula, shownIn: cell.at });
      return { ...cell, formula: `=${at}` };
    });
    if (working.length === 0) return { ...page, cells };
    const last = Math.max(...working.map(({ at }) => readAddress(at).column));
    return {
      ...page,
      cells: [...cells, ...working],
      widths: [...page.widths, ...Array.from({ length: last - beside + 1 }, () => WORKING_WIDTH)],
    };
  });
}

/** The columns that are printed; what is worked out beside them is not. */
export function printedColumns({ printArea, widths }: Page): readonly number[] {
  return widths.slice(0, readRange(printArea).columns);
}
