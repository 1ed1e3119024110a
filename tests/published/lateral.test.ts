import { call, callNumber, callTable } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

/**
 * Heads that give the same flow at any pressure (a flat chart) make a line whose pressures are plain
 * sums: the flow in the nth segment from the end is n heads' worth.
 */
const FLAT = [
  [20, 4],
  [60, 4],
];
const PSI_PER_FOOT = 1 / 2.311;

/** Pressure lost in one segment, psi, by the handbook's J = 1050 (Q/C)^1.852 D^−4.87. */
function segmentLoss(flow: number, bore: number, length: number, c = 150): number {
  return ((1050 * (flow / c) ** 1.852 * bore ** -4.87) / 100) * length * PSI_PER_FOOT;
}

/** Pressures from the inlet on, psi. */
function pressures(inlet: number, bores: readonly number[], spacing: number, slope = 0): number[] {
  let pressure = inlet;
  return bores.map((bore, i) => {
    pressure -= segmentLoss(4 * (bores.length - i), bore, spacing) + slope * spacing * PSI_PER_FOOT;
    return pressure;
  });
}

function variationOf(values: readonly number[]): number {
  const average = values.reduce((sum, value) => sum + value, 0) / values.length;
  return (Math.max(...values) - Math.min(...values)) / average;
}

const alike = (count: number, bore: number) => new Array<number>(count).fill(bore);

published(
  {
    source: "Sums over a line of heads with constant flow",
    where: "pressure, flow, variation and inlet of 9 heads, two sizes, 2 % uphill",
    seen: "closed form",
  },
  () => {
    const expected = pressures(60, [...alike(4, 1.7), ...alike(5, 1.4)], 32, 0.02);
    const sizes = [
      [1.7, 4],
      [1.4, 5],
    ];
    const tail = [32, sizes, FLAT, "US", 0.02 * 32 * 9];
    for (const n of [1, 4, 5, 9]) {
      expectClose(callNumber("LATERAL.PRESSURE", n, 60, 9, ...tail), expected[n - 1], 0.0003);
      expectClose(callNumber("LATERAL.HEADFLOW", n, 60, 9, ...tail), 4, 1e-9);
    }
    expectClose(callNumber("LATERAL.FLOW", 60, 9, ...tail), 36, 1e-9);
    expectClose(callNumber("LATERAL.VARIATION", 60, 9, ...tail), variationOf(expected), 0.0005);
    expectClose(callNumber("LATERAL.INLET", expected[8], 9, ...tail), 60, 0.0003);

    const profile = callTable("LATERAL.PROFILE", 60, 9, ...tail).slice(1);
    expect(profile.map((row) => row[0])).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    profile.forEach((row, i) => {
      const flow = 4 * (9 - i);
      const bore = i < 4 ? 1.7 : 1.4;
      expectClose(row[1], 32 * (i + 1), 1e-9);
      expectClose(row[2], 0.64 * (i + 1), 1e-9);
      expectClose(row[3], bore, 1e-9);
      expectClose(row[4], expected[i], 0.0003);
      expectClose(row[5], expected[i], 0.0003);
      expectClose(row[7], flow, 1e-9);
      // V = 0.4085 Q/D²
      expectClose(row[8], (0.4085 * flow) / bore ** 2, 0.0002);
      expectClose(row[9], segmentLoss(flow, bore, 32), 0.0003);
    });

    const summary = new Map(callTable("LATERAL.SUMMARY", 60, 9, ...tail) as [string, number][]);
    expectClose(summary.get("flow into the lateral (gpm)"), 36, 1e-9);
    expectClose(summary.get("lowest nozzle pressure (psi)"), expected[8], 0.0003);
    expectClose(summary.get("length (ft)"), 288, 1e-9);
  },
);

published(
  {
    source: "Sums over a line of heads with constant flow",
    where: "the most heads within a variation, a lowest pressure or a speed, each counted by hand",
    seen: "closed form",
  },
  () => {
    const most = (passes: (heads: number) => boolean) => {
      let heads = 0;
      while (passes(heads + 1)) heads++;
      return heads;
    };
    const line = [60, 32, 1.4, FLAT, "US"];
    const within = most((heads) => variationOf(pressures(60, alike(heads, 1.4), 32)) <= 0.2);
    expect(call("LATERAL.MAXHEADS", 0.2, ...line)).toBe(within);

    const uphill = most((heads) => Math.min(...pressures(60, alike(heads, 1.4), 32, 0.03)) >= 45);
    const tail = [3, null, null, null, null];
    expect(call("LATERAL.MAXHEADS", 9, ...line, ...tail, 45)).toBe(uphill);

    const slow = most((heads) => (0.4085 * 4 * heads) / 1.4 ** 2 <= 5);
    expect(call("LATERAL.MAXHEADS", 9, ...line, 0, null, null, null, null, null, 5)).toBe(slow);
    expect(new Set([within, uphill, slow]).size).toBe(3);
  },
);

published(
  {
    source: "Sums over a line of heads with constant flow",
    where: "cheapest changeover of 12 heads in two sizes, every layout summed",
    seen: "closed form",
  },
  () => {
    let large = 0;
    const bores = () => [...alike(large, 1.7), ...alike(12 - large, 1.4)];
    while (variationOf(pressures(60, bores(), 32)) > 0.2) large++;
    const tubing = [
      [1.7, 1],
      [1.4, 0.6],
    ];
    const table = callTable("LATERAL.CHANGEOVER", 0.2, 60, 12, 32, tubing, FLAT, "US");
    expect(table[0]).toEqual(["inside diameter (in)", "segments", "length (ft)", "cost"]);
    expect(table.slice(1).map((row) => row[1])).toEqual([large, 12 - large]);
    expectClose(table[1][3], large * 32, 1e-9);
    expectClose(table[2][3], (12 - large) * 32 * 0.6, 1e-9);
    expect(large).toBeGreaterThan(0);
  },
);

published(
  {
    source: "Counting",
    where: "heads at 15, 45, 75 … within 100, 105 and 14",
    seen: "closed form",
  },
  () => {
    expect(callNumber("LATERAL.HEADS", 100, 30, 15)).toBe(3);
    expect(callNumber("LATERAL.HEADS", 105, 30, 15)).toBe(4);
    expect(callNumber("LATERAL.HEADS", 14, 30, 15)).toBe(0);
    expect(callNumber("LATERAL.HEADS", 300, 30)).toBe(10);
  },
);

published(
  {
    source: "USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016)",
    where: "system CU = CU (1 + √(Pn/Pa))/2, recomputed by hand: CU 0.86, 40.5 of 50 psi",
    seen: "from memory",
  },
  () => {
    // √0.81 = 0.9
    expectWithin(callNumber("LATERAL.SYSTEMCU", 0.86, 40.5, 50), 0.817, 1e-9);
    expect(callNumber("LATERAL.SYSTEMCU", 0.86, 45, 45)).toBeCloseTo(0.86, 12);
  },
);
