import { extraterrestrialRadiation } from "../formulas/extraterrestrial-radiation";
import type { WeatherDay } from "../formulas/reference-evapotranspiration";
import type { MonthOfWater } from "../formulas/source-balance";
import { daylight } from "../formulas/sun-position";
import { InvalidInput } from "../ground/domain-error";
import { HOUR } from "../ground/unit-factors";
import { type Cell, isBlank } from "./cell";
import { above, atLeast, between, fraction, type Limit, readNumber, wholeNumber } from "./numbers";
import {
  degrees,
  hourMeasure,
  radiationMeasure,
  rounded,
  type System,
  type Measures,
} from "./units";

/** What weather can be: a number outside is a slip of units or columns. Round in each system. */
const WIND: Limit = between(0, 200);
const ELEVATION: Readonly<Record<System, Limit>> = {
  US: between(-1500, 20000),
  SI: between(-450, 6000),
};
const ANEMOMETER: Readonly<Record<System, Limit>> = { US: between(1, 330), SI: between(0.3, 100) };
/** K: −50 to 60 °C for the air, from −100 °C for its dew point. */
const COLDEST_AIR = 223.15;
const WARMEST_AIR = 333.15;
const LOWEST_DEW_POINT = 173.15;

/** Sunshine is recorded in tenths of an hour: so much above the length of the day is rounding. */
const SUNSHINE_ROUNDING = 0.1 * HOUR;

export interface Temperatures {
  readonly coldest: number;
  readonly warmest: number;
}

/** A day's lowest and highest temperature, K. */
export function readTemperatures(u: Measures, tmin: Cell, tmax: Cell): Temperatures {
  const limit = u.temperature.betweenSI(COLDEST_AIR, WARMEST_AIR);
  const coldest = u.temperature.read("tmin", tmin, limit);
  const warmest = u.temperature.read("tmax", tmax, limit);
  if (coldest > warmest) {
    throw new InvalidInput(
      `tmin must not be above tmax; got tmin ${u.temperature.say(coldest)} and tmax ${u.temperature.say(warmest)}`,
    );
  }
  return { coldest, warmest };
}

/** A day's lowest and highest relative humidity, fractions. */
export function readHumidities(rhmin: Cell, rhmax: Cell): { least: number; most: number } {
  const least = readNumber("rhmin", rhmin, fraction);
  const most = readNumber("rhmax", rhmax, above(0, 1));
  if (least > most) {
    throw new InvalidInput(`rhmin must not be above rhmax; got rhmin ${least} and rhmax ${most}`);
  }
  return { least, most };
}

/** Latitude, rad, north positive. */
export function readLatitude(latitude: Cell): number {
  return degrees.read("latitude", latitude, between(-90, 90));
}

/** Day of the year; a leap year has a 366th. */
export function readDay(day: Cell): number {
  return readNumber("day", day, wholeNumber(1, 366));
}

/** Wind speed, m/s. */
export function readWind(u: Measures, wind: Cell): number {
  return u.wind.read("wind", wind, WIND);
}

/** Height of an anemometer above the ground, m. */
export function readAnemometerHeight(u: Measures, height: Cell): number {
  return u.length.read("height", height, ANEMOMETER[u.system]);
}

/** Hours of bright sunshine, s; a recorder's rounding above the length of the day is taken off. */
export function readSunshine(cell: Cell, latitude: number, day: number): number {
  const sunshine = hourMeasure.read("sunshine", cell, between(0, 24));
  const longest = daylight(latitude, day);
  if (sunshine > longest + SUNSHINE_ROUNDING) {
    throw new InvalidInput(
      `sunshine must be at most ${hourMeasure.say(longest)}, the length of day ${day} at this latitude; ` +
        `got ${rounded(hourMeasure.give(sunshine))}`,
    );
  }
  return Math.min(sunshine, longest);
}

/** The cells of a day's weather, as ET.REFERENCE takes them. */
export interface WeatherCells {
  readonly tmin: Cell;
  readonly tmax: Cell;
  readonly dewpoint: Cell;
  readonly wind: Cell;
  readonly radiation: Cell;
  readonly latitude: Cell;
  readonly elevation: Cell;
  readonly day: Cell;
}

/**
 * A day's weather. A dew point above the lowest temperature happens (humid air by day); above the
 * highest it cannot be, nor can more radiation reach the ground than reaches the atmosphere.
 */
export function readWeatherDay(u: Measures, cells: WeatherCells): WeatherDay {
  const { coldest, warmest } = readTemperatures(u, cells.tmin, cells.tmax);
  const dewPoint = u.temperature.read(
    "dewpoint",
    cells.dewpoint,
    u.temperature.betweenSI(LOWEST_DEW_POINT, WARMEST_AIR),
  );
  if (dewPoint > warmest) {
    throw new InvalidInput(
      `dewpoint must not be above tmax; got dewpoint ${u.temperature.say(dewPoint)} and tmax ${u.temperature.say(warmest)}`,
    );
  }
  const wind = readWind(u, cells.wind);
  const solarRadiation = radiationMeasure.read("radiation", cells.radiation, above(0));
  const latitude = readLatitude(cells.latitude);
  const elevation = u.length.read("elevation", cells.elevation, ELEVATION[u.system]);
  const day = readDay(cells.day);
  const outside = extraterrestrialRadiation(latitude, day);
  if (solarRadiation > outside) {
    throw new InvalidInput(
      `radiation must be at most ${radiationMeasure.say(outside)}, what reaches the atmosphere at this ` +
        `latitude on day ${day}; got ${rounded(radiationMeasure.give(solarRadiation))} ` +
        "(a mean in W/m² × 0.0864 is MJ/m²/day)",
    );
  }
  return { coldest, warmest, dewPoint, wind, solarRadiation, latitude, elevation, day };
}

/** No crop uses more in a day: a larger number is a slip of units (mm typed for in). */
const MOST: Readonly<Record<System, Limit>> = { US: above(0, 1), SI: above(0, 25) };

/** A crop's evapotranspiration, m/s of water; undefined when blank or 0. */
export function readOptionalWaterUse(u: Measures, et: Cell): number | undefined {
  return u.dailyDepth.readOptional("et", et, MOST[u.system]);
}

/** A month of such days. */
const MOST_IN_A_MONTH: Readonly<Record<System, Limit>> = {
  US: between(0, 31),
  SI: between(0, 775),
};

/** A crop's use in a month, m of water. */
export function readMonthUse(u: Measures, name: string, use: Cell): number {
  return u.depth.read(name, use, MOST_IN_A_MONTH[u.system]);
}

/** Ten years: a longer range is a slip of columns. */
const MOST_MONTHS = 120;

/** The needs month by month, each with its inflow and loss: one value for all months or one each. */
export function readMonthsOfWater(
  u: Measures,
  cells: { readonly needs: Cell; readonly inflows: Cell; readonly losses: Cell },
): MonthOfWater[] {
  const needs = u.fieldVolume.readValues("needs", cells.needs, atLeast(0));
  if (needs.length > MOST_MONTHS) {
    throw new InvalidInput(`needs must have at most ${MOST_MONTHS} months; got ${needs.length}`);
  }
  const inflows = readForEachMonth(u, "inflows", cells.inflows, needs.length);
  const losses = readForEachMonth(u, "losses", cells.losses, needs.length);
  return needs.map((need, i) => ({ need, inflow: inflows[i], loss: losses[i] }));
}

function readForEachMonth(u: Measures, name: string, cell: Cell, months: number): number[] {
  const values = isAllBlank(cell) ? [0] : u.fieldVolume.readValues(name, cell, atLeast(0));
  if (values.length === 1) return Array.from({ length: months }, () => values[0]);
  if (values.length !== months) {
    throw new InvalidInput(
      `${name} must have one value or one a month; got ${values.length} for ${months} months of needs`,
    );
  }
  return values;
}

function isAllBlank(cell: Cell): boolean {
  return Array.isArray(cell) ? (cell as unknown[]).flat().every(isBlank) : isBlank(cell);
}

/** A soil cannot hold more than its own volume: 12 in/ft, or 1000 mm/m. */
const MOST_CAPACITY: Readonly<Record<System, Limit>> = { US: above(0, 12), SI: above(0, 1000) };

/** Available water capacity, m of water a m of soil. */
export function readWaterCapacity(u: Measures, awc: Cell): number {
  return u.waterCapacity.read("awc", awc, MOST_CAPACITY[u.system]);
}
