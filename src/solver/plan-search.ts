import { NoAnswer } from "../ground/domain-error";
import type { LaidField } from "./laid-field";
import { PlanCosts } from "./plan-costs";
import { type Design, keepsToLimits, workOut } from "./plan-design";
import { Prospect, RunFriction } from "./plan-floors";
import { type FieldState, stateAtInlet, stateAtLowest, type Work } from "./plan-hydraulics";
import { type LimitName, type PlanProblem, TIE } from "./plan-problem";
import {
  boresOf,
  compareTubing,
  countTubingChoices,
  type TubingChoice,
  tubingChoices,
} from "./plan-tubing";

/** The most designs that one search may choose from: a list that nobody meant to make. */
export const MOST_DESIGNS = 1e7;

/** The most that may be worked, in heads passed: two tenths of a second or so. */
const MOST_WORK = 3e6;

/** What other steps cost beside a head passed by Hazen–Williams, measured. */
const WORK = { prospect: 20, floor: 1, design: 100, run: 30 };

/** How many times more a head costs by Darcy–Weisbach, whose factor takes iterations. */
const DARCY_HEAD = 6;

/** Thrown where a search would take longer than a cell can wait for. */
export class TooMuchWork extends NoAnswer {}

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
  private readonly work: Work = { passed: 0 };
  /** What all but the heads passed has cost. */
  private steps = 0;
  private readonly states = new Map<string, FieldState | undefined>();
  private readonly choices = new Map<number, readonly TubingChoice[]>();
  private readonly frictions = new Map<number, RunFriction>();

  constructor(private readonly problem: PlanProblem) {
    this.costs = new PlanCosts(problem.terms);
  }

  /**
   * The cheapest design of each different plan (spacing, move, sprinkler, lines), cheapest first.
   *
   * It is exact: whatever is left out is certain not to be among them. The choices of layout,
   * sprinkler, pressure and number of lines are taken in the order of the least that each can cost;
   * once that is more than the dearest plan still wanted, so are all that follow. Within one, the
   * same is done for tubing and feeder, and only what remains is solved.
   */
  cheapest(wanted: Wanted): Design[] {
    const best = new BestPlans(wanted.count, wanted.below ?? Infinity);
    const jobs = this.jobs(wanted).sort((a, b) => a.floor - b.floor);
    for (const job of jobs) {
      if (job.floor > best.bar()) break;
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
        for (let z = 0; z < sprinklers.length; z++) {
          if (only !== undefined && only.sprinkler !== z) continue;
          for (let p = 0; p < pressures.length; p++) {
            this.count(WORK.prospect);
            const prospect = new Prospect(problem, this.costs, laid, z, p, friction, without);
            if (prospect.isHopeless()) continue;
            for (const lines of prospect.lines()) {
              if (prospect.floodsPump(lines)) continue;
              jobs.push({
                prospect,
                lines,
                kind: kindOf(laid, z, lines),
                floor: this.floor(prospect, lines),
              });
            }
          }
        }
      });
    });
    return jobs;
  }

  /** The least that any tubing and any feeder can cost: the largest bore loses least. */
  private floor(prospect: Prospect, lines: number): number {
    const { laid } = prospect;
    const { feeders } = this.problem;
    const choices = this.choicesOn(laid);
    const cheapest = choices.reduce((least, { price }) => Math.min(least, price), Infinity);
    const length = laid.leastFeeder(lines);
    const cheapestFeeder = length * Math.min(...feeders.map(({ price }) => price));
    const widest = feeders.reduce((most, feeder) => (feeder.bore > most.bore ? feeder : most));
    // The first choice is the largest size throughout.
    const head = prospect.leastHead(
      prospect.leastLoss(choices[0]),
      prospect.feederLoss(widest, length),
    );
    return prospect.leastCost(lines, cheapest, cheapestFeeder, head);
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
    this.count(WORK.floor * this.choicesOn(laid).length * inReach.length);
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
    this.count(WORK.design + WORK.run * laid.kinds.length);
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
    ].join(" ");
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

  /** Counts what is about to be done, and gives up where it is too much with all that was. */
  private count(work: number): void {
    this.steps += work;
    const perHead = this.problem.terms.friction.law === "Darcy" ? DARCY_HEAD : 1;
    if (this.steps + perHead * this.work.passed > MOST_WORK) {
      throw new TooMuchWork(tooMany("more plans to tell apart than a cell can wait for"));
    }
  }

  /** As much work again, for what is asked after an answer. */
  renew(): void {
    this.work.passed = 0;
    this.steps = 0;
  }
}

function tooMany(what: string): string {
  return `spacings, moves, pressures, sprinklers, tubing and feeders make ${what}: give fewer of them`;
}

/** What a person would call another plan. */
export function kindOf({ spacing, move }: LaidField, sprinkler: number, lines: number): string {
  return `${spacing} ${move} ${sprinkler} ${lines}`;
}

/** The cheapest design of each kind, as many kinds as are wanted. */
class BestPlans {
  private readonly list: { readonly kind: string; readonly design: Design }[] = [];

  constructor(
    private readonly count: number,
    private readonly below: number,
  ) {}

  /** What a design (of a kind) may cost and still count; more than a tie, so that ties are judged. */
  bar(kind?: string): number {
    const { list, count, below } = this;
    const known = list.find((entry) => entry.kind === kind) ?? list[count - 1];
    return known === undefined ? below : known.design.year.total * (1 + TIE);
  }

  add(kind: string, design: Design): void {
    const { list } = this;
    if (design.year.total >= this.below) return;
    const known = list.findIndex((entry) => entry.kind === kind);
    if (known >= 0) {
      if (compareDesigns(design, list[known].design) >= 0) return;
      list.splice(known, 1);
    }
    let place = list.length;
    while (place > 0 && compareDesigns(design, list[place - 1].design) < 0) place--;
    list.splice(place, 0, { kind, design });
    if (list.length > this.count) list.pop();
  }

  plans(): Design[] {
    return this.list.map(({ design }) => design);
  }
}

/**
 * Cheaper first; of equal costs fewer sizes, then more of the larger; then as the lists have it, so
 * that one problem has one answer.
 */
export function compareDesigns(a: Design, b: Design): number {
  const [costA, costB] = [a.year.total, b.year.total];
  if (Math.abs(costA - costB) > TIE * Math.max(costA, costB)) return costA - costB;
  return (
    compareTubing(a.choice.tubing, b.choice.tubing) ||
    a.choice.laid.spacing - b.choice.laid.spacing ||
    a.choice.laid.move - b.choice.laid.move ||
    a.choice.sprinkler - b.choice.sprinkler ||
    a.choice.pressure - b.choice.pressure ||
    a.choice.feeder - b.choice.feeder
  );
}
