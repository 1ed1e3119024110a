import type { Cell } from "./cell";
import { above, type Limit } from "./limits";
import type { System, Units } from "./units";

/** No crop uses more in a day: a larger number is a slip of units (mm typed for in). */
const MOST: Readonly<Record<System, Limit>> = { US: above(0, 1), SI: above(0, 25) };

/** A crop's evapotranspiration, m/s of water; undefined when blank or 0. */
export function readOptionalWaterUse(u: Units, et: Cell): number | undefined {
  return u.dailyDepth.readOptional("et", et, MOST[u.system]);
}
