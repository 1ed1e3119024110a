import { NoAnswer } from "../ground/domain-error";
import { BestPlans } from "./best-plans";
import type { LaidField } from "./laid-field";
import { PlanCosts } from "./plan-costs";
import { type Design, keepsToLimits, workOut } from "./plan-design";
import { Prospect, RunFriction } from "./plan-floors";
import { type FieldState, stateAtInlet, stateAtLowest } from "./plan-hydraulics";
import type { LimitName, PlanProblem } from "./plan-problem";
import { boresOf, countTubingChoices, type TubingChoice, tubingChoices } from "./plan-tubing";
import { PlanWork, tooMany } from "./plan-work";

/** The most designs that one search may choose from: a list that nobody meant to make. */
export const MOST_DESIGNS = 1e7;

/** What other steps cost beside a head passed by Hazen–Williams, measured. */
const WORK = { prospect: 20, floor: 1, design: 100, run: 30 };

/** What one search looks for. */
export interface Wanted {
  /** How many different plans. */
  readonly count: number;
  /** A limit that is left out. */
  readonly without?: LimitName;
  /** Only plans with this spacing, move and sprinkler, by their places in the lists. */
  readonly only?: { readonly spacing: number; readonly move: number; readonly sprinkler: number };
  /** Only plans that cost less a year. */
  readonly below?: number;
}

/** A design that a line's number is set for, with the least that it can cost a year. */
interface Job {
  readonly prospect: Prospect;
  readonly lines: number;
  readonly kind: string;
  readonly floor: number;
}

/**
 * The cheapest plans of a problem. What one search has solved the next one knows, so that the
 * question what a limit costs is a small one after the first.
 */
export class PlanSearch {
  private readonly costs: PlanCosts;
  private readonly work: PlanWork;
  private readonly states = new Map<string, FieldState | undefined>();
  private readonly choices = new Map<number, readonly TubingChoice[]>();
  private readonly frictions = new Map<number, RunFriction>();

  constructor(private readonly problem: PlanProblem) {
    this.costs = new PlanCosts(problem.terms);
    this.work = new PlanWork(problem.terms.friction);
  }

  /**
   * The cheapest design of each different plan (spacing, move, sprinkler, lines), cheapest first.
   *
   * It is exact: whatever is left out is certain not to be among them. The choices of layout,
   * sprinkler, pressure and number of lines are taken in the order of the least that each can cost,
   * and left out where that is more than the dearest plan still wanted, or the best of its kind.
   * Within one, the same is done for tubing and feeder, and only what remains is solved.
   */
  cheapest(wanted: Wanted): Design[] {
    const best = new BestPlans(wanted.count, wanted.below ?? Infinity);
    const jobs = this.jobs(wanted).sort((a, b) => a.floor - b.floor);
    for (const job of jobs) {
      if (job.floor <= best.bar(job.kind)) this.solve(job, wanted, best);
    }
    return best.plans();
  }

  private jobs({ only, without }: Wanted): Job[] {
    const { problem } = this;
    const { spacings, moves, sprinklers, pressures, tubing, feeders } = problem;
    const jobs: Job[] = [];
    let designs = 0;
    spacings.forEach((spacing, s) => {
      if (only !== undefined && only.spacing !== s) return;
      moves.forEach((move, m) => {
        if (only !== undefined && only.move !== m) return;
        const laid = problem.layouts.at(spacing, move);
        if (laid === undefined) return;
        const segments = laid.segmentLength.length;
        designs +=
          countTubingChoices(tubing.length, segments) *
          sprinklers.length *
          pressures.length *
          feeders.length;
        if (designs > MOST_DESIGNS)
          throw new NoAnswer(tooMany(`more than ${MOST_DESIGNS / 1e6} million designs`));
        const friction = this.frictionIn(laid);
        const choices = this.choicesOn(laid);
        const cheapest = choices.reduce((least, { price }) => Math.min(least, price), Infinity);
        sprinklers.forEach((_, z) => {
          if (only !== undefined && only.sprinkler !== z) return;
          pressures.forEach((_, p) => {
            this.work.count(WORK.prospect);
            const prospect = new Prospect(problem, this.costs, laid, z, p, friction, without);
            if (prospect.isHopeless()) return;
            for (const lines of prospect.lines()) {
              if (prospect.floodsPump(lines)) continue;
              jobs.push({
                prospect,
                lines,
                kind: kindOf(laid, z, lines),
                floor: prospect.leastCostOfAny(lines, choices, cheapest),
              });
            }
          });
        });
      });
    });
    return jobs;
  }

  private solve(job: Job, wanted: Wanted, best: BestPlans): void {
    const { prospect, lines, kind } = job;
    const { laid } = prospect;
    // The exact length is for those that are worked out.
    const length = laid.leastFeeder(lines);
    const inReach = this.problem.feeders
      .map((feeder, place) => ({
        feeder,
        place,
        loss: prospect.feederLoss(feeder, length),
        price: length * feeder.price,
      }))
      .filter(({ feeder }) => !prospect.isFeederTooFast(feeder));
    const bar = best.bar(kind);
    this.work.count(WORK.floor * this.choicesOn(laid).length * inReach.length);
    const candidates: { choice: TubingChoice; feeder: number; floor: number }[] = [];
    for (const choice of this.choicesOn(laid)) {
      const lost = prospect.leastLoss(choice);
      if (prospect.rulesOut(choice, lost)) continue;
      for (const { feeder, place, loss, price } of inReach) {
        const head = prospect.leastHead(lost, loss);
        if (prospect.isTooHigh(head, choice, feeder)) continue;
        const floor = prospect.leastCost(lines, choice.price, price, head);
        if (floor <= bar) candidates.push({ choice, feeder: place, floor });
      }
    }
    candidates.sort((a, b) => a.floor - b.floor);
    for (const { choice, feeder, floor } of candidates) {
      if (floor > best.bar(kind)) return;
      const design = this.workedOut(prospect, choice, feeder, wanted.without);
      // With other lines than this job is about it belongs to another.
      if (design?.lines === lines && keepsToLimits(this.problem.terms, design, wanted.without)) {
        best.add(kind, design);
      }
    }
  }

  private workedOut(
    { laid, sprinkler, pressurePlace, pressure }: Prospect,
    tubing: TubingChoice,
    feeder: number,
    without?: LimitName,
  ): Design | undefined {
    this.work.count(WORK.design + WORK.run * laid.kinds.length);
    const { terms, sprinklers, tubing: sizes } = this.problem;
    const makeup = {
      bore: boresOf(tubing, sizes, laid.segmentLength.length),
      law: sprinklers[sprinkler].law,
      riser: terms.riser,
      friction: terms.friction,
    };
    const place = [
      laid.hydraulics,
      sprinkler,
      pressurePlace,
      tubing.larger,
      tubing.smaller,
      tubing.change,
    ].join();
    const state = this.remembered(place, () => stateAtLowest(laid, makeup, pressure, this.work));
    if (state === undefined) return undefined;
    return workOut(
      this.problem,
      this.costs,
      { laid, sprinkler, pressure: pressurePlace, tubing, feeder },
      {
        state,
        raised: (inlet) =>
          this.remembered(`${place} ${inlet}`, () => stateAtInlet(laid, makeup, inlet, this.work)),
      },
      without,
    );
  }

  private remembered(place: string, solve: () => FieldState | undefined): FieldState | undefined {
    if (!this.states.has(place)) this.states.set(place, solve());
    return this.states.get(place);
  }

  private choicesOn(laid: LaidField): readonly TubingChoice[] {
    let choices = this.choices.get(laid.hydraulics);
    if (choices === undefined) {
      choices = tubingChoices(this.problem.tubing, laid.segmentLength);
      this.choices.set(laid.hydraulics, choices);
    }
    return choices;
  }

  private frictionIn(laid: LaidField): RunFriction {
    let friction = this.frictions.get(laid.hydraulics);
    if (friction === undefined) {
      friction = new RunFriction(this.problem, laid, this.work);
      this.frictions.set(laid.hydraulics, friction);
    }
    return friction;
  }

  /** As much work again, for what is asked after an answer. */
  renew(): void {
    this.work.renew();
  }
}

/** What a person would call another plan. */
export function kindOf({ spacing, move }: LaidField, sprinkler: number, lines: number): string {
  return `${spacing} ${move} ${sprinkler} ${lines}`;
}
