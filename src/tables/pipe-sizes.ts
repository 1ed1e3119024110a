/**
 * Dimensions of polyethylene pipe by published standard, in the standard's own unit.
 */

/** Outside diameters are controlled, wall by the ratio; metric. */
export const ISO_PE = {
  ratings: [7.4, 9, 11, 13.6, 17, 21, 26],
  /**
   * Per nominal outside diameter, mm: the greatest mean outside diameter and the least wall at each
   * SDR above; null where the standard lists no such pipe. The least mean outside diameter is the
   * nominal one.
   *
   * Source: ISO 4427-2:2007, wall thickness table (read in a reprint, for 20 to 160 mm); EN 12201-2,
   * mean outside diameters (read in a reprint). A wall is not the outside diameter over the SDR
   * rounded up: 75 mm SDR 11 is 6.8, not 6.9, and 90 mm SDR 17 is 5.4, not 5.3.
   */
  sizes: new Map<number, { readonly greatestOutside: number; readonly walls: (number | null)[] }>([
    [20, { greatestOutside: 20.3, walls: [3.0, 2.3, 2.0, null, null, null, null] }],
    [25, { greatestOutside: 25.3, walls: [3.5, 3.0, 2.3, 2.0, null, null, null] }],
    [32, { greatestOutside: 32.3, walls: [4.4, 3.6, 3.0, 2.4, 2.0, null, null] }],
    [40, { greatestOutside: 40.4, walls: [5.5, 4.5, 3.7, 3.0, 2.4, 2.0, null] }],
    [50, { greatestOutside: 50.4, walls: [6.9, 5.6, 4.6, 3.7, 3.0, 2.4, 2.0] }],
    [63, { greatestOutside: 63.4, walls: [8.6, 7.1, 5.8, 4.7, 3.8, 3.0, 2.5] }],
    [75, { greatestOutside: 75.5, walls: [10.3, 8.4, 6.8, 5.6, 4.5, 3.6, 2.9] }],
    [90, { greatestOutside: 90.6, walls: [12.3, 10.1, 8.2, 6.7, 5.4, 4.3, 3.5] }],
    [110, { greatestOutside: 110.7, walls: [15.1, 12.3, 10.0, 8.1, 6.6, 5.3, 4.2] }],
    [125, { greatestOutside: 125.8, walls: [17.1, 14.0, 11.4, 9.2, 7.4, 6.0, 4.8] }],
    [140, { greatestOutside: 140.9, walls: [19.2, 15.7, 12.7, 10.3, 8.3, 6.7, 5.4] }],
    [160, { greatestOutside: 161.0, walls: [21.9, 17.9, 14.6, 11.8, 9.5, 7.7, 6.2] }],
  ]),
} as const;

/** Outside diameters of steel pipe, wall by the ratio; inches. */
export const IPS_PE = {
  /** Dimension ratios of ASTM D3035 (from memory). */
  ratings: [7, 9, 11, 13.5, 15.5, 17, 21, 26, 32.5],
  /** Nominal size to outside diameter, in: ANSI B36.10, as ASTM D3035 takes it (read in a reprint). */
  outside: new Map<number, number>([
    [0.5, 0.84],
    [0.75, 1.05],
    [1, 1.315],
    [1.25, 1.66],
    [1.5, 1.9],
    [2, 2.375],
    [3, 3.5],
    [4, 4.5],
    [6, 6.625],
  ]),
  /** ASTM D3035 makes no wall thinner than this, in (from memory). */
  leastWall: 0.062,
} as const;

/** Inside diameters are controlled, so a bore goes with every ratio; inches. */
export const SIDR = {
  /** Inside-diameter ratios of ASTM D2239 (from memory). */
  ratings: [5.3, 7, 9, 11.5, 15, 19],
  /** Nominal size to average inside diameter, in: ASTM D2239 (from memory). */
  inside: new Map<number, number>([
    [0.5, 0.622],
    [0.75, 0.824],
    [1, 1.049],
    [1.25, 1.38],
    [1.5, 1.61],
    [2, 2.067],
    [2.5, 2.469],
    [3, 3.068],
    [4, 4.026],
    [6, 6.065],
  ]),
} as const;

/** The series by name, as a sheet writes them. */
export const PIPE_SERIES = ["ISO PE", "IPS PE", "SIDR"] as const;
export type PipeSeries = (typeof PIPE_SERIES)[number];
