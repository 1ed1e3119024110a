import { columnLetters } from "./address";

/**
 * A list that a validation holds as text has at most 255 characters, and a comma ends an entry. A
 * longer one, or one with commas in it, stands in cells of a hidden worksheet.
 */
const LONGEST_TYPED = 255;

export const LISTS_SHEET = "Lists";

export type ListSource =
  { readonly typed: string } | { readonly column: number; readonly range: string };

/** The lists of one workbook that stand in cells, each once, in a column of its own. */
export class Lists {
  readonly columns: (readonly string[])[] = [];

  source(entries: readonly string[]): ListSource {
    const typed = entries.join(",");
    if (typed.length <= LONGEST_TYPED && !entries.some((entry) => entry.includes(","))) {
      return { typed };
    }
    let column = this.columns.findIndex((other) => sameEntries(other, entries));
    if (column < 0) column = this.columns.push(entries) - 1;
    const letters = columnLetters(column);
    return { column, range: `$${letters}$1:$${letters}$${entries.length}` };
  }
}

function sameEntries(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((entry, i) => entry === other[i]);
}
