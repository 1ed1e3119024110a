/**
 * A ready-made sheet is one definition with three uses: a workbook file, a sheet of the trial page,
 * a sheet inserted into the open workbook. It holds no code: text, numbers, formulas as a user
 * would type them, and what each cell is for.
 */
export type UnitSystem = "US" | "SI";

/** What a cell is for; the writers turn it into a look. */
export type Role =
  | "title"
  | "question"
  | "answer"
  | "heading"
  | "label"
  | "unit"
  | "input"
  | "result"
  | "check"
  | "header"
  | "text"
  | "caution";

export interface SheetCell {
  /** A1 address. */
  readonly at: string;
  readonly role: Role;
  readonly value?: string | number | boolean;
  /** As typed on screen with the default namespace: "=IRRIG.PIPE.FRICTION(B4, B5, B6, Units)". */
  readonly formula?: string;
  /** Rows and columns that the formula's result fills, where it spills. */
  readonly spill?: { readonly rows: number; readonly columns: number };
  /** Number format code, for the whole spill where there is one. */
  readonly format?: string;
  /** Name of the cell in the workbook. */
  readonly name?: string;
  /** What an input allows: a list, or bounds. */
  readonly allowed?:
    | { readonly list: readonly string[] }
    | { readonly low: number; readonly high: number; readonly whole?: boolean };
  /** A note on the cell. */
  readonly note?: string;
}

export interface SheetChart {
  readonly title: string;
  /** Ranges without their header, "B30:B43". */
  readonly x: { readonly range: string; readonly title: string };
  readonly series: readonly {
    readonly range: string;
    readonly title: string;
    readonly axis?: "left" | "right";
  }[];
  readonly leftTitle: string;
  readonly rightTitle?: string;
  /** The cells it covers. */
  readonly place: { readonly from: string; readonly to: string };
}

export interface Page {
  /** Name of the worksheet. */
  readonly name: string;
  /** Column widths in characters, from A on. */
  readonly widths: readonly number[];
  readonly cells: readonly SheetCell[];
  readonly frozenRows?: number;
  readonly landscape?: boolean;
  readonly printArea?: string;
  readonly charts?: readonly SheetChart[];
  /** Subjects of src/cautions.ts that stand on this page. */
  readonly cautions?: readonly string[];
}

export interface ReadyMadeSheet {
  readonly id: string;
  readonly title: string;
  /** One sentence: what it answers, for whom. */
  readonly purpose: string;
  pages(system: UnitSystem): readonly Page[];
}
