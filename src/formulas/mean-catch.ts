import { InvalidInput } from "../ground/domain-error";

/** Mean of the catches; a uniformity needs two of them and some water. */
export function meanCatch(catches: readonly number[]): number {
  if (catches.length < 2) {
    throw new InvalidInput(`catch must hold at least 2 cans; got ${catches.length}`);
  }
  const mean = catches.reduce((sum, depth) => sum + depth, 0) / catches.length;
  if (mean === 0) throw new InvalidInput(`catch holds no water: all ${catches.length} cans are 0`);
  return mean;
}
