import { rename, toScreen } from "../formula-text/dialect";
import type { NamedRange, Page, SheetCell } from "../sheets/kit/definition";
import { columnLetters, readAddress, writeAddress } from "../sheets/kit/address";
import { BODY_SIZE, looks, palette } from "../sheets/kit/look";
import type { PreparedCell, PreparedLook, PreparedSheet } from "./workbook";

/** What the open workbook already holds. */
export interface Taken {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

/** Longest name of a worksheet that hosts allow. */
const LONGEST_SHEET_NAME = 31;

/**
 * Turns a ready-made sheet's pages into worksheets of the open workbook. Nothing there is touched:
 * a worksheet or a name that the workbook already has gets a number, and every formula follows.
 */
export function prepareSheets(
  pages: readonly Page[],
  taken: Taken,
  namespace: string,
): PreparedSheet[] {
  const sheets = freeNames(
    pages.map((page) => page.name),
    taken.sheets,
    (name, number) => {
      const suffix = ` (${number})`;
      return name.slice(0, LONGEST_SHEET_NAME - suffix.length) + suffix;
    },
  );
  const names = freeNames(
    pages.flatMap((page) => [...namesOf(page), ...(page.functions ?? [])].map(({ name }) => name)),
    taken.names,
    (name, number) => `${name}_${number}`,
  );
  const spell = (formula: string) => toScreen(rename(formula, names, sheets), namespace);
  const free = (name: string) => names.get(name) ?? name;
  return pages.map((page) => ({
    name: sheets.get(page.name) ?? page.name,
    widths: page.widths,
    cells: page.cells.map((cell) => prepareCell(cell, spell)),
    frozenRows: page.frozenRows ?? 0,
    landscape: page.landscape ?? false,
    printArea: page.printArea,
    lines: page.lines,
    names: namesOf(page).map(({ name, range }) => ({ name: free(name), range })),
    functions: (page.functions ?? []).map(({ name, formula }) => ({
      name: free(name),
      formula: spell(formula),
    })),
    charts: (page.charts ?? []).map((chart) => ({
      title: chart.title,
      x: chart.x.range,
      xTitle: chart.x.title,
      yTitle: chart.yTitle,
      series: chart.series,
      from: chart.place.from,
      to: chart.place.to,
      description: chart.description,
    })),
  }));
}

function namesOf(page: Page): NamedRange[] {
  const cells = page.cells.flatMap(({ name, at }) =>
    name === undefined ? [] : { name, range: at },
  );
  return [...cells, ...(page.names ?? [])];
}

/** Every wanted name that is taken, with the first free one in its place; case does not tell apart. */
function freeNames(
  wanted: readonly string[],
  taken: readonly string[],
  numbered: (name: string, number: number) => string,
): Map<string, string> {
  const used = new Set(taken.map((name) => name.toUpperCase()));
  const renamed = new Map<string, string>();
  for (const name of wanted) {
    let free = name;
    for (let number = 2; used.has(free.toUpperCase()); number++) free = numbered(name, number);
    used.add(free.toUpperCase());
    if (free !== name) renamed.set(name, free);
  }
  return renamed;
}

function prepareCell(cell: SheetCell, spell: (formula: string) => string): PreparedCell {
  const { row, column } = readAddress(cell.at);
  const merged =
    cell.span === undefined || cell.span < 2
      ? undefined
      : `${cell.at}:${writeAddress({ row, column: column + cell.span - 1 })}`;
  const { allowed } = cell;
  return {
    at: cell.at,
    ...(merged === undefined ? {} : { merged }),
    ...contentOf(cell, spell),
    formats: formatsOf(cell),
    look: prepareLook(cell),
    ...(allowed !== undefined && "list" in allowed ? { list: allowed.list.join(",") } : {}),
    // Where a text may stand for the number, the workbook's own limits say what is wrong.
    ...(allowed !== undefined && "low" in allowed && allowed.orText === undefined
      ? { between: { low: allowed.low, high: allowed.high, whole: allowed.whole ?? false } }
      : {}),
    ...(cell.note === undefined ? {} : { prompt: cell.note }),
  };
}

function contentOf(
  cell: SheetCell,
  spell: (formula: string) => string,
): { content?: string | number | boolean } {
  if (cell.formula !== undefined) {
    const text = spell(cell.formula);
    // An apostrophe before it keeps a formula that is shown from being worked out.
    return { content: cell.role === "formulaText" ? `'${text}` : text };
  }
  if (cell.value === undefined) return {};
  const { value } = cell;
  return { content: typeof value === "string" && /^[=+\-@']/.test(value) ? `'${value}` : value };
}

function formatsOf(cell: SheetCell): { range: string; code: string }[] {
  const { row, column } = readAddress(cell.at);
  const { spill } = cell;
  if (spill === undefined)
    return cell.format === undefined ? [] : [{ range: cell.at, code: cell.format }];
  const first = row + (spill.headed ? 2 : 1);
  const last = row + spill.reserved;
  return spill.formats.map((code, i) => {
    const letters = columnLetters(column + i);
    return { range: `${letters}${first}:${letters}${last}`, code };
  });
}

function prepareLook(cell: SheetCell): PreparedLook {
  const look = looks[cell.role];
  return {
    size: look.size ?? BODY_SIZE,
    bold: look.bold ?? false,
    italic: look.italic ?? false,
    ink: look.ink ?? palette.ink,
    wrap: look.wrap ?? false,
    monospaced: look.monospaced ?? false,
    ...(look.fill === undefined ? {} : { fill: look.fill }),
    ...(look.rule === undefined ? {} : { rule: look.rule }),
    ...(look.align === undefined ? {} : { align: look.align }),
  };
}
