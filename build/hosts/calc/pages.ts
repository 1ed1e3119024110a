import { tokens } from "../../../src/formula-text/dialect";
import { readAddress, writeAddress } from "../../../src/sheets/kit/address";
import type { Page, SheetCell, Spilling } from "../../../src/sheets/kit/definition";
import type { ShownValues } from "../../../src/sheets/kit/definition";
import { movedOff, withCallsReplaced } from "../formula-parts";
import { comparable, type Laid, sizesOfNames, TablesPage } from "./tables";

/**
 * A workbook's pages as this program can have them: nothing spills, and there is no FILTER, no
 * HSTACK and no name made with LAMBDA. A table stands on a page of tables, and the cells that it
 * would fill read it there. `shown` is what the cells show in the add-in.
 */
export function calcPages(pages: readonly Page[], shown: ShownValues): Page[] {
  const kept = pages.filter(({ functions = [] }) => functions.length === 0);
  const tables = new TablesPage(sizesOfNames(kept));
  const changed = kept.map((page) => ({
    ...page,
    cells: page.cells.flatMap((cell) => changedCell(cell, page, tables, shown)),
  }));
  const behind = tables.page();
  return behind === undefined ? changed : [...changed, behind];
}

function changedCell(
  cell: SheetCell,
  page: Page,
  tables: TablesPage,
  shown: ShownValues,
): SheetCell[] {
  const { formula, spill } = cell;
  if (formula === undefined) return [cell];
  const text = shownFormula(formula);
  if (text !== undefined) {
    const spread = page.cells.find(({ at, spill: fills }) => at === text && fills !== undefined);
    if (spread === undefined) return [{ ...cell, formula: `=${withoutBraces(text)}` }];
    // What stands in that cell reads the page of tables.
    return [{ ...cell, formula: undefined, value: `'${spread.formula}` }];
  }
  if (spill === undefined) return [{ ...cell, formula: rewritten(formula, page, tables) }];
  const moved = movedOff(page.name, tokens(formula.slice(1)));
  const room = { rows: spill.reserved, columns: spill.formats.length };
  const table = tables.spread(rewritten(moved, page, tables, spill), room, spill.headed);
  return spilledCells(cell, spill, table, page, shown);
}

/** The cells that a spilled table fills in the add-in, each reading its own place of the table. */
function spilledCells(
  first: SheetCell,
  spill: Spilling,
  table: Laid,
  page: Page,
  shown: ShownValues,
): SheetCell[] {
  const { row, column } = readAddress(first.at);
  const below = spill.headed ? 1 : 0;
  const cells: SheetCell[] = [];
  for (let across = 0; across < spill.formats.length; across++) {
    const holdsText = typeof shown.value(page.name, row + below, column + across) === "string";
    for (let down = 0; down < spill.reserved; down++) {
      const isHeader = spill.headed && down === 0 && across < spill.columns;
      const place = {
        role: isHeader ? ("header" as const) : holdsText ? ("label" as const) : first.role,
        ...(!isHeader && { format: spill.formats[across] }),
      };
      if (down === 0 && across === 0)
        cells.push({
          ...first,
          spill: undefined,
          ...place,
          formula: `=${comparable(table.first)}`,
        });
      else {
        const beyond = `OR(${down + 1}>${table.filledRows}, ${across + 1}>${table.filledColumns})`;
        cells.push({
          at: writeAddress({ row: row + down, column: column + across }),
          ...place,
          formula: `=IF(${beyond}, "", ${comparable(table.cell(down, across))})`,
        });
      }
    }
  }
  return cells;
}

function rewritten(formula: string, page: Page, tables: TablesPage, spill?: Spilling): string {
  return withCallsReplaced(formula, (name, parts) => {
    if (name === "HSTACK")
      return tables.beside(
        parts,
        parts.map((part) => named(part, tables)),
      ).room;
    if (name !== "FILTER") return undefined;
    const [given, condition] = parts.map((part) => movedOff(page.name, tokens(part)));
    const size = tables.sizeOf(given);
    if (size !== undefined) return tables.rowsWhere(given, size, undefined, condition).filled;
    if (spill === undefined) throw new Error(`${given} has no size to be filtered by: ${formula}`);
    // A row more: one is left out.
    const room = { rows: spill.reserved + 1, columns: spill.formats.length };
    const source = tables.spread(comparable(given), room, spill.headed);
    return tables.rowsWhere(
      source.room,
      room,
      source.filledRows,
      condition.split(given).join(source.room),
    ).filled;
  });
}

function named(part: string, tables: TablesPage) {
  const size = tables.sizeOf(part);
  if (size === undefined) throw new Error(`${part} is not the name of a range`);
  return size;
}

/** Which cell's formula this one shows. */
function shownFormula(formula: string): string | undefined {
  return /^=FORMULATEXT\((\w+)\)$/.exec(formula)?.[1];
}

/** The program shows the formula of an array in braces, and nearly all that call ours are arrays. */
function withoutBraces(at: string): string {
  const text = `FORMULATEXT(${at})`;
  return `IF(LEFT(${text}, 1)="{", MID(${text}, 2, LEN(${text})-2), ${text})`;
}
