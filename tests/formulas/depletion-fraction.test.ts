import { depletionFractionAt } from "../../src/formulas/depletion-fraction";
import { netDepth } from "../../src/formulas/net-depth";

const millimetersADay = (value: number) => value / 1000 / 86400;

test("the table's fraction holds at 5 mm/day and where the use is not known", () => {
  expect(depletionFractionAt(0.55, undefined)).toBe(0.55);
  expect(depletionFractionAt(0.55, millimetersADay(5))).toBeCloseTo(0.55, 12);
});

test("a thirstier day leaves less, an easier one more, between 0.1 and 0.8", () => {
  expect(depletionFractionAt(0.6, millimetersADay(8))).toBeCloseTo(0.48, 12);
  expect(depletionFractionAt(0.6, millimetersADay(2))).toBeCloseTo(0.72, 12);
  expect(depletionFractionAt(0.2, millimetersADay(10))).toBe(0.1);
  expect(depletionFractionAt(0.7, millimetersADay(1))).toBe(0.8);
});

test("net depth is the product", () => {
  expect(netDepth(0.15, 0.8, 0.5)).toBeCloseTo(0.06, 12);
});
