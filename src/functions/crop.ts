import { readChoice } from "../boundary/choices";
import { readOptionalWaterUse } from "../boundary/crop-water";
import { readUnits } from "../boundary/units";
import { depletionFractionAt } from "../formulas/depletion-fraction";
import {
  cropCoefficient,
  crops,
  cropSpellings,
  depletionFraction,
  rootDepth,
  stages,
  stageSpellings,
} from "../tables/crops";
import type { Units } from "./units";

/** @customenum {string} */
enum Crop {
  /** averaged over the cuttings */
  AlfalfaHay = "alfalfa hay",
  /** within one cutting period */
  AlfalfaHaySingleCutting = "alfalfa hay, single cutting",
  /** alfalfa for seed */
  AlfalfaSeed = "alfalfa seed",
  /** averaged over the cuttings */
  BermudaHay = "bermuda hay",
  /** clover or berseem, averaged over the cuttings */
  CloverHay = "clover hay",
  /** clover or berseem, within one cutting period */
  CloverHaySingleCutting = "clover hay, single cutting",
  /** averaged over the cuttings */
  RyeGrassHay = "rye grass hay",
  /** annual, averaged over the cuttings */
  SudangrassHay = "sudangrass hay",
  /** annual, within one cutting period */
  SudangrassHaySingleCutting = "sudangrass hay, single cutting",
  /** grazing pasture, rotated grazing */
  RotatedPasture = "rotated pasture",
  /** grazing pasture, extensive grazing */
  ExtensivePasture = "extensive pasture",
  /** turf grass of the cool season */
  CoolSeasonTurf = "cool-season turf",
  /** turf grass of the warm season */
  WarmSeasonTurf = "warm-season turf",
  /** barley */
  Barley = "barley",
  /** oats */
  Oats = "oats",
  /** spring wheat */
  SpringWheat = "spring wheat",
  /** where the soil freezes in winter */
  WinterWheatFrozenSoil = "winter wheat, frozen soil",
  /** where the soil does not freeze in winter */
  WinterWheatUnfrozenSoil = "winter wheat, unfrozen soil",
  /** corn dried in the field to about 18% moisture */
  GrainCorn = "grain corn",
  /** corn for grain, harvested moist */
  HighMoistureCorn = "high-moisture corn",
  /** sweet corn, harvested fresh */
  SweetCorn = "sweet corn",
  /** millet */
  Millet = "millet",
  /** grain sorghum */
  GrainSorghum = "grain sorghum",
  /** potatoes */
  Potatoes = "potatoes",
  /** sweet potatoes */
  SweetPotatoes = "sweet potatoes",
  /** sugar beets */
  SugarBeets = "sugar beets",
  /** table beets */
  TableBeets = "table beets",
  /** carrots */
  Carrots = "carrots",
  /** parsnips */
  Parsnips = "parsnips",
  /** turnips or rutabagas */
  Turnips = "turnips",
  /** radishes */
  Radishes = "radishes",
  /** green beans */
  GreenBeans = "green beans",
  /** dry beans and pulses */
  DryBeans = "dry beans",
  /** chickpeas */
  Chickpeas = "chickpeas",
  /** lentils */
  Lentils = "lentils",
  /** peas harvested fresh */
  FreshPeas = "fresh peas",
  /** peas for dry seed */
  DryPeas = "dry peas",
  /** groundnut */
  Peanuts = "peanuts",
  /** soybeans */
  Soybeans = "soybeans",
  /** broccoli */
  Broccoli = "broccoli",
  /** brussels sprouts */
  BrusselsSprouts = "brussels sprouts",
  /** cabbage */
  Cabbage = "cabbage",
  /** cauliflower */
  Cauliflower = "cauliflower",
  /** celery */
  Celery = "celery",
  /** garlic */
  Garlic = "garlic",
  /** lettuce */
  Lettuce = "lettuce",
  /** onions for dry bulbs */
  DryOnions = "dry onions",
  /** onions harvested green */
  GreenOnions = "green onions",
  /** spinach */
  Spinach = "spinach",
  /** eggplant */
  Eggplant = "eggplant",
  /** sweet peppers */
  BellPeppers = "bell peppers",
  /** tomatoes */
  Tomatoes = "tomatoes",
  /** cantaloupe */
  Cantaloupe = "cantaloupe",
  /** for the fresh market */
  Cucumbers = "cucumbers",
  /** winter squash or pumpkin */
  WinterSquash = "winter squash",
  /** zucchini or summer squash */
  Zucchini = "zucchini",
  /** sweet melons */
  SweetMelons = "sweet melons",
  /** watermelons */
  Watermelons = "watermelons",
  /** artichokes */
  Artichokes = "artichokes",
  /** asparagus */
  Asparagus = "asparagus",
  /** mint */
  Mint = "mint",
  /** strawberries */
  Strawberries = "strawberries",
  /** cotton */
  Cotton = "cotton",
  /** flax */
  Flax = "flax",
  /** rapeseed */
  Canola = "canola",
  /** safflower */
  Safflower = "safflower",
  /** sesame */
  Sesame = "sesame",
  /** sunflower */
  Sunflower = "sunflower",
  /** berry bushes */
  Berries = "berries",
  /** table grapes or raisins */
  TableGrapes = "table grapes",
  /** wine grapes */
  WineGrapes = "wine grapes",
  /** hops */
  Hops = "hops",
  /** apples, cherries or pears, killing frost */
  AppleOrchardBareGround = "apple orchard, bare ground",
  /** apples, cherries or pears with an active ground cover, killing frost */
  AppleOrchardGrassCover = "apple orchard, grass cover",
  /** apricots, peaches or stone fruit, killing frost */
  PeachOrchardBareGround = "peach orchard, bare ground",
  /** apricots, peaches or stone fruit with an active ground cover, killing frost */
  PeachOrchardGrassCover = "peach orchard, grass cover",
  /** walnut orchard */
  WalnutOrchard = "walnut orchard",
}

/** @customenum {string} */
enum CropStage {
  /** from planting or green-up to about 10% of the ground covered */
  Initial = "initial",
  /** full cover to the start of maturity */
  Mid = "mid",
  /** at harvest, at the cut or when it goes dormant */
  End = "end",
}

/**
 * Depth of a crop's roots.
 * @customfunction CROP_ROOT CROP.ROOT
 * @arguments crop
 * @returns Greatest effective rooting depth (ft, m): the smaller of the published range.
 * @remarks Every entry is a range, and its smaller end is given: the paper means it for planning irrigation, the larger one for rain-fed crops. Soil that is shallow, dense or wet keeps roots shallower. {@text everyCrop}
 * @source FAO Irrigation and Drainage Paper 56 (1998), Table 22, read in a secondary text.
 * @errors #VALUE! for a blank or unknown crop, with the list.
 * @task how deep do my crop's roots go?
 * @example =IRRIG.CROP.ROOT("rotated pasture", "US")
 */
export function cropRoot(crop: Crop, units?: Units): any {
  const u = readUnits(units);
  return u.length.give(rootDepth(readChoice("crop", crop, crops, cropSpellings)));
}

/**
 * Share of the soil's available water that a crop may use before it suffers.
 * @customfunction CROP_DEPLETION CROP.DEPLETION
 * @arguments crop
 * @param [units] Of the argument et: "US" (blank) or "SI".
 * @param [et] The crop's evapotranspiration in its thirstiest time (in/day, mm/day), up to 1 in or 25 mm a day. Blank or 0: the fraction as published, which is for 5 mm (0.2 in) a day.
 * @returns Depletion fraction, 0.1 to 0.8.
 * @remarks p of the table, one value for each crop; with et, p + 0.04 (5 − ET), ET in mm/day, held to 0.1…0.8. {@text everyCrop}
 * @source FAO Irrigation and Drainage Paper 56 (1998), Table 22 and its footnote 2, read in a secondary text.
 * @errors #VALUE! for a blank or unknown crop, with the list, or an evapotranspiration that is text, negative or too large.
 * @task how dry may the soil get before I irrigate?
 * @example =IRRIG.CROP.DEPLETION("rotated pasture", "US", 0.25)
 */
export function cropDepletion(crop: Crop, units?: Units, et?: any): any {
  const u = readUnits(units);
  return depletionFractionAt(
    depletionFraction(readChoice("crop", crop, crops, cropSpellings)),
    readOptionalWaterUse(u, et),
  );
}

/**
 * Crop coefficient: a crop's water use beside that of the reference grass.
 * @customfunction CROP_KC CROP.KC
 * @arguments crop
 * @param stage Stage of growth: "initial", "mid" or "end".
 * @returns Single crop coefficient Kc: times ET.REFERENCE it is the crop's evapotranspiration.
 * @remarks For a crop without stress, in air of 45% least humidity and 2 m/s wind; not adjusted for drier or windier places. Where the table has a range, its middle is given: rotated pasture mid 0.85–1.05; spring and winter wheat end 0.25–0.40; grain sorghum mid 1.00–1.10; tomatoes end 0.70–0.90; cotton mid 1.15–1.20, end 0.50–0.70; canola, safflower, sunflower mid 1.00–1.15 (these ranges are from memory). Copies of the table differ in the initial value of dry peas and soybeans: 0.40 here, 0.50 in one. Between stages interpolate by date. {@text everyCrop}
 * @source FAO Irrigation and Drainage Paper 56 (1998), Table 12, read in a secondary text.
 * @errors #VALUE! for a blank or unknown crop or stage, with the list.
 * @task how much of the reference does my crop use?
 * @example =IRRIG.CROP.KC("rotated pasture", "mid")
 */
export function cropKc(crop: Crop, stage: CropStage): any {
  return cropCoefficient(
    readChoice("crop", crop, crops, cropSpellings),
    readChoice("stage", stage, stages, stageSpellings),
  );
}
