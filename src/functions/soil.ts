import { readChoice, readOptionalChoice, readYesNo } from "../boundary/choices";
import { readMonthUse, readWaterCapacity } from "../boundary/crop-water";
import { above, atLeast, readNumber } from "../boundary/numbers";
import { percent, readUnits } from "../boundary/units";
import { effectiveRain } from "../formulas/effective-rain";
import { netDepth } from "../formulas/net-depth";
import {
  COVERS,
  coverSpellings,
  largestApplicationRate,
  profileSpellings,
  profileOfTexture,
  soilProfiles,
} from "../tables/intake";
import { availableWaterCapacity, soilTextures, textureSpellings } from "../tables/soils";
import type { Units } from "./units";

/** @customenum {string} */
enum Texture {
  /** holds 0.40 to 0.75 in/ft */
  VeryCoarseSand = "very coarse sand",
  /** holds 0.75 to 1.25 in/ft */
  CoarseSand = "coarse sand",
  /** holds 0.75 to 1.25 in/ft */
  FineSand = "fine sand",
  /** holds 0.75 to 1.25 in/ft */
  LoamySand = "loamy sand",
  /** holds 1.25 to 1.75 in/ft */
  SandyLoam = "sandy loam",
  /** holds 1.25 to 1.75 in/ft */
  FineSandyLoam = "fine sandy loam",
  /** holds 1.50 to 2.30 in/ft */
  VeryFineSandyLoam = "very fine sandy loam",
  /** holds 1.50 to 2.30 in/ft */
  Loam = "loam",
  /** holds 1.50 to 2.30 in/ft */
  SiltLoam = "silt loam",
  /** holds 1.75 to 2.50 in/ft */
  ClayLoam = "clay loam",
  /** holds 1.75 to 2.50 in/ft */
  SiltyClayLoam = "silty clay loam",
  /** holds 1.75 to 2.50 in/ft */
  SandyClayLoam = "sandy clay loam",
  /** holds 1.60 to 2.50 in/ft */
  SandyClay = "sandy clay",
  /** holds 1.60 to 2.50 in/ft */
  SiltyClay = "silty clay",
  /** holds 1.60 to 2.50 in/ft */
  Clay = "clay",
  /** peat or muck, holds 2.00 to 3.00 in/ft */
  Peat = "peat",
}

/** @customenum {string} */
enum Profile {
  /** coarse sandy soil, alike to 6 ft (1.8 m) */
  CoarseSandy = "coarse sandy",
  /** coarse sandy soil over a more compact one */
  CoarseSandyOverCompact = "coarse sandy over compact",
  /** light sandy loam, alike to 6 ft (1.8 m) */
  LightSandyLoam = "light sandy loam",
  /** light sandy loam over a more compact soil */
  LightSandyLoamOverCompact = "light sandy loam over compact",
  /** silt loam, alike to 6 ft (1.8 m) */
  SiltLoam = "silt loam",
  /** silt loam over a more compact soil */
  SiltLoamOverCompact = "silt loam over compact",
  /** heavy-textured clay or clay loam */
  HeavyClay = "heavy clay",
}

/** @customenum {string} */
enum Cover {
  /** bare ground in average tilth */
  Bare = "bare",
  /** a good grass sod */
  Sod = "sod",
}

/**
 * Water that a soil of this texture holds for plants, per depth of soil.
 * @customfunction SOIL_AWC SOIL.AWC
 * @param texture Soil texture, such as "silt loam" (the remarks list them all); any case, spaces or hyphens.
 * @returns Available water capacity (in/ft, mm/m): the average that the table prints.
 * @remarks In in/ft, the average and the range it stands for: very coarse sand 0.50 (0.40–0.75); coarse sand, fine sand, loamy sand 1.00 (0.75–1.25); sandy loam, fine sandy loam 1.50 (1.25–1.75); very fine sandy loam, loam, silt loam 2.00 (1.50–2.30); clay loam, silty clay loam, sandy clay loam 2.20 (1.75–2.50); sandy clay, silty clay, clay 2.30 (1.60–2.50); peat 2.50 (2.00–3.00). The averages, the row of peat, and which textures share a row, are from memory. The low end of the range is the careful choice. Stones, salt and thin soil hold less: a soil survey or a laboratory knows better. For layers, add up capacity × thickness of each.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), Table 11-1: ranges read in a secondary text, averages from memory.
 * @errors #VALUE! for a blank or unknown texture, with the list.
 * @task how much water does my soil hold?
 * @example =IRRIG.SOIL.AWC("silt loam", "US")
 */
export function soilAwc(texture: Texture, units?: Units): any {
  const u = readUnits(units);
  return u.waterCapacity.give(
    availableWaterCapacity(readChoice("texture", texture, soilTextures, textureSpellings)),
  );
}

/**
 * Profile class, for SOIL.INTAKE, that a soil texture belongs to.
 * @customfunction SOIL_PROFILE SOIL.PROFILE
 * @param texture Soil texture of the upper soil, such as "silt loam" (the remarks list them all); any case, spaces or hyphens.
 * @param [compact] TRUE where the soil lies over a more compact one, FALSE (blank) where it is alike to 6 ft (1.8 m); the words as text count too.
 * @returns Profile class, a text that SOIL.INTAKE takes.
 * @remarks very coarse sand, coarse sand, fine sand, loamy sand: "coarse sandy"; sandy loam, fine sandy loam: "light sandy loam"; very fine sandy loam, loam, silt loam: "silt loam"; each with "over compact" behind it when compact is TRUE. clay loam, silty clay loam, sandy clay loam, sandy clay, silty clay, clay: "heavy clay", compact or not. peat: the table has none. The published table names its classes only; where a texture could be in two, it is in the one that takes less water (common practice, no source).
 * @source Classes: USDA Soil Conservation Service, National Engineering Handbook, Section 15 Chapter 11 (1983), maximum application rates; the textures in them: common practice, no source.
 * @errors #VALUE! for a blank or unknown texture, with the list, or a value of compact that is not TRUE or FALSE. #N/A for peat.
 * @yesno compact
 * @task which profile class is my soil?
 * @example =IRRIG.SOIL.PROFILE("silt loam", TRUE)
 */
export function soilProfile(texture: Texture, compact?: any): any {
  return profileOfTexture(
    readChoice("texture", texture, soilTextures, textureSpellings),
    readYesNo("compact", compact),
  );
}

/**
 * Largest rate at which sprinklers may apply water without runoff, by soil profile and slope.
 * @customfunction SOIL_INTAKE SOIL.INTAKE
 * @param profile Profile class: "coarse sandy", "light sandy loam" or "silt loam", each alone or with "over compact" behind it, or "heavy clay". SOIL.PROFILE gives one from a texture.
 * @param slope Slope of the ground, percent, 0 or more (its steepness, without a sign). 0 is flat ground.
 * @param [cover] "bare" ground in average tilth (blank) or a good "sod".
 * @returns Largest application rate (in/h, mm/h).
 * @remarks In in/h at slopes to 5, 8, 12 and 16%, bare: coarse sandy 2, 1.5, 1, 0.5; coarse sandy over compact 1.5, 1, 0.75, 0.4; light sandy loam 1, 0.8, 0.6, 0.4; light sandy loam over compact 0.75, 0.5, 0.4, 0.3; silt loam 0.5, 0.4, 0.3, 0.2; silt loam over compact 0.3, 0.25, 0.15, 0.1; heavy clay 0.15, 0.1, 0.08, 0.06. Under sod: coarse sandy 2, 2, 1.5, 1; over compact 1.75, 1.25, 1, 0.75; light sandy loam 1.75, 1.25, 1, 0.75; over compact 1.25, 1, 0.75, 0.5; silt loam 1, 0.8, 0.6, 0.4; over compact 0.6, 0.5, 0.4, 0.3; heavy clay 0.2, 0.15, 0.12, 0.1. A slope on a boundary belongs to the flatter class. Each entry is one value, an upper limit. The rows over compact soil, and all rates at 12 to 16%, are from memory. A thin or trodden sod, a crust or ground after traffic takes less than its row: watch the ground.
 * @source USDA Soil Conservation Service, National Engineering Handbook, Section 15 Chapter 11 (1983), maximum application rates, bare and with cover, read in a secondary text and from memory.
 * @errors #VALUE! for a blank or unknown profile, with the list, a blank, text or negative slope, or an unknown cover. #N/A for a slope above 16%.
 * @task how fast can my soil take water?
 * @example =IRRIG.SOIL.INTAKE("silt loam", 2, "US")
 */
export function soilIntake(profile: Profile, slope: any, units?: Units, cover?: Cover): any {
  const u = readUnits(units);
  return u.rate.give(
    largestApplicationRate(
      readChoice("profile", profile, soilProfiles, profileSpellings),
      percent.read("slope", slope, atLeast(0)),
      readOptionalChoice("cover", cover, COVERS, coverSpellings) ?? "bare",
    ),
  );
}

/**
 * Net depth of water to replace at an irrigation.
 * @customfunction SOIL_NET SOIL.NET
 * @param awc Available water capacity (in/ft, mm/m), above 0, at most all soil (12 in/ft, 1000 mm/m); SOIL.AWC gives one.
 * @param root Depth of the roots to water (ft, m), above 0; CROP.ROOT gives one.
 * @param depletion Share of the available water that may be used up before the next irrigation, a fraction above 0 up to 1; CROP.DEPLETION gives one.
 * @returns Net depth (in, mm).
 * @remarks awc × root × depletion. Net: what must stay in the soil; divide it by the application efficiency for what the sprinklers must put on. Where the soil is shallower than the roots, give the depth of the soil.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); FAO Irrigation and Drainage Paper 56 (1998), equations 82 and 83.
 * @errors #VALUE! for a blank or text, a number that is not above 0, a depletion above 1 or a capacity that no soil has.
 * @task how much water do I replace each time?
 * @example =IRRIG.SOIL.NET(1.9, 1.64, 0.6, "US")
 */
export function soilNet(awc: any, root: any, depletion: any, units?: Units): any {
  const u = readUnits(units);
  return u.depth.give(
    netDepth(
      readWaterCapacity(u, awc),
      u.length.read("root", root, above(0)),
      readNumber("depletion", depletion, above(0, 1)),
    ),
  );
}

/**
 * Effective rain of a month: the part that the crop can use.
 * @customfunction SOIL_RAIN SOIL.RAIN
 * @param rain Rain of the month (in, mm), 0 or more: an average, or better that of a dry year.
 * @param use Water that the crop uses in the month (in, mm), 0 to 31 in or 775 mm; 0 is a month without a crop.
 * @param net Net depth of an irrigation (in, mm), above 0: the room that rain finds in the soil; SOIL.NET gives it.
 * @returns Effective rain (in, mm), never above the rain or the use.
 * @remarks In inches (0.70917·rain^0.82416 − 0.11556)·10^(0.02426·use) times a storage factor of the net depth, 0.72 at 0.75 in, 1.00 at 3 in and 1.08 at 7 in and deeper. For whole months of average rain on well-drained soil; not for single storms. Steep ground, tight soil and cloudbursts leave less: size a system for a dry year. The use less the effective rain is what irrigation must bring.
 * @source USDA Soil Conservation Service, Technical Release 21 (revised 1970); National Engineering Handbook, Part 623 Chapter 2 (1993), equations 2-84 and 2-85, read in secondary texts.
 * @errors #VALUE! for a blank or text, a negative rain, or a use or net depth out of its range.
 * @task how much of the rain counts?
 * @example =IRRIG.SOIL.RAIN(3.2, 7.5, 2, "US")
 */
export function soilRain(rain: any, use: any, net: any, units?: Units): any {
  const u = readUnits(units);
  return u.depth.give(
    effectiveRain(
      u.depth.read("rain", rain, atLeast(0)),
      readMonthUse(u, "use", use),
      u.depth.read("net", net, above(0)),
    ),
  );
}
