import { polygonArea } from "./polygon";
import type { FieldRun } from "./field-runs";
import type { Turned, TurnedField } from "./turned-field";

/** What the strip of a run waters, m². */
export interface Cover {
  /** Inside the corners. */
  readonly covered: number;
  /** Beyond the edge. */
  readonly beyond: number;
}

/** Less of a strip than this beyond the edge is rounding. */
const ROUNDING = 1e-12;

/**
 * What the strip of a run, a move wide, waters inside the corners and beyond them. Obstacles count
 * as field.
 */
export function coverOf(field: TurnedField, run: FieldRun, move: number): Cover {
  const low = run.across - move / 2;
  const high = run.across + move / 2;
  const covered = areaInBox(field.corners, run.wetFrom, run.wetTo, low, high);
  const strip = (run.wetTo - run.wetFrom) * move;
  const beyond = strip - covered;
  return { covered, beyond: beyond > ROUNDING * strip ? beyond : 0 };
}

/**
 * Area of the part of a polygon in a box: I. E. Sutherland and G. W. Hodgman, Reentrant polygon
 * clipping, Communications of the ACM 17 (1974), against the box's four sides. Of a polygon that
 * turns inwards it leaves edges that run back over themselves; those add no area.
 */
function areaInBox(
  corners: readonly Turned[],
  from: number,
  to: number,
  low: number,
  high: number,
): number {
  let polygon = corners;
  polygon = clipped(polygon, "along", from, 1);
  polygon = clipped(polygon, "along", to, -1);
  polygon = clipped(polygon, "across", low, 1);
  polygon = clipped(polygon, "across", high, -1);
  if (polygon.length < 3) return 0;
  return polygonArea(polygon.map(({ along, across }) => ({ x: along, y: across })));
}

/** The part of a polygon on one side of a level or upright line: `way` 1 keeps what is above `at`. */
function clipped(
  corners: readonly Turned[],
  axis: "along" | "across",
  at: number,
  way: 1 | -1,
): readonly Turned[] {
  const kept: Turned[] = [];
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [a, b] = [corners[j], corners[i]];
    const aboveA = way * (a[axis] - at);
    const aboveB = way * (b[axis] - at);
    if (aboveA >= 0 !== aboveB >= 0) {
      const share = aboveA / (aboveA - aboveB);
      kept.push({
        along: a.along + share * (b.along - a.along),
        across: a.across + share * (b.across - a.across),
      });
    }
    if (aboveB >= 0) kept.push(b);
  }
  return kept;
}
