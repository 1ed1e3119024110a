import { WATER_WEIGHT } from "../formulas/constants";
import { NoAnswer } from "../formulas/domain-error";
import { increasingRoot } from "./increasing-root";
import type { Line } from "./line";
import { March } from "./march";

/** A line solved, SI. Index 0 is head 1; segment i ends at head i. */
export interface SolvedLine {
  readonly line: Line;
  /** Pressure in the tubing at each head, Pa; below 0 where the ground stands above what is left. */
  readonly linePressure: readonly number[];
  /** Pressure at each nozzle, above riser and regulator, Pa; never below 0. */
  readonly nozzlePressure: readonly number[];
  readonly headFlow: readonly number[];
  readonly segmentFlow: readonly number[];
  readonly segmentLoss: readonly number[];
  /** Flow into the lateral, m³/s. */
  readonly inflow: number;
  /** What the closing equation is off by, as a share of the inlet pressure. */
  readonly residual: number;
}

/** Well inside the promise, a closing residual below 1e-9. */
const CLOSING_TOLERANCE = 1e-10;
const PROMISED_RESIDUAL = 1e-9;

/** Finds the total head at the last head that meets the inlet pressure, and with it all the rest. */
export function solveLine(line: Line): SolvedLine {
  const march = new March(line);
  const inlet = line.inletPressure;
  const scale = Math.max(Math.abs(inlet), march.largestThreshold());
  closeOnInlet(march, inlet, scale);
  const residual = Math.abs(march.inlet - inlet) / scale;
  if (!(residual <= PROMISED_RESIDUAL)) {
    throw new NoAnswer(
      "the pressures along this line span too many orders of magnitude to solve: check bores, units and discharge",
    );
  }
  return solved(line, march, residual);
}

function closeOnInlet(march: March, inlet: number, scale: number): void {
  // Without flow the total head is the inlet's all along: with flow it can only be lower.
  const dry = march.dryLimit();
  if (dry >= inlet) {
    march.walk(inlet, inlet);
    return;
  }
  // Far above the inlet a guess is plainly too high, and its slope tells nothing.
  const ceiling = inlet + scale;
  const sample = { value: 0, slope: 1 };
  increasingRoot(
    (last) => {
      march.walk(last, ceiling);
      sample.value = march.inlet - inlet;
      sample.slope = march.slope;
      return sample;
    },
    dry,
    ceiling,
    march.firstGuess(inlet),
    CLOSING_TOLERANCE * scale,
  );
}

function solved(line: Line, march: March, residual: number): SolvedLine {
  const { count, totalHead, headFlow, segmentFlow, segmentLoss } = march;
  const linePressure = new Array<number>(count).fill(0);
  const nozzlePressure = new Array<number>(count).fill(0);
  for (let i = 0; i < count; i++) {
    linePressure[i] = totalHead[i] - WATER_WEIGHT * line.elevation[i];
    nozzlePressure[i] = march.nozzlePressure(i);
  }
  return {
    line,
    linePressure,
    nozzlePressure,
    headFlow,
    segmentFlow,
    segmentLoss,
    inflow: segmentFlow[0],
    residual,
  };
}
