import { coverOf } from "./covered-area";
import { openRows } from "./field-rows";
import { type FieldRun, type HeadPlacing, placeRuns, requireRuns } from "./field-runs";
import { distance, type Point, polygonArea } from "./polygon";
import { type Field, type TurnedField, turnField } from "./turned-field";

/** How lines lie in a field, SI. */
export interface LayoutChoice extends HeadPlacing {
  /** Bearing of the line, degrees clockwise from true north. */
  readonly bearing: number;
  /** From position to position, m. */
  readonly move: number;
  /** First row from the nearest corner across, m; without it the rows lie in the middle. */
  readonly start?: number;
}

export interface LaidRun extends FieldRun {
  readonly nearEnd: Point;
  readonly farEnd: Point;
  /** Area that its strip waters inside the corners, and beyond the edge, m². */
  readonly covered: number;
  readonly beyond: number;
}

export interface Layout {
  readonly turned: TurnedField;
  readonly runs: readonly LaidRun[];
  /** Area of the field, m². */
  readonly area: number;
}

/**
 * Lays a field out: rows at a bearing, what of each is free, heads on that. The three steps stand
 * by themselves (turnField, openRows, placeRuns) for a search that varies one of them; #N/A where
 * no row has room for a head.
 */
export function layField(field: Field, choice: LayoutChoice): Layout {
  const turned = turnField(field, choice.bearing);
  const runs = placeRuns(openRows(turned, choice.move, choice.start), choice);
  requireRuns(runs);
  return {
    turned,
    runs: runs.map((run) => ({
      ...run,
      nearEnd: turned.place(run.near, run.across),
      farEnd: turned.place(run.far, run.across),
      ...coverOf(turned, run, choice.move),
    })),
    area: polygonArea(field.corners),
  };
}

/** One head of a run on the plane. */
export interface FieldHead {
  /** From 1 at the near end. */
  readonly head: number;
  /** Distance from the near end of its run, m. */
  readonly along: number;
  readonly place: Point;
}

export function headsOf(turned: TurnedField, run: FieldRun, spacing: number): FieldHead[] {
  return Array.from({ length: run.heads }, (_, i) => {
    const at = run.firstHead + i * spacing;
    return { head: i + 1, along: at - run.near, place: turned.place(at, run.across) };
  });
}

/** A layout at a glance, SI. */
export interface LayoutSummary {
  readonly area: number;
  readonly positions: number;
  readonly runs: number;
  readonly longest: number;
  readonly heads: number;
  readonly shareCovered: number;
  readonly beyond: number;
  /** Heads of the longest run less those of the shortest. */
  readonly mostShut: number;
}

export function summaryOf({ runs, area }: Pick<Layout, "runs" | "area">): LayoutSummary {
  const counts = runs.map(({ heads }) => heads);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const longest = Math.max(...counts);
  return {
    area,
    positions: runs[runs.length - 1].position,
    runs: runs.length,
    longest,
    heads: sum(counts),
    shareCovered: sum(runs.map(({ covered }) => covered)) / area,
    beyond: sum(runs.map(({ beyond }) => beyond)),
    mostShut: longest - Math.min(...counts),
  };
}

/** Length of the free stretch of a run, m. */
export function runLength({ nearEnd, farEnd }: LaidRun): number {
  return distance(nearEnd, farEnd);
}
