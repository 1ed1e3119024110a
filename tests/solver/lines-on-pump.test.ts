import { orificeLaw } from "../../src/formulas/discharge-law";
import { monotoneCurve } from "../../src/formulas/monotone-curve";
import type { Line } from "../../src/solver/line";
import { type LinesOnPump, linesOnPump } from "../../src/solver/lines-on-pump";
import { March } from "../../src/solver/march";
import { expectClose } from "../support/published";

const weight = 998.2 * 9.80665;
const each = (value: number) => new Array<number>(5).fill(value);

/** Five heads on a short wide line that loses next to nothing. */
const wide: Line = {
  inletPressure: 0,
  segmentLength: each(1),
  bore: each(1),
  elevation: each(0),
  riser: 0,
  discharge: orificeLaw(1e-6),
  regulatorSet: each(Infinity),
  regulatorLoss: each(0),
  friction: { law: "Hazen–Williams", c: 150 },
};
/** 40 m at rest, and 10 m less for every 0.01 m³/s. */
const system: LinesOnPump = {
  curve: monotoneCurve([0, 0.02], [40, 20]),
  lift: 10,
  running: 2,
  main: [],
  feeder: [],
  line: wide,
};

test("without friction, a quadratic by hand", () => {
  // With h the head at the inlet, Q = 2 · 5 · 1e-6 √(weight h) and 40 − 1000 Q = 10 + h:
  // with r = √h, r² + b r − 30 = 0, b = 0.01 √weight.
  const b = 0.01 * Math.sqrt(weight);
  const root = (-b + Math.sqrt(b * b + 120)) / 2;
  const found = linesOnPump(system);
  expectClose(found.inletPressure, weight * root * root, 1e-6);
  expectClose(found.flow, 1e-5 * Math.sqrt(weight) * root, 1e-6);
  expectClose(found.pumpHead, 10 + root * root, 1e-6);
  expectClose(found.averageHeadFlow, found.flow / 10, 1e-12);
  expectClose(found.lowestPressure, found.inletPressure, 1e-6);
  expectClose(found.hydrantPressure, found.inletPressure, 1e-12);
});

test("the lowest head is out of reach with its riser and its regulator", () => {
  // 25 m of lift, 12 of ground, 2 of riser and 1.5 of regulator are 40.5 m, and the pump makes 40.
  const high = { ...wide, elevation: each(12), riser: 2, regulatorLoss: each(1.5 * weight) };
  const out = "the pump does not lift the water to the lowest head";
  expect(() => linesOnPump({ ...system, lift: 25, line: high })).toThrow(out);
  expect(() => linesOnPump({ ...system, lift: 24.5, line: high })).toThrow(out);
  expect(linesOnPump({ ...system, lift: 24, line: high }).flow).toBeGreaterThan(0);
});

test("takes a few solved lines, by the slopes of pump, pipes and line", () => {
  const narrow: Line = { ...wide, segmentLength: each(12), bore: each(0.05) };
  const pipes = {
    main: [{ bore: 0.08, length: 200 }],
    feeder: [{ bore: 0.06, length: 100 }],
  };
  // Each line that is solved asks once for the limit at rest.
  const limit = jest.spyOn(March.prototype, "dryLimit");
  try {
    for (const friction of [{ law: "Hazen–Williams", c: 150 }, { law: "Darcy" }] as const) {
      limit.mockClear();
      linesOnPump({ ...system, ...pipes, line: { ...narrow, friction } });
      // Newton doubles the digits; one more line is solved for the answer.
      expect(limit.mock.calls.length).toBeLessThanOrEqual(7);
    }
  } finally {
    limit.mockRestore();
  }
});

test("from a pond above the hydrant the fall adds to what the pump makes", () => {
  // 30 m of fall: 40 − 1000 Q = −30 + h, so r² + b r − 70 = 0.
  const b = 0.01 * Math.sqrt(weight);
  const root = (-b + Math.sqrt(b * b + 280)) / 2;
  const found = linesOnPump({
    ...system,
    lift: -30,
    curve: monotoneCurve([0, 0.02, 0.04], [40, 20, 0]),
  });
  expectClose(found.inletPressure, weight * root * root, 1e-6);
  expectClose(found.pumpHead, root * root - 30, 1e-6);
});

test("where nothing is lost the lines get all that a flat curve makes, less the lift", () => {
  const flat = monotoneCurve([0, 0.02], [40, 40 - 1e-8]);
  const found = linesOnPump({
    ...system,
    curve: flat,
    line: { ...wide, discharge: orificeLaw(1e-9) },
  });
  expectClose(found.inletPressure, weight * 30, 1e-8);
  expectClose(found.pumpHead, 40, 1e-9);
});
