import type { ICellData, IRange, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { readAddress, readRange } from "../sheets/kit/address";
import type { Page, SheetCell } from "../sheets/kit/definition";
import { toScreen } from "../formula-text/dialect";
import { BODY_SIZE, type Look, lookOf, looks } from "../sheets/kit/look";
import type { CellValue } from "../screen/host";
import { typedKey } from "./sheet-values";
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  LocaleType,
  VerticalAlign,
  WrapStrategy,
} from "./univer";

let opened = 0;

/**
 * An id for each workbook opened: the engine keeps what it has read of a formula, its names resolved,
 * by the workbook's id, and would read another workbook's cells by the same one.
 */
export function freshWorkbookId(): string {
  return `trial${++opened}`;
}

const LINE_HEIGHT = 24;
/** A character of the body's size, and the cell's inner margin. */
const CHARACTER = 7.4;
const MARGIN = 8;
/** Free cells to try things in. */
const FREE_ROWS = 40;
const FREE_COLUMNS = 8;

export interface WorkbookOptions {
  readonly typed: ReadonlyMap<string, CellValue>;
  readonly namespace: string;
  readonly id: string;
  /** Whether the first rows stay in view; a small screen has no room for that. */
  readonly freezes: boolean;
}

/**
 * The pages of a ready-made sheet as the grid takes them. Formulas go without stored values: the
 * grid computes them itself, and trusts a stored one.
 */
export function workbookOf(
  pages: readonly Page[],
  options: WorkbookOptions,
): Partial<IWorkbookData> {
  const ids = pages.map((_, index) => `page${index}`);
  return {
    id: options.id,
    name: options.id,
    locale: LocaleType.EN_US,
    sheetOrder: ids,
    sheets: Object.fromEntries(
      pages.map((page, index) => [ids[index], worksheet(ids[index], page, options)]),
    ),
    styles: {},
    resources: [
      {
        name: "SHEET_DEFINED_NAME_PLUGIN",
        data: JSON.stringify(
          Object.fromEntries(names(pages, options.namespace).map((entry) => [entry.id, entry])),
        ),
      },
    ],
  };
}

interface DefinedName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
}

function names(pages: readonly Page[], namespace: string): DefinedName[] {
  return pages.flatMap((page) => {
    const cells = page.cells.flatMap(({ name, at }) =>
      name === undefined ? [] : [{ name, range: at }],
    );
    return [
      ...[...cells, ...(page.names ?? [])].map(({ name, range }) => ({
        name,
        formulaOrRefString: absolute(page.name, range),
      })),
      ...(page.functions ?? []).map(({ name, formula }) => ({
        name,
        formulaOrRefString: toScreen(formula, namespace),
      })),
    ].map((entry) => ({ id: entry.name, ...entry }));
  });
}

function absolute(page: string, range: string): string {
  return `'${page.replace(/'/g, "''")}'!${range.replace(/([A-Z]+)([0-9]+)/g, "$$$1$$$2")}`;
}

function worksheet(
  id: string,
  page: Page,
  { typed, namespace, freezes }: WorkbookOptions,
): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const mergeData: IRange[] = [];
  let lastColumn = page.widths.length - 1;
  // A spill may reach below what is printed.
  let lastRow = readRange(page.printArea).row + readRange(page.printArea).rows - 1;
  const put = (row: number, column: number, cell: ICellData) => {
    (cellData[row] ??= {})[column] = cell;
    lastColumn = Math.max(lastColumn, column);
    lastRow = Math.max(lastRow, row);
  };
  for (const cell of page.cells) {
    const { row, column } = readAddress(cell.at);
    if (cell.spill !== undefined) dressSpill(cell, cell.spill, row, column, put);
    const span = cell.span ?? 1;
    for (let across = 0; across < span; across++)
      put(row, column + across, { s: cellData[row]?.[column]?.s ?? styleOf(cell) });
    if (span > 1) {
      mergeData.push({
        startRow: row,
        endRow: row,
        startColumn: column,
        endColumn: column + span - 1,
      });
    }
    Object.assign(
      cellData[row][column],
      contentOf(cell, typed.get(typedKey(page.name, cell.at)), namespace),
    );
  }
  const frozen = freezes ? (page.frozenRows ?? 0) : 0;
  return {
    id,
    name: page.name,
    cellData,
    mergeData,
    rowCount: lastRow + 1 + FREE_ROWS,
    columnCount: lastColumn + 1 + FREE_COLUMNS,
    defaultRowHeight: LINE_HEIGHT,
    rowData: Object.fromEntries(
      [...page.lines].map(([row, lines]) => [row - 1, { h: lines * (LINE_HEIGHT - 6) + 6 }]),
    ),
    columnData: Object.fromEntries(
      page.widths.map((characters, column) => [
        column,
        { w: Math.round(characters * CHARACTER + MARGIN) },
      ]),
    ),
    showGridlines: BooleanNumber.TRUE,
    freeze: {
      xSplit: 0,
      ySplit: frozen,
      startRow: frozen > 0 ? frozen : -1,
      startColumn: -1,
    },
  };
}

function contentOf(cell: SheetCell, typed: CellValue | undefined, namespace: string): ICellData {
  if (typed !== undefined) return { v: typed };
  if (cell.formula !== undefined) return { f: toScreen(cell.formula, namespace) };
  if (cell.value === undefined) return {};
  // A leading apostrophe marks text that looks like a formula; it is not part of it.
  if (typeof cell.value === "string") return { v: cell.value.replace(/^'/, ""), t: 1 };
  return { v: cell.value };
}

function dressSpill(
  cell: SheetCell,
  spill: NonNullable<SheetCell["spill"]>,
  row: number,
  column: number,
  put: (row: number, column: number, cell: ICellData) => void,
): void {
  for (let down = 0; down < spill.reserved; down++) {
    for (let across = 0; across < spill.columns; across++) {
      const { align, ...look } = spill.headed && down === 0 ? looks.header : looks[cell.role];
      const format = spill.formats[across];
      // Columns that may hold words are left to the grid: words at the left, numbers at the right.
      const placed = format === "General" ? look : { ...look, align };
      put(row + down, column + across, { s: style(placed, format) });
    }
  }
}

function styleOf(cell: SheetCell): IStyleData {
  return style(lookOf(cell, cell.value), cell.format);
}

function style(look: Look, format?: string): IStyleData {
  return {
    fs: look.size ?? BODY_SIZE,
    vt: VerticalAlign.MIDDLE,
    ...(look.monospaced && { ff: "monospace" }),
    ...(look.bold && { bl: BooleanNumber.TRUE }),
    ...(look.italic && { it: BooleanNumber.TRUE }),
    ...(look.ink && { cl: { rgb: look.ink } }),
    ...(look.fill && { bg: { rgb: look.fill } }),
    ...(look.rule && { bd: { b: { s: BorderStyleTypes.MEDIUM, cl: { rgb: look.rule } } } }),
    ...(look.wrap && { tb: WrapStrategy.WRAP }),
    ...(look.align && {
      ht: look.align === "right" ? HorizontalAlign.RIGHT : HorizontalAlign.LEFT,
    }),
    ...(format !== undefined && { n: { pattern: format } }),
  };
}
