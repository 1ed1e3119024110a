import { callNumber } from "../support/host";
import { expectClose, published } from "../support/published";

published(
  {
    source: "ASTM F1804, allowable tensile load",
    where:
      "ATL = f_y f_t T_y π D² (1/DR − 1/DR²): 2.375 in DR 11 at 3500 psi for 1 to 12 h, worked by hand: 1948 lbf",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(callNumber("TOW.SAFEPULL", 2.375, 11, 3500, "US", null, 120), 1948, 0.0005);
  },
);

published(
  {
    source: "ASTM F1804, allowable tensile load",
    where: "40 mm SDR 17 for 1 to 12 h, worked by hand: 574 lbf at 3500 psi, 426 at 2600",
    seen: "closed form",
  },
  () => {
    const lbf = 4.4482216152605;
    const kPa = 6.894757293168;
    expectClose(callNumber("TOW.SAFEPULL", 40, 17, 3500 * kPa, "SI", null, 120), 574 * lbf, 0.001);
    expectClose(callNumber("TOW.SAFEPULL", 40, 17, 2600 * kPa, "SI", null, 120), 426 * lbf, 0.001);
  },
);

published(
  {
    source: "ASTM F1804-08, design factors",
    where:
      "as an open web page quotes them: 0.4 of yield where the maker gives none; 1.00 up to 1 h, 0.95 to 12 h, 0.91 to 24 h",
    seen: "read in a secondary text",
  },
  () => {
    const wall = Math.PI * 4 * (1 / 17 - 1 / 289);
    const share = (minutes: number) =>
      callNumber("TOW.SAFEPULL", 2, 17, 3000, "US", null, minutes) / (3000 * wall);
    expectClose(share(1), 0.4, 1e-9);
    expectClose(share(60), 0.4, 1e-9);
    expectClose(share(61), 0.38, 1e-9);
    expectClose(share(720), 0.38, 1e-9);
    expectClose(share(721), 0.364, 1e-9);
    expectClose(share(1440), 0.364, 1e-9);
  },
);

published(
  {
    source: "Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition",
    where:
      "temperature factors 1 at 73 °F, 0.94 at 80, 0.86 at 90, 0.78 at 100, 0.64 at 120, 0.50 at 140",
    seen: "from memory",
  },
  () => {
    const cold = callNumber("TOW.SAFEPULL", 2, 17, 3000, "US");
    const table: [fahrenheit: number, factor: number][] = [
      [20, 1],
      [73, 1],
      [80, 0.94],
      [90, 0.86],
      [100, 0.78],
      [120, 0.64],
      [140, 0.5],
    ];
    for (const [fahrenheit, factor] of table) {
      expectClose(callNumber("TOW.SAFEPULL", 2, 17, 3000, "US", fahrenheit) / cold, factor, 1e-9);
    }
  },
);

published(
  {
    source: "Plastics Pipe Institute, Handbook of Polyethylene Pipe",
    where:
      "least cold bending radius: 25 outside diameters at DR 11 to 13.5, 27 at 17 to 21, 34 at 26",
    seen: "read in a secondary text",
  },
  () => {
    const table: [rating: number, diameters: number][] = [
      [11, 25],
      [13.5, 25],
      [17, 27],
      [21, 27],
      [26, 34],
    ];
    for (const [rating, diameters] of table) {
      expectClose(callNumber("TOW.BEND", 2.375, rating), 2.375 * diameters, 1e-12);
    }
  },
);

published(
  {
    source: "The volume of a tube",
    where: "π/4 (D² − d²) L of polyethylene at 950 kg/m³, π/4 d² L of water at 998.2 kg/m³",
    seen: "closed form",
  },
  () => {
    const wall = (Math.PI / 4) * (0.063 ** 2 - 0.0554 ** 2) * 100 * 950;
    const water = (Math.PI / 4) * 0.0554 ** 2 * 100 * 998.2;
    expectClose(callNumber("TOW.WEIGHT", 63, 55.4, 100, 0, 0, "SI", "drained"), wall, 1e-12);
    expectClose(callNumber("TOW.WEIGHT", 63, 55.4, 100, 8, 2.5, "SI"), wall + water + 20, 1e-12);
  },
);

published(
  {
    source: "Extension table of water in pipe",
    where: "2 in holds 16.32 gal a 100 ft; a gallon of water weighs 8.33 lb",
    seen: "read in a secondary text",
  },
  () => {
    const full = callNumber("TOW.WEIGHT", 2.375, 2, 100, 0, 0, "US", "full");
    const drained = callNumber("TOW.WEIGHT", 2.375, 2, 100, 0, 0, "US", "drained");
    expectClose(full - drained, 16.32 * 8.33, 0.001);
  },
);

published(
  {
    source: "Coulomb friction on a slope",
    where: "F = m g (μ cos θ + sin θ); on a 3–4–5 slope of 75 % cos is 0.8 and sin 0.6",
    seen: "closed form",
  },
  () => {
    expectClose(callNumber("TOW.PULL", 100, 0.5, "SI", 75), 100 * 9.80665 * 1.0, 1e-12);
    expectClose(callNumber("TOW.PULL", 400, 0.45, "US"), 180, 1e-12);
    expectClose(callNumber("TOW.PULL", 400, 1, "US", -75), 400 * (0.8 - 0.6), 1e-9);
  },
);

published(
  {
    source: "Bending plastic pipe in the field, a training column (2016)",
    where: "with a fitting in the curve the radius is limited to 100 times the pipe diameter",
    seen: "read",
  },
  () => {
    expectClose(callNumber("TOW.BEND", 2, 11, true), 200, 1e-12);
  },
);
