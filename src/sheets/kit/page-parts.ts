import { readAddress } from "./address";
import type { AnswerPart, FieldPart, PageParts, SpilledPart, TablePart } from "./definition";

interface Heading {
  readonly at: string;
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

/** Collects what a page is made of while it is written. */
export class PartsKept {
  private readonly headings: Heading[] = [];
  private readonly answers: AnswerPart[] = [];
  private readonly blocks = new Map<string, { heading?: string; fields: FieldPart[] }>();
  private readonly tables: TablePart[] = [];
  private readonly spilled: SpilledPart[] = [];

  heading(at: string, span: number): void {
    const { row, column } = readAddress(at);
    this.headings.push({ at, row, from: column, to: column + span - 1 });
  }

  answer(part: AnswerPart): void {
    this.answers.push(part);
  }

  /** Labels in one column under one heading are one block. */
  field(part: FieldPart): void {
    const heading = this.headingOver(part.label);
    const key = `${heading ?? ""} ${readAddress(part.label).column}`;
    const block = this.blocks.get(key) ?? { ...(heading && { heading }), fields: [] };
    block.fields.push(part);
    this.blocks.set(key, block);
  }

  /** The unit beside the value that was written last in this column of labels. */
  unit(value: string, unit: string): void {
    for (const { fields } of this.blocks.values()) {
      const last = fields.at(-1);
      if (last?.value === value) fields[fields.length - 1] = { ...last, unit };
    }
  }

  table(part: Omit<TablePart, "heading">): void {
    const heading = this.headingOver(firstOf(part));
    this.tables.push({ ...(heading && { heading }), ...part });
  }

  spill(part: Omit<SpilledPart, "heading">): void {
    const heading = this.headingOver(part.cell);
    this.spilled.push({ ...(heading && { heading }), ...part });
  }

  all(): PageParts {
    const blocks = [...this.blocks.values()].map((block) => ({
      ...block,
      fields: inOrder(block.fields, ({ label }) => label),
    }));
    return {
      answers: this.answers,
      blocks: inOrder(blocks, ({ fields }) => fields[0].label),
      tables: inOrder(this.tables, firstOf),
      spilled: inOrder(this.spilled, ({ cell }) => cell),
    };
  }

  /** The nearest heading above whose columns reach over this cell. */
  private headingOver(at: string): string | undefined {
    const { row, column } = readAddress(at);
    return this.headings
      .filter((heading) => heading.row < row && heading.from <= column && column <= heading.to)
      .reduce<Heading | undefined>(
        (near, other) => (other.row > (near?.row ?? -1) ? other : near),
        undefined,
      )?.at;
  }
}

function firstOf({ headers, rows }: Omit<TablePart, "heading">): string {
  const first = headers[0] ?? rows[0]?.find((at) => at !== undefined);
  if (first === undefined) throw new Error("a table without cells");
  return first;
}

function inOrder<T>(parts: readonly T[], placeOf: (part: T) => string): T[] {
  const placed = parts.map((part) => ({ part, ...readAddress(placeOf(part)) }));
  return placed
    .sort((one, other) => one.row - other.row || one.column - other.column)
    .map(({ part }) => part);
}
