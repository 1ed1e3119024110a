import { partsToCover, wholeParts } from "./whole-parts";

/**
 * Whole rolls that hold a length, with a fraction more for waste. Counting; example: 1260 ft and
 * 5% of waste take five rolls of 300 ft.
 */
export function rollsFor(length: number, roll: number, waste = 0): number {
  return partsToCover(length * (1 + waste), roll);
}

/**
 * Couplers to join rolls when pieces are cut one after another and what is left of a roll begins
 * the next piece: one wherever a roll ends inside a piece, none where it ends with the piece.
 */
export function rollJoints(pieces: readonly number[], roll: number): number {
  let joints = 0;
  let cut = 0;
  for (const piece of pieces) {
    const before = cut;
    cut += piece;
    joints += partsToCover(cut, roll) - 1 - wholeParts(before, roll);
  }
  return joints;
}
