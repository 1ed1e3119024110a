import type { LineLimits } from "../solver/line-limits";
import type { Cell } from "./cell";
import { above } from "./limits";
import { readNumber } from "./numbers";
import type { Units } from "./units";

/** Reads what a layout must keep to; a blank lowest pressure or speed is no such limit. */
export function readLineLimits(u: Units, limit: Cell, lowest: Cell, maxvelocity: Cell): LineLimits {
  return {
    variation: readNumber("limit", limit, above(0)),
    lowest: u.pressure.readOptional("lowest", lowest, above(0)) ?? 0,
    speed: u.speed.readOptional("maxvelocity", maxvelocity, above(0)) ?? Infinity,
  };
}
