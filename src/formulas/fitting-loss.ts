import { WATER_DENSITY } from "../ground/constants";
import { meanSpeed } from "./mean-speed";

/**
 * Pressure lost in a fitting, Pa: k times the velocity head, h = k V²/2g, as pressure k ρV²/2.
 *
 * `k` is the fitting's own resistance coefficient, on the speed in the bore given. Example: k = 1 at
 * 5 ft/s loses 0.168 psi (0.389 ft).
 */
export function fittingLoss(flow: number, bore: number, k: number): number {
  return (k * WATER_DENSITY * meanSpeed(flow, bore) ** 2) / 2;
}
