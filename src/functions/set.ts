import { readEfficiency } from "../boundary/efficiency";
import { above, atLeast } from "../boundary/limits";
import { readNumber } from "../boundary/numbers";
import { timeForDepth } from "../formulas/set-time";

/**
 * Hours a set must run to put on a net depth.
 * @customfunction SET_TIME SET.TIME
 * @param depth Net depth to put on (in, mm), 0 or more.
 * @param rate Application rate (in/h, mm/h), above 0.
 * @param [efficiency] Application efficiency, a fraction above 0 up to 1 (blank or 0: 1, nothing lost).
 * @returns Time, h.
 * @remarks depth ÷ (rate × efficiency). No `units`: depth and rate in the same unit of length. With a gross depth leave the efficiency blank. The time to move the line is not included.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative depth, a rate that is not above 0, or an efficiency above 1.
 * @task how long do I run a set?
 * @example =IRRIG.SET.TIME(2, 0.25, 0.75)
 */
export function setTime(depth: any, rate: any, efficiency?: any): any {
  return timeForDepth(
    readNumber("depth", depth, atLeast(0)),
    readNumber("rate", rate, above(0)),
    readEfficiency(efficiency),
  );
}
