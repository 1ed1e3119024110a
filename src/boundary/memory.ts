import type { Cell } from "./cell";

/** What a list of arguments gave. */
interface Kept<T> {
  readonly cells: readonly Cell[];
  readonly value: T;
}

/**
 * A bounded memory of results by the arguments that gave them: many cells ask about one line, and
 * the line is solved once. It keeps copies of values, never a range that the host handed over.
 *
 * Arguments are found by a number made from them and then compared one by one: to write them out as
 * a text took as long as to solve the line.
 *
 * It remembers the last `limit` results at least and twice as many at most: what is not asked for
 * while as many new ones come is dropped with all its like. (A map that loses its oldest entry for
 * each new one leaves tables behind that hold on to what they once held, and costs the collector as
 * much as the line its solution.)
 */
export class Memory<T> {
  private recent = new Map<number, Kept<T>>();
  private older = new Map<number, Kept<T>>();

  constructor(private readonly limit: number) {}

  recall(cells: readonly Cell[], compute: () => T): T {
    const hash = hashOf(cells);
    const known = this.recent.get(hash) ?? this.older.get(hash);
    if (known !== undefined && areSame(known.cells, cells)) {
      this.keep(hash, known);
      return known.value;
    }
    const value = compute();
    this.keep(hash, { cells: copyOf(cells), value });
    return value;
  }

  private keep(hash: number, kept: Kept<T>): void {
    if (this.recent.size >= this.limit && !this.recent.has(hash)) {
      this.older = this.recent;
      this.recent = new Map();
    }
    this.recent.set(hash, kept);
  }
}

/** Two lists of arguments that mean the same for certain. */
export function areSame(one: Cell, other: Cell): boolean {
  if (Array.isArray(one) && Array.isArray(other)) {
    if (one.length !== other.length) return false;
    for (let i = 0; i < one.length; i++) if (!areSame(one[i], other[i])) return false;
    return true;
  }
  // An omitted argument comes as either.
  return one === other || (isOmitted(one) && isOmitted(other));
}

function isOmitted(cell: Cell): boolean {
  return cell === null || cell === undefined;
}

function copyOf(cells: readonly Cell[]): Cell[] {
  const copy: Cell[] = [];
  for (const cell of cells) copy.push(Array.isArray(cell) ? copyOf(cell) : cell);
  return copy;
}

const double = new Float64Array(1);
/** The same eight bytes as two whole numbers. */
const halves = new Int32Array(double.buffer);

/** A whole number that differs, by every chance, for arguments that differ. */
export function hashOf(cells: readonly Cell[]): number {
  return hashFrom(cells.length, cells);
}

function hashFrom(start: number, cells: readonly Cell[]): number {
  let hash = start;
  for (const cell of cells) {
    if (typeof cell === "number") {
      // 0 and −0 are the same.
      double[0] = cell + 0;
      hash = mixed(mixed(hash, halves[0]), halves[1]);
    } else if (typeof cell === "string") {
      hash = mixed(hash, ~cell.length);
      for (let i = 0; i < cell.length; i++) hash = mixed(hash, cell.charCodeAt(i));
    } else if (Array.isArray(cell)) {
      hash = hashFrom(mixed(hash, cell.length), cell);
    } else {
      // Blanks, and what is refused when it is read: told apart by comparing.
      hash = mixed(hash, -1);
    }
  }
  return hash;
}

/** One more part of a hash: an odd factor loses no bit, and the shift brings the high ones down. */
function mixed(hash: number, part: number): number {
  const product = Math.imul(hash ^ part, 0x9e3779b1);
  return product ^ (product >>> 15);
}
