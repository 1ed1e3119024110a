import { frictionPressureLoss } from "../formulas/friction";
import { FLOW_EXPONENT } from "../formulas/hazen-williams";
import { meanSpeed } from "../formulas/mean-speed";
import { largestSpacing } from "../formulas/sprinkler-spacing";
import type { YearlyCost } from "../formulas/yearly-cost";
import { WATER_WEIGHT } from "../ground/constants";
import type { LaidField } from "./laid-field";
import type { FieldState } from "./plan-hydraulics";
import {
  LIMITS,
  type LimitName,
  type PlanProblem,
  type PlanSprinkler,
  type PlanTerms,
  SLACK,
} from "./plan-problem";
import type { PlanCosts } from "./plan-costs";
import {
  dailySets,
  fewestRunning,
  givenTime,
  linesInTime,
  neededDay,
  neededTime,
  setsOfALine,
} from "./plan-schedule";
import type { TubingChoice } from "./plan-tubing";

/** What a person chooses; numbers are places in the lists of the problem. */
export interface Choice {
  readonly laid: LaidField;
  readonly sprinkler: number;
  readonly pressure: number;
  readonly tubing: TubingChoice;
  readonly feeder: number;
}

/** A choice with all that follows from it, SI; over all runs of the field. */
export interface Design {
  readonly choice: Choice;
  readonly lines: number;
  readonly setTime: number;
  /** Sets in a day. */
  readonly perDay: number;
  readonly inlet: number;
  /** At any nozzle, with the fewest lines running. */
  readonly highest: number;
  readonly pumpHead: number;
  /** Of one line in the run that takes most, with all lines running. */
  readonly flow: number;
  /** Least application rate, which the set goes by. */
  readonly rate: number;
  /** Of one line. */
  readonly feederLength: number;
  readonly capital: number;
  readonly year: YearlyCost;
  /** What it comes to, to be held against each limit's allowance. */
  readonly uses: Readonly<Record<LimitName, number>>;
}

/** How a line in the field is solved; the state under more pressure is asked for only where it differs. */
export interface Hydraulics {
  readonly state: FieldState;
  raised(inlet: number): FieldState | undefined;
}

/**
 * Works a choice out and measures it against every limit. All runs count: the highest pressures,
 * speeds and rates are those with the fewest lines of the rotation running, when the main loses
 * less; the lowest pressure and the pump's duty are those with all of them running. Undefined where
 * no line comes round in time.
 */
export function workOut(
  problem: PlanProblem,
  costs: PlanCosts,
  choice: Choice,
  hydraulics: Hydraulics,
  without?: LimitName,
): Design | undefined {
  const { terms } = problem;
  const { laid } = choice;
  const { state } = hydraulics;
  const pressure = problem.pressures[choice.pressure];
  const area = laid.spacing * laid.move;

  const leastHeadFlow = leastOf(laid, state);
  const needed = neededTime(terms, area, leastHeadFlow);
  const setTime = givenTime(terms, without) ?? needed;
  const perDay = dailySets(terms, setTime, without);
  const lines = linesInTime(terms, laid.sets, perDay, without);
  if (lines === 0) return undefined;

  // With fewer lines running the main loses less, and every inlet has that much more: at most, since
  // a feeder that carries more then loses more.
  const running = fewestRunning(laid.sets, lines) / lines;
  const relief = terms.mainLoss * (1 - running ** FLOW_EXPONENT);
  const fewest = relief > 0 ? hydraulics.raised(state.inlet + relief) : state;
  if (fewest === undefined) return undefined;

  const feeder = problem.feeders[choice.feeder];
  const feederLength = laid.feeder(lines);
  const flow = Math.max(...state.runs.map(({ inflow }) => inflow));
  const pumpHead = headAtPump(terms, laid, state, (inflow) =>
    frictionPressureLoss(inflow, feeder.bore, feederLength, terms.friction),
  );
  const highest = Math.max(...fewest.runs.map((run) => run.highest));
  const fastest = Math.max(
    ...fewest.runs.map((run) => Math.max(run.speed, meanSpeed(run.inflow, feeder.bore))),
  );
  const average = sumOver(laid, state, ({ sum }) => sum) / laid.heads;
  const mostHeadFlow = Math.max(
    ...fewest.runs.map(({ inflow }, i) => inflow / laid.kinds[i].heads),
  );
  const { tubing } = choice;
  const weakest = Math.min(
    problem.tubing[tubing.larger].rating,
    problem.tubing[tubing.smaller].rating,
    feeder.rating,
  );
  // With the valves shut nothing is lost on the way to the lowest tubing.
  const atRest = WATER_WEIGHT * (pumpHead - terms.lift - laid.lowestGround);

  const capital = costs.capital(
    lines,
    laid.kinds[0].heads,
    tubing.price,
    feederLength * feeder.price,
  );
  const volume = sumOver(laid, state, ({ inflow }) => inflow) * setTime;
  const sprinkler = problem.sprinklers[choice.sprinkler];
  const busiest = setsOfALine(laid.sets, lines);
  return {
    choice,
    lines,
    setTime,
    perDay,
    inlet: state.inlet,
    highest,
    pumpHead,
    flow,
    rate: leastHeadFlow / area,
    feederLength,
    capital,
    year: costs.year(capital, volume, pumpHead, laid.sets),
    uses: {
      ...usesOfPlacing(laid, sprinkler, pressure),
      variation: (highest - pressure) / average,
      speed: fastest,
      intake: mostHeadFlow / area,
      chart: beyondChart(sprinkler, pressure, highest),
      "set hours": needed,
      "day hours": neededDay(terms, busiest, setTime, without),
      days: busiest / perDay,
      "pump flow": lines * flow,
      "pump head": pumpHead,
      "share of rating": Math.max(0, atRest) / weakest,
    },
  };
}

/** What is known before a line is laid in tubing. */
export function usesOfPlacing(
  laid: LaidField,
  sprinkler: PlanSprinkler,
  pressure: number,
): Pick<Record<LimitName, number>, "spacing" | "move" | "coverage"> {
  const wetted = wettedDiameter(sprinkler, pressure);
  return {
    spacing: laid.spacing / wetted,
    move: laid.move / wetted,
    coverage: laid.coverage,
  };
}

/** The most that a limit allows; of the coverage the least. */
export function allowance(terms: PlanTerms, name: LimitName): number {
  switch (name) {
    case "spacing":
      return largestSpacing(1, terms.wind).along;
    case "move":
      return largestSpacing(1, terms.wind).between;
    case "chart":
      return 0;
    case "set hours":
      return terms.setTime ?? Infinity;
    case "day hours":
      return terms.dayTime;
    case "pump flow":
      return terms.pumpFlow;
    case "pump head":
      return terms.pumpHead;
    case "share of rating":
      return terms.shareOfRating;
    default:
      return terms[name];
  }
}

/**
 * Wetted diameter at the lowest nozzle, straight between the chart's rows and level beyond them: the
 * least over all pressures from there up, for no head has less pressure and some have more.
 */
export function wettedDiameter({ wetted }: PlanSprinkler, pressure: number): number {
  const above = wetted.findIndex((row) => row.pressure >= pressure);
  if (above < 0) return wetted[wetted.length - 1].diameter;
  const least = Math.min(...wetted.slice(above).map(({ diameter }) => diameter));
  if (above === 0) return least;
  const [low, high] = [wetted[above - 1], wetted[above]];
  const share = (pressure - low.pressure) / (high.pressure - low.pressure);
  return Math.min(least, low.diameter + share * (high.diameter - low.diameter));
}

/** How far the heads run outside the sprinkler's chart, Pa. */
export function beyondChart(sprinkler: PlanSprinkler, lowest: number, highest: number): number {
  const beyond = Math.max(sprinkler.lowest - lowest, highest - sprinkler.highest);
  return beyond > SLACK * highest ? beyond : 0;
}

/** Whether a limit allows less than a value, or of the coverage asks for more. */
export function isOver(terms: PlanTerms, name: LimitName, value: number): boolean {
  const allowed = allowance(terms, name);
  return name === "coverage" ? value < allowed * (1 - SLACK) : value > allowed * (1 + SLACK);
}

/** Whether a design keeps to every limit but one. */
export function keepsToLimits(terms: PlanTerms, { uses }: Design, without?: LimitName): boolean {
  return LIMITS.every((name) => name === without || !isOver(terms, name, uses[name]));
}

/** Head, m, that the pump makes for the run that asks most of it, all lines running. */
function headAtPump(
  { lift, mainLoss }: PlanTerms,
  laid: LaidField,
  { inlet, runs }: FieldState,
  feederLoss: (inflow: number) => number,
): number {
  const wanted = laid.kinds.map(
    ({ nearHeight }, i) => nearHeight + (inlet + feederLoss(runs[i].inflow)) / WATER_WEIGHT,
  );
  // A source that lies high enough needs no pump.
  return Math.max(0, lift + mainLoss / WATER_WEIGHT + Math.max(...wanted));
}

/** Mean flow of a head in the run that gets least: the set must be long enough there. */
function leastOf(laid: LaidField, { runs }: FieldState): number {
  return Math.min(...runs.map(({ inflow }, i) => inflow / laid.kinds[i].heads));
}

function sumOver(
  laid: LaidField,
  { runs }: FieldState,
  read: (run: FieldState["runs"][number]) => number,
): number {
  return runs.reduce((sum, run, i) => sum + laid.kinds[i].count * read(run), 0);
}
