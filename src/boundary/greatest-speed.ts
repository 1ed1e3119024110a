import type { BySystem } from "./units";

/** Speed limit where surge is not analyzed: 5 ft/s in practice standard 430, rounded for SI. */
export const GREATEST_SPEED: BySystem = { US: 5, SI: 1.5 };
