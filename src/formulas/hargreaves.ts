import { DAY, MEGAJOULE, MILLIMETER, ZERO_CELSIUS } from "../ground/unit-factors";

/** Energy that evaporates water, MJ/kg: a MJ/m² is 1/2.45 mm (FAO-56, equation 20). */
const LATENT_HEAT = 2.45;

/**
 * Evapotranspiration of the reference grass from temperature alone, m/s of water:
 *
 *     ETo = 0.0023 (Tmean + 17.8) (Tmax − Tmin)^0.5 Ra      mm/day; °C, Ra in mm/day
 *
 * Source: Hargreaves and Samani (1985), as FAO Irrigation and Drainage Paper 56 (1998) gives it in
 * equation 52. It overstates in humid air and understates in strong wind (above 3 m/s). Below a mean
 * of −17.8 °C it would turn negative: 0. Example: 14.8 to 26.6 °C under 40.6 MJ/m² a day (Ra) give
 * 5.0 mm/day.
 */
export function hargreaves(coldest: number, warmest: number, extraterrestrial: number): number {
  const mean = (coldest + warmest) / 2 - ZERO_CELSIUS;
  const evaporable = (extraterrestrial * DAY) / MEGAJOULE / LATENT_HEAT; // mm/day
  const millimetersADay =
    0.0023 * Math.max(0, mean + 17.8) * Math.sqrt(warmest - coldest) * evaporable;
  return (millimetersADay * MILLIMETER) / DAY;
}
