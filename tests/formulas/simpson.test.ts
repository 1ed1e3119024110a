import { integrate } from "../../src/formulas/simpson";

describe("integral by halving", () => {
  test("a cubic is exact, from any start", () => {
    expect(integrate((x) => x ** 3 - 2 * x, 1, 3, 1e-9)).toBeCloseTo(12, 12);
  });

  test("smooth, kinked and steep functions meet the tolerance", () => {
    expect(integrate(Math.exp, 0, 1, 1e-10)).toBeCloseTo(Math.E - 1, 9);
    expect(integrate((x) => Math.abs(x - 0.3), 0, 1, 1e-10)).toBeCloseTo(0.29, 9);
    expect(integrate((x) => 1 / (x + 1e-3), 0, 1, 1e-10)).toBeCloseTo(Math.log(1001), 8);
  });

  test("ends on a jump", () => {
    expect(integrate((x) => (x < 1 / 3 ? 0 : 1), 0, 1, 1e-12)).toBeCloseTo(2 / 3, 5);
  });
});
