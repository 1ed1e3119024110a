import { KILOPASCAL, ZERO_CELSIUS } from "../ground/unit-factors";

/**
 * Saturation vapor pressure over water, the form of Tetens (1930):
 *
 *     e°(T) = 0.6108 exp(17.27 T / (T + 237.3))      kPa; T in °C
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), equation 11. For air temperatures, and for
 * water rather than ice below 0 °C too. Example: 25 °C gives 3.168 kPa (Table 2.3).
 */
const AT_ZERO = 0.6108; // kPa
const SLOPE = 17.27;
const OFFSET = 237.3; // °C

/** Pa, at a temperature in K. */
export function saturationVaporPressure(temperature: number): number {
  const celsius = temperature - ZERO_CELSIUS;
  return KILOPASCAL * AT_ZERO * Math.exp((SLOPE * celsius) / (celsius + OFFSET));
}

/**
 * Of a day, Pa: the mean of that at its highest and its lowest temperature (equation 12), since the
 * curve bends and the value at the mean temperature would be too low. Example: 24.5 and 15 °C give
 * 2.39 kPa (Example 3).
 */
export function meanSaturationVaporPressure(coldest: number, warmest: number): number {
  return (saturationVaporPressure(coldest) + saturationVaporPressure(warmest)) / 2;
}

/**
 * The temperature, K, at which air of this vapor pressure (Pa, above 0) is saturated, its dew
 * point: equation 11 solved for T, T = 237.3 L / (17.27 − L) with L = ln(e / 0.6108).
 */
export function saturationTemperature(vaporPressure: number): number {
  const logarithm = Math.log(vaporPressure / KILOPASCAL / AT_ZERO);
  return ZERO_CELSIUS + (OFFSET * logarithm) / (SLOPE - logarithm);
}

/**
 * How fast saturation vapor pressure rises with temperature, Pa/K:
 *
 *     Δ = 4098 e°(T) / (T + 237.3)²      kPa/°C; T in °C
 *
 * Source: the same paper, equation 13. Example: 30.2 °C gives 0.246 kPa/°C (Example 17).
 */
export function saturationSlope(temperature: number): number {
  const celsius = temperature - ZERO_CELSIUS;
  return (4098 * saturationVaporPressure(temperature)) / (celsius + OFFSET) ** 2;
}
