import { wholeParts } from "./whole-parts";

/**
 * Whole sets in a working day: each set is followed by the time to move the line, the last one too.
 * Times in any one unit. Example: sets of 11 h with 1 h to move, two in 24 h and one in 12 h.
 */
export function setsADay(set: number, move: number, day: number): number {
  return wholeParts(day, set + move);
}
