import { NoAnswer } from "../../src/ground/domain-error";
import type { LaidField } from "../../src/solver/laid-field";
import { type Design, keepsToLimits } from "../../src/solver/plan-design";
import type { PlanProblem } from "../../src/solver/plan-problem";
import { kindOf, MOST_DESIGNS, PlanSearch, type Wanted } from "../../src/solver/plan-search";
import { TooMuchWork } from "../../src/solver/plan-work";
import { countTubingChoices } from "../../src/solver/plan-tubing";
import { cheapestOfKinds, everyDesign, shown } from "../support/every-plan";
import { randomPlan } from "../support/random-plan";

/**
 * A few quick problems against trying all: what is wanted of a search, its order and its ends.
 * plan-search.test.ts does many problems and every limit.
 */
const loose = (seed: number): PlanProblem => {
  const problem = randomPlan(seed, "uphill", false);
  return {
    ...problem,
    terms: { ...problem.terms, variation: 0.5, speed: 4, intake: 1, days: 10, mainLoss: 30000 },
  };
};
const problems = [3, 4, 6].map((seed) => ({ seed, problem: loose(seed) }));

/** What a search should find, by trying all: the cheapest of each kind that is wanted. */
function byTrying({ problem, all }: Tried, { count, without, only, below }: Wanted): Design[] {
  const wanted = all.filter((design) => {
    const { laid, sprinkler } = design.choice;
    if (!keepsToLimits(problem.terms, design, without)) return false;
    if (below !== undefined && design.year.total >= below) return false;
    return (
      only === undefined ||
      (problem.spacings[only.spacing] === laid.spacing &&
        problem.moves[only.move] === laid.move &&
        only.sprinkler === sprinkler)
    );
  });
  return cheapestOfKinds(wanted, count);
}

interface Tried {
  readonly problem: PlanProblem;
  readonly all: readonly Design[];
}

describe.each(problems)("of problem $seed", ({ problem }) => {
  const tried: Tried = { problem, all: everyDesign(problem) };
  const search = new PlanSearch(problem);
  const found = byTrying(tried, { count: 50 });
  const same = (wanted: Wanted) => {
    const expected = byTrying(tried, wanted).map(shown);
    expect(search.cheapest(wanted).map(shown)).toEqual(expected);
    expect(new PlanSearch(problem).cheapest(wanted).map(shown)).toEqual(expected);
    return expected.length;
  };

  test("as many plans as are wanted, all where there are fewer", () => {
    expect(found.length).toBeGreaterThan(1);
    for (const count of [1, 2, 3, 50]) expect(same({ count })).toBe(Math.min(count, found.length));
  });

  test("only with one spacing, move and sprinkler", () => {
    let some = 0;
    for (let spacing = 0; spacing < problem.spacings.length; spacing++)
      for (let move = 0; move < problem.moves.length; move++)
        for (let sprinkler = 0; sprinkler < problem.sprinklers.length; sprinkler++)
          some += same({ count: 50, only: { spacing, move, sprinkler } });
    expect(some).toBe(found.length);
  });

  test("only below a cost, which is not below itself", () => {
    const [first] = found;
    const dearest = found[found.length - 1].year.total;
    expect(same({ count: 50, below: first.year.total })).toBe(0);
    expect(same({ count: 50, below: dearest })).toBe(
      found.filter(({ year }) => year.total < dearest).length,
    );
    expect(same({ count: 1, below: first.year.total * 1.0001 })).toBe(1);
  });
});

test("kinds differ by spacing, move, sprinkler and number of lines", () => {
  const laid = (spacing: number, move: number) => ({ spacing, move }) as LaidField;
  const kinds = [
    kindOf(laid(9, 12), 0, 2),
    kindOf(laid(12, 9), 0, 2),
    kindOf(laid(9, 12), 2, 0),
    kindOf(laid(91, 2), 0, 2),
    kindOf(laid(9, 12), 0, 3),
  ];
  expect(new Set(kinds).size).toBe(kinds.length);
});

describe("lists too long", () => {
  const problem = loose(4);
  const [{ choice }] = new PlanSearch(problem).cheapest({ count: 1 });
  const { spacing, move } = choice.laid;
  const pressure = problem.pressures[choice.pressure];
  const one = { ...problem, spacings: [spacing], moves: [move] };

  /** One layout, one pressure that the chart has, at the end of many far below it. */
  function manyPressures(count: number): PlanProblem {
    const low = new Array<number>(count - 1).fill(1000);
    return { ...one, pressures: [...low, pressure] };
  }

  function designsAPressure({ layouts, tubing, sprinklers, feeders }: PlanProblem): number {
    const segments = layouts.at(spacing, move)?.segmentLength.length ?? 0;
    return countTubingChoices(tubing.length, segments) * sprinklers.length * feeders.length;
  }

  test("more designs than may be chosen from are not begun", () => {
    const most = Math.floor(MOST_DESIGNS / designsAPressure(manyPressures(1)));
    // Begun, as many as there may be; then there is too much to do.
    expect(() => new PlanSearch(manyPressures(most)).cheapest({ count: 1 })).toThrow(TooMuchWork);
    const tooMany = () => new PlanSearch(manyPressures(most + 1)).cheapest({ count: 1 });
    expect(tooMany).toThrow(
      "spacings, moves, pressures, sprinklers, tubing and feeders make more than 10 million designs: give fewer of them",
    );
    expect(tooMany).toThrow(NoAnswer);
  });

  test("work adds up over what one search is asked, and starts again when it is renewed", () => {
    const search = new PlanSearch(manyPressures(40000));
    const [first] = search.cheapest({ count: 1 });
    expect(first.choice.pressure).toBe(39999);
    const again = () => {
      for (let times = 0; times < 10; times++) search.cheapest({ count: 1 });
    };
    expect(again).toThrow(TooMuchWork);
    expect(again).toThrow(
      "spacings, moves, pressures, sprinklers, tubing and feeders make more plans to tell apart than a cell can wait for: give fewer of them",
    );
    search.renew();
    expect(search.cheapest({ count: 1 }).map(shown)).toEqual([shown(first)]);
  });
});
