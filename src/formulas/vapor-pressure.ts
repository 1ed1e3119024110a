/**
 * Vapor pressure of water over the liquid, with τ = 1 − T/T_c:
 *
 *     ln(p/p_c) = (T_c/T) (a₁τ + a₂τ^1.5 + a₃τ³ + a₄τ^3.5 + a₅τ⁴ + a₆τ^7.5)
 *
 * Source: IAPWS SR1-86(1992), Revised Supplementary Release on Saturation Properties of Ordinary
 * Water Substance; W. Wagner and A. Pruss, Journal of Physical and Chemical Reference Data 22
 * (1993), equation 1. Valid from the triple point to the critical point. Example: 2.339 kPa at
 * 20 °C.
 */
const CRITICAL_TEMPERATURE = 647.096; // K
const CRITICAL_PRESSURE = 22.064e6; // Pa
const TERMS: readonly (readonly [coefficient: number, exponent: number])[] = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
];

/** Vapor pressure, Pa absolute, at a temperature (K). */
export function vaporPressure(temperature: number): number {
  const tau = 1 - temperature / CRITICAL_TEMPERATURE;
  const sum = TERMS.reduce(
    (total, [coefficient, exponent]) => total + coefficient * tau ** exponent,
    0,
  );
  return CRITICAL_PRESSURE * Math.exp((CRITICAL_TEMPERATURE / temperature) * sum);
}
