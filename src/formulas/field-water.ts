/**
 * Water for a field: depth times area, and the flow that brings it in a time.
 *
 *     Q = 453 A d / (f T)      gpm; A in acres, d the gross depth in inches, f days of T hours
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11. The printed 453 is an
 * acre-inch, 27 154 gal, in 60 minutes, 452.57; here it is exact.
 * Example: 40 acres, 3.43 in in 10 days of 20 h: 310.5 gpm.
 */

/** Volume, m³, of a depth (m) over an area (m²). */
export function fieldWater(area: number, depth: number): number {
  return area * depth;
}

/** Flow, m³/s, that puts a gross depth (m) on an area (m²) in so many days of so many seconds' work. */
export function flowForDepth(area: number, depth: number, days: number, workday: number): number {
  return fieldWater(area, depth) / (days * workday);
}
