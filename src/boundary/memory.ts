import type { Cell } from "./cell";

/**
 * A bounded memory of results by the values that made them: many cells ask about one line, and the
 * line is solved once. It keeps values only, never a reference to a range the host handed over.
 */
export class Memory<T> {
  private readonly kept = new Map<string, T>();

  constructor(private readonly limit: number) {}

  recall(key: string, compute: () => T): T {
    const known = this.kept.get(key);
    if (known !== undefined) return known;
    const value = compute();
    // A Map keeps insertion order, so its first key is the oldest: dropped when full.
    if (this.kept.size >= this.limit) this.kept.delete(this.kept.keys().next().value as string);
    this.kept.set(key, value);
    return value;
  }
}

/** A text that tells apart any two lists of arguments that could mean different things. */
export function keyOf(cells: readonly Cell[]): string {
  let key = "";
  for (const cell of cells) key += keyOfCell(cell);
  return key;
}

function keyOfCell(cell: Cell): string {
  if (typeof cell === "number") return `n${cell};`;
  if (cell === null || cell === undefined) return "-;";
  if (typeof cell === "string") return `s${cell.length}:${cell};`;
  if (Array.isArray(cell)) return `[${cell.map(keyOfCell).join("")}]`;
  // Anything else is refused when it is read; the key only has to be safe until then.
  return `${typeof cell}${String(cell)};`;
}
