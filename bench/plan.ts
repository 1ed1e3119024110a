import { chartLaw } from "../src/formulas/discharge-law";
import type { Field } from "../src/formulas/turned-field";
import { FOOT, HOUR, INCH, MINUTE, PSI, US_GALLON } from "../src/ground/unit-factors";
import { FieldLayouts } from "../src/solver/laid-field";
import type { PlanPipe, PlanProblem } from "../src/solver/plan-problem";
import { PlanSearch } from "../src/solver/plan-search";
import { countTubingChoices } from "../src/solver/plan-tubing";
import { solveLine } from "../src/solver/solve-line";
import { everyDesign } from "../tests/support/every-plan";
import { field as sixCorners } from "./field";
import { compare, microseconds, type Row } from "./measure";
import { fiftyHeads } from "./solver";

const GPM = US_GALLON / MINUTE;
const steps = (from: number, step: number, count: number) =>
  Array.from({ length: count }, (_, i) => from + step * i);

export const rectangle: Field = {
  corners: [
    { x: 0, y: 0 },
    { x: 630 * FOOT, y: 0 },
    { x: 630 * FOOT, y: 700 * FOOT },
    { x: 0, y: 700 * FOOT },
  ],
  obstacles: [],
  setback: 0,
};

const pipe = (millimeters: number, bore: number, price: number): PlanPipe => ({
  name: `${millimeters} mm`,
  bore,
  price: price / FOOT,
  rating: 145 * PSI,
});

/** Ten acres, eleven spacings and moves, sixteen pressures, three sprinklers, five sizes, three feeders. */
export function problemOn(field: Field, bearing: number, coverage: number): PlanProblem {
  return {
    layouts: new FieldLayouts(field, bearing, { slope: 0 }),
    spacings: steps(30, 2.5, 11).map((feet) => feet * FOOT),
    moves: steps(35, 2.5, 11).map((feet) => feet * FOOT),
    pressures: steps(35, 1, 16).map((psi) => psi * PSI),
    sprinklers: [0.8, 1, 1.25].map((size, i) => ({
      name: `${i}`,
      law: chartLaw(
        [35, 45, 55].map((psi) => psi * PSI),
        [3.7, 4.2, 4.6].map((gpm) => gpm * size * GPM),
      ),
      lowest: 35 * PSI,
      highest: 55 * PSI,
      wetted: [{ pressure: 35 * PSI, diameter: [84, 92, 98][i] * FOOT }],
    })),
    tubing: [
      pipe(75, 0.0655, 1.55),
      pipe(63, 0.0548, 1.1),
      pipe(50, 0.0434, 0.7),
      pipe(40, 0.0348, 0.45),
      pipe(32, 0.0278, 0.3),
    ],
    feeders: [pipe(90, 0.0786, 2.2), pipe(75, 0.0655, 1.55), pipe(63, 0.0548, 1.1)],
    terms: {
      coverage,
      riser: 2 * FOOT,
      friction: { law: "Hazen–Williams", c: 140 },
      variation: 0.2,
      speed: 5 * FOOT,
      wind: 0,
      intake: (0.5 * INCH) / HOUR,
      netDepth: 1.4 * INCH,
      efficiency: 0.75,
      uniformity: 1,
      days: 7,
      dayTime: 12 * HOUR,
      moveTime: 0.75 * HOUR,
      seasonDepth: 14 * INCH,
      lift: 18 * FOOT,
      mainLoss: 8 * PSI,
      pumpFlow: 150 * GPM,
      pumpHead: Infinity,
      shareOfRating: 0.72,
      headPrice: 40,
      linePrice: 170,
      years: 12,
      interest: 0.06,
      escalation: 0,
      upkeep: 0.02,
      energyPrice: 0.14,
      performance: 1,
      wage: 18,
    },
  };
}

/** How many designs a problem has. */
function designsOf({ layouts, ...problem }: PlanProblem): number {
  let designs = 0;
  for (const spacing of problem.spacings) {
    for (const move of problem.moves) {
      const laid = layouts.at(spacing, move);
      if (laid === undefined) continue;
      designs += countTubingChoices(problem.tubing.length, laid.segmentLength.length);
    }
  }
  return designs * problem.pressures.length * problem.sprinklers.length * problem.feeders.length;
}

/** Time to try one of so many choices of everything, in microseconds a design. */
function tryingAll(problem: PlanProblem): number {
  const few = {
    ...problem,
    spacings: problem.spacings.slice(4, 6),
    moves: problem.moves.slice(4, 6),
    pressures: problem.pressures.slice(4, 6),
  };
  return microseconds(() => everyDesign(few), WARM) / designsOf(few);
}

/** A search needs many runs before the engine has compiled all of it. */
const WARM = 6000;

/** A 50-head solve took some 10 µs where the aims were set. */
const SOLVES_A_MILLISECOND = 100;

export function planRows(): Row[] {
  const solve = microseconds(() => solveLine(fiftyHeads));
  return [
    { what: "a rectangle", field: rectangle, bearing: 90, coverage: 0.9, aim: 50 },
    {
      what: "a field of six corners with a clump",
      field: sixCorners,
      bearing: 97,
      coverage: 0.6,
      aim: 150,
    },
  ].flatMap(({ what, field, bearing, coverage, aim }) => {
    // A cell lays the field out too.
    const search = microseconds(
      () => new PlanSearch(problemOn(field, bearing, coverage)).cheapest({ count: 5 }),
      WARM,
    );
    const problem = problemOn(field, bearing, coverage);
    const designs = designsOf(problem);
    const million = `${(designs / 1e6).toFixed(1)} million designs`;
    return [
      compare(
        `times faster than trying all, by a part of them: the five best plans of ${million} on ${what}`,
        ["all", tryingAll(problem) * designs],
        ["search", search],
        { bound: "at least", value: 20 },
      ),
      compare(
        `times a 50-head solve: the same search on ${what}, warm, to be below ${aim} ms`,
        ["search", search],
        ["solve", solve],
        { bound: "at most", value: aim * SOLVES_A_MILLISECOND },
      ),
    ];
  });
}
