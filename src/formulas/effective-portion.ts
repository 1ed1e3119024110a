import { heldCoarseness } from "./coarseness-index";
import { NoAnswer } from "../ground/domain-error";
import { DAY, HOUR, KILOMETER, MILLIMETER } from "../ground/unit-factors";

const MILLIMETERS_A_DAY = MILLIMETER / DAY;
const KILOMETERS_AN_HOUR = KILOMETER / HOUR;

/** The least fraction that the CIGR handbook gives the equation. */
const LEAST_PORTION = 0.1;

/**
 * Part of the discharge that reaches the ground, after evaporation and wind drift, a fraction:
 *
 *     Re = 0.976 + 0.005 ET − 0.00017 ET² + 0.0012 W
 *          − CI (0.00043 ET + 0.00018 W + 0.000016 ET W)
 *
 * ET is the reference evapotranspiration in mm a day, W the wind in km/h, CI the coarseness index
 * held to 7 … 17. The fraction is stated as 0.1 to 1: below that, et and wind are beyond the equation.
 *
 * Source: Keller and Bliesner (1990), Sprinkle and Trickle Irrigation, equation 6.7, after the Frost
 * and Schwalen (1955) nomograph. From memory; of the CIGR Handbook of Agricultural Engineering,
 * Volume I (1999), equation 5.152, a part was read: it has the same bounds and the same factors of ET
 * and ET W, and 0.0018 for W, which would lose a sixth of the water in a light wind.
 * Example: 6 mm a day, 10 km/h and CI 10: 0.958.
 */
export function effectivePortion(
  evapotranspiration: number,
  wind: number,
  coarseness: number,
): number {
  const et = evapotranspiration / MILLIMETERS_A_DAY;
  const w = wind / KILOMETERS_AN_HOUR;
  const gained = 0.976 + 0.005 * et - 0.00017 * et ** 2 + 0.0012 * w;
  const lost = 0.00043 * et + 0.00018 * w + 0.000016 * et * w;
  const portion = gained - heldCoarseness(coarseness) * lost;
  if (portion < LEAST_PORTION) {
    throw new NoAnswer(
      "the equation leaves less than 0.1 for the ground: et and wind are beyond what it was made for",
    );
  }
  return portion;
}
