import { NoAnswer } from "../ground/domain-error";
import { HOUR, INCH } from "../ground/unit-factors";
import type { SoilTexture } from "./soils";

/**
 * Largest rate at which sprinklers may apply water, by the soil's profile, the slope of the ground
 * and its cover: bare in average tilth, or under a good sod.
 *
 * Source: the USDA Soil Conservation Service's table of maximum application rates, columns "bare"
 * and "cover"; the bare ones as the National Engineering Handbook, Section 15 Chapter 11 (1983),
 * prints them. The rows of the uniform profiles and the heavy clays were read in a secondary text up
 * to 12% slope; the last slope class and the rows over compact subsoil are from memory. Each entry
 * is one value, an upper limit; "to 6 ft" is how deep the soil is alike.
 */
interface Row {
  readonly profile: string;
  /** in/h, as printed, one for each slope class. */
  readonly bare: readonly number[];
  readonly sod: readonly number[];
}

/** What grows on the ground. */
export const COVERS = ["bare", "sod"] as const;
export type Cover = (typeof COVERS)[number];

/** The table's own word for sod. */
export const coverSpellings: Readonly<Record<string, Cover>> = { cover: "sod", grass: "sod" };

/** The steepest slope of each class; a slope on the boundary belongs to the flatter class. */
const STEEPEST = [0.05, 0.08, 0.12, 0.16];

const rows = [
  { profile: "coarse sandy", bare: [2, 1.5, 1, 0.5], sod: [2, 2, 1.5, 1] },
  { profile: "coarse sandy over compact", bare: [1.5, 1, 0.75, 0.4], sod: [1.75, 1.25, 1, 0.75] },
  { profile: "light sandy loam", bare: [1, 0.8, 0.6, 0.4], sod: [1.75, 1.25, 1, 0.75] },
  {
    profile: "light sandy loam over compact",
    bare: [0.75, 0.5, 0.4, 0.3],
    sod: [1.25, 1, 0.75, 0.5],
  },
  { profile: "silt loam", bare: [0.5, 0.4, 0.3, 0.2], sod: [1, 0.8, 0.6, 0.4] },
  { profile: "silt loam over compact", bare: [0.3, 0.25, 0.15, 0.1], sod: [0.6, 0.5, 0.4, 0.3] },
  { profile: "heavy clay", bare: [0.15, 0.1, 0.08, 0.06], sod: [0.2, 0.15, 0.12, 0.1] },
] as const satisfies readonly Row[];

export type SoilProfile = (typeof rows)[number]["profile"];

export const soilProfiles: readonly SoilProfile[] = rows.map((row) => row.profile);

/** The table's own words for its rows. */
export const profileSpellings: Readonly<Record<string, SoilProfile>> = {
  "coarse sandy soils": "coarse sandy",
  "coarse sandy soils to 6 ft": "coarse sandy",
  "coarse sandy soils over more compact soils": "coarse sandy over compact",
  "sandy loam": "light sandy loam",
  "light sandy loams": "light sandy loam",
  "light sandy loams to 6 ft": "light sandy loam",
  "light sandy loams over more compact soils": "light sandy loam over compact",
  "sandy loam over compact": "light sandy loam over compact",
  "silt loams": "silt loam",
  "silt loams to 6 ft": "silt loam",
  "silt loams over more compact soils": "silt loam over compact",
  "heavy clay or clay loam": "heavy clay",
  "heavy-textured clays or clay loams": "heavy clay",
  "clay loam": "heavy clay",
  clay: "heavy clay",
};

/** Largest rate, m/s, on a slope (fraction, 0 or more). */
export function largestApplicationRate(profile: SoilProfile, slope: number, cover: Cover): number {
  const slopeClass = STEEPEST.findIndex((steepest) => slope <= steepest);
  if (slopeClass < 0) {
    throw new NoAnswer(
      "the table of application rates ends at a slope of 16%: have the rate tested on the ground",
    );
  }
  const row = rows.find((entry) => entry.profile === profile) as Row;
  return (row[cover][slopeClass] * INCH) / HOUR;
}

/**
 * Which profile a texture belongs to, uniform or over a compact subsoil. The table names soils
 * broadly; where it leaves a choice, the texture is put into the class that takes less water (common
 * practice, no source): all sands are coarse sandy, the loams without "sandy" in front (very fine
 * sandy loam with them) silt loam, and every soil with "clay" in its name heavy clay.
 */
const profileOf: Readonly<
  Record<SoilTexture, readonly [uniform: SoilProfile, compact: SoilProfile] | null>
> = {
  "very coarse sand": ["coarse sandy", "coarse sandy over compact"],
  "coarse sand": ["coarse sandy", "coarse sandy over compact"],
  "fine sand": ["coarse sandy", "coarse sandy over compact"],
  "loamy sand": ["coarse sandy", "coarse sandy over compact"],
  "sandy loam": ["light sandy loam", "light sandy loam over compact"],
  "fine sandy loam": ["light sandy loam", "light sandy loam over compact"],
  "very fine sandy loam": ["silt loam", "silt loam over compact"],
  loam: ["silt loam", "silt loam over compact"],
  "silt loam": ["silt loam", "silt loam over compact"],
  "clay loam": ["heavy clay", "heavy clay"],
  "silty clay loam": ["heavy clay", "heavy clay"],
  "sandy clay loam": ["heavy clay", "heavy clay"],
  "sandy clay": ["heavy clay", "heavy clay"],
  "silty clay": ["heavy clay", "heavy clay"],
  clay: ["heavy clay", "heavy clay"],
  peat: null,
};

export function profileOfTexture(texture: SoilTexture, compactSubsoil: boolean): SoilProfile {
  const profiles = profileOf[texture];
  if (profiles === null) {
    throw new NoAnswer(
      `the table of application rates has no profile for ${texture}: have the rate tested on the ground`,
    );
  }
  return profiles[compactSubsoil ? 1 : 0];
}
