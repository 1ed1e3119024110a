import { DAY, KILOPASCAL, MEGAJOULE, ZERO_CELSIUS } from "../ground/unit-factors";

/**
 * Radiation that the reference grass keeps, W/m²: what it takes from the sun less what it sends to
 * the sky (FAO Irrigation and Drainage Paper 56, 1998, equations 38 to 40).
 */

/** Share of the sun's radiation that the reference grass throws back. */
const ALBEDO = 0.23;

/** From the sun: Rns = (1 − 0.23) Rs, equation 38. Example: 22.07 MJ/m² a day keep 17.0 (Example 18). */
export function netShortwave(solarRadiation: number): number {
  return (1 - ALBEDO) * solarRadiation;
}

/** Stefan–Boltzmann constant as printed with equation 39: 4.903e-9 MJ/K⁴ on a m² in a day. */
const STEFAN_BOLTZMANN = (4.903e-9 * MEGAJOULE) / DAY;

/** The paper's kelvin in equation 39 is °C + 273.16. */
const KELVIN_OF_EQUATION_39 = 273.16 - ZERO_CELSIUS;

/**
 * How much of the clear sky's radiation is taken to reach the ground under the darkest cloud. The
 * paper limits Rs/Rso above, to 1; the lower limit is that of the ASCE standardized equation (2005),
 * without which the cloud factor turns negative on a very dark day.
 */
const DARKEST_SKY = 0.3;

/**
 * To the sky:
 *
 *     Rnl = σ [(Tmax⁴ + Tmin⁴)/2] (0.34 − 0.14 √ea) (1.35 Rs/Rso − 0.35)
 *
 * equation 39: temperatures in K, ea in kPa, MJ/m² a day. Example: 19.1 to 25.1 °C, ea 2.1 kPa, Rs
 * 14.5 of Rso 18.8 send 3.5 MJ/m² a day (Example 11).
 */
export function netLongwave(
  coldest: number,
  warmest: number,
  vaporPressure: number,
  solarRadiation: number,
  clearSkyRadiation: number,
): number {
  const fourthPower = (temperature: number) => (temperature + KELVIN_OF_EQUATION_39) ** 4;
  const blackbody = (STEFAN_BOLTZMANN * (fourthPower(warmest) + fourthPower(coldest))) / 2;
  const humidityFactor = 0.34 - 0.14 * Math.sqrt(vaporPressure / KILOPASCAL);
  const clearness = Math.min(1, Math.max(DARKEST_SKY, solarRadiation / clearSkyRadiation));
  return blackbody * humidityFactor * (1.35 * clearness - 0.35);
}
