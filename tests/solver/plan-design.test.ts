import { orificeLaw } from "../../src/formulas/discharge-law";
import type { LaidField } from "../../src/solver/laid-field";
import { PlanCosts } from "../../src/solver/plan-costs";
import {
  allowance,
  beyondChart,
  type Design,
  isOver,
  keepsToLimits,
  usesOfPlacing,
  wettedDiameter,
  workOut,
} from "../../src/solver/plan-design";
import type { FieldState } from "../../src/solver/plan-hydraulics";
import { LIMITS, type LimitName, type PlanProblem } from "../../src/solver/plan-problem";
import { randomPlan } from "../support/random-plan";
import { problemWith } from "../support/small-plan";

const sprinkler = {
  name: "a",
  law: orificeLaw(1e-6),
  lowest: 200,
  highest: 400,
  wetted: [
    { pressure: 200, diameter: 20 },
    { pressure: 300, diameter: 26 },
    { pressure: 400, diameter: 24 },
  ],
};

test("the wetted diameter is straight between rows, level beyond them", () => {
  expect(wettedDiameter(sprinkler, 200)).toBe(20);
  expect(wettedDiameter(sprinkler, 250)).toBe(23);
  expect(wettedDiameter(sprinkler, 100)).toBe(20);
  expect(wettedDiameter(sprinkler, 500)).toBe(24);
});

test("and the least from there up, where it falls again", () => {
  expect(wettedDiameter(sprinkler, 290)).toBe(24);
  expect(wettedDiameter(sprinkler, 300)).toBe(24);
});

test("beyond the chart on either side, and not by rounding", () => {
  expect(beyondChart(sprinkler, 190, 400)).toBe(10);
  expect(beyondChart(sprinkler, 200, 430)).toBe(30);
  expect(beyondChart(sprinkler, 200, 400)).toBe(0);
  expect(beyondChart(sprinkler, 200 * (1 - 1e-12), 400 * (1 + 1e-12))).toBe(0);
});

describe("a choice worked out by hand", () => {
  // Three runs of ten heads and one of five, 10 m by 10 m; two lines are needed for five sets.
  const laid = {
    spacing: 10,
    move: 10,
    sets: 5,
    heads: 35,
    coverage: 0.9,
    lowestGround: -3,
    kinds: [
      { heads: 10, count: 3, nearHeight: 2 },
      { heads: 5, count: 1, nearHeight: 4 },
    ],
    feeder: (lines: number) => 50 * lines,
  } as unknown as LaidField;
  const terms = {
    ...randomPlan(1, "level", false).terms,
    friction: { law: "Hazen–Williams", c: 140 },
    netDepth: 0.036,
    efficiency: 0.75,
    uniformity: 1,
    setTime: undefined,
    moveTime: 1800,
    dayTime: 2.1 * 3600,
    days: 3,
    lift: 5,
    mainLoss: 20000,
    headPrice: 40,
    linePrice: 170,
  } as const;
  const pipe = (bore: number, price: number, rating: number) => ({ name: "", bore, price, rating });
  const problem: PlanProblem = {
    ...randomPlan(1, "level", false),
    pressures: [220000],
    sprinklers: [{ ...sprinkler, lowest: 200000, highest: 250000 }],
    tubing: [pipe(0.06, 5, 9e5), pipe(0.05, 3, 8e5)],
    feeders: [pipe(0.0786, 7, 1e6)],
    terms,
  };
  const run = (inflow: number, highest: number, speed: number, sum: number) => ({
    inflow,
    highest,
    speed,
    sum,
  });
  const state = {
    inlet: 300000,
    runs: [run(0.01, 255000, 1.4, 2400000), run(0.0045, 250000, 1.1, 1150000)],
  } as FieldState;
  const raisedState = {
    inlet: 314000,
    runs: [run(0.0102, 260000, 1.5, 0), run(0.0046, 265000, 1.2, 0)],
  } as FieldState;
  const choice = {
    laid,
    sprinkler: 0,
    pressure: 0,
    tubing: { larger: 0, smaller: 1, change: 4, price: 400 },
    feeder: 0,
  };
  const costs = new PlanCosts(terms);
  const asked: number[] = [];
  const work = (other: PlanProblem = problem, raised: FieldState | undefined = raisedState) =>
    workOut(other, costs, choice, {
      state,
      raised: (inlet) => {
        asked.push(inlet);
        return raised;
      },
    });

  test("time, lines, pressures, speeds, head and cost", () => {
    const design = work();
    if (design === undefined) throw new Error("no design");
    // The least head gives 0.0009 m³/s on 100 m²: 36 mm at 75 % take 5333 s; one such set a day, so
    // three a line in three days, and two lines for five.
    expect(design.rate).toBeCloseTo(9e-6, 12);
    expect(design.setTime).toBeCloseTo(0.036 / 9e-6 / 0.75, 6);
    expect([design.perDay, design.lines, design.feederLength]).toEqual([1, 2, 100]);
    expect(design.uses.days).toBe(3);
    expect(design.uses["day hours"]).toBeCloseTo(16000 / 3 + 1800, 6);
    // One of two lines runs last: the main then loses 0.5^1.852 of what it did.
    expect(asked).toHaveLength(1);
    expect(asked[0]).toBeCloseTo(300000 + 20000 * (1 - 0.5 ** 1.852), 3);
    expect(design.highest).toBe(265000);
    expect(design.flow).toBe(0.01);
    expect(design.uses["pump flow"]).toBe(0.02);
    expect(design.uses.chart).toBe(15000);
    expect(design.uses.variation).toBeCloseTo(45000 / ((3 * 2400000 + 1150000) / 35), 12);
    expect(design.uses.intake).toBeCloseTo(0.0102 / 10 / 100, 15);
    expect(design.uses.speed).toBeCloseTo(0.0102 / ((Math.PI / 4) * 0.0786 ** 2), 12);
    // Hazen–Williams in SI, 10.67 L (Q/C)^1.852 / D^4.87, for the feeder of the longest run.
    const feeder = (10.67 * 100 * (0.01 / 140) ** 1.852) / 0.0786 ** 4.87;
    const weight = 998.2 * 9.80665;
    const head = 5 + 20000 / weight + 2 + 300000 / weight + feeder;
    expect(design.pumpHead / head).toBeCloseTo(1, 2);
    expect(design.uses["share of rating"]).toBeCloseTo(
      (weight * (design.pumpHead - 5 + 3)) / 8e5,
      9,
    );
    expect(design.capital).toBeCloseTo(2 * (400 + 10 * 40 + 170 + 100 * 7), 9);
    const volume = (3 * 0.01 + 0.0045) * design.setTime;
    expect(design.year).toEqual(costs.year(design.capital, volume, design.pumpHead, 5));
  });

  test("without a main to lose in, all lines running is the same as few", () => {
    asked.length = 0;
    const design = work({ ...problem, terms: { ...terms, mainLoss: 0 } });
    expect(asked).toEqual([]);
    expect(design?.highest).toBe(255000);
  });

  test("none where no line comes round, or none stands the higher pressure", () => {
    expect(work({ ...problem, terms: { ...terms, dayTime: 3600 } })).toBeUndefined();
    expect(workOut(problem, costs, choice, { state, raised: () => undefined })).toBeUndefined();
  });

  test("a source high above needs no pump, and the weakest pipe may be any", () => {
    const low = work({ ...problem, terms: { ...terms, lift: -100 } });
    expect(low?.pumpHead).toBe(0);
    const weak = work({ ...problem, feeders: [pipe(0.0786, 7, 5e5)] });
    const usual = work();
    expect(
      (weak?.uses["share of rating"] ?? 0) / (usual?.uses["share of rating"] ?? 1),
    ).toBeCloseTo(8 / 5, 12);
  });
});

test("of the coverage a limit asks for more, of all else for less; met but for rounding is met", () => {
  const terms = { ...randomPlan(1, "level", false).terms, coverage: 0.8, speed: 2 };
  expect(
    [0.79, 0.8, 0.8 * (1 - 1e-12), 0.81].map((share) => isOver(terms, "coverage", share)),
  ).toEqual([true, false, false, false]);
  expect([1.99, 2, 2 * (1 + 1e-12), 2.01].map((speed) => isOver(terms, "speed", speed))).toEqual([
    false,
    false,
    false,
    true,
  ]);
});

/** Every limit with a term that sets it apart from all others, and what that allows. */
const ALLOWED: readonly (readonly [LimitName, Partial<PlanProblem["terms"]>, number])[] = [
  ["variation", { variation: 0.11 }, 0.11],
  ["speed", { speed: 1.7 }, 1.7],
  ["intake", { intake: 3e-6 }, 3e-6],
  // Half the wetted diameter along the line, whatever the wind; between positions 0.65 of it in
  // calm air and less in wind, by the table of the largest spacings.
  ["spacing", { wind: 0 }, 0.5],
  ["spacing", { wind: 3 }, 0.5],
  ["move", { wind: 0 }, 0.65],
  ["move", { wind: 3 }, 0.5],
  ["chart", {}, 0],
  ["set hours", { setTime: 7000 }, 7000],
  ["set hours", { setTime: undefined }, Infinity],
  ["day hours", { dayTime: 50000 }, 50000],
  ["days", { days: 6.5 }, 6.5],
  ["pump flow", { pumpFlow: 0.012 }, 0.012],
  ["pump head", { pumpHead: 61 }, 61],
  ["share of rating", { shareOfRating: 0.73 }, 0.73],
  ["coverage", { coverage: 0.83 }, 0.83],
];

test.each(ALLOWED)("the limit of %s by %j allows %d", (limit, terms, allowed) => {
  expect(allowance(problemWith(terms).terms, limit)).toBe(allowed);
});

test("a placing uses spacing and move as shares of the wetted diameter, and covers what it covers", () => {
  const laid = { spacing: 9, move: 12, coverage: 0.7 } as LaidField;
  // 23 wide at 250, halfway between 20 and 26.
  expect(usesOfPlacing(laid, sprinkler, 250)).toEqual({
    spacing: 9 / 23,
    move: 12 / 23,
    coverage: 0.7,
  });
});

describe("a design keeps to its limits", () => {
  const { terms } = problemWith({ setTime: 7000, pumpFlow: 0.012, pumpHead: 61 });
  const design = (changed: Partial<Record<LimitName, number>> = {}) =>
    ({
      uses: {
        ...Object.fromEntries(LIMITS.map((name) => [name, allowance(terms, name)])),
        ...changed,
      },
    }) as Design;

  test("where it uses just what they allow", () => {
    expect(keepsToLimits(terms, design())).toBe(true);
  });

  test.each(LIMITS)(
    "not with more %s, nor less of the coverage, but without that limit",
    (name) => {
      const beyond = name === "coverage" ? 0.89 : allowance(terms, name) * 1.01 + 1e-9;
      const over = design({ [name]: beyond });
      expect(keepsToLimits(terms, over)).toBe(false);
      expect(keepsToLimits(terms, over, name)).toBe(true);
      const other = name === "speed" ? "days" : "speed";
      expect(keepsToLimits(terms, over, other)).toBe(false);
      expect(keepsToLimits(terms, design({ [name]: beyond, [other]: 1e9 }), name)).toBe(false);
    },
  );
});
