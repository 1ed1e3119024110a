import { withoutLeftOvers } from "../../src/trial/left-over-spills";

const range = (startRow: number, endRow: number, startColumn: number, endColumn: number) => ({
  startRow,
  endRow,
  startColumn,
  endColumn,
});

test("cells in which a result lies stay; those that it has left are gone", () => {
  const row = { 0: { v: "a" }, 1: { v: 1 } };
  const spills = { page0: { 9: row, 10: row, 11: row, 13: row }, page1: { 0: { 5: { v: 2 } } } };
  const ranges = {
    page0: { 9: { 0: range(9, 10, 0, 1) }, 13: { 1: range(13, 13, 1, 1) } },
    page1: { 0: { 5: range(0, 3, 5, 5) } },
  };
  expect(withoutLeftOvers(spills, ranges)).toEqual({
    page0: { 9: row, 10: row, 11: {}, 13: { 1: { v: 1 } } },
    page1: { 0: { 5: { v: 2 } } },
  });
});

test("a sheet without results has no cell left", () => {
  expect(withoutLeftOvers({ page0: { 3: { 1: { v: 1 } } } }, {})).toEqual({ page0: { 3: {} } });
});
