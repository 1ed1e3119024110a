import { volumeOfPipe } from "./pipe-volume";

/** Which ends of a line are open while it drains. */
export type OpenEnds = "both" | "start" | "end";

/**
 * Water, m³, that stays in the dips of a line once its open ends have let go what they can.
 *
 * To leave by an end, water at a point must pass the highest ground between the point and that end;
 * it leaves by the end whose highest ground is lower. So a point stays full when it lies below that
 * level, the lowest over the open ends of the highest ground on the way. Communicating vessels, air
 * let in wherever it is needed, and a bore that is thin beside the dips. Between two points
 * the ground is straight, so the full part of each run is exact.
 *
 * Example: ground at 0, −1, 0 m over two runs of 10 m is a dip that stays full, 20 m of pipe.
 *
 * `distance` (m, rising) is along the line, `elevation` (m) the ground there, `bore` (m) that of
 * each run between two points.
 */
export function trappedWater(
  distance: readonly number[],
  elevation: readonly number[],
  bore: ArrayLike<number>,
  ends: OpenEnds,
): number {
  // Highest ground from the start up to each point, and from each point to the end.
  const toStart = runningHighest(elevation);
  const toEnd = runningHighest([...elevation].reverse()).reverse();

  let volume = 0;
  for (let run = 0; run < distance.length - 1; run++) {
    const left = elevation[run];
    const right = elevation[run + 1];
    // On the run itself the ground only adds to the way out what a full share already says: a run
    // that falls towards the closed side lies below its own upper end and is full throughout.
    const startLevel = ends === "end" ? Infinity : toStart[run];
    const endLevel = ends === "start" ? Infinity : toEnd[run + 1];
    const level = Math.min(startLevel, endLevel);
    const length = distance[run + 1] - distance[run];
    volume += volumeOfPipe(bore[run], length * shareBelow(level, left, right));
  }
  return volume;
}

/** The part of a straight run between two heights that lies below a level. */
function shareBelow(level: number, one: number, other: number): number {
  const low = Math.min(one, other);
  const high = Math.max(one, other);
  if (low === high) return low < level ? 1 : 0;
  return Math.min(Math.max((level - low) / (high - low), 0), 1);
}

function runningHighest(heights: readonly number[]): number[] {
  let highest = -Infinity;
  return heights.map((height) => (highest = Math.max(highest, height)));
}
