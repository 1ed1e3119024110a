import { meanCatch } from "./mean-catch";

/**
 * Christiansen's coefficient of uniformity, a fraction:
 *
 *     CU = 1 − Σ|z − m| / (n m)      z each catch, m their mean, n their number
 *
 * Source: Christiansen (1942), Irrigation by Sprinkling, California Agricultural Experiment Station
 * Bulletin 670. Every catch stands for the same area. It is 1 for an even catch and falls below 0
 * for a very poor one, where the mean deviation is larger than the mean.
 * Example: catches of 8 and 12 have the mean 10 and the deviations 2 and 2: CU 0.8.
 */
export function christiansenUniformity(catches: readonly number[]): number {
  const mean = meanCatch(catches);
  const deviation = catches.reduce((sum, depth) => sum + Math.abs(depth - mean), 0);
  return 1 - deviation / (catches.length * mean);
}
