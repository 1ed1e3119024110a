/**
 * Wind speed 2 m above short grass, from a speed measured at another height above it:
 *
 *     u2 = uz 4.87 / ln(67.8 z − 5.42)      z in m
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), equation 47. Example: 3.2 m/s at 10 m is 2.4
 * m/s at 2 m (Example 14).
 */
export function windAtTwoMeters(speed: number, height: number): number {
  return (speed * 4.87) / Math.log(67.8 * height - 5.42);
}
