import { linesNeeded } from "../formulas/lines-needed";
import { setsADay } from "../formulas/sets-a-day";
import { timeForDepth } from "../formulas/set-time";
import { partsToCover, wholeParts } from "../formulas/whole-parts";
import { DAY, HOUR } from "../ground/unit-factors";
import type { LimitName, PlanTerms } from "./plan-problem";

/** Time, s, in which heads of a flow (m³/s) put the net depth on the driest quarter, or on average. */
export function neededTime(terms: PlanTerms, area: number, headFlow: number): number {
  return timeForDepth(terms.netDepth, headFlow / area, terms.efficiency * terms.uniformity);
}

/** A set time that is laid down; undefined where the set is as long as the depth asks. */
export function givenTime(terms: PlanTerms, without?: LimitName): number | undefined {
  return without === "set hours" ? undefined : terms.setTime;
}

/** Sets in a day, a part of one where a set takes days; without the limit of the day it has 24 hours. */
export function dailySets(terms: PlanTerms, setTime: number, without?: LimitName): number {
  const day = without === "day hours" ? DAY : terms.dayTime;
  return setsADay(setTime / HOUR, terms.moveTime / HOUR, day / HOUR);
}

/**
 * Lines that come round in time; 0 where none does. Without the limit of the days it is one line,
 * however long it takes. Never more for a shorter set.
 */
export function linesInTime(
  terms: PlanTerms,
  sets: number,
  perDay: number,
  without?: LimitName,
): number {
  if (without === "days") return perDay > 0 ? 1 : 0;
  // At least one, however many sets a line could make.
  return wholeParts(perDay * terms.days, 1) === 0
    ? 0
    : Math.max(1, linesNeeded(sets, perDay, terms.days));
}

/** Sets that the busiest line makes once round. */
export function setsOfALine(sets: number, lines: number): number {
  return partsToCover(sets, lines);
}

/**
 * Working hours a day, s, that a line needs to come round in time, 24 where a set takes days; without
 * the limit of the days just for one set.
 */
export function neededDay(
  terms: PlanTerms,
  setsOfLine: number,
  setTime: number,
  without?: LimitName,
): number {
  const perDay = without === "days" ? 1 : Math.max(1, partsToCover(setsOfLine, terms.days));
  return Math.min(DAY, perDay * (setTime + terms.moveTime));
}

/** The fewest lines that run at a time: in the last round some have no position left. */
export function fewestRunning(sets: number, lines: number): number {
  return sets % lines === 0 ? lines : sets % lines;
}
