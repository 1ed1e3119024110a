/**
 * Unrestrained coefficient of polyethylene pipe, about 9 × 10⁻⁵ in/in/°F, per K.
 *
 * Source: Plastics Pipe Institute, answers to frequent questions on polyethylene pipe. Its rule of
 * thumb, 1 in per 100 ft and 10 °F, is 8.3 × 10⁻⁵; the larger leaves more slack.
 */
const EXPANSION = 9e-5 * 1.8;

/**
 * Length that a line gains, m, when its wall warms by a difference of temperature (K), if it is free
 * to move. Below 0 it is shorter. Example: 100 ft and 10 °F give 0.09 ft, 1.08 in.
 */
export function thermalExpansion(length: number, change: number): number {
  return length * EXPANSION * change;
}
