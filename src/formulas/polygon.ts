import { InvalidInput } from "../ground/domain-error";

/** A place on the local plane, m: x east, y north. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * Area of a polygon by the surveyor's formula, ½ Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ); positive where the corners
 * run anticlockwise. Reckoned from the first corner, so that large coordinates cost no digits.
 *
 * Any one length unit. Example: (0, 0), (40, 0), (40, 30) is 600.
 */
export function signedArea(corners: readonly Point[]): number {
  const { x, y } = corners[0];
  let twice = 0;
  for (let i = 1; i + 1 < corners.length; i++) {
    const a = corners[i];
    const b = corners[i + 1];
    twice += (a.x - x) * (b.y - y) - (b.x - x) * (a.y - y);
  }
  return twice / 2;
}

export function polygonArea(corners: readonly Point[]): number {
  return Math.abs(signedArea(corners));
}

/**
 * Two places of a field nearer than this share of its greatest extent are one: a millionth of a
 * millimetre to the metre, far below any tape, far above what rounding does.
 */
const TOGETHER = 1e-9;

/** What counts as no distance at all on a field of this size, m. */
export function noDistance(points: readonly Point[]): number {
  return TOGETHER * extent(points);
}

/** The greater side of the upright box around points. */
function extent(points: readonly Point[]): number {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return Math.max(right - left, high - low);
}

/**
 * Refuses corners that bound no field: two neighbours at one place, all on one line, edges that
 * cross or touch. Corners and edges are named as a sheet's rows count them, from 1.
 */
export function requireField(corners: readonly Point[]): void {
  const count = corners.length;
  const near = noDistance(corners);
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % count;
    if (distance(corners[i], corners[next]) <= near) {
      throw new InvalidInput(
        `corners ${i + 1} and ${next + 1} are the same place: the edge between them has no length`,
      );
    }
  }
  const far = farthestFrom(corners[0], corners);
  if (corners.every((corner) => distanceToEdge(corner, corners[0], far) <= near)) {
    throw new InvalidInput("corners lie on one line: the area is 0");
  }
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const fault = faultOf(corners, i, j, near);
      if (fault !== undefined) {
        throw new InvalidInput(`corners: edge ${edge(i, count)} ${fault} edge ${edge(j, count)}`);
      }
    }
  }
}

function edge(from: number, count: number): string {
  return `${from + 1}–${((from + 1) % count) + 1}`;
}

/** What is wrong between edges i and j, in a word; undefined where nothing is. */
function faultOf(
  corners: readonly Point[],
  i: number,
  j: number,
  near: number,
): string | undefined {
  const count = corners.length;
  const [a, b] = [corners[i], corners[(i + 1) % count]];
  const [p, q] = [corners[j], corners[(j + 1) % count]];
  // Neighbours share a corner; they may not lie back over each other.
  if (j === i + 1) return foldsBack(a, q, b, near) ? "lies on" : undefined;
  if (i === 0 && j === count - 1) return foldsBack(p, b, a, near) ? "lies on" : undefined;
  // A later edge that begins on this one was met before: as the neighbor's end.
  if (
    distanceToEdge(a, p, q) <= near ||
    distanceToEdge(b, p, q) <= near ||
    distanceToEdge(q, a, b) <= near
  ) {
    return "touches";
  }
  const crosses = side(a, b, p) !== side(a, b, q) && side(p, q, a) !== side(p, q, b);
  return crosses ? "crosses" : undefined;
}

/** Whether of two edges that meet at a corner one ends on the other. */
function foldsBack(before: Point, after: Point, corner: Point, near: number): boolean {
  return (
    distanceToEdge(before, corner, after) <= near || distanceToEdge(after, before, corner) <= near
  );
}

function side(a: Point, b: Point, p: Point): boolean {
  return (b.x - a.x) * (p.y - a.y) > (b.y - a.y) * (p.x - a.x);
}

function farthestFrom(from: Point, points: readonly Point[]): Point {
  return points.reduce((far, point) => (distance(from, point) > distance(from, far) ? point : far));
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** Distance from a point to the nearest place of an edge. */
export function distanceToEdge(point: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share = ((point.x - a.x) * dx + (point.y - a.y) * dy) / (dx * dx + dy * dy);
  const held = Math.min(1, Math.max(0, share));
  return Math.hypot(a.x + held * dx - point.x, a.y + held * dy - point.y);
}
