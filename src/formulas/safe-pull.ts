import { TIME_FACTORS, YIELD_FACTOR } from "../tables/tensile-factors";
import { NoAnswer } from "../ground/domain-error";
import { temperatureFactor } from "./pipe-rating";

/** A pull on polyethylene tubing, SI. */
export interface TubingPull {
  readonly outside: number;
  /** Outside diameter over wall. */
  readonly rating: number;
  /** Tensile yield strength at the reference temperature, Pa. */
  readonly yieldStrength: number;
  /** How long the pull lasts, s. */
  readonly time: number;
  /** Of the pipe's wall, K; undefined at or below the reference. */
  readonly temperature?: number;
}

/**
 * Allowable tensile load of polyethylene tubing, N:
 *
 *     ATL = f_y f_t T_y π D² (1/DR − 1/DR²)
 *
 * Source: ASTM F1804. The yield strength is reduced for a warm wall by the inch industry's factors
 * for pressure (Plastics Pipe Institute, Handbook of Polyethylene Pipe), which the tensile ones
 * follow. Example: 2.375 in, DR 11, 3500 psi, two hours: 1948 lbf.
 */
export function tubingSafePull(pull: TubingPull): number {
  const { outside, rating, yieldStrength, time, temperature } = pull;
  const warm = temperature === undefined ? 1 : temperatureFactor("IPS PE", temperature);
  const section = Math.PI * outside ** 2 * (1 / rating - 1 / rating ** 2);
  return YIELD_FACTOR * timeFactor(time) * yieldStrength * warm * section;
}

/** The lesser of the tubing's pull and a tested joint's (N), where one is given. */
export function safePull(tubing: TubingPull, joint = Infinity): number {
  return Math.min(tubingSafePull(tubing), joint);
}

function timeFactor(time: number): number {
  const row = TIME_FACTORS.find(([longest]) => time <= longest);
  if (row === undefined) throw new NoAnswer("the published time factors end at 24 hours of pull");
  return row[1];
}
