import { NoAnswer } from "../ground/domain-error";

/**
 * Application efficiency of a line's water, a fraction: the distribution efficiency, which is what
 * the driest part that must still get enough leaves of the mean depth, times the part of the
 * discharge that reaches the ground.
 *
 *     DE = 100 + (606 − 24.9 a + 0.349 a² − 0.00186 a³)(1 − CU/100)      a, CU and DE in percent
 *
 * with the adequacy a the share of the area that gets at least the net depth; here all are fractions.
 *
 * Source: Keller and Bliesner (1990), Sprinkle and Trickle Irrigation, chapter 6, from memory. It
 * fits depths that scatter normally, for which DE = 1 − z √(π/2) (1 − CU), z the normal deviate that
 * a share 1 − a lies above, within 0.04 (1 − CU) from half the area to 95%, the ends of its table.
 * Leakage is not included. Example: CU 0.86, adequacy 0.8: 0.853.
 */
export const LEAST_ADEQUACY = 0.5;
export const GREATEST_ADEQUACY = 0.95;

export function applicationEfficiencyFor(
  uniformity: number,
  adequacy: number,
  effectivePortion: number,
): number {
  const factor = 6.06 - 24.9 * adequacy + 34.9 * adequacy ** 2 - 18.6 * adequacy ** 3;
  // At half the area the polynomial is a hair above 0, where the true loss is nothing.
  const distribution = Math.min(1, 1 + factor * (1 - uniformity));
  if (distribution <= 0) {
    throw new NoAnswer(
      "no depth of water is enough at this adequacy with so low a cu: raise cu or lower adequacy",
    );
  }
  return distribution * effectivePortion;
}
