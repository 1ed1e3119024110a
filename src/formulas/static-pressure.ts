import { WATER_WEIGHT } from "../ground/constants";
import { NoAnswer } from "../ground/domain-error";
import { type MonotoneCurve } from "./monotone-curve";

/**
 * Highest pressure, Pa, that stands in a line while the pump runs against shut valves: the head of
 * the pump's curve at no flow, less the lift from the water to the hydrant, plus the drop (m) from
 * there to the line's lowest point. Hydrostatics; example: 150 ft at no flow, 20 ft of lift and a
 * lowest point 10 ft down are 140 ft of water, 60.6 psi.
 */
export function staticPressure(curve: MonotoneCurve, lift: number, drop: number): number {
  if (curve.x[0] !== 0) {
    throw new NoAnswer("curve has no point at zero flow: add the pump's head with the valve shut");
  }
  const head = curve.y[0] - lift + drop;
  if (head < 0) {
    throw new NoAnswer("the pump's head at zero flow does not lift the water to the line");
  }
  return WATER_WEIGHT * head;
}
