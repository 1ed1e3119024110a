import { NoAnswer } from "../ground/domain-error";
import { partsToCover, wholeParts } from "./whole-parts";

/**
 * Lines that cover all positions in the days there are. A line makes whole sets only, so in 6.9 days
 * with one set a day it makes 6. Example: 14 positions at one set a day in 7 days take 2 lines.
 */
export function linesNeeded(positions: number, setsADay: number, days: number): number {
  const setsPerLine = wholeParts(setsADay * days, 1);
  if (setsPerLine === 0) {
    throw new NoAnswer(
      `no whole set fits into ${days} days at ${setsADay} a day: shorten the set or lengthen the interval`,
    );
  }
  return partsToCover(positions, setsPerLine);
}
