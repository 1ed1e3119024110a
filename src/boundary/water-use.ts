import type { Cell } from "./cell";
import { above, between, type Limit } from "./limits";
import type { System, Units } from "./units";

/** No crop uses more in a day: a larger number is a slip of units (mm typed for in). */
const MOST: Readonly<Record<System, Limit>> = { US: above(0, 1), SI: above(0, 25) };

/** A crop's evapotranspiration, m/s of water; undefined when blank or 0. */
export function readOptionalWaterUse(u: Units, et: Cell): number | undefined {
  return u.dailyDepth.readOptional("et", et, MOST[u.system]);
}

/** A month of such days. */
const MOST_IN_A_MONTH: Readonly<Record<System, Limit>> = {
  US: between(0, 31),
  SI: between(0, 775),
};

/** A crop's use in a month, m of water. */
export function readMonthUse(u: Units, name: string, use: Cell): number {
  return u.depth.read(name, use, MOST_IN_A_MONTH[u.system]);
}
