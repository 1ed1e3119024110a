import { GRAVITY } from "../ground/constants";
import { InvalidInput } from "../ground/domain-error";
import { type FrictionLaw, frictionHeadLoss } from "../formulas/friction";
import { boreArea, flowAtSpeed } from "../formulas/mean-speed";
import { integrate } from "../formulas/simpson";
import { increasingRoot } from "./increasing-root";

/** A straight line that falls evenly from a vented top to an opening at its lower end, SI. */
export interface DrainingLine {
  readonly bore: number;
  readonly length: number;
  readonly fall: number;
  /** Diameter of a hole or valve at the lower end; undefined where the whole end is open. */
  readonly opening?: number;
  readonly friction: FrictionLaw;
}

/** Discharge coefficient of a sharp-edged opening (Torricelli's jet, contracted). */
export const OPENING_COEFFICIENT = 0.61;

/** Far below what anyone reads off a watch, far above the noise of the inner solve. */
const TOLERANCE = 1e-9;

/**
 * Time, s, that a full line takes to run out.
 *
 * The water is a column of length ℓ that shortens as it runs; at each moment its speed V is the
 * steady one for that length (quasi-steady), where the fall of the column pays for the friction of
 * the wetted pipe and for the jet:
 *
 *     F ℓ/L = h_f(V, ℓ) + k V²/2g,   k = (A/(C a))² − 1
 *
 * The 1 is the speed that the column brings along; an end that is open in full has no k, and the
 * column runs at one speed throughout. The time is the integral of dℓ/V, taken over s = √(ℓ/L) so
 * that it stays bounded where the column runs out: there V is nearly proportional to s. Without
 * friction it is L √(2k/gF), the falling head of a tank (Torricelli). Starting up, and the rest
 * that clings and lies in the dips, are left out.
 */
export function timeToDrain(line: DrainingLine): number {
  checkShape(line);
  const k = jetLoss(line);
  if (k === 0) return line.length / columnSpeed(line, k, line.length);
  const lastMoment = 2 * line.length * Math.sqrt(k / (2 * GRAVITY * line.fall));
  const slowness = (s: number) =>
    s === 0 ? lastMoment : (2 * line.length * s) / columnSpeed(line, k, line.length * s * s);
  return integrate(slowness, 0, 1, TOLERANCE);
}

function checkShape({ bore, length, fall, opening = bore }: DrainingLine): void {
  if (fall > length) throw new InvalidInput("fall must be at most the length of the line");
  if (opening > bore) throw new InvalidInput("opening must be at most the inside diameter");
}

function jetLoss({ bore, opening }: DrainingLine): number {
  if (opening === undefined) return 0;
  return (boreArea(bore) / (OPENING_COEFFICIENT * boreArea(opening))) ** 2 - 1;
}

/** Steady speed of a column of a length (m). */
function columnSpeed(line: DrainingLine, k: number, column: number): number {
  const fall = (line.fall * column) / line.length;
  const sample = (speed: number) => {
    const friction = frictionHeadLoss(
      flowAtSpeed(speed, line.bore),
      line.bore,
      column,
      line.friction,
    );
    const jet = (k * speed ** 2) / (2 * GRAVITY);
    // Friction grows about as the square of the speed too; the bracket makes up for the difference.
    return { value: friction + jet - fall, slope: (2 * (friction + jet)) / speed };
  };
  // So little fall that it vanishes: the water stands.
  if (fall === 0) return 0;
  let fast = 1;
  while (sample(fast).value < 0) fast *= 2;
  return increasingRoot(sample, 0, fast, undefined, 1e-13 * fall);
}
