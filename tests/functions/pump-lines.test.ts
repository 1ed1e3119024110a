import { callError, callTable } from "../support/host";
import { expectClose } from "../support/published";

const CURVE = [
  [0, 148],
  [60, 141],
  [120, 124],
  [170, 98],
];
const MAIN = [[2.9, 250]];
const FEEDER = [[2.6, 320]];
const SIZES = [
  [2.16, 7],
  [1.72, 7],
];
const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];

interface Options {
  curve?: unknown;
  lift?: unknown;
  running?: unknown;
  main?: unknown;
  feeder?: unknown;
  tail?: unknown[];
}

function cells(options: Options): unknown[] {
  const { curve = CURVE, lift = 12, running = 2, main = MAIN, feeder = FEEDER } = options;
  const line = [14, 45, SIZES, CHART, "US"];
  return [curve, lift, running, main, feeder, ...line, ...(options.tail ?? [])];
}

const ask = (options: Options = {}) =>
  callTable("PUMP.LINES", ...cells(options)).map((row) => row[1] as number);
const error = (options: Options) => callError("PUMP.LINES", ...cells(options));

test("six labels, and values that close on the pump, the pipes and the line", () => {
  const table = callTable("PUMP.LINES", ...cells({}));
  expect(table.map(([label]) => label)).toEqual([
    "flow of all lines (gpm)",
    "pump head (ft)",
    "hydrant pressure (psi)",
    "lateral inlet pressure (psi)",
    "lowest nozzle pressure (psi)",
    "average flow per sprinkler (gpm)",
  ]);
  const [flow, head, riser, inlet, lowest, average] = ask();
  expect(average).toBeCloseTo(flow / 28, 9);
  // The line by itself at that inlet pressure.
  const summary = new Map(
    callTable("LATERAL.SUMMARY", inlet, 14, 45, SIZES, CHART) as [string, number][],
  );
  expectClose(summary.get("flow into the lateral (gpm)"), flow / 2, 1e-7);
  expectClose(summary.get("lowest nozzle pressure (psi)"), lowest, 1e-7);
  // Friction of the feeder by one line's flow, of the main by both.
  const lossOf = (rate: number, [[bore, length]]: number[][]) =>
    ((1050 * (rate / 150) ** 1.852 * bore ** -4.87) / 100) * length;
  expectClose(riser - inlet, lossOf(flow / 2, FEEDER) / 2.311, 0.0005);
  expectClose(head - 12 - riser * 2.311, lossOf(flow, MAIN), 0.02);
});

test("US and SI agree", () => {
  const gpm = 0.2271247;
  const psi = 6.894757293;
  const si = callTable(
    "PUMP.LINES",
    CURVE.map(([flow, head]) => [flow * gpm, head * 0.3048]),
    12 * 0.3048,
    2,
    [[2.9 * 25.4, 250 * 0.3048]],
    [[2.6 * 25.4, 320 * 0.3048]],
    14,
    45 * 0.3048,
    SIZES.map(([bore, count]) => [bore * 25.4, count]),
    CHART.map(([pressure, flow]) => [pressure * psi, flow * gpm]),
    "SI",
  );
  expect(si[0][0]).toBe("flow of all lines (m³/h)");
  [gpm, 0.3048, psi, psi, psi, gpm].forEach((factor, i) => {
    expectClose(si[i][1], ask()[i] * factor, 1e-6);
  });
});

test("more lift, more lines, a longer main and a rise each leave less", () => {
  const lowest = (options: Options) => ask(options)[4];
  const plain = lowest({});
  expect(lowest({ lift: 20 })).toBeLessThan(plain);
  expect(lowest({ lift: -5 })).toBeGreaterThan(plain);
  expect(lowest({ running: 3 })).toBeLessThan(plain);
  expect(lowest({ running: 1 })).toBeGreaterThan(plain);
  expect(lowest({ main: [...MAIN, [2.2, 60]] })).toBeLessThan(plain);
  expect(lowest({ feeder: [[2.6, 400]] })).toBeLessThan(plain);
  expect(lowest({ tail: [8] })).toBeLessThan(plain);
  expect(lowest({ tail: [null, null, 130] })).toBeLessThan(plain);
  expect(lowest({ tail: [null, null, null, null, 3] })).toBeLessThan(plain);
  expect(ask({ tail: [null, 30] })[4]).toBeCloseTo(30, 6);
  // A size that is listed and not laid.
  expect(ask({ main: [...MAIN, [2.2, 0]] })).toEqual(ask());
});

test("what the pump and its curve cannot answer is said", () => {
  expect(error({ lift: 148 })).toMatchObject({
    code: "#N/A",
    message: "the pump does not lift the water to the lowest head: check curve, lift and rise",
  });
  expect(error({ running: 5 })).toMatchObject({
    code: "#N/A",
    message:
      "the lines take more water than the last point of curve gives: run fewer of them, or carry the curve to more flow",
  });
  expect(
    error({ curve: CURVE.slice(1), running: 1, tail: [null, null, null, null, 40] }),
  ).toMatchObject({
    code: "#N/A",
    message:
      "the lines take less water than the falling part of curve begins with: run more of them, or carry the curve to less flow",
  });
});

test("a curve that rises first is used from its highest head on", () => {
  const humped = [[0, 139], [30, 143], ...CURVE.slice(1)];
  expectClose(ask({ curve: humped })[0], ask()[0], 0.01);
  // On the rising part it does not run steadily.
  const late = [
    [0, 120],
    [150, 150],
    [200, 90],
  ];
  expect(error({ curve: late, running: 1 }).message).toMatch(/^the lines take less water/);
});

test("heads that run dry leave a lowest pressure of 0", () => {
  const [, , , , lowest] = ask({ tail: [140] });
  expect(lowest).toBe(0);
});

test("each argument is named when it is wrong", () => {
  expect(error({ running: 0 }).message).toBe("running must be a whole number from 1 to 100; got 0");
  expect(error({ running: 101 }).message).toMatch(/^running must be a whole number from 1 to 100/);
  expect(error({ lift: "high" }).message).toMatch(/^lift must be a number/);
  expect(error({ main: [[2, 10, 1]] }).message).toMatch(
    /^main must be two columns, inside diameter \(in\) and length \(ft\)/,
  );
  expect(error({ main: [[2, -10]] }).message).toBe(
    "main row 1 length must be 0 ft or more; got -10",
  );
  expect(error({ feeder: [[0, 10]] }).message).toBe(
    "feeder row 1 inside diameter must be above 0 in; got 0",
  );
  expect(error({ curve: [[10, 50]] }).message).toMatch(/^curve must have two points or more/);
});
