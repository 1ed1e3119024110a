/**
 * Crops: how deep they root, how dry they may let the soil get, and how much water they use beside
 * the reference grass.
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998): Table 22 for the greatest effective rooting
 * depth and the depletion fraction p (at 5 mm/day), Table 12 for the single crop coefficients at the
 * initial, the middle and the end stage (unstressed, well managed, in a subhumid climate: least
 * humidity 45%, wind 2 m/s). The values were read in secondary texts: an open-source library's copy
 * of the tables and, for the ranges, of which it has one number each, two open transcriptions.
 * Copies differ in the initial coefficient of dry peas and soybeans: here is that of their group.
 * Corn stands in the tables as maize, canola as rapeseed, peanuts as groundnut.
 */

/** One value, or the two ends of a range. */
type Entry = number | readonly [low: number, high: number];

interface Row {
  /**
   * Greatest effective rooting depth, m: the smaller end of the table's range, which is the one for
   * planning irrigation.
   */
  readonly root: number;
  /** Depletion fraction without stress, at 5 mm/day. */
  readonly p: number;
  /** Crop coefficient at the initial, the middle and the end stage. */
  readonly kc: readonly [initial: Entry, mid: Entry, end: Entry];
}

const rows = {
  // Forage and turf
  "alfalfa hay": { root: 1, p: 0.55, kc: [0.4, 0.95, 0.9] },
  "alfalfa hay, single cutting": { root: 1, p: 0.55, kc: [0.4, 1.2, 1.15] },
  "alfalfa seed": { root: 1, p: 0.6, kc: [0.4, 0.5, 0.5] },
  "bermuda hay": { root: 1, p: 0.55, kc: [0.55, 1, 0.85] },
  "clover hay": { root: 0.6, p: 0.5, kc: [0.4, 0.9, 0.85] },
  "clover hay, single cutting": { root: 0.6, p: 0.5, kc: [0.4, 1.15, 1.1] },
  "rye grass hay": { root: 0.6, p: 0.6, kc: [0.95, 1.05, 1] },
  "sudangrass hay": { root: 1, p: 0.55, kc: [0.5, 0.9, 0.85] },
  "sudangrass hay, single cutting": { root: 1, p: 0.55, kc: [0.5, 1.15, 1.1] },
  "rotated pasture": { root: 0.5, p: 0.6, kc: [0.4, [0.85, 1.05], 0.85] },
  "extensive pasture": { root: 0.5, p: 0.6, kc: [0.3, 0.75, 0.75] },
  "cool-season turf": { root: 0.5, p: 0.4, kc: [0.9, 0.95, 0.95] },
  "warm-season turf": { root: 0.5, p: 0.5, kc: [0.8, 0.85, 0.85] },
  // Cereals
  barley: { root: 1, p: 0.55, kc: [0.3, 1.15, 0.25] },
  oats: { root: 1, p: 0.55, kc: [0.3, 1.15, 0.25] },
  "spring wheat": { root: 1, p: 0.55, kc: [0.3, 1.15, [0.25, 0.4]] },
  "winter wheat, frozen soil": { root: 1.5, p: 0.55, kc: [0.4, 1.15, [0.25, 0.4]] },
  "winter wheat, unfrozen soil": { root: 1.5, p: 0.55, kc: [0.7, 1.15, [0.25, 0.4]] },
  "grain corn": { root: 1, p: 0.55, kc: [0.3, 1.2, 0.35] },
  "high-moisture corn": { root: 1, p: 0.55, kc: [0.3, 1.2, 0.6] },
  "sweet corn": { root: 0.8, p: 0.5, kc: [0.3, 1.15, 1.05] },
  millet: { root: 1, p: 0.55, kc: [0.3, 1, 0.3] },
  "grain sorghum": { root: 1, p: 0.55, kc: [0.3, [1, 1.1], 0.55] },
  // Roots and tubers
  potatoes: { root: 0.4, p: 0.35, kc: [0.5, 1.15, 0.75] },
  "sweet potatoes": { root: 1, p: 0.65, kc: [0.5, 1.15, 0.65] },
  "sugar beets": { root: 0.7, p: 0.55, kc: [0.35, 1.2, 0.7] },
  "table beets": { root: 0.6, p: 0.5, kc: [0.5, 1.05, 0.95] },
  carrots: { root: 0.5, p: 0.35, kc: [0.7, 1.05, 0.95] },
  parsnips: { root: 0.5, p: 0.4, kc: [0.5, 1.05, 0.95] },
  turnips: { root: 0.5, p: 0.5, kc: [0.5, 1.1, 0.95] },
  radishes: { root: 0.3, p: 0.3, kc: [0.7, 0.9, 0.85] },
  // Legumes
  "green beans": { root: 0.5, p: 0.45, kc: [0.5, 1.05, 0.9] },
  "dry beans": { root: 0.6, p: 0.45, kc: [0.4, 1.15, 0.35] },
  chickpeas: { root: 0.6, p: 0.5, kc: [0.4, 1, 0.35] },
  lentils: { root: 0.6, p: 0.5, kc: [0.4, 1.1, 0.3] },
  "fresh peas": { root: 0.6, p: 0.35, kc: [0.5, 1.15, 1.1] },
  "dry peas": { root: 0.6, p: 0.4, kc: [0.4, 1.15, 0.3] },
  peanuts: { root: 0.5, p: 0.5, kc: [0.4, 1.15, 0.6] },
  soybeans: { root: 0.6, p: 0.5, kc: [0.4, 1.15, 0.5] },
  // Vegetables
  broccoli: { root: 0.4, p: 0.45, kc: [0.7, 1.05, 0.95] },
  "brussels sprouts": { root: 0.4, p: 0.45, kc: [0.7, 1.05, 0.95] },
  cabbage: { root: 0.5, p: 0.45, kc: [0.7, 1.05, 0.95] },
  cauliflower: { root: 0.4, p: 0.45, kc: [0.7, 1.05, 0.95] },
  celery: { root: 0.3, p: 0.2, kc: [0.7, 1.05, 1] },
  garlic: { root: 0.3, p: 0.3, kc: [0.7, 1, 0.7] },
  lettuce: { root: 0.3, p: 0.3, kc: [0.7, 1, 0.95] },
  "dry onions": { root: 0.3, p: 0.3, kc: [0.7, 1.05, 0.75] },
  "green onions": { root: 0.3, p: 0.3, kc: [0.7, 1, 1] },
  spinach: { root: 0.3, p: 0.2, kc: [0.7, 1, 0.95] },
  eggplant: { root: 0.7, p: 0.45, kc: [0.6, 1.05, 0.9] },
  "bell peppers": { root: 0.5, p: 0.3, kc: [0.6, 1.05, 0.9] },
  tomatoes: { root: 0.7, p: 0.4, kc: [0.6, 1.15, [0.7, 0.9]] },
  cantaloupe: { root: 0.9, p: 0.45, kc: [0.5, 0.85, 0.6] },
  cucumbers: { root: 0.7, p: 0.5, kc: [0.6, 1, 0.75] },
  "winter squash": { root: 1, p: 0.35, kc: [0.5, 1, 0.8] },
  zucchini: { root: 0.6, p: 0.5, kc: [0.5, 0.95, 0.75] },
  "sweet melons": { root: 0.8, p: 0.4, kc: [0.5, 1.05, 0.75] },
  watermelons: { root: 0.8, p: 0.4, kc: [0.4, 1, 0.75] },
  artichokes: { root: 0.6, p: 0.45, kc: [0.5, 1, 0.95] },
  asparagus: { root: 1.2, p: 0.45, kc: [0.5, 0.95, 0.3] },
  mint: { root: 0.4, p: 0.4, kc: [0.6, 1.15, 1.1] },
  strawberries: { root: 0.2, p: 0.2, kc: [0.4, 0.85, 0.75] },
  // Oil and fibre
  cotton: { root: 1, p: 0.65, kc: [0.35, [1.15, 1.2], [0.5, 0.7]] },
  flax: { root: 1, p: 0.5, kc: [0.35, 1.1, 0.25] },
  canola: { root: 1, p: 0.6, kc: [0.35, [1, 1.15], 0.35] },
  safflower: { root: 1, p: 0.6, kc: [0.35, [1, 1.15], 0.25] },
  sesame: { root: 1, p: 0.6, kc: [0.35, 1.1, 0.25] },
  sunflower: { root: 0.8, p: 0.45, kc: [0.35, [1, 1.15], 0.35] },
  // Vines, berries and orchards
  berries: { root: 0.6, p: 0.5, kc: [0.3, 1.05, 0.5] },
  "table grapes": { root: 1, p: 0.35, kc: [0.3, 0.85, 0.45] },
  "wine grapes": { root: 1, p: 0.45, kc: [0.3, 0.7, 0.45] },
  hops: { root: 1, p: 0.5, kc: [0.3, 1.05, 0.85] },
  "apple orchard, bare ground": { root: 1, p: 0.5, kc: [0.45, 0.95, 0.7] },
  "apple orchard, grass cover": { root: 1, p: 0.5, kc: [0.5, 1.2, 0.95] },
  "peach orchard, bare ground": { root: 1, p: 0.5, kc: [0.45, 0.9, 0.65] },
  "peach orchard, grass cover": { root: 1, p: 0.5, kc: [0.5, 1.15, 0.9] },
  "walnut orchard": { root: 1.7, p: 0.5, kc: [0.5, 1.1, 0.65] },
} as const satisfies Readonly<Record<string, Row>>;

export type Crop = keyof typeof rows;

export const crops = Object.keys(rows) as readonly Crop[];

/** Further spellings: other names, the paper's own, and singulars. */
export const cropSpellings: Readonly<Record<string, Crop>> = {
  alfalfa: "alfalfa hay",
  lucerne: "alfalfa hay",
  "alfalfa for hay": "alfalfa hay",
  "alfalfa for seed": "alfalfa seed",
  bermuda: "bermuda hay",
  "bermuda grass": "bermuda hay",
  clover: "clover hay",
  berseem: "clover hay",
  ryegrass: "rye grass hay",
  sudangrass: "sudangrass hay",
  pasture: "rotated pasture",
  "grazing pasture": "rotated pasture",
  "rotated grazing": "rotated pasture",
  "extensive grazing": "extensive pasture",
  "cool season turf grass": "cool-season turf",
  "warm season turf grass": "warm-season turf",
  oat: "oats",
  corn: "grain corn",
  maize: "grain corn",
  "field corn": "grain corn",
  "grain maize": "grain corn",
  "high-moisture maize": "high-moisture corn",
  "sweet maize": "sweet corn",
  sorghum: "grain sorghum",
  milo: "grain sorghum",
  potato: "potatoes",
  "sweet potato": "sweet potatoes",
  "sugar beet": "sugar beets",
  "table beet": "table beets",
  carrot: "carrots",
  parsnip: "parsnips",
  turnip: "turnips",
  rutabaga: "turnips",
  radish: "radishes",
  "snap beans": "green beans",
  pulses: "dry beans",
  chickpea: "chickpeas",
  lentil: "lentils",
  "green peas": "fresh peas",
  groundnut: "peanuts",
  groundnuts: "peanuts",
  peanut: "peanuts",
  soybean: "soybeans",
  "bell pepper": "bell peppers",
  "sweet peppers": "bell peppers",
  peppers: "bell peppers",
  tomato: "tomatoes",
  cucumber: "cucumbers",
  pumpkin: "winter squash",
  pumpkins: "winter squash",
  "summer squash": "zucchini",
  watermelon: "watermelons",
  artichoke: "artichokes",
  strawberry: "strawberries",
  rapeseed: "canola",
  sunflowers: "sunflower",
  linseed: "flax",
  walnuts: "walnut orchard",
};

export const stages = ["initial", "mid", "end"] as const;

export type Stage = (typeof stages)[number];

export const stageSpellings: Readonly<Record<string, Stage>> = {
  "initial stage": "initial",
  ini: "initial",
  middle: "mid",
  "mid season": "mid",
  late: "end",
  "late season": "end",
};

/** Rooting depth, m: the smaller of the printed range. */
export function rootDepth(crop: Crop): number {
  return rows[crop].root;
}

/** Depletion fraction without stress, as printed, for 5 mm/day. */
export function depletionFraction(crop: Crop): number {
  return rows[crop].p;
}

/** Crop coefficient; of a printed range, the middle. */
export function cropCoefficient(crop: Crop, stage: Stage): number {
  const entry: Entry = rows[crop].kc[stages.indexOf(stage)];
  return typeof entry === "number" ? entry : (entry[0] + entry[1]) / 2;
}
