import { IPS_PE, ISO_PE, type PipeSeries, SIDR } from "../tables/pipe-sizes";
import { NoAnswer } from "../ground/domain-error";
import { INCH, MILLIMETRE } from "../ground/unit-factors";

/**
 * Mean inside diameter of polyethylene pipe from a dimension standard, m: mean outside diameter
 * less twice the mean wall. `size` and `rating` are the standard's own: nominal outside diameter in
 * mm with SDR, nominal inches with DR, nominal inches with SIDR.
 */
export function pipeInside(series: PipeSeries, size: number, rating: number): number {
  return INSIDE_BY_SERIES[series](size, rating);
}

const INSIDE_BY_SERIES: Readonly<Record<PipeSeries, (size: number, rating: number) => number>> = {
  "ISO PE": isoInside,
  "IPS PE": ipsInside,
  SIDR: sidrInside,
};

/**
 * Outside diameter and wall in the middle of what the standard allows.
 * Example: 63 mm SDR 17 is 63.2 − 3.8 − 4.3 = 55.1 mm.
 */
function isoInside(size: number, rating: number): number {
  const entry = ISO_PE.get(size);
  if (entry === undefined) throw noSize("ISO PE", size, [...ISO_PE.keys()], "mm");
  const wall = entry.walls.get(rating);
  if (wall === undefined) {
    throw noRating("ISO PE", `${size} mm`, "SDR", rating, [...entry.walls.keys()]);
  }
  const [leastWall, greatestWall] = wall;
  const outside = (size + entry.greatestOutside) / 2;
  return (outside - leastWall - greatestWall) * MILLIMETRE;
}

/**
 * The wall averages 6 % above the least one, OD/DR, so the bore is OD − 2.12 OD/DR.
 * Source: Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 6.
 * Example: 2 in DR 11 is 2.375 − 2.12 × 0.2159 = 1.917 in.
 */
const MEAN_WALLS = 2.12;

function ipsInside(size: number, rating: number): number {
  const outside = IPS_PE.outside.get(size);
  if (outside === undefined) throw noSize("IPS PE", size, [...IPS_PE.outside.keys()], "in");
  const listed = IPS_PE.ratings.filter((ratio) => outside / ratio >= IPS_PE.leastWall);
  if (!(listed as readonly number[]).includes(rating)) {
    throw noRating("IPS PE", `${size} in`, "DR", rating, listed);
  }
  return (outside - (MEAN_WALLS * outside) / rating) * INCH;
}

function sidrInside(size: number, rating: number): number {
  const inside = SIDR.inside.get(size);
  if (inside === undefined) throw noSize("SIDR", size, [...SIDR.inside.keys()], "in");
  if (!(SIDR.ratings as readonly number[]).includes(rating)) {
    throw noRating("SIDR", `${size} in`, "SIDR", rating, SIDR.ratings);
  }
  return inside * INCH;
}

function noSize(series: PipeSeries, size: number, listed: readonly number[], unit: string) {
  return new NoAnswer(
    `size ${size} is not in the ${series} table here: it lists ${listed.join(", ")} ${unit}`,
  );
}

function noRating(
  series: PipeSeries,
  size: string,
  ratio: string,
  rating: number,
  listed: readonly number[],
) {
  return new NoAnswer(
    `rating ${rating} is not in the ${series} table here for ${size}: it lists ${ratio} ${listed.join(", ")}`,
  );
}
