import type {
  GoogleChartBuilder,
  GoogleHost,
  GoogleRange,
  GoogleRuleBuilder,
  GoogleSheetPage,
  GoogleSpreadsheet,
  GoogleValidationBuilder,
} from "../../src/hosts/google-sheets";
import { readRange, writeAddress } from "../../src/sheets/kit/address";

/** What a new sheet has. */
const ROWS = 1000;
const COLUMNS = 26;

/** A name that the host takes for a cell, in either way of writing one, or for a truth value. */
const NO_NAME = /^(?:[A-Z]{1,3}\d+|R\d*C\d*|TRUE|FALSE|\d.*)$/i;

export interface Written {
  readonly values: Map<string, unknown>;
  readonly formats: Map<string, string>;
  readonly merged: string[];
  readonly limits: Map<string, unknown>;
  readonly notes: Map<string, string>;
  readonly rules: unknown[];
  readonly charts: unknown[];
  readonly heights: Map<number, number>;
  frozen: number;
  hidden: boolean;
}

/**
 * The spreadsheet of a script as far as the writer needs it. It refuses what the host refuses: a range
 * outside the sheet, values of another shape than the range, a sheet or a name that is there already,
 * a name that could be a cell, merges that overlap or cross the frozen rows, a list that is too long.
 */
export class StandInGoogle implements GoogleHost {
  readonly alerts: string[] = [];
  readonly sheets = new Map<string, StandInSheet>();
  readonly names = new Map<string, string>();
  active = "";

  getActive(): GoogleSpreadsheet {
    return {
      getSheetByName: (name) => this.sheets.get(name) ?? null,
      insertSheet: (name) => {
        if (this.sheets.has(name))
          throw new Error(`A sheet with the name "${name}" already exists.`);
        if (name === "" || name.length > 100) throw new Error("Invalid sheet name.");
        const sheet = new StandInSheet(name);
        this.sheets.set(name, sheet);
        return sheet;
      },
      getNamedRanges: () => [...this.names.keys()].map((name) => ({ getName: () => name })),
      setNamedRange: (name, range) => {
        if (!/^[A-Za-z_][A-Za-z0-9_]{0,249}$/.test(name) || NO_NAME.test(name))
          throw new Error(`"${name}" is not a valid name for a named range.`);
        if ([...this.names.keys()].some((there) => there.toUpperCase() === name.toUpperCase()))
          throw new Error(`A named range with the name "${name}" already exists.`);
        const { sheet, address } = range as StandInRange;
        this.names.set(name, `${sheet.name}!${address}`);
      },
      setActiveSheet: (sheet) => {
        this.active = (sheet as StandInSheet).name;
      },
    };
  }

  getUi() {
    return { alert: (text: string) => void this.alerts.push(text) };
  }

  newDataValidation(): GoogleValidationBuilder {
    const made: Record<string, unknown> = {};
    const builder: GoogleValidationBuilder = {
      requireValueInList: (list) => {
        if (list.length > 500) throw new Error("The list has more than 500 entries.");
        made.list = list;
        return builder;
      },
      requireFormulaSatisfied: (formula) => {
        made.formula = formulaOf(formula);
        return builder;
      },
      setAllowInvalid: (allowed) => {
        made.allowed = allowed;
        return builder;
      },
      setHelpText: (text) => {
        made.text = text;
        return builder;
      },
      build: () => {
        if (made.list === undefined && made.formula === undefined)
          throw new Error("The rule has no condition.");
        return made;
      },
    };
    return builder;
  }

  newConditionalFormatRule(): GoogleRuleBuilder {
    const made: Record<string, unknown> = {};
    const set = (key: string) => (value: unknown) => {
      made[key] = value;
      return builder;
    };
    const builder: GoogleRuleBuilder = {
      whenFormulaSatisfied: (formula) => set("formula")(formulaOf(formula)),
      setFontColor: set("ink"),
      setBackground: set("fill"),
      setRanges: set("ranges"),
      build: () => {
        if (made.formula === undefined || made.ranges === undefined)
          throw new Error("The rule has no condition or no range.");
        return made;
      },
    };
    return builder;
  }
}

function formulaOf(text: string): string {
  if (!text.startsWith("=")) throw new Error(`not a formula: ${text}`);
  return text;
}

export class StandInSheet implements GoogleSheetPage, Written {
  readonly values = new Map<string, unknown>();
  readonly formats = new Map<string, string>();
  readonly merged: string[] = [];
  readonly limits = new Map<string, unknown>();
  readonly notes = new Map<string, string>();
  readonly heights = new Map<number, number>();
  rules: unknown[] = [];
  readonly charts: unknown[] = [];
  frozen = 0;
  hidden = false;
  private rows = ROWS;
  private columns = COLUMNS;

  constructor(readonly name: string) {}

  getMaxRows = () => this.rows;
  getMaxColumns = () => this.columns;

  insertRowsAfter(row: number, count: number): void {
    if (row !== this.rows) throw new Error("only at the end, here");
    this.rows += count;
  }

  insertColumnsAfter(column: number, count: number): void {
    if (column !== this.columns) throw new Error("only at the end, here");
    this.columns += count;
  }

  getRange(address: string): StandInRange {
    const { row, column, rows, columns } = readRange(address);
    if (row + rows > this.rows || column + columns > this.columns)
      throw new Error(
        `The coordinates of the range ${address} are outside the dimensions of the sheet.`,
      );
    return new StandInRange(this, address);
  }

  setColumnWidth(column: number, pixels: number): void {
    if (column < 1 || column > this.columns || pixels < 2) throw new Error("no such column");
  }

  setRowHeight(row: number, pixels: number): void {
    if (row < 1 || row > this.rows || pixels < 2) throw new Error("no such row");
    this.heights.set(row, pixels);
  }

  setFrozenRows(rows: number): void {
    if (rows >= this.rows) throw new Error("cannot freeze all rows");
    this.frozen = rows;
  }

  hideSheet(): void {
    this.hidden = true;
  }

  setConditionalFormatRules(rules: unknown[]): void {
    this.rules = rules;
  }

  newChart(): GoogleChartBuilder {
    const made: Record<string, unknown> & { ranges: unknown[] } = { ranges: [] };
    const set = (key: string) => (value: unknown) => {
      made[key] = value;
      return builder;
    };
    const builder: GoogleChartBuilder = {
      asScatterChart: () => set("type")("scatter"),
      addRange: (range) => {
        made.ranges.push((range as StandInRange).address);
        return builder;
      },
      setTitle: set("title"),
      setXAxisTitle: set("xTitle"),
      setYAxisTitle: set("yTitle"),
      setOption: (name, value) => set(name)(value),
      setPosition: (row, column) => {
        if (row < 1 || column < 1) throw new Error("no such place");
        return set("place")([row, column]);
      },
      build: () => made,
    };
    return builder;
  }

  insertChart(chart: unknown): void {
    this.charts.push(chart);
  }
}

export class StandInRange implements GoogleRange {
  private readonly place;

  constructor(
    readonly sheet: StandInSheet,
    readonly address: string,
  ) {
    this.place = readRange(address);
  }

  merge(): void {
    const { row, column, rows, columns } = this.place;
    for (const other of this.sheet.merged) {
      const there = readRange(other);
      const apart =
        row >= there.row + there.rows ||
        there.row >= row + rows ||
        column >= there.column + there.columns ||
        there.column >= column + columns;
      if (!apart) throw new Error(`The merge ${this.address} overlaps ${other}.`);
    }
    if (row < this.sheet.frozen && row + rows > this.sheet.frozen)
      throw new Error("You can't merge frozen and non-frozen rows.");
    this.sheet.merged.push(this.address);
  }

  setNote(text: string): void {
    this.sheet.notes.set(this.address, text);
  }

  setDataValidation(rule: unknown): void {
    this.sheet.limits.set(this.address, rule);
  }

  setValues(values: unknown[][]): void {
    this.each(values, (value, at) => {
      if (value === null || value === undefined) throw new Error("a value is missing");
      if (value !== "") this.sheet.values.set(at(), value);
    });
  }

  setNumberFormats(formats: string[][]): void {
    this.each(formats, (format, at) => this.sheet.formats.set(at(), format));
  }

  setFontColors(all: string[][]): void {
    this.each(all, (color) => this.color(color));
  }

  setBackgrounds(all: (string | null)[][]): void {
    this.each(all, (color) => color === null || this.color(color));
  }

  setFontFamilies(all: string[][]): void {
    this.each(all);
  }

  setFontSizes(all: number[][]): void {
    this.each(all, (size) => {
      if (!(size >= 1)) throw new Error("no such size");
    });
  }

  setFontWeights(all: string[][]): void {
    this.each(all, (weight) => {
      if (weight !== "bold" && weight !== "normal") throw new Error(`no weight ${weight}`);
    });
  }

  setFontStyles(all: string[][]): void {
    this.each(all, (style) => {
      if (style !== "italic" && style !== "normal") throw new Error(`no style ${style}`);
    });
  }

  setWraps(all: boolean[][]): void {
    this.each(all);
  }

  setHorizontalAlignments(all: (string | null)[][]): void {
    this.each(all, (how) => {
      if (how !== null && !["left", "center", "normal", "right"].includes(how))
        throw new Error(`no alignment ${how}`);
    });
  }

  setVerticalAlignment(how: string): void {
    if (!["top", "middle", "bottom"].includes(how)) throw new Error(`no alignment ${how}`);
  }

  private color(color: string): true {
    if (!/^#[0-9a-f]{6}$/i.test(color)) throw new Error(`no color ${color}`);
    return true;
  }

  /** Visits each value, and its address for those who ask for it: most do not. */
  private each<T>(all: T[][], visit: (value: T, at: () => string) => void = () => undefined): void {
    const { row, column, rows, columns } = this.place;
    if (all.length !== rows || all.some((line) => line.length !== columns))
      throw new Error(
        `The number of rows or columns in the data does not match the range ${this.address}.`,
      );
    all.forEach((line, down) =>
      line.forEach((value, across) =>
        visit(value, () => writeAddress({ row: row + down, column: column + across })),
      ),
    );
  }
}
