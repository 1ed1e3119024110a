import { spreadOf } from "../../src/solver/spread";

test("lowest, highest, average and what lies between, by hand", () => {
  expect(spreadOf([30, 20, 40, 30])).toEqual({
    lowest: 20,
    lowestAt: 1,
    highest: 40,
    highestAt: 2,
    average: 30,
    variation: 20 / 30,
  });
});

test("of equals, the head nearest the inlet is named", () => {
  expect(spreadOf([2, 1, 1, 2])).toMatchObject({ lowestAt: 1, highestAt: 0 });
});
