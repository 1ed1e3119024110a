import { allowance, type Design, isOver } from "./plan-design";
import { type LimitName, LIMITS, type PlanProblem, TIE } from "./plan-problem";
import type { PlanSearch, Wanted } from "./plan-search";

/** What the best plan would be without one limit. */
export interface Loosened {
  readonly limit: LimitName;
  readonly design: Design;
}

/** The limits that a problem has. */
export function limitsOf({ terms }: PlanProblem): LimitName[] {
  return LIMITS.filter((name) => allowance(terms, name) < Infinity);
}

/** The cheapest plan without one limit, where it goes beyond it and costs less than `below`. */
export function loosen(
  search: PlanSearch,
  { terms }: PlanProblem,
  limit: LimitName,
  wanted: Pick<Wanted, "below" | "only"> = {},
): Loosened | undefined {
  const [design] = search.cheapest({ ...wanted, count: 1, without: limit });
  if (design === undefined || !isOver(terms, limit, design.uses[limit])) return undefined;
  return { limit, design };
}

/** Limits that bind a plan whose spacing, move and sprinkler stand. */
const OF_A_PLAN: ReadonlySet<LimitName> = new Set(
  LIMITS.filter((name) => name !== "spacing" && name !== "move" && name !== "coverage"),
);

/**
 * The limit that holds a plan back: the one without which the same spacing, move and sprinkler would
 * cost least; undefined where none alone makes a difference.
 */
export function heldBackBy(
  search: PlanSearch,
  problem: PlanProblem,
  { choice, year }: Design,
): LimitName | undefined {
  const only = {
    spacing: problem.spacings.indexOf(choice.laid.spacing),
    move: problem.moves.indexOf(choice.laid.move),
    sprinkler: choice.sprinkler,
  };
  let held: LimitName | undefined;
  let least = year.total * (1 - TIE);
  for (const limit of limitsOf(problem)) {
    if (!OF_A_PLAN.has(limit)) continue;
    const found = loosen(search, problem, limit, { below: least, only });
    if (found === undefined) continue;
    held = limit;
    least = found.design.year.total;
  }
  return held;
}

/** Where no plan passes: those limits whose removal alone would give one, the cheapest plan first. */
export function waysOut(search: PlanSearch, problem: PlanProblem): Loosened[] {
  return limitsOf(problem)
    .map((limit) => loosen(search, problem, limit))
    .filter((found) => found !== undefined)
    .sort((a, b) => a.design.year.total - b.design.year.total);
}
