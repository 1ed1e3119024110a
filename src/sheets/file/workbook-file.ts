import type {
  Cell,
  CellStyle,
  ConditionalRule,
  DataValidation,
  NamedRange,
  PageSetup,
  SheetChart as FileChart,
  WriteSheet,
} from "hucre";
import { columnLetters, readAddress, readRange, writeAddress } from "../kit/address";
import type { Allowed, Page, SheetCell, SheetChart, UnitSystem } from "../kit/definition";
import { functionsIn, toFile, toScreen } from "../../formula-text/dialect";
import {
  BODY_SIZE,
  failed,
  type Look,
  looks,
  palette,
  passed,
  seriesColours,
  waiting,
  WAITING,
} from "../kit/look";

export type Value = string | number | boolean | null;

/** What a sheet shows, cell by cell, rows and columns from 0. */
export interface ShownValues {
  value(page: string, row: number, column: number): Value;
}

export interface FileOptions {
  readonly title: string;
  readonly system: UnitSystem;
  readonly namespace: string;
  /** Leaves the formulas out, for viewers that cannot evaluate them. */
  readonly valuesOnly?: boolean;
}

/** What the workbook writer takes. */
export interface FileParts {
  readonly sheets: WriteSheet[];
  readonly namedRanges: NamedRange[];
}

/** With the same measures everywhere, also where only its free twin is installed. */
const FONT = "Arial";
const MONOSPACED = "Courier New";
const LINE_POINTS = 12.75;
const ROW_MARGIN_POINTS = 2.25;
/** Row height over size of the text. */
const LARGE_TEXT_ROW = 1.5;
/** A list longer than this, or one with commas, stands in cells of a sheet of its own. */
const INLINE_LIST = 250;
const LISTS = "Lists";

/**
 * Turns the pages of a ready-made sheet into what the workbook writer takes: formulas as the host
 * itself stores them, with the value that each cell shows.
 */
export function fileParts(
  pages: readonly Page[],
  shown: ShownValues,
  options: FileOptions,
): FileParts {
  const lists = new Lists();
  const sheets = pages.map((page) => sheetOf(page, shown, options, lists));
  const names = pages.flatMap((page) => namesOf(page, options.namespace));
  return {
    sheets: lists.isEmpty ? sheets : [...sheets, lists.sheet()],
    namedRanges: options.valuesOnly ? [] : names,
  };
}

function sheetOf(page: Page, shown: ShownValues, options: FileOptions, lists: Lists): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  const placed = alignments(page);
  for (const cell of page.cells) writeCell(cells, page, cell, shown, options, placed);
  return {
    name: page.name,
    columns: page.widths.map((width) => ({ width })),
    rows: [],
    cells,
    merges: page.cells.flatMap(({ at, span = 1 }) => {
      if (span === 1) return [];
      const { row, column } = readAddress(at);
      return [{ startRow: row, startCol: column, endRow: row, endCol: column + span - 1 }];
    }),
    rowDefs: new Map([...rowHeights(page)].map(([row, points]) => [row - 1, { height: points }])),
    dataValidations: page.cells.flatMap((cell) => validation(cell, lists)),
    conditionalRules: rules(page),
    ...(page.frozenRows !== undefined && { freezePane: { rows: page.frozenRows } }),
    ...(page.pageBreaks !== undefined && { rowBreaks: page.pageBreaks.map((row) => row - 2) }),
    charts: (page.charts ?? []).map((chart) => fileChart(page, chart, shown)),
    view: { showGridLines: false },
    pageSetup: {
      paperSize: PAPERS[options.system].name,
      orientation: page.landscape === true ? "landscape" : "portrait",
      ...fit(page, options.system),
      printArea: page.printArea.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2"),
      margins: MARGINS,
    },
    headerFooter: { oddFooter: `&L${options.title}&C&A&R&P of &N` },
  };
}

/** Inches. */
const MARGINS = { left: 0.5, right: 0.5, top: 0.6, bottom: 0.6, header: 0.3, footer: 0.3 };
const POINTS_PER_INCH = 72;

/** Inches, upright. */
const PAPERS = {
  US: { name: "letter", width: 8.5, height: 11 },
  SI: { name: "a4", width: 8.27, height: 11.69 },
} as const;

/** A column of the default font: seven pixels a character and five around, 96 pixels an inch. */
function columnPoints(characters: number): number {
  return ((characters * 7 + 5) * POINTS_PER_INCH) / 96;
}

/** Viewers differ by this much in the width of a column. */
const SAFETY = 0.97;

/** How much smaller than the width asks a page may be printed, to keep a part on one sheet of paper. */
const LEAST_SHRINK = 0.75;

/**
 * A scale, where page breaks count: the host disregards them once it is told to fit pages. So that
 * every part between two breaks stays whole, where it nearly does.
 */
function fit(page: Page, system: UnitSystem): PageSetup {
  if (page.onePage === true || page.pageBreaks === undefined) {
    return { fitToPage: true, fitToWidth: 1, fitToHeight: page.onePage === true ? 1 : 0 };
  }
  const paper = PAPERS[system];
  const [across, down] =
    page.landscape === true ? [paper.height, paper.width] : [paper.width, paper.height];
  const roomAcross = (across - MARGINS.left - MARGINS.right) * POINTS_PER_INCH;
  const roomDown = (down - MARGINS.top - MARGINS.bottom) * POINTS_PER_INCH;
  const width = page.widths.reduce((sum, characters) => sum + columnPoints(characters), 0);
  const byWidth = Math.min(1, (SAFETY * roomAcross) / width);
  const byHeight = partHeights(page)
    .map((height) => roomDown / height)
    .filter((scale) => scale >= LEAST_SHRINK * byWidth);
  return { scale: Math.floor(100 * Math.min(byWidth, ...byHeight)) };
}

/** Heights between page breaks, as far as it is printed. */
function partHeights(page: Page): number[] {
  const heights = rowHeights(page);
  const last = readRange(page.printArea).rows;
  const starts = [1, ...(page.pageBreaks ?? []), last + 1];
  return starts.slice(1).map((end, i) => {
    let sum = 0;
    for (let row = starts[i]; row < end; row++) sum += heights.get(row) ?? 0;
    return sum;
  });
}

/** Every row in use has its height: viewers differ in what they would give it. */
function rowHeights(page: Page): Map<number, number> {
  const heights = new Map<number, number>();
  const last = readRange(page.printArea).rows;
  for (let row = 1; row <= last; row++) {
    heights.set(row, (page.lines.get(row) ?? 1) * LINE_POINTS + ROW_MARGIN_POINTS);
  }
  for (const { at, role } of page.cells) {
    const { size = BODY_SIZE } = looks[role];
    const row = readAddress(at).row + 1;
    heights.set(row, Math.max(heights.get(row) ?? 0, size * LARGE_TEXT_ROW));
  }
  return heights;
}

interface Alignment {
  readonly horizontal: "left" | "center";
  readonly indent: number;
}

const CENTRED: Alignment = { horizontal: "center", indent: 0 };

const TEXT_ROLES: readonly string[] = ["label", "text", "formulaText", "sentence", "check", "mark"];

/** Marks of one cell stand in its middle; headers stand as what is below them does. */
function alignments(page: Page): ReadonlyMap<string, Alignment> {
  const cells = new Map(page.cells.map((cell) => [cell.at, cell]));
  const isMark = ({ role, span }: SheetCell) =>
    (role === "check" || role === "mark") && span === undefined;
  const found = new Map<string, Alignment>();
  for (const cell of page.cells) {
    if (isMark(cell)) found.set(cell.at, CENTRED);
    if (cell.role !== "header") continue;
    const { row, column } = readAddress(cell.at);
    const below = cells.get(writeAddress({ row: row + 1, column }));
    if (below === undefined) continue;
    if (isMark(below)) found.set(cell.at, CENTRED);
    else if (TEXT_ROLES.includes(below.role)) {
      found.set(cell.at, { horizontal: "left", indent: looks[below.role].indent ?? 0 });
    }
  }
  return found;
}

function aligned(given: CellStyle, alignment: Alignment | undefined): CellStyle {
  if (alignment === undefined) return given;
  return { ...given, alignment: { ...given.alignment, ...alignment } };
}

function writeCell(
  cells: Map<string, Partial<Cell>>,
  page: Page,
  cell: SheetCell,
  shown: ShownValues,
  options: FileOptions,
  placed: ReadonlyMap<string, Alignment>,
): void {
  const { row, column } = readAddress(cell.at);
  const read = (down: number, across: number) =>
    shown.value(page.name, row + down, column + across);
  const { spill } = cell;
  if (spill !== undefined) {
    for (let down = 0; down < spill.reserved; down++) {
      for (let across = 0; across < spill.formats.length; across++) {
        const inside = down < spill.rows && across < spill.columns;
        const header = spill.headed && down === 0;
        cells.set(`${row + down},${column + across}`, {
          ...(inside && valueOf(read(down, across), options)),
          style: style(
            spilledLook(header, inside, read(1, across)),
            header ? undefined : spill.formats[across],
          ),
        });
      }
    }
  }
  for (let across = 1; across < (cell.span ?? 1); across++) {
    cells.set(`${row},${column + across}`, { value: null, style: style(looks[cell.role]) });
  }
  const key = `${row},${column}`;
  const { formula } = cell;
  const first = cells.get(key);
  const value = formula === undefined ? fixedValue(cell, options.namespace) : read(0, 0);
  cells.set(key, {
    ...valueOf(value, options),
    style: first?.style ?? aligned(style(lookOf(cell, value), cell.format), placed.get(cell.at)),
    ...(formula !== undefined &&
      options.valuesOnly !== true &&
      fileFormula(cell, formula, value, page, options.namespace)),
    ...(cell.note !== undefined && { comment: { author: "Fieldsum", text: cell.note } }),
  });
}

/** Columns of text stand at the left, their header too; a header without a column is none. */
function spilledLook(header: boolean, inside: boolean, firstValue: Value): Look {
  const place: Partial<Look> =
    typeof firstValue === "string" ? { align: "left", indent: 1 } : { align: "right" };
  if (!header) return { ...looks.result, ...place };
  return inside ? { ...looks.header, ...place } : {};
}

/** What an input holds changes its look: text over several cells reads from the left. */
function lookOf({ role, span }: SheetCell, value: Value): Look {
  const look = looks[role];
  if (role === "input" && typeof value === "string" && span !== undefined) {
    return { ...look, align: "left", wrap: true };
  }
  return look;
}

/** A formula that stands there as text has this build's names in it too. */
function fixedValue(cell: SheetCell, namespace: string): Value {
  const { role, value } = cell;
  if (value === undefined) return null;
  return role === "formulaText" && typeof value === "string" ? toScreen(value, namespace) : value;
}

function valueOf(value: Value, { valuesOnly }: FileOptions): Partial<Cell> {
  if (value === null) return { value: null };
  // Some viewers show a stored truth value as 0 or 1.
  if (typeof value === "boolean" && valuesOnly === true) {
    return { value: value ? "TRUE" : "FALSE", type: "string" };
  }
  return { value, type: typeof value as "string" | "number" | "boolean" };
}

/**
 * A cell that calls a custom function, or a name that does, is stored as a dynamic array over its
 * whole result, a single value too: that is how the host saves it.
 */
function fileFormula(
  cell: SheetCell,
  formula: string,
  value: Value,
  page: Page,
  namespace: string,
): Partial<Cell> {
  const plain = { formula: toFile(formula, namespace), formulaResult: value };
  if (!isDynamic(formula, page)) return plain;
  const { row, column } = readAddress(cell.at);
  const last =
    cell.spill === undefined
      ? cell.at
      : writeAddress({ row: row + cell.spill.rows - 1, column: column + cell.spill.columns - 1 });
  return {
    ...plain,
    formulaType: "array",
    formulaRef: last === cell.at ? cell.at : `${cell.at}:${last}`,
    formulaDynamic: true,
  };
}

function isDynamic(formula: string, page: Page): boolean {
  const own = (page.functions ?? []).some(({ name }) => formula.includes(`${name}(`));
  return own || functionsIn(formula).length > 0;
}

function style(look: Look, format?: string): CellStyle {
  const rgb = (colour: string) => ({ rgb: colour.slice(1).toUpperCase() });
  return {
    font: {
      name: look.monospaced === true ? MONOSPACED : FONT,
      size: look.size ?? BODY_SIZE,
      color: rgb(look.ink ?? palette.ink),
      ...(look.bold === true && { bold: true }),
      ...(look.italic === true && { italic: true }),
    },
    ...(look.fill !== undefined && {
      fill: { type: "pattern" as const, pattern: "solid" as const, fgColor: rgb(look.fill) },
    }),
    ...(look.rule !== undefined && {
      border: { bottom: { style: "thin" as const, color: rgb(look.rule) } },
    }),
    alignment: {
      vertical: "center",
      ...(look.align !== undefined && { horizontal: look.align }),
      ...(look.wrap === true && { wrapText: true }),
      ...(look.indent !== undefined && { indent: look.indent }),
    },
    ...(format !== undefined && format !== "General" && { numFmt: format }),
    // The sheet is not protected; were it so, inputs would stay open.
    ...(look === looks.input && { protection: { locked: false } }),
  };
}

function validation(cell: SheetCell, lists: Lists): DataValidation[] {
  const { allowed, at } = cell;
  if (allowed === undefined) return [];
  const common = {
    range: at,
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "stop" as const,
  };
  if ("list" in allowed) {
    return [
      {
        ...common,
        type: "list",
        errorTitle: "Not on the list",
        errorMessage: "Choose one of the entries of the list.",
        ...lists.source(allowed.list),
      },
    ];
  }
  // Text, or a number that a text may stand for: the workbook's own limits say what is wrong.
  if ("text" in allowed || allowed.orText !== undefined) return [];
  return [
    {
      ...common,
      type: allowed.whole === true ? "whole" : "decimal",
      operator: "between",
      formula1: String(allowed.low),
      formula2: String(allowed.high),
      errorTitle: "Out of range",
      errorMessage: limitText(allowed),
    },
  ];
}

function limitText({ low, high, whole }: Extract<Allowed, { low: number }>): string {
  return `${whole === true ? "A whole number" : "A number"} from ${low} to ${high}.`;
}

/** Lists that don't fit into a validation stand in columns of a hidden sheet. */
class Lists {
  private readonly columns: (readonly string[])[] = [];

  get isEmpty(): boolean {
    return this.columns.length === 0;
  }

  source(entries: readonly string[]): Pick<DataValidation, "values" | "formula1"> {
    const fits = entries.join(",").length <= INLINE_LIST && !entries.some((e) => e.includes(","));
    if (fits) return { values: [...entries] };
    let index = this.columns.findIndex((column) => column.join() === entries.join());
    if (index < 0) index = this.columns.push(entries) - 1;
    const letter = columnLetters(index);
    return { formula1: `${LISTS}!$${letter}$1:$${letter}$${entries.length}` };
  }

  sheet(): WriteSheet {
    const cells = new Map<string, Partial<Cell>>();
    this.columns.forEach((entries, column) =>
      entries.forEach((entry, row) => cells.set(`${row},${column}`, { value: entry })),
    );
    return { name: LISTS, rows: [], cells, hidden: true };
  }
}

function rules(page: Page): ConditionalRule[] {
  let priority = 0;
  const rule = (range: string, formula: string, look: Look): ConditionalRule => ({
    type: "expression",
    priority: ++priority,
    range,
    formula,
    style: ruleStyle(look),
  });
  const checks = page.cells
    .filter(({ role, formula }) => (role === "check" || role === "mark") && formula !== undefined)
    .flatMap(({ at }) => [
      rule(at, `${at}="OK"`, passed),
      rule(at, `LEFT(${at},${WAITING.length})="${WAITING}"`, waiting),
      rule(at, `AND(${at}<>"",${at}<>"OK",LEFT(${at},${WAITING.length})<>"${WAITING}")`, failed),
    ]);
  const marks = (page.marks ?? []).map(({ range, by }) => {
    const { row, column } = readRange(by);
    return rule(range, `${writeAddress({ row, column })}<>"OK"`, failed);
  });
  return [...checks, ...marks];
}

function ruleStyle(look: Look): CellStyle {
  const rgb = (colour: string) => ({ rgb: colour.slice(1).toUpperCase() });
  return {
    ...(look.ink !== undefined && { font: { color: rgb(look.ink) } }),
    ...(look.fill !== undefined && {
      fill: { type: "pattern" as const, pattern: "solid" as const, bgColor: rgb(look.fill) },
    }),
  };
}

/** A range with its page, that stays where it is: Line!$B$4:$C$9. */
function absolute({ name }: Page, range: string): string {
  const sheet = /^[A-Za-z]\w*$/.test(name) ? name : `'${name.replace(/'/g, "''")}'`;
  return `${sheet}!${range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;
}

/** Names of cells, ranges and functions, as the file spells them. */
function namesOf(page: Page, namespace: string): NamedRange[] {
  return [
    ...page.cells.flatMap(({ name, at }) =>
      name === undefined ? [] : [{ name, range: absolute(page, at) }],
    ),
    ...(page.names ?? []).map(({ name, range }) => ({ name, range: absolute(page, range) })),
    ...(page.functions ?? []).map(({ name, formula }) => ({
      name,
      range: toFile(formula, namespace),
    })),
  ];
}

const QUIET_GRIDLINES =
  '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="DFE3D8"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>';

/**
 * A series' title follows its cell, which the workbook writer cannot say: the title is marked here,
 * and mendChart turns the mark into the link once the chart is written.
 */
function linkedTitle(cell: string, text: string): string {
  return `⟦${cell}⟧${text}`;
}

export function mendChart(chartXml: string): string {
  return chartXml
    .replace(/<c:majorGridlines\/>/g, QUIET_GRIDLINES)
    .replace(
      /<c:v>⟦([^⟧]*)⟧([^<]*)<\/c:v>/g,
      '<c:strRef><c:f>$1</c:f><c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>$2</c:v></c:pt></c:strCache></c:strRef>',
    );
}

function fileChart(page: Page, chart: SheetChart, shown: ShownValues): FileChart {
  const from = readAddress(chart.place.from);
  const to = readAddress(chart.place.to);
  const titleOf = (at: string) => {
    const { row, column } = readAddress(at);
    return String(shown.value(page.name, row, column) ?? "");
  };
  const axis = (title: string) => ({
    title,
    axisTitleFontSize: 9,
    labelFontSize: 9,
    numberFormat: { formatCode: "General", sourceLinked: false },
    majorTickMark: "out" as const,
    minorTickMark: "none" as const,
    axisTitleColor: palette.quiet,
    labelColor: palette.quiet,
  });
  return {
    type: "scatter",
    scatterStyle: "lineMarker",
    title: chart.title,
    titleFontSize: 11,
    titleBold: true,
    titleColor: palette.moss,
    altText: chart.description,
    legend: chart.series.length > 1 ? "bottom" : false,
    legendFontSize: 9,
    dispBlanksAs: "gap",
    anchor: { from: { row: from.row, col: from.column }, to: { row: to.row, col: to.column + 1 } },
    series: chart.series.map(({ range, titleAt }, i) => ({
      name: linkedTitle(absolute(page, titleAt), titleOf(titleAt)),
      categories: absolute(page, chart.x.range),
      values: absolute(page, range),
      smooth: false,
      color: seriesColours[i],
      stroke: { width: 1.75, dash: i === 0 ? "solid" : "dash" },
      marker: {
        symbol: i === 0 ? "circle" : "square",
        size: 5,
        fill: seriesColours[i],
        line: seriesColours[i],
      },
    })),
    axes: {
      x: { ...axis(chart.x.title) },
      y: { ...axis(chart.yTitle), gridlines: { major: true } },
    },
  };
}
