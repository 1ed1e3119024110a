import type { ICellData, IStyleData, IWorkbookData, IWorksheetData } from "@univerjs/core";
import { readAddress, writeAddress } from "../../sheets/kit/address";
import { fromHost, toScreen } from "../../formula-text/dialect";
import type { CellValue } from "../../screen/host";
import { typedKey } from "../sheet-values";
import { type Changes, type Content, isFormula, sameContent } from "./changes";

type Book = Pick<IWorkbookData, "sheets" | "styles" | "sheetOrder">;

const BOOLEAN = 3;

/** A cell's content as the grid takes it. */
export function cellOf(content: Content, namespace: string): ICellData {
  if (isFormula(content)) return { f: toScreen(content.formula, namespace), v: null, t: null };
  if (typeof content === "string") return { v: content, t: 1, f: null };
  return { v: content, f: null, t: null };
}

/** A cell's content as it is written down. Formulas that share their text are read by `formula`. */
export function contentOf(
  cell: ICellData | null | undefined,
  namespace: string,
  formula: () => string,
): Content {
  if (cell === null || cell === undefined) return null;
  const written = cell.f ?? (cell.si ? formula() : "");
  if (written !== "") return { formula: fromHost(written, namespace) };
  const lines = cell.p?.body?.dataStream;
  if (lines !== undefined) return lines.replace(/\r\n?$/, "").replace(/\r/g, "\n");
  if (cell.t === BOOLEAN) return cell.v === 1 || cell.v === true;
  return cell.v === undefined || cell.v === "" ? null : (cell.v as CellValue);
}

/** The workbook with what was changed in it. */
export function withChanges(
  book: Partial<IWorkbookData>,
  changes: Changes,
  namespace: string,
): Partial<IWorkbookData> {
  const sheets = book.sheets ?? {};
  const byName = new Map(Object.values(sheets).map((sheet) => [sheet.name, sheet]));
  const put = (key: string, cell: ICellData) => {
    const at = key.lastIndexOf("!");
    const sheet = byName.get(key.slice(0, at));
    if (sheet === undefined) return;
    const { row, column } = readAddress(key.slice(at + 1));
    const cells = ((sheet.cellData ??= {})[row] ??= {});
    cells[column] = { ...cells[column], ...cell };
    sheet.rowCount = Math.max(sheet.rowCount ?? 0, row + 1);
    sheet.columnCount = Math.max(sheet.columnCount ?? 0, column + 1);
  };
  for (const [key, content] of changes.contents) put(key, cellOf(content, namespace));
  for (const [key, look] of changes.formats) put(key, { s: structuredClone(look) as IStyleData });
  for (const [key, size] of changes.sizes) {
    const at = key.lastIndexOf("!");
    const sheet = byName.get(key.slice(0, at));
    const [kind, index] = key.slice(at + 1).split(" ");
    if (sheet === undefined) continue;
    if (kind === "column") (sheet.columnData ??= {})[Number(index)] = { w: size };
    else (sheet.rowData ??= {})[Number(index)] = { h: size, ia: 0 };
  }
  const own = changes.ownSheets.map(({ name, data }, index) => ({
    ...(structuredClone(data) as Partial<IWorksheetData>),
    id: `own${index}`,
    name,
  }));
  return {
    ...book,
    sheetOrder: [...(book.sheetOrder ?? []), ...own.map(({ id }) => id)],
    sheets: { ...sheets, ...Object.fromEntries(own.map((sheet) => [sheet.id, sheet])) },
  };
}

/** In what the grid's workbook differs from the ready-made one. */
export function changesIn(
  now: Book,
  ready: Partial<IWorkbookData>,
  namespace: string,
  formula: (page: string, row: number, column: number) => string,
): Changes {
  const contents = new Map<string, Content>();
  const formats = new Map<string, unknown>();
  const sizes = new Map<string, number>();
  const readyByName = new Map(
    Object.values(ready.sheets ?? {}).map((sheet) => [sheet.name ?? "", sheet]),
  );
  const ownSheets = [];
  for (const id of now.sheetOrder) {
    const sheet = now.sheets[id];
    const name = sheet.name ?? id;
    const before = readyByName.get(name);
    if (before === undefined) {
      ownSheets.push({ name, data: ownSheet(sheet, now.styles, name, formula) });
      continue;
    }
    for (const [row, column] of cellsOf(sheet, before)) {
      const is = sheet.cellData?.[row]?.[column];
      const was = before.cellData?.[row]?.[column];
      const key = typedKey(name, writeAddress({ row, column }));
      const content = contentOf(is, namespace, () => formula(name, row, column));
      if (
        !sameContent(
          content,
          contentOf(was, namespace, () => ""),
        )
      )
        contents.set(key, content);
      const look = lookOf(is, now.styles);
      if (!sameLook(look, lookOf(was, {}))) formats.set(key, look);
    }
    for (const [index, size] of Object.entries(sheet.columnData ?? {})) {
      const width = (size as { w?: number } | undefined)?.w;
      const usual = before.columnData?.[Number(index)]?.w ?? before.defaultColumnWidth;
      if (width !== undefined && usual !== undefined && Math.abs(width - usual) >= 1)
        sizes.set(`${name}!column ${index}`, width);
    }
    for (const [index, size] of Object.entries(sheet.rowData ?? {})) {
      // Heights that the grid fits to the text are its own.
      const given = size as { h?: number; ia?: number } | undefined;
      const usual = before.rowData?.[Number(index)]?.h ?? before.defaultRowHeight;
      if (given?.ia === 0 && given.h !== undefined && Math.abs(given.h - (usual ?? 0)) >= 1)
        sizes.set(`${name}!row ${index}`, given.h);
    }
  }
  return { contents, formats, sizes, ownSheets };
}

type Sheet = Partial<Pick<IWorksheetData, "cellData" | "columnData" | "rowData" | "name">>;

function cellsOf(...sheets: readonly Sheet[]): [number, number][] {
  const seen = new Map<string, [number, number]>();
  for (const { cellData } of sheets)
    for (const row of Object.keys(cellData ?? {}))
      for (const column of Object.keys(cellData?.[Number(row)] ?? {}))
        seen.set(`${row} ${column}`, [Number(row), Number(column)]);
  return [...seen.values()];
}

/** A page of the user's own without what the grid works out again. */
function ownSheet(
  sheet: Partial<IWorksheetData>,
  styles: Book["styles"],
  name: string,
  formula: (page: string, row: number, column: number) => string,
): unknown {
  const cellData: Record<number, Record<number, ICellData>> = {};
  for (const [row, column] of cellsOf(sheet)) {
    const cell = sheet.cellData?.[row]?.[column];
    if (cell === undefined || cell === null) continue;
    const written = cell.f ?? (cell.si ? formula(name, row, column) : undefined);
    const look = lookOf(cell, styles);
    (cellData[row] ??= {})[column] = {
      ...(written ? { f: written } : { v: cell.v, t: cell.t }),
      ...(cell.p !== undefined && cell.p !== null && { p: cell.p }),
      ...(Object.keys(look).length > 0 && { s: look }),
    };
  }
  const { rowCount, columnCount, columnData, rowData, mergeData } = sheet;
  return JSON.parse(
    JSON.stringify({ cellData, rowCount, columnCount, columnData, rowData, mergeData }),
  );
}

function lookOf(cell: ICellData | null | undefined, styles: Book["styles"]): IStyleData {
  const given = cell?.s;
  if (given === undefined || given === null) return {};
  return (typeof given === "string" ? styles[given] : given) ?? {};
}

/** What says nothing (null, or the grid's own "none") counts as not there. */
function sameLook(one: IStyleData, two: IStyleData): boolean {
  return plain(one) === plain(two);
}

function plain(look: unknown): string {
  if (typeof look !== "object" || look === null) return JSON.stringify(look ?? null);
  const entries = Object.entries(look)
    .filter(([, value]) => value !== null && value !== undefined)
    .map(([key, value]) => [key, plain(value)] as const)
    .filter(([, value]) => value !== "{}")
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([key, value]) => `${key}:${value}`).join()}}`;
}
