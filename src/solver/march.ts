import { WATER_WEIGHT } from "../ground/constants";
import { zeros } from "../ground/doubles";
import { type HeadFlow, preparedHeadFlow } from "./head-flow";
import type { Line } from "./line";
import { type SegmentFriction, segmentFriction } from "./segment-friction";

/**
 * One walk along a line from its far end to its inlet. Start with a pressure at the last head; then
 * its flow is known, so is the loss in the last segment, so is the pressure at the head before, and
 * so on to the inlet.
 *
 * The pressure that counts at a head is its "spare" one: what is left under its nozzle once riser
 * and regulator have taken theirs; it flows above 0 and is dry below. Steps go from spare pressure
 * to spare pressure, so that along level ground the smallest is as exact as the largest.
 *
 * The inlet pressure rises with the spare pressure at the last head, at least as fast: a head never
 * gives less for more pressure, and a segment never loses less for more flow. That is what makes a
 * line one equation with one unknown and one root.
 *
 * A march begins closed to the air, as a siphon is; letAirIn opens it. Then no head that water flows
 * past has less than the air's pressure in its tubing: what is below it runs down part full, and the
 * water loses on the way what the ground gives.
 */
export class March {
  readonly count: number;
  /** Spare pressure at each head on the last walk, Pa. */
  readonly spare: number[];
  /** How fast each follows the one at the last head. */
  readonly spareSlope: number[];
  readonly headFlow: number[];
  readonly segmentFlow: number[];
  readonly segmentLoss: number[];
  /** Inlet pressure that the last walk needs, Pa (Infinity: above its ceiling). */
  inlet = 0;
  /** The head nearest the inlet that the last walk reached. */
  reached = 0;
  /** Heads passed by all walks together: what they cost. */
  passed = 0;
  /** How fast `inlet` follows the spare pressure at the last head. */
  slope = 1;
  /** How fast the flow into the line does. */
  inflowSlope = 0;

  /** Set pressures of the regulators, Pa; Infinity where there is none. */
  private readonly set: readonly number[];
  private readonly law: HeadFlow;
  private readonly friction: SegmentFriction;
  /** Inlet pressure that a head at rest needs before it has any to spare, Pa. */
  private readonly threshold: number[];
  /** How much a head's threshold is above that of the head before (of the inlet, for the first). */
  private readonly step: number[];
  /** Pressure that the height of the risers takes, Pa. */
  private readonly riser: number;
  private readonly regulatorLoss: readonly number[];
  private isOpenToAir = false;

  constructor(line: Line) {
    const count = line.bore.length;
    this.count = count;
    this.spare = zeros(count);
    this.spareSlope = zeros(count);
    this.headFlow = zeros(count);
    this.segmentFlow = zeros(count);
    this.segmentLoss = zeros(count);
    this.set = line.regulatorSet;
    this.law = preparedHeadFlow(line.discharge);
    this.friction = segmentFriction(line.friction, line.bore, line.segmentLength);
    this.threshold = zeros(count);
    this.step = zeros(count);
    this.riser = WATER_WEIGHT * line.riser;
    this.regulatorLoss = line.regulatorLoss;
    let elevation = 0;
    let taken = -this.riser;
    let threshold = 0;
    for (let i = 0; i < count; i++) {
      // Differences first: heads at one level have exactly the same threshold.
      this.step[i] =
        WATER_WEIGHT * (line.elevation[i] - elevation) + (line.regulatorLoss[i] - taken);
      threshold += this.step[i];
      this.threshold[i] = threshold;
      elevation = line.elevation[i];
      taken = line.regulatorLoss[i];
    }
  }

  /** From now on heads let air in wherever the tubing under them has less than the air's pressure. */
  letAirIn(): void {
    this.isOpenToAir = true;
  }

  /** Spare pressure at which the tubing under a head has the air's, Pa: riser and regulator below 0. */
  openToAir(head: number): number {
    return -(this.riser + this.regulatorLoss[head]);
  }

  /** Pressure in the tubing under a head on the last walk, Pa. */
  linePressure(head: number): number {
    return this.spare[head] - this.openToAir(head);
  }

  /** Leaves no water beyond a head. */
  empty(beyond: number): void {
    for (let i = beyond + 1; i < this.count; i++) {
      this.spare[i] = this.openToAir(i);
      this.headFlow[i] = 0;
      this.segmentFlow[i] = 0;
      this.segmentLoss[i] = 0;
    }
  }

  /** The spare pressure at a head (the last one unless told) of a line at rest under an inlet pressure. */
  atRest(inlet: number, head = this.count - 1): number {
    return inlet - this.threshold[head];
  }

  /** The highest spare pressure at a head (the last one unless told) at which all up to it are dry. */
  dryLimit(head = this.count - 1): number {
    let above = 0;
    let most = 0;
    for (let i = head; i > 0; i--) {
      above += this.step[i];
      most = Math.max(most, above);
    }
    return -most;
  }

  /** A spare pressure at the last head with which no head has less than `spare`. */
  wetLimit(spare: number): number {
    let above = 0;
    let least = 0;
    for (let i = this.count - 1; i > 0; i--) {
      above += this.step[i];
      least = Math.min(least, above);
    }
    return spare - least;
  }

  /** The size of the pressures that ground, risers and regulators bring in. */
  largestThreshold(): number {
    let largest = 0;
    for (const threshold of this.threshold) largest = Math.max(largest, Math.abs(threshold));
    return largest;
  }

  /** Pressure at a nozzle on the last walk, Pa. */
  nozzlePressure(head: number): number {
    return Math.max(0, Math.min(this.spare[head], this.set[head]));
  }

  /** How fast it follows the spare pressure at the last head: a dry head's and a regulated one's stay. */
  nozzleSlope(head: number): number {
    const spare = this.spare[head];
    return spare > 0 && spare < this.set[head] ? this.spareSlope[head] : 0;
  }

  /**
   * Walks to the inlet from a spare pressure at a head (the last one unless told) and a flow past it
   * (none unless told: a closed end). What lies beyond that head stays as the walk before left it.
   *
   * Gives up once the inlet pressure passes `ceiling`: it can only rise further, and a steep chart in
   * a narrow bore would overflow.
   */
  walk(start: number, ceiling: number, from = this.count - 1, flowPast = 0): void {
    let spare = start;
    let slope = 1;
    let flow = flowPast;
    let flowSlope = 0;
    for (let i = from; i >= 0; i--) {
      let discharge = 0;
      if (spare > 0) {
        const set = this.set[i];
        if (spare < set) {
          discharge = this.law.flow(spare);
          flowSlope += this.law.slope * slope;
        } else {
          discharge = this.law.flow(set);
        }
        flow += discharge;
      } else if (this.isOpenToAir && flow > 0 && spare < this.openToAir(i)) {
        // The segment beyond runs part full: its fall is lost on the way.
        this.segmentLoss[i + 1] += this.openToAir(i) - spare;
        spare = this.openToAir(i);
        slope = 0;
      }
      this.spare[i] = spare;
      this.spareSlope[i] = slope;
      this.headFlow[i] = discharge;
      this.segmentFlow[i] = flow;
      let loss = 0;
      if (flow > 0) {
        loss = this.friction.loss(i, flow);
        slope += this.friction.slope * flowSlope;
      }
      this.segmentLoss[i] = loss;
      // Not "above": a step that is not a number has overflowed too.
      if (!(spare + loss + this.threshold[i] <= ceiling)) {
        this.inlet = Infinity;
        this.reached = i;
        this.passed += from + 1 - i;
        return;
      }
      spare += loss + this.step[i];
    }
    this.inlet = spare;
    this.reached = 0;
    this.passed += from + 1;
    this.slope = slope;
    this.inflowSlope = flowSlope;
  }
}
