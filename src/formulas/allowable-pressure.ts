/**
 * Pressure that a pipe may carry, Pa: a share of its rating, which leaves room for surge.
 *
 * Source: USDA-NRCS Conservation Practice Standard 430, Irrigation Pipeline, read where it is quoted: 72%
 * where surge has not been analyzed. Example: a rating of 100 psi allows 72 psi.
 */
export function allowablePressure(rating: number, share: number): number {
  return rating * share;
}
