import { palette } from "../palette";
import { rename, toScreen } from "../formula-text/dialect";
import type { NamedRange, Page, SheetCell, UnitSystem } from "../sheets/kit/definition";
import { columnLetters, readAddress, writeAddress } from "../sheets/kit/address";
import { Lists, LISTS_SHEET } from "../sheets/kit/lists";
import { BODY_SIZE, FONT, lookOf, MONOSPACED, seriesInks, drawnLooks } from "../sheets/kit/look";
import { columnPoints, printedParts, rowHeights } from "../sheets/kit/print";
import { absolute } from "../sheets/kit/reference";
import { lookRules } from "../sheets/kit/rules";
import { unmerged } from "../sheets/kit/unmerged";
import type { PreparedBook, PreparedCell, PreparedLook } from "./add-sheets";

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
  definition: readonly Page[],
  taken: Taken,
  namespace: string,
  system: UnitSystem,
): PreparedBook {
  const pages = unmerged(definition);
  const lists = new Lists();
  // One pass for the lists alone: the worksheet that holds them needs a free name as well.
  for (const { allowed } of pages.flatMap(({ cells }) => cells)) {
    if (allowed !== undefined && "list" in allowed) lists.source(allowed.list);
  }
  const wanted = pages.map((page) => page.name);
  const sheets = freeNames(
    lists.columns.length === 0 ? wanted : [...wanted, LISTS_SHEET],
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
  const listsName = sheets.get(LISTS_SHEET) ?? LISTS_SHEET;
  const sourceOf = (entries: readonly string[]) => {
    const source = lists.source(entries);
    return "typed" in source ? source.typed : `=${absolute(listsName, source.range)}`;
  };
  return {
    ...(lists.columns.length > 0 && {
      lists: {
        name: listsName,
        columns: lists.columns.map((entries) => entries.map(typedText)),
      },
    }),
    sheets: pages.map((page) => ({
      name: sheets.get(page.name) ?? page.name,
      widths: page.widths.map(columnPoints),
      heights: rowHeights(page),
      cells: page.cells.map((cell) => prepareCell(cell, spell, sourceOf)),
      frozenRows: page.frozenRows ?? 0,
      landscape: page.landscape ?? false,
      paper: system === "US" ? "Letter" : "A4",
      printAreas: printedParts(page, system),
      names: namesOf(page).map(({ name, range }) => ({ name: free(name), range })),
      functions: (page.functions ?? []).map(({ name, formula }) => ({
        name: free(name),
        formula: spell(formula),
      })),
      rules: lookRules(page).map(({ range, formula, look }) => ({
        range,
        formula: `=${formula}`,
        ...(look.ink !== undefined && { ink: look.ink }),
        ...(look.fill !== undefined && { fill: look.fill }),
      })),
      charts: (page.charts ?? []).map((chart) => ({
        title: chart.title,
        x: chart.x.range,
        xTitle: chart.x.title,
        yTitle: chart.yTitle,
        ...(chart.page !== undefined && { page: sheets.get(chart.page) ?? chart.page }),
        ...(chart.drawing !== undefined && { drawing: chart.drawing }),
        series: chart.series.map(({ look, ...series }, i) => ({
          ...series,
          ...(look === undefined
            ? { color: seriesInks[i] }
            : { drawn: drawnLooks[look], color: drawnLooks[look].ink }),
        })),
        from: chart.place.from,
        to: chart.place.to,
        description: chart.description,
      })),
    })),
  };
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

function prepareCell(
  cell: SheetCell,
  spell: (formula: string) => string,
  sourceOf: (entries: readonly string[]) => string,
): PreparedCell {
  const { row, column } = readAddress(cell.at);
  const merged =
    cell.span === undefined || cell.span === 1
      ? undefined
      : `${cell.at}:${writeAddress({ row, column: column + cell.span - 1 })}`;
  const { allowed } = cell;
  return {
    at: cell.at,
    ...(merged === undefined ? {} : { merged }),
    ...contentOf(cell, spell),
    formats: formatsOf(cell),
    look: prepareLook(cell),
    ...(allowed !== undefined && "list" in allowed ? { list: sourceOf(allowed.list) } : {}),
    // Where a text may stand for the number, the workbook's own limits say what is wrong.
    ...(allowed !== undefined && "low" in allowed && allowed.orText === undefined
      ? { between: { low: allowed.low, high: allowed.high, whole: allowed.whole ?? false } }
      : {}),
    ...(cell.note === undefined ? {} : { prompt: cell.note }),
  };
}

/** What a host would read as something else than the text that it is: "1/2", "63", "TRUE", "-". */
const READS_AS_MORE =
  /^[-=+@'"\d.,(#$€£%/]|^(?:true|false)$|^(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.? ?\d/i;

/** An apostrophe before it keeps a text as it is. */
function typedText(text: string): string {
  return READS_AS_MORE.test(text) ? `'${text}` : text;
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
  return { content: typeof value === "string" ? typedText(value) : value };
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
  const look = lookOf(cell, cell.value);
  return {
    size: look.size ?? BODY_SIZE,
    bold: look.bold ?? false,
    italic: look.italic ?? false,
    ink: look.ink ?? palette.ink,
    wrap: cell.runsOver === undefined && (look.wrap ?? false),
    font: look.monospaced === true ? MONOSPACED : FONT,
    indent: look.indent ?? 0,
    ...(look.fill === undefined ? {} : { fill: look.fill }),
    ...(look.rule === undefined ? {} : { rule: look.rule }),
    ...(look.align === undefined ? {} : { align: look.align }),
  };
}
