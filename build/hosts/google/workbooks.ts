import { palette } from "../../../src/palette";
import type {
  GoogleCell,
  GoogleChart,
  GoogleLimit,
  GoogleLook,
  GoogleSheet,
  GoogleWorkbook,
} from "../../../src/hosts/google-sheets";
import {
  columnLetters,
  readAddress,
  readRange,
  writeAddress,
} from "../../../src/sheets/kit/address";
import type {
  Page,
  ReadyMadeSheet,
  SheetCell,
  SheetChart,
  UnitSystem,
} from "../../../src/sheets/kit/definition";
import { limitFormula, limitText } from "../../../src/sheets/kit/limits";
import {
  BODY_SIZE,
  FONT,
  type Look,
  lookOf,
  looks,
  MONOSPACED,
} from "../../../src/sheets/kit/look";
import { lookRules } from "../../../src/sheets/kit/rules";
import { respelled, SharedTables, TABLE_ROWS, TABLES } from "./formulas";

const PIXELS_OF_CHARACTER = 7;
const PIXELS_OF_ROW = 21;

/** Pages as that edition has them, with the page of shared tables; formulas as the definitions spell them. */
export function googlePages(
  sheet: ReadyMadeSheet,
  system: UnitSystem,
  spills: (name: string) => boolean,
): Page[] {
  const tables = new SharedTables(spills);
  // Function names of the user's own cannot be made by a script.
  const pages = sheet
    .pages(system)
    .filter(({ functions = [] }) => functions.length === 0)
    .map((page) => {
      const shown = shownAsText(page);
      return {
        ...page,
        cells: page.cells.map((cell) =>
          cell.formula === undefined || cell.spill !== undefined || shown.has(cell.at)
            ? cell
            : { ...cell, formula: tables.sharing(cell.formula, page.name) },
        ),
      };
    });
  const calls = tables.calls();
  if (calls.length === 0) return pages;
  const columns = tables.columns();
  return [
    ...pages,
    {
      name: TABLES,
      widths: Array.from({ length: columns }, () => 10),
      lines: new Map(),
      printArea: `A1:${columnLetters(columns - 1)}${TABLE_ROWS}`,
      cells: calls.map(({ call, column }) => ({
        at: writeAddress({ row: 0, column }),
        role: "working" as const,
        formula: `=${call}`,
      })),
    },
  ];
}

/** The cells whose formula stands beside them to be read: it stays as a user would type it. */
function shownAsText({ cells }: Page): ReadonlySet<string> {
  return new Set(
    cells.flatMap(({ formula = "" }) => /^=FORMULATEXT\((\w+)\)$/.exec(formula)?.[1] ?? []),
  );
}

export function googleWorkbook(
  sheet: ReadyMadeSheet,
  system: UnitSystem,
  spills: (name: string) => boolean,
): GoogleWorkbook {
  return {
    title: `${sheet.title} (${system})`,
    sheets: googlePages(sheet, system, spills).map(googleSheet),
  };
}

function googleSheet(page: Page): GoogleSheet {
  const found = new LookList();
  // The first is that of an empty cell.
  found.of(looks.label);
  const cells = page.cells.flatMap((cell) => [
    cellOf(cell, found.of(lookOf(cell, cell.value))),
    ...spilt(cell, found),
  ]);
  const { rows, columns } = extent(page, cells);
  return {
    name: page.name,
    rows,
    columns,
    widths: page.widths,
    frozenRows: page.frozenRows ?? 0,
    hidden: page.name === TABLES,
    looks: found.all,
    cells,
    names: [
      ...page.cells.flatMap(({ at, name }) => (name === undefined ? [] : [{ name, range: at }])),
      ...(page.names ?? []),
    ],
    notes: page.cells.flatMap(({ at, note }) => (note === undefined ? [] : [{ at, text: note }])),
    limits: page.cells.flatMap(limitOf),
    rules: lookRules(page).map(({ range, formula, look }) => ({
      range,
      formula: `=${formula}`,
      ...(look.ink !== undefined && { ink: look.ink }),
      ...(look.fill !== undefined && { fill: look.fill }),
    })),
    lines: [...page.lines],
    charts: (page.charts ?? []).map((chart) => chartOf(chart, page)),
  };
}

/** The looks of a page, each once. */
class LookList {
  readonly all: GoogleLook[] = [];

  of(look: Look): number {
    const made: GoogleLook = {
      size: look.size ?? BODY_SIZE,
      bold: look.bold ?? false,
      italic: look.italic ?? false,
      ink: look.ink ?? palette.ink,
      font: look.monospaced === true ? MONOSPACED : FONT,
      wrap: look.wrap ?? false,
      ...(look.fill !== undefined && { fill: look.fill }),
      ...(look.align !== undefined && { align: look.align }),
    };
    const key = JSON.stringify(made);
    const at = this.all.findIndex((one) => JSON.stringify(one) === key);
    if (at >= 0) return at;
    return this.all.push(made) - 1;
  }
}

function cellOf(cell: SheetCell, look: number): GoogleCell {
  const { at, formula, value, format, span } = cell;
  const content = formula === undefined ? plain(value) : respelled(formula);
  if (span !== undefined && span > 1) return [at, content, look, format ?? "General", span];
  return format === undefined ? [at, content, look] : [at, content, look, format];
}

/** A leading apostrophe marks text that looks like a formula; the writer adds its own. */
function plain(value: SheetCell["value"]): string | number | boolean {
  if (value === undefined) return "";
  return typeof value === "string" ? respelled(value.replace(/^'/, "")) : value;
}

/** Formats and looks of the cells that a table fills; they hold nothing, so that it may. */
function spilt({ at, role, spill }: SheetCell, found: LookList): GoogleCell[] {
  if (spill === undefined) return [];
  const { row, column } = readAddress(at);
  const all: GoogleCell[] = [];
  for (let down = 0; down < spill.reserved; down++) {
    for (let across = 0; across < spill.columns; across++) {
      if (down === 0 && across === 0) continue;
      const look = found.of(spill.headed && down === 0 ? looks.header : looks[role]);
      const place = writeAddress({ row: row + down, column: column + across });
      all.push([place, "", look, spill.formats[across]]);
    }
  }
  return all;
}

function extent(page: Page, cells: readonly GoogleCell[]) {
  const printed = readRange(page.printArea);
  const places = cells.map(([at, , , , span = 1]) => ({ ...readAddress(at), span }));
  return {
    rows: Math.max(printed.rows, ...places.map(({ row }) => row + 1)),
    columns: Math.max(
      printed.columns,
      page.widths.length,
      ...places.map(({ column, span }) => column + span),
    ),
  };
}

function limitOf({ at, allowed, label = "It" }: SheetCell): GoogleLimit[] {
  if (allowed === undefined || "text" in allowed) return [];
  const text = `Type ${limitText(allowed)}.`;
  if ("list" in allowed) return [{ at, text, list: allowed.list }];
  return [{ at, text, formula: `=${respelled(limitFormula(label, at, allowed))}="OK"` }];
}

function chartOf(chart: SheetChart, { widths, lines }: Page): GoogleChart {
  const from = readAddress(chart.place.from);
  const to = readAddress(chart.place.to);
  const width = widths
    .slice(from.column, to.column + 1)
    .reduce((sum, characters) => sum + characters * PIXELS_OF_CHARACTER + 5, 0);
  let height = 0;
  for (let row = from.row; row <= to.row; row++)
    height += (lines.get(row + 1) ?? 1) * PIXELS_OF_ROW;
  return {
    title: chart.title,
    x: chart.x.range,
    series: chart.series.map(({ range }) => range),
    xTitle: chart.x.title,
    yTitle: chart.yTitle,
    row: from.row + 1,
    column: from.column + 1,
    width,
    height,
  };
}
