import { GRAVITY, WATER_WEIGHT } from "../ground/constants";

/**
 * Total dynamic head, m: what a pump must add between the water surface and the point where the
 * pressure is wanted,
 *
 *     TDH = p/ρg + lift + losses/ρg + V²/2g
 *
 * from Bernoulli's equation with friction. Example: 45 psi wanted (104.0 ft), 12 ft of lift and
 * 6 psi of losses (13.9 ft) are 129.9 ft.
 */
export function totalDynamicHead(
  pressure: number,
  lift: number,
  losses: number,
  speed: number,
): number {
  return (pressure + losses) / WATER_WEIGHT + lift + speed ** 2 / (2 * GRAVITY);
}
