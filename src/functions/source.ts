import { above, atLeast } from "../boundary/limits";
import { days, hours as hourMeasure, readUnits } from "../boundary/units";
import { sourceDuration } from "../formulas/source-days";

/** @customenum {string} */
enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** metres, millimetres, kPa, m³/h */
  SI = "SI",
}

/**
 * Days that a pond or tank lasts.
 * @customfunction SOURCE_DAYS SOURCE.DAYS
 * @param volume Water that may be taken (US gal, m³), 0 or more: leave out what the intake cannot reach.
 * @param flow Pumped flow (gpm, m³/h), above 0.
 * @param hours Hours of pumping a day, above 0 and at most 24.
 * @param [units] "US" (blank) or "SI".
 * @param [inflow] What runs in day and night, less seepage and evaporation (gpm, m³/h), 0 or more; blank or 0 is none.
 * @returns Days.
 * @remarks Volume ÷ (flow × hours − inflow × 24). Evaporation takes roughly the reference ET over the pond's surface.
 * @source A water balance.
 * @errors #VALUE! for a blank, text or negative value, or more than 24 hours. #N/A when the inflow makes up for all that is pumped: the water never runs out.
 * @cautions water edge, backflow
 * @task how many days will my pond last?
 * @example =IRRIG.SOURCE.DAYS(900000, 118, 11, "US", 15)
 */
export function sourceDays(volume: any, flow: any, hours: any, units?: Units, inflow?: any): any {
  const u = readUnits(units);
  return days.give(
    sourceDuration(
      u.fieldVolume.read("volume", volume, atLeast(0)),
      u.flow.read("flow", flow, above(0)),
      hourMeasure.read("hours", hours, above(0, 24)),
      u.flow.readOr("inflow", inflow, atLeast(0), 0),
    ),
  );
}
