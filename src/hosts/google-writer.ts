import { columnLetters, readAddress } from "../sheets/kit/address";
import type {
  GoogleCell,
  GoogleHost,
  GoogleLook,
  GoogleSheet,
  GoogleSheetPage,
  GoogleSpreadsheet,
  GoogleTexts,
  GoogleWorkbook,
} from "./google-sheets";

const PIXELS_OF_CHARACTER = 7;
const PIXELS_AROUND = 5;
const PIXELS_OF_LINE = 17;
const PIXELS_OF_ROW = 4;

/**
 * Writes a ready-made workbook into the open spreadsheet, as sheets of their own. What is there stays
 * as it is: where a name of a sheet or of a cell is taken, nothing is written and the user is told.
 */
export function add(host: GoogleHost, texts: GoogleTexts, file: string): void {
  const workbook = JSON.parse(texts.createTemplateFromFile(file).getRawContent()) as GoogleWorkbook;
  const spreadsheet = host.getActive();
  const taken = takenNames(spreadsheet, workbook);
  if (taken.length > 0) {
    host
      .getUi()
      .alert(
        `${workbook.title} was not added: this spreadsheet already has ${taken.slice(0, 5).join(", ")}${taken.length > 5 ? " and more" : ""}. Open a new spreadsheet for it.`,
      );
    return;
  }
  // Names come before the formulas that use them: an unknown name is not looked up again.
  const pages = workbook.sheets.map((sheet) => {
    const page = spreadsheet.insertSheet(sheet.name);
    makeRoom(page, sheet);
    for (const { name, range } of sheet.names) {
      spreadsheet.setNamedRange(name, page.getRange(range));
    }
    return page;
  });
  workbook.sheets.forEach((sheet, i) => {
    dress(pages[i], sheet);
    limit(host, pages[i], sheet);
    mark(host, pages[i], sheet);
  });
  workbook.sheets.forEach((sheet, i) => fill(pages[i], sheet));
  workbook.sheets.forEach((sheet, i) => draw(pages[i], sheet));
  workbook.sheets.forEach((sheet, i) => {
    if (sheet.hidden) pages[i].hideSheet();
  });
  spreadsheet.setActiveSheet(pages[0]);
}

function takenNames(spreadsheet: GoogleSpreadsheet, { sheets }: GoogleWorkbook): string[] {
  const there = new Set(spreadsheet.getNamedRanges().map((named) => named.getName().toUpperCase()));
  return [
    ...sheets
      .filter(({ name }) => spreadsheet.getSheetByName(name) !== null)
      .map(({ name }) => `the sheet ${name}`),
    ...sheets.flatMap(({ names }) =>
      names
        .filter(({ name }) => there.has(name.toUpperCase()))
        .map(({ name }) => `the name ${name}`),
    ),
  ];
}

function makeRoom(page: GoogleSheetPage, { rows, columns }: GoogleSheet): void {
  const [hasRows, hasColumns] = [page.getMaxRows(), page.getMaxColumns()];
  if (rows > hasRows) page.insertRowsAfter(hasRows, rows - hasRows);
  if (columns > hasColumns) page.insertColumnsAfter(hasColumns, columns - hasColumns);
}

/** A grid of one value a cell, as the host takes them. */
function grid<T>(
  { rows, columns, cells }: GoogleSheet,
  empty: T,
  of: (cell: GoogleCell) => T,
): T[][] {
  const all = Array.from({ length: rows }, () => new Array<T>(columns).fill(empty));
  for (const cell of cells) {
    const { row, column } = readAddress(cell[0]);
    const span = cell[4] ?? 1;
    for (let i = 0; i < span; i++) all[row][column + i] = i === 0 ? of(cell) : empty;
  }
  return all;
}

function whole(sheet: GoogleSheet): string {
  return `A1:${columnLetters(sheet.columns - 1)}${sheet.rows}`;
}

/** A text that would be read as a number, a date or a formula is marked as text. */
function contentOf([, content]: GoogleCell): unknown {
  if (typeof content !== "string" || content.startsWith("=")) return content;
  return /^[\d.+\-@'%]/.test(content) ? `'${content}` : content;
}

function fill(page: GoogleSheetPage, sheet: GoogleSheet): void {
  page.getRange(whole(sheet)).setValues(grid<unknown>(sheet, "", contentOf));
}

function dress(page: GoogleSheetPage, sheet: GoogleSheet): void {
  sheet.widths.forEach((characters, i) =>
    page.setColumnWidth(i + 1, characters * PIXELS_OF_CHARACTER + PIXELS_AROUND),
  );
  for (const [row, lines] of sheet.lines) {
    page.setRowHeight(row, lines * PIXELS_OF_LINE + PIXELS_OF_ROW);
  }
  if (sheet.frozenRows > 0) page.setFrozenRows(sheet.frozenRows);
  const range = page.getRange(whole(sheet));
  const [first] = sheet.looks;
  const look = <T>(of: (look: GoogleLook) => T): T[][] =>
    spread(
      sheet,
      grid<T>(sheet, of(first), (cell) => of(sheet.looks[cell[2]])),
      of,
    );
  range.setNumberFormats(grid(sheet, "General", ([, , , format]) => format ?? "General"));
  range.setFontColors(look(({ ink }) => ink));
  range.setBackgrounds(look<string | null>(({ fill: color }) => color ?? null));
  range.setFontFamilies(look(({ font }) => font));
  range.setFontSizes(look(({ size }) => size));
  range.setFontWeights(look(({ bold }) => (bold ? "bold" : "normal")));
  range.setFontStyles(look(({ italic }) => (italic ? "italic" : "normal")));
  range.setWraps(look(({ wrap }) => wrap));
  range.setHorizontalAlignments(look<string | null>(({ align }) => align ?? null));
  range.setVerticalAlignment("middle");
  for (const [at, , , , span = 1] of sheet.cells) {
    if (span > 1) page.getRange(across(at, span)).merge();
  }
  for (const { at, text } of sheet.notes) page.getRange(at).setNote(text);
}

/** The look of a cell over the columns that it covers. */
function spread<T>(sheet: GoogleSheet, all: T[][], of: (look: GoogleLook) => T): T[][] {
  for (const [at, , look, , span = 1] of sheet.cells) {
    const { row, column } = readAddress(at);
    for (let i = 1; i < span; i++) all[row][column + i] = of(sheet.looks[look]);
  }
  return all;
}

function across(at: string, span: number): string {
  const { row, column } = readAddress(at);
  return `${at}:${columnLetters(column + span - 1)}${row + 1}`;
}

function limit(host: GoogleHost, page: GoogleSheetPage, { limits }: GoogleSheet): void {
  for (const { at, text, list, formula } of limits) {
    const rule = host.newDataValidation();
    if (list !== undefined) rule.requireValueInList(list, true);
    else if (formula !== undefined) rule.requireFormulaSatisfied(formula);
    rule.setAllowInvalid(false).setHelpText(text);
    page.getRange(at).setDataValidation(rule.build());
  }
}

function mark(host: GoogleHost, page: GoogleSheetPage, { rules }: GoogleSheet): void {
  page.setConditionalFormatRules(
    rules.map(({ range, formula, ink, fill: color }) => {
      const rule = host
        .newConditionalFormatRule()
        .whenFormulaSatisfied(formula)
        .setRanges([page.getRange(range)]);
      if (ink !== undefined) rule.setFontColor(ink);
      if (color !== undefined) rule.setBackground(color);
      return rule.build();
    }),
  );
}

function draw(page: GoogleSheetPage, { charts }: GoogleSheet): void {
  for (const chart of charts) {
    const builder = page.newChart().asScatterChart().addRange(page.getRange(chart.x));
    for (const series of chart.series) builder.addRange(page.getRange(series));
    page.insertChart(
      builder
        .setTitle(chart.title)
        .setXAxisTitle(chart.xTitle)
        .setYAxisTitle(chart.yTitle)
        .setOption("width", chart.width)
        .setOption("height", chart.height)
        .setOption("lineWidth", 2)
        .setPosition(chart.row, chart.column, 0, 0)
        .build(),
    );
  }
}
