/**
 * Depth of water, m, that a volume (m³) makes in a round can of an opening (m): volume over the area
 * of the opening. A can with sloping sides counts by its opening, not by its bottom.
 *
 * Example: 100 mL in a can of 100 mm opening is 12.7 mm.
 */
export function catchDepth(volume: number, opening: number): number {
  return volume / ((Math.PI / 4) * opening ** 2);
}
