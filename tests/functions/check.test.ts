import fc from "fast-check";
import { call, callError } from "../support/host";

describe("the sentences", () => {
  test("CHECK.VARIATION", () => {
    expect(call("CHECK.VARIATION", 0.258)).toBe(
      "Pressure varies by 25.8%; the limit is 20%. Use larger tubing, fewer sprinklers, a line with less slope, or regulators.",
    );
    expect(call("CHECK.VARIATION", 0.25, 0.3)).toBe("OK");
    expect(call("CHECK.VARIATION", 0.12, 0.1)).toMatch(
      /^Pressure varies by 12%; the limit is 10%\. Use/,
    );
  });

  test("CHECK.RATE", () => {
    expect(call("CHECK.RATE", 0.4, 0.3)).toBe(
      "Application rate is 0.4; the soil takes in 0.3. Use smaller nozzles, or a wider spacing or move.",
    );
  });

  test("CHECK.SPEED", () => {
    expect(call("CHECK.SPEED", 6.2, "US")).toBe(
      "Velocity is 6.2 ft/s; the limit is 5 ft/s. Use larger tubing, or send less flow through it.",
    );
    expect(call("CHECK.SPEED", 1.75, "SI")).toMatch(
      /^Velocity is 1.75 m\/s; the limit is 1.5 m\/s\./,
    );
    expect(call("CHECK.SPEED", 6.2, "US", 7)).toBe("OK");
    expect(call("CHECK.SPEED", 2, "SI", 1.8)).toMatch(/the limit is 1.8 m\/s/);
  });

  test("CHECK.PRESSURE", () => {
    expect(call("CHECK.PRESSURE", 108, 125)).toBe(
      "Pressure is 108; the limit is 90 (72% of the rating of 125). Use pipe and parts with a higher rating, or lower the pressure.",
    );
    expect(call("CHECK.PRESSURE", 108, 125, 0.9)).toBe("OK");
    expect(call("CHECK.PRESSURE", 0, 125)).toBe("OK");
  });

  test("CHECK.REGULATOR", () => {
    const low =
      "Lowest pressure under a regulator is 41 psi; the regulators need 45 psi (set 40 psi, loss 5 psi). Raise the inlet pressure or use larger tubing.";
    const high =
      "Highest line pressure is 130 psi; the regulators' limit is 120 psi. Lower the inlet pressure or use regulators made for more.";
    expect(call("CHECK.REGULATOR", 41, 60, 40)).toBe(low);
    expect(call("CHECK.REGULATOR", 50, 130, 40, "US", 5, 120)).toBe(high);
    expect(call("CHECK.REGULATOR", 41, 130, 40, "US", 5, 120)).toBe(`${low} ${high}`);
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
      "Pressure is 28; the chart begins at 35. Raise the pressure, or use a nozzle whose chart reaches down to it.",
    );
    expect(call("CHECK.CHART", 60, chart)).toBe(
      "Pressure is 60; the chart ends at 50. Lower the pressure, or use a nozzle whose chart reaches up to it.",
    );
    expect(call("CHECK.CHART", 40, chart)).toBe("OK");
  });

  test("CHECK.SPACING", () => {
    expect(call("CHECK.SPACING", 50, 50, 90, 5)).toBe(
      "Spacing is 50 ft; the limit along the line is 45 ft (50% of the wetted diameter of 90 ft). Set the sprinklers closer, or use sprinklers that throw farther.",
    );
    expect(call("CHECK.SPACING", 14, 15, 28, 20, "SI")).toBe(
      "Move is 15 m; the limit is 12.6 m (45% of the wetted diameter of 28 m at a wind of 20 km/h). Make shorter moves, use sprinklers that throw farther, or run when it is calmer.",
    );
    expect(call("CHECK.SPACING", 50, 60, 90, 5)).toMatch(/^Spacing is 50 ft; .* Move is 60 ft; /);
  });

  test("CHECK.NPSH", () => {
    expect(call("CHECK.NPSH", 6, 8)).toBe(
      "Suction head available is 6; the pump requires 8. Set the pump lower, use a shorter or larger suction pipe, or pump less.",
    );
    expect(call("CHECK.NPSH", -2, 8)).toBe(
      "Suction head available is below 0, so the water boils before it reaches any pump. Set the pump lower, use a shorter or larger suction pipe, or pump less.",
    );
    expect(call("CHECK.NPSH", 0, 8)).toMatch(/is 0; the pump requires 8\./);
  });

  test("CHECK.PULL", () => {
    expect(call("CHECK.PULL", 660, 550)).toBe(
      "Pull is 660; the allowable pull is 550. Drain the line first, or tow it in shorter pieces.",
    );
  });
});

describe("a value that shows as its limit keeps it", () => {
  test.each([
    ["CHECK.VARIATION", [0.20004], [0.2006]],
    ["CHECK.RATE", [0.3004, 0.3], [0.306, 0.3]],
    ["CHECK.SPEED", [5.001, "US"], [5.02, "US"]],
    ["CHECK.SPEED", [1.5004, "SI"], [1.506, "SI"]],
    ["CHECK.PRESSURE", [90.04, 125], [90.2, 125]],
    ["CHECK.REGULATOR", [44.96, 60, 40], [44.9, 60, 40]],
    ["CHECK.SPACING", [45.04, 40, 90, 4], [45.2, 40, 90, 4]],
    ["CHECK.SPACING", [40, 54.04, 90, 4], [40, 54.2, 90, 4]],
    ["CHECK.NPSH", [7.996, 8], [7.98, 8]],
    ["CHECK.PULL", [550.4, 550], [552, 550]],
    ["CHECK.PULL", [5500.4, 5500], [5501, 5500]],
  ])("%s: %j is OK, %j is not", (name, within, beyond) => {
    expect(call(name, ...within)).toBe("OK");
    expect(call(name, ...beyond)).not.toBe("OK");
  });

  test("whatever a sentence says, its two numbers differ", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 6, noNaN: true }),
        fc.double({ min: 0.99, max: 1.01, noNaN: true }),
        (limit, near) => {
          const verdict = String(call("CHECK.SPEED", limit * near, "US", limit));
          const [value, bound] = verdict.match(/[\d.]+ ft/g) ?? [];
          if (verdict !== "OK") expect(value).not.toBe(bound);
        },
      ),
    );
  });

  test("a wind that shows as the limit of its class is that limit", () => {
    const move = (wind: number, units: string) =>
      [65, 60, 50, 45].find((share) => call("CHECK.SPACING", 40, share, 100, wind, units) === "OK");
    for (const [share, ...winds] of [
      [65, 0, 0.4, 0.5],
      [60, 0.51, 4.99, 5, 5.004],
      [50, 5.02, 10, 10.04],
      [45, 10.1, 20],
    ]) {
      for (const wind of winds) expect([wind, move(wind, "US")]).toEqual([wind, share]);
    }
    for (const [share, ...winds] of [
      [65, 0, 0.8, 0.805],
      [60, 0.81, 8, 8.05],
      [50, 8.06, 16, 16.1],
      [45, 16.2],
    ]) {
      for (const wind of winds) expect([wind, move(wind, "SI")]).toEqual([wind, share]);
    }
  });
});

test("a value that rounding leaves beside its limit keeps it", () => {
  expect(0.1 + 0.2).toBeGreaterThan(0.3);
  expect(call("CHECK.VARIATION", 0.1 + 0.2, 0.3)).toBe("OK");
  expect(call("CHECK.NPSH", 0.3, 0.1 + 0.2)).toBe("OK");
});

test("blank optional arguments are their defaults", () => {
  for (const blank of [null, "", 0]) {
    expect(call("CHECK.VARIATION", 0.25, blank)).toMatch(/the limit is 20%/);
    expect(call("CHECK.SPEED", 6, "US", blank)).toMatch(/the limit is 5 ft\/s/);
    expect(call("CHECK.SPEED", 6, "SI", blank)).toMatch(/the limit is 1.5 m\/s/);
    expect(call("CHECK.PRESSURE", 108, 125, blank)).toMatch(/72% of the rating/);
  }
});

test("the two unit systems pass and fail the same plan, but for what a third digit rounds", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 80 }),
      fc.integer({ min: 20, max: 80 }),
      fc.integer({ min: 40, max: 160 }),
      fc.integer({ min: 0, max: 20 }),
      (spacing, move, wetted, wind) => {
        // Half a per cent at most is what three digits can hide, in one unit or the other.
        const share = wind === 0 ? 0.65 : wind <= 5 ? 0.6 : wind <= 10 ? 0.5 : 0.45;
        fc.pre(Math.abs(spacing / (0.5 * wetted) - 1) > 0.005);
        fc.pre(Math.abs(move / (share * wetted) - 1) > 0.005);
        const us = call("CHECK.SPACING", spacing, move, wetted, wind, "US");
        const meter = 0.3048;
        const si = call(
          "CHECK.SPACING",
          spacing * meter,
          move * meter,
          wetted * meter,
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
