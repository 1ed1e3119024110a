import { callNumber, callTable } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source: "Utah State University course text on irrigation pumps",
    where: "water horsepower QH/3960 and brake horsepower, its quotient by the efficiency",
    seen: "read in a secondary text",
  },
  () => {
    // The printed 3960 is rounded, and taken with water of 62.4 lb/ft³: 0.04 %.
    expectClose(callNumber("PUMP.POWER", 396, 100, 1, "US"), 10, 0.001);
    expectClose(callNumber("PUMP.POWER", 500, 150, 0.75, "US"), (500 * 150) / 3960 / 0.75, 0.001);
  },
);

published(
  {
    source: "Crane Technical Paper No. 410",
    where: "Example 7.34: 700 gpm, 428 ft, pump efficiency 0.707, 107.0 brake horsepower",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(callNumber("PUMP.POWER", 700, 428, 0.707, "US"), 107.0, 0.001);
  },
);

published(
  {
    source: "Definition of power, P = ρgQH/η",
    where: "360 m³/h of 998.2 kg/m³ against 10 m at 0.8: 12.236 kW",
    seen: "closed form",
  },
  () => {
    expectClose(
      callNumber("PUMP.POWER", 360, 10, 0.8, "SI"),
      (998.2 * 9.80665 * 0.1 * 10) / 800,
      1e-12,
    );
  },
);

published(
  {
    source: "University of Nebraska–Lincoln Extension, pumping plant performance example",
    where: "600 gpm, 70 ft of lift and 60 psi: total dynamic head 208.6 ft at 2.31 ft a psi",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(callNumber("PUMP.TDH", 60, 70, 0, "US"), 70 + 60 * 2.31, 0.0005);
  },
);

published(
  {
    source: "Bernoulli's equation",
    where: "pressure and losses over ρg, lift, V²/2g, each on its own",
    seen: "closed form",
  },
  () => {
    const weight = 998.2 * 9.80665;
    expectClose(callNumber("PUMP.TDH", 300, 0, 0, "SI"), 300000 / weight, 1e-12);
    expectClose(callNumber("PUMP.TDH", 0, 0, 40, "SI"), 40000 / weight, 1e-12);
    expectClose(callNumber("PUMP.TDH", 0, -3, 0, "SI", 2), -3 + 4 / (2 * 9.80665), 1e-12);
  },
);

published(
  {
    source: "University of Nebraska–Lincoln Extension, Nebraska Pumping Plant Performance Criteria",
    where: "diesel 12.5, electricity 0.885, propane 6.89 water horsepower hours a unit",
    seen: "read in a secondary text",
  },
  () => {
    // 3960 gpm against 1 ft is one water horsepower by the printed formula.
    expectClose(callNumber("PUMP.ENERGY", 3960, 1, 12.5, "diesel", "US"), 1, 0.001);
    expectClose(callNumber("PUMP.ENERGY", 3960, 1, 0.885, "electric", "US"), 1, 0.001);
    expectClose(callNumber("PUMP.ENERGY", 3960, 1, 6.89, "propane", "US"), 1, 0.001);
  },
);

published(
  {
    source: "University of Nebraska–Lincoln Extension, Nebraska Pumping Plant Performance Criteria",
    where: "gasoline 8.66 a gallon and natural gas 61.7 a thousand cubic feet",
    seen: "from memory",
  },
  () => {
    expectClose(callNumber("PUMP.ENERGY", 3960, 1, 8.66, "gasoline", "US"), 1, 0.001);
    expectClose(callNumber("PUMP.ENERGY", 3960, 1, 61.7, "natural gas", "US"), 1, 0.001);
  },
);

published(
  {
    source:
      "University of Nebraska–Lincoln Extension, diesel to pump an acre-inch at 100 % of the criteria",
    where: "table of gallons by lift and pressure",
    seen: "read in a secondary text",
  },
  () => {
    // 452.571 gpm for an hour is an acre-inch.
    const table: [lift: number, psi: number, gallons: number][] = [
      [0, 35, 0.74],
      [0, 80, 1.69],
      [125, 35, 1.88],
      [125, 60, 2.4],
      [50, 20, 0.88],
      [100, 40, 1.75],
    ];
    for (const [lift, psi, gallons] of table) {
      const head = callNumber("PUMP.TDH", psi, lift, 0, "US");
      expectWithin(callNumber("PUMP.ENERGY", 452.571, head, 1, "diesel", "US"), gallons, 0.02);
    }
  },
);

published(
  {
    source: "University of Nebraska–Lincoln Extension, pumping plant performance example",
    where:
      "600 gpm, 70 ft and 60 psi on 4.0 gal of diesel an hour: 63.2 % of the criterion, worked by hand",
    seen: "read in a secondary text",
  },
  () => {
    const head = callNumber("PUMP.TDH", 60, 70, 0, "US");
    expectClose(callNumber("PUMP.ENERGY", 600, head, 1, "diesel", "US", 0.632), 4.0, 0.002);
  },
);

published(
  {
    source: "SciPy 1.17.1, PchipInterpolator and brentq",
    where:
      "meeting of (0,148) (20,146) (45,131) (60,120) (90,80) with (0,40) (30,58) (60,104) (90,171)",
    seen: "independent engine",
  },
  () => {
    const [, [flow, head]] = callTable(
      "PUMP.DUTY",
      [
        [0, 148],
        [20, 146],
        [45, 131],
        [60, 120],
        [90, 80],
      ],
      [
        [0, 40],
        [30, 58],
        [60, 104],
        [90, 171],
      ],
    );
    expectClose(flow, 65.5169211934411, 1e-12);
    expectClose(head, 114.50629461254793, 1e-12);
  },
);

published(
  {
    source: "Two straight lines",
    where: "100 − Q meets 20 + 3Q at Q 20, height 80",
    seen: "closed form",
  },
  () => {
    const pump = [
      [0, 100],
      [60, 40],
    ];
    const demand = [
      [5, 35],
      [40, 140],
    ];
    for (const units of ["US", "SI"]) {
      const [, [flow, head]] = callTable("PUMP.DUTY", pump, demand, units);
      expectClose(flow, 20, 1e-12);
      expectClose(head, 80, 1e-12);
    }
  },
);

published(
  {
    source: "Hydrostatics, p = ρgh",
    where:
      "150 ft at no flow, 20 ft of lift, lowest point 10 ft down: 140 ft of water at 2.311 ft a psi",
    seen: "closed form",
  },
  () => {
    const curve = [
      [0, 150],
      [100, 90],
    ];
    expectClose(callNumber("PUMP.STATIC", curve, 20, "US", 10), 140 / 2.311, 0.0002);
    expectClose(callNumber("PUMP.STATIC", curve, 20, "SI", 10), 140 * 9.78899803, 1e-9);
  },
);

published(
  {
    source: "Standard atmosphere of ICAO, as tests of open repositories tabulate it",
    where:
      "table of pressure by altitude: 1013.25, 898.746, 794.952 and 540.199 hPa at 0, 1, 2 and 5 km",
    seen: "read in a secondary text",
  },
  () => {
    // At 0 °C the vapor takes 0.6112 kPa (IAPWS); the rest of the head is the air's.
    const weight = 9.78899803; // kPa a meter of water
    const air = (altitude: number) =>
      callNumber("PUMP.NPSH", 0, 0, "SI", 0, altitude) * weight + 0.6112;
    expectWithin(air(0), 101.325, 0.001);
    expectWithin(air(1000), 89.8746, 0.001);
    expectWithin(air(2000), 79.4952, 0.001);
    expectWithin(air(5000), 54.0199, 0.001);
  },
);

published(
  {
    source: "Pump textbook example of net positive suction head",
    where:
      "open tank 6 ft above the pump: 33.9 + 6.0 − 0.839 − 2.0 − 2.0 = 35.06 ft, vapor head 0.839 ft that of 70 °F",
    seen: "read in a secondary text",
  },
  () => {
    // The example rounds the air's head and gives it at 20 °C; its two losses are added here.
    expectWithin(callNumber("PUMP.NPSH", -6, 4, "US", 70), 35.061, 0.1);
  },
);

published(
  {
    source: "IAPWS saturation pressure, by the chemicals library 1.5.2",
    where: "vapor takes 2.3393 kPa at 20 °C, 7.3849 kPa at 40 °C",
    seen: "independent engine",
  },
  () => {
    const npsh = (celsius: number) => callNumber("PUMP.NPSH", 0, 0, "SI", celsius);
    expectWithin(npsh(20) * 9.78899803, 101.325 - 2.3393, 0.002);
    expectWithin((npsh(20) - npsh(40)) * 9.78899803, 7.3849 - 2.3393, 0.003);
  },
);

published(
  {
    source: "SciPy 1.17.1, PchipInterpolator",
    where: "an efficiency and a suction head column of a pump's sheet, at flows between its points",
    seen: "independent engine",
  },
  () => {
    const efficiency = [
      [40, 0.48],
      [80, 0.66],
      [120, 0.71],
      [160, 0.64],
    ];
    for (const [flow, value] of [
      [60, 0.5908423913043478],
      [100, 0.6947826086956522],
      [118, 0.7098233695652174],
      [125, 0.70876953125],
      [150, 0.66921875],
    ]) {
      expectClose(callNumber("PUMP.CURVE", efficiency, flow), value, 1e-12);
    }
    const suctionHead = [
      [0, 6],
      [60, 6.4],
      [120, 9.1],
      [170, 15.5],
    ];
    for (const [flow, value] of [
      [30, 6.112903225806452],
      [90, 7.330306870176485],
      [150, 12.378309174934557],
      [165, 14.68001193969557],
    ]) {
      expectClose(callNumber("PUMP.CURVE", suctionHead, flow), value, 1e-12);
    }
  },
);

published(
  {
    source: "Fritsch and Carlson (1980), SIAM Journal on Numerical Analysis 17",
    where:
      "the interpolant passes through its data and stays between neighbors; a straight line is kept",
    seen: "closed form",
  },
  () => {
    const straight = [
      [0, 10],
      [10, 30],
      [40, 90],
    ];
    expectClose(callNumber("PUMP.CURVE", straight, 25), 60, 1e-12);
    const sheet = [
      [0, 148],
      [60, 141],
      [120, 124],
      [170, 98],
    ];
    for (const [flow, head] of sheet)
      expectClose(callNumber("PUMP.CURVE", sheet, flow), head, 1e-12);
    const between = callNumber("PUMP.CURVE", sheet, 90);
    expect(between).toBeGreaterThan(124);
    expect(between).toBeLessThan(141);
    // Read where the duty function finds it: a steep demand cuts the curve at its own flow.
    const [, [flow, head]] = callTable(
      "PUMP.DUTY",
      sheet,
      [
        [89.9, 0],
        [90.1, 300],
      ],
      "US",
    );
    expectClose(callNumber("PUMP.CURVE", sheet, flow), Number(head), 1e-9);
  },
);
