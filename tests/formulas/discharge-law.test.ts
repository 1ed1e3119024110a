import fc from "fast-check";
import {
  chartLaw,
  headFlow,
  orificeLaw,
  pieceAt,
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

test("the steepest chart that is taken, and one law a piece", () => {
  expect(chartLaw([1, 2], [1, 1024]).exponents).toEqual([10]);
  expect(chartLaw([1, 4, 9], [1, 2, 3]).exponents).toHaveLength(2);
});

test("a break belongs to the piece above it", () => {
  const law = chartLaw([1, 4, 9, 16], [1, 2, 3, 5]);
  expect([0, 1, 3.999, 4, 8.999, 9, 16, 99].map((pressure) => pieceAt(law, pressure))).toEqual([
    0, 0, 0, 1, 1, 2, 2, 2,
  ]);
});

test("a flat chart gives its flow at any pressure, but none without pressure", () => {
  const flat = chartLaw([1, 2], [3, 3]);
  expect(headFlow(flat, 1.5)).toBe(3);
  expect(headFlow(flat, 0)).toBe(0);
  expect(pressureForFlow(flat, 0)).toBe(0);
  expect(() => pressureForFlow(flat, 3)).toThrow("the flow does not tell the pressure");
  expect(() => pressureForFlow(flat, 3.1)).toThrow("discharge gives this flow at no pressure");
});

test("a flow that happens to be the coefficient is no flat chart", () => {
  expect(pressureForFlow(orificeLaw(3), 3)).toBe(1);
});
