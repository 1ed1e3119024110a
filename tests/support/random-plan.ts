import { chartLaw } from "../../src/formulas/discharge-law";
import { groundOf } from "../../src/formulas/ground-height";
import { Chance } from "./chance";
import { randomCorners, randomObstacles } from "./random-field";
import type { Point } from "../../src/formulas/polygon";
import { type FieldGround, FieldLayouts } from "../../src/solver/laid-field";
import type { Design } from "../../src/solver/plan-design";
import type { LimitName, PlanProblem, PlanTerms } from "../../src/solver/plan-problem";

export type GroundKind = "level" | "uphill" | "downhill" | "heights";

const GPM = 6.30902e-5;
const PSI = 6894.757;

/**
 * A problem of any kind, tight enough that its limits bite and small enough to try all of it; one
 * spacing, move and sprinkler where it is to be tiny.
 */
export function randomPlan(
  seed: number,
  ground: GroundKind,
  irregular: boolean,
  tiny = false,
): PlanProblem {
  const chance = new Chance(seed);
  const between = (low: number, high: number) => low + (high - low) * chance.next();
  const some = <T>(list: readonly T[], count: number) =>
    [...list].sort(() => chance.next() - 0.5).slice(0, count);
  const corners: Point[] = irregular
    ? randomCorners(chance).map(({ x, y }) => ({ x: 0.4 * x, y: 0.4 * y }))
    : rectangle(between(45, 100), between(50, 110));
  const field = {
    corners,
    obstacles: irregular ? randomObstacles(chance, 2) : [],
    setback: chance.pick([0, 0, 4]),
  };
  const flow = between(3, 5) * GPM;
  const sprinklers = ["a", "b"].slice(0, tiny ? 1 : 1 + chance.whole(2)).map((name, i) => ({
    name,
    law: chartLaw(
      [30 * PSI, 40 * PSI, 55 * PSI],
      [0.85, 1, 1.16].map((k) => k * flow * (1 + 0.25 * i)),
    ),
    lowest: 30 * PSI,
    highest: 55 * PSI,
    wetted: [
      { pressure: 30 * PSI, diameter: 26 + i },
      { pressure: 40 * PSI, diameter: 28 + i },
      { pressure: 55 * PSI, diameter: 29 + i },
    ],
  }));
  const pipe = (bore: number, price: number, rating = 145 * PSI) => ({
    name: `${Math.round(bore * 1000)} mm`,
    bore,
    price,
    rating,
  });
  const wall = between(85, 145) * PSI;
  const terms: PlanTerms = {
    coverage: irregular ? between(0.45, 0.75) : 0.9,
    riser: chance.pick([0, 0.6]),
    friction: chance.happens(0.7) ? { law: "Hazen–Williams", c: 140 } : { law: "Darcy" },
    variation: chance.pick([0.12, 0.2, 0.3, 0.4]),
    speed: between(1.4, 2.6),
    wind: chance.pick([0, 1.5, 3]),
    intake: between(0.25, 0.7) * (0.0254 / 3600),
    netDepth: between(0.02, 0.04),
    efficiency: 0.75,
    uniformity: chance.pick([1, 0.85]),
    days: chance.pick([6.5, 7, 10]),
    dayTime: chance.pick([12, 18, 24]) * 3600,
    moveTime: chance.pick([0, 0.5, 1]) * 3600,
    setTime: chance.happens(0.2) ? between(6, 14) * 3600 : undefined,
    seasonDepth: 0.35,
    lift: between(0, 10),
    mainLoss: chance.pick([0, 30000, 60000]),
    pumpFlow: chance.happens(0.5) ? between(40, 160) * GPM : Infinity,
    pumpHead: chance.happens(0.4) ? between(40, 60) : Infinity,
    shareOfRating: 0.72,
    headPrice: 40,
    linePrice: 170,
    years: 12,
    interest: 0.06,
    escalation: chance.pick([0, 0.03]),
    upkeep: 0.02,
    energyPrice: chance.pick([0, 0.14, 0.5]),
    performance: 1,
    wage: chance.pick([0, 18]),
  };
  return {
    layouts: new FieldLayouts(
      field,
      irregular ? between(0, 360) : 90,
      groundFor(ground, chance, corners),
    ),
    spacings: some([9, 10.5, 12, 13.5], tiny ? 1 : 2),
    moves: some([12, 13.5, 15, 17], tiny ? 1 : 2),
    pressures: some(
      [30, 34, 38, 42, 46].map((p) => p * PSI),
      3,
    ),
    sprinklers,
    tubing: [pipe(0.0459, 3.6, wall), pipe(0.0384, 2.6, wall), pipe(0.0304, 1.7)].slice(
      chance.whole(2),
    ),
    feeders: [pipe(0.0459, 3.6), pipe(0.055, 5)].slice(0, 1 + chance.whole(2)),
    terms,
  };
}

function rectangle(length: number, width: number): Point[] {
  return [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: width },
    { x: 0, y: width },
  ];
}

function groundFor(kind: GroundKind, chance: Chance, corners: readonly Point[]): FieldGround {
  if (kind === "level") return { slope: 0 };
  if (kind === "uphill") return { slope: 0.03 * chance.next() };
  if (kind === "downhill") return { slope: -0.05 * chance.next() };
  const [x, y] = [corners.map((c) => c.x), corners.map((c) => c.y)];
  const far = 60;
  const spot = (sx: number, sy: number) => ({ x: sx, y: sy, height: 4 * (chance.next() - 0.5) });
  const [left, right] = [Math.min(...x) - far, Math.max(...x) + far];
  const [low, high] = [Math.min(...y) - far, Math.max(...y) + far];
  return {
    heights: groundOf([
      spot(left, low),
      spot(right, low),
      spot(right, high),
      spot(left, high),
      spot((left + right) / 2, (low + high) / 2),
      spot((2 * left + right) / 3, (low + 2 * high) / 3),
    ]),
  };
}

/** The term that sets a limit, where a term does. */
const TERM_OF: Partial<Record<LimitName, keyof PlanTerms>> = {
  variation: "variation",
  speed: "speed",
  intake: "intake",
  "set hours": "setTime",
  "day hours": "dayTime",
  days: "days",
  "pump flow": "pumpFlow",
  "pump head": "pumpHead",
  "share of rating": "shareOfRating",
};

/** The same problem with one limit a little tighter than a design of it asks. */
export function squeezed(problem: PlanProblem, limit: LimitName, design: Design): PlanProblem {
  const term = TERM_OF[limit];
  if (term !== undefined) {
    return { ...problem, terms: { ...problem.terms, [term]: 0.98 * design.uses[limit] } };
  }
  if (limit !== "chart") return problem;
  const sprinklers = problem.sprinklers.map((sprinkler) => ({
    ...sprinkler,
    highest: 0.995 * design.highest,
  }));
  return { ...problem, sprinklers };
}
