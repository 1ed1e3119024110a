import { vaporPressureAtDewPoint } from "./actual-vapor-pressure";
import { barometricPressure, psychrometricConstant } from "./barometric-pressure";
import { extraterrestrialRadiation } from "./extraterrestrial-radiation";
import { netLongwave, netShortwave } from "./net-radiation";
import { meanSaturationVaporPressure, saturationSlope } from "./saturation-vapor-pressure";
import { clearSkyRadiation } from "./solar-radiation";
import { DAY, KILOPASCAL, MEGAJOULE, MILLIMETER, ZERO_CELSIUS } from "../ground/unit-factors";

/** What the combination equation weighs. */
export interface Evaporation {
  /** Net radiation, W/m². */
  readonly netRadiation: number;
  /** Heat that goes into the soil, W/m². */
  readonly soilHeat: number;
  /** Mean temperature, K. */
  readonly temperature: number;
  /** Wind at 2 m, m/s. */
  readonly wind: number;
  /** What the air could still take up, es − ea, Pa. */
  readonly deficit: number;
  /** Slope of the saturation curve, Pa/K. */
  readonly slope: number;
  /** Psychrometric constant, Pa/K. */
  readonly psychrometric: number;
}

/**
 * The FAO Penman–Monteith equation, m/s of water:
 *
 *           0.408 Δ (Rn − G) + γ (900 / (T + 273)) u2 (es − ea)
 *     ETo = ───────────────────────────────────────────────────      mm/day
 *                       Δ + γ (1 + 0.34 u2)
 *
 * with Rn and G in MJ/m² a day, T in °C, pressures in kPa. Source: FAO Irrigation and Drainage Paper
 * 56 (1998), equation 6. Example: Rn 14.33, G 0.14, 30.2 °C, 2 m/s, es 4.42, ea 2.85, Δ 0.246,
 * γ 0.0674 give 5.71 mm/day (5.72 by the rounded steps of Example 17).
 */
export function penmanMonteith(day: Evaporation): number {
  const { wind, slope, psychrometric } = day;
  const energy = ((day.netRadiation - day.soilHeat) * DAY) / MEGAJOULE;
  const drying = (900 / (day.temperature - ZERO_CELSIUS + 273)) * wind * (day.deficit / KILOPASCAL);
  const millimetersADay =
    (0.408 * slope * energy + psychrometric * drying) / (slope + psychrometric * (1 + 0.34 * wind));
  return (millimetersADay * MILLIMETER) / DAY;
}

/** A day's weather at a place. */
export interface WeatherDay {
  /** Temperatures, K. */
  readonly coldest: number;
  readonly warmest: number;
  readonly dewPoint: number;
  /** Wind at 2 m, m/s. */
  readonly wind: number;
  /** Solar radiation, W/m². */
  readonly solarRadiation: number;
  /** Radians, north positive. */
  readonly latitude: number;
  /** m above the sea. */
  readonly elevation: number;
  /** Day of the year. */
  readonly day: number;
}

/**
 * Evapotranspiration of the reference grass on a day, m/s of water: the daily procedure of FAO-56,
 * chapters 3 and 4, step by step; soil heat is 0 over a day (equation 42). Air that holds more vapor
 * than the day's temperatures can is taken as saturated, and a day that would give dew as 0. Example:
 * 3.9 mm/day at 50°48′ north on 6 July (Example 18).
 */
export function referenceEvapotranspiration(day: WeatherDay): number {
  const { coldest, warmest, solarRadiation } = day;
  const temperature = (coldest + warmest) / 2; // equation 9
  const vaporPressure = vaporPressureAtDewPoint(day.dewPoint);
  const extraterrestrial = extraterrestrialRadiation(day.latitude, day.day);
  const clearSky = clearSkyRadiation(day.elevation, extraterrestrial);
  const evaporation = penmanMonteith({
    netRadiation:
      netShortwave(solarRadiation) -
      netLongwave(coldest, warmest, vaporPressure, solarRadiation, clearSky), // equation 40
    soilHeat: 0,
    temperature,
    wind: day.wind,
    deficit: Math.max(0, meanSaturationVaporPressure(coldest, warmest) - vaporPressure),
    slope: saturationSlope(temperature),
    psychrometric: psychrometricConstant(barometricPressure(day.elevation)),
  });
  return Math.max(0, evaporation);
}
