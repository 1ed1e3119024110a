import { type DischargeLaw, headFlow, headFlowSlope } from "../formulas/discharge-law";

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

  constructor(private readonly law: DischargeLaw) {
    this.rampSlope = headFlow(law, RAMP) / RAMP;
  }

  flow(pressure: number): number {
    if (pressure < RAMP) {
      this.slope = this.rampSlope;
      return this.rampSlope * pressure;
    }
    const flow = headFlow(this.law, pressure);
    this.slope = headFlowSlope(this.law, pressure, flow);
    return flow;
  }
}
