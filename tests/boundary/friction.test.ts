import { readFriction } from "../../src/boundary/friction";

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
