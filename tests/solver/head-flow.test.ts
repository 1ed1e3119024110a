import { chartLaw, headFlow, orificeLaw } from "../../src/formulas/discharge-law";
import { preparedHeadFlow, RAMP } from "../../src/solver/head-flow";
import { expectClose } from "../support/published";

/** How many logarithms a call takes. */
function logarithms(call: () => void): number {
  const log = jest.spyOn(Math, "log");
  try {
    call();
    return log.mock.calls.length;
  } finally {
    log.mockRestore();
  }
}

/** Exponents 0.4 below 2 bar, 0.6 from there to 4, 0.4 above. */
const PRESSURES = [1e5, 2e5, 4e5, 8e5];
const FLOWS = [0.4, 0.6, 0.4].reduce(
  (flows, exponent) => [...flows, flows[flows.length - 1] * 2 ** exponent],
  [2e-4],
);
const chart = chartLaw(PRESSURES, FLOWS);

test("an orifice is a square root, without logarithms", () => {
  const prepared = preparedHeadFlow(orificeLaw(5e-7));
  expect(
    logarithms(() => {
      for (const pressure of [1e4, 1e5, 3e5]) {
        expectClose(prepared.flow(pressure), 5e-7 * Math.sqrt(pressure), 1e-14);
        expectClose(prepared.slope, (0.5 * 5e-7) / Math.sqrt(pressure), 1e-14);
      }
    }),
  ).toBe(0);
  // A single power that is none is not, nor is a chart whose first piece is a square root.
  const power = preparedHeadFlow({ ...orificeLaw(5e-7), exponents: [0.6] });
  expectClose(power.flow(1e5), 5e-7 * 1e3, 1e-13);
  const bent = {
    ...orificeLaw(5e-7),
    breaks: [1e5],
    coefficients: [5e-7, 5e-8],
    exponents: [0.5, 0.7],
  };
  expectClose(preparedHeadFlow(bent).flow(1e6), 5e-8 * 1e6 ** 0.7, 1e-13);
});

test("near the pressure before, a power takes no logarithm; beyond a 64th of it, it takes one", () => {
  const prepared = preparedHeadFlow(chart);
  const from = (pressure: number, next: number) => {
    prepared.flow(1e6);
    prepared.flow(pressure);
    return logarithms(() => expectClose(prepared.flow(next), headFlow(chart, next), 1e-13));
  };
  for (const share of [1, 1.01, 0.99, 1.015, 0.985]) expect(from(3e5, 3e5 * share)).toBe(0);
  for (const share of [1.02, 0.98, 1.3, 0.7]) expect(from(3e5, 3e5 * share)).toBe(1);
  // From one piece of the chart to the next, however near, the other power holds.
  expect(from(1.995e5, 2.005e5)).toBe(1);
  expect(from(2.005e5, 1.995e5)).toBe(1);
  expect(from(3.99e5, 4.01e5)).toBe(1);
  expect(from(4.01e5, 3.99e5)).toBe(1);
  // A break belongs to the piece above it, and the pieces go on beyond the ends of the chart.
  expect(from(2.005e5, 2e5)).toBe(0);
  expect(from(9e5, 9.01e5)).toBe(0);
  expect(from(5e4, 5.01e4)).toBe(0);
});

test("of a power too steep for the series none is near", () => {
  const steep = (exponent: number) => {
    const law = { ...orificeLaw(1), exponents: [exponent] };
    const prepared = preparedHeadFlow(law);
    prepared.flow(3e5);
    return logarithms(() => expectClose(prepared.flow(3.03e5), headFlow(law, 3.03e5), 1e-13));
  };
  expect(steep(2.9)).toBe(0);
  expect(steep(3)).toBe(0);
  expect(steep(3.1)).toBe(1);
  expect(steep(9)).toBe(1);
});

test("below a centimeter of water the flow falls to nothing along a straight line", () => {
  for (const law of [orificeLaw(5e-7), chart]) {
    const prepared = preparedHeadFlow(law);
    const top = headFlow(law, RAMP);
    for (const share of [0, 0.25, 0.5, 0.999999]) {
      expectClose(prepared.flow(RAMP * share), top * share, 1e-12);
      expectClose(prepared.slope, top / RAMP, 1e-12);
    }
    expectClose(prepared.flow(RAMP), top, 1e-12);
    // From the ramp's end on the slope is the power's own.
    expectClose(prepared.slope, (law.exponents[0] * top) / RAMP, 1e-12);
  }
});
