import { callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];
/** Runs of 5 and 3 heads, head 1 at 20, 40 apart; the second rises 1 ft from head to head. */
const HEADS = [5, 3].flatMap((count, row) =>
  Array.from({ length: count }, (_, i) => {
    const along = 20 + 40 * i;
    return [row + 1, 1, i + 1, along, along, 50 * row, row * (i + 0.5)];
  }),
);
const TAIL = ["US", null, 150, null, 2] as const;
const run = (
  inlet: unknown,
  heads: unknown,
  spacing: unknown = 40,
  inside: unknown = 2,
  ...more: unknown[]
) =>
  callTable(
    "LATERAL.RUNS",
    inlet,
    heads,
    spacing,
    inside,
    CHART,
    ...(more.length > 0 ? more : TAIL),
  );
const error = (...cells: unknown[]) => callError("LATERAL.RUNS", ...cells).message;

test("each run is the line of its own heads on its own ground", () => {
  const table = run(55, HEADS, 40, 2, ...TAIL, 45);
  expect(table).toHaveLength(3);
  [5, 3].forEach((count, row) => {
    const rise = Array.from({ length: count }, (_, i) => [row * (i + 0.5)]);
    const line = [55, count, 40, 2, CHART, "US", rise, null, 150, 20, 2];
    const summary = callTable("LATERAL.SUMMARY", ...line).map(([, value]) => Number(value));
    const [position, number, heads, flow, lowest, highest, , variation, speed, inlet] =
      table[row + 1];
    expect([position, number, heads]).toEqual([row + 1, 1, count]);
    expectClose(flow, summary[0], 1e-9);
    expectClose(lowest, summary[1], 1e-9);
    expectClose(highest, summary[3], 1e-9);
    expectClose(variation, summary[6], 1e-9);
    // Row 10 of the line's own summary is its greatest speed.
    expectClose(speed, summary[9], 1e-9);
    expectClose(inlet, callNumber("LATERAL.INLET", 45, ...line.slice(1)), 1e-9);
  });
});

test("without a lowest there is no inlet column, without heights the ground is level", () => {
  const table = run(55, HEADS);
  expect(table[0]).toEqual([
    "position",
    "run",
    "heads",
    "flow (gpm)",
    "lowest nozzle pressure (psi)",
    "highest nozzle pressure (psi)",
    "highest line pressure (psi)",
    "pressure variation",
    "greatest speed (ft/s)",
  ]);
  const level = run(
    55,
    HEADS.map((row) => row.slice(0, 6)),
  );
  expect(level[1]).toEqual(table[1]);
  expect(Number(level[2][4])).toBeGreaterThan(Number(table[2][4]));
});

test("the highest line pressure is the inlet's uphill, that of the lowest ground downhill", () => {
  const falling = HEADS.map((row) => [...row.slice(0, 6), -20 * row[2]]);
  expectClose(run(55, HEADS)[2][6], 55, 1e-12);
  const table = run(55, falling);
  const profile = callTable(
    "LATERAL.PROFILE",
    55,
    5,
    40,
    2,
    CHART,
    "US",
    [[-20], [-40], [-60], [-80], [-100]],
    null,
    150,
    20,
    2,
  );
  expectClose(table[1][6], Math.max(...profile.slice(1).map((row) => Number(row[4]))), 1e-12);
  expect(Number(table[1][6])).toBeGreaterThan(55 + 30);
});

test("first blank is the table's own, run by run; given, it is for all; a head may stand at the near end", () => {
  const uneven = HEADS.map((row) =>
    row[0] === 2 ? [...row.slice(0, 3), row[3] - 20, ...row.slice(4)] : row,
  );
  const table = run(30, uneven, 40, 1);
  const flow = (heads: number, first: number, rise: unknown) =>
    callNumber("LATERAL.FLOW", 30, heads, 40, 1, CHART, "US", rise, null, 150, first, 2);
  expectClose(table[1][3], flow(5, 20, null), 1e-9);
  // A millionth of a foot stands for none.
  expectClose(table[2][3], flow(3, 1e-6, [[0.5], [1.5], [2.5]]), 1e-6);
  const given = run(30, uneven, 40, 1, "US", null, 150, 35, 2);
  expectClose(given[1][3], flow(5, 35, null), 1e-9);
  expectClose(given[2][3], flow(3, 35, [[0.5], [1.5], [2.5]]), 1e-9);
});

test("what is given head by head reaches to the longest run, and shorter runs use its beginning", () => {
  const sizes = [[2.2], [2.2], [1.2], [1.2], [1.2]];
  const table = run(55, HEADS, 40, sizes);
  const flow = callNumber(
    "LATERAL.FLOW",
    55,
    3,
    40,
    [[2.2], [2.2], [1.2]],
    CHART,
    "US",
    [[0.5], [1.5], [2.5]],
    null,
    150,
    20,
    2,
  );
  expectClose(table[2][3], flow, 1e-9);
  expect(
    run(55, HEADS, 40, [
      [2.2, 2],
      [1.2, 9],
    ]),
  ).toEqual(table);
  expect(run(55, HEADS, [[20], [40], [40], [40], [40], [40]], sizes)).toEqual(table);
  const regulated = run(80, HEADS, 40, 2, "US", [[40], [null], [40], [40], [40]], 150, null, 2);
  expect(Number(regulated[2][5])).toBeGreaterThan(60);
  expect(
    error(
      55,
      HEADS,
      40,
      [
        [2.2, 2],
        [1.2, 2],
      ],
      CHART,
    ),
  ).toBe("inside has 4 segments for the 5 heads of the longest run");
  expect(error(55, HEADS, [[20], [40]], 2, CHART)).toBe(
    "spacing has 2 values for the 5 heads of the longest run",
  );
  expect(error(55, HEADS, 40, 2, CHART, "US", [[40], [40]])).toBe(
    "regulator has 2 rows for the 5 heads of the longest run",
  );
});

test("both unit systems agree", () => {
  const FOOT = 0.3048;
  const PSI = 6.894757293168;
  const GPM = 0.2271247;
  const heads = HEADS.map(([position, number, head, ...lengths]) => [
    position,
    number,
    head,
    ...lengths.map((value) => value * FOOT),
  ]);
  const chart = CHART.map(([pressure, flow]) => [pressure * PSI, flow * GPM]);
  const si = callTable(
    "LATERAL.RUNS",
    55 * PSI,
    heads,
    40 * FOOT,
    2 * 25.4,
    chart,
    "SI",
    null,
    150,
    null,
    2 * FOOT,
    45 * PSI,
  );
  const us = run(55, HEADS, 40, 2, ...TAIL, 45);
  expect(si[0][3]).toBe("flow (m³/h)");
  expect(si[0][8]).toBe("greatest speed (m/s)");
  expect(si[0][9]).toBe("inlet for the lowest (kPa)");
  us.slice(1).forEach((row, i) => {
    expectClose(si[i + 1][3], Number(row[3]) * GPM, 1e-6);
    for (const column of [4, 5, 6, 9])
      expectClose(si[i + 1][column], Number(row[column]) * PSI, 1e-6);
    expectClose(si[i + 1][7], Number(row[7]), 1e-5);
    expectClose(si[i + 1][8], Number(row[8]) * FOOT, 1e-6);
  });
});

test("a table that is out of order, or in other units, is refused", () => {
  const changed = (row: number, column: number, cell: unknown) =>
    HEADS.map((old, i) => (i === row ? old.map((value, j) => (j === column ? cell : value)) : old));
  expect(error(55, HEADS.slice(1), 40, 2, CHART)).toBe(
    "heads row 1 head must be 1 of position 1, run 1; got 2",
  );
  expect(error(55, changed(2, 2, 5), 40, 2, CHART)).toBe(
    "heads row 3 head must be 3 of position 1, run 1; got 5",
  );
  expect(error(55, changed(2, 3, 60), 40, 2, CHART)).toBe(
    "heads row 3 along must be more than at the head before it",
  );
  expect(error(55, HEADS, 12.2, 2, CHART)).toBe(
    "spacing puts head 2 of position 1, run 1 12.2 ft behind head 1, the heads table 40 ft: give the spacing of the layout",
  );
  expect(run(55, HEADS, 40.3)).toHaveLength(3);
  expect(error(55, HEADS, 40.5, 2, CHART)).toMatch(/^spacing puts/);
  expect(error(55, [[1, 2, 3]], 40, 2, CHART)).toMatch(
    /^heads must be six or seven columns, as FIELD.HEADS gives them/,
  );
  expect(error(55, changed(1, 0, 501), 40, 2, CHART)).toMatch(
    /^heads row 2 position must be a whole number from 1 to 500/,
  );
  expect(error(55, changed(1, 1, 0), 40, 2, CHART)).toMatch(
    /^heads row 2 run must be a whole number/,
  );
  expect(error(55, changed(1, 6, "high"), 40, 2, CHART)).toBe(
    'heads row 2 height must be a number in ft; got "high"',
  );
  const tooMany = Array.from({ length: 5001 }, (_, i) => [
    1 + Math.floor(i / 20),
    1,
    1 + (i % 20),
    20 + 40 * (i % 20),
    1,
    1,
  ]);
  expect(error(55, tooMany, 40, 2, CHART)).toBe("heads must have 1 to 5000 rows; got 5001");
  expect(run(55, tooMany.slice(0, 5000))).toHaveLength(251);
});

test("the table as FIELD.HEADS spills it, header and all, is taken", () => {
  const field = [
    [0, 0],
    [300, 0],
    [250, 180],
    [0, 200],
  ];
  const heads = callTable("FIELD.HEADS", field, 90, 40, 50);
  expect(run(55, heads)).toEqual(run(55, heads.slice(1)));
});

test("heads that run dry show; a lowest that cannot be had names the run", () => {
  const steep = HEADS.map((row) => [...row.slice(0, 6), row[0] === 2 ? 60 * row[2] : 0]);
  const dry = run(40, steep)[2];
  expect(dry[4]).toBe(0);
  const allDry = run(
    10,
    steep.map((row) => [...row.slice(0, 6), 100]),
  );
  expect(allDry[1].slice(3)).toEqual([0, 0, 0, 10, "", 0]);
  const regulated = callError("LATERAL.RUNS", 55, HEADS, 40, 2, CHART, "US", 30, 150, null, 2, 40);
  expect(regulated.code).toBe("#N/A");
  expect(regulated.message).toMatch(
    /^lowest, as a target, in position 1, run 1: target is above what the regulators let through/,
  );
});
