import { orificeLaw } from "../../src/formulas/discharge-law";
import { beyondChart, wettedDiameter } from "../../src/solver/plan-design";

const sprinkler = {
  name: "a",
  law: orificeLaw(1e-6),
  lowest: 200,
  highest: 400,
  wetted: [
    { pressure: 200, diameter: 20 },
    { pressure: 300, diameter: 26 },
    { pressure: 400, diameter: 24 },
  ],
};

test("the wetted diameter is straight between rows, level beyond them", () => {
  expect(wettedDiameter(sprinkler, 200)).toBe(20);
  expect(wettedDiameter(sprinkler, 250)).toBe(23);
  expect(wettedDiameter(sprinkler, 100)).toBe(20);
  expect(wettedDiameter(sprinkler, 500)).toBe(24);
});

test("and the least from there up, where it falls again", () => {
  expect(wettedDiameter(sprinkler, 290)).toBe(24);
  expect(wettedDiameter(sprinkler, 300)).toBe(24);
});

test("beyond the chart on either side, and not by rounding", () => {
  expect(beyondChart(sprinkler, 190, 400)).toBe(10);
  expect(beyondChart(sprinkler, 200, 430)).toBe(30);
  expect(beyondChart(sprinkler, 200, 400)).toBe(0);
  expect(beyondChart(sprinkler, 200 * (1 - 1e-12), 400 * (1 + 1e-12))).toBe(0);
});
