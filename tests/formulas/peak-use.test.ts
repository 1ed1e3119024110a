import { peakPeriodUse } from "../../src/formulas/peak-use";
import { DAY, INCH } from "../../src/ground/unit-factors";

const inches = (month: number, net: number) =>
  (peakPeriodUse(month * INCH, net * INCH) * DAY) / INCH;

test("example, by hand", () => {
  expect(inches(7.5, 2)).toBeCloseTo(0.28721, 5);
});

test("the shallower the irrigation, the higher the peak", () => {
  expect(inches(7.5, 1)).toBeGreaterThan(inches(7.5, 2));
  expect(inches(7.5, 2)).toBeGreaterThan(inches(7.5, 4));
});

test("never below the month's average day, where the equation falls under it", () => {
  expect(inches(2, 6)).toBeCloseTo(2 / 31, 12);
  expect(inches(0, 2)).toBe(0);
});
