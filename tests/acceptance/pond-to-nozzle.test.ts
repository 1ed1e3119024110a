import { call, callNumber, callTable } from "../support/host";
import { expectClose, expectWithin } from "../support/published";
import { expectSame, inWords, type System, systems } from "./two-systems";

/** Feet of water in a psi, and head in ft per ft/s squared: the trade's round numbers. */
const FEET_A_PSI = 2.311;
const VELOCITY_HEAD = 1 / 64.35;

/**
 * The water's way at Bluestem Flat: pond, electric pump, main, riser, feeders, lines. Built by
 * somebody who has only the help of the functions, with one cell for the number of lines running.
 */
function sheet({ units, typed, inUS }: System, running: number) {
  const feet = (value: number) => typed(value, "ft", "m");
  const psi = (value: number) => typed(value, "psi", "kPa");
  const gpm = (value: number) => typed(value, "gpm", "m³/h");

  const curve = [
    [0, 148],
    [60, 141],
    [120, 124],
    [170, 98],
  ].map(([flow, head]) => [gpm(flow!), feet(head!)]);
  const chart = [
    [35, 3.7],
    [45, 4.2],
    [55, 4.6],
  ].map(([pressure, flow]) => [psi(pressure!), gpm(flow!)]);
  const lift = feet(12);

  // The tubing by the standard its marking names.
  const big = callNumber("PIPE.INSIDE", "ISO PE", 63, 17, units);
  const small = callNumber("PIPE.INSIDE", "ISO PE", 50, 17, units);
  const feederInside = callNumber("PIPE.INSIDE", "ISO PE", 75, 17, units);
  const choice = [50, 63, 75, 90, 110].map((size) =>
    callNumber("PIPE.INSIDE", "ISO PE", size, 17, units),
  );
  const mainLength = feet(250);
  // Two lines want 118 gpm; the main may cost 4 psi.
  const main = callNumber("PIPE.SIZE", gpm(118), mainLength, psi(4), [choice], units);

  const [flow, head, riser, inlet, lowest, average] = callTable(
    "PUMP.LINES",
    curve,
    lift,
    running,
    [[main, mainLength]],
    [[feederInside, feet(320)]],
    14,
    feet(45),
    [
      [big, 7],
      [small, 7],
    ],
    chart,
    units,
  ).map((row) => Number(row[1])) as [number, number, number, number, number, number];

  const mainLoss = callNumber("PIPE.FRICTION", flow, main, mainLength, units);
  const mainSpeed = callNumber("PIPE.VELOCITY", flow, main, units);
  const atRiser = callNumber(
    "FEEDER.PRESSURE",
    inlet,
    flow / running,
    feederInside,
    feet(320),
    units,
  );
  const asked = callNumber("PUMP.TDH", riser, lift, mainLoss, units);

  // Strength: shut valves at the lowest point, 13 ft below the riser; black tubing in the sun.
  const shut = callNumber("PUMP.STATIC", curve, lift, units, feet(13));
  const rating = callNumber("PIPE.RATING", "PE100", 17, units, typed(95, "°F", "°C"));
  const surge = callNumber(
    "PIPE.SURGE",
    flow / running,
    units === "US" ? callNumber("UNIT.CONVERT", 63, "mm", "in") : 63,
    big,
    units,
  );

  // The pond, the meter and the suction.
  const days = callNumber("SOURCE.DAYS", typed(900000, "gal", "m³"), flow, 11, units, gpm(15));
  const energy = callNumber("PUMP.ENERGY", flow, head, 11, "electric", units, 0.8);
  const suction = callNumber(
    "PUMP.NPSH",
    feet(8),
    feet(2.5),
    units,
    typed(75, "°F", "°C"),
    feet(1800),
  );

  return {
    numbers: {
      big: inUS(big, "in", "mm"),
      small: inUS(small, "in", "mm"),
      feederInside: inUS(feederInside, "in", "mm"),
      main: inUS(main, "in", "mm"),
      flow: inUS(flow, "gpm", "m³/h"),
      head: inUS(head, "ft", "m"),
      riser: inUS(riser, "psi", "kPa"),
      inlet: inUS(inlet, "psi", "kPa"),
      lowest: inUS(lowest, "psi", "kPa"),
      average: inUS(average, "gpm", "m³/h"),
      mainLoss: inUS(mainLoss, "psi", "kPa"),
      mainSpeed: inUS(mainSpeed, "ft/s", "m/s"),
      atRiser: inUS(atRiser, "psi", "kPa"),
      asked: inUS(asked, "ft", "m"),
      shut: inUS(shut, "psi", "kPa"),
      rating: inUS(rating, "psi", "kPa"),
      surge: inUS(surge, "psi", "kPa"),
      days,
      energy,
      suction: inUS(suction, "ft", "m"),
    },
    verdicts: {
      speed: call("CHECK.SPEED", mainSpeed, units, typed(5, "ft/s", "m/s")),
      strength: call("CHECK.PRESSURE", shut, rating),
      suction: call("CHECK.NPSH", suction, feet(9)),
      tooLittleSuction: call("CHECK.NPSH", suction, feet(25)),
    },
  };
}

describe.each(systems)("Bluestem Flat from pond to nozzle, $units", (system) => {
  const { numbers, verdicts } = sheet(system, 2);

  test("the main is the smallest of the list that stays within 4 psi and 5 ft/s", () => {
    // 118 gpm: V = 0.4085 Q/D². 90 mm tubing (wall about 5.6 mm, bore 3.10 in) runs at 5.01 ft/s and
    // just misses; 110 mm (wall about 6.9 mm, bore 3.79 in) is the next.
    expect((0.4085 * 118) / 3.102 ** 2).toBeGreaterThan(5);
    expectClose(numbers.main, 3.79, 0.005);
    expectClose(numbers.mainSpeed, (0.4085 * numbers.flow) / numbers.main ** 2, 1e-3);
    expect(verdicts.speed).toBe("OK");
  });

  test("every foot that the pump gives is found again", () => {
    // J = 1050 (Q/C)^1.852 D^−4.87 ft per 100 ft.
    const loss = (flow: number, inside: number, length: number) =>
      (1050 * (flow / 150) ** 1.852 * inside ** -4.87 * length) / 100;
    expectClose(numbers.mainLoss, loss(numbers.flow, numbers.main, 250) / FEET_A_PSI, 0.001);
    expectClose(numbers.asked, numbers.head, 1e-6);
    expectClose(
      numbers.head,
      12 + loss(numbers.flow, numbers.main, 250) + numbers.riser * FEET_A_PSI,
      0.001,
    );
    expectClose(numbers.atRiser, numbers.riser, 1e-6);
    expectClose(
      numbers.riser - numbers.inlet,
      loss(numbers.flow / 2, numbers.feederInside, 320) / FEET_A_PSI,
      0.001,
    );
    // Between the points (60, 141) and (120, 124) of the curve, above the straight line.
    expect(numbers.head).toBeGreaterThan(141 - (17 / 60) * (numbers.flow - 60));
    expect(numbers.head).toBeLessThan(130);
    // Two lines of 14 heads; each head between the chart's 3.7 and 4.6 gpm.
    expectClose(numbers.flow, 2 * 14 * numbers.average, 1e-9);
    expect(numbers.average).toBeGreaterThan(3.7);
    expect(numbers.average).toBeLessThan(4.6);
    expect(numbers.lowest).toBeLessThan(numbers.inlet);
  });

  test("one more line takes pressure from all", () => {
    const more = sheet(system, 3).numbers;
    for (const name of ["head", "riser", "inlet", "lowest", "average"] as const) {
      expect(more[name]).toBeLessThan(numbers[name]);
    }
    expect(more.flow).toBeGreaterThan(numbers.flow);
    expect(more.flow).toBeLessThan((numbers.flow * 3) / 2);
  });

  test("the tubing bears shut valves in the sun", () => {
    expectClose(numbers.shut, (148 - 12 + 13) / FEET_A_PSI, 0.0005); // 64.5 psi
    // 2·8 MPa/16 = 1000 kPa = 145 psi at 20 °C; at 35 °C halfway between 0.87 and 0.74.
    expectClose(numbers.rating, (1000 * 0.805) / 6.894757, 1e-6);
    expect(verdicts.strength).toBe("OK");
  });

  test("a valve slammed shut adds about as much again", () => {
    // Wall (63 mm − bore)/2; K/E is 2.
    const wall = (63 / 25.4 - numbers.big) / 2;
    const wave = 4660 / Math.sqrt(1 + (2 * numbers.big) / wall);
    const speed = (0.4085 * numbers.flow) / 2 / numbers.big ** 2;
    expectClose(numbers.surge, (wave * speed * 2 * VELOCITY_HEAD) / FEET_A_PSI, 0.002);
  });

  test("the pond, the meter and the suction", () => {
    expectClose(numbers.days, 900000 / (numbers.flow * 60 * 11 - 15 * 60 * 24), 1e-6);
    // Water horsepower QH/3960, 0.885 of it for a kWh at the criterion.
    expectClose(
      numbers.energy,
      (((numbers.flow * numbers.head) / 3960) * 11) / (0.885 * 0.8),
      0.002,
    );
    // 33.96 ft of air at the sea, 0.937 of it at 1800 ft; water at 75 °F boils at 0.99 ft.
    expectWithin(numbers.suction, 33.96 * 0.937 - 0.99 - 8 - 2.5, 0.1);
    expect(verdicts.suction).toBe("OK");
    expect(verdicts.tooLittleSuction).toMatch(
      system.units === "US"
        ? /^Suction head available is 20\.3; the pump requires 25\./
        : /^Suction head available is 6\.19; the pump requires 7\.62\./,
    );
  });
});

test("both unit systems give the same sheet", () => {
  for (const running of [1, 2, 3]) {
    const [us, si] = systems.map((system) => sheet(system, running));
    expectSame(us!.numbers, si!.numbers);
    expect(inWords(si!.verdicts)).toEqual(inWords(us!.verdicts));
  }
});
