import { quoted } from "../../formula-text/quoted";
import { cautions, type CautionSubject } from "../../cautions";
import { columnLetters, readAddress, writeAddress } from "./address";
import { PartsKept } from "./page-parts";
import type {
  Allowed,
  Marks,
  NamedFunction,
  NamedRange,
  Page,
  SheetCell,
  SheetChart,
  UnitSystem,
} from "./definition";

/** Units as a sheet shows them and number formats that suit them: [US, SI]. */
const QUANTITIES = {
  length: { units: ["ft", "m"], formats: ["#,##0.0", "#,##0.0"] },
  diameter: { units: ["in", "mm"], formats: ["0.000", "0.0"] },
  depth: { units: ["in", "mm"], formats: ["0.00", "0.0"] },
  pressure: { units: ["psi", "kPa"], formats: ["0.0", "0"] },
  flow: { units: ["gpm", "m³/h"], formats: ["0.0", "0.00"] },
  headFlow: { units: ["gpm", "m³/h"], formats: ["0.00", "0.000"] },
  rate: { units: ["in/h", "mm/h"], formats: ["0.000", "0.00"] },
  area: { units: ["acre", "ha"], formats: ["0.00", "0.00"] },
  pipeVolume: { units: ["gal", "L"], formats: ["#,##0", "#,##0"] },
  fieldVolume: { units: ["gal", "m³"], formats: ["#,##0", "#,##0"] },
  speed: { units: ["ft/s", "m/s"], formats: ["0.0", "0.00"] },
  temperature: { units: ["°F", "°C"], formats: ["0", "0.0"] },
  power: { units: ["hp", "kW"], formats: ["0.0", "0.0"] },
  weight: { units: ["lb", "kg"], formats: ["#,##0", "#,##0"] },
  pull: { units: ["lbf", "N"], formats: ["#,##0", "#,##0"] },
  wind: { units: ["mph", "km/h"], formats: ["0.0", "0.0"] },
  waterCapacity: { units: ["in/ft", "mm/m"], formats: ["0.00", "0"] },
  dailyDepth: { units: ["in/day", "mm/day"], formats: ["0.00", "0.0"] },
} as const;

export type Quantity = keyof typeof QUANTITIES;

/** What stands in a unit's place: a quantity's unit, or a fixed word. */
export type UnitOf =
  Quantity | { readonly word: string } | { readonly us: string; readonly si: string };

/**
 * A piece of formula that gives a quantity's unit: the text follows the sheet's Units cell, which
 * relabels and converts nothing.
 */
export function unitText(quantity: Quantity): string {
  const [us, si] = QUANTITIES[quantity].units;
  return eitherText(us, si);
}

function eitherText(us: string, si: string): string {
  return `IF(Units="SI","${si}","${us}")`;
}

function unitCell(unit: UnitOf): Pick<SheetCell, "value" | "formula"> {
  if (typeof unit === "string") return { formula: `=${unitText(unit)}` };
  return "word" in unit ? { value: unit.word } : { formula: `=${eitherText(unit.us, unit.si)}` };
}

/** Columns count from 1 here, as rows do. */
function columnOf(letters: string): number {
  return readAddress(`${letters}1`).column + 1;
}

interface ValueOptions {
  readonly name?: string;
  readonly unit?: UnitOf;
  readonly format?: string;
  readonly note?: string;
  /** A figure in money: shown only while every input is within its limits. */
  readonly money?: true;
}

interface InputOptions extends ValueOptions {
  /** Every input has limits. */
  readonly allowed: Allowed;
}

/** Cells side by side; undefined leaves one out. */
export type PlainRow = readonly (Omit<SheetCell, "at"> | undefined)[];

/** A label, or a formula that gives one. */
export type Label = string | { readonly text: string; readonly formula: string };

function labelCell(label: Label): Pick<SheetCell, "value" | "formula"> {
  return typeof label === "string" ? { value: label } : { formula: label.formula };
}

/** One column of a table of inputs and formulas. */
export type TableColumn = TableColumnOf<"input", { readonly allowed: Allowed }> | PlainColumn;

type PlainColumn = TableColumnOf<
  "result" | "label" | "mark" | "text" | "formulaText",
  { readonly allowed?: undefined }
>;

type TableColumnOf<R, Limits> = Limits & {
  readonly header: string;
  readonly unit?: Quantity;
  readonly role: R;
  readonly format?: string;
  readonly money?: true;
  /**
   * A value or a formula per row; undefined leaves an input blank, 'text shows even a formula as text.
   * A cell unlike the others of its column is given whole.
   */
  readonly rows: readonly (string | number | undefined | Omit<SheetCell, "at">)[];
  /** Columns that the column covers, for text. */
  readonly span?: number;
};

interface SpillOptions {
  readonly rows: number;
  readonly reserved?: number;
  /** Quantity or number format of each column. */
  readonly columns: readonly (Quantity | { readonly format: string })[];
  /** Columns that the definition's inputs fill; all unless given. */
  readonly filled?: number;
  readonly headed?: boolean;
  /** The cells above it that name its columns, where the formula does not. */
  readonly headers?: readonly string[];
  /** Lines that its headers take. */
  readonly headerLines?: number;
  readonly name?: string;
  readonly note?: string;
  readonly money?: true;
}

interface GridBody {
  readonly role: "result" | "mark";
  readonly money?: true;
  readonly format?: string;
  readonly downFormat?: { readonly format: string };
  readonly acrossFormat?: { readonly format: string };
  /** By row and column of the body, from 0. */
  readonly formula: (row: number, column: number) => string;
}

const LABEL_COLUMNS = 3;

/** Rows of a title and the line under it. */
const PRINTED_TITLE = 2;

/** A unit in parentheses behind a header. */
const UNIT_CHARACTERS = 6;

/** How much of a column words fill before they wrap. */
const HEADER_FILL = 0.85;

/** Of the page's width for a first question; the rest is for its answer. */
const QUESTION_SHARE = 0.3;

/** The length of a check's sentence that there is room for. */
const SENTENCE_CHARACTERS = 140;

/** Where the cell stands in a workbook that keeps every input's fault there: see workbook.ts. */
export const INPUT_FAULT = "InputFault";

/**
 * A check's formula: nothing is judged while an input is outside its limits, and only "no answer" is
 * put into words. Any other error stays what it is.
 */
function checked(formula: string): string {
  return `IF(${INPUT_FAULT}="OK", IFNA(${formula.slice(1)}, "No answer (#N/A): a number that this compares is missing"), "Not checked: fix the input first")`;
}

/** A figure in money: none while an input is outside its limits. */
export function inMoney(formula: string): string {
  return `=IF(${INPUT_FAULT}="OK", ${formula.slice(1)}, "fix the input first")`;
}

function ifMoney(formula: string, money: true | undefined): string {
  return money === undefined ? formula : inMoney(formula);
}

/** The length of answer that there is room for, and of the line of checks with some that fail. */
const ANSWER_CHARACTERS = 165;
const CHECKS_CHARACTERS = 200;

/** A column of labels, each with its value and unit to the right, written from the top down. */
export class Block {
  constructor(
    private readonly page: PageBuilder,
    private readonly column: number,
    public row: number,
    private readonly labelColumns: number,
  ) {}

  heading(text: string): void {
    this.page.headingOver(this.column, this.row, this.labelColumns + 2, text);
    this.row++;
  }

  /** An input; undefined leaves it blank. */
  input(
    label: string,
    value: string | number | boolean | undefined,
    options: InputOptions,
  ): string {
    const { allowed, ...rest } = options;
    return this.line(label, { role: "input", value, allowed, label }, rest);
  }

  result(label: Label, formula: string, options: ValueOptions = {}): string {
    return this.line(label, { role: "result", formula: ifMoney(formula, options.money) }, options);
  }

  /** A result with its formula as text beside it. */
  worked(label: string, formula: string, options: ValueOptions = {}): string {
    const at = this.result(label, formula, options);
    const column = this.column + this.labelColumns + 2;
    this.page.formulaText(column, this.row - 1, at, formula);
    return at;
  }

  /** "OK" or a sentence, over the columns of value and unit and `more` beyond. */
  check(label: string, formula: string, more = 0): string {
    return this.words("check", label, `=${checked(formula)}`, more);
  }

  /** A result in words. */
  sentence(label: string, formula: string, more = 0): string {
    return this.words("sentence", label, formula, more);
  }

  /** A verdict that is no check of the plan. */
  mark(label: string, formula: string, more = 0): string {
    return this.words("mark", label, formula, more);
  }

  private words(
    role: "check" | "sentence" | "mark",
    label: string,
    formula: string,
    more: number,
  ): string {
    const span = 2 + more;
    const at = this.line(label, { role, formula, span, label }, {});
    const from = this.column + this.labelColumns - 1;
    this.page.needsLines(
      this.row - 1,
      Math.ceil(SENTENCE_CHARACTERS / this.page.width(from, from + span)),
    );
    return at;
  }

  text(text: string, more = 0): void {
    this.page.paragraph(this.column, this.row, this.labelColumns + 2 + more, text);
    this.row++;
  }

  gap(rows = 1): void {
    this.row += rows;
  }

  /** A unit that depends on more than the system, beside the value just written. */
  unitOfLast(formula: string): void {
    this.page.unitBeside(this.column + this.labelColumns, this.row - 1, { formula });
  }

  private line(label: Label, cell: Omit<SheetCell, "at">, options: ValueOptions): string {
    // What a user types shows as typed, unless a format is asked for.
    const usual = cell.role === "input" ? undefined : this.page.formatOf(options.unit);
    const { unit, format = usual, name, note } = options;
    const rest = { ...(name !== undefined && { name }), ...(note !== undefined && { note }) };
    const at = this.page.field({ column: this.column, row: this.row, label }, this.labelColumns, {
      ...cell,
      ...rest,
      ...(format !== undefined && { format }),
    });
    if (unit !== undefined) {
      this.page.unitBeside(this.column + this.labelColumns, this.row, unitCell(unit));
    }
    this.row++;
    return at;
  }
}

/** Writes a page from the top down, so that a definition reads like its sheet. */
export class PageBuilder {
  /** The next free row. */
  row = 1;
  private readonly cells: SheetCell[] = [];
  private readonly parts = new PartsKept();
  private readonly lines = new Map<number, number>();
  private readonly charts: SheetChart[] = [];
  private readonly names: NamedRange[] = [];
  private readonly functions: NamedFunction[] = [];
  private readonly marks: Marks[] = [];
  private readonly pageBreaks: number[] = [];
  private onePage = false;
  private working = false;
  private subjects: readonly CautionSubject[] = [];
  private frozenRows: number | undefined;
  private lastRow = 1;

  constructor(
    private readonly name: string,
    private readonly system: UnitSystem,
    private readonly widths: readonly number[],
    private readonly landscape = false,
  ) {}

  /** The number format of a quantity in the units of this page. */
  formatOf(unit: UnitOf | undefined): string | undefined {
    if (typeof unit !== "string") return undefined;
    return QUANTITIES[unit].formats[this.system === "US" ? 0 : 1];
  }

  /** A cell by itself: what belongs to a label, a table or a spill is written with it. */
  put(column: number, row: number, cell: Omit<SheetCell, "at">): string {
    const at = writeAddress({ column: column - 1, row: row - 1 });
    this.cells.push({ at, ...cell });
    this.lastRow = Math.max(this.lastRow, row + (cell.spill?.rows ?? 1) - 1);
    return at;
  }

  /** Characters that these columns take, from one (from 0) up to another. */
  width(from: number, to: number): number {
    return this.widths.slice(from, to).reduce((sum, part) => sum + part, 0);
  }

  /** The fewest first columns that take this share of the page's width. */
  private columnsOf(share: number): number {
    const wanted = share * this.width(0, this.widths.length);
    return this.widths.findIndex((_, i) => this.width(0, i + 1) >= wanted) + 1;
  }

  needsLines(row: number, lines: number): void {
    if (lines > 1) this.lines.set(row, Math.max(lines, this.lines.get(row) ?? 1));
  }

  title(text: Label): void {
    this.put(1, this.row, { role: "title", ...labelCell(text) });
    this.row++;
  }

  purpose(text: string): void {
    this.paragraph(1, this.row, this.widths.length, text, "purpose");
    this.row++;
  }

  /** A first question of the people who open the sheet, and the sentence that answers it. */
  question(text: string, answer: string): void {
    this.answered(
      text,
      `=IF(${INPUT_FAULT}="OK", IFNA(${answer.slice(1)}, "No answer (#N/A): see the page Checks."), "Fix the input first.")`,
      ANSWER_CHARACTERS,
    );
  }

  /** Whether the plan holds: the line of all checks, or the input to fix first. */
  checksAnswer(text: string): void {
    this.answered(text, "=CheckLine", CHECKS_CHARACTERS);
  }

  private answered(text: string, formula: string, characters: number): void {
    const questionColumns = this.columnsOf(QUESTION_SHARE);
    const question = this.put(1, this.row, {
      role: "question",
      value: text,
      span: questionColumns,
    });
    const answer = this.put(questionColumns + 1, this.row, {
      role: "answer",
      formula,
      span: this.widths.length - questionColumns,
    });
    this.parts.answer({ question, answer });
    const answerWidth = this.width(questionColumns, this.widths.length);
    this.needsLines(this.row, Math.ceil(characters / answerWidth));
    this.row++;
  }

  /** What stands above this row stays on the screen. */
  freeze(): void {
    this.frozenRows = this.row - 1;
  }

  heading(text: string): void {
    this.headingOver(1, this.row, this.widths.length, text);
    this.row++;
  }

  /** A heading over some of the columns. */
  headingOver(column: number, row: number, span: number, text: string): void {
    const at = this.put(column, row, { role: "heading", value: text, span });
    this.parts.heading(at, span);
  }

  /** A label, and its value so many columns further. */
  field(
    {
      column,
      row,
      label,
    }: { readonly column: number; readonly row: number; readonly label: Label },
    valueAfter: number,
    cell: Omit<SheetCell, "at">,
  ): string {
    const labelAt = this.put(column, row, { role: "label", ...labelCell(label) });
    const value = this.put(column + valueAfter, row, cell);
    this.parts.field({ label: labelAt, value });
    return value;
  }

  /** The unit to the right of a field's value. */
  unitBeside(column: number, row: number, cell: Pick<SheetCell, "value" | "formula">): void {
    const unit = this.put(column + 1, row, { role: "unit", ...cell });
    this.parts.unit(writeAddress({ column: column - 1, row: row - 1 }), unit);
  }

  /** Rows of cells side by side that no headers name, from `column` of the next free row. */
  plain(column: number, rows: readonly PlainRow[]): void {
    const placed = rows.map((cells) => {
      let at = column;
      const line = cells.map((cell) => {
        const here = at;
        at += cell?.span ?? 1;
        return cell === undefined ? undefined : this.put(here, this.row, cell);
      });
      this.row++;
      return line;
    });
    this.parts.table({ headers: [], rows: placed });
  }

  paragraph(
    column: number,
    row: number,
    span: number,
    text: string,
    role: "text" | "purpose" | "caution" = "text",
  ): void {
    this.put(column, row, { role, value: text, span });
    this.needsLines(row, Math.ceil(text.length / this.width(column - 1, column - 1 + span)));
  }

  /** A cell's formula as text, over the rest of the row. */
  formulaText(column: number, row: number, of: string, formula: string): void {
    const span = this.widths.length - column + 1;
    this.put(column, row, { role: "formulaText", formula: `=FORMULATEXT(${of})`, span });
    this.needsLines(row, Math.ceil(formula.length / this.width(column - 1, this.widths.length)));
  }

  text(text: string): void {
    this.paragraph(1, this.row, this.widths.length, text);
    this.row++;
  }

  gap(rows = 1): void {
    this.row += rows;
  }

  /** A block of labels and values whose labels begin in `column` of the next free row. */
  block(column: string, labelColumns = LABEL_COLUMNS): Block {
    return new Block(this, columnOf(column), this.row, labelColumns);
  }

  /** Goes on below the longest of these blocks. */
  below(...blocks: readonly Block[]): void {
    this.row = Math.max(...blocks.map((block) => block.row)) + 1;
  }

  /** A table with a header row, from `column` on; gives the range below the headers of each column. */
  table(column: string, columns: readonly TableColumn[], row = this.row): string[] {
    const count = Math.max(...columns.map((part) => part.rows.length));
    const [first] = columns;
    const rowLabel = (i: number) =>
      first.role === "label" && typeof first.rows[i] === "string" && !first.rows[i].startsWith("=")
        ? first.rows[i].replace(/^'/, "")
        : undefined;
    let at = columnOf(column);
    const headers: string[] = [];
    const body: (string | undefined)[][] = Array.from({ length: count }, () => []);
    const ranges = columns.map((part) => {
      const span = part.span === undefined ? {} : { span: part.span };
      const format = part.format ?? this.formatOf(part.unit);
      headers.push(this.put(at, row, { role: "header", ...headerText(part), ...span }));
      const header = part.header.length + (part.unit === undefined ? 0 : UNIT_CHARACTERS);
      const width = this.width(at - 1, at - 1 + (part.span ?? 1));
      this.needsLines(row, Math.ceil(header / (HEADER_FILL * width)));
      part.rows.forEach((content, i) => {
        if (typeof content === "object") {
          body[i][headers.length - 1] = this.put(at, row + 1 + i, { ...content, ...span });
          return;
        }
        const named = rowLabel(i);
        if (isWords(part.role) && typeof content === "string" && !content.startsWith("=")) {
          this.needsLines(row + 1 + i, Math.ceil(content.length / width));
        }
        body[i][headers.length - 1] = this.put(at, row + 1 + i, {
          role: part.role,
          ...contentOf(content, part.money),
          ...(part.role === "input" && {
            label:
              named === undefined ? `${part.header}, row ${i + 1}` : `${named}: ${part.header}`,
          }),
          ...(format !== undefined &&
            (part.role !== "input" || part.format !== undefined) && { format }),
          ...(part.allowed !== undefined && { allowed: part.allowed }),
          ...span,
        });
      });
      const letter = columnLetters(at - 1);
      at += part.span ?? 1;
      return `${letter}${row + 1}:${letter}${row + count}`;
    });
    this.parts.table({
      headers,
      rows: body.map((cells) => headers.map((_, i) => cells[i])),
    });
    this.row = Math.max(this.row, row + count + 1);
    return ranges;
  }

  /** A formula that spills, at `column` of the next free row. Gives the address of its first cell. */
  spill(column: string, formula: string, options: SpillOptions): string {
    const {
      rows,
      columns,
      reserved = rows,
      headed = true,
      headerLines = 2,
      filled = columns.length,
      money,
      headers = [],
      ...rest
    } = options;
    const formats = columns.map((part) =>
      typeof part === "string" ? (this.formatOf(part) ?? "General") : part.format,
    );
    const at = this.put(columnOf(column), this.row, {
      role: "result",
      formula: ifMoney(formula, money),
      spill: { rows, columns: filled, reserved, headed, formats },
      ...rest,
    });
    this.parts.spill({ cell: at, headers });
    if (headed) this.needsLines(this.row, headerLines);
    this.row += reserved;
    return at;
  }

  /**
   * A grid of one formula: `down` stands in its first column and `across` in its first row, as
   * addresses of cells that hold the values. Gives the range of its body.
   */
  grid(
    column: string,
    title: string,
    down: readonly string[],
    across: readonly string[],
    body: GridBody,
  ): string {
    const left = columnOf(column);
    const headers = [
      this.put(left, this.row, { role: "header", value: title }),
      ...across.map((at, i) =>
        this.put(left + 1 + i, this.row, {
          role: "header",
          formula: `=${at}`,
          ...body.acrossFormat,
        }),
      ),
    ];
    this.needsLines(this.row, 2);
    const top = this.row + 1;
    const rows = down.map((rowAt, r) => [
      this.put(left, top + r, { role: "header", formula: `=${rowAt}`, ...body.downFormat }),
      ...across.map((_, c) =>
        this.put(left + 1 + c, top + r, {
          role: body.role,
          formula: ifMoney(body.formula(r, c), body.money),
          ...(body.format !== undefined && { format: body.format }),
        }),
      ),
    ]);
    this.parts.table({ headers, rows });
    this.row = top + down.length;
    return `${columnLetters(left)}${top}:${columnLetters(left + across.length - 1)}${this.row - 1}`;
  }

  nameRange(name: string, range: string): void {
    this.names.push({ name, range });
  }

  nameFunction(name: string, formula: string): void {
    this.functions.push({ name, formula });
  }

  mark(range: string, by: string): void {
    this.marks.push({ range, by });
  }

  chart(chart: SheetChart): void {
    this.charts.push(chart);
    this.lastRow = Math.max(this.lastRow, readAddress(chart.place.to).row + 1);
  }

  /** However long, it is printed on one page. */
  printOnOnePage(): void {
    this.onePage = true;
  }

  /** Numbers behind another page's picture: nothing for paper. */
  printTitleAlone(): void {
    this.working = true;
  }

  /** The next free row begins a new printed page. */
  breakPage(): void {
    this.pageBreaks.push(this.row);
  }

  /**
   * The cautions of the work on this page, each in a full sentence beside its step; all that is to be
   * said stands on the workbook's page Cautions.
   */
  safety(...subjects: readonly CautionSubject[]): void {
    this.subjects = [...new Set([...this.subjects, ...subjects])];
    for (const subject of subjects) {
      const { title, points } = cautions[subject];
      this.paragraph(1, this.row, this.widths.length, `${title}: ${points[0]}`, "caution");
      this.row++;
    }
  }

  build(): Page {
    const last = columnLetters(this.widths.length - 1);
    return {
      name: this.name,
      widths: this.widths,
      cells: this.cells,
      parts: this.parts.all(),
      lines: this.lines,
      printArea: `A1:${last}${this.working ? PRINTED_TITLE : this.lastRow}`,
      landscape: this.landscape,
      ...(this.frozenRows !== undefined && { frozenRows: this.frozenRows }),
      ...(this.pageBreaks.length > 0 && { pageBreaks: this.pageBreaks }),
      ...(this.onePage && { onePage: true }),
      ...(this.working && { working: true as const }),
      ...(this.charts.length > 0 && { charts: this.charts }),
      ...(this.marks.length > 0 && { marks: this.marks }),
      ...(this.names.length > 0 && { names: this.names }),
      ...(this.functions.length > 0 && { functions: this.functions }),
      ...(this.subjects.length > 0 && { cautions: this.subjects }),
    };
  }
}

function isWords(role: TableColumn["role"]): boolean {
  return role === "text" || role === "label";
}

function contentOf(
  content: string | number | undefined,
  money?: true,
): Pick<SheetCell, "value" | "formula"> {
  if (content === undefined) return {};
  if (typeof content === "number") return { value: content };
  if (content.startsWith("=")) return { formula: ifMoney(content, money) };
  return { value: content.replace(/^'/, "") };
}

function headerText(column: TableColumn): Pick<SheetCell, "value" | "formula"> {
  if (column.unit === undefined) return { value: column.header };
  // "Price per ft": the unit goes on with the words.
  if (column.header.endsWith(" per")) {
    return { formula: `="${quoted(column.header)} "&${unitText(column.unit)}` };
  }
  return { formula: `="${quoted(column.header)} ("&${unitText(column.unit)}&")"` };
}
