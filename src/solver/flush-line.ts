import { NoAnswer } from "../ground/domain-error";
import { flowAtSpeed } from "../formulas/mean-speed";
import { MOST_INLET_PRESSURE } from "./find-inlet";
import type { Line } from "./line";
import { March } from "./march";

/**
 * Inlet pressure, Pa, at which water leaves the open end of a line at a speed (m/s), its heads
 * running as far as they have pressure. The end stands at the last head and at gauge pressure 0; the
 * flow there is known, so one walk to the inlet tells. The line's own inlet pressure is left aside.
 */
export function pressureToFlush(line: Line, speed: number): number {
  const march = new March(line);
  march.letAirIn();
  const last = march.count - 1;
  const flow = flowAtSpeed(speed, line.bore[last]);
  march.walk(march.openToAir(last), MOST_INLET_PRESSURE, last, flow);
  if (march.inlet === Infinity) {
    throw new NoAnswer("velocity needs an inlet pressure above 10 MPa (1450 psi)");
  }
  if (march.inlet <= 0) {
    throw new NoAnswer("the fall of the ground alone gives more than velocity");
  }
  return march.inlet;
}
