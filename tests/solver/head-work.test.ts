import { headWork } from "../../src/solver/head-work";

test("a head by Darcy–Weisbach is worth four by Hazen–Williams", () => {
  expect(headWork({ law: "Hazen–Williams", c: 150 })).toBe(1);
  expect(headWork({ law: "given", gradient: () => 0 })).toBe(1);
  expect(headWork({ law: "Darcy" })).toBe(4);
});
