import { callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

const GPM = 0.2271247069; // m³/h
const FOOT = 0.3048;
const PSI = 6.894757293; // kPa

describe("PUMP.TDH", () => {
  test("both unit systems agree", () => {
    const us = callNumber("PUMP.TDH", 48, 12, 6.5, "US", 4);
    const si = callNumber("PUMP.TDH", 48 * PSI, 12 * FOOT, 6.5 * PSI, "SI", 4 * FOOT);
    expectClose(si, us * FOOT, 1e-9);
  });

  test.each([null, "", 0])("velocity %p leaves the velocity head out", (velocity) => {
    expect(callNumber("PUMP.TDH", 0, 12, 0, "US", velocity)).toBeCloseTo(12, 12);
  });

  test("a wrong argument is named", () => {
    expect(callError("PUMP.TDH", -1, 12, 0)).toMatchObject({
      code: "#VALUE!",
      message: "pressure must be 0 psi or more; got -1",
    });
    expect(callError("PUMP.TDH", 40, null, 0).message).toBe(
      "lift is missing: it must be a number in ft",
    );
    expect(callError("PUMP.TDH", 40, 3, -2, "SI").message).toBe(
      "losses must be 0 kPa or more; got -2",
    );
    expect(callError("PUMP.TDH", 40, 3, 2, "SI", -1).message).toBe(
      "velocity must be 0 m/s or more; got -1",
    );
  });
});

describe("PUMP.POWER", () => {
  test("both unit systems agree", () => {
    const us = callNumber("PUMP.POWER", 118, 135, 0.68);
    const si = callNumber("PUMP.POWER", 118 * GPM, 135 * FOOT, 0.68, "SI");
    expectClose(si, us * 0.74569987158, 1e-9);
  });

  test("a wrong argument is named", () => {
    expect(callError("PUMP.POWER", 118, 135, 68).message).toBe(
      "efficiency must be above 0 and at most 1; got 68",
    );
    expect(callError("PUMP.POWER", 118, 135, 0).message).toMatch(/^efficiency must be above 0/);
    expect(callError("PUMP.POWER", "a lot", 135, 0.7).message).toBe(
      'flow must be a number, 0 gpm or more; got "a lot"',
    );
    expect(callError("PUMP.POWER", 118, -1, 0.7).message).toBe("head must be 0 ft or more; got -1");
  });
});

describe("PUMP.NPSH", () => {
  test("both unit systems agree", () => {
    const us = callNumber("PUMP.NPSH", 8, 2.5, "US", 77, 1800);
    const si = callNumber("PUMP.NPSH", 8 * FOOT, 2.5 * FOOT, "SI", 25, 1800 * FOOT);
    expectClose(si, us * FOOT, 1e-9);
  });

  test("lift and loss come off foot for foot", () => {
    const least = callNumber("PUMP.NPSH", 0, 0);
    expect(callNumber("PUMP.NPSH", 8, 0)).toBeCloseTo(least - 8, 9);
    expect(callNumber("PUMP.NPSH", -8, 0)).toBeCloseTo(least + 8, 9);
    expect(callNumber("PUMP.NPSH", 0, 3)).toBeCloseTo(least - 3, 9);
    expect(callNumber("PUMP.NPSH", 40, 0)).toBeLessThan(0);
  });

  test("blank temperature is 68 °F or 20 °C; 0 is a temperature in °C only", () => {
    const us = callNumber("PUMP.NPSH", 8, 2, "US", 68);
    for (const blank of [null, "", 0]) expect(callNumber("PUMP.NPSH", 8, 2, "US", blank)).toBe(us);
    const si = callNumber("PUMP.NPSH", 3, 1, "SI", 20);
    for (const blank of [null, ""]) expect(callNumber("PUMP.NPSH", 3, 1, "SI", blank)).toBe(si);
    expect(callNumber("PUMP.NPSH", 3, 1, "SI", 0)).toBeGreaterThan(si + 0.1);
  });

  test.each([null, "", 0])("altitude %p is the sea", (altitude) => {
    expect(callNumber("PUMP.NPSH", 3, 1, "SI", 20, altitude)).toBe(
      callNumber("PUMP.NPSH", 3, 1, "SI"),
    );
  });

  test("limits are in the units of the call", () => {
    expect(callError("PUMP.NPSH", 3, 1, "SI", 101).message).toBe(
      "temperature must be from 0 to 100 °C; got 101",
    );
    expect(callError("PUMP.NPSH", 3, 1, "US", 20).message).toBe(
      "temperature must be from 32 to 212 °F; got 20",
    );
    expect(callError("PUMP.NPSH", 3, 1, "SI", 20, 11001).message).toBe(
      "altitude must be from -5000 to 11000 m; got 11001",
    );
    expect(callNumber("PUMP.NPSH", 3, 1, "SI", 20, -5000)).toBeGreaterThan(0);
    expect(callError("PUMP.NPSH", 3, -1).message).toBe("loss must be 0 ft or more; got -1");
    expect(callError("PUMP.NPSH", "deep", 1).message).toBe(
      'lift must be a number in ft; got "deep"',
    );
  });
});

describe("PUMP.ENERGY", () => {
  const si = (source: string) => callNumber("PUMP.ENERGY", 118 * GPM, 135 * FOOT, 11, source, "SI");
  const us = (source: string) => callNumber("PUMP.ENERGY", 118, 135, 11, source, "US");

  test("both unit systems buy the same energy and fuel", () => {
    expectClose(si("electric"), us("electric"), 1e-9);
    for (const fuel of ["diesel", "propane", "gasoline"]) {
      expectClose(si(fuel), us(fuel) * 3.785411784, 1e-9);
    }
    expectClose(si("natural gas"), us("natural gas") * 28.316846592, 1e-9);
  });

  test("performance divides, and blank is 1", () => {
    const whole = us("diesel");
    for (const blank of [null, "", 0, 1]) {
      expect(callNumber("PUMP.ENERGY", 118, 135, 11, "diesel", "US", blank)).toBe(whole);
    }
    expectClose(callNumber("PUMP.ENERGY", 118, 135, 11, "diesel", "US", 0.5), whole * 2, 1e-12);
    expect(callError("PUMP.ENERGY", 118, 135, 11, "diesel", "US", 80).message).toBe(
      "performance must be above 0 and at most 2; got 80",
    );
  });

  test("the source is in any spelling, and an unknown one lists them", () => {
    expect(us("Natural Gas")).toBe(us("natural gas"));
    expect(callError("PUMP.ENERGY", 118, 135, 11, "steam").message).toBe(
      'source must be one of "electric", "diesel", "propane", "gasoline", "natural gas"; got "steam"',
    );
    expect(callError("PUMP.ENERGY", 118, 135, 11, "").message).toMatch(/^source is missing/);
    expect(callError("PUMP.ENERGY", 118, 135, -11, "diesel").message).toBe(
      "hours must be 0 h or more; got -11",
    );
  });
});

describe("PUMP.DUTY", () => {
  const pump = [
    [0, 148],
    [60, 141],
    [120, 124],
    [170, 98],
  ];
  const demand = [
    [40, 92],
    [80, 104],
    [120, 122],
    [160, 146],
  ];

  test("spills a header and one row", () => {
    const table = callTable("PUMP.DUTY", pump, demand);
    expect(table).toHaveLength(2);
    expect(table[0]).toEqual(["flow (gpm)", "head (ft)"]);
    expect(callTable("PUMP.DUTY", pump, demand, "SI")[0]).toEqual(["flow (m³/h)", "head (m)"]);
  });

  test("rows may come in any order, blank rows at the end are dropped", () => {
    const sorted = callTable("PUMP.DUTY", pump, demand);
    expect(callTable("PUMP.DUTY", [...pump].reverse(), demand)).toEqual(sorted);
    expect(callTable("PUMP.DUTY", pump, [...demand, ["", null], [0, 0]])).toEqual(sorted);
  });

  test("a demand may begin below 0, where the source lies above the field", () => {
    const [, [flow]] = callTable("PUMP.DUTY", pump, [
      [0, -20],
      [160, 140],
    ]);
    expect(flow).toBeGreaterThan(120);
  });

  test("no crossing says which is above", () => {
    const high = demand.map(([flow, head]) => [flow, head + 80]);
    const low = demand.map(([flow, head]) => [flow, head - 80]);
    expect(callError("PUMP.DUTY", pump, high)).toMatchObject({
      code: "#N/A",
      message:
        "the curves do not cross from 40 gpm to 160 gpm: the pump is below the demand throughout; it cannot deliver this demand",
    });
    expect(callError("PUMP.DUTY", pump, low).message).toBe(
      "the curves do not cross from 40 gpm to 160 gpm: the pump is above the demand throughout; carry both curves to more flow",
    );
  });

  test("several crossings are listed", () => {
    const hump = [
      [0, 100],
      [50, 130],
      [100, 100],
    ];
    const flat = [
      [0, 115],
      [100, 115],
    ];
    expect(callError("PUMP.DUTY", hump, flat)).toMatchObject({
      code: "#N/A",
      message: "the curves cross 2 times, at 14.6 gpm, 85.4 gpm",
    });
  });

  test("a crossing the wrong way round is no duty", () => {
    const rising = [
      [0, 50],
      [100, 150],
    ];
    const flat = [
      [0, 100],
      [100, 100],
    ];
    expect(callError("PUMP.DUTY", rising, flat)).toMatchObject({
      code: "#N/A",
      message:
        "the curves meet at 50 gpm only, and the pump does not settle there: it must be above the demand at less flow and below it at more",
    });
    expect(callError("PUMP.DUTY", flat, flat).message).toBe(
      "the curves lie on each other, so there is no one duty",
    );
  });

  test("curves without a flow in common", () => {
    expect(
      callError(
        "PUMP.DUTY",
        [
          [0, 100],
          [30, 90],
        ],
        demand,
      ).message,
    ).toBe("the curves have no flow in common: one ends at 30 gpm, the other begins at 40 gpm");
  });

  test("a wrong curve is named", () => {
    expect(callError("PUMP.DUTY", null, demand).message).toBe(
      "curve is missing: it must be two columns, flow (gpm) and head (ft)",
    );
    expect(callError("PUMP.DUTY", [[1, 2, 3]], demand).message).toBe(
      "curve must be two columns, flow (gpm) and head (ft); got a range of 1 row and 3 columns",
    );
    expect(callError("PUMP.DUTY", pump, [[40, 92]]).message).toBe(
      "demand must have two points or more; got one",
    );
    expect(callError("PUMP.DUTY", [...pump, [60, 130]], demand).message).toBe(
      "curve lists 60 gpm twice",
    );
    expect(
      callError(
        "PUMP.DUTY",
        [
          [0, 148],
          [60, "high"],
        ],
        demand,
      ).message,
    ).toBe('curve row 2 head must be a number, 0 ft or more; got "high"');
    expect(
      callError(
        "PUMP.DUTY",
        [
          [0, 148],
          [-60, 90],
        ],
        demand,
        "SI",
      ).message,
    ).toBe("curve row 2 flow must be 0 m³/h or more; got -60");
    expect(
      callError(
        "PUMP.DUTY",
        [
          [0, 148],
          [60, -90],
        ],
        demand,
      ).message,
    ).toBe("curve row 2 head must be 0 ft or more; got -90");
  });
});

describe("PUMP.CURVE", () => {
  const efficiency = [
    [40, 0.48],
    [80, 0.66],
    [120, 0.71],
    [160, 0.64],
  ];

  test("goes through every point, in any order, and never beyond them", () => {
    for (const [flow, value] of efficiency) {
      expect(callNumber("PUMP.CURVE", efficiency, flow)).toBeCloseTo(value, 12);
    }
    const shuffled = [...efficiency].reverse();
    expect(callNumber("PUMP.CURVE", shuffled, 100)).toBe(callNumber("PUMP.CURVE", efficiency, 100));
    for (let flow = 40; flow <= 160; flow++) {
      expect(callNumber("PUMP.CURVE", efficiency, flow)).toBeLessThanOrEqual(0.71);
    }
  });

  test("two points make a straight line; a blank last row is none", () => {
    const line = [
      [0, 2],
      [10, 4],
      [null, ""],
      [0, 0],
    ];
    expect(callNumber("PUMP.CURVE", line, 5)).toBeCloseTo(3, 12);
    expect(callNumber("PUMP.CURVE", line, 0)).toBe(2);
  });

  test("nothing is guessed beyond the points", () => {
    expect(callError("PUMP.CURVE", efficiency, 39.9)).toMatchObject({
      code: "#N/A",
      message: "the points cover flows from 40 to 160; got 39.9",
    });
    expect(callError("PUMP.CURVE", efficiency, 161).code).toBe("#N/A");
  });

  test("a wrong argument is named", () => {
    const message = (points: unknown, flow: unknown) =>
      callError("PUMP.CURVE", points, flow).message;
    expect(message(efficiency, -1)).toBe("flow must be 0 or more; got -1");
    expect(message(null, 50)).toBe(
      "points is missing: it must be two columns, flow and what the pump's sheet gives at it",
    );
    expect(message([[1, 2, 3]], 50)).toBe(
      "points must be two columns, flow and what the pump's sheet gives at it; got a range of 1 row and 3 columns",
    );
    expect(message([[40, 0.5]], 50)).toBe("points must have two points or more; got one");
    expect(message([...efficiency, [80, 0.7]], 50)).toBe("points lists 80 twice");
    expect(message([[40, "high"], ...efficiency.slice(1)], 50)).toBe(
      'points row 1 value must be a number, 0 or more; got "high"',
    );
    expect(message([[-4, 1], ...efficiency], 50)).toBe(
      "points row 1 flow must be 0 or more; got -4",
    );
  });
});

describe("PUMP.STATIC", () => {
  const curve = [
    [0, 148],
    [120, 124],
  ];

  test("both unit systems agree, and drop counts", () => {
    const us = callNumber("PUMP.STATIC", curve, 12, "US", 13);
    const metric = curve.map(([flow, head]) => [flow * GPM, head * FOOT]);
    expectClose(callNumber("PUMP.STATIC", metric, 12 * FOOT, "SI", 13 * FOOT), us * PSI, 1e-9);
    expectClose(us - callNumber("PUMP.STATIC", curve, 12), 13 / 2.311, 1e-3);
  });

  test("a lift below 0 adds", () => {
    expectClose(
      callNumber("PUMP.STATIC", curve, -2),
      callNumber("PUMP.STATIC", curve, 0, "US", 2),
      1e-12,
    );
  });

  test("needs a point at zero flow, and a pump that reaches the line", () => {
    expect(
      callError(
        "PUMP.STATIC",
        [
          [10, 148],
          [120, 124],
        ],
        12,
      ),
    ).toMatchObject({
      code: "#N/A",
      message: "curve has no point at zero flow: add the pump's head with the valve shut",
    });
    expect(callError("PUMP.STATIC", curve, 160)).toMatchObject({
      code: "#N/A",
      message: "the pump's head at zero flow does not lift the water to the line",
    });
    expect(callNumber("PUMP.STATIC", curve, 160, "US", 12)).toBeCloseTo(0, 9);
    expect(callError("PUMP.STATIC", curve, 12, "US", -1).message).toBe(
      "drop must be 0 ft or more; got -1",
    );
  });
});
