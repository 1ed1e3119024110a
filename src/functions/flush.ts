import { above } from "../boundary/limits";
import { readOptionalNumber } from "../boundary/numbers";
import { readSections } from "../boundary/sections";
import { minutes, readUnits } from "../boundary/units";
import { flushTime as timeToFlush } from "../formulas/flush-time";
import { flowAtSpeed } from "../formulas/mean-speed";
import { sectionsVolume } from "../formulas/sections-volume";

/** @customenum {string} */
enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** metres, millimetres, kPa, m³/h */
  SI = "SI",
}

/**
 * Flow that carries grit out of the open end of a line.
 * @customfunction FLUSH_FLOW FLUSH.FLOW
 * @param inside Inside diameter at the far end (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param [units] "US" (blank) or "SI".
 * @param [velocity] Speed of the water (ft/s, m/s), above 0; blank or 0: 2 ft/s, 0.6 m/s.
 * @returns Flow (gpm, m³/h).
 * @remarks Speed × bore area. 2 ft/s is the usual least speed for moving sand along; the widest pipe that is flushed needs the most flow. Where the heads run meanwhile, FLUSH.PRESSURE gives the inlet pressure for it.
 * @source Continuity; the least speed is common practice for flushing lines of small bore.
 * @errors #VALUE! for a blank, text or negative inside diameter or speed.
 * @cautions pressure
 * @task how much water do I need to flush a line?
 * @example =IRRIG.FLUSH.FLOW(1.72, "US")
 */
export function flushFlow(inside: any, units?: Units, velocity?: any): any {
  const u = readUnits(units);
  return u.flow.give(
    flowAtSpeed(
      u.speed.readOr("velocity", velocity, above(0), { US: 2, SI: 0.6 }),
      u.diameter.read("inside", inside, above(0)),
    ),
  );
}

/**
 * Minutes to change the water in a line.
 * @customfunction FLUSH_TIME FLUSH.TIME
 * @param flow Flow through the line and out of its open end (gpm, m³/h), above 0.
 * @param inside Inside diameter (in, mm), above 0: one value, or a row or column with one per section. The bore, not the nominal size.
 * @param length Length of tubing (ft, m), 0 or more: as many values as `inside`, in the same order.
 * @param [units] "US" (blank) or "SI".
 * @param [changes] How many times the water is changed, above 0; blank or 0 is once.
 * @returns Minutes.
 * @remarks Volume × changes ÷ flow. Go on until the water runs clear, however long that takes.
 * @source Plug flow.
 * @errors #VALUE! for a blank, text or negative value, or ranges that differ in their number of values.
 * @cautions pressure
 * @task how long do I flush a line?
 * @example =IRRIG.FLUSH.TIME(16, {2.15;1.72}, {315;315}, "US", 2)
 */
export function flushTime(
  flow: any,
  inside: any[][],
  length: any[][],
  units?: Units,
  changes?: any,
): any {
  const u = readUnits(units);
  return minutes.give(
    timeToFlush(
      u.flow.read("flow", flow, above(0)),
      sectionsVolume(readSections(u, inside, length)),
      readOptionalNumber("changes", changes, above(0)) ?? 1,
    ),
  );
}
