import { InvalidInput } from "../ground/domain-error";

/**
 * Depths between four heads of a field of heads, from one head's radial catch.
 *
 * The catch of one head, depth against distance, is joined by straight lines and turned around the
 * head; heads stand at every `spacing` along the line and every `move` across it, and a place gets
 * the sum of all whose throw reaches it. The depths are those at the centers of the cells of a grid
 * over one rectangle between four heads: all rectangles are alike, so these stand for the field.
 *
 * The volume of water is kept: a cone of depth d at the head and throw R has the volume πR²d/3, so
 * the mean over the rectangle is πR²d/(3·spacing·move). With centers the mean of ten cells a side is
 * within 0.2% of it where the throw is at least half of the wider spacing, and of a hundred within
 * 0.01%, the less the farther the throw.
 */
export interface RadialCatch {
  /** Depth at the head, one step out, two steps out and so on; beyond the last, none. */
  readonly depths: readonly number[];
  /** Distance between two of them. */
  readonly step: number;
}

/** A throw beyond this many spacings is no sprinkler, and would sum without end. */
export const MOST_SPACINGS_THROWN = 10;

/** Depth at a distance from the head. */
export function depthAtDistance(radial: RadialCatch, distance: number): number {
  const place = distance / radial.step;
  const inner = Math.floor(place);
  const last = radial.depths.length - 1;
  if (inner >= last) return place === last ? radial.depths[last] : 0;
  const share = place - inner;
  return radial.depths[inner] * (1 - share) + radial.depths[inner + 1] * share;
}

/**
 * The grid, `cells` a side: a row of cells runs along the line from head to head, and the rows go
 * from one position of the line to the next. Lengths in any one unit.
 */
export function overlapGrid(
  radial: RadialCatch,
  spacing: number,
  move: number,
  cells: number,
): number[][] {
  if (radial.depths.length < 2) {
    throw new InvalidInput(
      `radial must hold at least 2 depths, at the head and one step out; got ${radial.depths.length}`,
    );
  }
  const reach = (radial.depths.length - 1) * radial.step;
  if (reach > MOST_SPACINGS_THROWN * Math.min(spacing, move)) {
    throw new InvalidInput(
      `radial reaches ${reach}, more than ${MOST_SPACINGS_THROWN} times the smaller of spacing and move ` +
        `(${Math.min(spacing, move)}): check step, spacing and move`,
    );
  }
  const centers = Array.from({ length: cells }, (_, i) => (i + 0.5) / cells);
  return centers.map((across) =>
    centers.map((along) => depthAt(radial, reach, along * spacing, across * move, spacing, move)),
  );
}

/** Sum over the heads within reach of a place; heads stand at whole multiples of spacing and move. */
function depthAt(
  radial: RadialCatch,
  reach: number,
  x: number,
  y: number,
  spacing: number,
  move: number,
): number {
  let depth = 0;
  for (let i = Math.ceil((x - reach) / spacing); i * spacing <= x + reach; i++) {
    for (let j = Math.ceil((y - reach) / move); j * move <= y + reach; j++) {
      depth += depthAtDistance(radial, Math.hypot(x - i * spacing, y - j * move));
    }
  }
  return depth;
}
