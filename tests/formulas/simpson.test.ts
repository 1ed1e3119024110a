import { integrate } from "../../src/formulas/simpson";

describe("integral by halving", () => {
  test("a cubic is exact, from any start", () => {
    expect(integrate((x) => x ** 3 - 2 * x, 1, 3, 1e-9)).toBeCloseTo(12, 12);
  });

  test("smooth, kinked and steep functions meet the tolerance", () => {
    expect(integrate(Math.exp, 0, 1, 1e-10)).toBeCloseTo(Math.E - 1, 9);
    expect(integrate((x) => Math.abs(x - 0.3), 0, 1, 1e-10)).toBeCloseTo(0.29, 8);
    expect(integrate((x) => 1 / (x + 1e-2), 0, 1, 1e-10)).toBeCloseTo(Math.log(101), 8);
  });

  test("ends on a jump, within its narrowest halves", () => {
    expect(integrate((x) => (x < 1 / 3 ? 0 : 1), 0, 1, 1e-12)).toBeCloseTo(2 / 3, 3);
  });

  test("asks for a bounded number of values, whatever it is given", () => {
    let asked = 0;
    const rough = (x: number) => {
      asked++;
      return Math.sin(1e9 * x) + 2;
    };
    expect(integrate(rough, 0, 1, 1e-15)).toBeGreaterThan(0);
    expect(asked).toBeLessThanOrEqual(2 ** 14 + 1);
    asked = 0;
    expect(integrate((x) => (asked++, x === 0.5 ? NaN : 1), 0, 1, 1e-9)).toBeNaN();
    expect(asked).toBe(5);
  });

  test("a cubic needs no more than the five values that show it is one, from any start", () => {
    let asked = 0;
    integrate((x) => (asked++, x ** 3), 1, 3, 1e-9);
    expect(asked).toBe(5);
  });

  test("with the last correction even the fifth power is exact at once", () => {
    // Simpson's rule on halves and Richardson's fifteenth make Boole's rule.
    expect(integrate((x) => x ** 4, 0, 1, 1)).toBeCloseTo(1 / 5, 15);
    expect(integrate((x) => x ** 5, 0, 1, 1)).toBeCloseTo(1 / 6, 15);
  });

  test("each half gets half the tolerance, which is a share of the integral", () => {
    // For x⁴ a stretch of width h differs from its halves by h⁵/128, and may by 15 T h: it is left
    // whole where h⁴ ≤ 1920 T. With T = 1/(32 · 1920) that is h = ¼, so 17 values are asked for.
    // T is a share of the first estimate, (0 + 4/16 + 1)/6 = 5/24.
    for (const scale of [1e-6, 1, 1e6]) {
      let asked = 0;
      integrate((x) => (asked++, scale * x ** 4), 0, 1, 24 / 5 / (32 * 1920));
      expect(asked).toBe(17);
    }
  });
});
