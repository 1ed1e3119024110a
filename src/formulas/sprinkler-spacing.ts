import { ALONG_THE_LINE, BETWEEN_POSITIONS } from "../tables/sprinkler-spacing";

/** Largest spacing, m, that still overlaps enough. */
export interface LargestSpacing {
  readonly along: number;
  readonly between: number;
}

/**
 * Largest spacing of heads along the line and of positions of the line, m, for a wetted diameter
 * (m) and a wind speed (m/s); a wind on the limit of a class belongs to it.
 */
export function largestSpacing(wettedDiameter: number, wind: number): LargestSpacing {
  const row = BETWEEN_POSITIONS.find((entry) => wind <= entry.wind);
  return {
    along: ALONG_THE_LINE * wettedDiameter,
    between: (row as (typeof BETWEEN_POSITIONS)[number]).share * wettedDiameter,
  };
}
