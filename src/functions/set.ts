import { readOptionalChoice } from "../boundary/choices";
import {
  above,
  atLeast,
  between,
  MOST_POSITIONS,
  readNumber,
  readOptionalNumber,
  wholeNumber,
} from "../boundary/numbers";
import { readEfficiency } from "../boundary/sprinkler";
import { type Column, spillTable } from "../boundary/table";
import { rotation } from "../formulas/rotation";
import { timeForDepth } from "../formulas/set-time";
import { HOURS_A_DAY, setsADay } from "../formulas/sets-a-day";
import { partsToCover } from "../formulas/whole-parts";

const PLAN_COLUMNS: readonly Column[] = [
  { header: "day" },
  { header: "start", unit: "h" },
  { header: "line" },
  { header: "position" },
];

/** @customenum {string} */
enum Order {
  /** from the first position of each block to the last */
  Forward = "forward",
  /** from the last to the first, as the next time round begins */
  Back = "back",
}

/**
 * Hours a set must run to put on a net depth.
 * @customfunction SET_TIME SET.TIME
 * @param depth Net depth to put on (in, mm), 0 or more.
 * @param rate Application rate (in/h, mm/h), above 0.
 * @param [efficiency] Application efficiency, a fraction above 0 up to 1 (blank or 0: 1, nothing lost).
 * @returns Time, h.
 * @remarks depth ÷ (rate × efficiency). Takes no units argument: depth and rate in the same unit of length. With a gross depth leave the efficiency blank. The time to move the line is not included.
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

/**
 * Whole sets that fit into a day, with the time to move after each.
 * @customfunction SET_PERDAY SET.PERDAY
 * @arguments set
 * @returns Whole sets a day. With dayhours 24, a set that is longer than the day gives the part of a set that a day makes: 0.5 where it takes two days. With fewer dayhours 0 where a set with its move is longer than them.
 * @remarks dayhours ÷ (hours + movehours), cut to a whole number; the last set of the day has its move too. With dayhours 24 sets run on unattended: one longer than 24 h with its move takes (hours + movehours) ÷ 24 days, up to the next whole number, so 36 h with 1 h to move takes two days and 47.5 h with 1 h takes three. SYSTEM.LINES and SET.PLAN count the same way.
 * @source Arithmetic of the working day.
 * @errors #VALUE! for a blank or text, hours that are not above 0, negative movehours, or dayhours above 24.
 * @task how many sets a day?
 * @example =IRRIG.SET.PERDAY(11, 1, 24)
 */
export function setPerday(hours: any, movehours?: any, dayhours?: any): any {
  return setsADay(
    readNumber("hours", hours, above(0), "h"),
    readMoveHours(movehours),
    readDayHours(dayhours),
  );
}

/**
 * Positions of the line that cover a width of field.
 * @customfunction SET_POSITIONS SET.POSITIONS
 * @param width Width of field across the line (ft, m), above 0.
 * @param move Distance between positions, in the width's unit, above 0.
 * @returns Whole positions.
 * @remarks width ÷ move, up to the next whole number: each position stands for one move's width, half of it on either side, so the first lies half a move inside the edge.
 * @source Arithmetic of the field's width.
 * @errors #VALUE! for a blank or text, or a width or move that is not above 0.
 * @task how many positions does the field take?
 * @example =IRRIG.SET.POSITIONS(700, 50)
 */
export function setPositions(width: any, move: any): any {
  return partsToCover(readNumber("width", width, above(0)), readNumber("move", move, above(0)));
}

/**
 * Spills the rotation of the lines over the positions, once round: which line stands where, and when.
 * @customfunction SET_PLAN SET.PLAN
 * @arguments set
 * @param lines Lines that run side by side, a whole number from 1 to 500.
 * @param positions Positions in the field, a whole number from 1 to 500.
 * @param [start] Hour of the first set of a day, 0 to 24 (blank: 0, midnight).
 * @param [order] "forward" (blank), or "back": each line goes through its block from the last position to the first, as the next time round begins where this one ended.
 * @param [off] Days without moving in a week, a whole number from 0 to 6 (blank: 0).
 * @returns Header row, then one row a position in order of time: day (1 is the day of the first set), start hour of that day, line, position.
 * @remarks Each line takes a block of neighboring positions and goes through it in order; where the positions don't share out evenly the first lines have one more. Whole sets only: a set starts only where it and its move fit into the day's hours. With dayhours 24 sets run on unattended: one longer than 24 h with its move takes (hours + movehours) ÷ 24 days, up to the next whole number, as in SET.PERDAY, and starts at the same hour. A set that starts past midnight shows the next day. Days off come at the end of each week, counted from day 1; a set of several days counts working days only. Lines beyond the number of positions stay idle and have no row.
 * @source Arithmetic of the rotation: every position once, no line in two places.
 * @errors #VALUE! for a blank, text, an unknown order, or a number outside its range; #N/A where hours and movehours together are more than dayhours and these are fewer than 24.
 * @cautions towing, pressure, lightning
 * @task in what order do I move the lines?
 * @example =IRRIG.SET.PLAN(2, 14, 11, 1, 12, 6)
 */
export function setPlan(
  lines: any,
  positions: any,
  hours: any,
  movehours?: any,
  dayhours?: any,
  start?: any,
  order?: Order,
  off?: any,
): any[][] {
  const turns = rotation({
    lines: readNumber("lines", lines, wholeNumber(1, MOST_POSITIONS)),
    positions: readNumber("positions", positions, wholeNumber(1, MOST_POSITIONS)),
    set: readNumber("hours", hours, above(0), "h"),
    move: readMoveHours(movehours),
    workday: readDayHours(dayhours),
    start: readOptionalNumber("start", start, between(0, HOURS_A_DAY), "h") ?? 0,
    back: readOptionalChoice("order", order, ["forward", "back"]) === "back",
    daysOff: readOptionalNumber("off", off, wholeNumber(0, 6)) ?? 0,
  });
  return spillTable(
    PLAN_COLUMNS,
    turns.map(({ day, hour, line, position }) => [day, hour, line, position]),
  );
}

function readMoveHours(movehours: unknown): number {
  return readOptionalNumber("movehours", movehours, atLeast(0), "h") ?? 0;
}

function readDayHours(dayhours: unknown): number {
  return readOptionalNumber("dayhours", dayhours, above(0, HOURS_A_DAY), "h") ?? HOURS_A_DAY;
}
