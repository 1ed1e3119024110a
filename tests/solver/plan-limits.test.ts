import { type Design, keepsToLimits } from "../../src/solver/plan-design";
import { heldBackBy, limitsOf, loosen, waysOut } from "../../src/solver/plan-limits";
import { type LimitName, LIMITS, type PlanProblem } from "../../src/solver/plan-problem";
import { PlanSearch, type Wanted } from "../../src/solver/plan-search";
import { cheapestOfKinds, everyDesign } from "../support/every-plan";
import { problemWith } from "../support/small-plan";

/** What a problem without pump, set time or rating to keep to still has. */
const ALWAYS: readonly LimitName[] = [
  "variation",
  "speed",
  "intake",
  "spacing",
  "move",
  "chart",
  "day hours",
  "days",
];

describe("the limits that a problem has", () => {
  test("are those that a number is given for, in the order in which they are listed", () => {
    const none = { shareOfRating: Infinity };
    expect(limitsOf(problemWith(none))).toEqual([...ALWAYS, "coverage"]);
    expect(limitsOf(problemWith({ ...none, variation: Infinity, speed: Infinity }))).toEqual(
      [...ALWAYS, "coverage"].slice(2),
    );
    const all = { pumpFlow: 1, pumpHead: 60, setTime: 7200, shareOfRating: 0.7 };
    expect(limitsOf(problemWith(all))).toEqual(LIMITS);
  });
});

/** What a search is asked, and what it finds without each limit: a cost, and how far beyond the limit. */
interface Found {
  readonly total: number;
  readonly uses: number;
}

/** A search that knows the cheapest plan without each limit, and minds the cost to stay below. */
function told(found: Partial<Record<LimitName, Found>>) {
  const asked: Wanted[] = [];
  const search = {
    cheapest: (wanted: Wanted) => {
      asked.push(wanted);
      const { without, below = Infinity } = wanted;
      const known = without && found[without];
      if (known === undefined || known.total >= below) return [];
      return [{ year: { total: known.total }, uses: { [without as LimitName]: known.uses } }];
    },
  } as unknown as PlanSearch;
  return { search, asked };
}

describe("without one limit", () => {
  const problem = problemWith({ speed: 1.5 });

  test("the one cheapest plan that goes beyond it", () => {
    const { search, asked } = told({ speed: { total: 90, uses: 1.6 } });
    const only = { spacing: 0, move: 0, sprinkler: 0 };
    expect(loosen(search, problem, "speed", { below: 100, only })).toMatchObject({
      limit: "speed",
      design: { year: { total: 90 } },
    });
    expect(asked).toEqual([{ count: 1, without: "speed", below: 100, only }]);
  });

  test("none where none is found, or where it keeps to the limit all the same", () => {
    expect(loosen(told({}).search, problem, "speed")).toBeUndefined();
    const { search } = told({ speed: { total: 90, uses: 1.5 } });
    expect(loosen(search, problem, "speed")).toBeUndefined();
  });
});

describe("what holds a plan back", () => {
  const problem: PlanProblem = { ...problemWith({ speed: 1 }), spacings: [9, 10], moves: [11, 12] };
  const design = (total: number, spacing = 10, move = 12) =>
    ({ choice: { laid: { spacing, move }, sprinkler: 3 }, year: { total } }) as unknown as Design;

  test("is the limit without which the same placing would cost least", () => {
    const { search } = told({
      variation: { total: 95, uses: 9 },
      speed: { total: 90, uses: 9 },
      days: { total: 93, uses: 9 },
    });
    expect(heldBackBy(search, problem, design(100))).toBe("speed");
  });

  test("asks for the plan's own spacing, move and sprinkler, below the best so far", () => {
    const { search, asked } = told({ variation: { total: 95, uses: 9 } });
    expect(heldBackBy(search, problem, design(100, 9, 12))).toBe("variation");
    const only = { spacing: 0, move: 1, sprinkler: 3 };
    expect(asked[0]).toEqual({
      count: 1,
      without: "variation",
      below: 100 * (1 - 1e-9),
      only,
    });
    expect(asked[1]).toEqual({ count: 1, without: "speed", below: 95, only });
    // Spacing, move and coverage do not bind a plan that has its spacing and move.
    expect(asked.map(({ without }) => without)).toEqual([
      "variation",
      "speed",
      "intake",
      "chart",
      "day hours",
      "days",
      "share of rating",
    ]);
  });

  test("is nothing where no limit alone makes it cheaper by more than a tie", () => {
    const tied = { total: 100 * (1 - 0.9e-9), uses: 9 };
    expect(heldBackBy(told({ speed: tied }).search, problem, design(100))).toBeUndefined();
    const less = { total: 100 * (1 - 1.1e-9), uses: 9 };
    expect(heldBackBy(told({ speed: less }).search, problem, design(100))).toBe("speed");
  });
});

test("where no plan passes: the limits that would each let one, the cheapest plan first", () => {
  const { search, asked } = told({
    variation: { total: 95, uses: 9 },
    intake: { total: 90, uses: 9 },
    days: { total: 93, uses: 99 },
    // Found, but within its limit: not this one keeps it from passing.
    speed: { total: 10, uses: 0.1 },
    coverage: { total: 94, uses: 0.5 },
  });
  const ways = waysOut(search, problemWith());
  expect(ways.map(({ limit }) => limit)).toEqual(["intake", "days", "coverage", "variation"]);
  expect(asked.every(({ below, only }) => below === undefined && only === undefined)).toBe(true);
});

/** Of all designs, nothing left out, what one limit alone keeps from passing. */
describe("on a small field, against trying all", () => {
  // Three heads in 40 mm run at 1.33 m/s and more: the speed keeps the cheaper tubing out.
  const problem = problemWith({ speed: 1.2, energyPrice: 0.01 });

  test("what holds its plan back", () => {
    const search = new PlanSearch(problem);
    const [plan] = search.cheapest({ count: 1 });
    const [best] = cheapestOfKinds(
      everyDesign(problem).filter((design) => keepsToLimits(problem.terms, design)),
      1,
    );
    expect(plan.year.total).toBe(best.year.total);
    const without = limitsOf(problem)
      .filter((limit) => !["spacing", "move", "coverage"].includes(limit))
      .map((limit) => {
        const passing = everyDesign(problem, limit).filter((design) =>
          keepsToLimits(problem.terms, design, limit),
        );
        const least = Math.min(...passing.map(({ year }) => year.total));
        return { limit, least };
      })
      .sort((a, b) => a.least - b.least);
    expect(without[0].least).toBeLessThan(best.year.total);
    expect(without[1].least).toBeGreaterThan(without[0].least);
    expect(without[0].limit).toBe("speed");
    expect(heldBackBy(search, problem, plan)).toBe(without[0].limit);
  });

  test("what would let one pass", () => {
    const tight = problemWith({ speed: 0.5 });
    const search = new PlanSearch(tight);
    expect(search.cheapest({ count: 1 })).toEqual([]);
    expect(waysOut(search, tight).map(({ limit }) => limit)).toEqual(["speed"]);
  });
});
