import { type Design, isOver, keepsToLimits } from "../../src/solver/plan-design";
import { LIMITS, type LimitName, type PlanProblem } from "../../src/solver/plan-problem";
import { compareDesigns, kindOf, PlanSearch } from "../../src/solver/plan-search";
import { everyDesign, type Solved } from "../support/every-plan";
import { type GroundKind, randomPlan } from "../support/random-plan";

const COUNT = 5;

/** The cheapest of each kind by trying all. */
function byExhaustion(
  { terms }: PlanProblem,
  designs: readonly Design[],
  without?: LimitName,
): Design[] {
  const kinds = new Map<string, Design>();
  for (const design of designs) {
    if (!keepsToLimits(terms, design, without)) continue;
    const kind = kindOf(design.choice.laid, design.choice.sprinkler, design.lines);
    const known = kinds.get(kind);
    if (known === undefined || compareDesigns(design, known) < 0) kinds.set(kind, design);
  }
  return [...kinds.values()].sort(compareDesigns).slice(0, COUNT);
}

const shown = ({ choice: { laid, ...choice }, ...design }: Design) => ({
  spacing: laid.spacing,
  move: laid.move,
  ...choice,
  lines: design.lines,
  cost: design.year.total,
});

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

test("fields with and without a plan came up, and most limits held one back", () => {
  expect(seen.none).toBeGreaterThan(10);
  expect(seen.plans).toBeGreaterThan(15);
  expect(LIMITS.filter((name) => !seen.heldBack.has(name))).toEqual([]);
});
