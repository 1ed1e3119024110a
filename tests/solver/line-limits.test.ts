import { orificeLaw } from "../../src/formulas/discharge-law";
import { greatestSpeed, keepsWithin } from "../../src/solver/line-limits";
import { type SolvedLine, solveLine } from "../../src/solver/solve-line";

const solved: SolvedLine = solveLine({
  inletPressure: 3e5,
  segmentLength: [10, 10],
  bore: [0.05, 0.05],
  elevation: [0, 0],
  riser: 0,
  discharge: orificeLaw(5e-7),
  regulatorSet: [Infinity, Infinity],
  regulatorLoss: [0, 0],
  friction: { law: "Darcy" },
});
const nozzles = (...nozzlePressure: number[]): SolvedLine => ({ ...solved, nozzlePressure });
const loose = { variation: 2, lowest: 0, speed: Infinity };

test("a limit that is met exactly, or missed by a thousand-millionth, is kept", () => {
  // (110 − 90)/100 = 0.2.
  for (const [variation, kept] of [
    [0.2, true],
    [0.2 - 0.9e-9, true],
    [0.2 - 1.1e-9, false],
    [0, false],
  ] as const) {
    expect(keepsWithin({ ...loose, variation }, nozzles(110, 90))).toBe(kept);
  }
  expect(keepsWithin({ ...loose, variation: 0 }, nozzles(50, 50))).toBe(true);
  for (const [lowest, kept] of [
    [90, true],
    [90 * (1 + 0.9e-9), true],
    [90 * (1 + 1.1e-9), false],
  ] as const) {
    expect(keepsWithin({ ...loose, lowest }, nozzles(110, 90))).toBe(kept);
  }
  // The first segment carries both heads' flow: Q/(πD²/4).
  const speed = solved.inflow / ((Math.PI * 0.05 ** 2) / 4);
  expect(greatestSpeed(solved)).toBeCloseTo(speed, 12);
  const actual = greatestSpeed(solved);
  for (const [most, kept] of [
    [actual, true],
    [actual * (1 - 0.9e-9), true],
    [actual * (1 - 1.1e-9), false],
  ] as const) {
    expect(keepsWithin({ ...loose, speed: most }, solved)).toBe(kept);
  }
});

test("the slack itself belongs to it", () => {
  expect(keepsWithin({ ...loose, lowest: 90 }, nozzles(110, 90 * (1 - 1e-9)))).toBe(true);
  const actual = greatestSpeed(solved);
  const near = Array.from({ length: 9 }, (_, i) => actual / (1 + 1e-9) + (i - 4) * 2 ** -54);
  const most = near.find((speed) => speed * (1 + 1e-9) === actual) as number;
  expect(most).toBeLessThan(actual);
  expect(keepsWithin({ ...loose, speed: most }, solved)).toBe(true);
});

test("a head without pressure passes no limit", () => {
  expect(keepsWithin({ ...loose, variation: 10 }, nozzles(100, 0))).toBe(false);
  expect(keepsWithin({ ...loose, variation: 10 }, nozzles(100, 1))).toBe(true);
});
