import { WATER_WEIGHT } from "../../src/ground/constants";
import { keepBetween } from "../../src/solver/keep-between";
import type { SolvedLine } from "../../src/solver/solve-line";

interface Given {
  readonly nozzle: readonly number[];
  /** Pressure in the tubing; what stands at the nozzles unless told. */
  readonly tubing?: readonly number[];
  /** Heads of water by which the ground stands above the inlet. */
  readonly elevation?: readonly number[];
  readonly riser?: number;
  readonly set?: number;
  readonly loss?: number;
}

/** Pressures in Pa and heights in Pa of water, so that all sums below are done by eye. */
function line({ nozzle, tubing = nozzle, elevation, riser = 0, set, loss = 0 }: Given): SolvedLine {
  const alike = (value: number) => nozzle.map(() => value);
  return {
    linePressure: tubing,
    nozzlePressure: nozzle,
    line: {
      elevation: (elevation ?? alike(0)).map((water) => water / WATER_WEIGHT),
      riser: riser / WATER_WEIGHT,
      regulatorSet: alike(set ?? Infinity),
      regulatorLoss: alike(loss),
    },
  } as unknown as SolvedLine;
}

/** The largest variation that a length between may have, found by asking. */
function bound(shorter: Given, longer: Given): number {
  let low = 0;
  let high = 64;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (keepBetween(line(shorter), line(longer), middle)) high = middle;
    else low = middle;
  }
  return high;
}

test("between: at least as in the longer line, at most as in the shorter one", () => {
  // Lengths 3 and 4 of 2 to 5. Of 3: from 300 to 500, 400 on average; of 4: from 200 to 500, 350.
  const shorter = { nozzle: [500, 450] };
  const longer = { nozzle: [500, 400, 300, 200, 100] };
  expect(bound(shorter, longer)).toBeCloseTo(300 / 350, 12);
  // The highest is the shorter line's, wherever it stands.
  expect(bound({ nozzle: [500, 650] }, longer)).toBeCloseTo(450 / 350, 12);
  // Where all the same is left there is no variation; and just none is within a limit of none.
  expect(keepBetween(line({ nozzle: [9] }), line({ nozzle: [9, 9, 9] }), 0)).toBe(true);
});

test("the longer line itself has been looked at already", () => {
  expect(bound({ nozzle: [500] }, { nozzle: [500, 500, 1] })).toBeCloseTo(0, 12);
  expect(bound({ nozzle: [500] }, { nozzle: [500, 1] })).toBeCloseTo(0, 12);
});

test("beyond the shorter line's end: what stands there without friction", () => {
  // Head 2 of the shorter line has 450 in the tubing at a height of 30: 480 at height 0. The third
  // may have 480 − 10 − 20 − 50 = 400 above ground, riser and regulator.
  const beyond = { elevation: [0, 30, 10, 0], riser: 20, loss: 50 };
  const shorter = { nozzle: [100, 100], tubing: [470, 450] };
  const longer = { nozzle: [100, 100, 100, 100], ...beyond };
  expect(bound(shorter, longer)).toBeCloseTo(300 / 100, 12);
  // A regulator lets through no more than its set pressure.
  expect(bound(shorter, { ...longer, set: 250 })).toBeCloseTo(150 / 100, 12);
});

test("a shorter length may be the worse one", () => {
  // Of 3 heads: 100 to 400, 200 on average, 1.5; of 4: the average is 350, 300/350.
  const shorter = { nozzle: [400, 400], tubing: [400, 400] };
  expect(bound(shorter, { nozzle: [100, 100, 400, 800, 800], set: 400 })).toBeCloseTo(1.5, 12);
});
