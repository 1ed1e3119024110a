import { BENDING_RATIOS } from "../tables/bending-ratios";
import { NoAnswer } from "../ground/domain-error";

/**
 * Least bending radius of polyethylene pipe, in the unit of its outside diameter: that diameter
 * times the published multiple for its dimension ratio. Between two printed ratios the next higher
 * (the thinner wall) counts. Example: 2.375 in at DR 17 bends to 64 in.
 */
export function bendingRadius(outside: number, rating: number): number {
  const row = BENDING_RATIOS.find(([printed]) => rating <= printed);
  if (row === undefined || rating < BENDING_RATIOS[0][0]) {
    throw new NoAnswer(
      `rating ${rating} is outside the published table, which runs from ${BENDING_RATIOS[0][0]} to ${BENDING_RATIOS[BENDING_RATIOS.length - 1][0]}`,
    );
  }
  return outside * row[1];
}
