import type { CellValue } from "../../screen/host";

/** What someone put into a cell: a value, or a formula with the default namespace. */
export type Content = CellValue | { readonly formula: string };

/** By page and address, "Line!D14". */
export type Contents = ReadonlyMap<string, Content>;

/** A worksheet that a user added, as the grid keeps it. */
export interface OwnSheet {
  readonly name: string;
  readonly data: unknown;
}

/** All in which a piece of work differs from the ready-made workbook. */
export interface Changes {
  readonly contents: Contents;
  /** Looks of cells, by page and address, as the grid keeps them. */
  readonly formats: ReadonlyMap<string, unknown>;
  /** Widths of columns and heights of rows, "Line!column 3", "Line!row 5". */
  readonly sizes: ReadonlyMap<string, number>;
  readonly ownSheets: readonly OwnSheet[];
}

export const noChanges: Changes = {
  contents: new Map(),
  formats: new Map(),
  sizes: new Map(),
  ownSheets: [],
};

export function isUnchanged(changes: Changes): boolean {
  const { contents, formats, sizes, ownSheets } = changes;
  return contents.size + formats.size + sizes.size + ownSheets.length === 0;
}

export function isFormula(content: Content | undefined): content is { readonly formula: string } {
  return typeof content === "object" && content !== null;
}

export function sameContent(one: Content | undefined, two: Content | undefined): boolean {
  return isFormula(one) && isFormula(two) ? one.formula === two.formula : one === two;
}

/** The plain form that is written down; the same text for the same changes. */
export function plainChanges(changes: Changes): PlainChanges {
  const sorted = <T>(map: ReadonlyMap<string, T>) =>
    [...map].sort(([one], [two]) => (one < two ? -1 : 1));
  return {
    contents: sorted(changes.contents),
    formats: sorted(changes.formats),
    sizes: sorted(changes.sizes),
    ownSheets: changes.ownSheets,
  };
}

export interface PlainChanges {
  readonly contents: readonly (readonly [string, Content])[];
  readonly formats: readonly (readonly [string, unknown])[];
  readonly sizes: readonly (readonly [string, number])[];
  readonly ownSheets: readonly OwnSheet[];
}

/** Something that was written down by another hand, or a later edition. */
export class Unreadable extends Error {}

/** Reads what `plainChanges` wrote; anything else is refused whole, never read in part. */
export function readChanges(plain: unknown): Changes {
  const { contents, formats, sizes, ownSheets } = record(plain);
  return {
    contents: new Map(pairs(contents, "contents", readContent)),
    formats: new Map(pairs(formats, "formats", (look) => record(look))),
    sizes: new Map(pairs(sizes, "sizes", positive)),
    ownSheets: list(ownSheets, "ownSheets").map((sheet) => {
      const { name, data } = record(sheet);
      if (typeof name !== "string" || name === "") throw new Unreadable("a page has no name");
      return { name, data: record(data) };
    }),
  };
}

function readContent(plain: unknown): Content {
  if (plain === null || typeof plain === "string" || typeof plain === "boolean") return plain;
  if (typeof plain === "number" && Number.isFinite(plain)) return plain;
  const { formula } = record(plain);
  if (typeof formula === "string" && formula.startsWith("=")) return { formula };
  throw new Unreadable("a cell holds neither a value nor a formula");
}

function positive(plain: unknown): number {
  if (typeof plain === "number" && plain > 0 && plain < 10000) return plain;
  throw new Unreadable("a size is no number");
}

export function record(plain: unknown): Readonly<Record<string, unknown>> {
  if (typeof plain !== "object" || plain === null || Array.isArray(plain))
    throw new Unreadable("it is not what this page writes down");
  return plain as Readonly<Record<string, unknown>>;
}

function list(plain: unknown, what: string): readonly unknown[] {
  if (!Array.isArray(plain)) throw new Unreadable(`its ${what} are no list`);
  return plain;
}

const KEY = /^[^!]{1,100}!(?:[A-Z]{1,3}[1-9]\d{0,6}|column \d{1,5}|row \d{1,7})$/;

function pairs<T>(plain: unknown, what: string, read: (value: unknown) => T): [string, T][] {
  return list(plain, what).map((pair) => {
    const [key, value] = list(pair, what);
    if (typeof key !== "string" || !KEY.test(key)) throw new Unreadable(`its ${what} name no cell`);
    return [key, read(value)];
  });
}
