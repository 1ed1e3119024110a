import fc from "fast-check";
import { call, callError } from "../support/host";

describe("the sentences", () => {
  test("CHECK.VARIATION", () => {
    expect(call("CHECK.VARIATION", 0.25)).toBe(
      "Pressure variation is 25 % above the limit of 0.2: use larger tubing, fewer heads or a run with less slope, or regulators under the heads.",
    );
    expect(call("CHECK.VARIATION", 0.25, 0.3)).toBe("OK");
    expect(call("CHECK.VARIATION", 0.12, 0.1)).toMatch(/is 20 % above the limit of 0.1:/);
  });

  test("CHECK.RATE", () => {
    expect(call("CHECK.RATE", 0.4, 0.3)).toBe(
      "Application rate is 33.3 % above what the soil takes in: use smaller nozzles, or a wider spacing or move.",
    );
  });

  test("CHECK.SPEED", () => {
    expect(call("CHECK.SPEED", 6.2, "US")).toBe(
      "Speed of 6.2 ft/s is 1.2 ft/s above the limit of 5 ft/s: use larger tubing or send less flow through it.",
    );
    expect(call("CHECK.SPEED", 1.75, "SI")).toMatch(
      /^Speed of 1.75 m\/s is 0.25 m\/s above the limit of 1.5 m\/s:/,
    );
    expect(call("CHECK.SPEED", 6.2, "US", 7)).toBe("OK");
    expect(call("CHECK.SPEED", 2, "SI", 1.8)).toMatch(/the limit of 1.8 m\/s/);
  });

  test("CHECK.PRESSURE", () => {
    expect(call("CHECK.PRESSURE", 108, 125)).toBe(
      "Pressure is 20 % above 72 % of the rating: use pipe and parts with a higher rating, or lower the pressure.",
    );
    expect(call("CHECK.PRESSURE", 108, 125, 0.9)).toBe("OK");
    expect(call("CHECK.PRESSURE", 0, 125)).toBe("OK");
  });

  test("CHECK.REGULATOR", () => {
    expect(call("CHECK.REGULATOR", 41, 60, 40)).toBe(
      "Lowest pressure under a regulator of 41 psi is 4 psi below the 45 psi that the regulators need (set 40 psi, loss 5 psi): raise the inlet pressure or use larger tubing.",
    );
    expect(call("CHECK.REGULATOR", 50, 130, 40, "US", 5, 120)).toBe(
      "Highest line pressure of 130 psi is 10 psi above the regulators' limit of 120 psi: lower the inlet pressure or use regulators made for more.",
    );
    expect(call("CHECK.REGULATOR", 41, 130, 40, "US", 5, 120)).toBe(
      "Lowest pressure under a regulator of 41 psi is 4 psi below the 45 psi that the regulators need (set 40 psi, loss 5 psi): raise the inlet pressure or use larger tubing; highest line pressure of 130 psi is 10 psi above the regulators' limit of 120 psi: lower the inlet pressure or use regulators made for more.",
    );
    expect(call("CHECK.REGULATOR", 41, 60, 40, "US", 0)).toBe("OK");
    expect(call("CHECK.REGULATOR", 290, 300, 270, "SI", 20)).toBe("OK");
  });

  test.each([null, "", 0])("CHECK.REGULATOR: a limit of %p is none", (limit) => {
    expect(call("CHECK.REGULATOR", 50, 900, 40, "US", null, limit)).toBe("OK");
  });

  test.each([null, ""])("CHECK.REGULATOR: a loss of %p is 5 psi", (loss) => {
    expect(call("CHECK.REGULATOR", 44, 60, 40, "US", loss)).toMatch(/loss 5 psi/);
    expect(call("CHECK.REGULATOR", 300, 400, 270, "SI", loss)).toMatch(/loss 34.5 kPa/);
  });

  test("CHECK.CHART", () => {
    const chart = [
      [45, 4.2],
      [35, 3.7],
      [50, 4.4],
      [null, null],
    ];
    expect(call("CHECK.CHART", 28, chart)).toBe(
      "Pressure is 20 % below the lowest of the chart, 35: raise it, or use a nozzle whose chart reaches down to it.",
    );
    expect(call("CHECK.CHART", 60, chart)).toBe(
      "Pressure is 20 % above the highest of the chart, 50: lower it, or use a nozzle whose chart reaches up to it.",
    );
    expect(call("CHECK.CHART", 40, chart)).toBe("OK");
  });

  test("CHECK.SPACING", () => {
    expect(call("CHECK.SPACING", 50, 50, 90, 5)).toBe(
      "Spacing of 50 ft is 5 ft above the 45 ft that a wetted diameter of 90 ft allows along the line: set the heads closer or use heads that throw farther.",
    );
    expect(call("CHECK.SPACING", 14, 15, 28, 20, "SI")).toBe(
      "Move of 15 m is 2.4 m above the 12.6 m that it allows between positions at a wind of 20 km/h: make shorter moves, use heads that throw farther or run when it is calmer.",
    );
    expect(call("CHECK.SPACING", 50, 60, 90, 5)).toMatch(/^Spacing of 50 ft .*; move of 60 ft /);
  });

  test("CHECK.NPSH", () => {
    expect(call("CHECK.NPSH", 6, 8)).toBe(
      "Suction head available is 25 % below what the pump requires: set the pump lower, use a shorter or larger suction pipe, or pump less.",
    );
    expect(call("CHECK.NPSH", -2, 8)).toBe(
      "Suction head available is below 0, so the water boils before it reaches any pump: set the pump lower, use a shorter or larger suction pipe, or pump less.",
    );
    expect(call("CHECK.NPSH", 0, 8)).toMatch(/is 100 % below what the pump requires/);
  });

  test("CHECK.PULL", () => {
    expect(call("CHECK.PULL", 660, 550)).toBe(
      "Pull is 20 % above the safe pull: drain the line first or tow it in shorter pieces.",
    );
  });
});

test("a value that rounding leaves beside its limit keeps it", () => {
  expect(0.1 + 0.2).toBeGreaterThan(0.3);
  expect(call("CHECK.VARIATION", 0.1 + 0.2, 0.3)).toBe("OK");
  expect(call("CHECK.NPSH", 0.3, 0.1 + 0.2)).toBe("OK");
});

test("blank optional arguments are their defaults", () => {
  for (const blank of [null, "", 0]) {
    expect(call("CHECK.VARIATION", 0.25, blank)).toMatch(/the limit of 0.2:/);
    expect(call("CHECK.SPEED", 6, "US", blank)).toMatch(/the limit of 5 ft\/s/);
    expect(call("CHECK.SPEED", 6, "SI", blank)).toMatch(/the limit of 1.5 m\/s/);
    expect(call("CHECK.PRESSURE", 108, 125, blank)).toMatch(/72 % of the rating/);
  }
});

test("the two unit systems pass and fail the same plan", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 80 }),
      fc.integer({ min: 20, max: 80 }),
      fc.integer({ min: 40, max: 160 }),
      fc.integer({ min: 0, max: 20 }),
      (spacing, move, wetted, wind) => {
        const us = call("CHECK.SPACING", spacing, move, wetted, wind, "US");
        const metre = 0.3048;
        const si = call(
          "CHECK.SPACING",
          spacing * metre,
          move * metre,
          wetted * metre,
          wind * 1.609344,
          "SI",
        );
        expect(si === "OK").toBe(us === "OK");
      },
    ),
  );
});

test("a wrong argument is named", () => {
  const message = (name: string, ...cells: unknown[]) => callError(name, ...cells).message;
  expect(message("CHECK.VARIATION", -0.1)).toBe("variation must be 0 or more; got -0.1");
  expect(message("CHECK.VARIATION", 0.1, 20)).toBe("limit must be above 0 and at most 1; got 20");
  expect(message("CHECK.RATE", 0.3, 0)).toBe("intake must be above 0; got 0");
  expect(message("CHECK.RATE", -1, 0.3)).toBe("rate must be 0 or more; got -1");
  expect(message("CHECK.SPEED", -1, "SI")).toBe("velocity must be 0 m/s or more; got -1");
  expect(message("CHECK.SPEED", 5, "US", -1)).toBe("limit must be above 0 ft/s; got -1");
  expect(message("CHECK.PRESSURE", -5, 100)).toBe("pressure must be 0 or more; got -5");
  expect(message("CHECK.PRESSURE", 50, 0)).toBe("rating must be above 0; got 0");
  expect(message("CHECK.PRESSURE", 50, 100, 72)).toBe(
    "share must be above 0 and at most 1; got 72",
  );
  expect(message("CHECK.REGULATOR", 60, 50, 40)).toBe(
    "lowest must not be above highest; got 60 psi and 50 psi",
  );
  expect(message("CHECK.REGULATOR", 50, 60, 0)).toBe("set must be above 0 psi; got 0");
  expect(message("CHECK.REGULATOR", -1, 60, 40)).toBe("lowest must be 0 psi or more; got -1");
  expect(message("CHECK.REGULATOR", 50, -60, 40)).toBe("highest must be 0 psi or more; got -60");
  expect(message("CHECK.REGULATOR", 50, 60, 40, "SI", -1)).toBe(
    "loss must be 0 kPa or more; got -1",
  );
  expect(message("CHECK.REGULATOR", 50, 60, 40, "SI", 1, -1)).toBe(
    "limit must be above 0 kPa; got -1",
  );
  expect(message("CHECK.CHART", 40, [[35, 3.7]])).toBe(
    "chart must have at least 2 rows, so that it has a range; got 1",
  );
  expect(message("CHECK.CHART", 40, [[35], [45]])).toMatch(
    /^chart must be two columns, pressure and flow/,
  );
  expect(
    message("CHECK.CHART", 40, [
      [35, 3.7],
      [45, -1],
    ]),
  ).toBe("chart row 2 flow must be above 0; got -1");
  expect(
    message("CHECK.CHART", 40, [
      ["low", 3.7],
      [45, 4],
    ]),
  ).toMatch(/^chart row 1 pressure must be a number/);
  expect(
    message("CHECK.CHART", -40, [
      [35, 3.7],
      [45, 4],
    ]),
  ).toBe("pressure must be 0 or more; got -40");
  expect(message("CHECK.SPACING", 0, 50, 90, 5)).toBe("spacing must be above 0 ft; got 0");
  expect(message("CHECK.SPACING", 45, 0, 90, 5)).toBe("move must be above 0 ft; got 0");
  expect(message("CHECK.SPACING", 45, 50, 0, 5)).toBe("wetted must be above 0 ft; got 0");
  expect(message("CHECK.SPACING", 45, 50, 90, -5, "SI")).toBe(
    "wind must be 0 km/h or more; got -5",
  );
  expect(message("CHECK.NPSH", "much", 8)).toMatch(/^available must be a number/);
  expect(message("CHECK.NPSH", 20, 0)).toBe("required must be above 0; got 0");
  expect(message("CHECK.PULL", -1, 500)).toBe("pull must be 0 or more; got -1");
  expect(message("CHECK.PULL", 100, 0)).toBe("safe must be above 0; got 0");
});
