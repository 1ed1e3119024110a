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

/** A part as a reader meets it: with the texts under its heading, and its formula as one types it. */
interface Read {
  readonly texts: readonly SheetCell[];
}
export interface Field extends FieldPart<SheetCell> {
  readonly formula?: SheetCell;
}
export interface Block extends BlockPart<SheetCell>, Read {
  readonly fields: readonly Field[];
}
export type CellTable = TablePart<SheetCell> & Read;
export type SpilledTable = SpilledPart<SheetCell> & Read & { readonly formula?: SheetCell };

/** What a page says, in the order in which a reader without a grid wants it. */
export interface Outline extends PageParts<SheetCell> {
  /** Under no heading: what stands above all else, and what does not. */
  readonly first: readonly SheetCell[];
  readonly last: readonly SheetCell[];
  readonly blocks: readonly Block[];
  readonly tables: readonly CellTable[];
  readonly spilled: readonly SpilledTable[];
  /** Texts under headings of their own. */
  readonly said: readonly { readonly heading: SheetCell; readonly texts: readonly SheetCell[] }[];
}

/** The parts that the page was laid out in, with the cells that stand at their addresses. */
export function outline({ cells, parts, working }: Page): Outline {
  const byAddress = new Map(cells.map((cell) => [cell.at, cell]));
  const cellAt = (at: string): SheetCell => {
    const cell = byAddress.get(at);
    if (cell === undefined) throw new Error(`nothing stands at ${at}`);
    return cell;
  };
  const underHeading = ({ heading }: { readonly heading?: string }) =>
    heading === undefined ? {} : { heading: cellAt(heading) };
  const shown = new Set([
    ...(parts?.tables ?? []).flatMap(({ rows }) => rows.flat()),
    ...(parts?.blocks ?? []).flatMap(({ fields }) => fields.map(({ value }) => value)),
  ]);
  const formulas = new Map(
    cells.flatMap((cell): [string, SheetCell][] => {
      const of = cell.role === "formulaText" && /^=FORMULATEXT\((\w+)\)$/.exec(cell.formula ?? "");
      return !of || shown.has(cell.at) ? [] : [[of[1], cell]];
    }),
  );
  const formulaOf = (at: string) => {
    const formula = formulas.get(at);
    return formula === undefined ? {} : { formula };
  };
  const texts = new TextsByHeading(
    cells,
    cells.filter(({ at, role }) => role === "text" && !shown.has(at)),
  );
  const top = Math.min(
    ...(parts?.blocks ?? []).map(({ fields }) => readAddress(fields[0].label).row),
    ...(parts?.tables ?? [])
      .flatMap(({ rows }) => rows.flat())
      .map((at = "A1000") => readAddress(at).row),
    ...(parts?.spilled ?? []).map(({ cell }) => readAddress(cell).row),
  );
  const alone = texts.take(undefined);
  const isFirst = ({ at }: SheetCell) => working !== true && readAddress(at).row < top;
  return {
    first: alone.filter(isFirst),
    last: alone.filter((cell) => !isFirst(cell)),
    answers: (parts?.answers ?? []).map(({ question, answer }) => ({
      question: cellAt(question),
      answer: cellAt(answer),
    })),
    blocks: (parts?.blocks ?? []).map((block) => ({
      ...underHeading(block),
      texts: texts.take(block.heading),
      fields: block.fields.map(({ label, value, unit }) => ({
        label: cellAt(label),
        value: cellAt(value),
        ...(unit !== undefined && { unit: cellAt(unit) }),
        ...formulaOf(value),
      })),
    })),
    tables: (parts?.tables ?? []).map((table) => ({
      ...underHeading(table),
      texts: texts.take(table.heading),
      headers: table.headers.map(cellAt),
      rows: table.rows.map((row) => row.map((at) => (at === undefined ? undefined : cellAt(at)))),
    })),
    spilled: (parts?.spilled ?? []).map((table) => ({
      ...underHeading(table),
      texts: texts.take(table.heading),
      headers: table.headers.map(cellAt),
      cell: cellAt(table.cell),
      ...formulaOf(table.cell),
    })),
    said: texts.left().map(([heading, under]) => ({ heading: cellAt(heading), texts: under })),
  };
}

/** Each text under the nearest heading above it that reaches over its column; given out once. */
class TextsByHeading {
  private readonly under = new Map<string | undefined, SheetCell[]>();

  constructor(cells: readonly SheetCell[], texts: readonly SheetCell[]) {
    const placed = (all: readonly SheetCell[]) =>
      all
        .map((cell) => ({ cell, ...readAddress(cell.at) }))
        .sort((one, other) => one.row - other.row || one.column - other.column);
    const headings = placed(cells.filter(({ role }) => role === "heading"));
    for (const { cell, row, column } of placed(texts)) {
      const over = headings.filter(
        (heading) =>
          heading.row < row &&
          heading.column <= column &&
          column < heading.column + (heading.cell.span ?? 1),
      );
      const heading = over.at(-1)?.cell.at;
      this.under.set(heading, [...(this.under.get(heading) ?? []), cell]);
    }
  }

  take(heading: string | undefined): SheetCell[] {
    const texts = this.under.get(heading) ?? [];
    this.under.delete(heading);
    return texts;
  }

  left(): [string, SheetCell[]][] {
    return [...this.under].flatMap(([heading, texts]) =>
      heading === undefined ? [] : [[heading, texts]],
    );
  }
}
