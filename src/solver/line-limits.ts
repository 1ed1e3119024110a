import { meanSpeed } from "../formulas/mean-speed";
import type { SolvedLine } from "./solve-line";
import { spreadOf } from "./spread";

/** What a layout of a line must keep to, SI. */
export interface LineLimits {
  /** Largest (highest − lowest)/average of the nozzle pressures. */
  readonly variation: number;
  /** No nozzle below this pressure, Pa. */
  readonly lowest: number;
  /** No segment faster than this, m/s; Infinity where speed is not limited. */
  readonly speed: number;
}

/** Two runs of one line differ by the closing tolerance: a limit met exactly must not depend on it. */
const SLACK = 1e-9;

export function keepsWithin(limits: LineLimits, solved: SolvedLine): boolean {
  const { lowest, variation } = spreadOf(solved.nozzlePressure);
  // A head that gives nothing passes no limit, not even a loose one.
  return (
    lowest > 0 &&
    variation <= limits.variation + SLACK &&
    lowest >= limits.lowest * (1 - SLACK) &&
    greatestSpeed(solved) <= limits.speed * (1 + SLACK)
  );
}

export function greatestSpeed(solved: SolvedLine): number {
  const { bore } = solved.line;
  return solved.segmentFlow.reduce((most, flow, i) => Math.max(most, meanSpeed(flow, bore[i])), 0);
}
