import { textSaid } from "../words/spoken";
import { make } from "./dom";
import type { CellValue } from "./host";
import { formatResult, formatValue } from "./number-format";

interface TableOptions {
  /** What the table is, for who does not see it. */
  readonly label: string;
  /** The number format of each column; without one, as many digits as a result has. */
  readonly formats?: readonly string[];
  /** Whether the first row names the columns; a row of words alone over others does unless told. */
  readonly headed?: boolean;
}

/** What a function fills cells with, as a table: what it says in words is in the page's language. */
export function resultTable(
  rows: readonly (readonly CellValue[])[],
  { label, formats = [], headed = isHeaded(rows) }: TableOptions,
): HTMLElement {
  const head = headed ? rows.slice(0, 1) : [];
  const body = rows.slice(head.length);
  const kind = (value: CellValue | undefined) => ({
    class: typeof value === "string" ? "words" : "number",
  });
  const headCells = (values: readonly CellValue[]) =>
    values.map((value, column) =>
      make("th", { scope: "col", ...kind(body[0]?.[column]) }, said(value)),
    );
  const bodyCells = (values: readonly CellValue[]) =>
    values.map((value, column) => make("td", kind(value), said(value, formats[column])));
  return scrolled(
    make(
      "table",
      { class: "result-table" },
      make("thead", {}, ...head.map((values) => make("tr", {}, ...headCells(values)))),
      make("tbody", {}, ...body.map((values) => make("tr", {}, ...bodyCells(values)))),
    ),
    label,
  );
}

/** A wide table scrolls inside its own frame, which the keyboard can reach. */
export function scrolled(table: HTMLElement, label: string): HTMLElement {
  return make("div", { class: "scrolled", tabindex: 0, role: "group", "aria-label": label }, table);
}

function isHeaded(rows: readonly (readonly CellValue[])[]): boolean {
  return rows.length > 1 && rows[0].every((value) => typeof value === "string");
}

function said(value: CellValue, format?: string): string {
  if (typeof value === "string") return textSaid(value);
  return format === undefined ? formatResult(value) : formatValue(value, format);
}
