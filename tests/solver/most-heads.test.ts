import fc from "fast-check";
import { NoAnswer } from "../../src/ground/domain-error";
import { chartLaw, orificeLaw } from "../../src/formulas/discharge-law";
import { firstHeads, type Line } from "../../src/solver/line";
import { keepsWithin } from "../../src/solver/line-limits";
import { mostHeads } from "../../src/solver/most-heads";
import { solveLine } from "../../src/solver/solve-line";
import { randomLine } from "../support/random-line";

/** Gentle lines, on which the search leaps: fall and friction, regulators that take hold on the way. */
const gentleLine: fc.Arbitrary<Line> = fc
  .record({
    heads: fc.integer({ min: 20, max: 150 }),
    slope: fc.double({ min: -0.05, max: 0.03, noNaN: true }),
    crest: fc.integer({ min: 5, max: 150 }),
    bore: fc.constantFrom(0.05, 0.07, 0.1),
    inletPressure: fc.double({ min: 2e5, max: 5e5, noNaN: true }),
    riser: fc.constantFrom(0, 0.5),
    set: fc.constantFrom(Infinity, 2.5e5),
  })
  .map(({ heads, slope, crest, bore, inletPressure, riser, set }) => {
    const alike = (value: number) => new Array<number>(heads).fill(value);
    return {
      inletPressure,
      riser,
      segmentLength: alike(12),
      bore: alike(bore),
      elevation: alike(0).map((_, i) => slope * 12 * (crest - Math.abs(crest - i))),
      discharge: orificeLaw(2e-4 / Math.sqrt(3e5)),
      regulatorSet: alike(set),
      regulatorLoss: alike(set === Infinity ? 0 : 34500),
      friction: { law: "Hazen–Williams", c: 150 },
    };
  });

test("leaps over no line that fails", () => {
  const limits = fc.record({
    variation: fc.double({ min: 0.01, max: 0.4, noNaN: true }),
    lowest: fc.constantFrom(0, 2e5),
    speed: fc.constantFrom(Infinity, 2),
  });
  let answered = 0;
  fc.assert(
    fc.property(gentleLine, limits, (line, within) => {
      const fails = line.bore.findIndex(
        (_, i) => !keepsWithin(within, solveLine(firstHeads(line, i + 1))),
      );
      if (fails === 0) return;
      if (fails > 4) answered++;
      expect(mostHeads(line, within)).toBe(fails < 0 ? line.bore.length : fails);
    }),
    { numRuns: 300, seed: 4 },
  );
  expect(answered).toBeGreaterThan(100);
});

test("is the head before the first line that fails, whatever longer ones do", () => {
  const limits = fc.record({
    variation: fc.constantFrom(0.1, 0.2, 0.5),
    lowest: fc.constantFrom(0, 1e5),
    speed: fc.constantFrom(Infinity, 1.5),
  });
  let answered = 0;
  fc.assert(
    fc.property(randomLine, limits, (line, within) => {
      const passes = line.bore.map((_, i) =>
        keepsWithin(within, solveLine(firstHeads(line, i + 1))),
      );
      const firstFailing = passes.indexOf(false);
      if (firstFailing === 0) {
        expect(() => mostHeads(line, within)).toThrow(NoAnswer);
        return;
      }
      answered++;
      expect(mostHeads(line, within)).toBe(firstFailing < 0 ? passes.length : firstFailing);
    }),
    { numRuns: 120, seed: 9 },
  );
  expect(answered).toBeGreaterThan(30);
});

/** From 3.1 MPa down to some 1e-21 Pa: the three heads together have no answer. */
const absurd: Line = {
  inletPressure: 3.1e6,
  riser: 0,
  segmentLength: [2.5, 8000, 0.9],
  bore: [0.14, 0.0011, 6.6],
  elevation: [0, 1, 20],
  discharge: chartLaw([0.11, 0.22], [0.0012, 0.0012 * 2 ** 9]),
  regulatorSet: [Infinity, Infinity, Infinity],
  regulatorLoss: [0, 0, 0],
  friction: { law: "Hazen–Williams", c: 150 },
};

test("a longer line without an answer takes nothing from the shorter ones", () => {
  expect(() => solveLine(absurd)).toThrow(/too many orders of magnitude/);
  expect(mostHeads(absurd, { variation: 9, lowest: 0, speed: Infinity })).toBe(1);
});

test("where one head alone does not keep within the limits there is none, and a way out is said", () => {
  expect(() => mostHeads(absurd, { variation: 9, lowest: 3.2e6, speed: Infinity })).toThrow(
    "even a line of one head does not keep within the limits: raise the inlet pressure, use larger tubing or looser limits",
  );
});

test("what is no matter of the line itself is not swallowed", () => {
  const broken = { ...absurd, friction: { law: "none" } } as unknown as Line;
  expect(() => mostHeads(broken, { variation: 9, lowest: 0, speed: Infinity })).toThrow(TypeError);
});
