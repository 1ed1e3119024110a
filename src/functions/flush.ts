import { above, readOptionalNumber } from "../boundary/numbers";
import { lineCells, readHeads, readLine } from "../boundary/line";
import { readSections } from "../boundary/pipe";
import { minuteMeasure, readUnits } from "../boundary/units";
import { timeToFlush } from "../formulas/flush-time";
import { flowAtSpeed } from "../formulas/mean-speed";
import { sectionsVolume } from "../formulas/sections-volume";
import { pressureToFlush } from "../solver/flush-line";
import type { LineArguments } from "./line-arguments";
import type { Units } from "./units";

/**
 * Flow that carries grit out of the open end of a line.
 * @customfunction FLUSH_FLOW FLUSH.FLOW
 * @param inside Inside diameter at the far end (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param [velocity] Speed of the water (ft/s, m/s), above 0; blank or 0: 2 ft/s, 0.6 m/s.
 * @returns Flow (gpm, m³/h).
 * @remarks Speed × bore area. 2 ft/s is the usual least speed for moving sand along; the widest pipe that is flushed needs the most flow. Where the heads run meanwhile, FLUSH.PRESSURE gives the inlet pressure for it.
 * @source Continuity; the least speed is common practice for flushing lines of small bore.
 * @errors #VALUE! for a blank, text or negative inside diameter or speed.
 * @cautions flushing, pressure
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
 * @param length Length of tubing (ft, m), 0 or more: as many values as inside diameters, in the same order.
 * @param [changes] How many times the water is changed, above 0; blank or 0 is once.
 * @returns Minutes.
 * @remarks Volume × changes ÷ flow. Go on until the water runs clear, however long that takes.
 * @source Plug flow.
 * @errors #VALUE! for a blank, text or negative value, or ranges that differ in their number of values.
 * @cautions flushing, pressure
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
  return minuteMeasure.give(
    timeToFlush(
      u.flow.read("flow", flow, above(0)),
      sectionsVolume(readSections(u, inside, length)),
      readOptionalNumber("changes", changes, above(0)) ?? 1,
    ),
  );
}

/**
 * Inlet pressure that gives a velocity of water in the last segment of a line with the end cap off.
 * @customfunction FLUSH_PRESSURE FLUSH.PRESSURE
 * @arguments line
 * @param velocity Speed of the water in the last segment (ft/s, m/s), above 0; 2 ft/s or 0.6 m/s is the usual least.
 * @returns Inlet pressure (psi, kPa).
 * @remarks The line solved with its end open: gauge pressure 0 at the last head, the heads before it running as far as they have pressure; the last ones run dry. Tubing beyond the last head, fittings and saddles are not counted. Pressures up to 10 MPa (1450 psi) are sought.
 * @source {@text lineSource}
 * @errors #N/A when the speed needs more than 10 MPa, or the fall of the ground alone gives more. {@text lineWrong}
 * @cautions flushing, pressure
 * @task what pressure do I need to flush a line?
 * @example =IRRIG.FLUSH.PRESSURE(2, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function flushPressure(velocity: any, ...line: LineArguments): any {
  const cells = lineCells(line);
  const u = readUnits(cells.units);
  return u.pressure.give(
    pressureToFlush(
      readLine(u, readHeads(cells.heads), 0, cells),
      u.speed.read("velocity", velocity, above(0)),
    ),
  );
}
