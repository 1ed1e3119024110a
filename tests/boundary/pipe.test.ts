import { readFriction, readSections } from "../../src/boundary/pipe";
import { readUnits } from "../../src/boundary/units";

test("blank, or the 0 of a blank cell, is clean plastic pipe, C 150", () => {
  for (const blank of [null, undefined, "", 0, [[""]]]) {
    expect(readFriction(blank)).toEqual({ law: "Hazen–Williams", c: 150 });
  }
});

test("a number is C, to the bounds", () => {
  expect(readFriction(50)).toEqual({ law: "Hazen–Williams", c: 50 });
  expect(readFriction([[200]])).toEqual({ law: "Hazen–Williams", c: 200 });
});

test("Darcy in any spelling", () => {
  for (const text of ["Darcy", "darcy", "DARCY-WEISBACH", "Darcy–Weisbach", "darcy weisbach"]) {
    expect(readFriction(text)).toMatchObject({ law: "Darcy" });
  }
});

test.each([[49], [201], [-150], ["0.0015"], ["Hazen"], [true]])("%p is refused", (cell) => {
  expect(() => readFriction(cell)).toThrow(
    /^friction must be a Hazen–Williams C from 50 to 200, or "Darcy"; got /,
  );
});

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
