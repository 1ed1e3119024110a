import { effectiveRain } from "../../src/formulas/effective-rain";
import { INCH } from "../../src/ground/unit-factors";

const inches = (rain: number, use: number, net: number) =>
  effectiveRain(rain * INCH, use * INCH, net * INCH) / INCH;

test("example, by hand", () => {
  expect(inches(4, 8, 3)).toBeCloseTo(3.2971, 4);
});

test("a dry month has none, and a drizzle less than the constant counts as none", () => {
  expect(inches(0, 8, 3)).toBe(0);
  expect(inches(0.1, 8, 3)).toBe(0);
  expect(inches(0.12, 8, 3)).toBeGreaterThan(0);
});

test("never above the rain or the use", () => {
  expect(inches(1, 12, 6)).toBeCloseTo(1, 12);
  expect(inches(9, 2, 3)).toBeCloseTo(2, 12);
  expect(inches(5, 0, 3)).toBe(0);
});

test("soil deeper than the table has the table's last factor", () => {
  expect(inches(4, 3, 7)).toBeLessThan(4);
  expect(inches(4, 3, 12)).toBe(inches(4, 3, 7));
  expect(inches(4, 3, 6.9)).toBeLessThan(inches(4, 3, 7));
});
