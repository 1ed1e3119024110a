import { chartLaw, headFlow, orificeLaw } from "../../src/formulas/discharge-law";
import type { FrictionLaw } from "../../src/formulas/friction";
import { frictionPressureLoss } from "../../src/formulas/friction";
import { preparedHeadFlow, RAMP } from "../../src/solver/head-flow";
import type { Line } from "../../src/solver/line";
import { March } from "../../src/solver/march";
import { segmentFriction } from "../../src/solver/segment-friction";
import { expectClose } from "../support/published";

const LAWS: readonly FrictionLaw[] = [
  { law: "Hazen–Williams", c: 135 },
  { law: "Darcy" },
  { law: "given", gradient: (flow, bore) => flow ** 1.75 / bore ** 4.75 },
];

test.each(LAWS)("prepared friction ($law) is the formula's, with its derivative", (law) => {
  const bore = [0.05, 0.05, 0.03];
  const length = [10, 20, 15];
  const prepared = segmentFriction(law, bore, length);
  for (const flow of [1e-6, 4e-5, 1e-3]) {
    for (const segment of [0, 1, 2]) {
      const loss = (at: number) => frictionPressureLoss(at, bore[segment], length[segment], law);
      expectClose(prepared.loss(segment, flow), loss(flow), 1e-12);
      const step = flow * 1e-5;
      expectClose(prepared.slope, (loss(flow + step) - loss(flow - step)) / (2 * step), 1e-3);
    }
  }
});

test.each([
  ["an orifice", orificeLaw(5e-7)],
  ["a chart", chartLaw([1e5, 2e5, 4e5], [2e-4, 2.9e-4, 3.5e-4])],
  ["a flat chart", chartLaw([1e5, 2e5], [2e-4, 2e-4])],
])(
  "prepared discharge of %s is the formula's above the ramp, and falls to nothing along it",
  (_, law) => {
    const prepared = preparedHeadFlow(law);
    for (const pressure of [RAMP, 150, 1.5e5, 3e5, 6e5]) {
      const flow = prepared.flow(pressure);
      expectClose(flow, headFlow(law, pressure), 1e-12);
      const step = pressure * 1e-6;
      const rise = headFlow(law, pressure + step) - flow;
      expect(prepared.slope).toBeCloseTo(rise / step, 12);
    }
    expectClose(prepared.flow(RAMP / 4), headFlow(law, RAMP) / 4, 1e-12);
    expectClose(prepared.slope, headFlow(law, RAMP) / RAMP, 1e-12);
    expect(RAMP).toBe(100);
  },
);

const line: Line = {
  inletPressure: 0,
  segmentLength: [10, 12, 14],
  bore: [0.04, 0.04, 0.03],
  elevation: [1, -2, 3],
  riser: 0.5,
  discharge: orificeLaw(6e-7),
  regulatorSet: [2e5, Infinity, 2.5e5],
  regulatorLoss: [3e4, 0, 3e4],
  friction: { law: "Hazen–Williams", c: 150 },
};

test("slopes on the way and at the inlet are derivatives by the pressure at the last head", () => {
  const march = new March(line);
  const at = (start: number) => {
    march.walk(start, Infinity);
    return { inlet: march.inlet, spare: march.spare.slice(), inflow: march.segmentFlow[0] };
  };
  const step = 1;
  const above = at(1.2e5 + step);
  const here = at(1.2e5);
  expectClose(march.slope, (above.inlet - here.inlet) / step, 1e-5);
  expectClose(march.inflowSlope, (above.inflow - here.inflow) / step, 1e-4);
  march.spareSlope.forEach((slope, i) => {
    expectClose(slope, (above.spare[i] - here.spare[i]) / step, 1e-5);
  });
});

test("the limits of a line at rest: dry below one, wet above the other", () => {
  const march = new March(line);
  march.walk(march.dryLimit(), Infinity);
  expect(march.headFlow).toEqual([0, 0, 0]);
  march.walk(march.dryLimit() + 1, Infinity);
  expect(march.headFlow.filter((flow) => flow > 0)).toHaveLength(1);
  march.walk(march.wetLimit(5e4), Infinity);
  expect(Math.min(...march.spare)).toBeGreaterThanOrEqual(5e4);
  // At rest all heads share one level: the last head's spare pressure tells the inlet's.
  const weight = 998.2 * 9.80665;
  expectClose(march.atRest(2e5), 2e5 - weight * 3.5 - 3e4, 1e-12);
  expectClose(march.largestThreshold(), weight * 3.5 + 3e4, 1e-12);
});

test("a walk that passes the ceiling stops there and says how far it came", () => {
  const march = new March(line);
  march.walk(3e5, Infinity);
  expect(march.reached).toBe(0);
  march.walk(3e5, 3.5e5);
  expect(march.inlet).toBe(Infinity);
  expect(march.reached).toBe(2);
});

const weight = 998.2 * 9.80665;
/** Three heads without regulators or riser, at these heights. */
const standing = (...elevation: number[]): March =>
  new March({
    ...line,
    elevation,
    riser: 0,
    regulatorSet: [Infinity, Infinity, Infinity],
    regulatorLoss: [0, 0, 0],
  });

test.each([
  // By how much the last head stands above the lowest head of the line, and below the highest.
  ["all on a hill", [10, 8, 9], 1, 1],
  ["all in a valley", [-8, -10, -9], 1, 1],
  ["rising", [1, 2, 4], 3, 0],
  ["falling", [-1, -2, -4], 0, 3],
])("limits at rest, by hand: %s", (_, heights, aboveLowest, belowHighest) => {
  const march = standing(...heights);
  // The last head has the pressure of the lowest less its height above it.
  expect(march.dryLimit()).toBeCloseTo(-weight * aboveLowest, 6);
  expect(march.wetLimit(5e4)).toBeCloseTo(5e4 + weight * belowHighest, 6);
});

test("what a walk costs: the heads it passed, whether it came to the inlet or not", () => {
  const march = new March(line);
  march.walk(3e5, Infinity);
  expect(march.passed).toBe(3);
  march.walk(3e5, 3.5e5);
  expect(march.passed).toBe(3 + 1);
  march.walk(3e5, Infinity, 1, 1e-3);
  expect(march.passed).toBe(4 + 2);
  march.walk(3e5, 0, 1, 1e-3);
  expect(march.passed).toBe(6 + 1);
});

test("the loss in a segment counts towards the ceiling", () => {
  const march = standing(0, 0, 0);
  march.walk(3e5, Infinity);
  const loss = march.segmentLoss[2];
  march.walk(3e5, 3e5 + loss / 2);
  expect(march.reached).toBe(2);
  march.walk(3e5, 3e5 + loss * 1.001);
  expect(march.reached).toBe(1);
});

test("a nozzle's pressure follows the last head's only while it runs below its set pressure", () => {
  const march = new March(line);
  const nozzles = (start: number) => {
    march.walk(start, Infinity);
    return [0, 1, 2].map((head) => march.nozzlePressure(head));
  };
  // Dry ends, all running, and regulators at their set pressures of 2e5 and 2.5e5.
  for (const start of [-5e4, -1e4, 1e5, 1.9e5, 3e5]) {
    const below = nozzles(start - 1);
    const above = nozzles(start + 1);
    march.walk(start, Infinity);
    for (const head of [0, 1, 2]) {
      expect(march.nozzleSlope(head)).toBeCloseTo((above[head] - below[head]) / 2, 4);
    }
  }
});

test("a head without pressure, or just at its set one, adds nothing to how the flow rises", () => {
  const one: Line = {
    ...line,
    segmentLength: [10],
    bore: [0.04],
    elevation: [0],
    regulatorSet: [2e5],
    regulatorLoss: [3e4],
  };
  const march = new March(one);
  for (const start of [0, 2e5]) {
    march.walk(start, Infinity);
    expect(march.inflowSlope).toBe(0);
    expect(march.nozzleSlope(0)).toBe(0);
  }
  march.walk(1e5, Infinity);
  expectClose(march.inflowSlope, 6e-7 / (2 * Math.sqrt(1e5)), 1e-12);
});

test("a chart that begins as an orifice is still a chart beyond its break", () => {
  const chart = chartLaw([1e4, 4e4, 9e4], [1e-4, 2e-4, 2.5e-4]);
  expectClose(preparedHeadFlow(chart).flow(9e4), 2.5e-4, 1e-12);
});

test.each([
  ["an ordinary chart", chartLaw([1e5, 2e5, 4e5], [2e-4, 2.9e-4, 3.5e-4])],
  ["a chart steeper than the series takes", chartLaw([1e5, 1.2e5, 2e5], [2e-4, 6e-4, 7e-4])],
])("%s, asked in any order, gives the formula's flow and slope", (_, law) => {
  const prepared = preparedHeadFlow(law);
  // Small steps go by the series, large ones and those over a break by the power.
  const pressures = [1.5e5, 1.505e5, 1.52e5, 1.53e5, 1.9999e5, 2e5, 2.0001e5, 1.9999e5, 9e4, 9.1e4];
  for (const pressure of [...pressures, 1.1999e5, 1.2e5, 1.21e5, 1.1999e5, 1.18e5, 5e5, 4.99e5]) {
    const flow = prepared.flow(pressure);
    expectClose(flow, headFlow(law, pressure), 2e-14);
    const step = pressure * 1e-6;
    expectClose(prepared.slope, (headFlow(law, pressure + step / 100) - flow) / (step / 100), 1e-5);
  }
});

test("friction asked in any order gives the formula's loss", () => {
  const law: FrictionLaw = { law: "Hazen–Williams", c: 135 };
  const prepared = segmentFriction(law, [0.05, 0.03], [10, 15]);
  for (const flow of [1e-3, 1.015e-3, 1.017e-3, 9.9e-4, 9.84e-4, 5e-4, 5.01e-4, 1e-3]) {
    expectClose(prepared.loss(0, flow), frictionPressureLoss(flow, 0.05, 10, law), 2e-14);
    expectClose(prepared.loss(1, flow), frictionPressureLoss(flow, 0.03, 15, law), 2e-14);
  }
});
