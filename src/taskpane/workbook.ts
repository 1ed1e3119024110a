import { columnLetters } from "../sheets/kit/address";

/**
 * The only module that talks to the host. Everything it gives and takes is plain values, so that
 * the rest of the pane can be tested without a host, and nothing here decides what to do.
 */
export interface CellAt {
  readonly sheet: string;
  /** "B4" */
  readonly address: string;
}

export interface Selection extends CellAt {
  /** What stands in the cell: a formula or a value; "" when it is empty. */
  readonly content: string;
}

export interface CellContent {
  readonly address: string;
  readonly formula: string;
  readonly value: unknown;
}

export interface WorkbookName {
  readonly name: string;
  readonly formula: string;
  readonly comment: string;
}

/** A worksheet ready to be written: everything resolved to plain values, formulas as typed. */
export interface PreparedSheet {
  readonly name: string;
  /** Column widths in characters. */
  readonly widths: readonly number[];
  readonly cells: readonly PreparedCell[];
  readonly frozenRows: number;
  readonly landscape: boolean;
  readonly printArea: string;
  readonly names: readonly { readonly name: string; readonly range: string }[];
  readonly functions: readonly { readonly name: string; readonly formula: string }[];
  /** Heights of rows that hold more than one line, in lines. */
  readonly lines: ReadonlyMap<number, number>;
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
  readonly monospaced: boolean;
  readonly align?: "left" | "right";
}

export interface PreparedChart {
  readonly title: string;
  readonly x: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly series: readonly { readonly range: string; readonly titleAt: string }[];
  readonly from: string;
  readonly to: string;
  readonly description: string;
}

/** What the host is and what it lacks. */
export interface HostState {
  readonly inExcel: boolean;
  readonly platform: string;
  readonly version: string;
  readonly dark: boolean;
  readonly has: (set: RequirementSet) => boolean;
}

/** Requirement sets by what they bring. */
export const requirementSets = {
  functions: ["CustomFunctionsRuntime", "1.2"],
  cells: ["ExcelApi", "1.7"],
  validation: ["ExcelApi", "1.8"],
  printing: ["ExcelApi", "1.9"],
  spills: ["ExcelApi", "1.12"],
} as const;
export type RequirementSet = keyof typeof requirementSets;

export async function hostState(): Promise<HostState> {
  const info = await Office.onReady();
  const inExcel = info.host === Office.HostType.Excel;
  const context = inExcel ? Office.context : undefined;
  return {
    inExcel,
    platform: String(context?.diagnostics?.platform ?? ""),
    version: String(context?.diagnostics?.version ?? ""),
    dark: isDark(context?.officeTheme?.bodyBackgroundColor),
    has: (set) =>
      context?.requirements.isSetSupported(requirementSets[set][0], requirementSets[set][1]) ??
      false,
  };
}

/** Hosts give their colours, "#FFFFFF"; whether that is dark follows from its lightness. */
function isDark(colour: string | undefined): boolean {
  const match = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(colour ?? "");
  if (match === null) return false;
  const [red, green, blue] = match.slice(1).map((part) => parseInt(part, 16));
  // Rec. 601 luma: enough to tell a dark theme from a light one.
  return 0.299 * red + 0.587 * green + 0.114 * blue < 128;
}

export async function selectedCell(): Promise<Selection> {
  return Excel.run(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load("address, formulas");
    await context.sync();
    return { ...splitAddress(cell.address), content: String(cell.formulas[0][0]) };
  });
}

/** Puts a formula (or what stood there before) into one cell and gives what the cell then shows. */
export async function writeCell(at: CellAt, content: string): Promise<unknown> {
  return Excel.run(async (context) => {
    const cell = context.workbook.worksheets.getItem(at.sheet).getRange(at.address);
    cell.formulas = [[content]];
    cell.load("values");
    await context.sync();
    return cell.values[0][0] as unknown;
  });
}

export async function contentOf(at: CellAt): Promise<string> {
  return Excel.run(async (context) => {
    const cell = context.workbook.worksheets.getItem(at.sheet).getRange(at.address);
    cell.load("formulas");
    await context.sync();
    return String(cell.formulas[0][0]);
  });
}

/** The active worksheet's name and its cells that hold formulas. */
export async function formulasOfSheet(): Promise<{ sheet: string; cells: CellContent[] }> {
  return Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    sheet.load("name");
    const used = sheet.getUsedRangeOrNullObject(false);
    used.load("formulas, values, rowIndex, columnIndex, isNullObject");
    await context.sync();
    if (used.isNullObject) return { sheet: sheet.name, cells: [] };
    const cells: CellContent[] = [];
    used.formulas.forEach((row: unknown[], i: number) =>
      row.forEach((formula, j) => {
        if (typeof formula !== "string" || !formula.startsWith("=")) return;
        cells.push({
          address: `${columnLetters(used.columnIndex + j)}${used.rowIndex + i + 1}`,
          formula,
          value: used.values[i][j] as unknown,
        });
      }),
    );
    return { sheet: sheet.name, cells };
  });
}

/** Values of a reference or a name on the active worksheet; undefined where the host finds none. */
export async function valuesOf(reference: string): Promise<unknown[][] | undefined> {
  try {
    return await Excel.run(async (context) => {
      const bang = reference.lastIndexOf("!");
      const sheets = context.workbook.worksheets;
      const sheet =
        bang < 0 ? sheets.getActiveWorksheet() : sheets.getItem(unquoted(reference.slice(0, bang)));
      const inside = reference.slice(bang + 1);
      const spilled = inside.endsWith("#");
      const range = sheet.getRange(spilled ? inside.slice(0, -1) : inside);
      const whole = spilled ? range.getSpillingToRange() : range;
      whole.load("values");
      await context.sync();
      return whole.values as unknown[][];
    });
  } catch {
    // The host throws for a reference it doesn't know: that is the answer here.
    return undefined;
  }
}

export async function goTo(at: CellAt): Promise<void> {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(at.sheet);
    sheet.activate();
    sheet.getRange(at.address).select();
    await context.sync();
  });
}

export async function sheetNames(): Promise<string[]> {
  return Excel.run(async (context) => {
    const sheets = context.workbook.worksheets;
    sheets.load("items");
    await context.sync();
    return sheets.items.map((sheet) => sheet.name);
  });
}

export async function names(): Promise<WorkbookName[]> {
  return Excel.run(async (context) => {
    const all = context.workbook.names;
    all.load("items");
    await context.sync();
    return all.items.map(({ name, formula, comment }) => ({
      name,
      formula: String(formula),
      comment,
    }));
  });
}

/**
 * Stores a name, then reads it back: a host without LAMBDA takes the name and gives it the value
 * #NAME?. Such a name is taken out again. Throws the host's own error.
 */
export async function addName(name: WorkbookName): Promise<"stored" | "no LAMBDA"> {
  return Excel.run(async (context) => {
    const stored = context.workbook.names.add(name.name, name.formula, name.comment);
    stored.load("value");
    await context.sync();
    if (stored.value !== "#NAME?") return "stored";
    stored.delete();
    await context.sync();
    return "no LAMBDA";
  });
}

export async function deleteName(name: string): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.names.getItem(name).delete();
    await context.sync();
  });
}

/** The selected table: the selection itself, or the block of filled cells around a single cell. */
export async function selectedTable(): Promise<{ at: string; values: unknown[][] }> {
  return Excel.run(async (context) => {
    const selected = context.workbook.getSelectedRange();
    selected.load("cellCount");
    const region = selected.getSurroundingRegion();
    region.load("address, values");
    await context.sync();
    if (selected.cellCount === 1) return { at: region.address, values: region.values };
    selected.load("address, values");
    await context.sync();
    return { at: selected.address, values: selected.values };
  });
}

/**
 * Adds new worksheets, never touching one that is there, and shows the first. When the host refuses
 * a part, what was added is taken out again and its error thrown.
 */
export async function addSheets(
  sheets: readonly PreparedSheet[],
  has: HostState["has"],
): Promise<void> {
  let begun = false;
  try {
    await Excel.run(async (context) => {
      const there = context.workbook.worksheets;
      there.load("items");
      await context.sync();
      const taken = new Set(there.items.map(({ name }) => name.toUpperCase()));
      const twice = sheets.find(({ name }) => taken.has(name.toUpperCase()));
      // What stands under that name is the user's: taking out what was added must never reach it.
      if (twice !== undefined) throw new Error(`there is a worksheet ${twice.name} already`);
      begun = true;
      for (const prepared of sheets) context.workbook.worksheets.add(prepared.name);
      // Names first: a formula that uses one before it exists would show an error until recalculated.
      for (const prepared of sheets) {
        const sheet = context.workbook.worksheets.getItem(prepared.name);
        for (const { name, range } of prepared.names) {
          context.workbook.names.add(name, sheet.getRange(range));
        }
      }
      await context.sync();
      for (const prepared of sheets) {
        fillSheet(context.workbook.worksheets.getItem(prepared.name), prepared, has);
        await context.sync();
      }
      context.workbook.worksheets.getItem(sheets[0].name).activate();
      await context.sync();
    });
  } catch (error) {
    if (begun) await removeSheets(sheets);
    throw error;
  }
}

async function removeSheets(sheets: readonly PreparedSheet[]): Promise<void> {
  await Excel.run(async (context) => {
    const added = sheets.map(({ name }) => context.workbook.worksheets.getItemOrNullObject(name));
    const named = sheets
      .flatMap((sheet) => sheet.names)
      .map(({ name }) => context.workbook.names.getItemOrNullObject(name));
    for (const part of [...added, ...named]) part.load("isNullObject");
    await context.sync();
    for (const part of [...named, ...added]) if (!part.isNullObject) part.delete();
    await context.sync();
  });
}

/** Width of a character of the body font in points, as the host measures columns. */
const CHARACTER_WIDTH = 5.6;
const LINE_HEIGHT = 14;

function fillSheet(sheet: Excel.Worksheet, prepared: PreparedSheet, has: HostState["has"]): void {
  sheet.showGridlines = false;
  prepared.widths.forEach((width, column) => {
    const letters = columnLetters(column);
    sheet.getRange(`${letters}:${letters}`).format.columnWidth = width * CHARACTER_WIDTH;
  });
  for (const [row, lines] of prepared.lines) {
    sheet.getRange(`${row}:${row}`).format.rowHeight = lines * LINE_HEIGHT;
  }
  for (const cell of prepared.cells) fillCell(sheet, cell, has);
  if (prepared.frozenRows > 0) sheet.freezePanes.freezeRows(prepared.frozenRows);
  for (const chart of prepared.charts) addChart(sheet, chart);
  if (!has("printing")) return;
  sheet.pageLayout.setPrintArea(prepared.printArea);
  sheet.pageLayout.orientation = prepared.landscape ? "Landscape" : "Portrait";
  sheet.pageLayout.zoom = { horizontalFitToPages: 1 };
}

function fillCell(sheet: Excel.Worksheet, cell: PreparedCell, has: HostState["has"]): void {
  const range = sheet.getRange(cell.merged ?? cell.at);
  if (cell.merged !== undefined) range.merge();
  for (const { range: formatted, code } of cell.formats) {
    sheet.getRange(formatted).numberFormat = [[code]];
  }
  const { format } = range;
  const { look } = cell;
  format.font.size = look.size;
  format.font.bold = look.bold;
  format.font.italic = look.italic;
  format.font.color = look.ink;
  if (look.monospaced) format.font.name = "Consolas";
  if (look.fill !== undefined) format.fill.color = look.fill;
  if (look.wrap) format.wrapText = true;
  format.verticalAlignment = "Top";
  if (look.align !== undefined)
    format.horizontalAlignment = look.align === "left" ? "Left" : "Right";
  if (look.rule !== undefined) {
    const edge = format.borders.getItem("EdgeBottom");
    edge.style = "Continuous";
    edge.color = look.rule;
  }
  if (cell.content !== undefined) sheet.getRange(cell.at).formulas = [[cell.content]];
  if (!has("validation")) return;
  const { dataValidation } = range;
  if (cell.list !== undefined) {
    dataValidation.rule = { list: { inCellDropDown: true, source: cell.list } };
  }
  if (cell.between !== undefined) {
    const { low, high, whole } = cell.between;
    const bounds = { formula1: low, formula2: high, operator: "Between" as const };
    dataValidation.rule = whole ? { wholeNumber: bounds } : { decimal: bounds };
  }
  if (cell.prompt !== undefined) {
    dataValidation.prompt = { showPrompt: true, title: "", message: cell.prompt };
  }
}

function addChart(sheet: Excel.Worksheet, prepared: PreparedChart): void {
  const [first] = prepared.series;
  const chart = sheet.charts.add("XYScatterLines", sheet.getRange(first.range), "Columns");
  chart.title.text = prepared.title;
  chart.setPosition(prepared.from, prepared.to);
  chart.axes.categoryAxis.title.text = prepared.xTitle;
  chart.axes.valueAxis.title.text = prepared.yTitle;
  prepared.series.forEach(({ range }, i) => {
    const series = i === 0 ? chart.series.getItemAt(0) : chart.series.add();
    series.setXAxisValues(sheet.getRange(prepared.x));
    series.setValues(sheet.getRange(range));
  });
}

/** "'My sheet'!B4" to its sheet and cell. */
function splitAddress(address: string): CellAt {
  const bang = address.lastIndexOf("!");
  return { sheet: unquoted(address.slice(0, bang)), address: address.slice(bang + 1) };
}

function unquoted(sheet: string): string {
  return sheet.startsWith("'") ? sheet.slice(1, -1).replace(/''/g, "'") : sheet;
}
