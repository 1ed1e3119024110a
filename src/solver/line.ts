import type { DischargeLaw } from "../formulas/discharge-law";
import type { FrictionLaw } from "../formulas/friction";

/**
 * A line of heads as the solver sees it, SI. Heads count from the inlet; index 0 is head 1, and
 * segment i is the tubing that ends at head i.
 */
export interface Line {
  /** Pressure where the lateral begins, Pa. */
  readonly inletPressure: number;
  /** Length of each segment, m. */
  readonly segmentLength: Float64Array;
  /** Inside diameter of each segment, m. */
  readonly bore: Float64Array;
  /** Ground above the inlet at each head, m. */
  readonly elevation: Float64Array;
  /** Height of the nozzle above the tubing, m. */
  readonly riser: number;
  readonly discharge: DischargeLaw;
  /** Outlet pressure of the regulator under each head, Pa; Infinity where there is none. */
  readonly regulatorSet: Float64Array;
  /** Pressure the regulator itself takes, Pa; 0 where there is none. */
  readonly regulatorLoss: Float64Array;
  readonly friction: FrictionLaw;
}
