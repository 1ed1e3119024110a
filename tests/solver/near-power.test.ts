import { NEAR, NearPower, STEEPEST } from "../../src/solver/near-power";

/** (1 + x)^n − 1 without losing digits to the 1. */
const exact = (x: number, exponent: number) => Math.expm1(exponent * Math.log1p(x));

test("the power near a known one, to the last digits", () => {
  for (const exponent of [0, 0.2, 0.5, 0.53, 1, 1.2, 1.852, 2, 2.5, STEEPEST]) {
    const power = new NearPower(exponent);
    for (let step = -16; step <= 16; step++) {
      const x = (step / 16) * NEAR;
      expect(Math.abs(power.less1(x) - exact(x, exponent))).toBeLessThan(4e-15);
    }
  }
});

test("whole exponents by hand", () => {
  const x = 1 / 128;
  expect(new NearPower(0).less1(x)).toBe(0);
  expect(new NearPower(1).less1(x)).toBe(x);
  expect(new NearPower(2).less1(x)).toBe(2 * x + x * x);
  expect(new NearPower(3).less1(x)).toBeCloseTo(3 * x + 3 * x ** 2 + x ** 3, 17);
});

test("every term counts: at the edge each is well above the last digit but one", () => {
  // A 1/2 power has all of them; at four times NEAR they stand out.
  const power = new NearPower(0.5);
  const x = 4 * NEAR;
  const terms = [1 / 2, -1 / 8, 1 / 16, -5 / 128, 7 / 256, -21 / 1024];
  const sum = terms.reduce((total, coefficient, k) => total + coefficient * x ** (k + 1), 0);
  expect(Math.abs(power.less1(x) - sum)).toBeLessThan(1e-17);
  expect(
    Math.abs(power.less1(-x) - terms.reduce((t, c, k) => t + c * (-x) ** (k + 1), 0)),
  ).toBeLessThan(1e-17);
});
