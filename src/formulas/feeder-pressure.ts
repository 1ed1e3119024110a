import { WATER_WEIGHT } from "../ground/constants";
import { NoAnswer } from "../ground/domain-error";
import { fittingLoss } from "./fitting-loss";
import { type FrictionLaw, frictionPressureLoss } from "./friction";

/** A feeder and what it must deliver, SI. */
export interface Feeder {
  /** Pressure wanted where the lateral begins, Pa. */
  readonly inletPressure: number;
  readonly flow: number;
  readonly bore: number;
  readonly length: number;
  /** Ground from the hydrant up to the lateral's inlet, m; negative downhill. */
  readonly rise: number;
  readonly friction: FrictionLaw;
  /** Sum of the resistance coefficients of its fittings. */
  readonly fittings: number;
}

/** Pressure needed at the hydrant, Pa: the energy equation along the feeder. */
export function pressureAtRiser(feeder: Feeder): number {
  const { inletPressure, flow, bore, length, rise, friction, fittings } = feeder;
  const pressure =
    inletPressure +
    frictionPressureLoss(flow, bore, length, friction) +
    fittingLoss(flow, bore, fittings) +
    WATER_WEIGHT * rise;
  if (pressure < 0) {
    throw new NoAnswer(
      "rise falls so far that the lateral gets more than inlet with no pressure at the hydrant: " +
        "use smaller tubing or a pressure regulator",
    );
  }
  return pressure;
}
