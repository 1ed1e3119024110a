import { NoAnswer } from "../ground/domain-error";
import { allowance, type Design } from "../solver/plan-design";
import { heldBackBy, limitsOf, loosen, type Loosened, waysOut } from "../solver/plan-limits";
import type { LimitName, PlanProblem } from "../solver/plan-problem";
import { PlanSearch } from "../solver/plan-search";
import { TooMuchWork } from "../solver/plan-work";
import { headerOf, type Spill, spillTable } from "./table";
import { hourMeasure, Measure, rounded, type Measures } from "./units";

/** Costs this near to the best, as a share, are the same: prices are not known better. */
const SAME = 0.03;

/** Digits that money is known to. */
const MONEY_DIGITS = 3;

/** Enough for a length that was typed; the rest is what meters and back leave behind. */
const LENGTH_DIGITS = 12;

/** The best plans, a row each. */
export function plansTable(u: Measures, problem: PlanProblem, count: number): Spill {
  const search = new PlanSearch(problem);
  const plans = search.cheapest({ count });
  search.renew();
  if (plans.length === 0) throw noPlan(u, search, problem);
  const [best] = plans;
  const length = u.length.unit;
  const pressure = u.pressure.unit;
  return spillTable(
    [
      { header: "spacing", unit: length },
      { header: "move", unit: length },
      { header: "sprinkler" },
      { header: "lines" },
      { header: "heads" },
      { header: "larger tubing" },
      { header: "larger segments" },
      { header: "smaller tubing" },
      { header: "smaller segments" },
      { header: "feeder" },
      { header: "feeder length", unit: length },
      { header: "sets" },
      { header: "set", unit: "h" },
      { header: "sets a day" },
      { header: "lowest nozzle pressure", unit: pressure },
      { header: "highest nozzle pressure", unit: pressure },
      { header: "inlet", unit: pressure },
      { header: "pump head", unit: length },
      { header: "flow of a line", unit: u.flow.unit },
      { header: "flow in all", unit: u.flow.unit },
      { header: "variation" },
      { header: "rate", unit: u.rate.unit },
      { header: "share covered" },
      { header: "capital" },
      { header: "capital a year" },
      { header: "energy a year" },
      { header: "labor a year" },
      { header: "cost a year" },
      { header: "same as the best" },
      { header: "held back by" },
    ],
    plans.map((plan) => planRow(u, problem, plan, best, heldBack(search, problem, plan))),
  );
}

function planRow(
  u: Measures,
  problem: PlanProblem,
  plan: Design,
  best: Design,
  heldBackBy: string,
): (string | number)[] {
  const { choice, lines, uses, year } = plan;
  const { laid, tubing } = choice;
  const length = (meters: number) => Number(u.length.give(meters).toPrecision(LENGTH_DIGITS));
  const hasTwo = tubing.smaller !== tubing.larger;
  const heads = laid.kinds[0].heads;
  return [
    length(laid.spacing),
    length(laid.move),
    problem.sprinklers[choice.sprinkler].name,
    lines,
    heads,
    problem.tubing[tubing.larger].name,
    tubing.change,
    hasTwo ? problem.tubing[tubing.smaller].name : "",
    heads - tubing.change,
    problem.feeders[choice.feeder].name,
    length(plan.feederLength),
    laid.sets,
    hourMeasure.give(plan.setTime),
    plan.perDay,
    u.pressure.give(problem.pressures[choice.pressure]),
    u.pressure.give(plan.highest),
    u.pressure.give(plan.inlet),
    u.length.give(plan.pumpHead),
    u.flow.give(plan.flow),
    u.flow.give(uses["pump flow"]),
    uses.variation,
    u.rate.give(plan.rate),
    laid.coverage,
    money(plan.capital),
    money(year.recovery + year.upkeep),
    money(year.energy),
    money(year.labor),
    money(year.total),
    year.total <= best.year.total * (1 + SAME) ? "yes" : "no",
    heldBackBy,
  ];
}

/** The limit that holds a plan back; a plan that is known is not lost because that is much to ask. */
function heldBack(search: PlanSearch, problem: PlanProblem, plan: Design): string {
  try {
    return heldBackBy(search, problem, plan) ?? "";
  } catch (error) {
    if (error instanceof TooMuchWork) return "too many to try";
    throw error;
  }
}

function money(amount: number): number {
  return Number(amount.toPrecision(MONEY_DIGITS));
}

/** How a limit is said: what it is of, and its unit. */
function limitMeasure(u: Measures, limit: LimitName): Measure {
  const measures: Partial<Record<LimitName, Measure>> = {
    speed: u.speed,
    intake: u.rate,
    chart: u.pressure,
    "set hours": hourMeasure,
    "day hours": hourMeasure,
    "pump flow": u.flow,
    "pump head": u.length,
  };
  return measures[limit] ?? plain;
}

const plain = new Measure("", 1, "SI");

/** What the number of a limit is, where its name alone does not say. */
const OF: Partial<Record<LimitName, string>> = {
  spacing: "spacing, share of the wetted diameter",
  move: "move, share of the wetted diameter",
  chart: "pressure beyond the chart",
  coverage: "share covered",
};

function limitLabel(u: Measures, limit: LimitName): string {
  const { unit } = limitMeasure(u, limit);
  return headerOf({ header: OF[limit] ?? limit, unit: unit === "" ? undefined : unit });
}

/** Says which limit stands in the way, what a plan without it needs, and what would do as well. */
function noPlan(u: Measures, search: PlanSearch, problem: PlanProblem): NoAnswer {
  let ways: Loosened[];
  try {
    ways = waysOut(search, problem);
  } catch (error) {
    if (!(error instanceof TooMuchWork)) throw error;
    return new NoAnswer(
      "no plan keeps to every limit; the choices are too many to say which one stands in the way: give fewer of them",
    );
  }
  const [first, ...others] = ways;
  if (first === undefined) {
    return new NoAnswer(
      "no plan keeps to every limit, and leaving out any one of them gives none: at least two must move",
    );
  }
  const also = others.map(({ limit }) => `"${limit}"`).join(" or ");
  return new NoAnswer(
    `no plan keeps to every limit; without "${first.limit}" there is one: ${needs(u, problem, first)}` +
      (also === "" ? "" : `. So there is without ${also}`),
  );
}

function needs(u: Measures, { terms }: PlanProblem, { limit, design }: Loosened): string {
  const measure = limitMeasure(u, limit);
  const say = (value: number) =>
    measure.unit === "" ? rounded(value) : `${rounded(measure.give(value))} ${measure.unit}`;
  const what = OF[limit] ?? limit;
  return `${what} ${say(design.uses[limit])}, and the limit is ${say(allowance(terms, limit))}`;
}

/** What each limit costs, a row each. */
export function limitsTable(u: Measures, problem: PlanProblem): Spill {
  const search = new PlanSearch(problem);
  const [best] = search.cheapest({ count: 1 });
  search.renew();
  const loosened = new Map(
    limitsOf(problem).map(
      (limit) => [limit, loosen(search, problem, limit, { below: best?.year.total })] as const,
    ),
  );
  if (best === undefined && [...loosened.values()].every((found) => found === undefined)) {
    throw noPlan(u, search, problem);
  }
  return spillTable(
    [
      { header: "limit" },
      { header: "now" },
      { header: "best without it" },
      { header: "cost a year" },
      { header: "saving a year" },
    ],
    [...loosened].map(([limit, found]) => {
      const measure = limitMeasure(u, limit);
      const give = (value: number) => Number(measure.give(value).toPrecision(LENGTH_DIGITS));
      const without = found?.design ?? best;
      return [
        limitLabel(u, limit),
        give(allowance(problem.terms, limit)),
        without === undefined ? "" : give(without.uses[limit]),
        without === undefined ? "" : money(without.year.total),
        without === undefined || best === undefined
          ? ""
          : money(best.year.total - without.year.total),
      ];
    }),
  );
}
