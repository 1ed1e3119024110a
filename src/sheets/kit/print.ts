import { columnLetters, readAddress, readRange } from "./address";
import type { Page, UnitSystem } from "./definition";
import { BODY_SIZE, looks } from "./look";
import { printedColumns } from "./unmerged";

/** Inches. */
export const MARGINS = { left: 0.5, right: 0.5, top: 0.6, bottom: 0.6, header: 0.3, footer: 0.3 };
const POINTS_PER_INCH = 72;

/** Inches, upright. */
export const PAPERS = {
  US: { name: "letter", width: 8.5, height: 11 },
  SI: { name: "a4", width: 8.27, height: 11.69 },
} as const;

const LINE_POINTS = 12.75;
const ROW_MARGIN_POINTS = 2.25;
/** Row height over size of the text. */
const LARGE_TEXT_ROW = 1.5;

/** A column of the default font: seven pixels a character and five around, 96 pixels an inch. */
export function columnPoints(characters: number): number {
  return ((characters * 7 + 5) * POINTS_PER_INCH) / 96;
}

/** Every row in use has its height, in points: viewers differ in what they would give it. */
export function rowHeights(page: Page): Map<number, number> {
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

/** How much of a sheet of paper is used: viewers and fonts differ. */
const USED = 0.9;

/** How much smaller than its width asks a part may be printed, to stay on one sheet of paper. */
const LEAST_SHRINK = 0.75;

/**
 * The parts of a page that are printed on a sheet of paper each, "A1:K40". Each is an area of its
 * own that the host fits to one sheet: with several sheets to fill the host disregards page breaks,
 * and a fixed scale would be right for one font only. A part begins where the definition breaks the
 * page, and where it is too long for one sheet, at a heading or below an empty row.
 */
export function printedParts(page: Page, system: UnitSystem): string[] {
  const { columns, rows: last } = readRange(page.printArea);
  const heights = rowHeights(page);
  const range = (from: number, to: number) => `A${from}:${columnLetters(columns - 1)}${to}`;
  if (page.onePage === true) return [range(1, last)];
  const most = mostHeight(page, system);
  const starts = [1, ...(page.pageBreaks ?? [])];
  return starts.flatMap((from, i) => {
    const to = (starts[i + 1] ?? last + 1) - 1;
    return split(page, from, to, heights, most).map(([first, end]) => range(first, end));
  });
}

/** Points of rows that a sheet of paper takes at the scale that the page's width asks for. */
function mostHeight(page: Page, system: UnitSystem): number {
  const paper = PAPERS[system];
  const [across, down] =
    page.landscape === true ? [paper.height, paper.width] : [paper.width, paper.height];
  const roomAcross = (across - MARGINS.left - MARGINS.right) * POINTS_PER_INCH;
  const roomDown = (down - MARGINS.top - MARGINS.bottom) * POINTS_PER_INCH;
  const width = printedColumns(page).reduce((sum, characters) => sum + columnPoints(characters), 0);
  return (USED * roomDown) / Math.min(1, (USED * roomAcross) / width);
}

function split(
  page: Page,
  from: number,
  to: number,
  heights: ReadonlyMap<number, number>,
  most: number,
): [number, number][] {
  const height = (first: number, end: number) => {
    let sum = 0;
    for (let row = first; row <= end; row++) sum += heights.get(row) ?? 0;
    return sum;
  };
  if (height(from, to) <= most / LEAST_SHRINK) return [[from, to]];
  const breaks = breakableRows(page).filter((row) => row > from && row <= to);
  const fitting = breaks.filter((row) => height(from, row - 1) <= most);
  const through = rowsOfRunningBlocks(page);
  // A heading beside a block that runs on is a place to break only where there is no other.
  const last = fitting.filter((row) => !through.has(row)).pop() ?? fitting.pop() ?? breaks[0];
  if (last === undefined) return [[from, to]];
  return [[from, last - 1], ...split(page, last, to, heights, most)];
}

/** Rows that may begin a sheet of paper: what belongs together stays together. */
function breakableRows(page: Page): number[] {
  const taken = new Set<number>();
  const charts = new Set<number>();
  const headings = new Set<number>();
  for (const { at, role, spill } of page.cells) {
    const row = readAddress(at).row + 1;
    for (let down = 0; down < (spill?.reserved ?? 1); down++) taken.add(row + down);
    if (role === "heading") headings.add(row);
  }
  for (const { place } of page.charts ?? []) {
    const [top, end] = [readAddress(place.from).row + 1, readAddress(place.to).row + 1];
    for (let row = top; row <= end; row++) {
      taken.add(row);
      if (row > top) charts.add(row);
    }
  }
  return (
    [...taken]
      .filter((row) => !charts.has(row) && (headings.has(row) || !taken.has(row - 1)))
      // A heading of its own line stays with what is below it.
      .filter((row) => !headings.has(row - 1))
      .sort((a, b) => a - b)
  );
}

/** Rows in which a block of some column goes on from the row above: a break there cuts it in two. */
function rowsOfRunningBlocks(page: Page): Set<number> {
  const filled = new Set<string>();
  const headings = new Set<string>();
  for (const { at, role, spill } of page.cells) {
    const { row, column } = readAddress(at);
    for (let down = 0; down < (spill?.reserved ?? 1); down++)
      filled.add(`${column} ${row + 1 + down}`);
    if (role === "heading") headings.add(`${column} ${row + 1}`);
  }
  const through = new Set<number>();
  for (const place of filled) {
    const [column, row] = place.split(" ").map(Number) as [number, number];
    if (!headings.has(place) && filled.has(`${column} ${row - 1}`)) through.add(row);
  }
  return through;
}
