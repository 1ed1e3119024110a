import { exactParts, partsToCover, wholeParts } from "../../src/formulas/whole-parts";

test("a quotient that rounding leaves beside a whole number is that number", () => {
  expect(24 / (1.1 + 0.1)).not.toBe(20);
  expect(wholeParts(24, 1.1 + 0.1)).toBe(20);
  expect(partsToCover(0.3, 0.1)).toBe(3);
  expect(exactParts(18.3, 1.525)).toBe(12);
});

test("others are cut or filled up", () => {
  expect(wholeParts(23.99, 12)).toBe(1);
  expect(partsToCover(24.01, 12)).toBe(3);
  expect(exactParts(24.01, 12)).toBeUndefined();
  expect(wholeParts(5, 12)).toBe(0);
  expect(partsToCover(5, 12)).toBe(1);
});

test("the tolerance is a thousand-millionth, of the quotient where it is large", () => {
  expect(wholeParts(1 - 0.9e-9, 1)).toBe(1);
  expect(wholeParts(1 - 1.1e-9, 1)).toBe(0);
  expect(partsToCover(1 + 1.1e-9, 1)).toBe(2);
  expect(partsToCover(1000 + 0.9e-6, 1)).toBe(1000);
  expect(partsToCover(1000 + 1.1e-6, 1)).toBe(1001);
  expect(exactParts(0.9e-9, 1)).toBe(0);
  expect(exactParts(1.1e-9, 1)).toBeUndefined();
});
