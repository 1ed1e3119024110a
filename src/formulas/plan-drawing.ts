import { InvalidInput } from "../ground/domain-error";
import { nearestHydrant } from "./feeder-reach";
import type { Point } from "./polygon";
import type { Obstacle } from "./turned-field";

/** A run of a line as a drawing needs it. */
export interface DrawnRun {
  /** Which run of its row, from 1. */
  readonly run: number;
  /** Distance of each head from the near end. */
  readonly along: readonly number[];
  readonly places: readonly Point[];
}

export interface PlanParts {
  readonly corners: readonly Point[];
  readonly runs: readonly DrawnRun[];
  /** At which head the tubing changes size. */
  readonly change?: number;
  readonly hydrants: readonly Point[];
  readonly obstacles: readonly Obstacle[];
  /** Side that the square is scaled to, in units of its own; its length in the field unless given. */
  readonly side?: number;
}

/** One series of a chart: points to be joined, or marked, in their order. */
export interface Series {
  readonly name: string;
  readonly points: readonly Point[];
}

/**
 * A plan as series of a native XY chart, every one padded to `rows` points with its last.
 *
 * A chart joins the points of a series without lifting the pen, and a gap is not drawn alike by all
 * hosts. So lines are drawn as a comb: near end, far end, back, on to the next near end; and feeders
 * go from near end to hydrant and back, on along the near ends. Runs beyond the first of their row
 * are rows of dots, because the pen would cross what they lie behind; so are circles to keep clear.
 *
 * Everything is shifted so that it lies in the middle of a square from 0 to its side, and the frame
 * is two opposite corners of that square: two axes that show it have one scale. A series without
 * points lies on the frame's first corner. Any one length unit.
 */
export function drawnPlan(parts: PlanParts, rows: number): Series[] {
  const step = alongStep(parts.runs);
  const lines = parts.runs.map((run) => ({ ...run, near: nearEnd(run, step) }));
  const whole = lines.filter(({ run }) => run === 1);
  const apart = lines.filter(({ run }) => run > 1);
  const series: Series[] = [
    { name: "edge", points: [...parts.corners, parts.corners[0]] },
    { name: "lines", points: comb(whole) },
    { name: "heads", points: lines.flatMap(({ places }) => places) },
    { name: "change", points: changes(lines, parts.change) },
    {
      name: "feeders",
      points: parts.hydrants.length === 0 ? [] : feeders(whole, apart, parts.hydrants),
    },
    { name: "hydrants", points: parts.hydrants },
    { name: "keep clear", points: dottedCircles(parts.obstacles, rows) },
    { name: "frame", points: [] },
    { name: "lines apart", points: dottedLines(apart, rows) },
  ];
  const all = series.flatMap(({ points }) => points);
  const { shift, side } = squareAround(all, parts.side);
  const corner = { x: 0, y: 0 };
  return series.map(({ name, points }) => {
    if (points.length > rows) {
      throw new InvalidInput(
        `rows must be at least ${points.length}, as many points as "${name}" has; got ${rows}`,
      );
    }
    if (name === "frame") return { name, points: padded([corner, { x: side, y: side }], rows) };
    return { name, points: padded(points.length === 0 ? [corner] : points.map(shift), rows) };
  });
}

/** One unit along the lines, which all have one bearing: from any run of two heads or more. */
function alongStep(runs: readonly DrawnRun[]): Point {
  const run = runs.find(({ places }) => places.length > 1);
  // Single heads have no direction to show.
  if (run === undefined) return { x: 0, y: 0 };
  const last = run.places.length - 1;
  const length = run.along[last] - run.along[0];
  return {
    x: (run.places[last].x - run.places[0].x) / length,
    y: (run.places[last].y - run.places[0].y) / length,
  };
}

function nearEnd({ along, places }: DrawnRun, step: Point): Point {
  return { x: places[0].x - along[0] * step.x, y: places[0].y - along[0] * step.y };
}

type DrawnLine = DrawnRun & { readonly near: Point };

/** Near end, last head, back: on to the next. */
function comb(lines: readonly DrawnLine[]): Point[] {
  return lines.flatMap(({ near, places }) => [near, places[places.length - 1], near]);
}

/** The head at which the tubing changes, in every run that goes on beyond it. */
function changes(lines: readonly DrawnLine[], change = Infinity): Point[] {
  return lines
    .filter(({ places }) => places.length > change)
    .map(({ places }) => places[change - 1]);
}

/**
 * Near end, nearest hydrant, back: on to the next. Runs that lie apart are visited from their
 * hydrant, where that serves a first run too, so that the pen crosses nothing that is not there.
 */
function feeders(
  whole: readonly DrawnLine[],
  apart: readonly DrawnLine[],
  hydrants: readonly Point[],
): Point[] {
  const left = apart.map(({ near }) => ({ near, hydrant: nearestHydrant(near, hydrants).hydrant }));
  const path: Point[] = [];
  const visit = (near: Point, hydrant: number) => {
    const others = left.filter((other) => other.hydrant === hydrant);
    for (const other of others) left.splice(left.indexOf(other), 1);
    path.push(near, hydrants[hydrant]);
    for (const other of others) path.push(other.near, hydrants[hydrant]);
    path.push(near);
  };
  for (const { near } of whole) visit(near, nearestHydrant(near, hydrants).hydrant);
  while (left.length > 0) {
    const { near, hydrant } = left.shift() as (typeof left)[number];
    visit(near, hydrant);
  }
  return path;
}

/** Dots that show a line or a circle: as many as there is room for, within reason. */
const MOST_DOTS = 36;

function dotsEach(count: number, rows: number, least: number): number {
  const room = Math.floor(rows / Math.max(1, count));
  return Math.max(least, Math.min(MOST_DOTS, room));
}

function dottedCircles(obstacles: readonly Obstacle[], rows: number): Point[] {
  const dots = dotsEach(obstacles.length, rows, 6);
  return obstacles.flatMap(({ x, y, radius }) =>
    Array.from({ length: dots }, (_, i) => {
      const angle = (2 * Math.PI * i) / dots;
      return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
    }),
  );
}

/** From near end to last head, both included. */
function dottedLines(lines: readonly DrawnLine[], rows: number): Point[] {
  const dots = dotsEach(lines.length, rows, 2);
  return lines.flatMap(({ near, places }) => {
    const last = places[places.length - 1];
    return Array.from({ length: dots }, (_, i) => {
      const share = i / (dots - 1);
      return { x: near.x + share * (last.x - near.x), y: near.y + share * (last.y - near.y) };
    });
  });
}

function squareAround(points: readonly Point[], wanted?: number) {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  const side = Math.max(right - left, high - low);
  const scale = wanted === undefined ? 1 : wanted / side;
  const shift = ({ x, y }: Point): Point => ({
    x: scale * (x - left + (side - (right - left)) / 2),
    y: scale * (y - low + (side - (high - low)) / 2),
  });
  return { shift, side: scale * side };
}

function padded(points: readonly Point[], rows: number): Point[] {
  const last = points[points.length - 1];
  return Array.from({ length: rows }, (_, i) => points[i] ?? last);
}
