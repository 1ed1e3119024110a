import { foldCatch } from "../../src/formulas/fold";

test("each can is counted from the line, to its side", () => {
  // Cans −2 … 2: at moves of five steps, place 3 is two steps before the next line, place 4 one.
  expect(foldCatch([1, 2, 3, 4, 5], 1, 5)).toEqual([3, 4, 5, 1, 2]);
  // At moves of three steps: 0; 1 and −2; 2 and −1.
  expect(foldCatch([1, 2, 3, 4, 5], 1, 3)).toEqual([3, 4 + 1, 5 + 2]);
});
