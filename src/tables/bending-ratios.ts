/**
 * Least bending radius of polyethylene pipe, as a multiple of its outside diameter, by its
 * dimension ratio (outside diameter over wall), thick wall first. Plastics Pipe Institute, Handbook
 * of Polyethylene Pipe, cold bending (read in a secondary text); the thinner the wall, the sooner it
 * kinks.
 */
export const BENDING_RATIOS: readonly (readonly [rating: number, diameters: number])[] = [
  [11, 25],
  [13.5, 25],
  [17, 27],
  [21, 27],
  [26, 34],
];

/**
 * Where a fitting lies in the bend, whatever the wall. Same source (read in a secondary text): the
 * fitting does not bend, so the tubing beside it would take all of it.
 */
export const BENDING_RATIO_AT_FITTING = 100;
