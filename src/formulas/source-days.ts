import { NoAnswer } from "../ground/domain-error";
import { DAY } from "../ground/unit-factors";

/**
 * How long a pond or tank lasts, s: its volume (m³) over what it loses in the long run. Pumping at
 * `flow` (m³/s) for `dailyTime` (s) of every day takes it; `inflow` (m³/s) comes in all day.
 *
 *     days = V / (Q t − q·24 h)
 *
 * A water balance. Example: 500 000 gal, 100 gpm for 12 h a day and 10 gpm of inflow last
 * 500 000/(72 000 − 14 400) = 8.68 days.
 */
export function sourceDuration(
  volume: number,
  flow: number,
  dailyTime: number,
  inflow: number,
): number {
  const draw = (flow * dailyTime) / DAY - inflow;
  if (draw <= 0) {
    throw new NoAnswer("the water never runs out: the inflow makes up for all that is pumped");
  }
  return volume / draw;
}
