import { BENDING_RATIO_AT_FITTING, BENDING_RATIOS } from "../tables/bending-ratios";
import { NoAnswer } from "../ground/domain-error";

/**
 * Least bending radius of polyethylene pipe, in the unit of its outside diameter: that diameter
 * times the published multiple for its dimension ratio. Between two printed ratios the next higher
 * (the thinner wall) counts. With a fitting in the bend one multiple holds for all. Example: 2.375 in
 * at DR 17 bends to 64 in, with a saddle in the bend to 238 in.
 */
export function bendingRadius(outside: number, rating: number, fitting: boolean): number {
  const row = BENDING_RATIOS.find(([printed]) => rating <= printed);
  if (row === undefined || rating < BENDING_RATIOS[0][0]) {
    throw new NoAnswer(
      `rating ${rating} is outside the published table, which runs from ${BENDING_RATIOS[0][0]} to ${BENDING_RATIOS[BENDING_RATIOS.length - 1][0]}`,
    );
  }
  return outside * (fitting ? BENDING_RATIO_AT_FITTING : row[1]);
}
