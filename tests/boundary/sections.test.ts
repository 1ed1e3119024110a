import { readSections } from "../../src/boundary/sections";
import { readUnits } from "../../src/boundary/units";

const u = readUnits("SI");

test("one bore and one length are one section", () => {
  expect(readSections(u, 50, 30)).toEqual([{ bore: 0.05, length: 30 }]);
});

test("a row or a column gives a section per value, in order", () => {
  const sections = [
    { bore: 0.055, length: 96 },
    { bore: 0.044, length: 84 },
  ];
  expect(readSections(u, [[55], [44]], [[96], [84]])).toEqual(sections);
  expect(readSections(u, [[55, 44]], [[96], [84]])).toEqual(sections);
});

test("blank rows at the end are dropped, also where the host hands them over as 0", () => {
  for (const blank of [null, "", 0]) {
    expect(readSections(u, [[55], [blank]], [[96], [blank]])).toHaveLength(1);
  }
});

test("a size that is listed and not used has no length", () => {
  expect(readSections(u, [[55], [44]], [[96], [0]])[1]).toEqual({ bore: 0.044, length: 0 });
});

test("a different number of values is refused with both numbers", () => {
  expect(() => readSections(u, [[55], [44]], 96)).toThrow(
    "inside and length must have the same number of values; got 2 and 1",
  );
  expect(() => readSections(u, 55, [[96], [84]])).toThrow("got 1 and 2");
});
