import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

/** °C, kg/m³, mm²/s, kPa. */
const IAPWS: readonly [number, number, number, number][] = [
  [5, 999.967, 1.5182, 0.8726],
  [10, 999.702, 1.3063, 1.2282],
  [15, 999.103, 1.1386, 1.7058],
  [20, 998.207, 1.0034, 2.3393],
  [25, 997.048, 0.8927, 3.1699],
  [30, 995.649, 0.8007, 4.247],
  [40, 992.216, 0.6578, 7.3849],
];

published(
  {
    source: "IAPWS formulations by the open library chemicals 1.5.2",
    where: "density, kinematic viscosity and vapor pressure at 101.325 kPa, 5 to 40 °C",
    seen: "independent engine",
  },
  () => {
    for (const [temperature, density, viscosity, vapor] of IAPWS) {
      expectWithin(callNumber("WATER.DENSITY", temperature, "SI"), density, 0.01);
      expectClose(callNumber("WATER.VISCOSITY", temperature, "SI"), viscosity * 1e-6, 0.0005);
      expectClose(callNumber("WATER.VAPOR", temperature, "SI"), vapor, 0.0002);
    }
  },
);

published(
  {
    source:
      "Physical properties of water (SI), appendix table C-1 of a fluid-mechanics text (Wiley)",
    where: "rows at 10, 20 and 30 °C",
    seen: "read in a secondary text",
  },
  () => {
    const printed: readonly [number, number, number, number][] = [
      [10, 999.7, 1.306, 1.23],
      [20, 998.2, 1.003, 2.34],
      [30, 995.7, 0.8, 4.24],
    ];
    for (const [temperature, density, viscosity, vapor] of printed) {
      expectWithin(callNumber("WATER.DENSITY", temperature, "SI"), density, 0.06);
      expectWithin(callNumber("WATER.VISCOSITY", temperature, "SI") * 1e6, viscosity, 0.0011);
      expectWithin(callNumber("WATER.VAPOR", temperature, "SI"), vapor, 0.011);
    }
  },
);

published(
  {
    source:
      "Saturation properties of ordinary water substance, Journal of Physical and Chemical Reference Data 22 (1993)",
    where: "table 1: 611.657 Pa at 273.16 K; 101 325 Pa and 958.365 kg/m³ at 373.1243 K",
    seen: "read",
  },
  () => {
    expectClose(callNumber("WATER.VAPOR", 0.01, "SI"), 0.611657, 1e-5);
    expectClose(callNumber("WATER.VAPOR", 373.1243 - 273.15, "SI"), 101.325, 1e-5);
    expectWithin(callNumber("WATER.DENSITY", 373.1243 - 273.15, "SI"), 958.365, 0.03);
  },
);

published(
  {
    source: "IAPWS SR6-08 (2011), Properties of liquid water at 0.1 MPa",
    where:
      "table 8 as tests of open libraries quote it, 298.15 K: 889.996774 µPa·s, 997.047013 kg/m³",
    seen: "read in a secondary text",
  },
  () => {
    const density = callNumber("WATER.DENSITY", 25, "SI");
    expectClose(callNumber("WATER.VISCOSITY", 25, "SI") * density, 889.996774e-6, 1e-8);
    expectWithin(density, 997.047013, 0.003);
  },
);

published(
  {
    source: "NIST Special Publication 811 (2008), Guide for the Use of the SI",
    where:
      "Appendix B.8 as open repositories copy it: a foot of water at 39.2 °F is 2988.98 Pa, a centimeter at 4 °C 98.0638 Pa, so 999.972 kg/m³",
    seen: "read in a secondary text",
  },
  () => {
    const at = (temperature: number) => callNumber("WATER.DENSITY", temperature, "SI");
    expectWithin(at(4), 2988.98 / (0.3048 * 9.80665), 0.002);
    expectWithin(at(4), 98.0638 / (0.01 * 9.80665), 0.002);
    for (const warmer of [3.9, 4.1]) {
      if (at(warmer) > at(3.98) + 1e-4) throw new Error("water is densest near 4 °C");
    }
  },
);
