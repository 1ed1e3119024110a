import { inverseSunDistance, solarDeclination, sunsetHourAngle } from "./sun-position";
import { MEGAJOULE, MINUTE } from "../ground/unit-factors";

/** Solar constant, W/m²: 0.0820 MJ/m² a minute, as FAO-56 prints it. */
const SOLAR_CONSTANT = (0.082 * MEGAJOULE) / MINUTE;

/**
 * Solar radiation outside the atmosphere on a level surface, the mean of the day, W/m²:
 *
 *     Ra = (24·60/π) Gsc dr [ωs sin φ sin δ + cos φ cos δ sin ωs]      MJ/m² a day
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), equation 21. As a mean over the day in W/m²,
 * 24·60/π is 1/π. Example: 32.2 MJ/m² on day 246 at 20° south (Example 8).
 */
export function extraterrestrialRadiation(latitude: number, day: number): number {
  const declination = solarDeclination(day);
  const sunset = sunsetHourAngle(latitude, day);
  const height =
    sunset * Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
  return (SOLAR_CONSTANT / Math.PI) * inverseSunDistance(day) * height;
}
