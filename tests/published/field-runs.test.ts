import { callTable } from "../support/host";
import {
  matchedC,
  matchedK,
  networkEngine,
  type NetworkLine,
  OUR_PSI_PER_FOOT,
} from "../support/network-engine";
import { expectClose, published } from "../support/published";

/** Three runs of one line: level, uphill and short, downhill over a hump; ft above the near end. */
const RUNS = [
  [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
  [2, 3.5, 5, 8, 10],
  [1, 3, 4, 1, -2, -5, -9, -12, -16, -19],
];
const SPACING = 40;
const FIRST = 25;
const BORE = 2.067;
const K = 0.7036;

published(
  {
    source: "EPANET 2.3 pipe-network engine (public domain), through epanet-js 0.9",
    where:
      "three runs of one line on their own ground, one of them short: every pressure and flow within 0.01 %",
    seen: "independent engine",
  },
  async () => {
    const engine = await networkEngine();
    const inletHead = 120;
    const heads = RUNS.flatMap((heights, row) =>
      heights.map((height, i) => {
        const along = FIRST + SPACING * i;
        return [row + 1, 1, i + 1, along, along, 50 * row, height];
      }),
    );
    const table = callTable(
      "LATERAL.RUNS",
      inletHead * OUR_PSI_PER_FOOT,
      heads,
      SPACING,
      BORE,
      matchedK(K, 0.5),
      "US",
      null,
      matchedC(150, BORE),
    );
    RUNS.forEach((elevation, row) => {
      const line: NetworkLine = {
        inletHead,
        segmentLength: elevation.map((_, i) => (i === 0 ? FIRST : SPACING)),
        bore: elevation.map(() => BORE),
        elevation,
        coefficient: K,
        exponent: 0.5,
        friction: { c: 150 },
      };
      const { pressureHead, segmentFlow } = engine.solve(line);
      const psi = pressureHead.map((head) => head * OUR_PSI_PER_FOOT);
      const [lowest, highest] = [Math.min(...psi), Math.max(...psi)];
      const average = psi.reduce((sum, value) => sum + value, 0) / psi.length;
      const [position, run, count, flow, ...pressures] = table[row + 1];
      expect([position, run, count]).toEqual([row + 1, 1, elevation.length]);
      expectClose(flow, segmentFlow[0], 1e-4);
      expectClose(pressures[0], lowest, 1e-4);
      expectClose(pressures[1], highest, 1e-4);
      // Downhill the far end has more than the inlet, and that is what the tubing must stand.
      expectClose(pressures[2], Math.max(inletHead * OUR_PSI_PER_FOOT, highest), 1e-4);
      expectClose(pressures[3], (highest - lowest) / average, 1e-2);
    });
  },
);
