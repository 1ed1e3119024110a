import { type DischargeLaw, headFlow, pieceAt } from "../formulas/discharge-law";
import { NEAR, NearPower, STEEPEST } from "./near-power";

/**
 * Below this pressure, Pa, a head's flow falls to nothing along a straight line instead of its own
 * power of the pressure: a centimeter of water, which no gauge shows, in exchange for a flow
 * that never jumps (a chart with exponent 0 would) and has no upright tangent (a square root has).
 */
export const RAMP = 100;

/** √p/p at the ramp's upper end. */
const RAMP_SLOPE = 1 / Math.sqrt(RAMP);

/** A head's discharge as the march asks for it: `flow` leaves its derivative by pressure in `slope`. */
export interface HeadFlow {
  flow(pressure: number): number;
  slope: number;
}

export function preparedHeadFlow(law: DischargeLaw): HeadFlow {
  const orifice = law.breaks.length === 0 && law.exponents[0] === 0.5;
  return orifice ? new OrificeFlow(law.coefficients[0]) : new ChartFlow(law);
}

/** The commonest law gets a path of its own: a square root is several times faster than a power. */
class OrificeFlow implements HeadFlow {
  slope = 0;

  constructor(private readonly coefficient: number) {}

  flow(pressure: number): number {
    if (pressure < RAMP) {
      this.slope = this.coefficient * RAMP_SLOPE;
      return this.slope * pressure;
    }
    const flow = this.coefficient * Math.sqrt(pressure);
    this.slope = (0.5 * flow) / pressure;
    return flow;
  }
}

class ChartFlow implements HeadFlow {
  slope = 0;
  private readonly rampSlope: number;
  private readonly powers: readonly NearPower[];
  /** The last flow had from a power, and the piece of the chart that it is on. */
  private knownFlow = 0;
  private perKnownPressure = 0;
  private piece = 0;
  private from = 0;
  private to = 0;

  constructor(private readonly law: DischargeLaw) {
    this.rampSlope = headFlow(law, RAMP) / RAMP;
    this.powers = law.exponents.map((exponent) => new NearPower(exponent));
  }

  flow(pressure: number): number {
    if (pressure < RAMP) {
      this.slope = this.rampSlope;
      return this.rampSlope * pressure;
    }
    const x = pressure * this.perKnownPressure - 1;
    const near = x <= NEAR && x >= -NEAR && pressure >= this.from && pressure < this.to;
    const flow = near
      ? this.knownFlow + this.knownFlow * this.powers[this.piece].less1(x)
      : this.known(pressure);
    this.slope = (this.law.exponents[this.piece] * flow) / pressure;
    return flow;
  }

  private known(pressure: number): number {
    const { law } = this;
    this.piece = pieceAt(law, pressure);
    this.from = this.piece > 0 ? law.breaks[this.piece - 1] : 0;
    this.to = this.piece < law.breaks.length ? law.breaks[this.piece] : Infinity;
    // p^x by way of its logarithm: twice as fast as a power, the same to a part in 1e14.
    this.knownFlow =
      law.coefficients[this.piece] * Math.exp(law.exponents[this.piece] * Math.log(pressure));
    // Of a power too steep for the series none is near.
    this.perKnownPressure = law.exponents[this.piece] <= STEEPEST ? 1 / pressure : 0;
    return this.knownFlow;
  }
}
