import { InvalidInput } from "../ground/domain-error";

/** What a host hands over for one argument: a value, a 2-D range, null for an omitted one. */
export type Cell = unknown;

/** An empty cell reaches a function as null, as "" or (on some hosts) as 0: 0 is judged by the argument's limit. */
export function isBlank(value: Cell): boolean {
  return (
    value === null || value === undefined || (typeof value === "string" && value.trim() === "")
  );
}

/** A range that holds exactly one cell stands for that cell; a larger one cannot. */
export function single(name: string, cell: Cell): Cell {
  if (!Array.isArray(cell)) return cell;
  const rows = cell as unknown[];
  if (rows.length === 1) {
    const row = rows[0];
    if (!Array.isArray(row)) return row;
    if (row.length === 1) return row[0];
  }
  throw new InvalidInput(`${name} takes one cell; got ${describe(cell)}`);
}

/** The rows of a range; a single value is a range of one cell. Blank all through: no rows. */
export function rows(cell: Cell): Cell[][] {
  if (isBlank(cell)) return [];
  if (!Array.isArray(cell)) return [[cell]];
  return cell.map((row) => (Array.isArray(row) ? (row as Cell[]) : [row]));
}

/** How an error message names what came. Long text is cut: it is a message, not a mirror. */
export function describe(value: Cell): string {
  if (isBlank(value)) return "a blank";
  if (typeof value === "number") return Number.isFinite(value) ? String(value) : "not a number";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string")
    return value.length > 40 ? `"${value.slice(0, 40)}…"` : `"${value}"`;
  if (Array.isArray(value)) {
    const grid = rows(value);
    const columns = grid.length === 0 ? 0 : grid[0].length;
    return `a range of ${grid.length} ${plural(grid.length, "row")} and ${columns} ${plural(columns, "column")}`;
  }
  return "a value that is neither number nor text";
}

function plural(count: number, word: string): string {
  return count === 1 ? word : `${word}s`;
}
