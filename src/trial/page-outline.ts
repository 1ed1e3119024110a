import { readAddress } from "../sheets/kit/address";
import type {
  BlockPart,
  FieldPart,
  Page,
  PageParts,
  SheetCell,
  SpilledPart,
  TablePart,
} from "../sheets/kit/definition";

export type Field = FieldPart<SheetCell>;
export type Block = BlockPart<SheetCell>;
export type CellTable = TablePart<SheetCell>;
export type SpilledTable = SpilledPart<SheetCell>;

/** What a page says, in the order in which a reader without a grid wants it. */
export interface Outline extends PageParts<SheetCell> {
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
