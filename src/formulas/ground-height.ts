import Delaunator from "delaunator";
import { InvalidInput, NoAnswer } from "../ground/domain-error";
import { distance, noDistance, type Point } from "./polygon";

/** A place whose height was taken, m. */
export interface Spot extends Point {
  readonly height: number;
}

/** Height of the ground at a place, m; undefined outside the triangles of the spots. */
export type Ground = (point: Point) => number | undefined;

/**
 * The ground between spots: flat triangles with a spot at each corner (Delaunay: of all ways to
 * join the spots the one whose smallest angles are the greatest), so that at a spot it has the
 * spot's height, and on a plane the plane's. Where four spots lie on one circle, a square's corners,
 * either of two pairs of triangles is right, and one of them is taken.
 *
 * Example: (0, 0) at 1, (10, 0) at 2, (0, 10) at 4: at (2, 3) the height is 1 + 0.2 + 0.9 = 2.1.
 */
export function groundOf(spots: readonly Spot[]): Ground {
  const near = noDistance(spots);
  requireApart(spots, near);
  const corners = new Delaunator(spots.flatMap(({ x, y }) => [x - spots[0].x, y - spots[0].y]))
    .triangles;
  const triangles: Ground[] = [];
  for (let i = 0; i < corners.length; i += 3) {
    const triangle = triangleOf(
      spots[corners[i]],
      spots[corners[i + 1]],
      spots[corners[i + 2]],
      near,
    );
    if (triangle !== undefined) triangles.push(triangle);
  }
  if (triangles.length === 0) {
    throw new InvalidInput("spots lie on one line: three of them must form a triangle");
  }
  // Heads of a line are asked for in turn, and most lie in the triangle of the one before.
  let last = 0;
  return (point) => {
    for (let tried = 0; tried < triangles.length; tried++) {
      const at = (last + tried) % triangles.length;
      const height = triangles[at](point);
      if (height !== undefined) {
        last = at;
        return height;
      }
    }
    return undefined;
  };
}

/** The height at a place that has a name, or #N/A where no triangle reaches it. */
export function requireHeight(ground: Ground, point: Point, name: string): number {
  const height = ground(point);
  if (height === undefined) {
    throw new NoAnswer(`spots do not reach ${name}: take heights farther out, beyond it`);
  }
  return height;
}

function requireApart(spots: readonly Spot[], near: number): void {
  spots.forEach((spot, i) => {
    for (let j = i + 1; j < spots.length; j++) {
      if (distance(spot, spots[j]) <= near) {
        throw new InvalidInput(`spots ${i + 1} and ${j + 1} are the same place`);
      }
    }
  });
}

/**
 * Height in one triangle; a place on its edge, but for rounding, is in it, and none is beyond it.
 * Undefined for three spots of a straight fence, but for rounding: the neighbor has its places.
 */
function triangleOf(a: Spot, b: Spot, c: Spot, near: number): Ground | undefined {
  const twice = twiceArea(a, b, c);
  const edge = Math.max(distance(a, b), distance(b, c), distance(c, a));
  if (Math.abs(twice) <= near * edge) return undefined;
  // A share of the height over an edge: as a distance, what counts as none.
  const slack = (near * edge) / Math.abs(twice);
  return (point) => {
    const ofA = twiceArea(point, b, c) / twice;
    if (!(ofA >= -slack)) return undefined;
    const ofB = twiceArea(a, point, c) / twice;
    if (!(ofB >= -slack)) return undefined;
    const ofC = twiceArea(a, b, point) / twice;
    if (!(ofC >= -slack)) return undefined;
    const [heldA, heldB, heldC] = [Math.max(0, ofA), Math.max(0, ofB), Math.max(0, ofC)];
    const sum = heldA + heldB + heldC;
    return (heldA / sum) * a.height + (heldB / sum) * b.height + (heldC / sum) * c.height;
  };
}

function twiceArea(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y);
}
