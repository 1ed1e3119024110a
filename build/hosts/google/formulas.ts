import { DEFAULT_NAMESPACE, tokens } from "../../../src/formula-text/dialect";
import { columnLetters } from "../../../src/sheets/kit/address";
import { closing, movedOff } from "../formula-parts";
import { googleName } from "./code";

/** Rows and columns that a table of the helper page may take. */
export const TABLE_ROWS = 200;
const TABLE_COLUMNS = 16;

export const TABLES = "Tables";

const OURS = new RegExp(`\\b${DEFAULT_NAMESPACE}\\.([A-Z0-9.]+)(?=\\()`, "gi");

/** A formula as a Google sheet takes it, or a text that shows one: our functions without dots. */
export function respelled(text: string): string {
  return text.replace(OURS, (_, name: string) =>
    googleName(DEFAULT_NAMESPACE, name.toUpperCase().replace(/\./g, "_")),
  );
}

/**
 * Each call there may go to a server: a table that many cells read is worked out once, on a page of
 * its own, and they read that. Where the table is an error, so is what reads it: below the error its
 * place is empty, and empty would count as 0.
 */
export class SharedTables {
  private readonly places = new Map<string, number>();

  constructor(private readonly spills: (name: string) => boolean) {}

  /** The formula with INDEX(table, …) reading the shared table. Cells are those of `page`. */
  sharing(formula: string, page: string): string {
    const all = tokens(formula);
    let text = "";
    for (let i = 0; i < all.length; i++) {
      const end = this.tableEnd(all, i);
      if (end === undefined) {
        text += all[i].text;
        continue;
      }
      // INDEX( call , … ): the call stands from i + 2 to end.
      const close = closing(all, i + 1);
      const call = movedOff(page, all.slice(i + 2, end + 1));
      const range = this.rangeOf(call.replace(/\s+/g, " "));
      const rest = all
        .slice(end + 1, close + 1)
        .map((token) => token.text)
        .join("");
      const [first] = range.split(":");
      text += `IF(ISERROR(${first}), ${first}, INDEX(${range}${rest})`;
      i = close;
    }
    return text;
  }

  /** The calls, each with the column of the helper page from which it spills. */
  calls(): { readonly call: string; readonly column: number }[] {
    return [...this.places].map(([call, at]) => ({ call, column: firstColumn(at) }));
  }

  /** Columns that the tables take on the helper page. */
  columns(): number {
    return firstColumn(this.places.size) - 1;
  }

  private rangeOf(call: string): string {
    const at = this.places.get(call) ?? this.places.size;
    this.places.set(call, at);
    const from = columnLetters(firstColumn(at));
    const to = columnLetters(firstColumn(at) + TABLE_COLUMNS - 1);
    return `'${TABLES}'!$${from}$1:$${to}$${TABLE_ROWS}`;
  }

  /** Where INDEX( is followed by one call of ours that gives a table: the end of that call. */
  private tableEnd(all: ReturnType<typeof tokens>, i: number): number | undefined {
    const isIndex = all[i].text.toUpperCase() === "INDEX" && all[i + 1]?.text === "(";
    const name = all[i + 2]?.text.toUpperCase() ?? "";
    if (!isIndex || !name.startsWith(`${DEFAULT_NAMESPACE}.`) || all[i + 3]?.text !== "(")
      return undefined;
    if (!this.spills(name.slice(DEFAULT_NAMESPACE.length + 1))) return undefined;
    const end = closing(all, i + 3);
    return all[end + 1]?.text === "," ? end : undefined;
  }
}

/** Of the table with this number; one column stays free between two. */
function firstColumn(table: number): number {
  return table * (TABLE_COLUMNS + 1);
}
