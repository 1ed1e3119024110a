import {
  dewPointFromHumidity,
  vaporPressureAtDewPoint,
  vaporPressureFromHumidity,
} from "../../src/formulas/actual-vapor-pressure";
import { barometricPressure, psychrometricConstant } from "../../src/formulas/barometric-pressure";
import { NoAnswer } from "../../src/ground/domain-error";
import { extraterrestrialRadiation } from "../../src/formulas/extraterrestrial-radiation";
import { hargreaves } from "../../src/formulas/hargreaves";
import { netLongwave, netShortwave } from "../../src/formulas/net-radiation";
import {
  penmanMonteith,
  referenceEvapotranspiration,
} from "../../src/formulas/reference-evapotranspiration";
import {
  meanSaturationVaporPressure,
  saturationSlope,
  saturationTemperature,
  saturationVaporPressure,
} from "../../src/formulas/saturation-vapor-pressure";
import { clearSkyRadiation, solarRadiation } from "../../src/formulas/solar-radiation";
import {
  daylight,
  inverseSunDistance,
  solarDeclination,
  sunsetHourAngle,
} from "../../src/formulas/sun-position";
import { windAtTwoMeters } from "../../src/formulas/wind-at-two-meters";
import { expectClose } from "../support/published";

// The expected values were worked out apart from this code, from the equations as printed.
const celsius = (value: number) => value + 273.15;
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const watts = (megajoulesADay: number) => megajoulesADay / 0.0864;
const millimetersADay = (speed: number) => speed * 86400 * 1000;

test("saturation vapor pressure, its mean, its slope and its inverse", () => {
  expectClose(saturationVaporPressure(celsius(-10)), 285.7109821667413, 1e-12);
  expectClose(saturationVaporPressure(celsius(0)), 610.8, 1e-12);
  expectClose(saturationVaporPressure(celsius(20)), 2338.281270927446, 1e-12);
  expectClose(meanSaturationVaporPressure(celsius(0), celsius(20)), 1474.540635463723, 1e-12);
  expectClose(saturationSlope(celsius(20)), 144.74018811241365, 1e-12);
  for (const temperature of [-60, -5, 0, 12.5, 45]) {
    const pressure = saturationVaporPressure(celsius(temperature));
    expectClose(saturationTemperature(pressure), celsius(temperature), 1e-12);
  }
});

test("the slope is that of the curve", () => {
  const step = 0.001;
  for (const temperature of [5, 20, 35]) {
    const rise =
      saturationVaporPressure(celsius(temperature + step)) -
      saturationVaporPressure(celsius(temperature - step));
    // 4098 is 17.27 × 237.3, rounded.
    expectClose(saturationSlope(celsius(temperature)), rise / (2 * step), 1e-4);
  }
});

test("actual vapor pressure from a dew point and from humidity", () => {
  expectClose(vaporPressureAtDewPoint(celsius(20)), 2338.281270927446, 1e-12);
  expectClose(
    vaporPressureFromHumidity(celsius(0), celsius(20), 0.5, 0.9),
    (610.8 * 0.9 + 2338.281270927446 * 0.5) / 2,
    1e-12,
  );
  expectClose(
    dewPointFromHumidity(celsius(14), celsius(29), 0.35, 0.9),
    celsius(12.191421062335378),
    1e-12,
  );
});

test("pressure and psychrometric constant", () => {
  expectClose(barometricPressure(0), 101_300, 1e-12);
  expectClose(barometricPressure(500), 95_527.64712693055, 1e-12);
  expectClose(psychrometricConstant(80_000), 53.2, 1e-12);
});

test("the sun on 1 January at 45° north", () => {
  expectClose(inverseSunDistance(1), 1.0329951106939008, 1e-12);
  expectClose(solarDeclination(1), -0.4010080925946237, 1e-12);
  expectClose(sunsetHourAngle(radians(45), 1), 1.1329587451720398, 1e-12);
  expectClose(daylight(radians(45), 1), 8.655167261439415 * 3600, 1e-12);
});

test.each([
  [40, 196, 40.79948265136856],
  [-35, 366, 44.23636047588971],
  [60, 355, 2.116356174371824],
  [0, 80, 37.82421310762571],
])("radiation outside the atmosphere at latitude %p on day %p", (latitude, day, expected) => {
  expectClose(extraterrestrialRadiation(radians(latitude), day), watts(expected), 1e-12);
});

test("a year of 365 days: day 366 stands where day 1 stands", () => {
  expectClose(
    extraterrestrialRadiation(radians(40), 366),
    extraterrestrialRadiation(radians(40), 1),
    1e-12,
  );
});

test.each([
  [70, 172, "the sun does not set at latitude 70 on day 172"],
  [-70, 172, "the sun does not rise at latitude -70 on day 172"],
  [66.567, 355, "the sun does not rise at latitude 66.57 on day 355"],
  [-90, 355, "the sun does not set at latitude -90 on day 355"],
])("no sunset at latitude %p on day %p", (latitude, day, message) => {
  for (const formula of [sunsetHourAngle, daylight, extraterrestrialRadiation]) {
    expect(() => formula(radians(latitude), day)).toThrow(NoAnswer);
    expect(() => formula(radians(latitude), day)).toThrow(
      `${message}: the equations need a day with a sunrise and a sunset`,
    );
  }
});

test("radiation at the ground", () => {
  expect(solarRadiation(0, 12, 400)).toBe(100);
  expect(solarRadiation(12, 12, 400)).toBe(300);
  expectClose(solarRadiation(6, 12, 400), 200, 1e-12);
  expectClose(clearSkyRadiation(0, 400), 300, 1e-12);
  expectClose(clearSkyRadiation(1000, 400), 308, 1e-12);
});

test("net radiation, with the cloud factor held between its limits", () => {
  expectClose(netShortwave(100), 77, 1e-12);
  const sent = (sun: number) => netLongwave(celsius(10), celsius(20), 1200, watts(sun), watts(30));
  expectClose(sent(15), watts(2.054296998357379), 1e-12);
  expectClose(sent(31), watts(6.3209138410996255), 1e-12);
  expect(sent(31)).toBe(sent(30));
  expectClose(sent(3), watts(0.3476502612604797), 1e-12);
  expect(sent(3)).toBe(sent(9));
  expect(sent(9.1)).toBeGreaterThan(sent(9));
});

test("wind at 2 m", () => {
  expectClose(windAtTwoMeters(5, 10), 3.7397553758397204, 1e-12);
  expectClose(windAtTwoMeters(5, 0.5), 7.270388400219857, 1e-12);
});

test("the combination equation: energy alone, drying alone", () => {
  const still = {
    netRadiation: watts(10),
    soilHeat: watts(1),
    temperature: celsius(20),
    wind: 0,
    deficit: 1000,
    slope: 150,
    psychrometric: 50,
  };
  // 0.408 · 9 MJ · Δ/(Δ + γ)
  expectClose(millimetersADay(penmanMonteith(still)), 0.408 * 9 * 0.75, 1e-12);
  // γ 900/293 · 2 · 1 kPa / (Δ + 1.68 γ)
  const drying = { ...still, netRadiation: still.soilHeat, wind: 2 };
  expectClose(
    millimetersADay(penmanMonteith(drying)),
    (50 * (900 / 293) * 2) / (150 + 50 * 1.68),
    1e-12,
  );
});

test.each([
  ["a summer day", [14, 30, 11, 2.5, 25, 40, 300, 196], 6.163805075782622],
  ["the south in a leap year", [8, 22, 4, 10 / 3.6, 20, -35, 50, 366], 4.779284845667935],
  ["desert air, dry to the last", [15, 45, -100, 5, 28, 30, 1000, 172], 14.726307391227875],
  ["air beyond saturation counts as saturated", [12, 20, 18, 2, 3, 45, 0, 200], 0.4231683131983406],
  ["calm air", [12, 20, 12, 0, 10, 45, 0, 200], 1.8365751972436597],
])("the daily procedure: %s", (_, day, expected) => {
  const [coldest, warmest, dewPoint, wind, sun, latitude, elevation, when] = day;
  const evaporation = referenceEvapotranspiration({
    coldest: celsius(coldest),
    warmest: celsius(warmest),
    dewPoint: celsius(dewPoint),
    wind,
    solarRadiation: watts(sun),
    latitude: radians(latitude),
    elevation,
    day: when,
  });
  expectClose(millimetersADay(evaporation), expected, 1e-11);
});

test("a dark frozen day that would give dew is 0", () => {
  // −0.012 mm/day by the equation.
  const evaporation = referenceEvapotranspiration({
    coldest: celsius(-20),
    warmest: celsius(-12),
    dewPoint: celsius(-22),
    wind: 1,
    solarRadiation: watts(1.2),
    latitude: radians(60),
    elevation: 100,
    day: 355,
  });
  expect(evaporation).toBe(0);
});

test("reference evapotranspiration from temperature alone", () => {
  const sun = extraterrestrialRadiation(radians(40), 196);
  expectClose(millimetersADay(hargreaves(celsius(12), celsius(28), sun)), 5.791195137485684, 1e-11);
  expect(hargreaves(celsius(15), celsius(15), sun)).toBe(0);
  // −17.8 °C is where it reaches 0, and below it stays there.
  expect(hargreaves(celsius(-30), celsius(-20), sun)).toBe(0);
  expect(hargreaves(celsius(-22), celsius(-12), sun)).toBeGreaterThan(0);
});
