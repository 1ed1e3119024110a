import { distance, distanceToEdge, noDistance, type Point } from "./polygon";

/** What a feeder of a given length makes of one near end. */
export interface Reach {
  /** Which hydrant is nearest, from 0. */
  readonly hydrant: number;
  /** Straight distance to it. */
  readonly distance: number;
}

/** The hydrant nearest to a near end; of two as near the first. Any one length unit. */
export function nearestHydrant(end: Point, hydrants: readonly Point[]): Reach {
  let nearest = { hydrant: 0, distance: distance(end, hydrants[0]) };
  hydrants.forEach((hydrant, i) => {
    const away = distance(end, hydrant);
    if (away < nearest.distance) nearest = { hydrant: i, distance: away };
  });
  return nearest;
}

/**
 * Whether the straight way between two places leaves a field. It is cut wherever it meets an edge;
 * then each piece lies inside or outside as its middle does. A piece along an edge is inside.
 */
export function leavesField(corners: readonly Point[], from: Point, to: Point): boolean {
  const near = noDistance(corners);
  const shares = [0, 1];
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const share = meeting(from, to, corners[j], corners[i]);
    if (share > 0 && share < 1) shares.push(share);
  }
  shares.sort((a, b) => a - b);
  return shares.slice(1).some((share, i) => {
    const middle = (shares[i] + share) / 2;
    const place = {
      x: from.x + middle * (to.x - from.x),
      y: from.y + middle * (to.y - from.y),
    };
    return !isInside(corners, place, near);
  });
}

/**
 * How far along the way from one place to another it meets the line of an edge, as a share; no
 * number, or not a finite one, where the two are parallel. Beyond the edge a cut does no harm.
 */
function meeting(from: Point, to: Point, a: Point, b: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const [ex, ey] = [b.x - a.x, b.y - a.y];
  return ((a.x - from.x) * ey - (a.y - from.y) * ex) / (dx * ey - dy * ex);
}

/** Whether a place is in a field, its edges included. */
function isInside(corners: readonly Point[], { x, y }: Point, near: number): boolean {
  let inside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [a, b] = [corners[j], corners[i]];
    if (distanceToEdge({ x, y }, a, b) <= near) return true;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}
