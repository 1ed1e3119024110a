import type { DischargeLaw } from "../formulas/discharge-law";
import type { FrictionLaw } from "../formulas/friction";
import { meanSpeed } from "../formulas/mean-speed";
import { NoAnswer } from "../ground/domain-error";
import { walkToTarget } from "./find-inlet";
import type { LaidField, RunKind } from "./laid-field";
import type { Line } from "./line";
import type { March } from "./march";
import { solveLine } from "./solve-line";

/** One kind of run under an inlet pressure, SI. */
export interface RunState {
  readonly inflow: number;
  readonly highest: number;
  /** Sum of the nozzle pressures. */
  readonly sum: number;
  readonly speed: number;
}

/**
 * A line in every position of its field, the same pressure at its inlet in all of them: a person
 * sets the valve at the hydrant by one gauge reading.
 */
export interface FieldState {
  readonly inlet: number;
  /** In the order of the field's kinds. */
  readonly runs: readonly RunState[];
}

/** What a line is made of, wherever it lies. */
export interface LineMakeup {
  readonly bore: readonly number[];
  readonly law: DischargeLaw;
  readonly riser: number;
  readonly friction: FrictionLaw;
}

/** What a search has cost so far, counted in heads passed. */
export interface Work {
  passed: number;
}

/**
 * The state in which no nozzle of any run has less than `lowest`, and one has just that: the run
 * that asks most of the inlet decides. Undefined where that is beyond any line, or where the fall of
 * the ground alone gives more.
 */
export function stateAtLowest(
  laid: LaidField,
  makeup: LineMakeup,
  lowest: number,
  work: Work,
): FieldState | undefined {
  const walks: March[] = [];
  let inlet = 0;
  for (const kind of laid.kinds) {
    const walk = walkToTarget(lineOf(laid, kind, makeup, 0), lowest, "lowest");
    if (walk === undefined) return undefined;
    work.passed += walk.passed;
    inlet = Math.max(inlet, walk.inlet);
    walks.push(walk);
  }
  if (inlet <= 0) return undefined;
  return solvedRuns(laid, makeup, inlet, work, walks);
}

/** The state under a given inlet pressure. */
export function stateAtInlet(
  laid: LaidField,
  makeup: LineMakeup,
  inlet: number,
  work: Work,
): FieldState | undefined {
  return solvedRuns(laid, makeup, inlet, work, []);
}

function solvedRuns(
  laid: LaidField,
  makeup: LineMakeup,
  inlet: number,
  work: Work,
  walks: readonly March[],
): FieldState | undefined {
  try {
    const runs = laid.kinds.map((kind, i) => {
      const walk = walks[i];
      // The run that decided has been walked with this very inlet.
      if (walk?.inlet === inlet) {
        const pressures = walk.spare.map((_, head) => walk.nozzlePressure(head));
        return runState(pressures, walk.segmentFlow, makeup.bore);
      }
      const solved = solveLine(lineOf(laid, kind, makeup, inlet));
      work.passed += solved.passed;
      return runState(solved.nozzlePressure, solved.segmentFlow, makeup.bore);
    });
    return { inlet, runs };
  } catch (error) {
    // Pressures too far apart to solve are no plan.
    if (error instanceof NoAnswer) return undefined;
    throw error;
  }
}

/** The line in one run: what lies behind its last head is shut off. */
function lineOf(laid: LaidField, kind: RunKind, makeup: LineMakeup, inletPressure: number): Line {
  const { heads } = kind;
  const segmentLength = laid.segmentLength.slice(0, heads);
  segmentLength[0] = kind.first;
  return {
    inletPressure,
    segmentLength,
    bore: makeup.bore.slice(0, heads),
    elevation: kind.elevation,
    riser: makeup.riser,
    discharge: makeup.law,
    regulatorSet: new Array<number>(heads).fill(Infinity),
    regulatorLoss: new Array<number>(heads).fill(0),
    friction: makeup.friction,
  };
}

function runState(
  pressures: readonly number[],
  flows: readonly number[],
  bore: readonly number[],
): RunState {
  let [highest, sum, speed] = [0, 0, 0];
  for (let i = 0; i < pressures.length; i++) {
    highest = Math.max(highest, pressures[i]);
    sum += pressures[i];
    speed = Math.max(speed, meanSpeed(flows[i], bore[i]));
  }
  return { inflow: flows[0], highest, sum, speed };
}
