import type { Cell } from "./cell";
import { above, type Limit } from "./limits";
import type { System, Units } from "./units";

/** A soil cannot hold more than its own volume: 12 in/ft, or 1000 mm/m. */
const MOST: Readonly<Record<System, Limit>> = { US: above(0, 12), SI: above(0, 1000) };

/** Available water capacity, m of water a m of soil. */
export function readWaterCapacity(u: Units, awc: Cell): number {
  return u.waterCapacity.read("awc", awc, MOST[u.system]);
}
