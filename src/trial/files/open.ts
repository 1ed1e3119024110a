import { readXlsx, type Cell, type Workbook } from "hucre";
import { readAddress, writeAddress } from "../../sheets/kit/address";
import type { Page, ReadyMadeSheet, SheetCell, UnitSystem } from "../../sheets/kit/definition";
import { LISTS_SHEET } from "../../sheets/kit/lists";
import { unmerged } from "../../sheets/kit/unmerged";
import { fromHost, rename, tokens, toScreen } from "../../formula-text/dialect";
import type { CellValue } from "../../screen/host";
import { isWorkbookNotice } from "../../words/workbook-notices";
import { type Changes, type Content, isFormula, type OwnSheet, sameContent } from "../kept/changes";
import { typedKey } from "../sheet-values";
import { checkedPackage, Refused } from "./package";
import { spillArea } from "./pages";
import { WIDTHS } from "./save";

export interface Opened {
  readonly sheet: ReadyMadeSheet;
  readonly system: UnitSystem;
  readonly name: string;
  readonly changes: Changes;
}

const MOST_ROWS = 3000;
const MOST_CELLS = 200000;

/** The ready-made workbooks as files have them in one language. */
export interface Shelf {
  readonly sheets: readonly ReadyMadeSheet[];
  /** The same with the names of pages by which work is kept; `sheets` have them unless given. */
  readonly kept?: readonly ReadyMadeSheet[];
  /** Pages that say in the file's language what functions say, and hold no work. */
  readonly beside?: readonly string[];
}

/** The file is none of the workbooks of a shelf. */
class NoneOfThese extends Refused {}

/**
 * Reads a workbook that this page or the add-in wrote, in the language from which it differs least.
 * Throws Refused, in words, for any other file.
 */
export async function openWorkbook(
  bytes: Uint8Array,
  fileName: string,
  shelves: readonly Shelf[],
  namespace: string,
): Promise<Opened> {
  const checked = checkedPackage(bytes);
  let book: Workbook;
  try {
    book = await readXlsx(checked, { maxRows: MOST_ROWS, range: `A1:IV${MOST_ROWS}` });
  } catch {
    throw new Refused("The file is damaged: it cannot be read as a workbook.");
  }
  const count = book.sheets.reduce(
    (sum, { rows }) => sum + rows.reduce((cells, row) => cells + row.length, 0),
    0,
  );
  if (count > MOST_CELLS)
    throw new Refused("The file holds more cells than a workbook of these pages.");
  let best: Opened | undefined;
  let why: Refused | undefined;
  for (const shelf of shelves)
    try {
      const opened = fromShelf(book, fileName, shelf, namespace);
      if (best === undefined || opened.changes.contents.size < best.changes.contents.size)
        best = opened;
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      if (why === undefined || why instanceof NoneOfThese) why = error;
    }
  if (best !== undefined) return best;
  throw why ?? new NoneOfThese("There are no ready-made workbooks.");
}

function fromShelf(book: Workbook, fileName: string, shelf: Shelf, namespace: string): Opened {
  const { sheets, kept: keptSheets = sheets, beside = [] } = shelf;
  const names = new Set(book.sheets.map(({ name }) => name));
  const index = sheets.findIndex((one) => one.pages("US").every(({ name }) => names.has(name)));
  if (index < 0)
    throw new NoneOfThese(
      "It is none of the ready-made workbooks: their pages are not in it, or have other names.",
    );
  const sheet = sheets[index];
  const system = unitsOf(book, sheet.pages("US"));
  const pages = sheet.pages(system);
  checkEdition(book, pages);
  const keptNames = new Map(
    keptSheets[index].pages(system).map(({ name }, i) => [pages[i].name, name]),
  );
  const keptName = (page: string) => keptNames.get(page) ?? page;
  const isRenamed = [...keptNames].some(([name, other]) => name !== other);
  const inKept = (content: Content): Content =>
    isRenamed && isFormula(content)
      ? { formula: rename(content.formula, new Map(), keptNames) }
      : content;
  const widths = givenWidths(book);
  const laid = unmerged(
    pages.map((page, i) => ({
      ...page,
      widths: Array.from(
        { length: Math.max(page.widths.length, widths[i] ?? 0) },
        (_, column) => page.widths[column] ?? 1,
      ),
    })),
  );
  const contents = new Map<string, Content>();
  let formulas = 0;
  let kept = 0;
  for (const page of laid) {
    const cells = cellsOf(book, page.name);
    const known = new Set<string>();
    for (const cell of page.cells) {
      known.add(cell.at);
      for (const at of spillArea(cell)) known.add(at);
      const now = contentOf(cells.get(placeOf(cell.at)), namespace);
      const before = readyContent(cell);
      if (isFormula(before)) {
        formulas += 1;
        if (isFormula(now)) kept += 1;
      }
      if (!isSame(now, before))
        contents.set(typedKey(keptName(page.name), cell.shownIn ?? cell.at), inKept(now));
    }
    for (const [place, cell] of cells) {
      const [row, column] = place.split(",").map(Number);
      const at = writeAddress({ row, column });
      const content = contentOf(cell, namespace);
      if (known.has(at) || content === null || isNotice(content)) continue;
      contents.set(typedKey(keptName(page.name), at), inKept(content));
    }
  }
  if (formulas > 0 && kept < formulas / 2)
    throw new Refused(
      "It is a copy with values only: what was worked out stands in it without its formulas. Open the workbook it was made from.",
    );
  const ownSheets = book.sheets
    .filter(
      ({ name }) =>
        name !== LISTS_SHEET && !beside.includes(name) && pages.every((page) => page.name !== name),
    )
    .map(({ name }) => ownSheet(name, cellsOf(book, name), namespace, inKept));
  return {
    sheet,
    system,
    name: nameOf(book, sheet, fileName),
    changes: { contents, formats: new Map(), sizes: new Map(), ownSheets },
  };
}

/** The cells of a page by row and column: plain values, and over them those with more to them. */
function cellsOf(book: Workbook, page: string): ReadonlyMap<string, Given> {
  const sheet = book.sheets.find(({ name }) => name === page);
  const found = new Map<string, Given>();
  sheet?.rows.forEach((values, row) =>
    values.forEach((value, column) => {
      if (value !== null && value !== undefined) found.set(`${row},${column}`, { value });
    }),
  );
  for (const [place, cell] of sheet?.cells ?? []) found.set(place, cell);
  return found;
}

type Given = Pick<Cell, "value" | "formula">;

function placeOf(at: string): string {
  const { row, column } = readAddress(at);
  return `${row},${column}`;
}

function unitsOf(book: Workbook, pages: readonly Page[]): UnitSystem {
  for (const page of pages)
    for (const cell of page.cells) {
      if (cell.name !== "Units" || cell.role !== "input") continue;
      const system = cellsOf(book, page.name).get(placeOf(cell.at))?.value;
      if (system === "US" || system === "SI") return system;
      throw new Refused(
        `Its units are unknown: "US" or "SI" is due in cell ${cell.at} of page ${page.name}.`,
      );
    }
  throw new Refused("Its units are unknown.");
}

/** Cells are read by where they stand; a name that stands elsewhere tells of another edition. */
function checkEdition(book: Workbook, pages: readonly Page[]): void {
  const given = new Map(
    (book.namedRanges ?? []).map(({ name, range }) => [name, range.replace(/[$']/g, "")]),
  );
  // A copy with values only has no names; it is refused for what it is.
  const named = pages.flatMap((page) =>
    page.cells.flatMap(({ name, at }) =>
      name === undefined ? [] : [[name, `${page.name}!${at}`]],
    ),
  );
  const isKnown = named.some(([name]) => given.has(name));
  const moved = named.filter(([name, range]) => given.get(name) !== range);
  if (isKnown && moved.length > 0)
    throw new Refused(
      `It was made with another edition of the workbook: ${moved[0][0]} stands elsewhere in it. Nothing of it was read.`,
    );
}

function givenWidths(book: Workbook): readonly number[] {
  const text = book.properties?.custom?.[WIDTHS];
  try {
    const plain: unknown = typeof text === "string" ? JSON.parse(text) : [];
    return Array.isArray(plain)
      ? plain.map((width) => (typeof width === "number" && width <= 256 ? width : 0))
      : [];
  } catch {
    return [];
  }
}

function readyContent({ formula, value }: SheetCell): Content {
  if (formula !== undefined) return { formula };
  if (value === undefined) return null;
  return typeof value === "string" ? value.replace(/^'/, "") : value;
}

/** Days are counted as the file counts them. */
const FIRST_DAY = 25569;
const DAY = 86400000;

function contentOf(cell: Given | undefined, namespace: string): Content {
  if (cell === undefined) return null;
  if (cell.formula !== undefined && cell.formula !== "")
    return { formula: `=${fromHost(cell.formula.replace(/^=/, ""), namespace)}` };
  const { value } = cell;
  if (value instanceof Date) return value.getTime() / DAY + FIRST_DAY;
  if (typeof value === "string") return value === "" ? null : value.replace(/^'/, "");
  return (value ?? null) as CellValue;
}

/** Programs write a formula with other spaces and capitals than it was typed with. */
function isSame(one: Content, two: Content): boolean {
  if (isFormula(one) && isFormula(two)) return bare(one.formula) === bare(two.formula);
  return sameContent(one, two);
}

function bare(formula: string): string {
  return tokens(formula.replace(/^=/, ""))
    .filter(({ text }) => text.trim() !== "")
    .map(({ kind, text }) => (kind === "name" ? text.toUpperCase() : text))
    .join("")
    .replace(/'([A-Z]+)'!/gi, "$1!");
}

function isNotice(content: Content): boolean {
  return typeof content === "string" && isWorkbookNotice(content);
}

function ownSheet(
  name: string,
  cells: ReadonlyMap<string, Given>,
  namespace: string,
  inKept: (content: Content) => Content,
): OwnSheet {
  const cellData: Record<string, Record<string, unknown>> = {};
  for (const [place, cell] of cells) {
    const [row, column] = place.split(",");
    const content = inKept(contentOf(cell, namespace));
    if (content === null || isNotice(content)) continue;
    (cellData[row] ??= {})[column] = isFormula(content)
      ? { f: toScreen(content.formula, namespace) }
      : typeof content === "boolean"
        ? { v: content ? 1 : 0, t: 3 }
        : { v: content, ...(typeof content === "string" && { t: 1 }) };
  }
  return { name, data: { cellData, rowCount: 200, columnCount: 30 } };
}

function nameOf(book: Workbook, sheet: ReadyMadeSheet, fileName: string): string {
  const title = book.properties?.title?.trim();
  if (title !== undefined && title !== "" && title !== sheet.title) return title.slice(0, 80);
  return fileName.replace(/\.xlsx$/i, "").slice(0, 80) || sheet.title;
}
