import type * as Axes from "../../src/screen/axis";
import { bundled } from "../support/bundled";

const { axis } = bundled<typeof Axes>("axis", "src/screen");

test("a value lies in proportion between the ends, and is found again at its place", () => {
  // Upward on a screen, where places are counted from the top.
  const pressure = axis([40, 50], [224, 14]);
  expect(pressure.at(40)).toBe(224);
  expect(pressure.at(50)).toBe(14);
  expect(pressure.at(42.5)).toBe(171.5);
  expect(pressure.valueAt(171.5)).toBe(42.5);
  expect([pressure.from, pressure.to]).toEqual([224, 14]);
});

test("numbers beside it are round, with the digits that their step needs", () => {
  expect(
    axis([43.1, 44.1], [0, 100])
      .ticks(5)
      .map(([, text]) => text),
  ).toEqual(["43.2", "43.4", "43.6", "43.8", "44.0"]);
  expect(axis([0, 1200], [0, 100]).ticks(3)).toEqual([
    [0, "0"],
    [500, "500"],
    [1000, "1,000"],
  ]);
});

test("where all is one value, it has a place", () => {
  expect(axis([3, 3], [10, 90]).at(3)).toBe(10);
  expect(axis([3, 3], [10, 90]).ticks(5)).toEqual([[3, "3"]]);
});
