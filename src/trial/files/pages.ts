import { readAddress, readRange, writeAddress } from "../../sheets/kit/address";
import type { Page, SheetCell, Spilling } from "../../sheets/kit/definition";
import { fromHost } from "../../formula-text/dialect";
import { type Changes, type Content, isFormula } from "../kept/changes";
import type { CellPlace, ShownCell } from "../sheet-values";

type Read = (place: CellPlace) => ShownCell;

/** Characters of a column that nobody gave a width. */
const USUAL_WIDTH = 12;

/** The ready-made pages with all that a piece of work changed, and its own pages behind them. */
export function pagesAsTheyStand(
  pages: readonly Page[],
  changes: Changes,
  read: Read,
  namespace: string,
): Page[] {
  const byPage = new Map<string, Map<string, Content>>();
  for (const [key, content] of changes.contents) {
    const at = key.lastIndexOf("!");
    const cells = byPage.get(key.slice(0, at)) ?? new Map<string, Content>();
    byPage.set(key.slice(0, at), cells.set(key.slice(at + 1), content));
  }
  return [
    ...pages.map((page) => asItStands(page, byPage.get(page.name) ?? new Map(), read)),
    ...changes.ownSheets.map(({ name, data }) => ownPage(name, data, namespace)),
  ];
}

function asItStands(page: Page, contents: ReadonlyMap<string, Content>, read: Read): Page {
  const own = new Map(contents);
  const cells = page.cells.map((cell): SheetCell => {
    const content = own.get(cell.at);
    own.delete(cell.at);
    const spill = cell.spill && actualSpill(page.name, cell, cell.spill, read);
    if (content === undefined) return spill === undefined ? cell : { ...cell, spill };
    const nothing = { formula: undefined, value: undefined, spill: undefined };
    return { ...cell, ...nothing, ...put(content) };
  });
  let columns = page.widths.length;
  for (const [at, content] of own) {
    if (content === null) continue;
    cells.push({ at, role: typeof content === "string" ? "text" : "result", ...put(content) });
    columns = Math.max(columns, readAddress(at).column + 1);
  }
  const widths = Array.from({ length: columns }, (_, i) => page.widths[i] ?? USUAL_WIDTH);
  return { ...page, cells, widths };
}

function put(content: Content): Pick<SheetCell, "formula" | "value"> {
  if (isFormula(content)) return { formula: content.formula };
  return content === null ? {} : { value: content };
}

/** As many rows and columns as the result fills with the inputs as they stand. */
function actualSpill(page: string, { at }: SheetCell, spill: Spilling, read: Read): Spilling {
  const { row, column } = readAddress(at);
  const holds = (down: number, across: number) => {
    const { value } = read({ page, row: row + down, column: column + across });
    return value !== null && value !== "";
  };
  if (read({ page, row, column }).error !== undefined) return { ...spill, rows: 1, columns: 1 };
  let rows = 1;
  let columns = 1;
  for (let down = 0; down < spill.reserved; down++)
    for (let across = 0; across < spill.formats.length; across++)
      if (holds(down, across)) {
        rows = Math.max(rows, down + 1);
        columns = Math.max(columns, across + 1);
      }
  return { ...spill, rows, columns };
}

interface GridCell {
  readonly f?: string;
  readonly v?: unknown;
  readonly t?: unknown;
}

const BOOLEAN = 3;

/** A page that a user added in the grid, as far as a definition can hold it: contents, not looks. */
function ownPage(name: string, data: unknown, namespace: string): Page {
  const { cellData = {} } = data as {
    cellData?: Record<string, Record<string, GridCell | undefined> | undefined>;
  };
  const cells: SheetCell[] = [];
  for (const [row, line] of Object.entries(cellData))
    for (const [column, cell] of Object.entries(line ?? {})) {
      const at = writeAddress({ row: Number(row), column: Number(column) });
      if (cell?.f) cells.push({ at, role: "result", formula: fromHost(cell.f, namespace) });
      else if (cell?.t === BOOLEAN) cells.push({ at, role: "result", value: cell.v === 1 });
      else if (typeof cell?.v === "number") cells.push({ at, role: "result", value: cell.v });
      else if (typeof cell?.v === "string" && cell.v !== "")
        cells.push({ at, role: "text", value: cell.v });
    }
  const places = cells.map(({ at }) => readAddress(at));
  const columns = Math.max(1, ...places.map(({ column }) => column + 1));
  const rows = Math.max(1, ...places.map(({ row }) => row + 1));
  return {
    name,
    widths: Array.from({ length: columns }, () => USUAL_WIDTH),
    cells,
    lines: new Map(),
    printArea: `A1:${writeAddress({ row: rows - 1, column: columns - 1 })}`,
  };
}

/** Addresses that results may fill, without the cell that holds the formula. */
export function spillArea({ at, spill }: SheetCell): string[] {
  if (spill === undefined) return [];
  const { row, column } = readRange(at);
  const found: string[] = [];
  for (let down = 0; down < spill.reserved; down++)
    for (let across = 0; across < Math.max(spill.columns, spill.formats.length); across++)
      if (down + across > 0) found.push(writeAddress({ row: row + down, column: column + across }));
  return found;
}
