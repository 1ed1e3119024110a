import { FOOT, INCH } from "../ground/unit-factors";

/**
 * Available water capacity by soil texture: inches of water that a foot of soil holds for plants.
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11, Sprinkler Irrigation
 * (Amendment 80, 2016; first issued as Section 15 Chapter 11, 1983), Table 11-1. The mineral rows
 * were read in a secondary text; the averages, the row of the peats and the grouping of textures into
 * the rows are from memory. The table prints a range (the help of SOIL.AWC lists them) and an
 * average, which is not its middle.
 */
interface Row {
  readonly textures: readonly string[];
  /** Inches per foot, as printed. */
  readonly average: number;
}

const rows = [
  { textures: ["very coarse sand"], average: 0.5 },
  { textures: ["coarse sand", "fine sand", "loamy sand"], average: 1 },
  { textures: ["sandy loam", "fine sandy loam"], average: 1.5 },
  { textures: ["very fine sandy loam", "loam", "silt loam"], average: 2 },
  {
    textures: ["clay loam", "silty clay loam", "sandy clay loam"],
    average: 2.2,
  },
  { textures: ["sandy clay", "silty clay", "clay"], average: 2.3 },
  { textures: ["peat"], average: 2.5 },
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

/** m of water a m of soil: the printed average. */
export function availableWaterCapacity(texture: SoilTexture): number {
  const row = rows.find(({ textures }) => (textures as readonly string[]).includes(texture)) as Row;
  return (row.average * INCH) / FOOT;
}
