import { headsThatFit } from "../../src/formulas/heads-that-fit";

test.each([
  ["first head and three more", 35, 10, 5, 4],
  ["exactly to the end, though 0.3/0.1 is a hair below 3", 0.3, 0.1, 0, 4],
  ["only the first", 5, 10, 5, 1],
  ["the first is beyond the end", 4, 10, 5, 0],
  ["far beyond the end", 1, 10, 25, 0],
])("%s", (_, length, spacing, first, heads) => {
  expect(headsThatFit(length, spacing, first)).toBe(heads);
});
