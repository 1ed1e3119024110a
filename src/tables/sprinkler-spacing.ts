import { HOUR, MILE } from "../ground/unit-factors";

const MPH = MILE / HOUR;

/**
 * Largest spacing of sprinklers as a share of the wetted diameter, by wind.
 *
 * Source: older issues of USDA-NRCS (then SCS) Conservation Practice Standard 442, Irrigation
 * System, Sprinkler; from memory. Along the line one share holds for every wind. The standard's first
 * row is "no wind": calm air, which a gauge that reads whole miles an hour shows as 0 up to 0.5 mph
 * (common practice, no source).
 */
export const ALONG_THE_LINE = 0.5;

/** Between positions of the line: up to and at each wind speed, m/s. */
export const BETWEEN_POSITIONS: readonly { readonly wind: number; readonly share: number }[] = [
  { wind: 0.5 * MPH, share: 0.65 },
  { wind: 5 * MPH, share: 0.6 },
  { wind: 10 * MPH, share: 0.5 },
  { wind: Infinity, share: 0.45 },
];
