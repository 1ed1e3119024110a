import { FieldLayouts } from "../../src/solver/laid-field";
import { type Design, keepsToLimits } from "../../src/solver/plan-design";
import { Prospect } from "../../src/solver/plan-floors";
import { LIMITS, type LimitName, type PlanProblem } from "../../src/solver/plan-problem";
import { MOST_DESIGNS, PlanSearch } from "../../src/solver/plan-search";
import { PlanWork } from "../../src/solver/plan-work";
import { cheapestOfKinds, everyDesign, shown } from "../support/every-plan";
import { BIG, HEAD_FLOW, problemWith, SMALL } from "../support/small-plan";
import { linesSolved } from "../support/lines-solved";

/** A field 30 m by some depth: a row of three heads every 12 m. */
const layouts = (depth: number, slope = 0) =>
  new FieldLayouts(
    {
      corners: [
        { x: 0, y: 0 },
        { x: 30, y: 0 },
        { x: 30, y: depth },
        { x: 0, y: depth },
      ],
      obstacles: [],
      setback: 0,
    },
    90,
    { slope },
  );

const WIDE = { name: "wide", bore: 0.06, price: 5, rating: 1e6 };
const [only] = problemWith().sprinklers;
const loose = { variation: 5, speed: Infinity, intake: 1, shareOfRating: Infinity };
const anyPressure = [{ ...only, lowest: 0, highest: Infinity }];

/** Kinds of problem whose answers a search may lose, each small enough to try all of it. */
const problems: Readonly<Record<string, PlanProblem>> = {
  "two pressures": problemWith({}, { slope: 0 }, { pressures: [2.4e5, 2e5] }),
  // Five positions and three lines: in the last round two run, and the inlet has more.
  "a main that loses less in the last round": problemWith(
    { mainLoss: 3e4, days: 1, dayTime: 9 * 3600 },
    { slope: 0 },
    { layouts: layouts(60), pressures: [2e5, 2.2e5] },
  ),
  "a limit that the last round passes": problemWith(
    { mainLoss: 1e5, days: 1, dayTime: 9 * 3600, variation: 0.3 },
    { slope: 0 },
    { layouts: layouts(60), pressures: [2e5, 2.2e5] },
  ),
  "a tight speed": problemWith({ speed: 1 }, { slope: 0 }, { pressures: [2e5, 2.2e5] }),
  "sizes and feeders of which some are too small": problemWith(
    { speed: 1.1, netDepth: 0.03 },
    { slope: 0.02 },
    { tubing: [WIDE, BIG, SMALL], feeders: [SMALL, WIDE, BIG] },
  ),
  "a cheap wide feeder": problemWith(
    { energyPrice: 2 },
    { slope: 0 },
    { feeders: [{ ...SMALL, price: 0.5 }, WIDE, { ...BIG, price: 0.4 }] },
  ),
  "a tight variation on rising ground": problemWith(
    { variation: 0.13 },
    { slope: 0.06 },
    { tubing: [WIDE, BIG, SMALL], pressures: [2e5, 2.5e5] },
  ),
  "numbers of lines that hang on the tubing": problemWith(
    { dayTime: 7.9 * 3600, days: 1, variation: 0.3 },
    { slope: 0.05 },
    { pressures: [2e5, 2.1e5, 2.3e5] },
  ),
  "a spacing without room": problemWith({}, { slope: 0 }, { spacings: [10, 70, 9] }),
  "a pressure beyond any line": problemWith(
    { ...loose, dayTime: 86400 },
    { slope: 0 },
    { pressures: [1.2e7, 2e5], sprinklers: anyPressure },
  ),
  "a fall that gives more than the pressure": problemWith(
    loose,
    { slope: -0.6 },
    { pressures: [2e4, 2e5], sprinklers: anyPressure },
  ),
};
const TRIED: readonly (LimitName | undefined)[] = [undefined, ...LIMITS];

describe.each(Object.entries(problems))("of a small problem with %s", (_, problem) => {
  test("the search finds what trying all finds, without any limit too", () => {
    let some = 0;
    for (const without of TRIED) {
      const passing = everyDesign(problem, without).filter((design) =>
        keepsToLimits(problem.terms, design, without),
      );
      for (const count of [1, 9]) {
        const expected = cheapestOfKinds(passing, count).map(shown);
        const found = new PlanSearch(problem).cheapest({ count, without });
        expect(found.map(shown)).toEqual(expected);
        some += expected.length;
      }
    }
    expect(some).toBeGreaterThan(0);
  });
});

const cheapest = (problem: PlanProblem, count = 1): Design[] =>
  new PlanSearch(problem).cheapest({ count });
const solvedIn = (problem: PlanProblem) => linesSolved(() => cheapest(problem));

describe("a search does not solve", () => {
  // Energy is dear and tubing costs nothing more: the floor of every choice but the widest is higher.
  const dear = { energyPrice: 50 };
  const alike = [BIG, { ...SMALL, price: BIG.price }];

  test("what its least cost rules out once a cheaper is found", () => {
    expect(solvedIn(problemWith(dear, { slope: 0 }, { tubing: alike }))).toBe(1);
    // Another pressure, or another spacing, costs more at the least.
    expect(
      solvedIn(problemWith(dear, { slope: 0 }, { tubing: alike, pressures: [2.2e5, 2e5] })),
    ).toBe(1);
  });

  test("a line twice: not for another feeder, nor for another question", () => {
    // Three lines on five positions: in the last round the main loses half as much, and no line keeps
    // within the variation then.
    const problem = problemWith(
      { mainLoss: 1e5, days: 1, dayTime: 9 * 3600, variation: 0.05 },
      { slope: 0 },
      { layouts: layouts(60), feeders: [BIG, WIDE, SMALL] },
    );
    const search = new PlanSearch(problem);
    // Four ways to lay two sizes on three heads, each with all lines running and with the fewest.
    expect(linesSolved(() => expect(search.cheapest({ count: 1 })).toEqual([]))).toBe(8);
    expect(linesSolved(() => search.cheapest({ count: 1 }))).toBe(0);
  });

  test("what is ruled out before: too fast, too high, too much for the pump, hopeless", () => {
    const speedOf = (heads: number, bore: number) =>
      (heads * HEAD_FLOW) / ((Math.PI / 4) * bore ** 2);
    // Only all of it in the large size is slow enough: one of four ways.
    const slow = problemWith({ speed: 0.87 }, { slope: 0 }, { tubing: [BIG, SMALL] });
    expect(speedOf(1, 0.04)).toBeLessThan(0.87);
    expect(speedOf(2, 0.04)).toBeGreaterThan(0.87);
    // All large, or the last segment alone in the small size.
    expect(solvedIn({ ...slow, terms: { ...slow.terms, variation: 0.01 } })).toBeLessThanOrEqual(2);
    expect(solvedIn(problemWith({ pumpHead: 20 }))).toBe(0);
    expect(solvedIn(problemWith({ shareOfRating: 0.1 }))).toBe(0);
    expect(solvedIn(problemWith({ pumpFlow: 2.9 * HEAD_FLOW }))).toBe(0);
    expect(solvedIn(problemWith({ intake: 1e-7 }))).toBe(0);
    // A set of an hour puts a third of the depth on.
    expect(solvedIn(problemWith({ setTime: 3600 }))).toBe(0);
  });
});

/** What one method of the floors is asked. */
function askedOf<Name extends "isTooHigh" | "leastCost" | "rulesOut">(
  name: Name,
  search: () => unknown,
): Parameters<Prospect[Name]>[] {
  const spy = jest.spyOn(Prospect.prototype, name);
  try {
    search();
    return spy.mock.calls as Parameters<Prospect[Name]>[];
  } finally {
    spy.mockRestore();
  }
}

describe("within a layout and a pressure", () => {
  test("a feeder too fast is not joined with any tubing", () => {
    const problem = problemWith({ speed: 1.1 }, { slope: 0 }, { feeders: [SMALL, BIG] });
    const asked = askedOf("isTooHigh", () => cheapest(problem));
    expect(asked.length).toBeGreaterThan(0);
    for (const [, , feeder] of asked) expect(feeder).toBe(BIG);
  });

  test("each tubing and feeder has its own least cost: prices by length", () => {
    const feeders = [{ ...BIG, price: 0.5 }, WIDE];
    const problem = problemWith({}, { slope: 0 }, { feeders });
    const asked = askedOf("leastCost", () => cheapest(problem));
    // First the least of any; then 25 m of line, the first five or fifteen of them in the large size.
    const [any, ...each] = asked.map(([lines, tubing, feeder]) => [lines, tubing, feeder]);
    const [lines] = any;
    // Half of the way between the positions that are farthest apart: three times 12 m.
    const feeder = (price: number) => 18 * price;
    expect(lines).toBe(1);
    expect(any).toEqual([1, 75, feeder(0.5)]);
    for (const tubing of [100, 80, 90, 75]) {
      for (const price of [0.5, 5]) expect(each).toContainEqual([1, tubing, feeder(price)]);
    }
    expect(each).toHaveLength(8);
  });

  test("what costs more at the least than the best of its kind is not looked into", () => {
    // The second pressure asks for more energy: its least is above the best of the first, which is
    // found with the same number of lines, though more plans are wanted.
    const problem = problemWith({ energyPrice: 50 }, { slope: 0 }, { pressures: [2e5, 3.9e5] });
    expect(new Set(cheapest(problem, 9).map(({ lines }) => lines)).size).toBe(1);
    expect(askedOf("rulesOut", () => cheapest(problem, 9))).toHaveLength(4);
  });
});

test("designs are counted over all lists: tubing, sprinklers, pressures and feeders", () => {
  const count = MOST_DESIGNS / 4 / 50 / 50 + 1;
  const many = <T>(length: number, value: T) => new Array<T>(length).fill(value);
  const problem = problemWith(
    { intake: 1e-9 },
    { slope: 0 },
    { sprinklers: many(50, only), feeders: many(50, BIG), pressures: many(count, 2e5) },
  );
  expect(() => cheapest(problem)).toThrow("more than 10 million designs");
  const fewer = { ...problem, pressures: many(count - 1, 2e5) };
  expect(cheapest(fewer)).toEqual([]);
});

test("what is counted: pressures looked at, tubing with feeders, designs with every kind of run", () => {
  // The far side leans: rows of three heads and of two.
  const leaning = new FieldLayouts(
    {
      corners: [
        { x: 0, y: 0 },
        { x: 30, y: 0 },
        { x: 20, y: 48 },
        { x: 0, y: 48 },
      ],
      obstacles: [],
      setback: 0,
    },
    90,
    { slope: 0 },
  );
  expect(leaning.at(10, 12)?.kinds).toHaveLength(2);
  const problem = problemWith(
    { coverage: 0.5, intake: 1 },
    { slope: 0 },
    { layouts: leaning, feeders: [BIG, WIDE] },
  );
  const count = jest.spyOn(PlanWork.prototype, "count");
  try {
    expect(cheapest(problem)).toHaveLength(1);
    const counted = count.mock.calls.map(([steps]) => steps);
    expect(counted.slice(0, 2)).toEqual([20, 4 * 2]);
    const designs = counted.slice(2);
    expect(designs.length).toBeGreaterThan(0);
    expect(designs).toEqual(designs.map(() => 100 + 2 * 30));
  } finally {
    count.mockRestore();
  }
});
