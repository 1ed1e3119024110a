import { InvalidInput } from "../ground/domain-error";
import { extraterrestrialRadiation } from "../formulas/extraterrestrial-radiation";
import type { WeatherDay } from "../formulas/reference-evapotranspiration";
import { daylight } from "../formulas/sun-position";
import { HOUR } from "../ground/unit-factors";
import type { Cell } from "./cell";
import { above, between, fraction, type Limit, wholeNumber } from "./limits";
import { readNumber } from "./numbers";
import { degrees, hours, radiation, rounded, type System, type Units } from "./units";

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
export function readTemperatures(u: Units, tmin: Cell, tmax: Cell): Temperatures {
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
export function readWind(u: Units, wind: Cell): number {
  return u.wind.read("wind", wind, WIND);
}

/** Height of an anemometer above the ground, m. */
export function readAnemometerHeight(u: Units, height: Cell): number {
  return u.length.read("height", height, ANEMOMETER[u.system]);
}

/** Hours of bright sunshine, s; a recorder's rounding above the length of the day is taken off. */
export function readSunshine(cell: Cell, latitude: number, day: number): number {
  const sunshine = hours.read("sunshine", cell, between(0, 24));
  const longest = daylight(latitude, day);
  if (sunshine > longest + SUNSHINE_ROUNDING) {
    throw new InvalidInput(
      `sunshine must be at most ${hours.say(longest)}, the length of day ${day} at this latitude; ` +
        `got ${rounded(hours.give(sunshine))}`,
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
export function readWeatherDay(u: Units, cells: WeatherCells): WeatherDay {
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
  const solarRadiation = radiation.read("radiation", cells.radiation, above(0));
  const latitude = readLatitude(cells.latitude);
  const elevation = u.length.read("elevation", cells.elevation, ELEVATION[u.system]);
  const day = readDay(cells.day);
  const outside = extraterrestrialRadiation(latitude, day);
  if (solarRadiation > outside) {
    throw new InvalidInput(
      `radiation must be at most ${radiation.say(outside)}, what reaches the atmosphere at this ` +
        `latitude on day ${day}; got ${rounded(radiation.give(solarRadiation))} ` +
        "(a mean in W/m² × 0.0864 is MJ/m²/day)",
    );
  }
  return { coldest, warmest, dewPoint, wind, solarRadiation, latitude, elevation, day };
}
