import { WATER_DENSITY } from "../ground/constants";
import { boreArea } from "./mean-speed";

/** Discharge coefficient of a round sprinkler nozzle where its sheet says nothing (handbook value). */
export const NOZZLE_COEFFICIENT = 0.96;

/**
 * Flow of a round nozzle, m³/s, by the orifice equation q = C_d A √(2p/ρ).
 *
 * In gpm, inches and psi the handbooks print q = 29.84 C_d D² √p; with water at 998.2 kg/m³ the
 * constant is 29.85. `diameter` in m, `pressure` at the nozzle in Pa. Example: a 3/16 in nozzle at
 * 50 psi with C_d 0.96 gives 7.12 gpm.
 */
export function nozzleFlow(diameter: number, pressure: number, coefficient: number): number {
  return coefficient * boreArea(diameter) * Math.sqrt((2 * pressure) / WATER_DENSITY);
}
