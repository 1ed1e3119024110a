import { compareDesigns } from "../../src/solver/best-plans";
import { PlanCosts } from "../../src/solver/plan-costs";
import { type Design, workOut } from "../../src/solver/plan-design";
import { type FieldState, stateAtInlet, stateAtLowest } from "../../src/solver/plan-hydraulics";
import type { LimitName, PlanProblem } from "../../src/solver/plan-problem";
import { kindOf } from "../../src/solver/plan-search";
import { boresOf, tubingChoices } from "../../src/solver/plan-tubing";

/** What was solved for one problem, to be used again where only a limit is left out. */
export type Solved = Map<string, FieldState | undefined>;

/** Every design of a problem worked out, nothing left out. */
export function everyDesign(
  problem: PlanProblem,
  without?: LimitName,
  solved: Solved = new Map(),
): Design[] {
  const costs = new PlanCosts(problem.terms);
  const work = { passed: 0 };
  const once = (key: string, solve: () => FieldState | undefined) => {
    if (!solved.has(key)) solved.set(key, solve());
    return solved.get(key);
  };
  const designs: Design[] = [];
  const { terms } = problem;
  for (const spacing of problem.spacings) {
    for (const move of problem.moves) {
      const laid = problem.layouts.at(spacing, move);
      if (laid === undefined) continue;
      problem.sprinklers.forEach(({ law }, sprinkler) => {
        problem.pressures.forEach((lowest, pressure) => {
          for (const tubing of tubingChoices(problem.tubing, laid.segmentLength)) {
            const bore = boresOf(tubing, problem.tubing, laid.segmentLength.length);
            const makeup = { bore, law, riser: terms.riser, friction: terms.friction };
            const key = [laid.hydraulics, sprinkler, lowest, bore.join(" ")].join(";");
            const state = once(key, () => stateAtLowest(laid, makeup, lowest, work));
            if (state === undefined) continue;
            const raised = (inlet: number) =>
              once(`${key};${inlet}`, () => stateAtInlet(laid, makeup, inlet, work));
            problem.feeders.forEach((_, feeder) => {
              const choice = { laid, sprinkler, pressure, tubing, feeder };
              const design = workOut(problem, costs, choice, { state, raised }, without);
              if (design !== undefined) designs.push(design);
            });
          }
        });
      });
    }
  }
  return designs;
}

/** The cheapest of each kind among these designs, in the order in which a search lists them. */
export function cheapestOfKinds(designs: Iterable<Design>, count: number): Design[] {
  const kinds = new Map<string, Design>();
  for (const design of designs) {
    const kind = kindOf(design.choice.laid, design.choice.sprinkler, design.lines);
    const known = kinds.get(kind);
    if (known === undefined || compareDesigns(design, known) < 0) kinds.set(kind, design);
  }
  return [...kinds.values()].sort(compareDesigns).slice(0, count);
}

/** What is compared of a design. */
export const shown = ({ choice: { laid, ...choice }, ...design }: Design) => ({
  spacing: laid.spacing,
  move: laid.move,
  ...choice,
  lines: design.lines,
  cost: design.year.total,
});
