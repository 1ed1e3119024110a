/**
 * Christiansen's multiple-outlet factor: friction in a line that gives off its flow in N equal parts
 * at equal spacing, over that of the same line carrying the full flow to its end,
 *
 *     F = Σ i^m / N^(m+1),  i = 1 … N
 *
 * with the first outlet one full spacing from the inlet. Where it stands at a share r of a spacing,
 * the line is (N − 1 + r) spacings long and its first segment is r of one:
 *
 *     F = (Σ i^m − (1 − r) N^m) / (N^m (N − 1 + r))
 *
 * The exact sum, not the three-term approximation, which gives 1.003 for one outlet.
 *
 * Source: J. E. Christiansen, Irrigation by Sprinkling, University of California Bulletin 670
 * (1942). Example: 10 outlets, m = 1.85: F = 0.402.
 */
export function multipleOutletFactor(
  outlets: number,
  exponent: number,
  firstRatio: number,
): number {
  let sum = 0;
  for (let i = 1; i < outlets; i++) sum += (i / outlets) ** exponent;
  return (sum + firstRatio) / (outlets - 1 + firstRatio);
}
