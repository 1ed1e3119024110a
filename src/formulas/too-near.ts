import type { Turned } from "./turned-field";

/** From where to where along a row, m. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The part of a row nearer than `radius` to the edge from a to b. Around an edge those places are a
 * strip with round ends, which is convex, so a straight row meets it in one stretch: from the least
 * to the greatest of where it meets the two circles and the sides of the strip. With a = b it is a
 * circle. A row that only touches is not too near.
 *
 * Example: from an edge (0, 0)–(0, 10) and a radius of 3, the row 5 across is too near from −3 to 3.
 */
export function tooNear(
  a: Turned,
  b: Turned,
  across: number,
  radius: number,
  tolerance: number,
): Stretch | undefined {
  const least = Math.min(a.across, b.across);
  const most = Math.max(a.across, b.across);
  if (across >= most + radius - tolerance || across <= least - radius + tolerance) return undefined;
  let from = Infinity;
  let to = -Infinity;
  for (const { along, across: middle } of [a, b]) {
    const square = radius * radius - (across - middle) * (across - middle);
    if (square >= 0) {
      const half = Math.sqrt(square);
      from = Math.min(from, along - half);
      to = Math.max(to, along + half);
    }
  }
  const [deltaAlong, deltaAcross] = [b.along - a.along, b.across - a.across];
  // Beside a level edge no share is a finite number, and the circles' ends are the strip's.
  const length = Math.hypot(deltaAlong, deltaAcross);
  for (const way of [-radius, radius]) {
    const share = (across - a.across - (way * deltaAlong) / length) / deltaAcross;
    if (share >= 0 && share <= 1) {
      const meets = a.along + share * deltaAlong - (way * deltaAcross) / length;
      from = Math.min(from, meets);
      to = Math.max(to, meets);
    }
  }
  return from < to ? { from, to } : undefined;
}
