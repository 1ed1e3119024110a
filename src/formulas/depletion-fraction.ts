import { DAY, MILLIMETER } from "../ground/unit-factors";

/** The bounds that FAO-56 sets to an adjusted fraction. */
const LEAST = 0.1;
const GREATEST = 0.8;

/**
 * Share of the available water that a crop can use before it feels the drought, at a crop's
 * evapotranspiration (m/s of water):
 *
 *     p = p₅ + 0.04 (5 − ETc)      ETc in mm/day, 0.1 ≤ p ≤ 0.8
 *
 * where p₅ is the table's, for 5 mm/day. Source: FAO Irrigation and Drainage Paper 56 (1998), Table
 * 22, footnote 2. Example: 0.60 at 8 mm/day is 0.48. Where the use is not known, the table's own.
 */
export function depletionFractionAt(tabled: number, cropUse: number | undefined): number {
  if (cropUse === undefined) return tabled;
  const millimetersADay = (cropUse * DAY) / MILLIMETER;
  return Math.min(GREATEST, Math.max(LEAST, tabled + 0.04 * (5 - millimetersADay)));
}
