import {
  areaPaths,
  Clipper64,
  ClipType,
  difference,
  ellipse,
  EndType,
  FillRule,
  inflatePaths,
  intersect,
  isPositive,
  JoinType,
  type Paths64,
} from "clipper2-ts";
import type { Field } from "../../src/formulas/turned-field";
import type { Point } from "../../src/formulas/polygon";

/**
 * An independent answer to what a field leaves free: a general polygon-clipping library, which
 * works on whole numbers (here micrometers) and on circles of many corners.
 */
const SCALE = 1e6;
/** Corners of a circle: 1000 leave 5e-6 of its radius out. */
const CORNERS_OF_A_CIRCLE = 1000;
/** How far an offset's round corner may be off, micrometers. */
const ARC_TOLERANCE = 20;

function ring(points: readonly Point[]): Paths64 {
  const path = points.map(({ x, y }) => ({ x: Math.round(x * SCALE), y: Math.round(y * SCALE) }));
  return [isPositive(path) ? path : path.reverse()];
}

/** The field less its setback and its obstacles. */
export function freeGround({ corners, obstacles, setback }: Field): Paths64 {
  const whole = ring(corners);
  const kept =
    setback > 0
      ? inflatePaths(whole, -setback * SCALE, JoinType.Round, EndType.Polygon, 2, ARC_TOLERANCE)
      : whole;
  const circles = obstacles.map(({ x, y, radius }) =>
    ellipse(
      { x: Math.round(x * SCALE), y: Math.round(y * SCALE) },
      radius * SCALE,
      radius * SCALE,
      CORNERS_OF_A_CIRCLE,
    ),
  );
  return difference(kept, circles, FillRule.NonZero);
}

/** The pieces of a straight row that lie free, by their ends' distances from its first point. */
export function freePieces(ground: Paths64, from: Point, to: Point): [number, number][] {
  const clipper = new Clipper64();
  const end = ({ x, y }: Point) => ({ x: Math.round(x * SCALE), y: Math.round(y * SCALE) });
  clipper.addOpenSubject([[end(from), end(to)]]);
  clipper.addClip(ground);
  const closed: Paths64 = [];
  const open: Paths64 = [];
  clipper.execute(ClipType.Intersection, FillRule.NonZero, closed, open);
  const along = ({ x, y }: Point) => Math.hypot(x / SCALE - from.x, y / SCALE - from.y);
  return open
    .map((path): [number, number] => {
      const ends = [along(path[0]), along(path[path.length - 1])];
      return [Math.min(...ends), Math.max(...ends)];
    })
    .sort((a, b) => a[0] - b[0]);
}

/** Area of what two polygons have in common, m². */
export function commonArea(a: readonly Point[], b: readonly Point[]): number {
  return Math.abs(areaPaths(intersect(ring(a), ring(b), FillRule.NonZero))) / SCALE ** 2;
}
