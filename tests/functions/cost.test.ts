import { callError, callTable } from "../support/host";

test("the table has five rows, blank options at 0", () => {
  expect(callTable("COST.YEARLY", 1000, 10, 0)).toEqual([
    ["capital recovery", 100],
    ["upkeep", 0],
    ["energy", 0],
    ["labor", 0],
    ["total", 100],
  ]);
});

test("each option counts where it belongs", () => {
  expect(callTable("COST.YEARLY", 1000, 10, 0, 200, 0.05, 300, 0, 40)).toEqual([
    ["capital recovery", 80],
    ["upkeep", 50],
    ["energy", 300],
    ["labor", 40],
    ["total", 470],
  ]);
  const escalated = callTable("COST.YEARLY", 0, 3, 0, 0, 0, 100, 0.1);
  expect(escalated[2][1]).toBeCloseTo((100 + 110 + 121) / 3, 10);
});

test("what is out of range is refused by name", () => {
  const message = (...cells: unknown[]) => callError("COST.YEARLY", ...cells).message;
  expect(message(-1, 10, 0.05)).toBe("capital must be 0 or more; got -1");
  expect(message(100, 0, 0.05)).toBe("years must be a whole number from 1 to 100; got 0");
  expect(message(100, 101, 0.05)).toMatch(/^years must be/);
  expect(message(100, 10, 1.5)).toMatch(/^interest must be from 0 to 1/);
  expect(message(100, 10, 0.05, 101)).toBe("salvage must be from 0 to 100; got 101");
  expect(message(100, 10, 0.05, 0, 2)).toMatch(/^upkeep must be/);
  expect(message(100, 10, 0.05, 0, 0, -1)).toMatch(/^energy must be/);
  expect(message(100, 10, 0.05, 0, 0, 1, 2)).toMatch(/^escalation must be/);
  expect(message(100, 10, 0.05, 0, 0, 1, 0, -2)).toMatch(/^labor must be/);
});
