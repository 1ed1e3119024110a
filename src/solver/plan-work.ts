import type { FrictionLaw } from "../formulas/friction";
import { NoAnswer } from "../ground/domain-error";
import { headWork } from "./head-work";

/** The most that may be worked, in heads passed by Hazen–Williams: two tenths of a second or so. */
export const MOST_WORK = 3e6;

/** Thrown where a search would take longer than a cell can wait for. */
export class TooMuchWork extends NoAnswer {}

/** What a search for a plan has cost, and when it is given up. */
export class PlanWork {
  /** Heads passed. */
  passed = 0;
  /** What all else has cost. */
  private steps = 0;
  private readonly perHead: number;

  constructor(friction: FrictionLaw) {
    this.perHead = headWork(friction);
  }

  /** Counts what is about to be done, and gives up where it is too much with all that was. */
  count(steps: number): void {
    this.steps += steps;
    if (this.steps + this.perHead * this.passed > MOST_WORK) {
      throw new TooMuchWork(tooMany("more plans to tell apart than a cell can wait for"));
    }
  }

  /** As much again, for what is asked after an answer. */
  renew(): void {
    this.passed = 0;
    this.steps = 0;
  }
}

export function tooMany(what: string): string {
  return `spacings, moves, pressures, sprinklers, tubing and feeders make ${what}: give fewer of them`;
}
