/**
 * Net depth to replace, m: what the roots reach, and of that the share that may be used up,
 *
 *     d = AWC · Z · depletion
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); the same as readily
 * available water, RAW = p TAW, in FAO-56 (1998), equations 82 and 83. Example: 2 in/ft over 3 ft at
 * one half is 3 in.
 */
export function netDepth(waterCapacity: number, rootDepth: number, depletion: number): number {
  return waterCapacity * rootDepth * depletion;
}
