import { ZERO_CELSIUS } from "../ground/unit-factors";

/**
 * Density of air-free water at one atmosphere, kg/m³, t in °C:
 *
 *     ρ = (999.83952 + 16.945176 t − 7.9870401e-3 t² − 46.170461e-6 t³ + 105.56302e-9 t⁴
 *          − 280.54253e-12 t⁵) / (1 + 16.879850e-3 t)
 *
 * Source: G. S. Kell, Journal of Chemical and Engineering Data 20 (1975), equation 16. Valid from
 * 0 to 150 °C. Example: 998.20 kg/m³ at 20 °C.
 */
const NUMERATOR = [
  999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12,
];
const DENOMINATOR = 16.87985e-3;

/** Density, kg/m³, at a temperature (K). */
export function densityOfWater(temperature: number): number {
  const celsius = temperature - ZERO_CELSIUS;
  const numerator = NUMERATOR.reduceRight((sum, coefficient) => sum * celsius + coefficient, 0);
  return numerator / (1 + DENOMINATOR * celsius);
}
