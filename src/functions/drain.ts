import { readSections } from "../boundary/sections";
import { readUnits } from "../boundary/units";
import { sectionsVolume } from "../formulas/sections-volume";

/** @customenum {string} */
enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** metres, millimetres, kPa, m³/h */
  SI = "SI",
}

/**
 * Water in a full line, of one size of tubing or of several.
 * @customfunction DRAIN_VOLUME DRAIN.VOLUME
 * @param inside Inside diameter (in, mm), above 0: one value, or a row or column with one per section. The bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param length Length of tubing (ft, m), 0 or more: as many values as `inside`, in the same order.
 * @param [units] "US" (blank) or "SI".
 * @returns Volume (gal, L).
 * @remarks (π/4)·D²·L of each section, summed; the tables' 4.08 D² gallons per 100 ft. What stays behind in the dips is DRAIN.TRAPPED.
 * @source The volume of a cylinder.
 * @errors #VALUE! for a blank, text or negative value, or ranges that differ in their number of values.
 * @task how much water runs out when I open the line?
 * @example =IRRIG.DRAIN.VOLUME({2.15;1.72}, {315;315}, "US")
 */
export function drainVolume(inside: any[][], length: any[][], units?: Units): any {
  const u = readUnits(units);
  return u.pipeVolume.give(sectionsVolume(readSections(u, inside, length)));
}
