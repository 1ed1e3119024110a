import type { DischargeLaw } from "../formulas/discharge-law";
import type { FrictionLaw } from "../formulas/friction";
import type { FieldLayouts } from "./laid-field";

/** What a plan may be made of, and what it must keep to, SI; times in seconds. */
export interface PlanProblem {
  readonly layouts: FieldLayouts;
  readonly spacings: readonly number[];
  readonly moves: readonly number[];
  /** At the lowest nozzle of the field, Pa. */
  readonly pressures: readonly number[];
  readonly sprinklers: readonly PlanSprinkler[];
  /** Large to small, as they lie from the inlet on. */
  readonly tubing: readonly PlanPipe[];
  readonly feeders: readonly PlanPipe[];
  readonly terms: PlanTerms;
}

export interface PlanSprinkler {
  readonly name: string;
  readonly law: DischargeLaw;
  /** The chart's own pressures; 0 and Infinity where one row gives no range. */
  readonly lowest: number;
  readonly highest: number;
  /** By rising pressure. */
  readonly wetted: readonly WettedDiameter[];
}

export interface WettedDiameter {
  readonly pressure: number;
  readonly diameter: number;
}

/** Tubing or feeder of one size. */
export interface PlanPipe {
  readonly name: string;
  readonly bore: number;
  /** A meter. */
  readonly price: number;
  readonly rating: number;
}

/** Limits are Infinity where none is given. Money is in any one currency. */
export interface PlanTerms {
  /** Least share of the field that is covered. */
  readonly coverage: number;
  readonly riser: number;
  readonly friction: FrictionLaw;
  readonly variation: number;
  readonly speed: number;
  readonly wind: number;
  readonly intake: number;
  readonly netDepth: number;
  readonly efficiency: number;
  /** Of the low quarter; 1 where the set is as long as the average asks. */
  readonly uniformity: number;
  /** Days once round the field, as a number. */
  readonly days: number;
  readonly dayTime: number;
  readonly moveTime: number;
  readonly setTime?: number;
  readonly seasonDepth: number;
  /** Water surface up to the ground's height 0, m. */
  readonly lift: number;
  /** With all lines running, Pa. */
  readonly mainLoss: number;
  readonly pumpFlow: number;
  readonly pumpHead: number;
  readonly shareOfRating: number;
  readonly headPrice: number;
  readonly linePrice: number;
  readonly years: number;
  readonly interest: number;
  readonly escalation: number;
  readonly upkeep: number;
  /** A kWh. */
  readonly energyPrice: number;
  readonly performance: number;
  /** An hour. */
  readonly wage: number;
}

/**
 * What a plan has to keep to. Where one is left out, all others stand: that tells what it costs.
 */
export const LIMITS = [
  "variation",
  "speed",
  "intake",
  "spacing",
  "move",
  "chart",
  "set hours",
  "day hours",
  "days",
  "pump flow",
  "pump head",
  "share of rating",
  "coverage",
] as const;

export type LimitName = (typeof LIMITS)[number];

/** Sums of the same numbers in another order differ by less, as a share: a limit met exactly is met. */
export const SLACK = 1e-9;

/** Costs this close, as a share, are a tie. */
export const TIE = 1e-9;
