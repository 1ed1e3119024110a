import { meanCatch } from "./mean-catch";

/**
 * Distribution uniformity, a fraction: the mean of the lowest part of the catches over the mean of
 * all, by the low quarter where the fraction is ¼.
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11. The handbooks take cans in
 * multiples of four; here the can that the fraction cuts counts in part, so that any number of cans
 * stands for its whole area: of 10 cans the low quarter is the lowest two and half of the third.
 * Example: catches of 7, 8, 9, 10, 10, 11, 12, 13 have the mean 10, the lowest two 7.5: DU 0.75.
 */
export function distributionUniformity(catches: readonly number[], fraction: number): number {
  const mean = meanCatch(catches);
  const rising = [...catches].sort((a, b) => a - b);
  const cans = fraction * rising.length;
  const whole = Math.floor(cans);
  let sum = 0;
  for (let i = 0; i < whole; i++) sum += rising[i];
  if (whole < rising.length) sum += (cans - whole) * rising[whole];
  return sum / cans / mean;
}
