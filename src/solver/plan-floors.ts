import { frictionPressureLoss } from "../formulas/friction";
import { flowAtSpeed } from "../formulas/mean-speed";
import { WATER_WEIGHT } from "../ground/constants";
import { DAY } from "../ground/unit-factors";
import { preparedHeadFlow } from "./head-flow";
import type { LaidField } from "./laid-field";
import type { PlanCosts } from "./plan-costs";
import { beyondChart, isOver, usesOfPlacing } from "./plan-design";
import type { Work } from "./plan-hydraulics";
import type { LimitName, PlanPipe, PlanProblem } from "./plan-problem";
import { dailySets, givenTime, linesInTime, neededTime } from "./plan-schedule";
import type { TubingChoice } from "./plan-tubing";
import { segmentFriction, type SegmentFriction } from "./segment-friction";

/** Bounds are passed by more than what rounding and the solver's tolerance make. */
const ROOM = 1 + 1e-8;

/** A pressure that no line has, Pa: it stands for no limit at all, and its flow is still a number. */
const BEYOND_ANY = 1e20;

/** Friction in every size of tubing along the longest run of a field, for any flow of its heads. */
export class RunFriction {
  private readonly bySize: readonly SegmentFriction[];

  constructor(
    problem: PlanProblem,
    private readonly laid: LaidField,
    private readonly work: Work,
  ) {
    const { heads, first } = laid.kinds[0];
    const length = laid.segmentLength.slice();
    length[0] = first;
    this.bySize = problem.tubing.map(({ bore }) =>
      segmentFriction(problem.terms.friction, new Array<number>(heads).fill(bore), length),
    );
  }

  /** Pressure lost from the inlet to each head, every head giving the same flow; 0 first, at the inlet. */
  along(size: number, headFlow: number): number[] {
    const { heads } = this.laid.kinds[0];
    const lost = [0];
    for (let i = 0; i < heads; i++) {
      lost.push(lost[i] + this.bySize[size].loss(i, (heads - i) * headFlow));
    }
    this.work.passed += heads;
    return lost;
  }
}

/**
 * What is certain of every design with one layout, sprinkler and pressure, before any line is
 * solved. Two facts bear it, on any ground:
 *
 * No nozzle has less than the pressure p that the search sets for the lowest, and a head never gives
 * less for more pressure. So every head of every run gives at least q(p), every segment carries at
 * least what the heads beyond it give then, and friction in a bore is at least that of this flow.
 *
 * A limit on variation v caps the highest: (highest − p)/average ≤ v, and no average is above the
 * highest, so highest ≤ p/(1 − v). So does the end of a chart. No head gives more than at that cap.
 *
 * A run's inlet has what its last (or first) nozzle has, and riser, ground and friction on the way.
 * Each run bounds the inlet of all from below; the longest is taken.
 */
export class Prospect {
  readonly pressure: number;
  /** Least and most that a head gives in any design that passes. */
  private readonly leastFlow: number;
  private readonly mostFlow: number;
  /** Of each size of tubing. */
  private readonly reaches: readonly number[];
  /** The highest that a nozzle may have in any design that passes. */
  private readonly cap: number;
  private readonly lostBySize: number[][] = [];
  private readonly shortestSet: number;
  private readonly longestSet: number;
  /** Least cost a year of each meter that the pump lifts. */
  private readonly energyAMeter: number;
  private readonly labor: number;

  constructor(
    private readonly problem: PlanProblem,
    private readonly costs: PlanCosts,
    readonly laid: LaidField,
    readonly sprinkler: number,
    readonly pressurePlace: number,
    private readonly friction: RunFriction,
    private readonly without?: LimitName,
  ) {
    const { terms } = problem;
    this.pressure = problem.pressures[pressurePlace];
    const { law, highest } = problem.sprinklers[sprinkler];
    // With a variation of 1 or more no pressure is too high.
    const byVariation =
      without === "variation" ? Infinity : this.pressure / Math.max(0, 1 - terms.variation);
    const byChart = without === "chart" ? Infinity : highest;
    this.cap = Math.max(this.pressure, ROOM * Math.min(byVariation, byChart, BEYOND_ANY));
    const head = preparedHeadFlow(law);
    this.leastFlow = head.flow(this.pressure);
    this.mostFlow = head.flow(this.cap);
    this.reaches = problem.tubing.map(({ bore }) => this.reach(bore));
    const area = laid.spacing * laid.move;
    const given = givenTime(terms, without);
    this.shortestSet = given ?? neededTime(terms, area, this.mostFlow) / ROOM;
    this.longestSet = given ?? neededTime(terms, area, this.leastFlow) * ROOM;
    // The set is long enough for the run that gets least, so every run gets the depth, or more; in a
    // set that is given, what its heads give then. The longest set goes with the least flow.
    const leastVolume = (laid.heads * this.leastFlow * this.longestSet) / ROOM;
    this.energyAMeter = costs.energy(leastVolume, 1);
    this.labor = costs.labor(laid.sets);
  }

  /** Whether none of its designs can pass. */
  isHopeless(): boolean {
    const { problem, laid, without } = this;
    const { terms } = problem;
    const sprinkler = problem.sprinklers[this.sprinkler];
    const placing = usesOfPlacing(laid, sprinkler, this.pressure);
    for (const name of ["spacing", "move", "coverage"] as const) {
      if (name !== without && isOver(terms, name, placing[name])) return true;
    }
    if (without !== "chart" && beyondChart(sprinkler, this.pressure, this.pressure) > 0)
      return true;
    const area = laid.spacing * laid.move;
    if (without !== "intake" && this.leastFlow / area > terms.intake * ROOM) return true;
    const given = givenTime(terms, without) ?? Infinity;
    if (neededTime(terms, area, this.mostFlow) > given * ROOM) return true;
    return without !== "speed" && this.reaches[0] < 1;
  }

  /** The numbers of lines that its designs can need: more for a longer set. */
  lines(): readonly number[] {
    const { terms } = this.problem;
    const of = (setTime: number) =>
      linesInTime(terms, this.laid.sets, dailySets(terms, setTime, this.without), this.without);
    const fewest = of(this.shortestSet);
    if (fewest === 0) return [];
    const most = Math.max(fewest, of(this.longestSet) || this.mostLines());
    return Array.from({ length: most - fewest + 1 }, (_, i) => fewest + i);
  }

  /** Where the longest set comes round in no time, those that pass are shorter: how many lines at most. */
  private mostLines(): number {
    const { laid, without } = this;
    const { terms } = this.problem;
    // Round the clock a set may take days; in a shorter day there is at least one.
    if (terms.dayTime >= DAY || without === "day hours") return laid.sets;
    return linesInTime(terms, laid.sets, 1, without);
  }

  /** Whether so many lines ask more than the pump gives. */
  floodsPump(lines: number): boolean {
    if (this.without === "pump flow") return false;
    return lines * this.laid.kinds[0].heads * this.leastFlow > this.problem.terms.pumpFlow * ROOM;
  }

  /** Heads that a bore can feed within the speed, as a share of the longest run. */
  private reach(bore: number): number {
    const heads = flowAtSpeed(this.problem.terms.speed, bore) / this.leastFlow;
    return (heads * ROOM) / this.laid.kinds[0].heads;
  }

  /** Least friction from the inlet to each head in one size. */
  private lost(size: number): number[] {
    const known: number[] | undefined = this.lostBySize[size];
    if (known !== undefined) return known;
    const lost = this.friction.along(size, this.leastFlow);
    this.lostBySize[size] = lost;
    return lost;
  }

  /** Least friction to the last head in a choice of tubing. */
  leastLoss({ larger, smaller, change }: TubingChoice): number {
    const near = this.lost(larger);
    const far = this.lost(smaller);
    return near[change] + far[far.length - 1] - far[change];
  }

  /** Whether no design with this tubing can pass, whatever its feeder. */
  rulesOut(choice: TubingChoice, leastLoss: number): boolean {
    const { laid, without } = this;
    const [longest] = laid.kinds;
    if (without !== "speed") {
      // Heads beyond the change, as a share of all.
      const beyond = 1 - choice.change / longest.heads;
      if (this.reaches[choice.larger] < 1 || this.reaches[choice.smaller] < beyond) return true;
    }
    // Head 1 has what the last has, and ground and friction between the two.
    const { elevation } = longest;
    const rise = WATER_WEIGHT * (elevation[elevation.length - 1] - elevation[0]);
    const between = leastLoss - this.lost(choice.larger)[1];
    return this.pressure + rise + between > this.cap;
  }

  /** Least head at the pump, m. */
  leastHead(leastLoss: number, feeder: number): number {
    const { terms } = this.problem;
    const [{ elevation, nearHeight }] = this.laid.kinds;
    const way = Math.max(
      WATER_WEIGHT * elevation[0],
      WATER_WEIGHT * elevation[elevation.length - 1] + leastLoss,
    );
    const inlet = (this.pressure + WATER_WEIGHT * terms.riser + way) / WATER_WEIGHT;
    const wanted = Math.max(
      this.laid.highestNearEnd + inlet,
      nearHeight + inlet + feeder / WATER_WEIGHT,
    );
    return Math.max(0, terms.lift + terms.mainLoss / WATER_WEIGHT + wanted);
  }

  /** Least pressure lost in a feeder of one size and length. */
  feederLoss({ bore }: PlanPipe, length: number): number {
    const flow = this.laid.kinds[0].heads * this.leastFlow;
    return frictionPressureLoss(flow, bore, length, this.problem.terms.friction);
  }

  /** Whether a feeder of this size is too fast for any design. */
  isFeederTooFast({ bore }: PlanPipe): boolean {
    return this.without !== "speed" && this.reach(bore) < 1;
  }

  /** Whether a least head is more than the pump makes or the pipes stand. */
  isTooHigh(leastHead: number, tubing: TubingChoice, feeder: PlanPipe): boolean {
    const { problem, laid, without } = this;
    const { terms } = problem;
    if (without !== "pump head" && leastHead > terms.pumpHead * ROOM) return true;
    if (without === "share of rating") return false;
    const weakest = Math.min(
      problem.tubing[tubing.larger].rating,
      problem.tubing[tubing.smaller].rating,
      feeder.rating,
    );
    const atRest = WATER_WEIGHT * (leastHead - terms.lift - laid.lowestGround);
    return atRest > terms.shareOfRating * weakest * ROOM;
  }

  /** Least cost a year. */
  leastCost(lines: number, tubing: number, feeder: number, leastHead: number): number {
    const { costs, laid } = this;
    const capital = costs.capital(lines, laid.kinds[0].heads, tubing, feeder);
    return capital * costs.perCapital + this.energyAMeter * leastHead + this.labor;
  }
  /**
   * Least cost a year in any tubing and with any feeder: the largest bore loses least. Of the choices
   * of tubing the first is the largest size throughout; `cheapest` is their lowest price.
   */
  leastCostOfAny(lines: number, choices: readonly TubingChoice[], cheapest: number): number {
    const { feeders } = this.problem;
    const length = this.laid.leastFeeder(lines);
    const cheapestFeeder = length * Math.min(...feeders.map(({ price }) => price));
    const widest = feeders.reduce((most, feeder) => (feeder.bore > most.bore ? feeder : most));
    const head = this.leastHead(this.leastLoss(choices[0]), this.feederLoss(widest, length));
    return this.leastCost(lines, cheapest, cheapestFeeder, head);
  }
}
