import { rename } from "../formula-text/dialect";
import { quoted } from "../formula-text/quoted";
import { readAddress, readRange } from "../sheets/kit/address";
import { WAITING } from "../sheets/kit/look";
import type { Page, ReadyMadeSheet, SheetCell, SheetChart } from "../sheets/kit/definition";

/** A text of a workbook in a language. */
export type Say = (text: string) => string;

/**
 * The workbook in a language: the same cells, names, limits and formulas, and the pieces of text in
 * them put over. What a function takes or gives stays as it is. With its keys kept, so do the names
 * of pages and what inputs are called, by which work is kept that may be opened in another language.
 */
export function workbookIn(
  sheet: ReadyMadeSheet,
  say: Say,
  keeps: "nothing" | "keys" = "nothing",
): ReadyMadeSheet {
  return {
    id: sheet.id,
    title: say(sheet.title),
    purpose: say(sheet.purpose),
    pages: (system) => {
      const pages = sheet.pages(system);
      const keepsKeys = keeps === "keys";
      const names = new Map(pages.map(({ name }) => [name, keepsKeys ? name : say(name)]));
      return pages.map((page) => pageIn(page, say, names, keepsKeys));
    },
  };
}

function pageIn(
  page: Page,
  say: Say,
  names: ReadonlyMap<string, string>,
  keepsKeys: boolean,
): Page {
  const taken = takenWords(page);
  const cells = page.cells.map((cell) => ({
    ...(taken(cell) ? cell : cellIn(cell, say, names)),
    ...(keepsKeys && cell.label !== undefined && { label: cell.label }),
  }));
  const widths = roomForLabels(page, cells);
  return {
    ...page,
    name: names.get(page.name) ?? page.name,
    waiting: WAITING.map((begin) => say(begin.trim()) + (begin.endsWith(" ") ? " " : "")),
    cells,
    widths,
    lines: roomForLines(page, cells, widths),
    ...(page.charts && { charts: page.charts.map((chart) => chartIn(chart, say, names)) }),
    ...(page.functions && {
      functions: page.functions.map(({ name, formula }) => ({
        name,
        formula: formulaIn(formula, say, names),
      })),
    }),
  };
}

/** Labels in a range with a name are words that a formula takes, as PLAN.SEARCH takes its terms. */
function takenWords({ names = [] }: Page): (cell: SheetCell) => boolean {
  const ranges = names.map(({ range }) => readRange(range));
  return ({ at, role }) => {
    if (role !== "label") return false;
    const { row, column } = readAddress(at);
    return ranges.some(
      (range) =>
        row >= range.row &&
        row < range.row + range.rows &&
        column >= range.column &&
        column < range.column + range.columns,
    );
  };
}

function cellIn(cell: SheetCell, say: Say, names: ReadonlyMap<string, string>): SheetCell {
  const { value, formula, format, label, note } = cell;
  return {
    ...cell,
    ...(typeof value === "string" && { value: say(value) }),
    ...(formula !== undefined && { formula: formulaIn(formula, say, names) }),
    ...(format !== undefined && { format: inQuotes(format, say) }),
    ...(label !== undefined && { label: say(label) }),
    ...(note !== undefined && { note: say(note) }),
  };
}

function chartIn(chart: SheetChart, say: Say, names: ReadonlyMap<string, string>): SheetChart {
  return {
    ...chart,
    ...(chart.page !== undefined && { page: names.get(chart.page) ?? chart.page }),
    title: say(chart.title),
    yTitle: say(chart.yTitle),
    description: say(chart.description),
    x: { ...chart.x, title: say(chart.x.title) },
  };
}

function formulaIn(formula: string, say: Say, names: ReadonlyMap<string, string>): string {
  return inQuotes(rename(formula, new Map(), names), say);
}

function inQuotes(formula: string, say: Say): string {
  return formula.replace(
    /"((?:[^"]|"")*)"/g,
    (_, inside: string) => `"${quoted(say(inside.replace(/""/g, '"')))}"`,
  );
}

/** How much wider than in English a column may get before its labels run on. */
const MOST_WIDER = 1.4;

function widthOf(widths: readonly number[], { at, span = 1 }: SheetCell): number {
  const { column } = readAddress(at);
  return widths.slice(column, column + span).reduce((sum, width) => sum + width, 0);
}

/** Labels are one line each, and what stands beside them cuts them off. */
function roomForLabels(page: Page, cells: readonly SheetCell[]): number[] {
  const widths = [...page.widths];
  cells.forEach((cell, i) => {
    const { value, role, at, span = 1 } = cell;
    if (role !== "label" || typeof value !== "string") return;
    const before = String(page.cells[i].value).length;
    const wider = Math.min(MOST_WIDER, value.length / Math.max(before, widthOf(page.widths, cell)));
    const { column } = readAddress(at);
    for (let c = column; c < column + span && c < widths.length; c++)
      widths[c] = Math.max(widths[c], Math.ceil(page.widths[c] * wider));
  });
  return widths;
}

/** How much longer than in English a text is that a formula puts together. */
const LONGER = 1.2;

/** Rows of text that wraps: as many more lines as the text is longer. */
function roomForLines(
  page: Page,
  cells: readonly SheetCell[],
  widths: readonly number[],
): ReadonlyMap<number, number> {
  const lines = new Map<number, number>();
  for (const [row, count] of page.lines) lines.set(row, Math.ceil(count * LONGER));
  for (const cell of cells) {
    if (typeof cell.value !== "string" || cell.role === "label" || cell.role === "title") continue;
    const row = readAddress(cell.at).row + 1;
    const needed = Math.ceil(cell.value.length / Math.max(1, widthOf(widths, cell)));
    const isWrapped = page.lines.has(row) || cell.span !== undefined;
    if (isWrapped && needed > 1) lines.set(row, Math.max(needed, lines.get(row) ?? 1));
  }
  return lines;
}
