/** How sure the source of a check is. */
export type Seen =
  | "read"
  | "read in a secondary text"
  | "from memory"
  | "common practice, no source"
  | "independent engine"
  | "closed form";

export interface Source {
  /** Title and edition. */
  readonly source: string;
  /** Table, equation, example or page. */
  readonly where: string;
  readonly seen: Seen;
  /** Functions that the check guards without calling them by name. */
  readonly guards?: readonly string[];
}

/**
 * A check against the outside. The source travels with the check as data, so that the list of
 * sources is made from the tests and cannot drift from them.
 */
export function published(source: Source, check: () => void | Promise<void>): void {
  test(`${source.source}, ${source.where} (${source.seen})`, async () => check());
}

/** Within a relative tolerance. */
export function expectClose(actual: unknown, expected: number, relative: number): void {
  if (typeof actual !== "number") throw new Error(`expected a number, got ${String(actual)}`);
  const allowed = Math.abs(expected) * relative;
  if (!(Math.abs(actual - expected) <= allowed)) {
    throw new Error(
      `expected ${expected} within ${relative * 100} %, got ${actual} (${((actual / expected - 1) * 100).toPrecision(3)} %)`,
    );
  }
}

/** Within half a unit of the last printed digit (or an absolute tolerance). */
export function expectWithin(actual: unknown, expected: number, absolute: number): void {
  if (typeof actual !== "number") throw new Error(`expected a number, got ${String(actual)}`);
  if (!(Math.abs(actual - expected) <= absolute)) {
    throw new Error(`expected ${expected} ± ${absolute}, got ${actual}`);
  }
}
