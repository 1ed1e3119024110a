import { callNumber, callTable } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

/** psi, then gpm of each nozzle, as printed. */
const NOZZLES: Readonly<Record<string, readonly number[]>> = {
  "5/32": [4.16, 4.45, 4.72, 4.98, 5.22],
  "11/64": [5.02, 5.37, 5.7, 6.01, 6.3],
  "3/16": [5.97, 6.41, 6.81, 7.18, 7.51],
  "13/64": [7.08, 7.6, 8.07, 8.49, 8.87],
  "7/32": [8.26, 8.87, 9.41, 9.88, 10.3],
};
const PRESSURES = [35, 40, 45, 50, 55];

function inches(nozzle: string): number {
  const [over, under] = nozzle.split("/").map(Number);
  return over / under;
}

published(
  {
    source: "Extension bulletin on measuring irrigation water (the copy read lacks its title page)",
    where: "table 3, capacities (gallons per minute) of certain diameter nozzles",
    seen: "read",
  },
  () => {
    // The table's own discharge coefficient lies between 0.96 and 0.98; the middle is within a percent and a half of every row.
    for (const [nozzle, flows] of Object.entries(NOZZLES)) {
      PRESSURES.forEach((pressure, i) => {
        const diameter = inches(nozzle);
        expectClose(
          callNumber("SPRINKLER.NOZZLE", diameter, pressure, "US", 0.968),
          flows[i],
          0.015,
        );
      });
    }
    // The default is on the table's low side.
    expectClose(callNumber("SPRINKLER.NOZZLE", 11 / 64, 40, "US"), 5.37, 0.008);
  },
);

published(
  {
    source: "Extension bulletin on measuring irrigation water (the copy read lacks its title page)",
    where: "table 3, rows at 40 and 50 psi from a chart of the rows at 35, 45 and 55 psi",
    seen: "read",
  },
  () => {
    for (const flows of Object.values(NOZZLES)) {
      const chart = [0, 2, 4].map((row) => [PRESSURES[row], flows[row]]);
      for (const row of [1, 3]) {
        expectWithin(callNumber("SPRINKLER.FLOW", PRESSURES[row], chart, "US"), flows[row], 0.035);
        expectClose(
          callNumber("SPRINKLER.PRESSURE", flows[row], chart, "US"),
          PRESSURES[row],
          0.01,
        );
      }
      // One row is enough within a percent and a half.
      const one = [[PRESSURES[2], flows[2]]];
      expectClose(callNumber("SPRINKLER.FLOW", 35, one, "US"), flows[0], 0.015);
    }
  },
);

published(
  {
    source: "Extension bulletin on measuring irrigation water (the copy read lacks its title page)",
    where: "example 5, 30 heads with 3/16 in nozzles at 40 psi, 190 gpm",
    seen: "read",
  },
  () => {
    const chart = PRESSURES.map((pressure, row) => [pressure, NOZZLES["3/16"][row]]);
    expectClose(30 * callNumber("SPRINKLER.FLOW", 40, chart, "US"), 190, 0.015);
  },
);

published(
  {
    source: "Hydraulic Institute, Engineering Data Library, section III-D, losses in nozzles",
    where: "theoretical discharge of nozzles in gpm, coefficient 1",
    seen: "read",
  },
  () => {
    const printed: readonly [diameter: number, pressure: number, flow: number][] = [
      [0.5, 10, 23.6],
      [2, 10, 378],
      [4, 10, 1510],
      [6, 10, 3398],
      [4, 20, 2135],
      [6, 20, 4805],
    ];
    for (const [diameter, pressure, flow] of printed) {
      expectClose(callNumber("SPRINKLER.NOZZLE", diameter, pressure, "US", 1), flow, 0.0012);
    }
  },
);

published(
  {
    source:
      "Flow from the pressure at a nozzle, Q = 29.84 c d² √p, as open fire-flow calculators print it",
    where: "gpm, in and psi, by hand for two nozzles",
    seen: "read in a secondary text",
  },
  () => {
    expectClose(
      callNumber("SPRINKLER.NOZZLE", 0.1875, 50, "US", 0.96),
      29.84 * 0.96 * 0.1875 ** 2 * Math.sqrt(50),
      0.001,
    );
    expectClose(
      callNumber("SPRINKLER.NOZZLE", 0.25, 60, "US"),
      29.84 * 0.96 * 0.25 ** 2 * Math.sqrt(60),
      0.001,
    );
  },
);

published(
  {
    source: "Power law through points that lie on it",
    where: "K = 2, x = ½ and K = 0.3, x = 0.6 found again by least squares on logarithms",
    seen: "closed form",
  },
  () => {
    const root = [16, 25, 64].map((pressure) => [pressure, 2 * Math.sqrt(pressure)]);
    const [[, k], [, x]] = callTable("SPRINKLER.K", root, "US");
    expectClose(k, 2, 1e-12);
    expectClose(x, 0.5, 1e-12);
    const steeper = [200, 300, 500].map((pressure) => [pressure, 0.3 * pressure ** 0.6]);
    const [[, metricK], [, metricX]] = callTable("SPRINKLER.K", steeper, "SI");
    expectClose(metricK, 0.3, 1e-12);
    expectClose(metricX, 0.6, 1e-12);
  },
);

published(
  {
    source: "Least squares on a straight line",
    where: "three points off a line, ln p = 0, 1, 2 and ln q = 0, 1, 1: slope ½, intercept 1/6",
    seen: "closed form",
  },
  () => {
    const chart = [
      [1, 1],
      [Math.E, Math.E],
      [Math.E ** 2, Math.E],
    ];
    const [[, k], [, x]] = callTable("SPRINKLER.K", chart, "US");
    expectClose(x, 0.5, 1e-12);
    expectClose(k, Math.exp(1 / 6), 1e-12);
  },
);

published(
  {
    source: "Cheat sheet on sprinkler irrigation for an agricultural engineering examination",
    where: "spacing without wind: 65 % of the wetted diameter between lines, 50 % along them",
    seen: "read",
  },
  () => {
    const [[, along], [, between]] = callTable("SPRINKLER.SPACING", 100, 0, "US");
    expectWithin(along, 50, 1e-9);
    expectWithin(between, 65, 1e-9);
  },
);

published(
  {
    source:
      "USDA-SCS, Conservation Practice Standard 442, Irrigation System, Sprinkler (older issues)",
    where: "largest spacing as a share of the wetted diameter, by wind",
    seen: "from memory",
  },
  () => {
    const printed = [
      [0, 65],
      [3, 60],
      [5, 60],
      [7, 50],
      [10, 50],
      [12, 45],
    ];
    for (const [wind, percent] of printed) {
      const [[, along], [, between]] = callTable("SPRINKLER.SPACING", 100, wind, "US");
      expectWithin(along, 50, 1e-9);
      expectWithin(between, percent, 1e-9);
    }
  },
);
