import { columnLetters } from "../sheets/kit/address";

/**
 * With add-sheets.ts the only module that talks to the host. Everything it gives and takes is plain
 * values, so that the rest of the pane can be tested without a host, and nothing here decides what
 * to do.
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

/** What the host is and what it lacks. */
export interface HostState {
  readonly inExcel: boolean;
  readonly platform: string;
  readonly version: string;
  readonly dark: boolean;
  readonly has: (set: RequirementSet) => boolean;
  /** Whether several steps can be undone as one. */
  readonly oneUndo: boolean;
}

/** Requirement sets by what they bring. */
export const requirementSets = {
  functions: ["CustomFunctionsRuntime", "1.2"],
  cells: ["ExcelApi", "1.7"],
  validation: ["ExcelApi", "1.8"],
  printing: ["ExcelApi", "1.9"],
  spills: ["ExcelApi", "1.12"],
} as const;

/** A host without it takes a step back for each part of what was added; nothing is missing. */
const ONE_UNDO = ["ExcelApi", "1.20"] as const;
export type RequirementSet = keyof typeof requirementSets;

export async function hostState(): Promise<HostState> {
  const info = await Office.onReady();
  const inExcel = info.host === Office.HostType.Excel;
  const context = inExcel ? Office.context : undefined;
  const isSupported = ([set, version]: readonly [string, string]) =>
    context?.requirements.isSetSupported(set, version) ?? false;
  return {
    inExcel,
    platform: String(context?.diagnostics?.platform ?? ""),
    version: String(context?.diagnostics?.version ?? ""),
    dark: isDark(context?.officeTheme?.bodyBackgroundColor),
    has: (set) => isSupported(requirementSets[set]),
    oneUndo: isSupported(ONE_UNDO),
  };
}

/** Hosts give their colors, "#FFFFFF"; whether that is dark follows from its lightness. */
function isDark(color: string | undefined): boolean {
  const match = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(color ?? "");
  if (match === null) return false;
  const [red, green, blue] = match.slice(1).map((part) => parseInt(part, 16));
  // Rec. 601 luma: enough to tell a dark theme from a light one.
  return 0.299 * red + 0.587 * green + 0.114 * blue < 128;
}

/** While a cell is being typed in the host takes nothing: a step waits until that is done. */
export function run<T>(
  step: (context: Excel.RequestContext) => Promise<T>,
  more: Excel.RunOptions = {},
): Promise<T> {
  return Excel.run({ delayForCellEdit: true, ...more }, step);
}

/** What this module itself refuses, told apart from the host's own errors. */
export class Refusal extends Error {
  constructor(readonly code: "TooLarge" | "SheetThere" | "WorkbookProtected") {
    super(code);
  }
}

export async function selectedCell(): Promise<Selection> {
  return run(async (context) => {
    const cell = context.workbook.getActiveCell();
    cell.load("address, formulas");
    await context.sync();
    return { ...splitAddress(cell.address), content: String(cell.formulas[0][0]) };
  });
}

/** Puts a formula (or what stood there before) into one cell and gives what the cell then shows. */
export async function writeCell(at: CellAt, content: string): Promise<unknown> {
  return run(async (context) => {
    const cell = context.workbook.worksheets.getItem(at.sheet).getRange(at.address);
    cell.formulas = [[content]];
    cell.load("values");
    await context.sync();
    return cell.values[0][0] as unknown;
  });
}

export async function contentOf(at: CellAt): Promise<string> {
  return run(async (context) => {
    const cell = context.workbook.worksheets.getItem(at.sheet).getRange(at.address);
    cell.load("formulas");
    await context.sync();
    return String(cell.formulas[0][0]);
  });
}

/** As many cells are read at a time: a host answers no more than a few megabytes at once. */
const CELLS_AT_A_TIME = 20000;

/** The active worksheet's name and its cells that hold formulas. */
export async function formulasOfSheet(): Promise<{ sheet: string; cells: CellContent[] }> {
  return run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    sheet.load("name");
    const used = sheet.getUsedRangeOrNullObject(false);
    used.load("rowIndex, columnIndex, rowCount, columnCount, isNullObject");
    await context.sync();
    if (used.isNullObject) return { sheet: sheet.name, cells: [] };
    const { rowIndex, columnIndex, rowCount, columnCount } = used;
    const rows = Math.max(1, Math.floor(CELLS_AT_A_TIME / columnCount));
    const cells: CellContent[] = [];
    for (let first = 0; first < rowCount; first += rows) {
      const count = Math.min(rows, rowCount - first);
      const top = rowIndex + first;
      const part = sheet.getRangeByIndexes(top, columnIndex, count, columnCount);
      part.load("formulas, values");
      await context.sync();
      part.formulas.forEach((row: unknown[], i: number) =>
        row.forEach((formula, j) => {
          if (typeof formula !== "string" || !formula.startsWith("=")) return;
          cells.push({
            address: `${columnLetters(columnIndex + j)}${top + i + 1}`,
            formula,
            value: part.values[i][j] as unknown,
          });
        }),
      );
      part.untrack();
    }
    return { sheet: sheet.name, cells };
  });
}

/** Enters cells anew, as if each were typed again; gives how many of them still show #NAME?. */
export async function reenter(
  sheetName: string,
  cells: readonly { readonly address: string; readonly formula: string }[],
): Promise<number> {
  return run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetName);
    const ranges = cells.map(({ address, formula }) => {
      const range = sheet.getRange(address);
      range.formulas = [[formula]];
      return range;
    });
    await context.sync();
    for (const range of ranges) range.load("values");
    await context.sync();
    return ranges.filter((range) => range.values[0][0] === "#NAME?").length;
  });
}

/** A reference to more cells than any of the functions takes is not read. */
const MOST_CELLS = 100000;

/** Values of a reference or a name on the active worksheet; undefined where the host finds none. */
export async function valuesOf(reference: string): Promise<unknown[][] | undefined> {
  try {
    return await run(async (context) => {
      const bang = reference.lastIndexOf("!");
      const sheets = context.workbook.worksheets;
      const sheet =
        bang < 0 ? sheets.getActiveWorksheet() : sheets.getItem(unquoted(reference.slice(0, bang)));
      const inside = reference.slice(bang + 1);
      const spilled = inside.endsWith("#");
      const range = sheet.getRange(spilled ? inside.slice(0, -1) : inside);
      const whole = spilled ? range.getSpillingToRange() : range;
      whole.load("cellCount");
      await context.sync();
      if (whole.cellCount > MOST_CELLS) return undefined;
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
  await run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(at.sheet);
    sheet.activate();
    sheet.getRange(at.address).select();
    await context.sync();
  });
}

export async function sheetNames(): Promise<string[]> {
  return run(async (context) => {
    const sheets = context.workbook.worksheets;
    sheets.load("items");
    await context.sync();
    return sheets.items.map((sheet) => sheet.name);
  });
}

export async function names(): Promise<WorkbookName[]> {
  return run(async (context) => {
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
  return run(async (context) => {
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
  await run(async (context) => {
    context.workbook.names.getItem(name).delete();
    await context.sync();
  });
}

/** The selected table: the selection itself, or the block of filled cells around a single cell. */
export async function selectedTable(): Promise<{ at: string; values: unknown[][] }> {
  return run(async (context) => {
    const selected = context.workbook.getSelectedRange();
    selected.load("cellCount");
    const region = selected.getSurroundingRegion();
    region.load("cellCount");
    await context.sync();
    const table = selected.cellCount === 1 ? region : selected;
    if (table.cellCount > MOST_CELLS) throw new Refusal("TooLarge");
    table.load("address, values");
    await context.sync();
    return { at: table.address, values: table.values };
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
