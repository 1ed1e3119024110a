import { readAddress } from "../sheets/kit/address";
import type { Page, SheetCell } from "../sheets/kit/definition";

/** A label with the value beside it, as a form shows them. */
export interface Field {
  readonly label: SheetCell;
  readonly value: SheetCell;
  readonly unit?: SheetCell;
}

export interface Block {
  readonly heading?: SheetCell;
  readonly fields: readonly Field[];
}

export interface Answer {
  readonly question: SheetCell;
  readonly answer: SheetCell;
}

/** A table of cells under their headers; a plain of cells has none. */
export interface CellTable {
  readonly heading?: SheetCell;
  readonly headers: readonly SheetCell[];
  readonly rows: readonly (readonly (SheetCell | undefined)[])[];
}

/** A table that one formula spills. */
export interface SpilledTable {
  readonly heading?: SheetCell;
  readonly headers: readonly SheetCell[];
  readonly cell: SheetCell;
}

/** What a page says, in the order in which a reader without a grid wants it. */
export interface Outline {
  readonly answers: readonly Answer[];
  readonly blocks: readonly Block[];
  readonly tables: readonly CellTable[];
  readonly spilled: readonly SpilledTable[];
  /** Texts that are in no table. */
  readonly texts: readonly SheetCell[];
}

/** The parts that the page was laid out in, with the cells that stand at their addresses. */
export function outline({ cells, parts }: Page): Outline {
  const byAddress = new Map(cells.map((cell) => [cell.at, cell]));
  const cellAt = (at: string): SheetCell => {
    const cell = byAddress.get(at);
    if (cell === undefined) throw new Error(`nothing stands at ${at}`);
    return cell;
  };
  const underHeading = ({ heading }: { readonly heading?: string }) =>
    heading === undefined ? {} : { heading: cellAt(heading) };
  const tables = (parts?.tables ?? []).map((table) => ({
    ...underHeading(table),
    headers: table.headers.map(cellAt),
    rows: table.rows.map((row) => row.map((at) => (at === undefined ? undefined : cellAt(at)))),
  }));
  const inTables = new Set(tables.flatMap(({ rows }) => rows.flat()));
  return {
    answers: (parts?.answers ?? []).map(({ question, answer }) => ({
      question: cellAt(question),
      answer: cellAt(answer),
    })),
    blocks: (parts?.blocks ?? []).map((block) => ({
      ...underHeading(block),
      fields: block.fields.map(({ label, value, unit }) => ({
        label: cellAt(label),
        value: cellAt(value),
        ...(unit !== undefined && { unit: cellAt(unit) }),
      })),
    })),
    tables,
    spilled: (parts?.spilled ?? []).map((table) => ({
      ...underHeading(table),
      headers: table.headers.map(cellAt),
      cell: cellAt(table.cell),
    })),
    texts: cells
      .filter((cell) => cell.role === "text" && !inTables.has(cell))
      .map((cell) => ({ cell, ...readAddress(cell.at) }))
      .sort((one, other) => one.row - other.row || one.column - other.column)
      .map(({ cell }) => cell),
  };
}
