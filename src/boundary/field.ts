import type { RankedBearing } from "../formulas/bearings";
import {
  headsOf,
  type Layout,
  type LayoutChoice,
  runLength,
  summaryOf,
} from "../formulas/field-layout";
import { MOST_RUNS } from "../formulas/field-rows";
import { MOST_FIELD_HEADS, MOST_LINE_HEADS } from "../formulas/field-runs";
import { type Ground, groundOf, requireHeight, type Spot } from "../formulas/ground-height";
import { type Point, requireField } from "../formulas/polygon";
import type { Field, Obstacle } from "../formulas/turned-field";
import { InvalidInput } from "../ground/domain-error";
import type { Cell } from "./cell";
import {
  above,
  anyNumber,
  atLeast,
  between,
  checked,
  headCount,
  MOST_POSITIONS,
  readNumber,
  readOptionalNumber,
  wholeNumber,
} from "./numbers";
import {
  isAllBlank,
  readOptionalTable,
  readTable,
  requireRows,
  type Spill,
  spillPairs,
  spillTable,
} from "./table";
import { type Measure, type Measures, percent, readUnits } from "./units";

const MOST_CORNERS = 200;
const MOST_OBSTACLES = 50;
const MOST_SPOTS = 100;

/** As many points as a field has heads. */
export const MOST_POINTS = 5000;

/** A bearing, or one a full turn round. */
export const anyBearing = between(-360, 360);

/**
 * Reads the corners of a field, x and y, and refuses those that bound none. (0, 0) is a corner like
 * another; a first corner given again at the end is dropped.
 */
export function readCorners(length: Measure, cell: Cell): Point[] {
  const corners = readTable("corners", cell, {
    columns: xyColumns(length),
    widths: [2],
    // Counted below, without the one that may be given again.
    least: 1,
    most: Infinity,
  }).map((row, i) => readPoint(length, `corners row ${i + 1}`, row));
  const [first, last] = [corners[0], corners[corners.length - 1]];
  if (corners.length > 1 && first.x === last.x && first.y === last.y) corners.pop();
  requireRows("corners", corners.length, 3, MOST_CORNERS);
  requireField(corners);
  return corners;
}

export function readOptionalCorners(length: Measure, cell: Cell): Point[] | undefined {
  return isAllBlank(cell) ? undefined : readCorners(length, cell);
}

/** Any places, x and y. */
export function readPoints(length: Measure, cell: Cell): Point[] {
  return readTable("points", cell, {
    columns: xyColumns(length),
    widths: [2],
    least: 1,
    most: MOST_POINTS,
  }).map((row, i) => readPoint(length, `points row ${i + 1}`, row));
}

/** Circles to keep out of, x, y and radius; none where blank. */
export function readObstacles(length: Measure, cell: Cell): Obstacle[] {
  return readOptionalTable("obstacles", cell, {
    columns: `three columns, ${named("x", length)}, ${named("y", length)} and ${named("radius", length)}`,
    widths: [3],
    least: 1,
    most: MOST_OBSTACLES,
    zeroIsBlank: true,
  }).map((row, i) => ({
    ...readPoint(length, `obstacles row ${i + 1}`, row),
    radius: length.readAt(`obstacles row ${i + 1} radius`, row[2], above(0)),
  }));
}

/** The ground between spots, x, y and height. */
export function readGround(length: Measure, cell: Cell): Ground {
  return groundOf(
    readTable("spots", cell, {
      columns: `three columns, ${named("x", length)}, ${named("y", length)} and ${named("height", length)}`,
      widths: [3],
      least: 3,
      most: MOST_SPOTS,
    }).map((row, i): Spot => ({
      ...readPoint(length, `spots row ${i + 1}`, row),
      height: length.readAt(`spots row ${i + 1} height`, row[2], anyNumber),
    })),
  );
}

export function readOptionalGround(length: Measure, cell: Cell): Ground | undefined {
  return isAllBlank(cell) ? undefined : readGround(length, cell);
}

export function readPoint(length: Measure, place: string, row: readonly Cell[]): Point {
  return {
    x: length.readAt(`${place} x`, row[0], anyNumber),
    y: length.readAt(`${place} y`, row[1], anyNumber),
  };
}

function xyColumns(length: Measure): string {
  return `two columns, ${named("x", length)} and ${named("y", length)}`;
}

/** "x (ft)", or "x" where any one unit will do. */
function named(column: string, { unit }: Measure): string {
  return unit === "" ? column : `${column} (${unit})`;
}

/** The cells of a layout, as the FIELD functions take them. */
export interface LayoutCells {
  readonly corners: Cell;
  readonly bearing: Cell;
  readonly spacing: Cell;
  readonly move: Cell;
  readonly units: Cell;
  readonly first?: Cell;
  readonly setback?: Cell;
  readonly obstacles?: Cell;
  readonly most?: Cell;
  readonly start?: Cell;
}

export interface ReadLayout {
  readonly u: Measures;
  readonly field: Field;
  readonly choice: LayoutChoice;
}

export function readLayout(cells: LayoutCells): ReadLayout {
  const u = readUnits(cells.units);
  return {
    u,
    field: {
      corners: readCorners(u.length, cells.corners),
      obstacles: readObstacles(u.length, cells.obstacles),
      setback: u.length.readOr("setback", cells.setback, atLeast(0), 0),
    },
    choice: {
      bearing: readNumber("bearing", cells.bearing, anyBearing, "degrees"),
      spacing: u.length.read("spacing", cells.spacing, above(0)),
      move: u.length.read("move", cells.move, above(0)),
      first: u.length.readOptional("first", cells.first, above(0)),
      most: readOptionalNumber("most", cells.most, wholeNumber(1, MOST_LINE_HEADS)),
      start: u.length.readOptional("start", cells.start, above(0)),
    },
  };
}

/** One run of a line as FIELD.HEADS gives it, head by head. */
export interface HeadsOfRun {
  readonly position: number;
  readonly run: number;
  /** Distance of each head from the near end, m. */
  readonly along: number[];
  readonly places: Point[];
  /** Ground at each head above the near end, m; 0 where the table has no heights. */
  readonly heights: number[];
}

/** How a message names a run. */
export function runName({ position, run }: Pick<HeadsOfRun, "position" | "run">): string {
  return `position ${position}, run ${run}`;
}

/** Reads FIELD.HEADS' table, and refuses one that was sorted or cut inside a run. */
export function readFieldHeads(length: Measure, cell: Cell): HeadsOfRun[] {
  const table = readTable("heads", cell, {
    columns:
      "six or seven columns, as FIELD.HEADS gives them: position, run, head, along, x, y and height",
    widths: [6, 7],
    least: 1,
    most: MOST_FIELD_HEADS,
    zeroIsBlank: true,
  });
  const runs: HeadsOfRun[] = [];
  table.forEach((row, i) => {
    const place = `heads row ${i + 1}`;
    const position = checked(`${place} position`, row[0], wholeNumber(1, MOST_POSITIONS));
    const number = checked(`${place} run`, row[1], wholeNumber(1, MOST_RUNS));
    const head = checked(`${place} head`, row[2], headCount);
    let run = runs[runs.length - 1];
    if (run === undefined || run.position !== position || run.run !== number) {
      run = { position, run: number, along: [], places: [], heights: [] };
      runs.push(run);
    }
    if (head !== run.along.length + 1) {
      throw new InvalidInput(
        `${place} head must be ${run.along.length + 1} of ${runName(run)}; got ${head}`,
      );
    }
    const along = length.readAt(`${place} along`, row[3], atLeast(0));
    if (along <= run.along[head - 2]) {
      throw new InvalidInput(`${place} along must be more than at the head before it`);
    }
    run.along.push(along);
    run.places.push(readPoint(length, place, row.slice(4)));
    run.heights.push(row.length === 7 ? length.readAt(`${place} height`, row[6], anyNumber) : 0);
  });
  return runs;
}

/** One row a run. */
export function runsTable(u: Measures, layout: Layout): Spill {
  const length = u.length.unit;
  return spillTable(
    [
      { header: "position" },
      { header: "run" },
      { header: "near x", unit: length },
      { header: "near y", unit: length },
      { header: "far x", unit: length },
      { header: "far y", unit: length },
      { header: "length", unit: length },
      { header: "heads" },
      { header: "area covered", unit: u.area.unit },
      { header: "beyond the edge", unit: u.area.unit },
    ],
    layout.runs.map((run) => [
      run.position,
      run.run,
      u.length.give(run.nearEnd.x),
      u.length.give(run.nearEnd.y),
      u.length.give(run.farEnd.x),
      u.length.give(run.farEnd.y),
      u.length.give(runLength(run)),
      run.heads,
      u.area.give(run.covered),
      u.area.give(run.beyond),
    ]),
  );
}

/** One row a head; with a ground, its height above the near end of its run too. */
export function headsTable(u: Measures, layout: Layout, spacing: number, ground?: Ground): Spill {
  const length = u.length.unit;
  const columns = [
    { header: "position" },
    { header: "run" },
    { header: "head" },
    { header: "along", unit: length },
    { header: "x", unit: length },
    { header: "y", unit: length },
  ];
  const body = layout.runs.flatMap((run) => {
    const name = `position ${run.position}, run ${run.run}`;
    const low = ground && requireHeight(ground, run.nearEnd, `the near end of ${name}`);
    return headsOf(layout.turned, run, spacing).map(({ head, along, place }) => {
      const row = [
        run.position,
        run.run,
        head,
        u.length.give(along),
        u.length.give(place.x),
        u.length.give(place.y),
      ];
      if (ground === undefined || low === undefined) return row;
      return [...row, u.length.give(requireHeight(ground, place, `head ${head} of ${name}`) - low)];
    });
  });
  return spillTable(ground ? [...columns, { header: "height", unit: length }] : columns, body);
}

/** Label and value: a layout at a glance. */
export function summaryTable(u: Measures, layout: Layout): Spill {
  const summary = summaryOf(layout);
  return spillPairs([
    [{ header: "area", unit: u.area.unit }, u.area.give(summary.area)],
    [{ header: "positions" }, summary.positions],
    [{ header: "runs" }, summary.runs],
    [{ header: "heads of the longest run" }, summary.longest],
    [{ header: "heads in all" }, summary.heads],
    [{ header: "share covered" }, summary.shareCovered],
    [{ header: "thrown beyond the edge", unit: u.area.unit }, u.area.give(summary.beyond)],
    [{ header: "most heads to shut off" }, summary.mostShut],
  ]);
}

/** One row a bearing; how steep only where the ground is known. */
export function bearingsTable(ranked: readonly RankedBearing[], steep: boolean): Spill {
  const columns = [
    { header: "bearing", unit: "degrees" },
    { header: "runs" },
    { header: "heads" },
    { header: "share covered" },
  ];
  return spillTable(
    steep ? [...columns, { header: "steepest", unit: "%" }] : columns,
    ranked.map(({ bearing, runs, heads, shareCovered, steepest }) => [
      bearing,
      runs,
      heads,
      shareCovered,
      ...(steep ? [percent.give(steepest ?? 0)] : []),
    ]),
  );
}
