import { WATER_WEIGHT } from "../formulas/constants";
import { type HeadFlow, preparedHeadFlow } from "./head-flow";
import type { Line } from "./line";
import { type SegmentFriction, segmentFriction } from "./segment-friction";

/**
 * One walk along a line from its far end to its inlet. Start with a total head at the last head;
 * then the last head's flow is known, so is the loss in the last segment, so is the total head at
 * the head before, and so on to the inlet. "Total head" is pressure plus the weight of water above
 * the inlet's level, Pa: what friction alone changes.
 *
 * The total head at the inlet rises with the one at the last head, at least as fast: a head never
 * gives less for more pressure, and a segment never loses less for more flow. That is what makes
 * a line one equation with one unknown and one root. `slope` is the derivative.
 */
export class March {
  readonly count: number;
  /** Total head at each head, Pa. */
  readonly totalHead: number[];
  readonly headFlow: number[];
  readonly segmentFlow: number[];
  readonly segmentLoss: number[];
  /** How fast the total head at each head follows the one at the last. */
  readonly headSlope: number[];
  /** Total head that the last walk needs at the inlet, Pa (Infinity: above its ceiling). */
  inlet = 0;
  /** How fast `inlet` follows the total head at the last head. */
  slope = 1;

  private readonly law: HeadFlow;
  private readonly friction: SegmentFriction;
  /** Total head above which each head has pressure at its nozzle: level, riser and regulator's loss. */
  private readonly threshold: number[];
  /** Set pressures of the regulators, Pa; Infinity where there is none. */
  readonly set: readonly number[];

  constructor(line: Line) {
    const count = line.bore.length;
    this.count = count;
    this.totalHead = new Array<number>(count).fill(0);
    this.headFlow = new Array<number>(count).fill(0);
    this.segmentFlow = new Array<number>(count).fill(0);
    this.segmentLoss = new Array<number>(count).fill(0);
    this.headSlope = new Array<number>(count).fill(0);
    this.law = preparedHeadFlow(line.discharge);
    this.friction = segmentFriction(line.friction, line.bore, line.segmentLength);
    this.set = line.regulatorSet;
    this.threshold = new Array<number>(count).fill(0);
    for (let i = 0; i < count; i++) {
      this.threshold[i] = WATER_WEIGHT * (line.elevation[i] + line.riser) + line.regulatorLoss[i];
    }
  }

  /** The highest total head at which the whole line is dry (it is the same all along, then). */
  dryLimit(): number {
    let lowest = Infinity;
    for (const threshold of this.threshold) lowest = Math.min(lowest, threshold);
    return lowest;
  }

  /** A total head at the last head to begin with, for an inlet pressure. */
  firstGuess(inlet: number): number {
    const dry = this.dryLimit();
    return dry + 0.7 * (inlet - dry);
  }

  /** A total head at the last head with which no nozzle is below a pressure: they only rise upstream. */
  wetLimit(pressure: number): number {
    let highest = -Infinity;
    for (const threshold of this.threshold) highest = Math.max(highest, threshold);
    return highest + pressure;
  }

  /** Pressure above what riser, ground and regulator take on the last walk, Pa; below 0 if dry. */
  pressureUnder(head: number): number {
    return this.totalHead[head] - this.threshold[head];
  }

  /** The size of the pressures that ground, risers and regulators bring in. */
  largestThreshold(): number {
    let largest = 0;
    for (const threshold of this.threshold) largest = Math.max(largest, Math.abs(threshold));
    return largest;
  }

  /** Pressure at a nozzle on the last walk, Pa. */
  nozzlePressure(head: number): number {
    const under = this.pressureUnder(head);
    return under > 0 ? Math.min(under, this.set[head]) : 0;
  }

  /**
   * Walks from a total head at the last head and a flow past it (0 for a closed end). Gives up as
   * soon as the total head passes `ceiling`: it can only rise further, and a steep chart in a narrow
   * bore would overflow.
   */
  walk(last: number, ceiling: number, endFlow = 0, endFlowSlope = 0): void {
    let head = last;
    let slope = 1;
    let flow = endFlow;
    let flowSlope = endFlowSlope;
    for (let i = this.count - 1; i >= 0; i--) {
      const under = head - this.threshold[i];
      let discharge = 0;
      if (under > 0) {
        const set = this.set[i];
        if (under < set) {
          discharge = this.law.flow(under);
          flowSlope += this.law.slope * slope;
        } else {
          discharge = this.law.flow(set);
        }
        flow += discharge;
      }
      this.totalHead[i] = head;
      this.headSlope[i] = slope;
      this.headFlow[i] = discharge;
      this.segmentFlow[i] = flow;
      let loss = 0;
      if (flow > 0) {
        loss = this.friction.loss(i, flow);
        head += loss;
        slope += this.friction.slope * flowSlope;
      }
      this.segmentLoss[i] = loss;
      // Not "head > ceiling": a step that is not a number has overflowed too.
      if (!(head <= ceiling)) {
        this.inlet = Infinity;
        return;
      }
    }
    this.inlet = head;
    this.slope = slope;
  }
}
