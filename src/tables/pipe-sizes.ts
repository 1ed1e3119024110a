/**
 * Dimensions of polyethylene pipe by published standard, in the standard's own unit.
 */

/** One nominal size of metric pipe, mm. */
export interface MetricSize {
  /** Greatest mean outside diameter; the least is the nominal one. */
  readonly greatestOutside: number;
  /** Least and greatest wall by SDR; an SDR that is absent is not in the standard at this size. */
  readonly walls: ReadonlyMap<number, readonly [least: number, greatest: number]>;
}

/**
 * Outside diameters are controlled, wall by the ratio; metric, by nominal outside diameter.
 *
 * Source: ISO 4427-2:2007 and EN 12201-2 (least walls of all sizes, greatest ones at SDR 7.4 to
 * 17 and mean outside diameters read in reprints; greatest walls at SDR 21 and 26 by the tolerance
 * of ISO 11922-1 grade V, 0.1 e + 0.1 rounded up to the next 0.1). A wall is not the outside
 * diameter over the SDR rounded up: 75 mm SDR 11 is 6.8, not 6.9, and 90 mm SDR 17 is 5.4, not 5.3.
 */
// prettier-ignore
export const ISO_PE: ReadonlyMap<number, MetricSize> = new Map<number, MetricSize>([
  [20, { greatestOutside: 20.3, walls: new Map([[7.4, [3.0, 3.4]], [9, [2.3, 2.7]], [11, [2.0, 2.3]]]) }],
  [25, { greatestOutside: 25.3, walls: new Map([[7.4, [3.5, 4.0]], [9, [3.0, 3.4]], [11, [2.3, 2.7]], [13.6, [2.0, 2.3]]]) }],
  [32, { greatestOutside: 32.3, walls: new Map([[7.4, [4.4, 5.0]], [9, [3.6, 4.1]], [11, [3.0, 3.4]], [13.6, [2.4, 2.8]], [17, [2.0, 2.3]]]) }],
  [40, { greatestOutside: 40.4, walls: new Map([[7.4, [5.5, 6.2]], [9, [4.5, 5.1]], [11, [3.7, 4.2]], [13.6, [3.0, 3.5]], [17, [2.4, 2.8]], [21, [2.0, 2.3]]]) }],
  [50, { greatestOutside: 50.4, walls: new Map([[7.4, [6.9, 7.7]], [9, [5.6, 6.3]], [11, [4.6, 5.2]], [13.6, [3.7, 4.2]], [17, [3.0, 3.4]], [21, [2.4, 2.8]], [26, [2.0, 2.3]]]) }],
  [63, { greatestOutside: 63.4, walls: new Map([[7.4, [8.6, 9.6]], [9, [7.1, 8.0]], [11, [5.8, 6.5]], [13.6, [4.7, 5.3]], [17, [3.8, 4.3]], [21, [3.0, 3.4]], [26, [2.5, 2.9]]]) }],
  [75, { greatestOutside: 75.5, walls: new Map([[7.4, [10.3, 11.5]], [9, [8.4, 9.4]], [11, [6.8, 7.6]], [13.6, [5.6, 6.3]], [17, [4.5, 5.1]], [21, [3.6, 4.1]], [26, [2.9, 3.3]]]) }],
  [90, { greatestOutside: 90.6, walls: new Map([[7.4, [12.3, 13.7]], [9, [10.1, 11.3]], [11, [8.2, 9.2]], [13.6, [6.7, 7.5]], [17, [5.4, 6.1]], [21, [4.3, 4.9]], [26, [3.5, 4.0]]]) }],
  [110, { greatestOutside: 110.7, walls: new Map([[7.4, [15.1, 16.8]], [9, [12.3, 13.7]], [11, [10.0, 11.1]], [13.6, [8.1, 9.1]], [17, [6.6, 7.4]], [21, [5.3, 6.0]], [26, [4.2, 4.8]]]) }],
  [125, { greatestOutside: 125.8, walls: new Map([[7.4, [17.1, 19.0]], [9, [14.0, 15.6]], [11, [11.4, 12.7]], [13.6, [9.2, 10.3]], [17, [7.4, 8.3]], [21, [6.0, 6.7]], [26, [4.8, 5.4]]]) }],
  [140, { greatestOutside: 140.9, walls: new Map([[7.4, [19.2, 21.3]], [9, [15.7, 17.4]], [11, [12.7, 14.1]], [13.6, [10.3, 11.5]], [17, [8.3, 9.3]], [21, [6.7, 7.5]], [26, [5.4, 6.1]]]) }],
  [160, { greatestOutside: 161.0, walls: new Map([[7.4, [21.9, 24.2]], [9, [17.9, 19.8]], [11, [14.6, 16.2]], [13.6, [11.8, 13.1]], [17, [9.5, 10.6]], [21, [7.7, 8.6]], [26, [6.2, 7.0]]]) }],
]);

/**
 * Outside diameters of steel pipe, wall by the ratio; inches.
 *
 * Bore: the mean one is taken, outside − 2.12·outside/DR (Handbook of Polyethylene Pipe, chapter 6:
 * a wall 6% above the least), not the narrowest. Decided so: many rolls average out along a line,
 * and the metric series is taken in the middle of its tolerance too. ASTM D3035's own tolerances
 * could not be read, so these are from memory: wall +12% of the least, outside ±0.006 in at 2 in.
 * A 2 in DR 11 roll at both limits has 1.885 in of bore where the mean is 1.917: 1.7% less, and
 * about 9% more friction (bore to the power −4.87). A plan that passes by less than that has no
 * room for such a roll: measure the bore and type it in.
 */
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
  /** ASTM D3035 makes no wall thinner than this, in (read in a secondary text). */
  leastWall: 0.062,
} as const;

/**
 * Inside diameters are controlled, so a bore goes with every ratio; inches. The average one is
 * taken here too. ASTM D2239's tolerance could not be read; from memory it is +0.015, −0.020 in at
 * 2 in, so that a roll at the limit is 1% narrower.
 */
export const SIDR = {
  /** Inside-diameter ratios of ASTM D2239 (from memory). */
  ratings: [5.3, 7, 9, 11.5, 15, 19],
  /** ASTM D2239 makes no wall thinner than this, in (from memory). */
  leastWall: 0.06,
  /** Nominal size to inside diameter, in: that of schedule 40 pipe (read in open tables), which ASTM D2239 shares (from memory). */
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
