import { readAddress } from "./address";
import type { Page, SheetCell } from "./definition";
import { fillingCells } from "./filling";

/**
 * The pages as a host takes them: no formula that may fill cells stands in merged cells, for a merge
 * blocks a dynamic array, even one of a single value. A text of one line then runs on over the empty
 * cells beside it; one of more lines wraps in its own column, in a row that is as much higher.
 */
export function unmerged(pages: readonly Page[]): Page[] {
  const fills = fillingCells(pages);
  return pages.map((page) => {
    const lines = new Map(page.lines);
    const cells = page.cells.map((cell): SheetCell => {
      const { span = 1, ...rest } = cell;
      if (span === 1 || !fills(cell)) return cell;
      const { row, column } = readAddress(cell.at);
      const given = page.lines.get(row + 1) ?? 1;
      if (given === 1) return { ...rest, runsOver: span };
      const whole = page.widths.slice(column, column + span).reduce((sum, width) => sum + width);
      const needed = Math.ceil((given * whole) / page.widths[column]);
      lines.set(row + 1, Math.max(needed, lines.get(row + 1) ?? 1));
      return { ...rest, runsOver: 1 };
    });
    return { ...page, cells, lines };
  });
}
