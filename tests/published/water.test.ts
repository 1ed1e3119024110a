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
    where: "density, kinematic viscosity and vapour pressure at 101.325 kPa, 5 to 40 °C",
    seen: "independent engine",
  },
  () => {
    for (const [temperature, density, viscosity, vapour] of IAPWS) {
      expectWithin(callNumber("WATER.DENSITY", temperature, "SI"), density, 0.01);
      expectClose(callNumber("WATER.VISCOSITY", temperature, "SI"), viscosity * 1e-6, 0.0005);
      expectClose(callNumber("WATER.VAPOR", temperature, "SI"), vapour, 0.0002);
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
    for (const [temperature, density, viscosity, vapour] of printed) {
      expectWithin(callNumber("WATER.DENSITY", temperature, "SI"), density, 0.06);
      expectWithin(callNumber("WATER.VISCOSITY", temperature, "SI") * 1e6, viscosity, 0.0011);
      expectWithin(callNumber("WATER.VAPOR", temperature, "SI"), vapour, 0.011);
    }
  },
);

published(
  {
    source: "IAPWS SR1-86 (1992), Saturation properties of ordinary water substance",
    where: "check values: 611.657 Pa at 273.16 K; 101 325 Pa at 373.1243 K",
    seen: "from memory",
  },
  () => {
    expectClose(callNumber("WATER.VAPOR", 0.01, "SI"), 0.611657, 1e-5);
    expectClose(callNumber("WATER.VAPOR", 373.1243 - 273.15, "SI"), 101.325, 1e-5);
  },
);

published(
  {
    source: "IAPWS SR6-08 (2011), Properties of liquid water at 0.1 MPa",
    where: "check value of the viscosity at 298.15 K, 889.996774 µPa·s",
    seen: "from memory",
  },
  () => {
    const density = callNumber("WATER.DENSITY", 25, "SI");
    expectClose(callNumber("WATER.VISCOSITY", 25, "SI") * density, 889.996774e-6, 1e-8);
  },
);

published(
  {
    source: "Kell (1975), Journal of Chemical and Engineering Data 20",
    where: "density of water: greatest near 4 °C, 999.972 kg/m³; 958.36 kg/m³ at 100 °C",
    seen: "from memory",
  },
  () => {
    const at = (temperature: number) => callNumber("WATER.DENSITY", temperature, "SI");
    expectWithin(at(3.98), 999.972, 0.001);
    expectWithin(at(100), 958.36, 0.01);
    for (const warmer of [3.9, 4.1]) {
      if (at(warmer) > at(3.98) + 1e-4) throw new Error("water is densest near 4 °C");
    }
  },
);
