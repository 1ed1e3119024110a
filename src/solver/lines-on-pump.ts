import { WATER_WEIGHT } from "../ground/constants";
import { NoAnswer } from "../ground/domain-error";
import { type FrictionLaw, frictionPressureLoss } from "../formulas/friction";
import { curveValue, type MonotoneCurve } from "../formulas/monotone-curve";
import { closeOnRoot } from "./increasing-root";
import type { Line } from "./line";
import { solveLine } from "./solve-line";
import { spreadOf } from "./spread";

/** A length of pipe of one size, m. */
export interface PipeSection {
  readonly bore: number;
  readonly length: number;
}

/** Equal lines fed by one pump through a main, each by a feeder of its own, SI. */
export interface LinesOnPump {
  /** Flow (m³/s) and head (m). */
  readonly curve: MonotoneCurve;
  /** Water surface up to the hydrant, m. */
  readonly lift: number;
  readonly running: number;
  readonly main: readonly PipeSection[];
  readonly feeder: readonly PipeSection[];
  /** One line, its ground above the hydrant; its own inlet pressure is left aside. */
  readonly line: Line;
}

export interface LinesRunning {
  /** All lines together, m³/s. */
  readonly flow: number;
  readonly pumpHead: number;
  readonly hydrantPressure: number;
  readonly inletPressure: number;
  readonly lowestPressure: number;
  readonly averageHeadFlow: number;
}

/** Share of the pump's greatest head by which pump and lines may differ. */
const TOLERANCE = 1e-9;

/** Step by which curve, main and feeder are differentiated, as a share of the flow. */
const STEP = 1e-6;

/**
 * Finds where pump and lines agree. An inlet pressure solves a line and gives its flow; feeder, main
 * and lift then add up to the head that the pump must make, which rises with the inlet pressure, as
 * the flow does. On the falling branch of its curve a pump makes less head for more flow, so there
 * is one meeting and no more; on a rising one it would not run steadily.
 */
export function linesOnPump(system: LinesOnPump): LinesRunning {
  const { curve, line, lift, running } = system;
  const greatestHead = Math.max(...curve.y);
  const leastFlow = curve.x[curve.y.lastIndexOf(greatestHead)];
  const mostFlow = curve.x[curve.x.length - 1];
  // Below this inlet pressure no head has any water.
  const dry = Math.min(
    ...line.elevation.map(
      (height, i) => WATER_WEIGHT * (height + line.riser) + line.regulatorLoss[i],
    ),
  );
  if (dry / WATER_WEIGHT + lift >= curve.y[0]) {
    throw new NoAnswer(
      "the pump does not lift the water to the lowest head: check curve, lift and rise",
    );
  }

  const solve = (inletPressure: number) => solveLine({ ...line, inletPressure });
  /** Head that the system needs beyond what the pump makes at a flow, the line's inlet aside, m. */
  const shortOf = (flow: number) => lift + pipeLoss(system, flow) - curveValue(curve, flow);
  const most = WATER_WEIGHT * (greatestHead - lift);
  const root = closeOnRoot(
    (inletPressure) => {
      const solved = solve(inletPressure);
      const flow = running * solved.inflow;
      if (flow < leastFlow) return { value: -Infinity, slope: 0 };
      if (flow > mostFlow) return { value: Infinity, slope: 0 };
      const short = shortOf(flow);
      // No number without flow, and then halving goes on instead.
      const perFlow = (short - shortOf(flow * (1 - STEP))) / (flow * STEP);
      return {
        value: inletPressure / WATER_WEIGHT + short,
        slope: 1 / WATER_WEIGHT + perFlow * running * solved.inflowSlope,
      };
    },
    dry,
    // A pascal above what the pump can ever make.
    most + 1,
    undefined,
    TOLERANCE * greatestHead,
  );
  const solved = solve(root.low);
  const flow = running * solved.inflow;
  if (!root.found) {
    throw new NoAnswer(
      flow < leastFlow
        ? "the lines take less water than the falling part of curve begins with: run more of them, or carry the curve to less flow"
        : "the lines take more water than the last point of curve gives: run fewer of them, or carry the curve to more flow",
    );
  }
  return {
    flow,
    pumpHead: curveValue(curve, flow),
    hydrantPressure: root.low + pressureLoss(system.feeder, solved.inflow, line.friction),
    inletPressure: root.low,
    lowestPressure: spreadOf(solved.nozzlePressure).lowest,
    averageHeadFlow: solved.inflow / line.bore.length,
  };
}

/** Head lost in the main by all lines and in a feeder by its own, m. */
function pipeLoss({ main, feeder, running, line }: LinesOnPump, flow: number): number {
  return (
    (pressureLoss(main, flow, line.friction) +
      pressureLoss(feeder, flow / running, line.friction)) /
    WATER_WEIGHT
  );
}

function pressureLoss(
  sections: readonly PipeSection[],
  flow: number,
  friction: FrictionLaw,
): number {
  return sections.reduce(
    (sum, { bore, length }) => sum + frictionPressureLoss(flow, bore, length, friction),
    0,
  );
}
