/**
 * Solar radiation at the ground, W/m² (or any unit that the extraterrestrial radiation has).
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), equations 35 and 37, with the coefficients
 * that the paper gives where none have been calibrated for the place.
 */
const OVERCAST_SHARE = 0.25; // a_s
const SUNSHINE_SHARE = 0.5; // b_s

/**
 * From sunshine: Rs = (0.25 + 0.50 n/N) Ra, equation 35 (Ångström), n and N in one unit. Example:
 * 7.1 of 10.9 hours under 25.1 MJ/m² a day give 14.45 (14.5 in Example 10).
 */
export function solarRadiation(
  sunshine: number,
  daylight: number,
  extraterrestrial: number,
): number {
  return (OVERCAST_SHARE + (SUNSHINE_SHARE * sunshine) / daylight) * extraterrestrial;
}

/**
 * Under a clear sky at an elevation (m): Rso = (0.75 + 0.00002 z) Ra, equation 37. Example: 41.09
 * MJ/m² a day at 100 m give 30.90 (Example 18).
 */
export function clearSkyRadiation(elevation: number, extraterrestrial: number): number {
  return (OVERCAST_SHARE + SUNSHINE_SHARE + 2e-5 * elevation) * extraterrestrial;
}
