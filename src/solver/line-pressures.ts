import { WATER_WEIGHT } from "../ground/constants";
import type { SolvedLine } from "./solve-line";

/** The highest pressure in the tubing, Pa, and the index of its head; none where it is the inlet. */
export function highestInLine({ line, linePressure }: SolvedLine): {
  readonly pressure: number;
  readonly head: number | undefined;
} {
  const highest = Math.max(...linePressure);
  return highest > line.inletPressure
    ? { pressure: highest, head: linePressure.indexOf(highest) }
    : { pressure: line.inletPressure, head: undefined };
}

/**
 * The lowest pressure that a regulator has under it, Pa: the line's less the height of the riser it
 * stands on, never below the air's. Undefined where no head has a regulator.
 */
export function lowestUnderRegulator({ line, linePressure }: SolvedLine): number | undefined {
  const regulated = linePressure.filter((_, i) => line.regulatorSet[i] < Infinity);
  if (regulated.length === 0) return undefined;
  return Math.max(0, Math.min(...regulated) - WATER_WEIGHT * line.riser);
}
