/** What comes to and goes from a pond or tank in a month, m³. */
export interface MonthOfWater {
  readonly need: number;
  readonly inflow: number;
  readonly loss: number;
}

/** How a month ends, m³. */
export interface MonthEnd {
  readonly held: number;
  /** Need that the water did not reach for. */
  readonly short: number;
  /** Water that found no room. */
  readonly over: number;
}

/**
 * Month by month, what a pond or tank holds that is full at the start, m³.
 *
 *     held + inflow − loss  serves the need;  what is left stays, up to the full volume
 *
 * Loss comes before need, since seepage and evaporation do not wait; it takes no more than there is.
 * A water balance. Example: 100 with a need of 80, 30 and 40, and 10 coming in each month: 30 held,
 * 10 held, then 20 short.
 */
export function balanceByMonth(full: number, months: readonly MonthOfWater[]): MonthEnd[] {
  let held = full;
  return months.map(({ need, inflow, loss }) => {
    const there = Math.max(0, held + inflow - loss);
    const left = beyond(there, need);
    held = Math.min(left, full);
    return { held, short: beyond(need, there), over: beyond(left, full) };
  });
}

/** What units leave behind when two volumes are the same: nobody is short of it. */
const ROUNDING = 1e-9;

/** How much more the first is than the second; 0 where it is not. */
function beyond(first: number, second: number): number {
  const difference = first - second;
  return difference > ROUNDING * first ? difference : 0;
}
