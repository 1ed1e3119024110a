import { NoAnswer } from "../ground/domain-error";
import { requireAllRunning } from "./dry-heads";
import { closeOnRoot, type Sample } from "./increasing-root";
import type { Line } from "./line";
import { March } from "./march";
import { solveLine } from "./solve-line";

/** Which nozzle pressure must meet the target. */
export type Basis = "lowest" | "average" | "last";

/** The highest inlet pressure that is sought, Pa: no tubing of a field line stands more. */
export const MOST_INLET_PRESSURE = 1e7;

/** Share of the target by which the pressure found may miss it. */
const TOLERANCE = 1e-11;

/**
 * The smallest inlet pressure, Pa, that gives a target pressure at the nozzle: to the lowest head,
 * to the last, or on average.
 */
export function inletFor(line: Line, target: number, basis: Basis): number {
  const march = walkToTarget(line, target, basis);
  if (march === undefined) {
    throw new NoAnswer("target needs an inlet pressure above 10 MPa (1450 psi)");
  }
  if (march.inlet <= 0) {
    throw new NoAnswer("the fall of the ground alone gives more than target");
  }
  if (march.headFlow.includes(0)) {
    requireAllRunning(solveLine({ ...line, inletPressure: march.inlet }));
  }
  return march.inlet;
}

/**
 * The walk along a line that meets a target pressure at the nozzle; undefined where that takes more
 * than the highest inlet pressure. Every nozzle pressure rises with the one at the last head, and a
 * walk from there finds the inlet pressure, so the line's own is not asked for. On falling ground
 * the inlet pressure may come out at 0 or below.
 */
export function walkToTarget(line: Line, target: number, basis: Basis): March | undefined {
  requireReachable(line.regulatorSet, target, basis);
  const march = new March(line);
  const read = READING[basis];
  // Meets the target for certain where every head has it: on average one head alone that lets it
  // through does, and where none does, all are at the pressure they are regulated to.
  const enough = march.count * target;
  const root = closeOnRoot(
    (last) => {
      march.walk(last, MOST_INLET_PRESSURE);
      const { value, slope } = read(march);
      return { value: march.inlet === Infinity ? Infinity : value - target, slope };
    },
    march.dryLimit(),
    march.wetLimit(2 * enough),
    target,
    TOLERANCE * target,
  );
  return root.found ? march : undefined;
}

/** The pressure that a basis goes by, on the last walk, and how fast it follows the last head's. */
const READING: Readonly<Record<Basis, (march: March) => Sample>> = {
  last: (march) => ({ value: march.spare[march.count - 1], slope: 1 }),
  lowest: (march) => {
    const lowest = march.spare.indexOf(Math.min(...march.spare));
    return { value: march.spare[lowest], slope: march.spareSlope[lowest] };
  },
  average: (march) => {
    let value = 0;
    let slope = 0;
    for (let i = 0; i < march.count; i++) {
      value += march.nozzlePressure(i) / march.count;
      slope += march.nozzleSlope(i) / march.count;
    }
    return { value, slope };
  },
};

/** #N/A where no pressure meets the target, because the regulators let less through. */
function requireReachable(set: readonly number[], target: number, basis: Basis): void {
  const most: Record<Basis, number> = {
    last: set[set.length - 1],
    lowest: Math.min(...set),
    average: set.reduce((total, pressure) => total + pressure, 0) / set.length,
  };
  if (target > most[basis]) {
    throw new NoAnswer(
      "target is above what the regulators let through: lower it, or use regulators with a higher set pressure",
    );
  }
}
