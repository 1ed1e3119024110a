/**
 * A ready-made sheet is one definition with three uses: a workbook file, a sheet of the trial page,
 * a sheet inserted into the open workbook. It holds no code: text, numbers, formulas as a user
 * would type them, and what each cell is for. How a role looks is in look.ts, for all three.
 */
export type UnitSystem = "US" | "SI";

/**
 * What a cell is for; look.ts turns it into a look.
 *
 * - `title`, `purpose`: the page's name and one line under it
 * - `question`, `answer`: the first questions at the top and the sentences that answer them
 * - `heading`: of a block; `header`: of a table's column
 * - `label`, `unit`: left and right of a value
 * - `input`: the only cells a user is meant to change
 * - `result`: a number, or a table that spills; `sentence`: a result in words
 * - `check`: "OK" or a sentence, counted in the line of checks at the top of the workbook
 * - `mark`: looks like a check and is not counted: a cell of a what-if, an exercise's verdict
 * - `working`: what a cell on the page shows, worked out beside it (unmerged.ts makes them)
 * - `text`: a paragraph; `formulaText`: a formula shown as text; `caution`: a safety point
 */
export type Role =
  | "title"
  | "purpose"
  | "question"
  | "answer"
  | "heading"
  | "label"
  | "unit"
  | "input"
  | "result"
  | "sentence"
  | "check"
  | "mark"
  | "working"
  | "header"
  | "text"
  | "formulaText"
  | "caution";

export interface SheetCell {
  /** A1 address. */
  readonly at: string;
  readonly role: Role;
  /** A fixed value. An input with neither value nor formula is a blank one, to be filled in. */
  readonly value?: string | number | boolean;
  /** As typed on screen with the default namespace: "=IRRIG.PIPE.FRICTION(B4, B5, B6, Units)". */
  readonly formula?: string;
  readonly spill?: Spilling;
  /** Number format code. */
  readonly format?: string;
  /** Name of the cell in the workbook. */
  readonly name?: string;
  /** What an input allows: a list, bounds, or any text. */
  readonly allowed?: Allowed;
  /** What an input or a check is called, where it stands alone: "Main: SDR". */
  readonly label?: string;
  /** A note on the cell. */
  readonly note?: string;
  /** Columns that the cell covers (merged), for text that wraps. */
  readonly span?: number;
  /** In the place of `span`: columns that one line of text runs over, unmerged. */
  readonly runsOver?: number;
  /** Of a cell of role `working`: the cell that shows the same. */
  readonly shownIn?: string;
}

/** Where a formula's result fills more than its own cell. */
export interface Spilling {
  /** With the inputs as they stand in the definition. The first row holds the headers where `headed`. */
  readonly rows: number;
  readonly columns: number;
  /** Rows kept free, and formatted, for other inputs; at least `rows`. */
  readonly reserved: number;
  readonly headed: boolean;
  /** Number format code of each column; more than `columns` where other inputs fill more. */
  readonly formats: readonly string[];
}

/** What may stand in an input. Only an `optional` one may be blank. */
export type Allowed = (
  | {
      readonly list: readonly string[];
      /** Where the list is long: a formula's piece that is an error for what is not on it; $ is the cell. */
      readonly knownBy?: string;
    }
  | {
      readonly low: number;
      readonly high: number;
      readonly whole?: boolean;
      /** Another input that it must not exceed: its name, and what it is in words. */
      readonly atMost?: { readonly name: string; readonly words: string };
      /** A text that may stand in the number's place. */
      readonly orText?: string;
    }
  | { readonly text: true }
) & { readonly optional?: true };

/** Points joined by a line. Cells that are blank, or hold no number, are no points. */
export interface SheetChart {
  readonly title: string;
  /** The page that holds its ranges, where it is not the page that shows it. */
  readonly page?: string;
  /** A drawing: one scale both ways, no axes, each series with x of its own and its look. */
  readonly drawing?: true;
  /** Ranges without their header, "B30:B43". */
  readonly x: { readonly range: string; readonly title: string };
  readonly series: readonly {
    readonly range: string;
    /** Its own x, in a drawing. */
    readonly x?: string;
    /** The cell that holds the series' title, with its unit. */
    readonly titleAt: string;
    readonly look?: DrawnLook;
  }[];
  readonly yTitle: string;
  /** The cells it covers. */
  readonly place: { readonly from: string; readonly to: string };
  /** What the picture shows, for those who can't see it. */
  readonly description: string;
}

/** What a series of a drawing is; look.ts says how it looks. */
export type DrawnLook =
  | "edge"
  | "line"
  | "head"
  | "change"
  | "feeder"
  | "hydrant"
  | "clear"
  | "apart"
  | "start"
  | "bar"
  | "north"
  | "nothing";

/** Cells that look passed or failed by what cells of role "check" say, each by the one in its place. */
export interface Marks {
  /** The cells to mark, "B20:F24". */
  readonly range: string;
  /** As many cells, each "OK" or something else. */
  readonly by: string;
}

export interface NamedRange {
  readonly name: string;
  /** On this page, "D12:E14". */
  readonly range: string;
}

/** A function name of the user's own, made with LAMBDA. No other cell depends on one. */
export interface NamedFunction {
  readonly name: string;
  /** "=LAMBDA(flow, …)", as typed on screen with the default namespace. */
  readonly formula: string;
}

/** A label with the value beside it; parts name their cells by address unless they hold them. */
export interface FieldPart<Cell = string> {
  readonly label: Cell;
  readonly value: Cell;
  readonly unit?: Cell;
}

export interface BlockPart<Cell = string> {
  readonly heading?: Cell;
  readonly fields: readonly FieldPart<Cell>[];
}

/** A table of cells under their headers; a plain of cells has none. */
export interface TablePart<Cell = string> {
  readonly heading?: Cell;
  readonly headers: readonly Cell[];
  readonly rows: readonly (readonly (Cell | undefined)[])[];
}

/** A table that one formula spills; its headers stand above it where the formula gives none. */
export interface SpilledPart<Cell = string> {
  readonly heading?: Cell;
  readonly headers: readonly Cell[];
  readonly cell: Cell;
}

export interface AnswerPart<Cell = string> {
  readonly question: Cell;
  readonly answer: Cell;
}

/**
 * What a page is made of, as its builder laid it out, for who reads it without a grid: every part by
 * the addresses of its cells, each kind from the top down and from the left.
 */
export interface PageParts<Cell = string> {
  readonly answers: readonly AnswerPart<Cell>[];
  readonly blocks: readonly BlockPart<Cell>[];
  readonly tables: readonly TablePart<Cell>[];
  readonly spilled: readonly SpilledPart<Cell>[];
}

export interface Page {
  /** Name of the worksheet. */
  readonly name: string;
  /** Column widths in characters, from A on. */
  readonly widths: readonly number[];
  readonly cells: readonly SheetCell[];
  /** A page of cells alone has none. */
  readonly parts?: PageParts;
  /** Rows higher than one line: row number to number of lines. */
  readonly lines: ReadonlyMap<number, number>;
  readonly frozenRows?: number;
  /** Numbers behind another page's picture: of such a page the title alone is printed. */
  readonly working?: true;
  readonly landscape?: boolean;
  /** What is printed with the inputs as they stand: without the rows that spills keep free. */
  readonly printArea: string;
  /** Printed on one page, however long. */
  readonly onePage?: boolean;
  /** Rows that begin a new printed page. */
  readonly pageBreaks?: readonly number[];
  readonly charts?: readonly SheetChart[];
  readonly marks?: readonly Marks[];
  readonly names?: readonly NamedRange[];
  readonly functions?: readonly NamedFunction[];
  /** How its checks begin that wait, in a language other than English. */
  readonly waiting?: readonly string[];
  /** Subjects of src/cautions.ts that stand on this page, beside the cells of role "caution". */
  readonly cautions?: readonly string[];
}

export type Value = string | number | boolean | null;

/** What a sheet shows, cell by cell, rows and columns from 0. */
export interface ShownValues {
  value(page: string, row: number, column: number): Value;
}

/** What is told of a ready-made sheet where it is chosen. */
export interface SheetHead {
  readonly id: string;
  readonly title: string;
  /** One sentence: what it answers, for whom. */
  readonly purpose: string;
}

export interface ReadyMadeSheet extends SheetHead {
  pages(system: UnitSystem): readonly Page[];
}
