import { INCH, PSI } from "../ground/unit-factors";

/**
 * Coarseness index of a sprinkler's spray, by pressure (Pa) and nozzle diameter (m):
 *
 *     CI = P^1.3 / B      P in psi, B in 64ths of an inch
 *
 * held to 7 (coarse drops) … 17 (fine spray), outside of which the loss no longer changes.
 *
 * Source: Keller and Bliesner (1990), Sprinkle and Trickle Irrigation, chapter 6; the bounds also in
 * the CIGR Handbook of Agricultural Engineering, Volume I (1999), section 5.4. The handbook's metric
 * form, 0.032 P^1.3/B in kPa and mm, is the same with a rounded constant.
 * Example: 45 psi and 10/64 in: 14.1.
 */
export const COARSEST = 7;
export const FINEST = 17;

const SIXTY_FOURTH = INCH / 64;
const PRESSURE_EXPONENT = 1.3;

export function coarsenessIndex(pressure: number, nozzle: number): number {
  return heldCoarseness((pressure / PSI) ** PRESSURE_EXPONENT / (nozzle / SIXTY_FOURTH));
}

export function heldCoarseness(index: number): number {
  return Math.min(FINEST, Math.max(COARSEST, index));
}
