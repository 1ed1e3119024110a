import { FOOT, INCH } from "../ground/unit-factors";

/**
 * Available water capacity by soil texture: inches of water that a foot of soil holds for plants.
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11, Sprinkler Irrigation
 * (Amendment 80, 2016; first issued as Section 15 Chapter 11, 1983), Table 11-1. The mineral rows
 * were read in a secondary text; the row of the peats and the grouping of textures into the rows are
 * from memory. Every entry is a range; the middle of it is given.
 */
interface Row {
  readonly textures: readonly string[];
  /** Inches per foot, as printed. */
  readonly low: number;
  readonly high: number;
}

const rows = [
  { textures: ["very coarse sand"], low: 0.4, high: 0.75 },
  { textures: ["coarse sand", "fine sand", "loamy sand"], low: 0.75, high: 1.25 },
  { textures: ["sandy loam", "fine sandy loam"], low: 1.25, high: 1.75 },
  { textures: ["very fine sandy loam", "loam", "silt loam"], low: 1.5, high: 2.3 },
  { textures: ["clay loam", "silty clay loam", "sandy clay loam"], low: 1.75, high: 2.5 },
  { textures: ["sandy clay", "silty clay", "clay"], low: 1.6, high: 2.5 },
  { textures: ["peat"], low: 2, high: 3 },
] as const satisfies readonly Row[];

export type SoilTexture = (typeof rows)[number]["textures"][number];

export const soilTextures: readonly SoilTexture[] = rows.flatMap(
  (row): readonly SoilTexture[] => row.textures,
);

/** Further spellings: the table's plurals, and names for the same soil. */
export const textureSpellings: Readonly<Record<string, SoilTexture>> = {
  ...(Object.fromEntries(soilTextures.map((texture) => [`${texture}s`, texture])) as Record<
    string,
    SoilTexture
  >),
  sand: "fine sand",
  sands: "fine sand",
  "loamy fine sand": "loamy sand",
  "loamy coarse sand": "loamy sand",
  "coarse sandy loam": "sandy loam",
  muck: "peat",
  mucks: "peat",
};

/** m of water a m of soil: the middle of the printed range. */
export function availableWaterCapacity(texture: SoilTexture): number {
  const row = rows.find(({ textures }) => (textures as readonly string[]).includes(texture)) as Row;
  return (((row.low + row.high) / 2) * INCH) / FOOT;
}
