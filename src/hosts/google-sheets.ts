/**
 * A ready-made workbook as the script of a Google sheet writes it, and the part of that host's
 * interface which it needs. The build makes the first from the definitions.
 */
export interface GoogleWorkbook {
  readonly title: string;
  readonly sheets: readonly GoogleSheet[];
}

export interface GoogleSheet {
  readonly name: string;
  readonly rows: number;
  readonly columns: number;
  /** Characters, from A on. */
  readonly widths: readonly number[];
  readonly frozenRows: number;
  readonly hidden: boolean;
  readonly looks: readonly GoogleLook[];
  /** Address, value or formula, number of its look, number format, columns that it covers. */
  readonly cells: readonly GoogleCell[];
  readonly names: readonly { readonly name: string; readonly range: string }[];
  readonly notes: readonly { readonly at: string; readonly text: string }[];
  readonly limits: readonly GoogleLimit[];
  readonly rules: readonly {
    readonly range: string;
    readonly formula: string;
    readonly ink?: string;
    readonly fill?: string;
  }[];
  readonly lines: readonly (readonly [row: number, lines: number])[];
  readonly charts: readonly GoogleChart[];
}

export type GoogleCell = readonly [
  at: string,
  content: string | number | boolean,
  look: number,
  format?: string,
  span?: number,
];

export interface GoogleLook {
  readonly size: number;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly ink: string;
  readonly fill?: string;
  readonly font: string;
  readonly wrap: boolean;
  readonly align?: "left" | "right";
}

export interface GoogleLimit {
  readonly at: string;
  readonly text: string;
  readonly list?: readonly string[];
  /** A formula that is true for what is allowed. */
  readonly formula?: string;
}

export interface GoogleChart {
  readonly title: string;
  readonly x: string;
  readonly series: readonly string[];
  readonly xTitle: string;
  readonly yTitle: string;
  /** Row and column of its first cell, from 1; pixels. */
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
}

/* What the host gives, as far as it is used. */

export interface GoogleHost {
  getActive(): GoogleSpreadsheet;
  getUi(): { alert(text: string): void };
  newDataValidation(): GoogleValidationBuilder;
  newConditionalFormatRule(): GoogleRuleBuilder;
}

/** The pages of the script project, as they stand. */
export interface GoogleTexts {
  createTemplateFromFile(name: string): { getRawContent(): string };
}

export interface GoogleSpreadsheet {
  getSheetByName(name: string): GoogleSheetPage | null;
  insertSheet(name: string): GoogleSheetPage;
  getNamedRanges(): { getName(): string }[];
  setNamedRange(name: string, range: GoogleRange): void;
  setActiveSheet(sheet: GoogleSheetPage): void;
}

export interface GoogleSheetPage {
  getMaxRows(): number;
  getMaxColumns(): number;
  insertRowsAfter(row: number, count: number): void;
  insertColumnsAfter(column: number, count: number): void;
  getRange(address: string): GoogleRange;
  setColumnWidth(column: number, pixels: number): void;
  setRowHeight(row: number, pixels: number): void;
  setFrozenRows(rows: number): void;
  hideSheet(): void;
  setConditionalFormatRules(rules: unknown[]): void;
  newChart(): GoogleChartBuilder;
  insertChart(chart: unknown): void;
}

export interface GoogleRange {
  merge(): void;
  setNote(text: string): void;
  setDataValidation(rule: unknown): void;
  setValues(values: unknown[][]): void;
  setNumberFormats(formats: string[][]): void;
  setFontColors(colors: string[][]): void;
  setBackgrounds(colors: (string | null)[][]): void;
  setFontFamilies(fonts: string[][]): void;
  setFontSizes(sizes: number[][]): void;
  setFontWeights(weights: string[][]): void;
  setFontStyles(styles: string[][]): void;
  setWraps(wraps: boolean[][]): void;
  setHorizontalAlignments(alignments: (string | null)[][]): void;
  setVerticalAlignment(alignment: string): void;
}

export interface GoogleValidationBuilder {
  requireValueInList(list: readonly string[], dropdown: boolean): GoogleValidationBuilder;
  requireFormulaSatisfied(formula: string): GoogleValidationBuilder;
  setAllowInvalid(allowed: boolean): GoogleValidationBuilder;
  setHelpText(text: string): GoogleValidationBuilder;
  build(): unknown;
}

export interface GoogleRuleBuilder {
  whenFormulaSatisfied(formula: string): GoogleRuleBuilder;
  setFontColor(color: string): GoogleRuleBuilder;
  setBackground(color: string): GoogleRuleBuilder;
  setRanges(ranges: GoogleRange[]): GoogleRuleBuilder;
  build(): unknown;
}

export interface GoogleChartBuilder {
  asScatterChart(): GoogleChartBuilder;
  addRange(range: GoogleRange): GoogleChartBuilder;
  setTitle(title: string): GoogleChartBuilder;
  setXAxisTitle(title: string): GoogleChartBuilder;
  setYAxisTitle(title: string): GoogleChartBuilder;
  setOption(name: string, value: unknown): GoogleChartBuilder;
  setPosition(row: number, column: number, x: number, y: number): GoogleChartBuilder;
  build(): unknown;
}
