import { IPS_PE, ISO_PE, type PipeSeries, SIDR } from "../tables/pipe-sizes";
import { NoAnswer } from "../ground/domain-error";
import { INCH, MILLIMETER } from "../ground/unit-factors";

/** A pipe as its dimension standard means it, m: tolerances taken in the middle. */
export interface PipeDimensions {
  readonly outside: number;
  readonly inside: number;
}

/**
 * Mean outside and inside diameter of polyethylene pipe from a dimension standard, m: the bore is
 * the outside less twice the mean wall. `size` and `rating` are the standard's own: nominal outside
 * diameter in mm with SDR, nominal inches with DR, nominal inches with SIDR.
 */
export function pipeDimensions(series: PipeSeries, size: number, rating: number): PipeDimensions {
  return DIMENSIONS_BY_SERIES[series](size, rating);
}

const DIMENSIONS_BY_SERIES: Readonly<
  Record<PipeSeries, (size: number, rating: number) => PipeDimensions>
> = {
  "ISO PE": isoDimensions,
  "IPS PE": ipsDimensions,
  SIDR: sidrDimensions,
};

/**
 * Outside diameter and wall in the middle of what the standard allows.
 * Example: 63 mm SDR 17 is 63.2 mm outside, and 63.2 − 3.8 − 4.3 = 55.1 mm inside.
 */
function isoDimensions(size: number, rating: number): PipeDimensions {
  const entry = ISO_PE.get(size);
  if (entry === undefined) throw noSize("ISO PE", size, [...ISO_PE.keys()], "mm");
  const wall = entry.walls.get(rating);
  if (wall === undefined) {
    throw noRating("ISO PE", `${size} mm`, "SDR", rating, [...entry.walls.keys()]);
  }
  const [leastWall, greatestWall] = wall;
  const outside = (size + entry.greatestOutside) / 2;
  return {
    outside: outside * MILLIMETER,
    inside: (outside - leastWall - greatestWall) * MILLIMETER,
  };
}

/**
 * Two walls average 6% above the least ones, so 2.12 of those.
 * Source: Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 6.
 * Example: 2 in DR 11 is 2.375 − 2.12 × 0.2159 = 1.917 in inside.
 */
const MEAN_WALLS = 2.12;

function ipsDimensions(size: number, rating: number): PipeDimensions {
  const outside = IPS_PE.outside.get(size);
  if (outside === undefined) throw noSize("IPS PE", size, [...IPS_PE.outside.keys()], "in");
  const listed = IPS_PE.ratings.filter((ratio) => outside / ratio >= IPS_PE.leastWall);
  if (!(listed as readonly number[]).includes(rating)) {
    throw noRating("IPS PE", `${size} in`, "DR", rating, listed);
  }
  return { outside: outside * INCH, inside: (outside - (MEAN_WALLS * outside) / rating) * INCH };
}

/**
 * The bore is controlled; the outside is the bore and two mean walls, so it grows with the wall.
 * Example: 2 in SIDR 15 is 2.067 + 2.12 × 0.138 = 2.359 in outside.
 */
function sidrDimensions(size: number, rating: number): PipeDimensions {
  const inside = SIDR.inside.get(size);
  if (inside === undefined) throw noSize("SIDR", size, [...SIDR.inside.keys()], "in");
  if (!(SIDR.ratings as readonly number[]).includes(rating)) {
    throw noRating("SIDR", `${size} in`, "SIDR", rating, SIDR.ratings);
  }
  const wall = Math.max(inside / rating, SIDR.leastWall);
  return { outside: (inside + MEAN_WALLS * wall) * INCH, inside: inside * INCH };
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
