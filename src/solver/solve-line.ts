import { zeros } from "../ground/doubles";
import { NoAnswer } from "../ground/domain-error";
import { closeOnRoot } from "./increasing-root";
import type { Line } from "./line";
import { March } from "./march";

/** A line solved, SI. Index 0 is head 1; segment i ends at head i. */
export interface SolvedLine {
  readonly line: Line;
  /** Pressure in the tubing at each head, Pa; 0 where air stands in it: at no head is it below. */
  readonly linePressure: readonly number[];
  /** Pressure at each nozzle, above riser and regulator, Pa; never below 0. */
  readonly nozzlePressure: readonly number[];
  readonly headFlow: readonly number[];
  readonly segmentFlow: readonly number[];
  /** Pressure lost in each segment, Pa: to friction, and in one that runs part full all its fall. */
  readonly segmentLoss: readonly number[];
  /** Flow into the lateral, m³/s. */
  readonly inflow: number;
  /** How fast it rises with the inlet pressure, m³/s per Pa. */
  readonly inflowSlope: number;
  /** What the closing equation is off by, as a share of the inlet pressure. */
  readonly residual: number;
  /** Heads passed to find it, over all walks: what it cost. */
  readonly passed: number;
}

/** Well inside the promise, a closing residual below 1e-9. */
const CLOSING_TOLERANCE = 1e-10;
const PROMISED_RESIDUAL = 1e-9;

/** What two walks may differ by, as a share of the inlet pressure, and still be one. */
const JOINING_TOLERANCE = 1e-11;

/** What a line leaves at its last head, as a share: good ones lose a tenth, poor ones half. */
const FIRST_GUESS = 0.7;

/**
 * Finds the pressure at the last head that meets the inlet pressure, and with it all the rest.
 *
 * First as if no air could get in. Where that leaves less than the air's pressure in tubing that
 * water flows through, the line would be a siphon, and an open head ends one: it is solved again
 * with the air let in, up to the crest that water does not pass.
 */
export function solveLine(line: Line): SolvedLine {
  const march = new March(line);
  const inlet = line.inletPressure;
  const scale = Math.max(Math.abs(inlet), march.largestThreshold());
  closeOnInlet(march, inlet, scale, march.count - 1);
  if (isSiphon(march)) {
    march.letAirIn();
    const end = farthestReached(march, line.elevation, inlet);
    closeOnInlet(march, inlet, scale, end);
    march.empty(end);
  }
  const residual = Math.abs(march.inlet - inlet) / scale;
  if (!(residual <= PROMISED_RESIDUAL)) {
    throw new NoAnswer(
      "the pressures along this line span too many orders of magnitude to solve: check bores, units and discharge",
    );
  }
  return solved(line, march, residual);
}

/** Whether water flows on from a head whose tubing has less than the air's pressure. */
function isSiphon(march: March): boolean {
  return march.segmentFlow.some((flow, i) => flow > 0 && march.linePressure(i - 1) < 0);
}

/**
 * The first crest that no water passes, or the last head. Water passes a crest once the inlet has
 * more than what raises it up to there, with nothing flowing on: so each crest is tried in turn.
 */
function farthestReached(march: March, elevation: readonly number[], inlet: number): number {
  for (const crest of crests(elevation)) {
    march.walk(march.openToAir(crest), inlet, crest);
    if (march.inlet > inlet) return crest;
  }
  return march.count - 1;
}

/** Heads from which the ground falls on, but did not already fall to them. */
export function crests(elevation: readonly number[]): number[] {
  const heads = elevation.map((_, i) => i);
  return heads.filter((i) => elevation[i] > elevation[i + 1] && !(elevation[i] < elevation[i - 1]));
}

/** Closes the line that ends, for the water, at a head: nothing flows past it. */
function closeOnInlet(march: March, inlet: number, scale: number, end: number): void {
  // Without flow nothing is lost on the way: with flow the last head can only have less.
  const dry = march.dryLimit(end);
  const atRest = march.atRest(inlet, end);
  if (dry >= atRest) {
    march.walk(atRest, Infinity, end);
    return;
  }
  // Far above the inlet a guess is plainly too high, and its slope tells nothing.
  const ceiling = inlet + scale;
  let from = end;
  let flowPast = 0;
  let low = dry;
  let high = atRest + scale;
  let guess = dry + FIRST_GUESS * (atRest - dry);
  for (;;) {
    const root = closeOnRoot(
      (start) => {
        march.walk(start, ceiling, from, flowPast);
        return { value: march.inlet - inlet, slope: march.slope };
      },
      low,
      high,
      guess,
      CLOSING_TOLERANCE * scale,
    );
    if (root.found) return;
    // In a starved line the last digit at the far end moves the inlet by more than its pressure. Up
    // to some head, though, the walks from two neighboring numbers are one: what they say beyond it
    // stands, and the search goes on from there, with digits to spare again.
    march.walk(root.high, ceiling, from, flowPast);
    const spare = march.spare.slice();
    const flow = march.segmentFlow.slice();
    const reached = march.reached;
    march.walk(root.low, ceiling, from, flowPast);
    const joined = (head: number) =>
      spare[head - 1] - march.spare[head - 1] <= JOINING_TOLERANCE * scale &&
      flow[head] - march.segmentFlow[head] <= JOINING_TOLERANCE * flow[head];
    let head = from;
    while (head > reached && joined(head)) head--;
    if (head === from) return;
    from = head;
    flowPast = march.segmentFlow[head + 1];
    low = march.spare[head];
    high = low + 2 * JOINING_TOLERANCE * scale;
    guess = low;
  }
}

function solved(line: Line, march: March, residual: number): SolvedLine {
  const { count, headFlow, segmentFlow, segmentLoss } = march;
  const linePressure = zeros(count);
  const nozzlePressure = zeros(count);
  for (let i = 0; i < count; i++) {
    const pressure = march.linePressure(i);
    // The water ends below a head that has less than the air's pressure.
    if (pressure < 0) break;
    linePressure[i] = pressure;
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
    inflowSlope: march.inflowSlope / march.slope,
    residual,
    passed: march.passed,
  };
}
