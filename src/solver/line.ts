import type { DischargeLaw } from "../formulas/discharge-law";
import type { FrictionLaw } from "../formulas/friction";

/**
 * A line of heads as the solver sees it, SI. Heads count from the inlet; index 0 is head 1, and
 * segment i is the tubing that ends at head i. Plain arrays: short typed ones cost more to make
 * than a line costs to walk.
 */
export interface Line {
  /** Pressure where the lateral begins, Pa. */
  readonly inletPressure: number;
  /** Length of each segment, m. */
  readonly segmentLength: readonly number[];
  /** Inside diameter of each segment, m. */
  readonly bore: readonly number[];
  /** Ground above the inlet at each head, m. */
  readonly elevation: readonly number[];
  /** Height of the nozzle above the tubing, m. */
  readonly riser: number;
  readonly discharge: DischargeLaw;
  /** Outlet pressure of the regulator under each head, Pa; Infinity where there is none. */
  readonly regulatorSet: readonly number[];
  /** Pressure the regulator itself takes, Pa; 0 where there is none. */
  readonly regulatorLoss: readonly number[];
  readonly friction: FrictionLaw;
}

/** The line cut off behind its nth head. */
export function firstHeads(line: Line, heads: number): Line {
  return {
    ...line,
    segmentLength: line.segmentLength.slice(0, heads),
    bore: line.bore.slice(0, heads),
    elevation: line.elevation.slice(0, heads),
    regulatorSet: line.regulatorSet.slice(0, heads),
    regulatorLoss: line.regulatorLoss.slice(0, heads),
  };
}
