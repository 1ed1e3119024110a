import { BETWEEN_POSITIONS } from "../tables/sprinkler-spacing";
import type { Cell } from "./cell";
import { atLeast } from "./limits";
import type { Units } from "./units";

/**
 * Wind, m/s, for the classes of sprinkler spacing: one that shows as the limit of a class is that
 * limit, so that 5.004 mph does not count as more than the "5 mph" it reads as.
 */
export function asSpacingWind(u: Units, wind: number): number {
  const limit = BETWEEN_POSITIONS.find((row) => u.wind.say(row.wind) === u.wind.say(wind));
  return limit?.wind ?? wind;
}

export function readSpacingWind(u: Units, cell: Cell): number {
  return asSpacingWind(u, u.wind.read("wind", cell, atLeast(0)));
}
