import { call, callError, callNumber, callTable } from "../support/host";
import { expectClose, expectWithin } from "../support/published";
import { expectSame, inWords, type System, systems } from "./two-systems";

/** Gallons in 100 ft of pipe, by the square of its bore in inches: the handbooks' round number. */
const gallons = (inside: number, length: number) => (4.08 * inside ** 2 * length) / 100;

/**
 * October at Bluestem Flat: flush a line, let it drain, see what stays in the dips, tow it to the
 * shed. Built by somebody who has only the help of the functions.
 */
function sheet({ units, typed, inUS }: System) {
  const inches = (value: number) => typed(value, "in", "mm");
  const feet = (value: number) => typed(value, "ft", "m");
  const insides = [[inches(2.17)], [inches(1.72)]];
  const outsides = [[inches(2.48)], [inches(1.97)]];
  const lengths = [[feet(315)], [feet(315)]];
  const chart = [
    [35, 3.7],
    [45, 4.2],
    [55, 4.6],
  ].map(([pressure, flow]) => [typed(pressure!, "psi", "kPa"), typed(flow!, "gpm", "m³/h")]);
  const sections = [
    [inches(2.17), 7],
    [inches(1.72), 7],
  ];

  const speed = typed(2, "ft/s", "m/s");
  const flushFlow = callNumber("FLUSH.FLOW", inches(1.72), units, speed);
  const flushPressure = callNumber("FLUSH.PRESSURE", speed, 14, feet(45), sections, chart, units);
  const flushMinutes = callNumber("FLUSH.TIME", flushFlow, insides, lengths, units, 2);

  const held = callNumber("DRAIN.VOLUME", insides, lengths, units);
  // A dip 200 ft long that ends a foot above its bottom; the other end is two feet above it.
  const along = [[feet(0)], [feet(100)], [feet(200)]];
  const heights = [[feet(2)], [feet(0)], [feet(1)]];
  const trapped = callNumber("DRAIN.TRAPPED", along, heights, inches(2.17), units);
  const onlyHighEnd = callNumber("DRAIN.TRAPPED", along, heights, inches(2.17), units, "start");
  const drainMinutes = callNumber(
    "DRAIN.TIME",
    inches(1.94),
    feet(630),
    feet(12.6),
    units,
    inches(0.75),
  );

  const weigh = (contents: string) =>
    callNumber("TOW.WEIGHT", outsides, insides, lengths, 14, typed(6, "lb", "kg"), units, contents);
  const full = weigh("full");
  const drained = weigh("drained");
  const pullFull = callNumber("TOW.PULL", full, 0.7, units, 2);
  const pullDrained = callNumber("TOW.PULL", drained, 0.7, units, 2);
  const safe = callNumber("TOW.SAFEPULL", inches(1.97), 17, typed(2600, "psi", "kPa"), units);
  const bend = callNumber("TOW.BEND", inches(1.97), 17);

  return {
    numbers: {
      flushFlow: inUS(flushFlow, "gpm", "m³/h"),
      flushPressure: inUS(flushPressure, "psi", "kPa"),
      flushMinutes,
      held: inUS(held, "gal", "L"),
      trapped: inUS(trapped, "gal", "L"),
      onlyHighEnd: inUS(onlyHighEnd, "gal", "L"),
      drainMinutes,
      full: inUS(full, "lb", "kg"),
      drained: inUS(drained, "lb", "kg"),
      pullFull: inUS(pullFull, "lbf", "N"),
      pullDrained: inUS(pullDrained, "lbf", "N"),
      safe: inUS(safe, "lbf", "N"),
      bend: inUS(bend, "in", "mm"),
    },
    verdicts: [call("CHECK.PULL", pullFull, safe), call("CHECK.PULL", pullDrained, safe)],
  };
}

describe.each(systems)("Bluestem Flat at the end of the season, $units", (system) => {
  const { numbers, verdicts } = sheet(system);

  test("flush", () => {
    // V = 0.4085 Q/D², at 2 ft/s in the small tubing at the far end.
    expectClose(numbers.flushFlow, (2 * 1.72 ** 2) / 0.4085, 0.001); // 14.5 gpm
    expectClose(
      numbers.flushMinutes,
      (2 * (gallons(2.17, 315) + gallons(1.72, 315))) / numbers.flushFlow,
      0.001,
    );
    // With the heads shut the same flow would lose 2.0 psi; the heads near the inlet run, and those
    // take more through the first tubing. With all flow of a working line (58 gpm) it is 16 psi.
    const loss = (flow: number, inside: number) =>
      (1050 * (flow / 150) ** 1.852 * inside ** -4.87 * 315) / 100 / 2.311;
    expect(numbers.flushPressure).toBeGreaterThan(
      loss(numbers.flushFlow, 1.72) + loss(numbers.flushFlow, 2.17),
    );
    expect(numbers.flushPressure).toBeLessThan(loss(58, 2.17) + loss(58, 1.72));
  });

  test("drain", () => {
    expectClose(numbers.held, gallons(2.17, 315) + gallons(1.72, 315), 0.001); // 98.5 gal
    // Full up to the level of the lower end: half of the first run, all of the second.
    expectClose(numbers.trapped, gallons(2.17, 150), 0.001);
    // With that end shut the water stands to the level of the other one: nothing leaves.
    expectClose(numbers.onlyHighEnd, gallons(2.17, 200), 0.001);
    // Without friction the tank's formula gives 2·(A/a)·√L/(0.61·√(2g·slope)) = 8.1 min. Pipe
    // friction slows the start by 31 % and the end not at all: about 11 % in all, 9.0 min.
    const frictionless =
      (2 * (1.94 / 0.75) ** 2 * Math.sqrt(630)) / (0.61 * Math.sqrt(2 * 32.17 * 0.02)) / 60;
    expect(numbers.drainMinutes).toBeGreaterThan(frictionless * 1.07);
    expect(numbers.drainMinutes).toBeLessThan(frictionless * 1.16);
  });

  test("tow", () => {
    const area = (outside: number, inside: number) => (Math.PI / 4) * (outside ** 2 - inside ** 2);
    const feetCubed = (squareInches: number) => (squareInches / 144) * 315;
    // Polyethylene 59.31 lb/ft³, water 62.32 lb/ft³, 14 heads of 6 lb.
    const drained = feetCubed(area(2.48, 2.17) + area(1.97, 1.72)) * 59.31 + 84;
    const water = feetCubed(area(2.17, 0) + area(1.72, 0)) * 62.32;
    expectClose(numbers.drained, drained, 0.001);
    expectClose(numbers.full, drained + water, 0.001);
    const angle = Math.atan(0.02);
    const share = 0.7 * Math.cos(angle) + Math.sin(angle);
    expectClose(numbers.pullFull, (drained + water) * share, 0.001);
    expectClose(numbers.pullDrained, drained * share, 0.001);
    const pull = 0.4 * 2600 * Math.PI * 1.97 ** 2 * (1 / 17 - 1 / 17 ** 2);
    expectClose(numbers.safe, pull, 1e-6); // 702 lbf
    expectClose(numbers.bend, 27 * 1.97, 1e-9);
    // Full of water the line is too heavy for its small tubing, drained it is not.
    expect(verdicts[0]).toMatch(/^Pull is \d+; the allowable pull is \d+\. Drain the line first/);
    expect(verdicts[1]).toBe("OK");
  });
});

test("both unit systems give the same sheet", () => {
  const [us, si] = systems.map((system) => sheet(system));
  expectSame(us!.numbers, si!.numbers);
  expect(inWords({ ...si!.verdicts })).toEqual(inWords({ ...us!.verdicts }));
});

describe("next year's line, staked and priced", () => {
  test("flags for the heads and for the positions", () => {
    const flags = callTable("STAKE.FLAGS", 14, 45, "US", 22.5);
    expect(flags[0]).toEqual(["head", "distance (ft)"]);
    expect(flags).toHaveLength(15);
    expectWithin(flags[1]![1], 22.5, 1e-9);
    expectWithin(flags[14]![1], 22.5 + 13 * 45, 1e-9);

    // Positions go north from the near end of the first; a minute of latitude is about 1852 m, so
    // 13 moves of 50 ft (198.1 m) are 0.107 minutes. The lines lie to the east.
    const ends = callTable("STAKE.POSITIONS", 14, 50, "US", 630, 41.5, -97.25, 0);
    expect(ends).toHaveLength(29);
    expectClose(Number(ends[27]![3]) - 41.5, (13 * 50 * 0.3048) / 1852 / 60, 0.005);
    expectWithin(ends[27]![4], -97.25, 1e-9);
    expect(Number(ends[28]![4])).toBeGreaterThan(-97.25);
    expectWithin(ends[28]![2], 630, 1e-9);
  });

  // Two lines of 14 heads at 45 ft, the first half a spacing in, seven segments a size, 4 ft beyond
  // the last head; feeders of 320 ft; rolls of 300 ft.
  // 63 mm: 2 × (22.5 + 6·45) = 585 ft, 2 rolls; the 7.5 ft left over begin the second run: 1 joint.
  // 50 mm: 2 × (7·45 + 4) = 638 ft, 3 rolls; one joint a run. 75 mm: 640 ft, 3 rolls, one a run.
  const counted: readonly (readonly [string, number, number])[] = [
    ["tubing, 63 mm SDR 17, roll of 300 ft", 2, 330],
    ["tubing, 50 mm SDR 17, roll of 300 ft", 3, 210],
    ["tubing, 75 mm SDR 17, roll of 300 ft", 3, 480],
    ["straight coupler, 63 mm SDR 17", 1, 12.5],
    ["straight coupler, 50 mm SDR 17", 2, 9],
    ["straight coupler, 75 mm SDR 17", 2, 16],
    ["sprinkler head", 28, 11.25],
    ["saddle, 63 mm SDR 17", 14, 6],
    ["saddle, 50 mm SDR 17", 14, 5],
    ["stand", 28, 8],
    ["regulator", 28, 7],
    ["reducing coupler, 75 mm SDR 17 to 63 mm SDR 17", 2, 15],
    ["reducing coupler, 63 mm SDR 17 to 50 mm SDR 17", 2, 12],
    ["end cap, 50 mm SDR 17", 2, 4],
    ["quick connect, 75 mm SDR 17", 4, 22],
    ["hydrant connection with valve, gauge and screen", 2, 95],
    ["backflow device", 1, 240],
    ["flag", 28, 0.35],
  ];

  const bill = (feet: (value: number) => number, units: string) =>
    callTable(
      "BILL.MATERIALS",
      2,
      14,
      feet(45),
      [
        ["63 mm SDR 17", 7],
        ["50 mm SDR 17", 7],
      ],
      [["75 mm SDR 17", feet(320)]],
      units,
      feet(22.5),
      true,
      feet(300),
      feet(4),
    );

  test.each(systems)("the bill is what a crew counts by hand, $units", ({ units, typed }) => {
    const rows = bill((value) => typed(value, "ft", "m"), units).slice(1);
    expect(rows.map((row) => row[1])).toEqual(counted.map(([, quantity]) => quantity));
    if (units === "US") expect(rows.map((row) => row[0])).toEqual(counted.map(([item]) => item));
  });

  test("the quote adds up by hand, and names what it has no price for", () => {
    const prices = counted.map(([item, , price]) => [item, price]);
    const quote = callTable(
      "BILL.QUOTE",
      bill((value) => value, "US"),
      prices,
      0.15,
      0.06,
    );
    // Tubing 660 + 630 + 1440; couplers 12.50 + 18 + 32; heads 315; saddles 84 + 70; stands 224;
    // regulators 196; reducers 30 + 24; caps 8; connects 88; risers 190; backflow 240; flags 9.80.
    const subtotal = 2730 + 62.5 + 315 + 154 + 224 + 196 + 54 + 8 + 88 + 190 + 240 + 9.8;
    expect(subtotal).toBeCloseTo(4271.3, 9);
    // 15 % is 640.695, half up 640.70; 6 % of 4912.00 is 294.72.
    expect(quote.slice(-4).map((row) => [row[0], row[4]])).toEqual([
      ["subtotal", 4271.3],
      ["markup", 640.7],
      ["tax", 294.72],
      ["total", 5206.72],
    ]);

    const missing = callError(
      "BILL.QUOTE",
      bill((value) => value, "US"),
      prices.filter(([item]) => item !== "regulator"),
    );
    expect(missing.code).toBe("#N/A");
    expect(missing.message).toContain('"regulator"');
  });
});
