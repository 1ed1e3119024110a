import fc from "fast-check";
import { callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];

describe("SPRINKLER.FLOW and SPRINKLER.PRESSURE", () => {
  test("pass through the chart's own rows", () => {
    for (const [pressure, flow] of CHART) {
      expectClose(callNumber("SPRINKLER.FLOW", pressure, CHART), flow, 1e-12);
      expectClose(callNumber("SPRINKLER.PRESSURE", flow, CHART), pressure, 1e-12);
    }
  });

  test("go on beyond the chart by its end pieces", () => {
    const low = Math.log(4.2 / 3.7) / Math.log(45 / 35);
    const high = Math.log(4.6 / 4.2) / Math.log(55 / 45);
    expectClose(callNumber("SPRINKLER.FLOW", 20, CHART), 3.7 * (20 / 35) ** low, 1e-12);
    expectClose(callNumber("SPRINKLER.FLOW", 80, CHART), 4.6 * (80 / 55) ** high, 1e-12);
  });

  test("take one number as K and one row as the orifice's law", () => {
    expectClose(callNumber("SPRINKLER.FLOW", 49, 0.6), 4.2, 1e-12);
    expectClose(callNumber("SPRINKLER.PRESSURE", 4.2, 0.6), 49, 1e-12);
    expectClose(callNumber("SPRINKLER.FLOW", 400, [[100, 0.5]], "SI"), 1, 1e-12);
    expectClose(callNumber("SPRINKLER.PRESSURE", 1, [[100, 0.5]], "SI"), 400, 1e-12);
  });

  test("undo each other at any pressure, in both systems", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 500, noNaN: true }),
        fc.constantFrom("US", "SI"),
        (pressure, units) => {
          const flow = callNumber("SPRINKLER.FLOW", pressure, CHART, units);
          expectClose(callNumber("SPRINKLER.PRESSURE", flow, CHART, units), pressure, 1e-9);
        },
      ),
    );
  });

  test("are the same head in both systems", () => {
    const metric = CHART.map(([psi, gpm]) => [psi * 6.894757293, gpm * 0.22712470704]);
    const flow = callNumber("SPRINKLER.FLOW", 42 * 6.894757293, metric, "SI");
    expectClose(flow / 0.22712470704, callNumber("SPRINKLER.FLOW", 42, CHART), 1e-9);
  });

  test("are 0 together", () => {
    expect(callNumber("SPRINKLER.FLOW", 0, CHART)).toBe(0);
    expect(callNumber("SPRINKLER.PRESSURE", 0, CHART)).toBe(0);
  });

  test("tell a head whose flow does not follow its pressure", () => {
    const controlled = [
      [30, 4],
      [50, 4],
      [60, 5],
    ];
    expectClose(callNumber("SPRINKLER.FLOW", 40, controlled), 4, 1e-12);
    expectClose(callNumber("SPRINKLER.FLOW", 5, controlled), 4, 1e-12);
    const many =
      "discharge does not change with the pressure at this flow, so the flow does not tell the pressure";
    const none = "discharge gives this flow at no pressure: its chart is flat there";
    expect(callError("SPRINKLER.PRESSURE", 4, controlled).code).toBe("#N/A");
    expect(callError("SPRINKLER.PRESSURE", 4, controlled).message).toBe(many);
    expect(callError("SPRINKLER.PRESSURE", 2, controlled).message).toBe(none);
    expectClose(callNumber("SPRINKLER.PRESSURE", 5, controlled), 60, 1e-12);
    const levelling = [
      [30, 3],
      [40, 4],
      [60, 4],
    ];
    expectClose(callNumber("SPRINKLER.PRESSURE", 3, levelling), 30, 1e-12);
    expect(callError("SPRINKLER.PRESSURE", 4, levelling).message).toBe(many);
    expect(callError("SPRINKLER.PRESSURE", 4.5, levelling).message).toBe(none);
    // A flow that came from the flat piece is known again, rounding and all.
    const step = [
      [30, 3],
      [40, 4],
      [50, 4],
      [60, 5],
    ];
    for (const dust of [0, 1e-15, -1e-15, 1e-12, -1e-12]) {
      expect(callError("SPRINKLER.PRESSURE", 4 * (1 + dust), step).message).toBe(many);
    }
    expectClose(callNumber("SPRINKLER.PRESSURE", 3.99, step), 39.9, 0.001);
    expectClose(callNumber("SPRINKLER.PRESSURE", 4.01, step), 50.1, 0.001);
  });

  test("name what is wrong", () => {
    expect(callError("SPRINKLER.FLOW", -1, CHART).message).toBe(
      "pressure must be 0 psi or more; got -1",
    );
    expect(callError("SPRINKLER.FLOW", 40, 0).message).toBe(
      "discharge must be above 0 gpm per √psi; got 0",
    );
    expect(
      callError("SPRINKLER.FLOW", 40, [
        [1, 1],
        [1.0001, 900],
      ]).message,
    ).toBe(
      "discharge rises too steeply between rows 1 and 2 (by rising pressure): check the chart",
    );
  });
});

describe("SPRINKLER.NOZZLE", () => {
  test("is the same nozzle in both systems", () => {
    const us = callNumber("SPRINKLER.NOZZLE", 0.1875, 50);
    const si = callNumber("SPRINKLER.NOZZLE", 4.7625, 50 * 6.894757293, "SI");
    expectClose(si / 0.22712470704, us, 1e-9);
  });

  test.each([[null], [""], [0]])("takes %p for cd as 0.96", (blank) => {
    const written = callNumber("SPRINKLER.NOZZLE", 0.1875, 50, "US", 0.96);
    expect(callNumber("SPRINKLER.NOZZLE", 0.1875, 50, "US", blank)).toBe(written);
    expect(callNumber("SPRINKLER.NOZZLE", 0.1875, 50)).toBe(written);
  });

  test("grows with cd, and refuses one above 1", () => {
    const whole = callNumber("SPRINKLER.NOZZLE", 0.1875, 50, "US", 1);
    expectClose(callNumber("SPRINKLER.NOZZLE", 0.1875, 50, "US", 0.5), whole / 2, 1e-12);
    expect(callError("SPRINKLER.NOZZLE", 0.1875, 50, "US", 1.1).message).toBe(
      "cd must be above 0 and at most 1; got 1.1",
    );
    expect(callNumber("SPRINKLER.NOZZLE", 0.1875, 0)).toBe(0);
  });
});

describe("SPRINKLER.K", () => {
  test("spills labels with units, and values", () => {
    const [[first, k], [second, x]] = callTable("SPRINKLER.K", CHART);
    expect(first).toBe("K (gpm per psi^x)");
    expect(second).toBe("exponent x");
    // The fitted law runs within 1 % of the three rows.
    for (const [pressure, flow] of CHART) {
      expectClose(Number(k) * pressure ** Number(x), flow, 0.01);
    }
    expect(callTable("SPRINKLER.K", CHART, "SI")[0][0]).toBe("K (m³/h per kPa^x)");
  });

  test("gives one row the orifice's exponent", () => {
    const [[, k], [, x]] = callTable("SPRINKLER.K", [[49, 4.2]]);
    expectClose(k, 0.6, 1e-12);
    expect(x).toBe(0.5);
    expectClose(callNumber("SPRINKLER.FLOW", 25, k), 3, 1e-12);
  });

  test("names the chart", () => {
    expect(callError("SPRINKLER.K", null).message).toContain("chart is missing");
    expect(
      callError("SPRINKLER.K", [
        [35, 4],
        [45, "x"],
      ]).message,
    ).toContain("chart row 2 flow");
  });
});

describe("SPRINKLER.SPACING", () => {
  test("spills labels with units", () => {
    expect(callTable("SPRINKLER.SPACING", 80, 4)).toEqual([
      ["along the line (ft)", 40],
      ["between positions (ft)", 48],
    ]);
    const [[along, alongValue], [between, betweenValue]] = callTable(
      "SPRINKLER.SPACING",
      27,
      0,
      "SI",
    );
    expect([along, between]).toEqual(["along the line (m)", "between positions (m)"]);
    expectClose(alongValue, 13.5, 1e-12);
    expectClose(betweenValue, 17.55, 1e-12);
  });

  test("puts a wind on a limit, in either system, in the calmer row", () => {
    const share = (wind: number, units: string) =>
      Number(callTable("SPRINKLER.SPACING", 100, wind, units)[1][1]) / 100;
    expectClose(share(5, "US"), 0.6, 1e-12);
    expectClose(share(5.02, "US"), 0.5, 1e-12);
    expectClose(share(10, "US"), 0.5, 1e-12);
    expectClose(share(10.1, "US"), 0.45, 1e-12);
    expectClose(share(8.04672, "SI"), 0.6, 1e-12);
    expectClose(share(8.06, "SI"), 0.5, 1e-12);
    expectClose(share(16.09344, "SI"), 0.5, 1e-12);
    expectClose(share(16.2, "SI"), 0.45, 1e-12);
    expectClose(share(0, "SI"), 0.65, 1e-12);
    expectClose(share(0.5, "US"), 0.65, 1e-12);
    expectClose(share(0.6, "US"), 0.6, 1e-12);
    expectClose(share(0.9, "SI"), 0.6, 1e-12);
  });

  test("names what is wrong", () => {
    expect(callError("SPRINKLER.SPACING", 0, 4).message).toBe("wetted must be above 0 ft; got 0");
    expect(callError("SPRINKLER.SPACING", 90, -1, "SI").message).toBe(
      "wind must be 0 km/h or more; got -1",
    );
  });
});
