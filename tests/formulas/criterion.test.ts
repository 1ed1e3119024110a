import { excess, shortfall } from "../../src/formulas/criterion";

test("on the right side of the bound there is no difference", () => {
  expect(excess(4, 5)).toBe(0);
  expect(excess(5, 5)).toBe(0);
  expect(shortfall(6, 5)).toBe(0);
  expect(shortfall(5, 5)).toBe(0);
  expect(excess(1e9, Infinity)).toBe(0);
});

test("beyond it, the difference is what is too much or too little", () => {
  expect(excess(7, 5)).toBe(2);
  expect(shortfall(3, 5)).toBe(2);
  expect(shortfall(-1, 5)).toBe(6);
});

test("a thousand-millionth is rounding, more is not", () => {
  expect(excess(1 + 0.9e-9, 1)).toBe(0);
  expect(excess(1 + 1.1e-9, 1)).toBeGreaterThan(0);
  expect(shortfall(1 - 0.9e-9, 1)).toBe(0);
  expect(shortfall(1 - 1.1e-9, 1)).toBeGreaterThan(0);
});

test("rounding's own bound still keeps the criterion", () => {
  expect(excess(1 + 1e-9, 1)).toBe(0);
  expect(shortfall(1 - 1e-9, 1)).toBe(0);
});
