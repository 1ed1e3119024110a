import { GRAVITY } from "../ground/constants";

/**
 * Pull, N, that drags a mass (kg) over the ground: Coulomb friction on a slope,
 *
 *     F = m g (μ cos θ + sin θ),   tan θ = slope
 *
 * never below 0: downhill beyond the friction the line runs by itself. Example: 100 kg at a drag
 * coefficient of 0.5 on the level take 490 N.
 */
export function pullAtHitch(mass: number, drag: number, slope: number): number {
  const cosine = 1 / Math.hypot(1, slope);
  return Math.max(0, mass * GRAVITY * cosine * (drag + slope));
}
