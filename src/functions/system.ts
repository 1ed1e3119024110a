import { above, atLeast, LARGEST, readNumber, wholeNumber } from "../boundary/numbers";
import { hourMeasure, readUnits } from "../boundary/units";
import { fieldWater, flowForDepth } from "../formulas/field-water";
import { irrigationInterval } from "../formulas/irrigation-interval";
import { linesNeeded } from "../formulas/lines-needed";
import type { Units } from "./units";

/**
 * Flow that puts a gross depth on an area in so many days at so many hours a day.
 * @customfunction SYSTEM_CAPACITY SYSTEM.CAPACITY
 * @param area Area to irrigate (acre, ha), 0 or more.
 * @param depth Gross depth of one irrigation (in, mm), 0 or more: the net depth divided by the efficiency.
 * @param days Days to get round the area, above 0: the irrigation interval, less the days off.
 * @param hours Hours a day that water runs, above 0 up to 24.
 * @returns Flow (gpm, m³/h).
 * @remarks area × depth ÷ (days × hours), the handbook's 453 A·d/(f·T) with its exact constant 452.57.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank or text, a negative area or depth, days that are not above 0, or hours above 24.
 * @task how much flow does the field need?
 * @example =IRRIG.SYSTEM.CAPACITY(40, 3.43, 10, 20, "US")
 */
export function systemCapacity(area: any, depth: any, days: any, hours: any, units?: Units): any {
  const u = readUnits(units);
  return u.flow.give(
    flowForDepth(
      u.area.read("area", area, atLeast(0)),
      u.depth.read("depth", depth, atLeast(0)),
      readNumber("days", days, above(0)),
      hourMeasure.read("hours", hours, above(0, 24)),
    ),
  );
}

/**
 * Days between irrigations: how long a net depth lasts.
 * @customfunction SYSTEM_INTERVAL SYSTEM.INTERVAL
 * @param net Net depth that an irrigation puts back (in, mm), 0 or more.
 * @param use Water the crop uses a day at its peak (in/day, mm/day), above 0.
 * @returns Days, not rounded.
 * @remarks net ÷ use. Takes no units argument: both in the same unit of length. Plan with the whole days below it.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank or text, a negative net depth, or a use that is not above 0.
 * @task how many days until I irrigate again?
 * @example =IRRIG.SYSTEM.INTERVAL(2, 0.25)
 */
export function systemInterval(net: any, use: any): any {
  return irrigationInterval(readNumber("net", net, atLeast(0)), readNumber("use", use, above(0)));
}

/**
 * Lines needed to get round all positions in the days there are.
 * @customfunction SYSTEM_LINES SYSTEM.LINES
 * @param positions Positions in the field, a whole number, 1 or more; SET.POSITIONS gives it.
 * @param setsperday Sets a line makes in a day, above 0; SET.PERDAY gives it, 0.5 for a set of two days.
 * @param days Days to get round, above 0: the irrigation interval (SYSTEM.INTERVAL), less the days off.
 * @returns Whole lines.
 * @remarks positions ÷ the whole sets that a line makes in the days, up to the next whole number: at one set a day, 6.9 days are 6 sets; at half a set a day, seven days are 3. SET.PLAN with that many lines ends within the days.
 * @source Arithmetic of the rotation.
 * @errors #VALUE! for a blank or text, positions that are not a whole number, or sets or days that are not above 0; #N/A where no whole set fits into the days.
 * @task how many lines do I need?
 * @example =IRRIG.SYSTEM.LINES(14, 1, 7)
 */
export function systemLines(positions: any, setsperday: any, days: any): any {
  return linesNeeded(
    readNumber("positions", positions, wholeNumber(1, LARGEST)),
    readNumber("setsperday", setsperday, above(0)),
    readNumber("days", days, above(0)),
  );
}

/**
 * Water for a depth on an area.
 * @customfunction SYSTEM_VOLUME SYSTEM.VOLUME
 * @param area Area (acre, ha), 0 or more.
 * @param depth Depth (in, mm), 0 or more: gross for what is pumped, net for what the ground gets.
 * @returns Volume (gal, m³).
 * @remarks area × depth. An acre-inch is 27,154 gal; a millimeter on a hectare is 10 m³.
 * @source NIST Special Publication 811 (2008), Appendix B, for the acre, the inch and the gallon.
 * @errors #VALUE! for a blank, text or negative area or depth.
 * @task how much water does the season take?
 * @example =IRRIG.SYSTEM.VOLUME(10, 2.5, "US")
 */
export function systemVolume(area: any, depth: any, units?: Units): any {
  const u = readUnits(units);
  return u.fieldVolume.give(
    fieldWater(u.area.read("area", area, atLeast(0)), u.depth.read("depth", depth, atLeast(0))),
  );
}
