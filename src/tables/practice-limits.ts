/**
 * Limits of the practice standards that a plan is checked against.
 *
 * Sources: USDA-NRCS Conservation Practice Standard 442, Sprinkler System (pressure variation), and
 * 430, Irrigation Pipeline (share of the rating); read in texts that quote them.
 */

/** Pressure variation along a line, (highest − lowest)/average: 20% of the design pressure. */
export const PRESSURE_VARIATION = 0.2;

/** Working pressure as a share of the pipe's rating, where surge has not been analyzed: 72%. */
export const SHARE_OF_RATING = 0.72;
