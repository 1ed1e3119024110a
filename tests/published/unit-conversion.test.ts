import { callNumber } from "../support/host";
import { expectClose, published } from "../support/published";

published(
  {
    source: "NIST Special Publication 811 (2008), Guide for the Use of the SI",
    where: "Appendix B.8, factors to SI units, as open repositories copy its lists",
    seen: "read in a secondary text",
  },
  () => {
    const printed: readonly [from: string, to: string, factor: number][] = [
      ["ft", "m", 0.3048],
      ["in", "mm", 25.4],
      ["yd", "m", 0.9144],
      ["mi", "m", 1609.344],
      ["ft²", "m²", 9.290304e-2],
      ["in²", "m²", 6.4516e-4],
      ["yd²", "m²", 0.8361274],
      ["mi²", "m²", 2589988],
      ["gal", "L", 3.785412],
      ["imp gal", "L", 4.54609],
      ["ft³", "m³", 2.831685e-2],
      ["in³", "m³", 1.638706e-5],
      ["yd³", "m³", 0.7645549],
      ["gpm", "m³/s", 6.30902e-5],
      ["psi", "Pa", 6894.757],
      ["bar", "kPa", 100],
      ["mbar", "Pa", 100],
      ["atm", "kPa", 101.325],
      ["kgf/cm²", "Pa", 98066.5],
      ["in of mercury", "Pa", 3386.389],
      ["mm of mercury", "Pa", 133.3224],
      ["ft/min", "m/s", 5.08e-3],
      ["mph", "m/s", 0.44704],
      ["km/h", "m/s", 0.2777778],
      ["hp", "W", 745.6999],
      ["metric hp", "W", 735.4988],
      ["Btu", "J", 1055.056],
      ["lbf", "N", 4.448222],
      ["kgf", "N", 9.80665],
      ["lb", "kg", 0.4535924],
      ["oz", "g", 28.34952],
      ["short ton", "kg", 907.1847],
    ];
    for (const [from, to, factor] of printed) {
      // The factors are printed to seven digits.
      expectClose(callNumber("UNIT.CONVERT", 1, from, to), factor, 3e-7);
    }
    // The acre printed is that of the survey foot, 1200/3937 m; here it is that of the foot of 0.3048 m.
    const surveyFeet = 1200 / 3937 / 0.3048;
    expectClose(callNumber("UNIT.CONVERT", 1, "acre", "m²") * surveyFeet ** 2, 4046.873, 3e-7);
    expectClose(callNumber("UNIT.CONVERT", 1, "acre-ft", "m³") * surveyFeet ** 3, 1233.489, 3e-7);
  },
);

published(
  {
    source: "Definitions of the units",
    where:
      "acre 43 560 ft², acre-foot, gallons a day, cubic feet a second and a minute, kWh, lb/ft³, lb/gal and ft²/s, by hand",
    seen: "closed form",
  },
  () => {
    const defined: readonly [from: string, to: string, factor: number][] = [
      ["acre", "m²", 43560 * 0.3048 ** 2],
      ["acre-ft", "m³", 43560 * 0.3048 ** 3],
      ["gpd", "m³/s", 3.785411784e-3 / 86400],
      ["cfs", "m³/s", 0.3048 ** 3],
      ["cfm", "m³/s", 0.3048 ** 3 / 60],
      ["kWh", "MJ", 3.6],
      ["lb/ft³", "kg/m³", 0.45359237 / 0.3048 ** 3],
      ["lb/gal", "kg/m³", 0.45359237 / 3.785411784e-3],
      ["ft²/s", "m²/s", 0.3048 ** 2],
    ];
    for (const [from, to, factor] of defined) {
      expectClose(callNumber("UNIT.CONVERT", 1, from, to), factor, 1e-12);
    }
  },
);

published(
  {
    source: "Extension bulletin on measuring irrigation water (the copy read lacks its title page)",
    where: "list of equivalents",
    seen: "read",
  },
  () => {
    expectClose(callNumber("UNIT.CONVERT", 1, "acre-ft", "gal"), 325851, 2e-6);
    expectClose(callNumber("UNIT.CONVERT", 1, "acre-ft", "ft³"), 43560, 1e-12);
    expectClose(callNumber("UNIT.CONVERT", 1, "acre-in", "gal"), 27154, 2e-5);
    expectClose(callNumber("UNIT.CONVERT", 1, "ft³", "gal"), 7.48, 7e-4);
    expectClose(callNumber("UNIT.CONVERT", 1, "ft³", "m³"), 0.0283, 7e-4);
    expectClose(callNumber("UNIT.CONVERT", 450, "gpm", "acre-in/h"), 1, 6e-3);
    expectClose(callNumber("UNIT.CONVERT", 1, "gpm", "L/s"), 0.06309, 1e-5);
  },
);

published(
  {
    source: "Irrigation Formulas, extension sheet",
    where: "psi × 2.31 is feet of head; 450 gpm is 1 acre-inch an hour; 14.7 psi an atmosphere",
    seen: "read",
  },
  () => {
    expectClose(callNumber("UNIT.CONVERT", 1, "psi", "ft of water"), 2.31, 4e-4);
    expectClose(callNumber("UNIT.CONVERT", 1, "acre-in/h", "gpm"), 450, 6e-3);
    expectClose(callNumber("UNIT.CONVERT", 1, "atm", "psi"), 14.7, 3e-4);
  },
);

published(
  {
    source: "NIST Special Publication 811 (2008), Guide for the Use of the SI",
    where:
      "Appendix B.8, conventional water column 2989.067 Pa a foot, at 4 °C and 1000 kg/m³, as open repositories copy it",
    seen: "read in a secondary text",
  },
  () => {
    // The head here is at 20 °C: 998.2 over 1000 of the conventional one.
    const pascals = callNumber("UNIT.CONVERT", 1, "ft of water", "Pa");
    expectClose(pascals, 2989.067 * 0.9982, 1e-6);
    expectClose(callNumber("UNIT.CONVERT", 1, "in of water", "Pa"), 249.0889 * 0.9982, 1e-6);
    expectClose(callNumber("UNIT.CONVERT", 1, "m of water", "Pa"), 9806.65 * 0.9982, 1e-9);
    expectClose(callNumber("UNIT.CONVERT", 1, "mm of water", "Pa"), 9.80665 * 0.9982, 1e-9);
  },
);

published(
  {
    source: "Fixed points of the temperature scales",
    where: "ice 32 °F and 0 °C, boiling 212 °F and 100 °C, the same at −40, absolute zero",
    seen: "closed form",
  },
  () => {
    const convert = (value: number, from: string, to: string) =>
      callNumber("UNIT.CONVERT", value, from, to);
    for (const [fahrenheit, celsius] of [
      [32, 0],
      [212, 100],
      [-40, -40],
      [68, 20],
    ]) {
      if (convert(fahrenheit, "°F", "°C") !== celsius) throw new Error(`${fahrenheit} °F`);
      if (convert(celsius, "°C", "°F") !== fahrenheit) throw new Error(`${celsius} °C`);
    }
    expectClose(convert(0, "°C", "K"), 273.15, 1e-12);
    expectClose(convert(0, "K", "°F"), -459.67, 1e-12);
  },
);
