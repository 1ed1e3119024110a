import { WATER_WEIGHT } from "../ground/constants";
import type { SolvedLine } from "./solve-line";

/**
 * Whether every length between two is sure to vary by no more than `variation`, the longer one
 * keeping within the limits itself.
 *
 * A further head takes pressure from all before it: were the inflow not greater with it, the first
 * segment would lose no more, head 1 would take no less, and so on along the line, until nothing
 * were left for the further head. So in a line of a length between, a head has at least what it has
 * in the longer line, and at most what it has in the shorter one or, beyond that one's end, what
 * stands there without friction. Lowest pressure, speed and running dry follow from the longer line
 * alone.
 */
export function keepBetween(shorter: SolvedLine, longer: SolvedLine, variation: number): boolean {
  const { line } = longer;
  const from = shorter.nozzlePressure.length;
  const end = shorter.linePressure[from - 1] + WATER_WEIGHT * line.elevation[from - 1];
  let highest = Math.max(...shorter.nozzlePressure);
  let lowest = Infinity;
  let sum = 0;
  for (let i = 0; i < longer.nozzlePressure.length - 1; i++) {
    lowest = Math.min(lowest, longer.nozzlePressure[i]);
    sum += longer.nozzlePressure[i];
    if (i < from) continue;
    const atRest = end - WATER_WEIGHT * (line.elevation[i] + line.riser) - line.regulatorLoss[i];
    highest = Math.max(highest, Math.min(atRest, line.regulatorSet[i]));
    if ((highest - lowest) * (i + 1) > variation * sum) return false;
  }
  return true;
}
