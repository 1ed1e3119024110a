import { columnLetters } from "../sheets/kit/address";
import { absolute } from "../sheets/kit/reference";
import { DRAWN, type SeriesLook } from "../sheets/kit/look";
import { Refusal, type HostState, run } from "./workbook";

/** A ready-made sheet ready to be written: everything resolved to plain values, formulas as typed. */
export interface PreparedBook {
  readonly sheets: readonly PreparedSheet[];
  /** A hidden worksheet for the lists that are too long to be typed into a cell's rule. */
  readonly lists?: { readonly name: string; readonly columns: readonly (readonly string[])[] };
}

export interface PreparedSheet {
  readonly name: string;
  /** Points, from A on. */
  readonly widths: readonly number[];
  /** Points by row number. */
  readonly heights: ReadonlyMap<number, number>;
  readonly cells: readonly PreparedCell[];
  readonly frozenRows: number;
  readonly landscape: boolean;
  readonly paper: "Letter" | "A4";
  /** Each is printed on a sheet of paper. */
  readonly printAreas: readonly string[];
  readonly names: readonly { readonly name: string; readonly range: string }[];
  readonly functions: readonly { readonly name: string; readonly formula: string }[];
  readonly rules: readonly PreparedRule[];
  readonly charts: readonly PreparedChart[];
}

export interface PreparedCell {
  readonly at: string;
  /** "B4:D4" where text runs over several columns. */
  readonly merged?: string;
  readonly content?: string | number | boolean;
  /** The cell, or all that a spill may fill, with number formats by column. */
  readonly formats: readonly { readonly range: string; readonly code: string }[];
  readonly look: PreparedLook;
  /** Entries with commas between, or a formula that leads to cells. */
  readonly list?: string;
  readonly between?: { readonly low: number; readonly high: number; readonly whole: boolean };
  readonly prompt?: string;
}

export interface PreparedLook {
  readonly size: number;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly ink: string;
  readonly fill?: string;
  readonly rule?: string;
  readonly wrap: boolean;
  readonly font: string;
  readonly align?: "left" | "right";
  readonly indent: number;
}

export interface PreparedRule {
  readonly range: string;
  readonly formula: string;
  readonly ink?: string;
  readonly fill?: string;
}

export interface PreparedChart {
  readonly title: string;
  readonly x: string;
  readonly xTitle: string;
  readonly yTitle: string;
  /** The worksheet of its ranges, where it is another. */
  readonly page?: string;
  /** One scale both ways, no axes. */
  readonly drawing?: true;
  readonly series: readonly {
    readonly range: string;
    readonly x?: string;
    readonly drawn?: SeriesLook;
    readonly titleAt: string;
    readonly color: string;
  }[];
  readonly from: string;
  readonly to: string;
  readonly description: string;
}

/** Parts of a worksheet without which its numbers are still right. */
export type Extra = "charts" | "checks" | "limits" | "printing" | "frozenRows";

/** What the host did not take of what was added. */
export interface Refused {
  readonly extras: readonly { readonly sheet: string; readonly what: Extra }[];
  /** Function names of the user's own; no other cell depends on them. */
  readonly functions: readonly string[];
}

/**
 * Adds new worksheets, never touching one that is there, and shows the first. Names come before the
 * formulas that use them; cells before what only helps with them, each such part in a step of its
 * own. When the host refuses cells, what was added is taken out again and its error thrown; when it
 * refuses another part, that is told and nothing else is lost.
 */
export async function addSheets(
  book: PreparedBook,
  { has, oneUndo }: Pick<HostState, "has" | "oneUndo">,
): Promise<Refused> {
  let begun = false;
  const refused = { extras: [] as Refused["extras"][number][], functions: [] as string[] };
  const names = [...book.sheets.map(({ name }) => name), ...(book.lists ? [book.lists.name] : [])];
  try {
    await run(
      async (context) => {
        await makeSure(context, names);
        begun = true;
        await addEmpty(context, book, names);
        refused.functions.push(...(await addFunctions(context, book)));
        for (const prepared of book.sheets) {
          quiet(context);
          fillSheet(context.workbook.worksheets.getItem(prepared.name), prepared, has);
          await context.sync();
        }
        for (const prepared of book.sheets) {
          const sheet = context.workbook.worksheets.getItem(prepared.name);
          for (const [what, step] of extras(context, sheet, prepared, has)) {
            try {
              await step();
            } catch {
              refused.extras.push({ sheet: prepared.name, what });
            }
          }
        }
        // What was written with calculation suspended has still to be worked out.
        context.application.calculate("Recalculate");
        context.workbook.worksheets.getItem(book.sheets[0].name).activate();
        await context.sync();
      },
      oneUndo ? { mergeUndoGroup: true } : {},
    );
  } catch (error) {
    if (begun) await removeSheets(book, names);
    throw error;
  }
  return refused;
}

/** Until the next sync: hundreds of cells written one by one would be computed and drawn as often. */
function quiet(context: Excel.RequestContext): void {
  context.application.suspendApiCalculationUntilNextSync();
  context.application.suspendScreenUpdatingUntilNextSync();
}

/** What stands under a name is the user's: taking out what was added must never reach it. */
async function makeSure(context: Excel.RequestContext, names: readonly string[]): Promise<void> {
  const there = context.workbook.worksheets;
  there.load("items/name");
  context.workbook.protection.load("protected");
  await context.sync();
  if (context.workbook.protection.protected) throw new Refusal("WorkbookProtected");
  const taken = new Set(there.items.map(({ name }) => name.toUpperCase()));
  if (names.some((name) => taken.has(name.toUpperCase()))) throw new Refusal("SheetThere");
}

async function addEmpty(
  context: Excel.RequestContext,
  book: PreparedBook,
  names: readonly string[],
): Promise<void> {
  quiet(context);
  for (const name of names) context.workbook.worksheets.add(name);
  for (const prepared of book.sheets) {
    const sheet = context.workbook.worksheets.getItem(prepared.name);
    for (const { name, range } of prepared.names) {
      context.workbook.names.add(name, sheet.getRange(range));
    }
  }
  if (book.lists !== undefined) {
    const sheet = context.workbook.worksheets.getItem(book.lists.name);
    book.lists.columns.forEach((entries, column) => {
      const letters = columnLetters(column);
      sheet.getRange(`${letters}1:${letters}${entries.length}`).formulas = entries.map((entry) => [
        entry,
      ]);
    });
    sheet.visibility = "Hidden";
  }
  await context.sync();
}

/** Each in a step of its own: a host without LAMBDA refuses them, or takes them and shows #NAME?. */
async function addFunctions(context: Excel.RequestContext, book: PreparedBook): Promise<string[]> {
  const refused: string[] = [];
  for (const { name, formula } of book.sheets.flatMap(({ functions }) => functions)) {
    try {
      const stored = context.workbook.names.add(name, formula, "");
      stored.load("value");
      await context.sync();
      if (stored.value !== "#NAME?") continue;
      stored.delete();
      await context.sync();
    } catch {
      // Told below; the error's own words would say no more to who added a whole workbook.
    }
    refused.push(name);
  }
  return refused;
}

async function removeSheets(book: PreparedBook, names: readonly string[]): Promise<void> {
  await run(async (context) => {
    const added = names.map((name) => context.workbook.worksheets.getItemOrNullObject(name));
    const named = book.sheets
      .flatMap((sheet) => [...sheet.names, ...sheet.functions])
      .map(({ name }) => context.workbook.names.getItemOrNullObject(name));
    for (const part of [...added, ...named]) part.load("isNullObject");
    await context.sync();
    for (const part of [...named, ...added]) if (!part.isNullObject) part.delete();
    await context.sync();
  });
}

function fillSheet(sheet: Excel.Worksheet, prepared: PreparedSheet, has: HostState["has"]): void {
  sheet.showGridlines = false;
  prepared.widths.forEach((width, column) => {
    const letters = columnLetters(column);
    sheet.getRange(`${letters}:${letters}`).format.columnWidth = width;
  });
  for (const [row, height] of prepared.heights) {
    sheet.getRange(`${row}:${row}`).format.rowHeight = height;
  }
  for (const cell of prepared.cells) fillCell(sheet, cell, has);
}

function fillCell(sheet: Excel.Worksheet, cell: PreparedCell, has: HostState["has"]): void {
  const range = sheet.getRange(cell.merged ?? cell.at);
  if (cell.merged !== undefined) range.merge();
  for (const { range: formatted, code } of cell.formats) {
    sheet.getRange(formatted).numberFormat = [[code]];
  }
  const { format } = range;
  const { look } = cell;
  format.font.name = look.font;
  format.font.size = look.size;
  format.font.bold = look.bold;
  format.font.italic = look.italic;
  format.font.color = look.ink;
  if (look.fill !== undefined) format.fill.color = look.fill;
  if (look.wrap) format.wrapText = true;
  format.verticalAlignment = "Center";
  if (look.align !== undefined)
    format.horizontalAlignment = look.align === "left" ? "Left" : "Right";
  if (look.indent > 0 && has("printing")) format.indentLevel = look.indent;
  if (look.rule !== undefined) {
    const edge = format.borders.getItem("EdgeBottom");
    edge.style = "Continuous";
    edge.color = look.rule;
  }
  if (cell.content !== undefined) sheet.getRange(cell.at).formulas = [[cell.content]];
}

/** What helps with a worksheet, part by part, as far as the host knows it. */
function extras(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  prepared: PreparedSheet,
  has: HostState["has"],
): [Extra, () => Promise<void>][] {
  const step = (fill: () => void) => async () => {
    quiet(context);
    fill();
    await context.sync();
  };
  const found: [Extra, () => Promise<void>][] = [];
  const { frozenRows, rules } = prepared;
  if (frozenRows > 0) {
    found.push(["frozenRows", step(() => sheet.freezePanes.freezeRows(frozenRows))]);
  }
  for (const chart of prepared.charts) {
    found.push(["charts", () => addChart(context, sheet, prepared.name, chart)]);
  }
  if (rules.length > 0) {
    found.push(["checks", step(() => rules.forEach((rule) => addRule(sheet, rule)))]);
  }
  if (has("validation")) {
    found.push(["limits", step(() => prepared.cells.forEach((cell) => validate(sheet, cell)))]);
  }
  if (has("printing")) found.push(["printing", step(() => setPage(sheet, prepared))]);
  return found;
}

function addRule(sheet: Excel.Worksheet, { range, formula, ink, fill }: PreparedRule): void {
  const { custom } = sheet.getRange(range).conditionalFormats.add("Custom");
  custom.rule.formula = formula;
  if (ink !== undefined) custom.format.font.color = ink;
  if (fill !== undefined) custom.format.fill.color = fill;
}

function validate(sheet: Excel.Worksheet, cell: PreparedCell): void {
  const { list, between, prompt } = cell;
  if (list === undefined && between === undefined && prompt === undefined) return;
  const { dataValidation } = sheet.getRange(cell.merged ?? cell.at);
  if (list !== undefined) dataValidation.rule = { list: { inCellDropDown: true, source: list } };
  if (between !== undefined) {
    const { low, high, whole } = between;
    const bounds = { formula1: low, formula2: high, operator: "Between" as const };
    dataValidation.rule = whole ? { wholeNumber: bounds } : { decimal: bounds };
  }
  if (prompt !== undefined) {
    dataValidation.prompt = { showPrompt: true, title: "", message: prompt };
  }
}

function setPage(sheet: Excel.Worksheet, prepared: PreparedSheet): void {
  const { pageLayout } = sheet;
  pageLayout.setPrintArea(prepared.printAreas.join(","));
  pageLayout.orientation = prepared.landscape ? "Landscape" : "Portrait";
  pageLayout.paperSize = prepared.paper;
  pageLayout.zoom = { horizontalFitToPages: 1, verticalFitToPages: 1 };
}

async function addChart(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  sheetName: string,
  prepared: PreparedChart,
): Promise<void> {
  quiet(context);
  const [first] = prepared.series;
  const { page = sheetName } = prepared;
  const source = page === sheetName ? sheet : context.workbook.worksheets.getItem(page);
  const chart = sheet.charts.add("XYScatterLines", source.getRange(first.range), "Columns");
  chart.title.text = prepared.title;
  chart.setPosition(prepared.from, prepared.to);
  if (prepared.drawing === true) {
    for (const axis of [chart.axes.categoryAxis, chart.axes.valueAxis]) {
      axis.minimum = DRAWN.low;
      axis.maximum = DRAWN.high;
      axis.majorGridlines.visible = false;
      axis.visible = false;
    }
    squarePlot(chart);
  } else {
    chart.axes.categoryAxis.title.text = prepared.xTitle;
    chart.axes.valueAxis.title.text = prepared.yTitle;
  }
  chart.legend.visible = prepared.series.length > 1;
  if (prepared.series.length > 1) {
    chart.legend.position = prepared.drawing === true ? "Right" : "Bottom";
  }
  const titles = prepared.series.map(({ titleAt }) => source.getRange(titleAt));
  const drawn = prepared.series.map(({ range, color, x = prepared.x, drawn: look }, i) => {
    const series = i === 0 ? chart.series.getItemAt(0) : chart.series.add();
    series.setXAxisValues(source.getRange(x));
    series.setValues(source.getRange(range));
    series.format.line.color = color;
    if (look !== undefined) {
      drawSeries(series, look);
      return series;
    }
    series.markerStyle = i === 0 ? "Circle" : "Square";
    series.markerBackgroundColor = color;
    series.markerForegroundColor = color;
    return series;
  });
  for (const title of titles) title.load("text");
  await context.sync();
  // A name that leads to its cell follows the units; a host that takes it as text gets the text.
  drawn.forEach((series, i) => {
    series.name = `=${absolute(page, prepared.series[i].titleAt)}`;
    series.load("name");
  });
  await context.sync();
  drawn.forEach((series, i) => {
    if (series.name.startsWith("=")) series.name = titles[i].text[0][0];
  });
  await context.sync();
}

/** Points: title above, legend at the right, the rest a square. */
const PLOT = { left: 10, top: 30, side: 300, legend: 170 };

function squarePlot(chart: Excel.Chart): void {
  chart.height = PLOT.top + PLOT.side + 10;
  chart.width = PLOT.left + PLOT.side + PLOT.legend;
  chart.plotArea.insideLeft = PLOT.left;
  chart.plotArea.insideTop = PLOT.top;
  chart.plotArea.insideWidth = PLOT.side;
  chart.plotArea.insideHeight = PLOT.side;
}

const MARKS = {
  circle: "Circle",
  square: "Square",
  diamond: "Diamond",
  triangle: "Triangle",
} as const;

function drawSeries(series: Excel.ChartSeries, { ink, line, mark }: SeriesLook): void {
  series.smooth = false;
  if (line === undefined) series.format.line.lineStyle = "None";
  else {
    series.format.line.weight = line.width;
    if (line.dashed === true) series.format.line.lineStyle = "Dash";
  }
  if (mark === undefined) {
    series.markerStyle = "None";
    return;
  }
  series.markerStyle = MARKS[mark.shape];
  series.markerSize = mark.size;
  series.markerBackgroundColor = ink;
  series.markerForegroundColor = ink;
}
