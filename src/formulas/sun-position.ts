import { NoAnswer } from "../ground/domain-error";
import { DAY } from "../ground/unit-factors";

/**
 * Where the sun stands on a day of the year (1 on 1 January), angles in radians.
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), equations 23 to 25 and 34. The year counts
 * 365 days there; day 366 of a leap year is one step further. Example: day 246 at 20° south gives
 * dr 0.985, δ 0.120 and ωs 1.527 (Example 8).
 */
const PER_DAY = (2 * Math.PI) / 365;

/** Inverse relative distance to the sun: dr = 1 + 0.033 cos(2π J/365), equation 23. */
export function inverseSunDistance(day: number): number {
  return 1 + 0.033 * Math.cos(PER_DAY * day);
}

/** Declination: δ = 0.409 sin(2π J/365 − 1.39), equation 24. */
export function solarDeclination(day: number): number {
  return 0.409 * Math.sin(PER_DAY * day - 1.39);
}

/**
 * Hour angle at sunset: ωs = arccos(−tan φ tan δ), equation 25. Beyond the polar circles there are
 * days without one, and the equations for a day's sun have no answer.
 */
export function sunsetHourAngle(latitude: number, day: number): number {
  const cosine = -Math.tan(latitude) * Math.tan(solarDeclination(day));
  if (Math.abs(cosine) >= 1) {
    const what = cosine < 0 ? "set" : "rise";
    const degrees = Number(((latitude * 180) / Math.PI).toFixed(2));
    throw new NoAnswer(
      `the sun does not ${what} at latitude ${degrees} on day ${day}: ` +
        "the equations need a day with a sunrise and a sunset",
    );
  }
  return Math.acos(cosine);
}

/**
 * Length of the day, s: N = (24/π) ωs hours, equation 34. Example: 11.7 h on day 246 at 20° south
 * (Example 9).
 */
export function daylight(latitude: number, day: number): number {
  return (DAY / Math.PI) * sunsetHourAngle(latitude, day);
}
