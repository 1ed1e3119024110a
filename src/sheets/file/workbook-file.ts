import { palette } from "../../palette";
import type {
  Cell,
  CellStyle,
  ConditionalRule,
  DataValidation,
  NamedRange,
  SheetChart as FileChart,
  WriteSheet,
} from "hucre";
import { readAddress, readRange, writeAddress } from "../kit/address";
import type {
  Page,
  SheetCell,
  SheetChart,
  ShownValues,
  UnitSystem,
  Value,
} from "../kit/definition";
import { fillingCells } from "../kit/filling";
import { limitText } from "../kit/limits";
import { Lists, LISTS_SHEET } from "../kit/lists";
import { MARGINS, PAPERS, printedParts, rowHeights } from "../kit/print";
import { absolute } from "../kit/reference";
import { lookRules } from "../kit/rules";
import { printedColumns, unmerged } from "../kit/unmerged";
import { toFile, toScreen } from "../../formula-text/dialect";
import {
  BODY_SIZE,
  DRAWN,
  drawnLooks,
  UNLISTED,
  FONT,
  type Look,
  lookOf,
  looks,
  MONOSPACED,
  seriesInks,
} from "../kit/look";

export interface FileOptions {
  readonly title: string;
  readonly system: UnitSystem;
  readonly namespace: string;
  /** What each page says at its top about where its values come from. */
  readonly notice: string;
  /** Leaves the formulas out, for viewers that cannot evaluate them. */
  readonly valuesOnly?: boolean;
}

/** What the workbook writer takes. */
export interface FileParts {
  readonly sheets: WriteSheet[];
  readonly namedRanges: NamedRange[];
  /** Heights of the frames of drawings, points, by the description that their frame has. */
  readonly frames: ReadonlyMap<string, number>;
  /** The values of the ranges that charts show, by the reference to them. */
  readonly chartValues: ReadonlyMap<string, readonly Value[]>;
}

/**
 * Turns the pages of a ready-made sheet into what the workbook writer takes: formulas as the host
 * itself stores them, with the value that each cell shows.
 */
export function fileParts(
  definition: readonly Page[],
  shown: ShownValues,
  options: FileOptions,
): FileParts {
  const laid = unmerged(definition).map((page) => {
    const notice = noticePlace(page, shown, options.notice);
    return { page: withRow(page, notice), notice };
  });
  const pages = laid.map(({ page }) => page);
  const lists = new Lists();
  const fills = fillingCells(pages);
  const sheets = laid.map(({ page, notice }) =>
    sheetOf(page, notice, shown, options, lists, fills),
  );
  const names = pages.flatMap((page) => namesOf(page, options.namespace));
  return {
    sheets: lists.columns.length === 0 ? sheets : [...sheets, listsSheet(lists)],
    namedRanges: [
      ...(options.valuesOnly === true ? [] : names),
      ...pages.map((page) => printArea(page, options.system)),
    ],
    frames: new Map(pages.flatMap(framesOf)),
    chartValues: new Map(pages.flatMap((page) => chartValues(page, shown))),
  };
}

type Fills = (cell: SheetCell) => boolean;

function sheetOf(
  page: Page,
  notice: NoticePlace,
  shown: ShownValues,
  options: FileOptions,
  lists: Lists,
  fills: Fills,
): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  const placed = alignments(page);
  for (const cell of page.cells) writeCell(cells, page, cell, shown, options, placed, fills(cell));
  writeNotice(cells, notice, options.notice);
  const heights = rowHeights(page);
  heights.set(notice.row + 1, Math.max(heights.get(notice.row + 1) ?? 0, NOTICE_ROW_POINTS));
  return {
    name: page.name,
    columns: page.widths.map((width) => ({ width })),
    rows: [],
    cells,
    merges: [
      ...page.cells.flatMap(({ at, span = 1 }) => {
        if (span === 1) return [];
        const { row, column } = readAddress(at);
        return [mergeOf(row, column, span)];
      }),
      ...(notice.columns > 1 ? [mergeOf(notice.row, notice.column, notice.columns)] : []),
    ],
    rowDefs: new Map([...heights].map(([row, points]) => [row - 1, { height: points }])),
    dataValidations:
      options.valuesOnly === true ? [] : page.cells.flatMap((cell) => validation(cell, lists)),
    conditionalRules: rules(page),
    ...(page.frozenRows !== undefined && { freezePane: { rows: page.frozenRows } }),
    charts: (page.charts ?? []).map((chart) => fileChart(page, chart, shown)),
    view: { showGridLines: false },
    pageSetup: {
      paperSize: PAPERS[options.system].name,
      orientation: page.landscape === true ? "landscape" : "portrait",
      // Each printed part is an area of its own, and fits one sheet of paper by itself.
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 1,
      margins: MARGINS,
    },
    headerFooter: { oddFooter: `&L${options.title}&C&A&R&P / &N` },
  };
}

function mergeOf(row: number, column: number, span: number) {
  return { startRow: row, startCol: column, endRow: row, endCol: column + span - 1 };
}

/** The host's own name for what is printed; the workbook writer would leave its sheet unquoted. */
function printArea(page: Page, system: UnitSystem): NamedRange {
  const areas = printedParts(page, system).map((range) => absolute(page.name, range));
  return { name: "_xlnm.Print_Area", range: areas.join(","), scope: page.name };
}

function listsSheet(lists: Lists): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  lists.columns.forEach((entries, column) =>
    entries.forEach((entry, row) =>
      cells.set(`${row},${column}`, { value: entry, type: "string" }),
    ),
  );
  return { name: LISTS_SHEET, rows: [], cells, hidden: true };
}

const NOTICE_SIZE = 8;
/** Two lines of it. */
const NOTICE_ROW_POINTS = 26;
/** Characters of the body that one of a larger text takes, a bold one a little more. */
const BOLD = 1.1;
/** How much of its lines a wrapped text fills. */
const WRAPPED_FILL = 0.8;

interface NoticePlace {
  readonly row: number;
  readonly column: number;
  readonly columns: number;
}

/**
 * Where the notice about the values stands: at the right of the title's row, in the columns that the
 * title leaves, or below the page where those are too few.
 */
function noticePlace(page: Page, shown: ShownValues, notice: string): NoticePlace {
  const title = page.cells.find(({ role }) => role === "title");
  const { row, column: first } = readAddress(title?.at ?? "A1");
  const text = String(title?.value ?? shown.value(page.name, row, first) ?? "");
  const widths = printedColumns(page);
  const taken = (text.length * (looks.title.size ?? BODY_SIZE) * BOLD) / BODY_SIZE;
  let width = 0;
  let column = 0;
  while (column < widths.length && width < taken) width += widths[column++];
  const others = page.cells.filter(({ at, role }) => {
    const place = readAddress(at);
    return place.row === row && place.column >= column && role !== "title";
  });
  const room = widths.slice(column).reduce((sum, one) => sum + one, 0) * (BODY_SIZE / NOTICE_SIZE);
  if (others.length === 0 && 2 * WRAPPED_FILL * room >= notice.length) {
    return { row, column, columns: widths.length - column };
  }
  return { row: readRange(page.printArea).rows, column: 0, columns: widths.length };
}

function withRow(page: Page, { row }: NoticePlace): Page {
  const { columns, rows } = readRange(page.printArea);
  if (row < rows) return page;
  return { ...page, printArea: `A1:${writeAddress({ row, column: columns - 1 })}` };
}

function writeNotice(cells: Map<string, Partial<Cell>>, place: NoticePlace, notice: string): void {
  const { row, column, columns } = place;
  const look: Look = { size: NOTICE_SIZE, ink: palette.quiet, align: "right", wrap: true };
  for (let at = column; at < column + columns; at++) {
    const content = at === column ? { value: notice, type: "string" as const } : { value: null };
    cells.set(`${row},${at}`, { ...content, style: style(look) });
  }
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
  const isMark = ({ role, span, runsOver, spill }: SheetCell) =>
    (role === "check" || role === "mark") &&
    span === undefined &&
    runsOver === undefined &&
    spill === undefined;
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
  fills: boolean,
): void {
  const { row, column } = readAddress(cell.at);
  const from = readAddress(cell.shownIn ?? cell.at);
  const read = (down: number, across: number) =>
    shown.value(page.name, from.row + down, from.column + across);
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
  const { runsOver } = cell;
  for (let across = 1; across < (runsOver ?? cell.span ?? 1); across++) {
    cells.set(`${row},${column + across}`, { value: null, style: style(looks[cell.role]) });
  }
  const key = `${row},${column}`;
  const { formula } = cell;
  const first = cells.get(key);
  const value = formula === undefined ? fixedValue(cell, options.namespace) : read(0, 0);
  cells.set(key, {
    ...valueOf(value, options),
    style:
      first?.style ??
      aligned(
        style(
          { ...lookOf(cell, value), ...(runsOver !== undefined && { wrap: false }) },
          cell.format,
        ),
        placed.get(cell.at),
      ),
    ...(formula !== undefined &&
      options.valuesOnly !== true &&
      fileFormula(cell, formula, value, fills, options.namespace)),
  });
}

/** Columns of text stand at the left, their header too; a header without a column is none. */
function spilledLook(header: boolean, inside: boolean, firstValue: Value): Look {
  const place: Partial<Look> =
    typeof firstValue === "string" ? { align: "left", indent: 1 } : { align: "right" };
  if (!header) return { ...looks.result, ...place };
  return inside ? { ...looks.header, ...place } : {};
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
 * A formula that may fill cells is stored as a dynamic array over its whole result, a single value
 * too: that is how the host saves it. Stored plainly it would show with an "@".
 */
function fileFormula(
  cell: SheetCell,
  formula: string,
  value: Value,
  fills: boolean,
  namespace: string,
): Partial<Cell> {
  const plain = { formula: toFile(formula, namespace), formulaResult: value };
  if (!fills) return plain;
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

function style(look: Look, format?: string): CellStyle {
  const rgb = (color: string) => ({ rgb: color.slice(1).toUpperCase() });
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

/** A note is a prompt, that shows when the cell is chosen: a note's box would need a size of its own. */
function validation(cell: SheetCell, lists: Lists): DataValidation[] {
  const { allowed, at, note } = cell;
  const prompt = note === undefined ? {} : { showInputMessage: true, inputMessage: note };
  // Text, or a number that a text may stand for: the workbook's own limits say what is wrong.
  const isFree =
    allowed === undefined ||
    "text" in allowed ||
    ("low" in allowed && allowed.orText !== undefined);
  if (isFree) {
    // A prompt alone forbids nothing.
    return note === undefined ? [] : [{ range: at, type: "custom", formula1: "TRUE", ...prompt }];
  }
  const common = {
    range: at,
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "stop" as const,
    ...prompt,
  };
  if ("list" in allowed) {
    return [
      {
        ...common,
        type: "list",
        errorTitle: "Not on the list",
        errorMessage: "Choose one of the entries of the list.",
        ...listSource(allowed.list, lists),
      },
    ];
  }
  return [
    {
      ...common,
      type: allowed.whole === true ? "whole" : "decimal",
      operator: "between",
      formula1: String(allowed.low),
      formula2:
        allowed.atMost === undefined
          ? String(allowed.high)
          : `MIN(${allowed.high},${allowed.atMost.name})`,
      errorTitle: "Out of range",
      errorMessage: `Type ${limitText(allowed)}.`,
    },
  ];
}

function listSource(
  entries: readonly string[],
  lists: Lists,
): Pick<DataValidation, "values" | "formula1"> {
  const source = lists.source(entries);
  if ("typed" in source) return { values: [...entries] };
  return { formula1: absolute(LISTS_SHEET, source.range) };
}

function rules(page: Page): ConditionalRule[] {
  return lookRules(page).map(({ range, formula, look }, i) => ({
    type: "expression",
    priority: i + 1,
    range,
    formula,
    style: ruleStyle(look),
  }));
}

function ruleStyle(look: Look): CellStyle {
  const rgb = (color: string) => ({ rgb: color.slice(1).toUpperCase() });
  return {
    ...(look.ink !== undefined && { font: { color: rgb(look.ink) } }),
    ...(look.fill !== undefined && {
      fill: { type: "pattern" as const, pattern: "solid" as const, bgColor: rgb(look.fill) },
    }),
  };
}

/** Names of cells, ranges and functions, as the file spells them. */
function namesOf(page: Page, namespace: string): NamedRange[] {
  return [
    ...page.cells.flatMap(({ name, at }) =>
      name === undefined ? [] : [{ name, range: absolute(page.name, at) }],
    ),
    ...(page.names ?? []).map(({ name, range }) => ({ name, range: absolute(page.name, range) })),
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

/** What a chart's ranges hold, so that a viewer can draw it before anything is calculated. */
function chartValues(page: Page, shown: ShownValues): [string, Value[]][] {
  return (page.charts ?? []).flatMap(({ x, series, page: source = page.name }) => {
    const ranges = new Set([
      x.range,
      ...series.flatMap((one) => [one.range, ...(one.x === undefined ? [] : [one.x])]),
    ]);
    return [...ranges].map((range): [string, Value[]] => {
      const { row, column, rows } = readRange(range);
      const values = Array.from({ length: rows }, (_, down) =>
        shown.value(source, row + down, column),
      );
      return [absolute(source, range), values];
    });
  });
}

export function mendChart(chartXml: string, values: FileParts["chartValues"]): string {
  return (
    chartXml
      .replace(/<c:majorGridlines\/>/g, QUIET_GRIDLINES)
      .replace(UNSEEN_LINE, "<a:ln><a:noFill/></a:ln>")
      // An axis in the middle of the picture keeps its numbers at the edge, clear of the lines.
      .replace(/<c:minorTickMark val="none"\/>/g, '$&<c:tickLblPos val="low"/>')
      // Left out, it means smooth.
      .replace(/(<\/c:yVal>)(<\/c:ser>)/g, '$1<c:smooth val="0"/>$2')
      .replace(/<c:numRef><c:f>([^<]*)<\/c:f><\/c:numRef>/g, (_, reference: string) => {
        const points = values.get(unescaped(reference)) ?? [];
        return `<c:numRef><c:f>${reference}</c:f>${cache(points)}</c:numRef>`;
      })
      .replace(
        /<c:v>⟦([^⟧]*)⟧([^<]*)<\/c:v>/g,
        '<c:strRef><c:f>$1</c:f><c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>$2</c:v></c:pt></c:strCache></c:strRef>',
      )
  );
}

function cache(points: readonly Value[]): string {
  const numbers = points.flatMap((value, i) =>
    typeof value === "number" ? `<c:pt idx="${i}"><c:v>${value}</c:v></c:pt>` : "",
  );
  return `<c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="${points.length}"/>${numbers.join("")}</c:numCache>`;
}

function unescaped(text: string): string {
  return text
    .replace(/&apos;/g, "'")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&");
}

/** Shares of a drawing's frame that its square plot takes; the title is above, the legend at the right. */
const PLOT = { left: 0.02, top: 0.07, width: 0.72, height: 0.9 };

/** How wide a drawing's frame is for its height, so that its plot is square. */
const FRAME_SHAPE = PLOT.height / PLOT.width;

const EMU_PER_POINT = 12700;

/**
 * The frame of a drawing, in place of one that follows the columns' width: that depends on the font,
 * and the plot would be square on one machine only. Rows have their height in points.
 */
export function squareFrame(drawingXml: string, frames: FileParts["frames"]): string {
  const points = [...frames].find(([description]) => drawingXml.includes(`descr="${description}"`));
  if (points === undefined) return drawingXml;
  const height = Math.round(points[1] * EMU_PER_POINT);
  return drawingXml
    .replace(/<xdr:twoCellAnchor[^>]*>/, "<xdr:oneCellAnchor>")
    .replace(
      /<xdr:to>.*?<\/xdr:to>/s,
      `<xdr:ext cx="${Math.round(height * FRAME_SHAPE)}" cy="${height}"/>`,
    )
    .replace("</xdr:twoCellAnchor>", "</xdr:oneCellAnchor>");
}

function framesOf(page: Page): [string, number][] {
  const heights = rowHeights(page);
  return (page.charts ?? []).flatMap(({ drawing: isDrawing, description, place }) => {
    if (isDrawing !== true) return [];
    const [from, to] = [readAddress(place.from).row + 1, readAddress(place.to).row + 1];
    let sum = 0;
    for (let row = from; row <= to; row++) sum += heights.get(row) ?? 0;
    return [[description, sum]];
  });
}

/** What every chart has: its title, what it shows in words, and its place. */
function framed({ title, description, place }: SheetChart) {
  const from = readAddress(place.from);
  const to = readAddress(place.to);
  return {
    type: "scatter" as const,
    scatterStyle: "lineMarker" as const,
    title,
    titleFontSize: 11,
    titleBold: true,
    titleColor: palette.moss,
    altText: description,
    dispBlanksAs: "gap" as const,
    anchor: { from: { row: from.row, col: from.column }, to: { row: to.row, col: to.column + 1 } },
  };
}

function drawing(page: Page, chart: SheetChart, shown: ShownValues): FileChart {
  const source = chart.page ?? page.name;
  const hidden = { hidden: true, scale: { min: DRAWN.low, max: DRAWN.high } };
  return {
    ...framed(chart),
    legend: "right",
    legendFontSize: 8,
    legendEntries: chart.series.flatMap(({ look }, idx) =>
      look !== undefined && UNLISTED.has(look) ? [{ idx, delete: true }] : [],
    ),
    plotAreaLayout: {
      x: PLOT.left,
      y: PLOT.top,
      w: PLOT.width,
      h: PLOT.height,
    },
    series: chart.series.map(({ range, x = chart.x.range, titleAt, look = "line" }) => {
      const { ink, line, mark } = drawnLooks[look];
      const { row, column } = readAddress(titleAt);
      return {
        name: linkedTitle(
          absolute(source, titleAt),
          String(shown.value(source, row, column) ?? ""),
        ),
        categories: absolute(source, x),
        values: absolute(source, range),
        smooth: false,
        color: ink,
        stroke:
          line === undefined
            ? { width: UNSEEN }
            : {
                width: line.width,
                dash: line.dashed === true ? ("dash" as const) : ("solid" as const),
              },
        marker:
          mark === undefined
            ? { symbol: "none" as const }
            : { symbol: mark.shape, size: mark.size, fill: ink, line: ink },
      };
    }),
    axes: { x: hidden, y: hidden },
  };
}

/** Points; marks such a line, which mendChart takes out. */
const UNSEEN = 0.25;
const UNSEEN_LINE = /<a:ln w="3175">.*?<\/a:ln>/g;

function fileChart(page: Page, chart: SheetChart, shown: ShownValues): FileChart {
  if (chart.drawing === true) return drawing(page, chart, shown);
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
    ...framed(chart),
    legend: chart.series.length > 1 ? "bottom" : false,
    legendFontSize: 9,
    series: chart.series.map(({ range, titleAt }, i) => ({
      name: linkedTitle(absolute(page.name, titleAt), titleOf(titleAt)),
      categories: absolute(page.name, chart.x.range),
      values: absolute(page.name, range),
      smooth: false,
      color: seriesInks[i],
      stroke: { width: 1.75, dash: i === 0 ? "solid" : "dash" },
      marker: {
        symbol: i === 0 ? "circle" : "square",
        size: 5,
        fill: seriesInks[i],
        line: seriesInks[i],
      },
    })),
    axes: {
      x: { ...axis(chart.x.title) },
      y: { ...axis(chart.yTitle), gridlines: { major: true } },
    },
  };
}
