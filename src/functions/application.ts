import { above, atLeast } from "../boundary/limits";
import { readEfficiency } from "../boundary/efficiency";
import { readNumber } from "../boundary/numbers";
import { readUnits } from "../boundary/units";
import { averageRate } from "../formulas/application-rate";
import { appliedDepth } from "../formulas/set-time";

/** @customenum {string} */
enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** metres, millimetres, kPa, m³/h */
  SI = "SI",
}

/**
 * Average application rate: a head's flow over the ground it stands for.
 * @customfunction APPLICATION_RATE APPLICATION.RATE
 * @param flow Flow of one head (gpm, m³/h), 0 or more.
 * @param spacing Distance between heads along the line (ft, m), above 0.
 * @param move Distance between positions of the line (ft, m), above 0.
 * @param [units] "US" (blank) or "SI".
 * @returns Average rate (in/h, mm/h), as discharged.
 * @remarks flow ÷ (spacing × move), the trade's 96.3 q/(S·M) with its exact constant 96.25. Evaporation and drift are not taken off. A line of unequal heads: give the average flow; LATERAL.FLOW divided by the number of heads is one.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative flow, or a spacing or move that is not above 0.
 * @task how fast does the water go on?
 * @example =IRRIG.APPLICATION.RATE(12.5, 40, 60, "US")
 */
export function applicationRate(flow: any, spacing: any, move: any, units?: Units): any {
  const u = readUnits(units);
  return u.rate.give(
    averageRate(
      u.flow.read("flow", flow, atLeast(0)),
      u.length.read("spacing", spacing, above(0)),
      u.length.read("move", move, above(0)),
    ),
  );
}

/**
 * Depth of water that a rate puts on in a time: gross, or net when an efficiency is given.
 * @customfunction APPLICATION_DEPTH APPLICATION.DEPTH
 * @param rate Application rate (in/h, mm/h), 0 or more.
 * @param hours Time, h, 0 or more.
 * @param [efficiency] Application efficiency, a fraction above 0 up to 1 (blank or 0: 1, which gives the gross depth).
 * @returns Depth: in for a rate in in/h, mm for a rate in mm/h.
 * @remarks rate × hours × efficiency. No `units`: the depth is in the rate's own unit of length. APPLICATION.EFFICIENCY gives an efficiency.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative rate or hours, or an efficiency above 1.
 * @task how much water does a set put on?
 * @example =IRRIG.APPLICATION.DEPTH(0.25, 11, 0.75)
 */
export function applicationDepth(rate: any, hours: any, efficiency?: any): any {
  return appliedDepth(
    readNumber("rate", rate, atLeast(0)),
    readNumber("hours", hours, atLeast(0), "h"),
    readEfficiency(efficiency),
  );
}
