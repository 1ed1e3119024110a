import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import * as actualVaporPressure from "../../src/formulas/actual-vapor-pressure";
import { allowablePressure } from "../../src/formulas/allowable-pressure";
import { applicationEfficiencyFor } from "../../src/formulas/application-efficiency";
import { averageRate } from "../../src/formulas/application-rate";
import { barometricPressure, psychrometricConstant } from "../../src/formulas/barometric-pressure";
import { bendingRadius } from "../../src/formulas/bending-radius";
import { catchDepth } from "../../src/formulas/catch-depth";
import { christiansenUniformity } from "../../src/formulas/christiansen-uniformity";
import { coarsenessIndex } from "../../src/formulas/coarseness-index";
import { depletionFractionAt } from "../../src/formulas/depletion-fraction";
import { distributionUniformity } from "../../src/formulas/distribution-uniformity";
import { effectivePortion } from "../../src/formulas/effective-portion";
import { effectiveRain } from "../../src/formulas/effective-rain";
import { extraterrestrialRadiation } from "../../src/formulas/extraterrestrial-radiation";
import { shortestFeeder } from "../../src/formulas/feeder-length";
import { openRows } from "../../src/formulas/field-rows";
import { flowForDepth } from "../../src/formulas/field-water";
import { fittingLoss } from "../../src/formulas/fitting-loss";
import { travel } from "../../src/formulas/geodesic";
import { groundOf } from "../../src/formulas/ground-height";
import { hargreaves } from "../../src/formulas/hargreaves";
import { hazenWilliams } from "../../src/formulas/hazen-williams";
import { fewestHydrants } from "../../src/formulas/hydrants";
import { irrigationInterval } from "../../src/formulas/irrigation-interval";
import { linesNeeded } from "../../src/formulas/lines-needed";
import { toPlane } from "../../src/formulas/local-plane";
import { flowAtSpeed, meanSpeed } from "../../src/formulas/mean-speed";
import { multipleOutletFactor } from "../../src/formulas/multiple-outlet-factor";
import { netDepth } from "../../src/formulas/net-depth";
import { netLongwave, netShortwave } from "../../src/formulas/net-radiation";
import { nozzleFlow } from "../../src/formulas/nozzle";
import { peakPeriodUse } from "../../src/formulas/peak-use";
import { pipeDimensions } from "../../src/formulas/pipe-dimensions";
import { pipeRating } from "../../src/formulas/pipe-rating";
import { volumeOfPipe } from "../../src/formulas/pipe-volume";
import { signedArea } from "../../src/formulas/polygon";
import { fitPowerLaw } from "../../src/formulas/power-law-fit";
import { pumpingEnergy } from "../../src/formulas/pumping-energy";
import { quote } from "../../src/formulas/quote";
import * as evapotranspiration from "../../src/formulas/reference-evapotranspiration";
import { tubingSafePull } from "../../src/formulas/safe-pull";
import * as saturation from "../../src/formulas/saturation-vapor-pressure";
import { timeForDepth } from "../../src/formulas/set-time";
import { setsADay } from "../../src/formulas/sets-a-day";
import { clearSkyRadiation, solarRadiation } from "../../src/formulas/solar-radiation";
import { balanceByMonth } from "../../src/formulas/source-balance";
import { sourceDuration } from "../../src/formulas/source-days";
import { standardAtmosphere } from "../../src/formulas/standard-atmosphere";
import * as sun from "../../src/formulas/sun-position";
import { suddenSurge, waveSpeed } from "../../src/formulas/surge";
import { systemUniformity } from "../../src/formulas/system-uniformity";
import { thermalExpansion } from "../../src/formulas/thermal-expansion";
import { tooNear } from "../../src/formulas/too-near";
import { totalDynamicHead } from "../../src/formulas/total-dynamic-head";
import { pullAtHitch } from "../../src/formulas/tow-pull";
import { trappedWater } from "../../src/formulas/trapped-water";
import { turnField } from "../../src/formulas/turned-field";
import { vaporPressure } from "../../src/formulas/vapor-pressure";
import { densityOfWater } from "../../src/formulas/water-density";
import { dynamicViscosity } from "../../src/formulas/water-viscosity";
import { windAtTwoMeters } from "../../src/formulas/wind-at-two-meters";
import { capitalRecovery, levelling } from "../../src/formulas/yearly-cost";
import { WATER_WEIGHT } from "../../src/ground/constants";
import {
  ACRE,
  DAY,
  FOOT,
  HORSEPOWER,
  HOUR,
  INCH,
  KILOMETER,
  LITER,
  MILLIMETER,
  MINUTE,
  POUND_FORCE,
  PSI,
  US_GALLON,
} from "../../src/ground/unit-factors";
import { call } from "../support/host";

/**
 * The examples in the formulas' comments, each worked by the formula that it stands over. A number
 * holds when the formula gives it to the digits that are printed; thin spaces in it don't count.
 */
const FOLDER = join(__dirname, "../../src/formulas");
const GPM = US_GALLON / MINUTE;
const celsius = (value: number) => value + 273.15;
const radians = (degrees: number) => (degrees * Math.PI) / 180;
/** MJ/m² a day. */
const sunshine = 1e6 / DAY;
const depthADay = MILLIMETER / DAY;

/** Formula's file, the example as its comment says it, and what each of its numbers comes out as. */
type Example = readonly [file: string, said: string, numbers: Readonly<Record<string, number>>];

const line = (points: readonly [number, number][]) => points.map(([x, y]) => ({ x, y }));
const square = line([
  [0, 0],
  [0, 1320 * FOOT],
  [700 * FOOT, 1320 * FOOT],
  [700 * FOOT, 0],
]);
const row = line(Array.from({ length: 7 }, (_, i) => [i * 50, 0]));
const hydrants = fewestHydrants(
  row.map((point, i) => ({ ...point, position: i + 1, run: 1 })),
  100,
);
const rows = openRows(turnField({ corners: square, obstacles: [], setback: 0 }, 0), 50 * FOOT);
const months = balanceByMonth(
  100,
  [80, 30, 40].map((need) => ({ need, inflow: 10, loss: 0 })),
);
const priced = quote([{ quantity: 3, price: 0.335 }], 0.5, 0.1);
const diesel = pumpingEnergy(600 * GPM, 208.6 * FOOT, HOUR, "diesel", 1) / US_GALLON;
const wall = 1 / 17;
const wave = waveSpeed(1 - 2 * wall, wall, 150_000 * PSI);
const catches = [7, 8, 9, 10, 10, 11, 12, 13];

const examples: readonly Example[] = [
  [
    "actual-vapor-pressure",
    "18 to 25 °C with 82 to 54% give 1.70 kPa",
    {
      "1.70":
        actualVaporPressure.vaporPressureFromHumidity(celsius(18), celsius(25), 0.54, 0.82) / 1000,
    },
  ],
  [
    "allowable-pressure",
    "a rating of 100 psi allows 72 psi",
    { "72": allowablePressure(100, 0.72) },
  ],
  [
    "application-efficiency",
    "CU 0.86, adequacy 0.8: 0.853",
    {
      "0.853": applicationEfficiencyFor(0.86, 0.8, 1),
    },
  ],
  [
    "application-rate",
    "12.5 gpm at 40 ft by 60 ft is 0.50 in/h",
    {
      "0.50": (averageRate(12.5 * GPM, 40 * FOOT, 60 * FOOT) * HOUR) / INCH,
    },
  ],
  ["barometric-pressure", "81.8 kPa at 1800 m", { "81.8": barometricPressure(1800) / 1000 }],
  [
    "barometric-pressure",
    "0.054 kPa/°C at 1800 m",
    {
      "0.054": psychrometricConstant(barometricPressure(1800)) / 1000,
    },
  ],
  [
    "bending-radius",
    "2.375 in at DR 17 bends to 64 in, with a saddle in the bend to 238 in",
    {
      "64": bendingRadius(2.375, 17, false),
      "238": bendingRadius(2.375, 17, true),
    },
  ],
  [
    "catch-depth",
    "100 mL in a can of 100 mm opening is 12.7 mm",
    {
      "12.7": catchDepth(0.1 * LITER, 0.1) / MILLIMETER,
    },
  ],
  [
    "christiansen-uniformity",
    "catches of 8 and 12 have the mean 10 and the deviations 2 and 2: CU 0.8",
    {
      "0.8": christiansenUniformity([8, 12]),
    },
  ],
  [
    "coarseness-index",
    "45 psi and 10/64 in: 14.1",
    {
      "14.1": coarsenessIndex(45 * PSI, (10 / 64) * INCH),
    },
  ],
  [
    "depletion-fraction",
    "0.60 at 8 mm/day is 0.48",
    { "0.48": depletionFractionAt(0.6, 8 * depthADay) },
  ],
  [
    "distribution-uniformity",
    "have the mean 10, the lowest two 7.5: DU 0.75",
    {
      "0.75": distributionUniformity(catches, 0.25),
    },
  ],
  [
    "effective-portion",
    "6 mm a day, 10 km/h and CI 10: 0.958",
    {
      "0.958": effectivePortion(6 * depthADay, (10 * KILOMETER) / HOUR, 10),
    },
  ],
  [
    "effective-rain",
    "4 in of rain, 8 in of use and 3 in of depth leave 3.30 in",
    {
      "3.30": effectiveRain(4 * INCH, 8 * INCH, 3 * INCH) / INCH,
    },
  ],
  [
    "extraterrestrial-radiation",
    "32.2 MJ/m² on day 246 at 20° south",
    {
      "32.2": extraterrestrialRadiation(radians(-20), 246) / sunshine,
    },
  ],
  ["feeder-length", "so √(300² + 40²) = 302.7 ft", { "302.7": shortestFeeder(13, 50, 40) }],
  [
    "field-rows",
    "700 ft across and a move of 50 ft are 14 rows, the first 25 ft in",
    {
      "14": rows.length,
      "25": Math.min(...rows.map(({ across }) => Math.abs(across))) / FOOT,
    },
  ],
  [
    "field-water",
    "40 acres, 3.43 in in 10 days of 20 h: 310.5 gpm",
    {
      "310.5": flowForDepth(40 * ACRE, 3.43 * INCH, 10, 20 * HOUR) / GPM,
    },
  ],
  [
    "fitting-loss",
    "k = 1 at 5 ft/s loses 0.168 psi (0.389 ft)",
    {
      "0.168": fittingLoss(flowAtSpeed(5 * FOOT, INCH), INCH, 1) / PSI,
      "0.389": fittingLoss(flowAtSpeed(5 * FOOT, INCH), INCH, 1) / WATER_WEIGHT / FOOT,
    },
  ],
  [
    "geodesic",
    "2000 m due east along the equator are 0.017 966 31 degrees of longitude",
    {
      "0.017 966 31": travel({ latitude: 0, longitude: 0, bearing: 90 }, 2000).longitude,
    },
  ],
  [
    "ground-height",
    "at (2, 3) the height is 1 + 0.2 + 0.9 = 2.1",
    {
      "2.1": groundOf([
        { x: 0, y: 0, height: 1 },
        { x: 10, y: 0, height: 2 },
        { x: 0, y: 10, height: 4 },
      ])({ x: 2, y: 3 }) as number,
    },
  ],
  [
    "hargreaves",
    "14.8 to 26.6 °C under 40.6 MJ/m² a day (Ra) give 5.0 mm/day",
    {
      "5.0": hargreaves(celsius(14.8), celsius(26.6), 40.6 * sunshine) / depthADay,
    },
  ],
  [
    "hazen-williams",
    "50 gpm in a 2.067 in bore at C 150 loses 4.00 ft in 100 ft",
    {
      "4.00": hazenWilliams(50 * GPM, 2.067 * INCH, 100 * FOOT, 150) / FOOT,
    },
  ],
  [
    "hydrants",
    "7 near ends in a row 50 apart and a reach of 100 are 2 hydrants, the first in the middle of five, 100 from the first and the fifth",
    {
      "2": hydrants.length,
      "100": hydrants[0].farthest,
    },
  ],
  [
    "irrigation-interval",
    "2 in at 0.25 in a day last 8 days",
    { "8": irrigationInterval(2, 0.25) },
  ],
  [
    "lines-needed",
    "14 positions at one set a day in 7 days take 2 lines",
    { "2": linesNeeded(14, 1, 7) },
  ],
  [
    "local-plane",
    "0.001 degrees east of (0, 0) is x = 111.319 491 m, y = 0",
    {
      "111.319 491": toPlane({ latitude: 0, longitude: 0 }, { latitude: 0, longitude: 0.001 }, "")
        .x,
    },
  ],
  [
    "mean-speed",
    "50 gpm in a 2.067 in bore runs at 4.78 ft/s",
    {
      "4.78": meanSpeed(50 * GPM, 2.067 * INCH) / FOOT,
    },
  ],
  [
    "multiple-outlet-factor",
    "10 outlets, m = 1.85: F = 0.402",
    {
      "0.402": multipleOutletFactor(10, 1.85, 1),
    },
  ],
  ["net-depth", "2 in/ft over 3 ft at one half is 3 in", { "3": netDepth(2, 3, 0.5) }],
  ["net-radiation", "22.07 MJ/m² a day keep 17.0", { "17.0": netShortwave(22.07) }],
  [
    "net-radiation",
    "19.1 to 25.1 °C, ea 2.1 kPa, Rs 14.5 of Rso 18.8 send 3.5 MJ/m² a day",
    {
      "3.5":
        netLongwave(celsius(19.1), celsius(25.1), 2100, 14.5 * sunshine, 18.8 * sunshine) /
        sunshine,
    },
  ],
  [
    "nozzle",
    "a 3/16 in nozzle at 50 psi with C_d 0.96 gives 7.12 gpm",
    {
      "7.12": nozzleFlow((3 / 16) * INCH, 50 * PSI, 0.96) / GPM,
    },
  ],
  [
    "peak-use",
    "7.5 in in the month and 2 in net are 0.287 in a day, against 0.242 on average",
    {
      "0.287": (peakPeriodUse(7.5 * INCH, 2 * INCH) * DAY) / INCH,
      "0.242": 7.5 / 31,
    },
  ],
  [
    "pipe-dimensions",
    "63 mm SDR 17 is 63.2 mm outside, and 63.2 − 3.8 − 4.3 = 55.1 mm inside",
    {
      "63.2": pipeDimensions("ISO PE", 63, 17).outside / MILLIMETER,
      "55.1": pipeDimensions("ISO PE", 63, 17).inside / MILLIMETER,
    },
  ],
  [
    "pipe-dimensions",
    "2 in DR 11 is 2.375 − 2.12 × 0.2159 = 1.917 in inside",
    {
      "1.917": pipeDimensions("IPS PE", 2, 11).inside / INCH,
    },
  ],
  [
    "pipe-dimensions",
    "2 in SIDR 15 is 2.067 + 2.12 × 0.138 = 2.359 in outside",
    {
      "2.359": pipeDimensions("SIDR", 2, 15).outside / INCH,
    },
  ],
  [
    "pipe-rating",
    "S = 8 MPa at SDR 17 is 1000 kPa; S = 1000 psi at DR 11 is 200 psi",
    {
      "1000": pipeRating("ISO PE", 8000, 17),
      "200": pipeRating("IPS PE", 1000, 11),
    },
  ],
  [
    "pipe-volume",
    "100 ft of a 2 in bore holds 16.32 gal",
    {
      "16.32": volumeOfPipe(2 * INCH, 100 * FOOT) / US_GALLON,
    },
  ],
  [
    "polygon",
    "(0, 0), (40, 0), (40, 30) is 600",
    {
      "600": signedArea(
        line([
          [0, 0],
          [40, 0],
          [40, 30],
        ]),
      ),
    },
  ],
  [
    "power-law-fit",
    "(25, 10) and (100, 20) give K = 2 and x = ½",
    {
      "2": fitPowerLaw([25, 100], [10, 20]).coefficient,
      "½": fitPowerLaw([25, 100], [10, 20]).exponent,
    },
  ],
  [
    "pumping-energy",
    "600 gpm against 208.6 ft are 31.6 water horsepower, 2.53 gal of diesel an hour at the criterion of 12.5 whp·h a gallon",
    {
      "31.6": (600 * GPM * 208.6 * FOOT * WATER_WEIGHT) / HORSEPOWER,
      "2.53": diesel,
    },
  ],
  [
    "quote",
    "3 at 0.335 is 1.01; with a markup of 0.5 (0.51) and a tax of 0.1 (0.15) the total is 1.67",
    {
      "1.01": priced.subtotal,
      "0.51": priced.markup,
      "0.15": priced.tax,
      "1.67": priced.total,
    },
  ],
  [
    "reference-evapotranspiration",
    "Rn 14.33, G 0.14, 30.2 °C, 2 m/s, es 4.42, ea 2.85, Δ 0.246, γ 0.0674 give 5.71 mm/day",
    {
      "5.71":
        evapotranspiration.penmanMonteith({
          netRadiation: 14.33 * sunshine,
          soilHeat: 0.14 * sunshine,
          temperature: celsius(30.2),
          wind: 2,
          deficit: 1570,
          slope: 246,
          psychrometric: 67.4,
        }) / depthADay,
    },
  ],
  [
    "reference-evapotranspiration",
    "3.9 mm/day at 50°48′ north on 6 July",
    {
      // The weather of the source's example 18.
      "3.9":
        evapotranspiration.referenceEvapotranspiration({
          coldest: celsius(12.3),
          warmest: celsius(21.5),
          dewPoint: actualVaporPressure.dewPointFromHumidity(
            celsius(12.3),
            celsius(21.5),
            0.63,
            0.84,
          ),
          wind: windAtTwoMeters(10 / 3.6, 10),
          solarRadiation: 22.07 * sunshine,
          latitude: radians(50.8),
          elevation: 100,
          day: 187,
        }) / depthADay,
    },
  ],
  [
    "safe-pull",
    "2.375 in, DR 11, 3500 psi, two hours: 1948 lbf",
    {
      "1948":
        tubingSafePull({
          outside: 2.375 * INCH,
          rating: 11,
          yieldStrength: 3500 * PSI,
          time: 2 * HOUR,
        }) / POUND_FORCE,
    },
  ],
  [
    "saturation-vapor-pressure",
    "25 °C gives 3.168 kPa",
    {
      "3.168": saturation.saturationVaporPressure(celsius(25)) / 1000,
    },
  ],
  [
    "saturation-vapor-pressure",
    "24.5 and 15 °C give 2.39 kPa",
    {
      "2.39": saturation.meanSaturationVaporPressure(celsius(15), celsius(24.5)) / 1000,
    },
  ],
  [
    "saturation-vapor-pressure",
    "30.2 °C gives 0.246 kPa/°C",
    {
      "0.246": saturation.saturationSlope(celsius(30.2)) / 1000,
    },
  ],
  [
    "set-time",
    "2.4 in net at 70% is 3.43 in gross, 6.86 h at 0.5 in/h",
    {
      "3.43": 0.5 * timeForDepth(2.4, 0.5, 0.7),
      "6.86": timeForDepth(2.4, 0.5, 0.7),
    },
  ],
  [
    "sets-a-day",
    "sets of 11 h with 1 h to move, two in 24 h and one in 12 h; a set of 36 h, half a set in 24 h",
    {
      two: setsADay(11, 1, 24),
      one: setsADay(11, 1, 12),
      half: setsADay(36, 0, 24),
    },
  ],
  [
    "solar-radiation",
    "7.1 of 10.9 hours under 25.1 MJ/m² a day give 14.45",
    {
      "14.45": solarRadiation(7.1, 10.9, 25.1),
    },
  ],
  [
    "solar-radiation",
    "41.09 MJ/m² a day at 100 m give 30.90",
    {
      "30.90": clearSkyRadiation(100, 41.09),
    },
  ],
  [
    "source-balance",
    "100 with a need of 80, 30 and 40, and 10 coming in each month: 30 held, 10 held, then 20 short",
    {
      "30": months[0].held,
      "10": months[1].held,
      "20": months[2].short,
    },
  ],
  [
    "source-days",
    "500 000/(72 000 − 14 400) = 8.68 days",
    {
      "8.68": sourceDuration(500_000 * US_GALLON, 100 * GPM, 12 * HOUR, 10 * GPM) / DAY,
    },
  ],
  ["standard-atmosphere", "1000 m has 89 875 Pa", { "89 875": standardAtmosphere(1000) }],
  [
    "sun-position",
    "day 246 at 20° south gives dr 0.985, δ 0.120 and ωs 1.527",
    {
      "0.985": sun.inverseSunDistance(246),
      "0.120": sun.solarDeclination(246),
      "1.527": sun.sunsetHourAngle(radians(-20), 246),
    },
  ],
  [
    "sun-position",
    "11.7 h on day 246 at 20° south",
    {
      "11.7": sun.daylight(radians(-20), 246) / HOUR,
    },
  ],
  [
    "surge",
    "DR 17 with E = 150 000 psi has a = 837 ft/s, 11.26 psi for each foot a second stopped",
    {
      "837": wave / FOOT,
      "11.26": suddenSurge(FOOT, wave) / PSI,
    },
  ],
  [
    "system-uniformity",
    "CU 0.86, 40 of 45 psi: 0.835",
    { "0.835": systemUniformity(0.86, 40, 45) },
  ],
  [
    "thermal-expansion",
    "100 ft and 10 °F give 0.09 ft, 1.08 in",
    {
      "0.09": thermalExpansion(100, 10 / 1.8),
      "1.08": 12 * thermalExpansion(100, 10 / 1.8),
    },
  ],
  [
    "too-near",
    "from an edge (0, 0)–(0, 10) and a radius of 3, the row 5 across is too near from −3 to 3",
    {
      "5": 5,
      "−3": tooNear({ along: 0, across: 0 }, { along: 0, across: 10 }, 5, 3, 1e-9)?.from as number,
      "3": tooNear({ along: 0, across: 0 }, { along: 0, across: 10 }, 5, 3, 1e-9)?.to as number,
    },
  ],
  [
    "total-dynamic-head",
    "45 psi wanted (104.0 ft), 12 ft of lift and 6 psi of losses (13.9 ft) are 129.9 ft",
    {
      "104.0": totalDynamicHead(45 * PSI, 0, 0, 0) / FOOT,
      "13.9": totalDynamicHead(0, 0, 6 * PSI, 0) / FOOT,
      "129.9": totalDynamicHead(45 * PSI, 12 * FOOT, 6 * PSI, 0) / FOOT,
    },
  ],
  [
    "tow-pull",
    "100 kg at a drag coefficient of 0.5 on the level take 490 N",
    {
      "490": pullAtHitch(100, 0.5, 0),
    },
  ],
  [
    "trapped-water",
    "ground at 0, −1, 0 m over two runs of 10 m is a dip that stays full, 20 m of pipe",
    {
      "20": trappedWater([0, 10, 20], [0, -1, 0], [0.05, 0.05], "both") / volumeOfPipe(0.05, 1),
    },
  ],
  [
    "unit-conversion",
    "1 psi is 2.311 ft of water",
    {
      "2.311": call("UNIT.CONVERT", 1, "psi", "ft of water") as number,
    },
  ],
  ["vapor-pressure", "2.339 kPa at 20 °C", { "2.339": vaporPressure(celsius(20)) / 1000 }],
  ["water-density", "998.20 kg/m³ at 20 °C", { "998.20": densityOfWater(celsius(20)) }],
  ["water-viscosity", "1.0016 mPa·s at 20 °C", { "1.0016": 1000 * dynamicViscosity(celsius(20)) }],
  ["wind-at-two-meters", "3.2 m/s at 10 m is 2.4 m/s at 2 m", { "2.4": windAtTwoMeters(3.2, 10) }],
  ["yearly-cost", "8 % and 10 years are 0.14903", { "0.14903": capitalRecovery(0.08, 10) }],
  [
    "yearly-cost",
    "9 % a year dearer, 20 % interest, 20 years: 1.594",
    {
      "1.594": levelling(0.09, 0.2, 20),
    },
  ],
];

const WORDS: Readonly<Record<string, number>> = { half: 0.5, one: 1, two: 2, "½": 0.5 };

/** The text of a file's comments, in one line. */
function comments(file: string): string {
  const text = readFileSync(join(FOLDER, `${file}.ts`), "utf8");
  return (text.match(/\/\*\*[^]*?\*\//g) ?? []).join(" ").replace(/[\s*]+/g, " ");
}

test.each(examples)("%s: %s", (file, said, numbers) => {
  expect(comments(file)).toContain(said.replace(/\*/g, " "));
  for (const [printed, value] of Object.entries(numbers)) {
    expect(said).toContain(printed);
    const plain = printed.replace(/ /g, "").replace("−", "-");
    const decimals = /\.(\d+)$/.exec(plain)?.[1].length ?? 0;
    const expected = WORDS[printed] ?? Number(plain);
    // Half a unit of the last digit, and what binary numbers leave beside a half.
    const allowed = 0.5 * 10 ** -decimals * (1 + 1e-9);
    expect([printed, Math.abs(value - expected) <= allowed, value]).toEqual([printed, true, value]);
  }
});

test("no example of a formula is left out", () => {
  const files = readdirSync(FOLDER).map((file) => file.replace(/\.ts$/, ""));
  const counted = files.map((file) => [file, comments(file).split("Example:").length - 1] as const);
  for (const [file, count] of counted) {
    expect([file, examples.filter(([named]) => named === file).length]).toEqual([file, count]);
  }
});
