import { partsToCover, wholeParts } from "./whole-parts";

export const HOURS_A_DAY = 24;

/**
 * Whole sets in a working day: each set is followed by the time to move the line, the last one too.
 *
 * Where the day has 24 hours, sets run on unattended: one that is longer than the day with its move
 * takes as many whole days as it reaches into, and the answer is the part of a set that a day makes.
 * In a shorter day somebody goes home, and such a set cannot be made: 0. Times in hours. Example:
 * sets of 11 h with 1 h to move, two in 24 h and one in 12 h; a set of 36 h, half a set in 24 h.
 */
export function setsADay(set: number, move: number, day: number): number {
  const whole = wholeParts(day, set + move);
  if (whole > 0 || day < HOURS_A_DAY) return whole;
  return 1 / daysASet(set, move);
}

/** Whole days that a set with its move takes where it runs on unattended. */
export function daysASet(set: number, move: number): number {
  return partsToCover(set + move, HOURS_A_DAY);
}
