import fc from "fast-check";
import {
  chartLaw,
  headFlow,
  headFlowSlope,
  orificeLaw,
  pressureForFlow,
} from "../../src/formulas/discharge-law";

test("an orifice's law is K √p over every pressure", () => {
  const law = orificeLaw(3);
  expect(law).toEqual({
    breaks: [],
    coefficients: [3],
    exponents: [0.5],
    lowest: 0,
    highest: Infinity,
  });
  expect(headFlow(law, 16)).toBe(12);
  expect(headFlow(law, 0)).toBe(0);
  expect(headFlow(law, -5)).toBe(0);
});

test("a chart of one row is an orifice that knows the pressure it was measured at", () => {
  const law = chartLaw([16], [12]);
  expect(law.coefficients).toEqual([3]);
  expect([law.lowest, law.highest]).toEqual([16, 16]);
});

test("a chart keeps its range and breaks only between its pieces", () => {
  const law = chartLaw([1, 4, 9, 16], [1, 2, 3, 5]);
  expect(law.breaks).toEqual([4, 9]);
  expect([law.lowest, law.highest]).toEqual([1, 16]);
  for (const [pressure, flow] of [
    [1, 1],
    [4, 2],
    [9, 3],
    [16, 5],
  ]) {
    expect(headFlow(law, pressure)).toBeCloseTo(flow, 12);
  }
});

test("the slope is that of the piece, against a central difference", () => {
  const law = chartLaw([100, 200, 400], [10, 16, 20]);
  for (const pressure of [50, 150, 250, 900]) {
    const step = pressure * 1e-5;
    const difference =
      (headFlow(law, pressure + step) - headFlow(law, pressure - step)) / (2 * step);
    const slope = headFlowSlope(law, pressure, headFlow(law, pressure));
    expect(slope / difference).toBeCloseTo(1, 8);
  }
});

test("any rising chart, any pressure: the flow tells the pressure again", () => {
  const step = fc.double({ min: 1.05, max: 2, noNaN: true });
  const rise = fc.double({ min: 1.01, max: 1.5, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(step, rise), { minLength: 0, maxLength: 5 }),
      fc.double({ min: 1e4, max: 1e6, noNaN: true }),
      (steps, pressure) => {
        const pressures = [1e5];
        const flows = [1e-4];
        for (const [stretch, growth] of steps) {
          pressures.push(pressures[pressures.length - 1] * stretch);
          flows.push(flows[flows.length - 1] * growth);
        }
        const law = chartLaw(pressures, flows);
        expect(pressureForFlow(law, headFlow(law, pressure)) / pressure).toBeCloseTo(1, 7);
      },
    ),
  );
});

test("refuses a chart steeper than any nozzle", () => {
  expect(() => chartLaw([1, 2, 4], [1, 2, 2 * 2 ** 10.01])).toThrow(
    "discharge rises too steeply between rows 2 and 3 (by rising pressure): check the chart",
  );
  expect(chartLaw([1, 2], [1, 2 ** 9.99]).exponents[0]).toBeCloseTo(9.99, 10);
});
