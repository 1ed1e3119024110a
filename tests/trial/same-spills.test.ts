import { sameSpills, type Spills } from "../../src/trial/same-spills";

const two: Spills = { page0: { 3: { 1: { v: 1, t: 2 } }, 4: { 1: { v: "a", t: 1 } } } };

test.each<[string, Spills, boolean]>([
  ["the same", structuredClone(two), true],
  ["a value", { page0: { 3: { 1: { v: 2, t: 2 } }, 4: { 1: { v: "a", t: 1 } } } }, false],
  ["a kind of value", { page0: { 3: { 1: { v: 1, t: 3 } }, 4: { 1: { v: "a", t: 1 } } } }, false],
  ["a row that was left", { page0: { 3: { 1: { v: 1, t: 2 } } } }, false],
  ["a column more", { page0: { ...two.page0, 3: { 1: { v: 1, t: 2 }, 2: { v: 0 } } } }, false],
  ["a sheet that was left", {}, false],
  ["a sheet without cells more", { ...two, page1: {} }, true],
  ["another sheet", { page1: two.page0 }, false],
])("%s", (_, after, same) => {
  expect(sameSpills(two, after)).toBe(same);
  expect(sameSpills(after, two)).toBe(same);
});
