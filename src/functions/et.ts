import {
  readAnemometerHeight,
  readDay,
  readHumidities,
  readLatitude,
  readMonthUse,
  readSunshine,
  readTemperatures,
  readWeatherDay,
  readWind,
} from "../boundary/crop-water";
import { above } from "../boundary/numbers";
import { radiationMeasure, readUnits } from "../boundary/units";
import { dewPointFromHumidity } from "../formulas/actual-vapor-pressure";
import { extraterrestrialRadiation } from "../formulas/extraterrestrial-radiation";
import { hargreaves } from "../formulas/hargreaves";
import { peakPeriodUse } from "../formulas/peak-use";
import { referenceEvapotranspiration } from "../formulas/reference-evapotranspiration";
import { solarRadiation } from "../formulas/solar-radiation";
import { daylight } from "../formulas/sun-position";
import { windAtTwoMeters } from "../formulas/wind-at-two-meters";
import type { Units } from "./units";

/**
 * Evapotranspiration of the reference grass on one day, by the FAO Penman–Monteith equation.
 * @customfunction ET_REFERENCE ET.REFERENCE
 * @arguments day
 * @param dewpoint Mean dew point of the day (°F, °C), not above tmax; ET.DEWPOINT makes one from humidity. A blank cell may count as 0.
 * @param wind Mean wind speed 2 m (6.6 ft) above the ground (mph, km/h), 0 to 200; ET.WIND2M brings one from another height. 0 is no wind.
 * @param radiation Solar radiation of the day (MJ/m²/day in both systems), above 0, at most what ET.RADIATION gives; ET.SOLAR makes one from sunshine hours.
 * @param elevation Height above the sea (ft, m), −1500 to 20000 ft or −450 to 6000 m. 0 is sea level.
 * @returns Reference evapotranspiration (in/day, mm/day), 0 or more. Times a crop coefficient (CROP.KC) it is the crop's own.
 * @remarks The full daily procedure of FAO-56, chapters 3 and 4, for a short, well-watered grass: vapor pressures (equations 11, 12, 14), slope (13), pressure and psychrometric constant (7, 8), extraterrestrial (21 to 25), clear-sky (37) and net radiation (38 to 40), no soil heat (42), combination (6). Rs/Rso is held to 1 as printed, and to 0.3 below as the ASCE standardized equation (2005) does. A dew point above tmin is taken as given; where it means more vapor than the day's temperatures hold, the air counts as saturated. A day that would give dew counts as 0. The paper advises to take calm air as at least 0.5 m/s (1.1 mph, 1.8 km/h): wind is not raised here. Not for days on which the sun does not rise or set.
 * @source FAO Irrigation and Drainage Paper 56 (1998), equation 6 and chapters 3 and 4; ASCE Standardized Reference Evapotranspiration Equation (2005) for the lower limit of Rs/Rso.
 * @errors #VALUE! for a blank or text, tmin above tmax, a dew point above tmax, more radiation than reaches the atmosphere, or a number out of its range. #N/A where the sun does not rise or does not set on that day.
 * @task how much water does the weather take in a day?
 * @example =IRRIG.ET.REFERENCE(54.1, 70.7, 53.7, 4.65, 22.07, 50.8, 328, 187, "US")
 */
export function etReference(
  tmin: any,
  tmax: any,
  dewpoint: any,
  wind: any,
  radiation: any,
  latitude: any,
  elevation: any,
  day: any,
  units?: Units,
): any {
  const u = readUnits(units);
  return u.dailyDepth.give(
    referenceEvapotranspiration(
      readWeatherDay(u, { tmin, tmax, dewpoint, wind, radiation, latitude, elevation, day }),
    ),
  );
}

/**
 * Evapotranspiration of the reference grass on one day from its temperatures alone.
 * @customfunction ET_HARGREAVES ET.HARGREAVES
 * @arguments day
 * @returns Reference evapotranspiration (in/day, mm/day), 0 or more.
 * @remarks ETo = 0.0023 (Tmean + 17.8) (Tmax − Tmin)^0.5 Ra, FAO-56 equation 52, with Ra as water evaporated (2.45 MJ/kg). Use it where humidity, wind and sun are not measured; means of several days are surer than one day. It runs high in humid air and low in wind above 3 m/s (7 mph): check it against ET.REFERENCE where you can. A mean below −17.8 °C (0 °F) gives 0.
 * @source FAO Irrigation and Drainage Paper 56 (1998), equation 52, after Hargreaves and Samani (1985).
 * @errors #VALUE! for a blank or text, tmin above tmax, or a number out of its range. #N/A where the sun does not rise or does not set on that day.
 * @task how much water does the weather take when I only know temperatures?
 * @example =IRRIG.ET.HARGREAVES(58, 84, 40, 196, "US")
 */
export function etHargreaves(tmin: any, tmax: any, latitude: any, day: any, units?: Units): any {
  const u = readUnits(units);
  const { coldest, warmest } = readTemperatures(u, tmin, tmax);
  const outside = extraterrestrialRadiation(readLatitude(latitude), readDay(day));
  return u.dailyDepth.give(hargreaves(coldest, warmest, outside));
}

/**
 * Dew point that stands for a day's temperatures and relative humidities.
 * @customfunction ET_DEWPOINT ET.DEWPOINT
 * @arguments day
 * @param rhmin Lowest relative humidity of the day, a fraction from 0 to 1, not above rhmax.
 * @param rhmax Highest relative humidity of the day, a fraction above 0 up to 1.
 * @returns Dew point (°F, °C).
 * @remarks The temperature at which air is saturated with the day's actual vapor pressure, ea = [e°(tmin) rhmax + e°(tmax) rhmin]/2 (FAO-56, equation 17), found by turning equation 14 round. Given to ET.REFERENCE it brings that same vapor pressure. It can lie a little above tmin.
 * @source FAO Irrigation and Drainage Paper 56 (1998), equations 11, 14 and 17.
 * @errors #VALUE! for a blank or text, tmin above tmax, rhmin above rhmax, or a humidity that is not a fraction (60% is 0.6).
 * @task what dew point goes with this humidity?
 * @example =IRRIG.ET.DEWPOINT(58, 84, 0.35, 0.9, "US")
 */
export function etDewpoint(tmin: any, tmax: any, rhmin: any, rhmax: any, units?: Units): any {
  const u = readUnits(units);
  const { coldest, warmest } = readTemperatures(u, tmin, tmax);
  const { least, most } = readHumidities(rhmin, rhmax);
  return u.temperature.give(dewPointFromHumidity(coldest, warmest, least, most));
}

/**
 * Wind speed at 2 m above the ground, from a speed measured at another height.
 * @customfunction ET_WIND2M ET.WIND2M
 * @param wind Wind speed as measured (mph, km/h), 0 to 200. 0 is no wind.
 * @param height Height of the anemometer above short grass (ft, m), 1 to 330 ft or 0.3 to 100 m; weather stations mostly have 33 ft or 10 m.
 * @returns Wind speed at 2 m, 6.6 ft (mph, km/h).
 * @remarks u2 = uz · 4.87 / ln(67.8 z − 5.42) with z in m: the logarithmic profile over short grass, FAO-56 equation 47. Over tall crops or between buildings it does not hold.
 * @source FAO Irrigation and Drainage Paper 56 (1998), equation 47.
 * @errors #VALUE! for a blank, text or a number out of its range.
 * @task what is the wind at 2 m when the station measures at 10 m?
 * @example =IRRIG.ET.WIND2M(6.2, 33, "US")
 */
export function etWind2m(wind: any, height: any, units?: Units): any {
  const u = readUnits(units);
  return u.wind.give(windAtTwoMeters(readWind(u, wind), readAnemometerHeight(u, height)));
}

/**
 * Solar radiation of a day at the ground, from its hours of bright sunshine.
 * @customfunction ET_SOLAR ET.SOLAR
 * @arguments day
 * @param sunshine Hours of bright sunshine, from 0 to the length of the day. A blank cell may count as 0, an overcast day.
 * @returns Solar radiation (MJ/m²/day).
 * @remarks Rs = (0.25 + 0.50 n/N) Ra, FAO-56 equation 35 with the coefficients for places without their own; N is the length of the day, 24 ωs/π (equation 34). Sunshine up to 0.1 h above N counts as N, since records are rounded; more is an error.
 * @source FAO Irrigation and Drainage Paper 56 (1998), equations 34 and 35.
 * @errors #VALUE! for a blank or text, more sunshine than the day is long, or a number out of its range. #N/A where the sun does not rise or does not set on that day.
 * @task how much solar radiation do sunshine hours mean?
 * @example =IRRIG.ET.SOLAR(9.25, 50.8, 187)
 */
export function etSolar(sunshine: any, latitude: any, day: any): any {
  const where = readLatitude(latitude);
  const when = readDay(day);
  return radiationMeasure.give(
    solarRadiation(
      readSunshine(sunshine, where, when),
      daylight(where, when),
      extraterrestrialRadiation(where, when),
    ),
  );
}

/**
 * Solar radiation of a day outside the atmosphere, on a level surface.
 * @customfunction ET_RADIATION ET.RADIATION
 * @arguments day
 * @returns Extraterrestrial radiation (MJ/m²/day).
 * @remarks Ra = (24·60/π) 0.0820 dr [ωs sin φ sin δ + cos φ cos δ sin ωs], FAO-56 equations 21 to 25, from the day's distance to the sun, its declination and the hour angle of sunset.
 * @source FAO Irrigation and Drainage Paper 56 (1998), equations 21 to 25.
 * @errors #VALUE! for a blank or text, a latitude beyond 90 or a day that is not a whole number from 1 to 366. #N/A where the sun does not rise or does not set on that day.
 * @task how much sun could there be on this day?
 * @example =IRRIG.ET.RADIATION(40, 196)
 */
export function etRadiation(latitude: any, day: any): any {
  return radiationMeasure.give(extraterrestrialRadiation(readLatitude(latitude), readDay(day)));
}

/**
 * Daily use of a crop in the peak period of its peak month, for which a system is sized.
 * @customfunction ET_PEAK ET.PEAK
 * @param month Use of the crop in its peak month (in, mm), 0 to 31 in or 775 mm: reference evapotranspiration of the whole month times CROP.KC.
 * @param net Net depth of an irrigation (in, mm), above 0; SOIL.NET gives it.
 * @returns Use (in/day, mm/day), for SYSTEM.INTERVAL.
 * @remarks 0.034·month^1.09·net^−0.09 in inches: the hottest days in a row use more than the month's average, and the fewer days an irrigation lasts, the higher their average is. Never below the month's average day. The equation is from memory and was made for months of about 4 in (100 mm) and more and depths of 1 in (25 mm) and more: elsewhere judge by daily weather. It is an average year's peak; a dry year's is higher.
 * @source USDA Soil Conservation Service, Technical Release 21, Irrigation Water Requirements (revised 1970), from memory.
 * @errors #VALUE! for a blank or text, or a number that is out of its range.
 * @task how much water does the crop use a day at its peak?
 * @example =IRRIG.ET.PEAK(7.5, 2, "US")
 */
export function etPeak(month: any, net: any, units?: Units): any {
  const u = readUnits(units);
  return u.dailyDepth.give(
    peakPeriodUse(readMonthUse(u, "month", month), u.depth.read("net", net, above(0))),
  );
}
