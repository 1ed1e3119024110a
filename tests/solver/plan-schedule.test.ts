import type { PlanTerms } from "../../src/solver/plan-problem";
import {
  dailySets,
  fewestRunning,
  givenTime,
  linesInTime,
  neededDay,
  neededTime,
  setsOfALine,
} from "../../src/solver/plan-schedule";

const HOUR = 3600;
const terms = {
  netDepth: 0.03,
  efficiency: 0.75,
  uniformity: 0.8,
  days: 7,
  dayTime: 12 * HOUR,
  moveTime: 1 * HOUR,
  setTime: 9 * HOUR,
} as PlanTerms;

test("a set puts the depth on the driest quarter", () => {
  // 50 mm gross at 5 mm/h.
  expect(neededTime(terms, 180, (0.005 * 180) / HOUR) / HOUR).toBeCloseTo(10, 9);
  expect(givenTime(terms)).toBe(9 * HOUR);
  expect(givenTime(terms, "set hours")).toBeUndefined();
});

test("whole sets a day; without its limit the day has 24 hours", () => {
  expect(dailySets(terms, 5 * HOUR)).toBe(2);
  expect(dailySets(terms, 12 * HOUR)).toBe(0);
  expect(dailySets(terms, 5 * HOUR, "day hours")).toBe(4);
  expect(dailySets(terms, 35 * HOUR, "day hours")).toBe(0.5);
});

test("lines that come round in time", () => {
  expect(linesInTime(terms, 14, 1)).toBe(2);
  expect(linesInTime(terms, 15, 1)).toBe(3);
  expect(linesInTime(terms, 14, 0)).toBe(0);
  expect(linesInTime(terms, 14, 0.1)).toBe(0);
  expect(linesInTime(terms, 14, 0.5)).toBe(5);
  expect(linesInTime(terms, 14, 1e300)).toBe(1);
  expect(linesInTime(terms, 14, 1, "days")).toBe(1);
  expect(linesInTime(terms, 14, 0, "days")).toBe(0);
});

test("what a line has to do, and how many run at the least", () => {
  expect(setsOfALine(15, 2)).toBe(8);
  expect(neededDay(terms, 8, 5 * HOUR) / HOUR).toBe(12);
  expect(neededDay(terms, 7, 5 * HOUR) / HOUR).toBe(6);
  expect(neededDay(terms, 7, 30 * HOUR) / HOUR).toBe(24);
  expect(neededDay(terms, 80, 5 * HOUR, "days") / HOUR).toBe(6);
  expect(fewestRunning(15, 2)).toBe(1);
  expect(fewestRunning(14, 2)).toBe(2);
  expect(fewestRunning(14, 4)).toBe(2);
});
