import { type Design, isOver, keepsToLimits } from "../../src/solver/plan-design";
import { LIMITS, type LimitName, type PlanProblem } from "../../src/solver/plan-problem";
import { PlanSearch } from "../../src/solver/plan-search";
import { TooMuchWork } from "../../src/solver/plan-work";
import { cheapestOfKinds, everyDesign, shown, type Solved } from "../support/every-plan";
import { type GroundKind, randomPlan, squeezed } from "../support/random-plan";

const COUNT = 5;

/** The cheapest of each kind by trying all. */
function byExhaustion(
  { terms }: PlanProblem,
  designs: readonly Design[],
  without?: LimitName,
): Design[] {
  return cheapestOfKinds(
    designs.filter((design) => keepsToLimits(terms, design, without)),
    COUNT,
  );
}

const grounds: readonly GroundKind[] = ["level", "uphill", "downhill", "heights"];
const cases = grounds.flatMap((ground) =>
  [false, true].flatMap((irregular) =>
    Array.from({ length: 5 }, (_, i) => ({ ground, irregular, seed: 100 * i + 7, place: i })),
  ),
);

const seen = { none: 0, plans: 0, heldBack: new Set<LimitName>() };

test.each(cases)(
  "finds what trying all finds: $ground, irregular $irregular, seed $seed",
  ({ ground, irregular, seed, place }) => {
    const problem: PlanProblem = randomPlan(seed, ground, irregular);
    const search = new PlanSearch(problem);
    const solved: Solved = new Map();
    const all = everyDesign(problem, undefined, solved);
    const expected = byExhaustion(problem, all);
    expect(search.cheapest({ count: COUNT }).map(shown)).toEqual(expected.map(shown));
    if (expected.length === 0) seen.none++;
    else seen.plans++;
    // And without some limit, with what is already solved at hand.
    for (const without of LIMITS.filter((_, i) => (i + place) % 4 === 0)) {
      const best = byExhaustion(problem, everyDesign(problem, without, solved), without);
      expect([without, search.cheapest({ count: COUNT, without }).map(shown)]).toEqual([
        without,
        best.map(shown),
      ]);
      if (best.length > 0 && isOver(problem.terms, without, best[0].uses[without])) {
        seen.heldBack.add(without);
      }
    }
  },
);

test.each(Array.from({ length: 52 }, (_, i) => [1000 + i] as const))(
  "finds what trying all finds without each limit in turn: seed %d",
  (seed) => {
    const loose = randomPlan(seed, grounds[seed % 4], false, true);
    const [best] = new PlanSearch(loose).cheapest({ count: 1 });
    const problem =
      best === undefined ? loose : squeezed(loose, LIMITS[seed % LIMITS.length], best);
    const search = new PlanSearch(problem);
    const solved: Solved = new Map();
    for (const without of LIMITS) {
      const expected = byExhaustion(problem, everyDesign(problem, without, solved), without);
      expect([without, search.cheapest({ count: COUNT, without }).map(shown)]).toEqual([
        without,
        expected.map(shown),
      ]);
      if (expected.length > 0 && isOver(problem.terms, without, expected[0].uses[without])) {
        seen.heldBack.add(without);
      }
    }
  },
);

test("fields with and without a plan came up, and every limit held one back", () => {
  expect(seen.none).toBeGreaterThan(10);
  expect(seen.plans).toBeGreaterThan(15);
  expect(LIMITS.filter((name) => !seen.heldBack.has(name))).toEqual([]);
});

/** A problem with long lists on uneven ground, where floors leave much to solve. */
function longLists(): PlanProblem {
  const problem = randomPlan(9, "heights", true);
  const list = (count: number, from: number, step: number) =>
    Array.from({ length: count }, (_, i) => from + step * i);
  return {
    ...problem,
    spacings: list(8, 7, 0.1),
    moves: list(8, 9, 0.1),
    pressures: list(25, 2.1e5, 3e3),
    terms: { ...problem.terms, friction: { law: "Darcy" }, coverage: 0.1, speed: 9, intake: 1 },
  };
}

test("a search that would take too long is given up, and says what to give fewer of", () => {
  expect(() => new PlanSearch(longLists()).cheapest({ count: 5 })).toThrow(
    new TooMuchWork(
      "spacings, moves, pressures, sprinklers, tubing and feeders make more plans to tell apart than a cell can wait for: give fewer of them",
    ),
  );
});
