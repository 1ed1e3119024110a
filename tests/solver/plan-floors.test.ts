import { groundOf } from "../../src/formulas/ground-height";
import { WATER_WEIGHT } from "../../src/ground/constants";
import type { LaidField } from "../../src/solver/laid-field";
import { PlanCosts } from "../../src/solver/plan-costs";
import { keepsToLimits } from "../../src/solver/plan-design";
import { Prospect, RunFriction } from "../../src/solver/plan-floors";
import { LIMITS, type LimitName, type PlanProblem } from "../../src/solver/plan-problem";
import { everyDesign } from "../support/every-plan";
import { expectClose } from "../support/published";
import { type GroundKind, randomPlan } from "../support/random-plan";
import { BIG, HEAD_FLOW, problemWith, SMALL } from "../support/small-plan";

function prospectOf(problem: PlanProblem, place: Partial<Place> = {}): Prospect {
  const { spacing = problem.spacings[0], move = problem.moves[0] } = place;
  const { sprinkler = 0, pressure = 0, without } = place;
  const laid = problem.layouts.at(spacing, move);
  if (laid === undefined) throw new Error("no row has room");
  const friction = new RunFriction(problem, laid, { passed: 0 });
  const costs = new PlanCosts(problem.terms);
  return new Prospect(problem, costs, laid, sprinkler, pressure, friction, without);
}

interface Place {
  readonly spacing: number;
  readonly move: number;
  readonly sprinkler: number;
  readonly pressure: number;
  readonly without: LimitName;
}

describe("on fields of any kind a bound", () => {
  const grounds: readonly GroundKind[] = ["level", "uphill", "downhill", "heights"];
  test.each(Array.from({ length: 24 }, (_, i) => [2000 + i] as const))(
    "is never beyond what a design comes to, nor rules one out that passes: seed %d",
    (seed) => {
      const problem = randomPlan(seed, grounds[seed % 4], seed % 3 === 0, true);
      const without = seed % 2 === 0 ? undefined : LIMITS[((seed - 1) / 2) % LIMITS.length];
      const { terms, tubing, feeders } = problem;
      for (const design of everyDesign(problem, without)) {
        const { laid, pressure, tubing: choice, feeder } = design.choice;
        const prospect = prospectOf(problem, { pressure, without });
        const length = laid.leastFeeder(design.lines);
        const lost = prospect.leastLoss(choice);
        const head = prospect.leastHead(lost, prospect.feederLoss(feeders[feeder], length));
        const roomy = (value: number) => value * (1 + 1e-6);
        expect(head).toBeLessThanOrEqual(roomy(design.pumpHead));
        if (!keepsToLimits(terms, design, without)) continue;
        const price = length * feeders[feeder].price;
        const cost = prospect.leastCost(design.lines, choice.price, price, head);
        expect(cost).toBeLessThanOrEqual(roomy(design.year.total));
        expect(prospect.isHopeless()).toBe(false);
        expect(prospect.lines()).toContain(design.lines);
        expect(prospect.floodsPump(design.lines)).toBe(false);
        expect(prospect.isFeederTooFast(feeders[feeder])).toBe(false);
        expect(prospect.rulesOut(choice, lost)).toBe(false);
        expect(prospect.isTooHigh(head, choice, feeders[feeder])).toBe(false);
        expect(tubing[choice.larger].bore).toBeGreaterThanOrEqual(tubing[choice.smaller].bore);
      }
    },
  );
});

const WEIGHT = WATER_WEIGHT;

/** Hazen–Williams as the handbook prints it: 1050 (Q/C)^1.852 D^−4.87 ft in 100 ft, gpm and inches. */
const hazenWilliams = (flow: number, bore: number, length: number) =>
  (WEIGHT * length * 10.5 * (flow / 6.30902e-5 / 150) ** 1.852) / (bore / 0.0254) ** 4.87;

const one = (size: number) => ({ larger: size, smaller: size, change: 3, price: 0 });
const two = (change: number) => ({ larger: 0, smaller: 1, change, price: 0 });

describe("by hand: least friction", () => {
  const prospect = prospectOf(problemWith());
  const segment = (bore: number, heads: number, length: number) =>
    hazenWilliams(heads * HEAD_FLOW, bore, length);

  test.each([BIG, SMALL].map(({ bore }, size) => [size, bore]))("in one size %d", (size, bore) => {
    const by = segment(bore, 3, 5) + segment(bore, 2, 10) + segment(bore, 1, 10);
    expectClose(prospect.leastLoss(one(size)), by, 1e-5);
  });

  test("in two, whichever segment they change at", () => {
    expectClose(
      prospect.leastLoss(two(1)),
      segment(0.05, 3, 5) + segment(0.04, 2, 10) + segment(0.04, 1, 10),
      1e-5,
    );
    expectClose(
      prospect.leastLoss(two(2)),
      segment(0.05, 3, 5) + segment(0.05, 2, 10) + segment(0.04, 1, 10),
      1e-5,
    );
  });

  test("in a feeder, all heads' flow", () => {
    expectClose(prospect.feederLoss(BIG, 18), segment(0.05, 3, 18), 1e-5);
  });

  test("heads passed are counted, once a size", () => {
    const problem = problemWith();
    const laid = prospectOf(problem).laid;
    const work = { passed: 0 };
    const friction = new RunFriction(problem, laid, work);
    expect(friction.along(0, HEAD_FLOW)).toHaveLength(4);
    expect(work.passed).toBe(3);
    const costs = new PlanCosts(problem.terms);
    const fresh = new Prospect(problem, costs, laid, 0, 0, friction);
    fresh.leastLoss(one(0));
    fresh.leastLoss(one(0));
    expect(work.passed).toBe(6);
  });

  test("the shared line's first segment is the longest; the run's own counts", () => {
    // Another run of the field, with fewer heads, has 9 m to its first.
    const segmentLength = [9, 10, 10];
    const laid = { kinds: [{ heads: 3, first: 5 }], segmentLength } as unknown as LaidField;
    const [, first] = new RunFriction(problemWith(), laid, { passed: 0 }).along(0, HEAD_FLOW);
    expectClose(first, segment(0.05, 3, 5), 1e-5);
    expect(segmentLength).toEqual([9, 10, 10]);
  });
});

describe("by hand: least head", () => {
  const headOver = (slope: number, leastLoss: number, feeder: number, terms = {}) =>
    prospectOf(problemWith(terms, { slope })).leastHead(leastLoss * WEIGHT, feeder * WEIGHT);
  const nozzle = 2e5 / WEIGHT;

  test("level: nozzle, riser, friction, feeder, main and lift", () => {
    expectClose(headOver(0, 1.5, 0.7), nozzle + 0.5 + 1.5 + 0.7 + 2 + 6, 1e-12);
  });
  test("uphill the last head asks most: 25 m at 10 %", () => {
    expectClose(headOver(0.1, 1.5, 0.7), nozzle + 0.5 + 2.5 + 1.5 + 0.7 + 2 + 6, 1e-12);
  });
  test("steep downhill the first one does: 5 m at 20 %", () => {
    expectClose(headOver(-0.2, 1.5, 0.7), nozzle + 0.5 - 1 + 0.7 + 2 + 6, 1e-12);
  });
  test("never below nothing", () => {
    expect(headOver(0, 1.5, 0.7, { lift: -60 })).toBe(0);
  });
  test("where near ends differ, the highest without its feeder or the longest run's with it", () => {
    // Ground that rises 0.1 m a meter north; positions 12 m apart, the first at 6 m.
    const spot = (x: number, y: number) => ({ x, y, height: 0.1 * y });
    const corners = [spot(-50, -50), spot(200, -50), spot(-50, 200), spot(200, 200)];
    const problem = problemWith({}, { heights: groundOf(corners) });
    const prospect = prospectOf(problem);
    expectClose(prospect.laid.highestNearEnd, 4.2, 1e-9);
    const head = (feeder: number) => prospect.leastHead(1.5 * WEIGHT, feeder * WEIGHT);
    const bare = nozzle + 0.5 + 1.5 + 2 + 6;
    const [{ nearHeight }] = prospect.laid.kinds;
    expectClose(head(0), bare + 4.2, 1e-9);
    expectClose(head(9), bare + nearHeight + 9, 1e-9);
  });
});

/** Of the energy that is paid for, what becomes head: 0.885 horsepower-hours a kilowatt-hour. */
const ELECTRIC = 0.885 * 0.74569987;

describe("by hand: least cost", () => {
  test("a tenth of capital and upkeep, energy of the least volume, labor of four sets ten times", () => {
    const prospect = prospectOf(problemWith());
    const capital = 2 * (150 + 3 * 40 + 100 + 60);
    // 12 heads for 3 h at 2 m³/h, ten times: 720 m³ lifted 40 m.
    const energy = ((720 * WEIGHT * 40) / 3.6e6 / ELECTRIC) * 0.2;
    const labor = 4 * 10 * 1 * 20;
    expectClose(prospect.leastCost(2, 150, 60, 40), capital * 0.15 + energy + labor, 1e-7);
  });
  test("the volume of the longest set is no more than the least", () => {
    const problem = problemWith({ upkeep: 0, wage: 0 });
    const energy = new PlanCosts(problem.terms).energy(12 * HEAD_FLOW * 3 * 3600, 40);
    expectClose(prospectOf(problem).leastCost(0, 0, 0, 40), energy, 1e-12);
  });
  test("of any tubing and feeder: the cheapest of each, and friction in the widest of each", () => {
    // Positions 12 m apart and one line: no feeder is shorter than half of 36 m.
    const feeders = [SMALL, { ...BIG, bore: 0.06, price: 9 }, { ...SMALL, price: 2 }];
    const prospect = prospectOf(problemWith({}, { slope: 0 }, { feeders }));
    const choices = [one(0), two(1), one(1)];
    const head = prospect.leastHead(
      prospect.leastLoss(one(0)),
      hazenWilliams(3 * HEAD_FLOW, 0.06, 18),
    );
    const least = prospect.leastCost(1, 70, 18 * 2, head);
    expectClose(prospect.leastCostOfAny(1, choices, 70), least, 1e-6);
    // Each part is told from its neighbor: a meter of head, a price.
    expect(prospect.leastCost(1, 70, 18 * 2, head + 0.1)).toBeGreaterThan(least * (1 + 1e-5));
  });
  test("of a set that is given, what heads give in it", () => {
    const prospect = prospectOf(problemWith({ setTime: 5 * 3600, upkeep: 0, wage: 0 }));
    const energy = ((1200 * WEIGHT * 40) / 3.6e6 / ELECTRIC) * 0.2;
    expectClose(prospect.leastCost(1, 0, 0, 40) - 22, energy, 1e-7);
  });
});

describe("by hand: what is hopeless", () => {
  const isHopeless = (
    terms: Partial<PlanProblem["terms"]>,
    without?: LimitName,
    others: Partial<PlanProblem> = {},
  ) => prospectOf(problemWith(terms, { slope: 0 }, others), { without }).isHopeless();

  // 2 m³/h on 120 m² is 4.63e-6 m/s.
  const RATE = HEAD_FLOW / 120;
  test.each<[string, Partial<PlanProblem["terms"]>, boolean, LimitName]>([
    ["all passes", {}, false, "intake"],
    ["soil that takes less", { intake: RATE * 0.999 }, true, "intake"],
    ["soil that takes just that", { intake: RATE }, false, "intake"],
    ["wind for which 12 m on 26 m is too far", { wind: 20 }, true, "move"],
    ["coverage of more than all", { coverage: 1.01 }, true, "coverage"],
    ["three heads' flow too fast in 50 mm", { speed: 0.84 }, true, "speed"],
    ["a speed just met", { speed: (3 * HEAD_FLOW) / ((Math.PI / 4) * 0.05 ** 2) }, false, "speed"],
  ])("%s", (_, terms, hopeless, limit) => {
    expect(isHopeless(terms)).toBe(hopeless);
    expect(isHopeless(terms, limit)).toBe(false);
    const other = limit === "pump flow" ? "pump head" : "pump flow";
    expect(isHopeless(terms, other)).toBe(hopeless);
  });

  test("a lowest pressure outside the chart, a spacing beyond what overlaps", () => {
    expect(isHopeless({}, undefined, { pressures: [5e4] })).toBe(true);
    expect(isHopeless({}, "chart", { pressures: [5e4] })).toBe(false);
    expect(isHopeless({}, "spacing", { pressures: [5e4] })).toBe(true);
    const wetted = [{ pressure: 2e5, diameter: 13 }];
    const sprinklers = problemWith().sprinklers.map((sprinkler) => ({ ...sprinkler, wetted }));
    expect(isHopeless({}, undefined, { sprinklers, moves: [7] })).toBe(true);
    expect(isHopeless({}, "spacing", { sprinklers, moves: [7] })).toBe(false);
  });

  test("a set that is given and too short even for the most that heads may give", () => {
    // The most is at 1/(1 − 0.2) of the pressure, √1.25 of the flow: 3 h become 2.683 h.
    const shortest = (3 * 3600) / Math.sqrt(1.25);
    expect(isHopeless({ setTime: shortest * 0.999 })).toBe(true);
    expect(isHopeless({ setTime: shortest * 1.001 })).toBe(false);
    expect(isHopeless({ setTime: shortest * 0.999 }, "set hours")).toBe(false);
    expect(isHopeless({ setTime: shortest * 0.999 }, "variation")).toBe(false);
    // With any variation the chart's end, twice the pressure, allows √2 of the flow.
    const byChart = (3 * 3600) / Math.SQRT2;
    for (const [terms, without] of [
      [{}, "variation"],
      [{ variation: 1 }, undefined],
      [{ variation: 1.5 }, undefined],
    ] as const) {
      expect(isHopeless({ ...terms, setTime: byChart * 0.999 }, without)).toBe(true);
      expect(isHopeless({ ...terms, setTime: byChart * 1.001 }, without)).toBe(false);
    }
    expect(isHopeless({ variation: 1, setTime: byChart })).toBe(false);
    expect(isHopeless({ variation: 1, setTime: byChart * 0.5 }, "chart")).toBe(false);
    expect(isHopeless({ setTime: shortest * 0.999 }, "chart")).toBe(true);
  });
});

describe("by hand: numbers of lines", () => {
  const lines = (terms: Partial<PlanProblem["terms"]>, without?: LimitName) =>
    prospectOf(problemWith(terms), { without }).lines();

  test("between those for the shortest set and those for the longest", () => {
    // A set is 2.68 to 3 h and a move 1 h. In 11.5 h: 3 sets by the first, 2 by the second. Four
    // sets in two days: one line. In one day: two lines, but three a day are enough for 2 as well.
    expect(lines({ dayTime: 11.5 * 3600, days: 2 })).toEqual([1]);
    // In 7.5 h a line makes 2 sets or 1 a day: in one day 2 lines or 4.
    expect(lines({ dayTime: 7.5 * 3600, days: 1 })).toEqual([2, 3, 4]);
    expect(lines({ dayTime: 3.5 * 3600, days: 1 })).toEqual([]);
    // 3.9 h fits the shortest set alone: one a day, and none more than the positions ask.
    expect(lines({ dayTime: 3.9 * 3600, days: 2 })).toEqual([2]);
    expect(lines({ dayTime: 3.9 * 3600, days: 2 }, "day hours")).toEqual([1]);
    expect(lines({ dayTime: 3.5 * 3600, days: 1 }, "days")).toEqual([]);
    expect(lines({ dayTime: 7.5 * 3600, days: 1 }, "days")).toEqual([1]);
  });

  test("a day that the shortest set just fills holds it", () => {
    // At 200 kPa/(1 − 0.2) a head gives √1.25 times as much.
    const shortest = (3 * 3600) / Math.sqrt(1.25);
    expect(lines({ dayTime: shortest + 3600, days: 1 })).toEqual([4]);
  });

  test("a day that two of the longest just fill may, by rounding, hold one of them", () => {
    expect(lines({ dayTime: 8 * 3600, days: 1 })).toEqual([2, 3, 4]);
    expect(lines({ dayTime: 8.001 * 3600, days: 1 })).toEqual([2]);
  });

  test("round the clock, where the longest set comes round in no time, any that is shorter may", () => {
    // Heads may have ten times the pressure: a set is 50 h or 15.8 h. The shortest makes two in two
    // days, so two lines do; one of 30 h makes one, and every position needs a line.
    const sprinklers = problemWith().sprinklers.map((each) => ({ ...each, highest: 1e7 }));
    const count = (dayTime: number, without?: LimitName) =>
      prospectOf(
        problemWith(
          { netDepth: (0.04 * 50) / 3, moveTime: 600, days: 2, variation: 0.9, dayTime },
          { slope: 0 },
          { sprinklers },
        ),
        { without },
      ).lines();
    expect(count(86400)).toEqual([2, 3, 4]);
    expect(count(17 * 3600, "day hours")).toEqual([2, 3, 4]);
    // In a day of 17 h what fits at all fits once a day.
    expect(count(17 * 3600)).toEqual([2]);
  });

  test("round the clock a set may take days, and then no line comes round in one", () => {
    // 23.5 h are needed at most pressure, more than 24 h with the move at the least.
    const netDepth = (0.04 * 24) / 3;
    const long = { netDepth, moveTime: 600, dayTime: 86400, days: 1 };
    expect(lines(long)).toEqual([4]);
    expect(lines({ ...long, days: 2 })).toEqual([2, 3, 4]);
    // The longest takes two days: one set a line. Without the day's limit the same.
    expect(lines({ ...long, dayTime: 12 * 3600, days: 1 }, "day hours")).toEqual([4]);
  });

  test("a pump that gives no more floods by the line beyond", () => {
    const flow = 3 * HEAD_FLOW;
    const floods = (pumpFlow: number, count: number, without?: LimitName) =>
      prospectOf(problemWith({ pumpFlow }), { without }).floodsPump(count);
    expect(floods(2 * flow, 2)).toBe(false);
    expect(floods(2 * flow, 3)).toBe(true);
    expect(floods(1.999 * flow, 2)).toBe(true);
    expect(floods(1.999 * flow, 2, "pump flow")).toBe(false);
    expect(floods(1.999 * flow, 2, "pump head")).toBe(true);
  });
});

describe("by hand: what is ruled out", () => {
  const rulesOut = (
    terms: Partial<PlanProblem["terms"]>,
    choice: ReturnType<typeof two>,
    without?: LimitName,
    slope = 0,
    leastLoss?: number,
  ) => {
    const prospect = prospectOf(problemWith(terms, { slope }), { without });
    return prospect.rulesOut(choice, leastLoss ?? prospect.leastLoss(choice));
  };
  const speedOf = (heads: number, bore: number) =>
    (heads * HEAD_FLOW) / ((Math.PI / 4) * bore ** 2);

  test("tubing too fast at the inlet, or behind the change", () => {
    expect(rulesOut({ speed: speedOf(3, 0.04) }, one(1))).toBe(false);
    expect(rulesOut({ speed: 0.999 * speedOf(3, 0.04) }, one(1))).toBe(true);
    expect(rulesOut({ speed: 0.999 * speedOf(3, 0.04) }, one(1), "speed")).toBe(false);
    expect(rulesOut({ speed: 0.999 * speedOf(3, 0.04) }, one(1), "pump flow")).toBe(true);
    // Three in 50 mm are at 0.849 m/s, two in 40 mm at 0.884, one at 0.442.
    expect(rulesOut({ speed: 0.86 }, two(2))).toBe(false);
    expect(rulesOut({ speed: 0.86 }, two(1))).toBe(true);
    expect(rulesOut({ speed: 0.89 }, two(1))).toBe(false);
    expect(rulesOut({ speed: 0.8 }, two(2))).toBe(true);
  });

  test("head 1 above what the variation allows: 200 kPa/(1 − 0.2) = 250 kPa", () => {
    // The last head lies 20 m beyond the first: at 26 % that is 5.2 m, 51 kPa; friction adds to it.
    expect(rulesOut({}, one(0), undefined, 0.26)).toBe(true);
    expect(rulesOut({}, one(0), "variation", 0.26)).toBe(false);
    expect(rulesOut({}, one(0), undefined, 0.24)).toBe(false);
    expect(rulesOut({}, one(0), undefined, -0.25)).toBe(false);
    // Friction from head 1 on; that on the way to head 1 is not between them.
    const first = prospectOf(problemWith()).leastLoss(one(0));
    expect(rulesOut({}, one(0), undefined, 0, 49e3)).toBe(false);
    expect(rulesOut({}, one(0), undefined, 0, 50e3)).toBe(false);
    expect(rulesOut({}, one(0), undefined, 0, 50e3 + first)).toBe(true);
  });

  test("a feeder too fast", () => {
    const isFast = (speed: number, without?: LimitName) =>
      prospectOf(problemWith({ speed }), { without }).isFeederTooFast(BIG);
    expect(isFast(speedOf(3, 0.05))).toBe(false);
    expect(isFast(0.999 * speedOf(3, 0.05))).toBe(true);
    expect(isFast(0.999 * speedOf(3, 0.05), "speed")).toBe(false);
    expect(isFast(0.999 * speedOf(3, 0.05), "days")).toBe(true);
  });

  test("more head than the pump makes, or at rest than the weakest pipe stands", () => {
    const isHigh = (terms: Partial<PlanProblem["terms"]>, head: number, without?: LimitName) =>
      prospectOf(problemWith(terms), { without }).isTooHigh(head, two(1), BIG);
    expect(isHigh({ pumpHead: 50 }, 50)).toBe(false);
    expect(isHigh({ pumpHead: 50 }, 50.01)).toBe(true);
    expect(isHigh({ pumpHead: 50 }, 50.01, "pump head")).toBe(false);
    expect(isHigh({ pumpHead: 50 }, 50.01, "share of rating")).toBe(true);
    // 0.72 of 800 kPa is 58.84 m above the lowest tubing, which is 6 m above the water.
    expect(isHigh({}, 6 + (0.72 * 8e5) / WEIGHT)).toBe(false);
    expect(isHigh({}, 64.8)).toBe(false);
    expect(isHigh({}, 64.9)).toBe(true);
    expect(isHigh({}, 64.9, "share of rating")).toBe(false);
    expect(isHigh({}, 64.9, "pump head")).toBe(true);
    const large = prospectOf(problemWith());
    expect(large.isTooHigh(64.9, one(0), BIG)).toBe(false);
    expect(large.isTooHigh(64.9, one(0), SMALL)).toBe(true);
    // 25 m down at 20 % the tubing lies 5 m lower and stands under as much more.
    const down = prospectOf(problemWith({}, { slope: -0.2 }));
    expect(down.isTooHigh(59.8, two(1), BIG)).toBe(false);
    expect(down.isTooHigh(59.9, two(1), BIG)).toBe(true);
  });
});
