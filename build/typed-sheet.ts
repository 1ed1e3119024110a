import { type Block, readAddress, readRange, writeAddress } from "../src/sheets/kit/address";
import type { Page, SheetCell } from "../src/sheets/kit/definition";
import type { EvaluatedSheet, Value } from "./sheet-evaluator";

/** A ready-made sheet with other inputs typed in, and what it says then. */
export type Cell = string | number | boolean | null;
export type Typed = Cell | readonly (readonly Cell[])[];

/** What was asked for cannot be typed: the message is for the one who asked. */
export class WrongInput extends Error {}

interface Place {
  readonly page: Page;
  readonly range: Block;
}

/** Where a name of the workbook stands. */
function places(pages: readonly Page[]): Map<string, Place> {
  const found = new Map<string, Place>();
  for (const page of pages) {
    for (const { name, at } of page.cells) {
      if (name !== undefined) found.set(name, { page, range: readRange(at) });
    }
    for (const { name, range } of page.names ?? [])
      found.set(name, { page, range: readRange(range) });
  }
  return found;
}

function cellAt(page: Page, row: number, column: number): SheetCell | undefined {
  const at = writeAddress({ row, column });
  return page.cells.find((cell) => cell.at === at);
}

/** The names that stand for inputs, whole or in part, and what they hold. */
export function inputsOf(
  pages: readonly Page[],
): { readonly name: string; readonly page: string; readonly range: Block }[] {
  return [...places(pages)]
    .filter(([, { page, range }]) => cellsOf(page, range).some((cell) => cell?.role === "input"))
    .map(([name, { page, range }]) => ({ name, page: page.name, range }));
}

function cellsOf(page: Page, { row, column, rows, columns }: Block): (SheetCell | undefined)[] {
  return Array.from({ length: rows * columns }, (_, i) =>
    cellAt(page, row + Math.floor(i / columns), column + (i % columns)),
  );
}

/** The pages with these values in their inputs; only an input can be typed over. */
export function withTyped(
  pages: readonly Page[],
  typed: readonly (readonly [string, Typed])[],
): readonly Page[] {
  const known = places(pages);
  const values = new Map<SheetCell, Cell>();
  for (const [name, value] of typed) {
    const place = known.get(name);
    if (place === undefined) {
      throw new WrongInput(
        `there is no name "${name}"; the inputs are: ${inputsOf(pages)
          .map((input) => input.name)
          .join(", ")}`,
      );
    }
    type(name, place, Array.isArray(value) ? value : [[value as Cell]], values);
  }
  return pages.map((page) => ({
    ...page,
    cells: page.cells.map((cell) => (values.has(cell) ? filled(cell, values.get(cell)) : cell)),
  }));
}

function filled({ value, ...rest }: SheetCell, typed: Cell | undefined): SheetCell {
  void value;
  return typed === null || typed === undefined ? rest : { ...rest, value: typed };
}

function type(
  name: string,
  { page, range }: Place,
  rows: readonly (readonly Cell[])[],
  values: Map<SheetCell, Cell>,
): void {
  if (rows.length > range.rows || rows.some((row) => row.length > range.columns)) {
    throw new WrongInput(`${name} has ${range.rows} rows and ${range.columns} columns`);
  }
  rows.forEach((row, down) =>
    row.forEach((value, across) => {
      const cell = cellAt(page, range.row + down, range.column + across);
      // A cell of a range that holds a label or a result stays: the value given for it is passed over
      // only where it says the same.
      if (cell?.role === "input") values.set(cell, value);
      else if (range.rows * range.columns === 1 || (cell?.value ?? null) !== value) {
        if (cell?.formula !== undefined && range.rows * range.columns > 1) return;
        throw new WrongInput(`${name} is no input: it follows from others`);
      }
    }),
  );
}

export interface Answers {
  /** The sentences at the top. */
  readonly answers: readonly Value[];
  readonly checks: readonly {
    readonly name: string;
    readonly ok: boolean;
    readonly text: string;
  }[];
  /** Every defined name's value, a range as rows. */
  readonly values: Readonly<Record<string, Value | readonly (readonly Value[])[]>>;
  /** Those that follow from no other error first. */
  readonly errors: readonly {
    readonly cell: string;
    readonly code: string;
    readonly message: string;
    readonly follows?: string;
  }[];
}

export function answersOf(pages: readonly Page[], shown: EvaluatedSheet): Answers {
  const read = (page: Page, at: string) => {
    const { row, column } = readAddress(at);
    return shown.value(page.name, row, column);
  };
  const all = pages.flatMap((page) => page.cells.map((cell) => ({ page, cell })));
  const messages = new Map(shown.faults.map(({ cell, message }) => [cell, message]));
  return {
    answers: all
      .filter(({ cell }) => cell.role === "answer")
      .map(({ page, cell }) => read(page, cell.at)),
    checks: all
      .filter(({ cell }) => cell.role === "check")
      .map(({ page, cell }) => {
        const text = String(read(page, cell.at) ?? "");
        const message = messages.get(`${page.name}!${cell.at}`) ?? "";
        return {
          name: cell.label ?? cell.at,
          ok: text === "OK",
          text: message === "" ? text : `${text} ${message}`,
        };
      }),
    values: Object.fromEntries(
      [...places(pages)].map(([name, { page, range }]) => [name, valuesIn(page, range, shown)]),
    ),
    errors: [...shown.faults]
      .sort((one, two) => Number(one.follows !== undefined) - Number(two.follows !== undefined))
      .map(({ cell, code, message, follows }) => ({
        cell,
        code,
        message,
        ...(follows !== undefined && { follows }),
      })),
  };
}

function valuesIn(
  page: Page,
  { row, column, rows, columns }: Block,
  shown: EvaluatedSheet,
): Value | Value[][] {
  const table = Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_, across) =>
      shown.value(page.name, row + down, column + across),
    ),
  );
  return rows * columns === 1 ? table[0][0] : table;
}
