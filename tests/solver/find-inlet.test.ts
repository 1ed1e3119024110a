import fc from "fast-check";
import { orificeLaw } from "../../src/formulas/discharge-law";
import { WATER_WEIGHT } from "../../src/ground/constants";
import { NoAnswer } from "../../src/ground/domain-error";
import { type Basis, inletFor } from "../../src/solver/find-inlet";
import type { Line } from "../../src/solver/line";
import { March } from "../../src/solver/march";
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

/** Level, short and wide: next to nothing is lost, so that every nozzle has the inlet's pressure. */
function wideLine(regulatorSet: readonly number[]): Line {
  const each = (value: number) => regulatorSet.map(() => value);
  return {
    inletPressure: 0,
    segmentLength: each(1),
    bore: each(1),
    elevation: each(0),
    riser: 0,
    discharge: orificeLaw(5e-7),
    regulatorSet,
    regulatorLoss: each(0),
    friction: { law: "Darcy" },
  };
}

test("heads without a regulator make up for the regulated ones in the average", () => {
  // Eight at 100 kPa and two at p: (8 · 100 + 2 p)/10 = 180 gives p = 500.
  const set = [...new Array<number>(8).fill(1e5), Infinity, Infinity];
  expectClose(inletFor(wideLine(set), 1.8e5, "average"), 5e5, 1e-6);
  // And with the free ones nearest the inlet.
  expectClose(inletFor(wideLine([...set].reverse()), 1.8e5, "average"), 5e5, 1e-6);
});

test("regulated heads alone reach the average of what their regulators let through, and no more", () => {
  // 100 and p: (100 + p)/2 = 140 gives 180.
  expectClose(inletFor(wideLine([1e5, 2e5]), 1.4e5, "average"), 1.8e5, 1e-6);
  expect(() => inletFor(wideLine([1e5, 2e5]), 1.51e5, "average")).toThrow(
    "target is above what the regulators let through",
  );
  expect(() => inletFor(wideLine([1e5, 2e5]), 1.1e5, "lowest")).toThrow("regulators let through");
  expect(() => inletFor(wideLine([2e5, 1e5]), 1.1e5, "last")).toThrow("regulators let through");
});

test("ground that falls far enough needs no inlet pressure, and says so", () => {
  const line = { ...wideLine([Infinity, Infinity]), elevation: [-30, -30] };
  // 30 m of water are 294 kPa.
  for (const basis of ["last", "lowest", "average"] as const) {
    expect(() => inletFor(line, 2e5, basis)).toThrow(
      "the fall of the ground alone gives more than target",
    );
    expect(inletFor(line, 3.5e5, basis)).toBeGreaterThan(0);
  }
});

test("ground that falls just enough leaves no inlet pressure either", () => {
  // So little flow that no friction shows beside the pressure: the inlet comes out at 0, not near it.
  const trickle = { ...wideLine([Infinity]), elevation: [-10], discharge: orificeLaw(1e-30) };
  for (const basis of ["last", "lowest", "average"] as const) {
    expect(() => inletFor(trickle, WATER_WEIGHT * 10, basis)).toThrow(
      "the fall of the ground alone",
    );
    expectClose(inletFor(trickle, WATER_WEIGHT * 11, basis), WATER_WEIGHT, 1e-9);
  }
});

test("regulators all at the target give it from the least inlet pressure on", () => {
  for (const basis of ["last", "lowest", "average"] as const) {
    expectClose(inletFor(wideLine([2e5, 2e5]), 2e5, basis), 2e5, 1e-6);
  }
  // Heads that make up for regulated ones take many times the target.
  const set = [...new Array<number>(49).fill(1e4), Infinity];
  expectClose(inletFor(wideLine(set), 2e4, "average"), 50 * 2e4 - 49 * 1e4, 1e-6);
});

test.each<Basis>(["lowest", "average", "last"])("%s: takes a few walks, by its slope", (basis) => {
  const heads = 20;
  const each = <T>(value: T) => new Array<T>(heads).fill(value);
  const line: Line = {
    ...wideLine(each(Infinity)),
    segmentLength: each(12),
    bore: each(0.05),
    regulatorSet: each(0).map((_, i) => (i % 4 === 0 ? 2.2e5 : Infinity)),
    friction: { law: "Hazen–Williams", c: 150 },
  };
  const walk = jest.spyOn(March.prototype, "walk");
  try {
    inletFor(line, 2e5, basis);
    expect(walk.mock.calls.length).toBeLessThanOrEqual(6);
  } finally {
    walk.mockRestore();
  }
});
