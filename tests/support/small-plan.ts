import { orificeLaw } from "../../src/formulas/discharge-law";
import { WATER_WEIGHT } from "../../src/ground/constants";
import { type FieldGround, FieldLayouts } from "../../src/solver/laid-field";
import type { PlanProblem } from "../../src/solver/plan-problem";

/** Nozzles that give 2 m³/h at 200 kPa and go by the square root: 4 m³/h at 800 kPa. */
export const HEAD_FLOW = 2 / 3600;
const law = orificeLaw(HEAD_FLOW / Math.sqrt(2e5));

export const BIG = { name: "big", bore: 0.05, price: 4, rating: 1e6 };
export const SMALL = { name: "small", bore: 0.04, price: 3, rating: 8e5 };

/**
 * Three heads 10 m apart, head 1 at 5 m, in four positions 12 m apart; a set of 2 hours at the
 * lowest pressure: 40 mm on 120 m² by heads of 2 m³/h, 0.8 of it useful, is 3 h.
 */
export function problemWith(
  changed: Partial<PlanProblem["terms"]> = {},
  ground: FieldGround = { slope: 0 },
  others: Partial<PlanProblem> = {},
): PlanProblem {
  const corners = [
    { x: 0, y: 0 },
    { x: 30, y: 0 },
    { x: 30, y: 48 },
    { x: 0, y: 48 },
  ];
  return {
    layouts: new FieldLayouts({ corners, obstacles: [], setback: 0 }, 90, ground),
    spacings: [10],
    moves: [12],
    pressures: [2e5],
    sprinklers: [
      {
        name: "a",
        law,
        lowest: 1e5,
        highest: 4e5,
        wetted: [{ pressure: 2e5, diameter: 26 }],
      },
    ],
    tubing: [BIG, SMALL],
    feeders: [BIG],
    terms: {
      coverage: 0.9,
      riser: 0.5,
      friction: { law: "Hazen–Williams", c: 150 },
      variation: 0.2,
      speed: 2,
      wind: 0,
      intake: 1e-5,
      netDepth: 0.04,
      efficiency: 0.8,
      uniformity: 1,
      days: 4,
      dayTime: 12 * 3600,
      moveTime: 3600,
      seasonDepth: 0.4,
      lift: 6,
      mainLoss: 2 * WATER_WEIGHT,
      pumpFlow: Infinity,
      pumpHead: Infinity,
      shareOfRating: 0.72,
      headPrice: 40,
      linePrice: 100,
      years: 10,
      interest: 0,
      escalation: 0,
      upkeep: 0.05,
      energyPrice: 0.2,
      performance: 1,
      wage: 20,
      ...changed,
    },
    ...others,
  };
}
