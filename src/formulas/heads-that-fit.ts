/** Distances are typed to a few digits: a head that would stand this share of a spacing too far fits. */
const ROUNDING = 1e-9;

/** Whole heads that fit a length, the first at its own distance from the inlet (all in one unit). */
export function headsThatFit(length: number, spacing: number, first: number): number {
  const spacings = (length - first) / spacing + ROUNDING;
  return spacings < 0 ? 0 : Math.floor(spacings) + 1;
}
