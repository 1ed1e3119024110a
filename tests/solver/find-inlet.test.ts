import fc from "fast-check";
import { NoAnswer } from "../../src/formulas/domain-error";
import { type Basis, inletFor } from "../../src/solver/find-inlet";
import { solveLine } from "../../src/solver/solve-line";
import { spreadOf } from "../../src/solver/spread";
import { expectClose } from "../support/published";
import { randomLine } from "../support/random-line";

function nozzle(pressures: readonly number[], basis: Basis): number {
  if (basis === "last") return pressures[pressures.length - 1];
  return basis === "lowest" ? spreadOf(pressures).lowest : spreadOf(pressures).average;
}

test.each<Basis>(["lowest", "average", "last"])(
  "%s: a line given the inlet found has the target",
  (basis) => {
    let answered = 0;
    fc.assert(
      fc.property(randomLine, fc.double({ min: 2e4, max: 3e5, noNaN: true }), (line, target) => {
        let inlet: number;
        try {
          inlet = inletFor(line, target, basis);
        } catch (error) {
          expect(error).toBeInstanceOf(NoAnswer);
          return;
        }
        answered++;
        const solved = solveLine({ ...line, inletPressure: inlet });
        expectClose(nozzle(solved.nozzlePressure, basis), target, 1e-7);
        // The smallest: a little less inlet pressure misses it.
        const less = solveLine({ ...line, inletPressure: inlet * (1 - 1e-4) });
        expect(nozzle(less.nozzlePressure, basis)).toBeLessThan(target);
      }),
      { numRuns: 60, seed: 8 },
    );
    expect(answered).toBeGreaterThan(5);
  },
);
