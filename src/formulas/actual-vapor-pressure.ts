import { saturationTemperature, saturationVaporPressure } from "./saturation-vapor-pressure";

/**
 * Actual vapor pressure of the air, as FAO Irrigation and Drainage Paper 56 (1998) takes it.
 */

/** From the dew point (K), Pa: what saturates the air there (equation 14). */
export function vaporPressureAtDewPoint(dewPoint: number): number {
  return saturationVaporPressure(dewPoint);
}

/**
 * From a day's temperatures (K) and relative humidities (fractions), Pa:
 *
 *     ea = [e°(Tmin) RHmax + e°(Tmax) RHmin] / 2
 *
 * since the air is most humid when it is coldest (equation 17). Example: 18 to 25 °C with 82 to
 * 54% give 1.70 kPa (Example 5).
 */
export function vaporPressureFromHumidity(
  coldest: number,
  warmest: number,
  leastHumidity: number,
  mostHumidity: number,
): number {
  const atNight = saturationVaporPressure(coldest) * mostHumidity;
  const byDay = saturationVaporPressure(warmest) * leastHumidity;
  return (atNight + byDay) / 2;
}

/** The dew point, K, with that vapor pressure: equation 14 turned round. */
export function dewPointFromHumidity(
  coldest: number,
  warmest: number,
  leastHumidity: number,
  mostHumidity: number,
): number {
  return saturationTemperature(
    vaporPressureFromHumidity(coldest, warmest, leastHumidity, mostHumidity),
  );
}
