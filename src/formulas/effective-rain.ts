import { INCH } from "../ground/unit-factors";

/**
 * Part of a month's rain that stays in the soil for the crop, m:
 *
 *     P_e = SF (0.70917 P^0.82416 − 0.11556) 10^(0.02426 E)
 *     SF  = 0.531747 + 0.295164 D − 0.057697 D² + 0.003804 D³
 *
 * all in inches: P the month's rain, E the crop's use in it, D the net depth that the soil is left
 * room for; never above the rain or the use. Source: USDA Soil Conservation Service, Technical
 * Release 21 (revised 1970), as the National Engineering Handbook, Part 623 Chapter 2 (1993), prints
 * it in equations 2-84 and 2-85 (both read in secondary texts). Made for well-drained soil, from
 * daily records of 22 places in the United States over 50 years. Example: 4 in of rain, 8 in of use
 * and 3 in of depth leave 3.30 in.
 */
export function effectiveRain(rain: number, use: number, net: number): number {
  const beforeStorage =
    (0.70917 * (rain / INCH) ** 0.82416 - 0.11556) * 10 ** (0.02426 * (use / INCH));
  const stored = storageFactor(net / INCH) * beforeStorage * INCH;
  return Math.max(0, Math.min(stored, rain, use));
}

/** The table behind the cubic ends here, in (from memory); the cubic itself would climb on. */
const DEEPEST = 7;

function storageFactor(inches: number): number {
  const depth = Math.min(inches, DEEPEST);
  return 0.531747 + 0.295164 * depth - 0.057697 * depth ** 2 + 0.003804 * depth ** 3;
}
