import { InvalidInput } from "../ground/domain-error";

/**
 * Uniformity of a whole lateral from that of one spot: the spread of flow along the line takes its
 * part,
 *
 *     system CU = CU (1 + √(Pn/Pa)) / 2
 *
 * with the lowest (Pn) and the average pressure (Pa) at the heads. Source: USDA-NRCS, National
 * Engineering Handbook, Part 623 Chapter 11. Example: CU 0.86, 40 of 45 psi: 0.835.
 */
export function systemUniformity(cu: number, lowest: number, average: number): number {
  if (lowest > average) {
    throw new InvalidInput(`lowest must be at most the average, ${average}; got ${lowest}`);
  }
  return (cu * (1 + Math.sqrt(lowest / average))) / 2;
}
