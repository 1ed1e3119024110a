import { call, callNumber, callTable } from "../support/host";
import { expectClose, expectWithin } from "../support/published";
import { expectSame, type System, systems } from "./two-systems";

/**
 * Somebody who has only the help of the functions builds a sheet for Bluestem Flat, cell by cell:
 * from the feel of the soil between the fingers to the number of lines. The weather of the July day
 * is invented.
 */
function sheet({ units, typed, inUS }: System) {
  // The field: 630 ft by 700 ft of grass–clover hay on silt loam, 2 % slope.
  const length = typed(630, "ft", "m");
  const width = typed(700, "ft", "m");
  const area = typed((630 * 700) / 43560, "acre", "ha");

  // What the soil holds, how deep the roots go, what the weather takes.
  const capacity = callNumber("SOIL.AWC", "silt loam", units);
  const roots = callNumber("CROP.ROOT", "clover hay", units);
  const sun = callNumber("ET.SOLAR", 10.5, 41.5, 196);
  const reference = callNumber(
    "ET.REFERENCE",
    typed(62, "°F", "°C"),
    typed(88, "°F", "°C"),
    typed(60, "°F", "°C"),
    typed(5, "mph", "km/h"),
    sun,
    41.5,
    typed(1300, "ft", "m"),
    196,
    units,
  );
  const use = reference * callNumber("CROP.KC", "clover hay", "mid");
  const depletion = callNumber("CROP.DEPLETION", "clover hay", units, use);
  const net = callNumber("SOIL.NET", capacity, roots, depletion, units);
  const interval = callNumber("SYSTEM.INTERVAL", net, use);

  // Heads of 4.2 gpm at 45 ft, positions 50 ft apart: does the ground take it?
  const headFlow = typed(4.2, "gpm", "m³/h");
  const spacing = typed(45, "ft", "m");
  const move = typed(50, "ft", "m");
  const rate = callNumber("APPLICATION.RATE", headFlow, spacing, move, units);
  const intake = callNumber("SOIL.INTAKE", call("SOIL.PROFILE", "silt loam"), 2, units);
  const efficiency = callNumber("APPLICATION.EFFICIENCY", 0.82, 0.8, 0.95);

  // How long a set, how many a day, how many positions, how many lines.
  const hours = callNumber("SET.TIME", net, rate, efficiency);
  const setsADay = callNumber("SET.PERDAY", hours, 1);
  const positions = callNumber("SET.POSITIONS", width, move);
  const lines = callNumber("SYSTEM.LINES", positions, setsADay, interval);
  const heads = callNumber("LATERAL.HEADS", length, spacing);

  // What the source must give: the gross depth, round the field in the seven days of the plan.
  const gross = callNumber("APPLICATION.DEPTH", rate, hours);
  const flow = callNumber("SYSTEM.CAPACITY", area, gross, 7, hours, units);
  const volume = callNumber("SYSTEM.VOLUME", area, gross, units);

  return {
    numbers: {
      capacity: inUS(capacity, "in/ft", "mm/m"),
      roots: inUS(roots, "ft", "m"),
      sun,
      reference: inUS(reference, "in/day", "mm/day"),
      use: inUS(use, "in/day", "mm/day"),
      depletion,
      net: inUS(net, "in", "mm"),
      interval,
      rate: inUS(rate, "in/h", "mm/h"),
      intake: inUS(intake, "in/h", "mm/h"),
      efficiency,
      hours,
      setsADay,
      positions,
      lines,
      heads,
      gross: inUS(gross, "in", "mm"),
      flow: inUS(flow, "gpm", "m³/h"),
      volume: inUS(volume, "gal", "m³"),
    },
    runoff: call("CHECK.RATE", rate, intake),
    plan: callTable("SET.PLAN", lines, positions, hours, 1, 24, 6),
  };
}

describe.each(systems)("Bluestem Flat from soil to lines, $units", (system) => {
  const { numbers, runoff, plan } = sheet(system);

  test("the soil holds what its row of the table prints as the average", () => {
    expectWithin(numbers.capacity, 2, 1e-9);
    expectClose(numbers.roots, 0.6 / 0.3048, 1e-9);
  });

  test("the July day takes what the equations give by hand", () => {
    // e°(31.11 °C) = 4.523, e°(16.67 °C) = 1.897, so es = 3.210; ea = e°(15.56 °C) = 1.767 kPa.
    // Slope 0.1781, psychrometric constant 0.0643 kPa/°C, wind 2.235 m/s. Net short wave
    // 0.77 × 24.7 = 19.0, net long wave 4.31, so net radiation 14.7 MJ/m²/day.
    const byHand =
      (0.408 * 0.1781 * 14.7 + ((0.0643 * 900) / 296.89) * 2.235 * (3.21 - 1.767)) /
      (0.1781 + 0.0643 * (1 + 0.34 * 2.235));
    expectClose(numbers.reference, byHand / 25.4, 0.005);
    expectClose(numbers.use, (0.9 * byHand) / 25.4, 0.005);
    expectWithin(numbers.depletion, 0.5 + 0.04 * (5 - 0.9 * byHand), 0.002);
  });

  test("net depth and interval follow", () => {
    expectClose(numbers.net, 2 * 1.9685 * 0.49, 0.005); // 1.93 in
    expectWithin(numbers.interval, 1.93 / 0.206, 0.1); // a little over nine days
  });

  test("the ground takes the rate", () => {
    // 96.3 q/(S·M) on 45 ft by 50 ft.
    expectClose(numbers.rate, (96.3 * 4.2) / (45 * 50), 0.001);
    expectWithin(numbers.intake, 0.5, 1e-9);
    expect(runoff).toBe("OK");
  });

  test("a set, a day, a field", () => {
    const efficiency =
      (1 + (6.06 - 24.9 * 0.8 + 34.9 * 0.8 ** 2 - 18.6 * 0.8 ** 3) * (1 - 0.82)) * 0.95;
    expectClose(numbers.efficiency, efficiency, 1e-9);
    expectWithin(numbers.hours, 1.93 / (0.1797 * 0.771), 0.1); // about 14 h
    expect(numbers.setsADay).toBe(1);
    expect(numbers.positions).toBe(14);
    expect(numbers.heads).toBe(14);
    // One set a day, nine whole days: one line makes 9 of 14 positions, two are needed.
    expect(numbers.lines).toBe(2);
  });

  test("the lines' own flow is what the field needs", () => {
    // 14 heads by 45 ft by 14 positions by 50 ft is the field to the foot, so that two lines in
    // seven days at one set a day are exactly the flow that the depth on the area asks for.
    expectClose(numbers.flow, 2 * 14 * 4.2, 1e-6);
    expectClose(numbers.volume, 2 * 14 * 4.2 * 60 * 7 * numbers.hours, 1e-6);
  });

  test("the plan sends each line through its half of the field in seven days", () => {
    const rows = plan.slice(1);
    expect(rows).toHaveLength(14);
    expect(rows.map((row) => row[3]).sort((a, b) => Number(a) - Number(b))).toEqual(
      Array.from({ length: 14 }, (_, index) => index + 1),
    );
    for (const line of [1, 2]) {
      const days = rows.filter((row) => row[2] === line).map((row) => row[0]);
      expect(days).toEqual([1, 2, 3, 4, 5, 6, 7]);
    }
    expect(rows.every((row) => row[1] === 6)).toBe(true);
  });
});

test("both unit systems give the same sheet", () => {
  const [us, si] = systems.map((system) => sheet(system));
  expectSame(us!.numbers, si!.numbers);
  expect(si!.runoff).toBe(us!.runoff);
  expect(si!.plan).toEqual(us!.plan);
});
