import fc from "fast-check";
import { WATER_WEIGHT } from "../../src/ground/constants";
import { chartLaw, headFlow, orificeLaw } from "../../src/formulas/discharge-law";
import { NoAnswer } from "../../src/ground/domain-error";
import { frictionPressureLoss } from "../../src/formulas/friction";
import type { Line } from "../../src/solver/line";
import { waterAt } from "../../src/solver/dry-heads";
import { type SolvedLine, crests, solveLine } from "../../src/solver/solve-line";
import { expectClose } from "../support/published";
import { randomLine } from "../support/random-line";

/** A plain level line of ten heads, 5 gpm each at 300 kPa or so. */
const plain: Line = {
  inletPressure: 3e5,
  segmentLength: new Array<number>(10).fill(12),
  bore: new Array<number>(10).fill(0.04),
  elevation: new Array<number>(10).fill(0),
  riser: 0,
  discharge: orificeLaw(3e-4 / Math.sqrt(3e5)),
  regulatorSet: new Array<number>(10).fill(Infinity),
  regulatorLoss: new Array<number>(10).fill(0),
  friction: { law: "Hazen–Williams", c: 150 },
};

/** As an expectation, without its cost: the properties make hundreds of thousands of them. */
function atMost(actual: number, bound: number): void {
  if (!(actual <= bound)) throw new Error(`expected at most ${bound}, got ${actual}`);
}

/** Beyond the head that water does not pass there is none. */
function expectEmpty(
  { headFlow, segmentFlow, segmentLoss, linePressure }: SolvedLine,
  head: number,
) {
  for (const values of [headFlow, segmentFlow, segmentLoss, linePressure]) {
    atMost(Math.max(...values.slice(head).map(Math.abs)), 0);
  }
}

/** Every equation of a line, put together from the formulas and not from the march. */
function expectSolved(solved: SolvedLine): void {
  const { line, linePressure, nozzlePressure, segmentFlow, segmentLoss } = solved;
  const heads = line.bore.length;
  const scale = Math.max(
    line.inletPressure,
    ...line.elevation.map((height) => WATER_WEIGHT * (Math.abs(height) + line.riser) + 34500),
  );
  for (let i = 0; i < heads; i++) {
    // What leaves: a head's flow is its discharge at its nozzle's pressure.
    const under = linePressure[i] - WATER_WEIGHT * line.riser;
    const nozzle = Math.max(0, Math.min(line.regulatorSet[i], under - line.regulatorLoss[i]));
    atMost(Math.abs(nozzlePressure[i] - nozzle), 1e-9 * scale);
    if (nozzle > 100) {
      expectClose(solved.headFlow[i], headFlow(line.discharge, nozzlePressure[i]), 1e-9);
    }
    if (nozzle === 0) atMost(solved.headFlow[i], 1e-6);
    // Mass: the segment's flow is the head's and the next segment's.
    const onward = i + 1 < heads ? segmentFlow[i + 1] : 0;
    atMost(Math.abs(segmentFlow[i] - onward - solved.headFlow[i]), 1e-10 * segmentFlow[0]);
    // Air: nowhere less than its pressure.
    atMost(0, linePressure[i]);
    const before = i === 0 ? line.inletPressure : linePressure[i - 1];
    const climb = line.elevation[i] - (i === 0 ? 0 : line.elevation[i - 1]);
    const water = waterAt(solved, i);
    if (water === "empty") {
      expectEmpty(solved, i);
      // Where the water ends, the ground stands above what is left of the pressure.
      const ends = i === 0 || waterAt(solved, i - 1) !== "empty";
      if (ends) atMost(before - WATER_WEIGHT * climb, 1e-9 * scale);
      continue;
    }
    // Energy along the segment: friction, and in one that runs part full all that its fall gives.
    const loss = frictionPressureLoss(
      segmentFlow[i],
      line.bore[i],
      line.segmentLength[i],
      line.friction,
    );
    const full = i === 0 || waterAt(solved, i - 1) !== "part full";
    if (full) atMost(Math.abs(segmentLoss[i] - loss), 1e-9 * loss);
    else atMost(loss * (1 - 1e-9), segmentLoss[i]);
    const closes = before - segmentLoss[i] - WATER_WEIGHT * climb - linePressure[i];
    atMost(Math.abs(closes), 1e-9 * scale);
  }
  expect(solved.residual).toBeLessThan(1e-9);
  expect(solved.inflow).toBe(segmentFlow[0]);
}

test("every equation holds on any line", () => {
  fc.assert(
    fc.property(randomLine, (line) => expectSolved(solveLine(line))),
    { numRuns: 300, seed: 3 },
  );
});

test("pressure falls along a level line", () => {
  fc.assert(
    fc.property(randomLine, (line) => {
      const level = { ...line, elevation: line.elevation.map(() => 0) };
      const { linePressure } = solveLine(level);
      let before = level.inletPressure;
      for (const pressure of linePressure) {
        atMost(pressure, before + 1e-9 * line.inletPressure);
        before = pressure;
      }
    }),
    { numRuns: 150, seed: 4 },
  );
});

test("more inlet pressure never gives less flow or pressure anywhere", () => {
  fc.assert(
    fc.property(randomLine, fc.double({ min: 1.001, max: 2, noNaN: true }), (line, factor) => {
      const less = solveLine(line);
      const more = solveLine({ ...line, inletPressure: line.inletPressure * factor });
      atMost(less.inflow * (1 - 1e-8), more.inflow);
      more.linePressure.forEach((pressure, i) => {
        atMost(less.linePressure[i] - 1e-7 * line.inletPressure, pressure);
      });
    }),
    { numRuns: 150, seed: 5 },
  );
});

test("a wider bore anywhere raises the last head and the inflow: what the changeover's bounds rest on", () => {
  fc.assert(
    fc.property(randomLine, fc.nat(), (line, place) => {
      const heads = line.bore.length;
      const at = place % heads;
      const narrow = solveLine(line);
      const wide = solveLine({
        ...line,
        bore: line.bore.map((bore, i) => (i === at ? bore * 1.3 : bore)),
      });
      const slack = 1e-7 * line.inletPressure;
      atMost(narrow.linePressure[heads - 1] - slack, wide.linePressure[heads - 1]);
      atMost(narrow.inflow * (1 - 1e-8), wide.inflow);
      for (let i = 0; i < at; i++) {
        atMost(wide.linePressure[i], narrow.linePressure[i] + slack);
      }
    }),
    { numRuns: 150, seed: 6 },
  );
});

test("a line of the same shape at four times the pressure gives twice the flow where friction scales too", () => {
  // With q ~ √p the flow doubles; loss ~ Q^1.852 must then grow fourfold: C takes up the rest.
  const once = solveLine(plain);
  const c = 150 * 2 ** (1 - 2 / 1.852);
  const scaled = solveLine({
    ...plain,
    inletPressure: 12e5,
    friction: { law: "Hazen–Williams", c },
  });
  expectClose(scaled.inflow, 2 * once.inflow, 1e-8);
  expectClose(scaled.linePressure[9], 4 * once.linePressure[9], 1e-8);
});

describe("special lines", () => {
  test("one head: the inlet's pressure less one segment", () => {
    const one = solveLine({
      ...plain,
      segmentLength: [50],
      bore: [0.02],
      elevation: [0],
      regulatorSet: [Infinity],
      regulatorLoss: [0],
    });
    expectSolved(one);
    expect(one.headFlow).toHaveLength(1);
  });

  test("five hundred heads, and still to the promised residual", () => {
    const many = (value: number) => new Array<number>(500).fill(value);
    const solved = solveLine({
      ...plain,
      segmentLength: many(12),
      bore: many(0.2),
      elevation: many(0).map((_, i) => Math.sin(i / 30)),
      regulatorSet: many(Infinity),
      regulatorLoss: many(0),
    });
    expectSolved(solved);
    expect(Math.min(...solved.headFlow)).toBeGreaterThan(0);
  });

  test("uphill beyond the pressure: the upper heads are dry and the line stands still there", () => {
    const solved = solveLine({
      ...plain,
      inletPressure: 1e5,
      elevation: plain.elevation.map((_, i) => 1.5 * (i + 1)),
    });
    expectSolved(solved);
    const dry = solved.headFlow.indexOf(0);
    expect(dry).toBeGreaterThan(2);
    expect(solved.headFlow.slice(dry).every((flow) => flow === 0)).toBe(true);
    expect(solved.nozzlePressure[dry]).toBe(0);
    expect(solved.linePressure[9]).toBe(0);
    expect(waterAt(solved, 9)).toBe("empty");
  });

  test("downhill the lowest pressure is inside the line", () => {
    const solved = solveLine({
      ...plain,
      bore: plain.bore.map(() => 0.035),
      elevation: plain.elevation.map((_, i) => -0.6 * (i + 1)),
    });
    expectSolved(solved);
    const lowest = solved.linePressure.indexOf(Math.min(...solved.linePressure));
    expect(lowest).toBeGreaterThan(0);
    expect(lowest).toBeLessThan(9);
  });

  test("all dry: no flow anywhere, the whole line at rest", () => {
    const solved = solveLine({ ...plain, inletPressure: 1e4, riser: 5 });
    expectSolved(solved);
    expect(solved.inflow).toBe(0);
    expect(solved.linePressure).toEqual(new Array(10).fill(1e4));
  });

  test("regulated heads that all have enough give the same flow", () => {
    const solved = solveLine({
      ...plain,
      inletPressure: 6e5,
      riser: 1,
      regulatorSet: plain.regulatorSet.map(() => 2e5),
      regulatorLoss: plain.regulatorLoss.map(() => 34500),
    });
    expectSolved(solved);
    expect(new Set(solved.headFlow).size).toBe(1);
    expect(solved.nozzlePressure).toEqual(new Array(10).fill(2e5));
  });

  test("a flat chart (exponent 0) runs dry without a jump that hangs", () => {
    const flat = chartLaw([1e5, 2e5], [3e-4, 3e-4]);
    for (const inletPressure of [1e3, 1e4, 3e4, 1e5, 5e5]) {
      expectSolved(solveLine({ ...plain, inletPressure, discharge: flat }));
    }
  });
});

describe("wild input", () => {
  const extreme = (min: number, max: number) =>
    fc.double({ min, max, noNaN: true }).map((exponent) => 10 ** exponent);

  test("gives finite numbers or says that there is no answer", () => {
    fc.assert(
      fc.property(
        randomLine,
        extreme(-3, 13),
        extreme(-9, 9),
        extreme(-6, 9),
        extreme(-3, 6),
        fc.constantFrom(0, 1e-6, 1, 1e6),
        (line, inletPressure, bore, length, ground, riser) => {
          let solved: SolvedLine;
          try {
            solved = solveLine({
              ...line,
              inletPressure,
              riser,
              bore: line.bore.map((own) => own * bore),
              segmentLength: line.segmentLength.map((own) => own * length),
              elevation: line.elevation.map((own) => own * ground),
            });
          } catch (error) {
            expect(error).toBeInstanceOf(NoAnswer);
            return;
          }
          const numbers = [solved.linePressure, solved.headFlow, solved.segmentLoss].flat();
          expect(numbers.every(Number.isFinite)).toBe(true);
          expect(solved.residual).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 400, seed: 7 },
    );
  });

  test.each([1e-300, 1e-30, 1e-9])("a bore of %p m ends", (bore) => {
    const act = () => solveLine({ ...plain, bore: plain.bore.map(() => bore), riser: 0.5 });
    try {
      expect(act().inflow).toBeLessThan(1e-9);
    } catch (error) {
      expect(error).toBeInstanceOf(NoAnswer);
    }
  });
});

test("an ordinary line takes three or four walks, level, uphill and downhill", () => {
  const sloping = (climb: number) => plain.elevation.map((_, i) => climb * (i + 1));
  for (const climb of [0, 0.5, -0.5]) {
    for (const friction of [plain.friction, { law: "Darcy" } as const]) {
      const { passed } = solveLine({ ...plain, elevation: sloping(climb), friction });
      expect(passed / 10).toBeLessThanOrEqual(4);
    }
  }
  // Three where little is lost on the way: a guess, and two steps by the slope.
  const wide = { ...plain, bore: plain.bore.map(() => 0.06) };
  for (const climb of [-1, -0.5, 0, 0.5, 1]) {
    expect(solveLine({ ...wide, elevation: sloping(climb) }).passed / 10).toBe(3);
  }
});

test("how fast the inflow rises with the inlet pressure, against a difference", () => {
  const inflow = (inletPressure: number) => solveLine({ ...plain, inletPressure }).inflow;
  const difference = (inflow(3e5 + 100) - inflow(3e5 - 100)) / 200;
  expectClose(solveLine(plain).inflowSlope, difference, 1e-5);
});

test("crests: where the ground falls on, the last of a level top, and not along a fall", () => {
  expect(crests([0, 1, 2, 1, 0])).toEqual([2]);
  expect(crests([0, 2, 2, 1])).toEqual([2]);
  expect(crests([3, 2, 1])).toEqual([0]);
  expect(crests([0, 1, 2])).toEqual([]);
  expect(crests([1, 1, 1])).toEqual([]);
  expect(crests([0, 3, 1, 2, 0])).toEqual([1, 3]);
  expect(crests([2, 1, 1, 0])).toEqual([0, 2]);
  expect(crests([5])).toEqual([]);
});
