import { readTyped } from "../../src/trial/typed";

test.each([
  ["45", 45],
  [" 1,234.5 ", 1234.5],
  ["-0.5", -0.5],
  ["", null],
  ["  ", null],
  ["Darcy", "Darcy"],
  ["12 ft", "12 ft"],
  ["Infinity", "Infinity"],
])("%p typed is %p", (text, value) => {
  expect(readTyped(text)).toBe(value);
});
