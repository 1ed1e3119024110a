import fc from "fast-check";
import { call, callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];
const SIZES = [
  [2.16, 7],
  [1.72, 7],
];
/** inlet, heads, spacing, inside, discharge, units */
const LINE = [45, 14, 45, SIZES, CHART, "US"] as const;

const GPM_IN_M3H = (231 * 0.0254 ** 3 * 3600) / 60;
const PSI_IN_KPA = 6.894757293168361;

/** Column of a profile, header dropped. */
function column(table: (string | number)[][], index: number): number[] {
  return table.slice(1).map((row) => row[index] as number);
}

/** Line arguments with some of the optional ones set. */
function line(options: {
  rise?: unknown;
  regulator?: unknown;
  friction?: unknown;
  first?: unknown;
  riser?: unknown;
  inlet?: unknown;
  heads?: unknown;
  spacing?: unknown;
  inside?: unknown;
  discharge?: unknown;
}): unknown[] {
  return [
    options.inlet ?? 45,
    options.heads ?? 14,
    options.spacing ?? 45,
    options.inside ?? SIZES,
    options.discharge ?? CHART,
    "US",
    options.rise,
    options.regulator,
    options.friction,
    options.first,
    options.riser,
  ];
}

describe("the one-value functions", () => {
  test("are cells of the profile", () => {
    const profile = callTable("LATERAL.PROFILE", ...LINE);
    for (const n of [1, 8, 14]) {
      expect(callNumber("LATERAL.PRESSURE", n, ...LINE)).toBe(profile[n][4]);
      expect(callNumber("LATERAL.HEADFLOW", n, ...LINE)).toBe(profile[n][6]);
    }
    expect(callNumber("LATERAL.FLOW", ...LINE)).toBe(profile[1][7]);
    const nozzles = column(profile, 5);
    const average = nozzles.reduce((sum, pressure) => sum + pressure, 0) / 14;
    expectClose(
      callNumber("LATERAL.VARIATION", ...LINE),
      (Math.max(...nozzles) - Math.min(...nozzles)) / average,
      1e-12,
    );
  });

  test("n counts from 1 to the number of heads", () => {
    expect(callError("LATERAL.PRESSURE", 0, ...LINE)).toMatchObject({
      code: "#VALUE!",
      message: "n must be a whole number from 1 to 14; got 0",
    });
    expect(callError("LATERAL.HEADFLOW", 15, ...LINE).message).toBe(
      "n must be a whole number from 1 to 14; got 15",
    );
    expect(callError("LATERAL.PRESSURE", 1.5, ...LINE).message).toMatch(/^n must be a whole/);
  });

  test("name the first dry head, which the tables show", () => {
    const uphill = line({ inlet: 10, rise: 60 });
    const message =
      /^pressure runs out at head (\d+) of 14: raise the inlet pressure, use larger tubing or fewer heads$/;
    const error = callError("LATERAL.PRESSURE", 1, ...uphill);
    expect(error.code).toBe("#N/A");
    const dry = Number(message.exec(error.message)?.[1]);
    for (const name of ["LATERAL.FLOW", "LATERAL.VARIATION"]) {
      expect(callError(name, ...uphill).message).toBe(error.message);
    }
    expect(callError("LATERAL.HEADFLOW", 1, ...uphill).message).toBe(error.message);
    const profile = callTable("LATERAL.PROFILE", ...uphill);
    expect(column(profile, 6).findIndex((flow) => flow === 0)).toBe(dry - 1);
    expect(profile[14][5]).toBe(0);
    expect(profile[14].slice(4, 8)).toEqual([0, 0, 0, 0]);
    expect((column(profile, 10) as unknown[]).indexOf("empty")).toBeGreaterThanOrEqual(dry - 1);
    expect(profile[14][10]).toBe("empty");
    const summary = new Map(callTable("LATERAL.SUMMARY", ...uphill) as [string, number][]);
    expect(summary.get("heads without pressure")).toBe(14 - dry + 1);
    expect(summary.get("lowest nozzle pressure (psi)")).toBe(0);
  });
});

/** A summary by its labels. */
const summaryOf = (...cells: unknown[]) =>
  new Map(callTable("LATERAL.SUMMARY", ...cells) as [string, number | string][]);

describe("the tables", () => {
  test("a profile has its units in the header and one row a head", () => {
    const us = callTable("LATERAL.PROFILE", ...LINE);
    expect(us[0]).toEqual([
      "head",
      "distance (ft)",
      "elevation (ft)",
      "inside diameter (in)",
      "line pressure (psi)",
      "nozzle pressure (psi)",
      "head flow (gpm)",
      "segment flow (gpm)",
      "speed (ft/s)",
      "friction loss (psi)",
      "water",
    ]);
    expect(new Set(column(us, 10))).toEqual(new Set(["runs"]));
    expect(us).toHaveLength(15);
    expect(callTable("LATERAL.PROFILE", 300, 3, 14, 44, 0.05, "SI")[0][4]).toBe(
      "line pressure (kPa)",
    );
  });

  test("a summary is labels and values that agree with the profile", () => {
    const profile = callTable("LATERAL.PROFILE", ...line({ rise: -10, riser: 2 }));
    const rows = callTable("LATERAL.SUMMARY", ...line({ rise: -10, riser: 2 })) as [
      string,
      number,
    ][];
    const nozzles = column(profile, 5);
    const flows = column(profile, 6);
    const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / 14;
    const expected: [string, number | string][] = [
      ["flow into the lateral (gpm)", profile[1][7] as number],
      ["lowest nozzle pressure (psi)", Math.min(...nozzles)],
      ["lowest at head", nozzles.indexOf(Math.min(...nozzles)) + 1],
      ["highest nozzle pressure (psi)", Math.max(...nozzles)],
      ["highest at head", nozzles.indexOf(Math.max(...nozzles)) + 1],
      ["average nozzle pressure (psi)", mean(nozzles)],
      ["pressure variation", (Math.max(...nozzles) - Math.min(...nozzles)) / mean(nozzles)],
      ["flow variation", (Math.max(...flows) - Math.min(...flows)) / mean(flows)],
      ["friction lost (psi)", column(profile, 9).reduce((sum, loss) => sum + loss, 0)],
      ["greatest speed (ft/s)", Math.max(...column(profile, 8))],
      ["length (ft)", 630],
      ["heads outside the chart's pressures", 0],
      ["heads without pressure", 0],
      ["highest line pressure (psi)", 45],
      ["highest line pressure at head", "inlet"],
      ["lowest pressure under a regulator (psi)", ""],
      ["air in the line", "none"],
    ];
    expect(rows.map(([label]) => label)).toEqual(expected.map(([label]) => label));
    rows.forEach(([, value], i) => {
      const [, wanted] = expected[i];
      if (typeof wanted === "number") expect(value).toBeCloseTo(wanted, 9);
      else expect(value).toBe(wanted);
    });
  });

  test("the highest line pressure is at a head where the ground falls faster than friction takes", () => {
    const falling = line({ rise: -40 });
    const rows = summaryOf(...falling);
    const pressures = column(callTable("LATERAL.PROFILE", ...falling), 4) as number[];
    const highest = Math.max(...pressures);
    expect(highest).toBeGreaterThan(45);
    expect(rows.get("highest line pressure (psi)")).toBe(highest);
    expect(rows.get("highest line pressure at head")).toBe(pressures.indexOf(highest) + 1);
  });

  test("what is under a regulator is the line's pressure less the riser, and CHECK.REGULATOR takes it", () => {
    // A regulator under every second head, on risers of 2.311 ft: 1 psi of water.
    const regulator = Array.from({ length: 14 }, (_, i) => [i % 2 === 0 ? 30 : null, 5]);
    const regulated = line({ inlet: 45, riser: 2.311, regulator });
    const profile = callTable("LATERAL.PROFILE", ...regulated);
    const under = (column(profile, 4) as number[]).filter((_, i) => i % 2 === 0);
    const rows = summaryOf(...regulated);
    const lowest = rows.get("lowest pressure under a regulator (psi)") as number;
    expectClose(lowest, Math.min(...under) - 1, 1e-4);
    const highest = rows.get("highest line pressure (psi)");
    expect(call("CHECK.REGULATOR", lowest, highest, lowest - 5.001, "US", 5)).toBe("OK");
    expect(call("CHECK.REGULATOR", lowest, highest, lowest - 4, "US", 5)).toMatch(
      /^Lowest pressure under a regulator is .*; the regulators need /,
    );
    // The nozzles just hold their set pressure there, and no more.
    const holds = (set: number) => {
      const all = line({ inlet: 45, riser: 2.311, regulator: set });
      const nozzles = column(callTable("LATERAL.PROFILE", ...all), 5) as number[];
      const checked = summaryOf(...all);
      const verdict = call(
        "CHECK.REGULATOR",
        checked.get("lowest pressure under a regulator (psi)"),
        checked.get("highest line pressure (psi)"),
        set,
      );
      expect([set, verdict === "OK"]).toEqual([set, nozzles.every((value) => value > set - 1e-6)]);
      return verdict === "OK";
    };
    expect([20, 25, 30, 35, 38, 40].map(holds)).toContain(true);
    expect(holds(40)).toBe(false);
  });

  test("air that gets in at a crest is said in words, in both systems", () => {
    const heights = (top: number) => Array.from({ length: 14 }, (_, i) => [i === 5 ? top : 0]);
    const over = line({ inlet: 45, rise: heights(100) });
    const profile = callTable("LATERAL.PROFILE", ...over);
    expect(column(profile, 10).slice(0, 7)).toEqual([
      ...new Array<string>(5).fill("runs"),
      "part full",
      "runs",
    ]);
    expect(profile[6].slice(4, 7)).toEqual([0, 0, 0]);
    expect(summaryOf(...over).get("air in the line")).toBe(
      "gets in at head 6: beyond it the water runs down part full, not as in a siphon",
    );
    const message =
      "air gets in at head 6 of 14, which stands above what is left of the pressure, and what lies " +
      "beyond is no siphon: raise the inlet pressure, use larger tubing or fewer heads, or lay the " +
      "line around that ground";
    for (const name of ["LATERAL.FLOW", "LATERAL.VARIATION"]) {
      expect(callError(name, ...over)).toMatchObject({ code: "#N/A", message });
    }
    expect(callError("LATERAL.PRESSURE", 1, ...over).message).toBe(message);

    const metres = Array.from({ length: 5 }, (_, i) => [i === 2 ? 33 : 0]);
    const beyond = [300, 5, 14, 44, 0.05, "SI", metres];
    expect(column(callTable("LATERAL.PROFILE", ...beyond), 10)).toEqual([
      "runs",
      "runs",
      "empty",
      "empty",
      "empty",
    ]);
    expect(summaryOf(...beyond).get("air in the line")).toBe(
      "from head 3 on: it stands above what is left of the pressure, and no water passes it",
    );
    expect(callError("LATERAL.FLOW", ...beyond).message).toMatch(/^air gets in at head 3 of 5, /);
  });

  test("heads outside the chart are counted, below and above", () => {
    const outside = (inlet: number, discharge: unknown) =>
      new Map(
        callTable("LATERAL.SUMMARY", ...line({ inlet, discharge })) as [string, number][],
      ).get("heads outside the chart's pressures");
    expect(outside(30, CHART)).toBe(14);
    expect(outside(80, CHART)).toBe(14);
    expect(outside(45, 0.63)).toBe(0);
  });

  test("a line that is dry all along varies from nothing", () => {
    const rows = new Map(
      callTable("LATERAL.SUMMARY", ...line({ inlet: 2, rise: 10, riser: 9 })) as [
        string,
        unknown,
      ][],
    );
    expect(rows.get("pressure variation")).toBe("");
    expect(rows.get("flow variation")).toBe("");
    expect(rows.get("heads without pressure")).toBe(14);
  });
});

describe("the arguments of a line", () => {
  const last = (options: Parameters<typeof line>[0], heads = 14) =>
    callNumber("LATERAL.PRESSURE", heads, ...line(options));

  test("US and SI agree when what is typed agrees", () => {
    const us = callTable(
      "LATERAL.PROFILE",
      ...line({ rise: 6, regulator: [[40, 5]], riser: 2, first: 20 }),
    );
    const si = callTable(
      "LATERAL.PROFILE",
      45 * PSI_IN_KPA,
      14,
      45 * 0.3048,
      SIZES.map(([bore, count]) => [bore * 25.4, count]),
      CHART.map(([pressure, flow]) => [pressure * PSI_IN_KPA, flow * GPM_IN_M3H]),
      "metric",
      6 * 0.3048,
      [[40 * PSI_IN_KPA, 5 * PSI_IN_KPA]],
      null,
      20 * 0.3048,
      2 * 0.3048,
    );
    const factors = [
      1,
      0.3048,
      0.3048,
      25.4,
      PSI_IN_KPA,
      PSI_IN_KPA,
      GPM_IN_M3H,
      GPM_IN_M3H,
      0.3048,
      PSI_IN_KPA,
    ];
    for (let row = 1; row <= 14; row++) {
      factors.forEach((factor, i) => {
        expectClose(si[row][i], (us[row][i] as number) * factor, 1e-8);
      });
    }
  });

  test("K in SI is per √kPa", () => {
    const k = 0.63;
    const us = callNumber("LATERAL.FLOW", 45, 14, 45, 2, k);
    const si = callNumber(
      "LATERAL.FLOW",
      45 * PSI_IN_KPA,
      14,
      45 * 0.3048,
      50.8,
      (k * GPM_IN_M3H) / Math.sqrt(PSI_IN_KPA),
      "SI",
    );
    expectClose(si, us * GPM_IN_M3H, 1e-9);
  });

  test.each([null, "", 0])("a blank (%p) is the default of every optional argument", (blank) => {
    const plain = callTable("LATERAL.PROFILE", ...LINE);
    const blanks = new Array(5).fill(blank) as unknown[];
    expect(callTable("LATERAL.PROFILE", ...LINE, ...blanks)).toEqual(plain);
    expect(callTable("LATERAL.PROFILE", ...LINE.slice(0, 5), blank, ...blanks)).toEqual(plain);
  });

  test("the defaults are those the help names", () => {
    expect(last({ friction: 150 })).toBe(last({}));
    expect(last({ first: 45 })).toBe(last({}));
    expect(last({ riser: 0, rise: 0 })).toBe(last({}));
    expect(last({ regulator: 40 })).toBe(last({ regulator: [[40, 5]] }));
    const si = (regulator: unknown) =>
      callNumber("LATERAL.FLOW", 320, 14, 14, 50, 0.05, "SI", null, regulator);
    expect(si(280)).toBe(si([[280, 34.5]]));
    expect(si(280)).not.toBe(si([[280, 34]]));
  });

  test("more friction, a rise and Darcy each change the answer as they should", () => {
    expect(last({ friction: 140 })).toBeLessThan(last({}));
    expect(last({ rise: 8 })).toBeLessThan(last({}));
    expect(last({ rise: -8 })).toBeGreaterThan(last({}));
    expect(last({ friction: "Darcy" })).not.toBe(last({}));
    expectClose(last({ friction: "darcy-weisbach" }), last({}), 0.02);
  });

  test("one spacing for all is a range of equal ones, first is the first of them", () => {
    const equal = new Array(14).fill(45) as number[];
    expect(last({ spacing: equal.map((length) => [length]) })).toBe(last({}));
    expect(last({ spacing: [equal] })).toBe(last({}));
    expect(last({ spacing: [[20, ...equal.slice(1)]] })).toBe(last({ first: 20 }));
    expect(last({ first: 20 })).toBeGreaterThan(last({}));
    expect(callError("LATERAL.FLOW", ...line({ spacing: [equal], first: 20 })).message).toMatch(
      /^first goes with one spacing/,
    );
    expect(callError("LATERAL.FLOW", ...line({ spacing: [equal.slice(3)] })).message).toBe(
      "spacing has 11 values for 14 heads",
    );
    // Cells behind the last are blanks, however the host hands them over.
    expect(last({ spacing: [[...equal, 0, "", null]] })).toBe(last({}));
  });

  test("sizes: one, a column, or two columns with counts", () => {
    const column = (values: number[]) => values.map((value) => [value]);
    const bores = [
      ...(new Array(7).fill(2.16) as number[]),
      ...(new Array(7).fill(1.72) as number[]),
    ];
    expect(last({ inside: column(bores) })).toBe(last({}));
    expect(last({ inside: [[2.16, 14]] })).toBe(last({ inside: 2.16 }));
    const listed = [
      [2.5, 0],
      [2.16, 14],
      [1.72, 0],
    ];
    expect(last({ inside: listed })).toBe(last({ inside: 2.16 }));
    const error = (inside: unknown) => callError("LATERAL.FLOW", ...line({ inside })).message;
    expect(
      error([
        [2.16, 7],
        [1.72, 6],
      ]),
    ).toBe("inside has 13 segments for 14 heads");
    expect(
      error([
        [2.16, 7],
        [1.72, 7.5],
      ]),
    ).toMatch(/^inside row 2 number of segments must be/);
    expect(error(column(bores.slice(1)))).toBe("inside has 13 values for 14 heads");
    expect(error([[2, 2, 2]])).toMatch(/^inside takes one value, one column/);
    expect(error(0)).toBe("inside is missing: it must be above 0 in");
    expect(error(-2)).toBe("inside must be above 0 in; got -2");
  });

  test("a rise is spread by distance, or given head by head", () => {
    const spread = callTable("LATERAL.PROFILE", ...line({ rise: 12.6, first: 90 }));
    const length = 14 * 45 + 45;
    column(spread, 2).forEach((height, i) => {
      expect(height).toBeCloseTo((12.6 * (90 + 45 * i)) / length, 9);
    });
    const heights = column(spread, 2);
    expect(last({ rise: [heights], first: 90 })).toBeCloseTo(last({ rise: 12.6, first: 90 }), 9);
    const error = (rise: unknown) => callError("LATERAL.FLOW", ...line({ rise })).message;
    expect(error([heights.slice(1)])).toBe("rise has 13 values for 14 heads");
    expect(error([heights, heights])).toMatch(/^rise takes one value/);
    expect(error([[1, "high"]])).toMatch(/^rise of head 2 must be a number/);
    expect(last({ rise: [[...heights, 0, null]], first: 90 })).toBe(
      last({ rise: [heights], first: 90 }),
    );
  });

  test("a riser costs the nozzle its height, the line little", () => {
    const profile = callTable("LATERAL.PROFILE", ...line({ riser: 2.311 }));
    column(profile, 4).forEach((pressure, i) => {
      expect(pressure - column(profile, 5)[i]).toBeCloseTo(1, 3);
    });
  });

  test("regulators: one, a row for all, a column, two columns", () => {
    const nozzles = (regulator: unknown) =>
      column(callTable("LATERAL.PROFILE", ...line({ inlet: 60, regulator })), 5);
    expect(nozzles(40)).toEqual(nozzles([[40, 5]]));
    nozzles(40).forEach((pressure) => expect(pressure).toBeCloseTo(40, 9));
    // Only the first half has one: the blanks are heads without.
    const half = new Array(14).fill(null).map((_, i) => [i < 7 ? 40 : null]);
    nozzles(half).forEach((pressure, i) => {
      if (i < 7) expect(pressure).toBeCloseTo(40, 9);
      else expect(pressure).toBeGreaterThan(45);
    });
    expect(nozzles(half)).toEqual(nozzles(half.map(([set]) => [set, ""])));
    // A loss of 0 is a loss of 0, not a blank.
    expect(nozzles([[70, 0]])[0]).toBeGreaterThan(nozzles([[70, 5]])[0]);
    const error = (regulator: unknown) => callError("LATERAL.FLOW", ...line({ regulator })).message;
    expect(error([[40], [40]])).toBe("regulator has 2 rows for 14 heads");
    expect(error([[40, 5, 1]])).toMatch(/^regulator takes one set pressure/);
    expect(error(-1)).toBe("regulator must be above 0 psi; got -1");
    expect(error([[40, -5]])).toBe("regulator loss must be 0 psi or more; got -5");
  });

  test("the number of heads and the inlet are checked by name", () => {
    const error = (options: Parameters<typeof line>[0]) =>
      callError("LATERAL.PROFILE", ...line(options)).message;
    expect(error({ heads: 501 })).toBe("heads must be a whole number from 1 to 500; got 501");
    expect(error({ heads: "many" })).toBe('heads must be a whole number from 1 to 500; got "many"');
    expect(error({ inlet: -3 })).toBe("inlet must be above 0 psi; got -3");
    expect(error({ discharge: 0 })).toMatch(/^discharge must be above 0/);
    expect(error({ friction: 20 })).toMatch(/^friction must be a Hazen–Williams C/);
    expect(error({ riser: -1 })).toBe("riser must be 0 ft or more; got -1");
  });
});

describe("LATERAL.INLET", () => {
  const tail = [14, 45, SIZES, CHART, "US"];

  test("inverts the profile's nozzle pressure, on each basis", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 70, noNaN: true }),
        fc.double({ min: -15, max: 15, noNaN: true }),
        fc.constantFrom(null, 0, "lowest", "Average", "LAST"),
        (target, rise, basis) => {
          const inlet = callNumber(
            "LATERAL.INLET",
            target,
            ...tail,
            rise,
            null,
            null,
            null,
            2,
            basis,
          );
          const nozzles = column(
            callTable("LATERAL.PROFILE", ...line({ inlet, rise, riser: 2 })),
            5,
          );
          const found =
            basis === "Average"
              ? nozzles.reduce((sum, pressure) => sum + pressure, 0) / 14
              : basis === "LAST"
                ? nozzles[13]
                : Math.min(...nozzles);
          expectClose(found, target, 1e-7);
        },
      ),
      { numRuns: 60, seed: 10 },
    );
  });

  test("has no answer above what regulators let through, nor above 10 MPa", () => {
    const ask = (target: number, basis?: string, inside: unknown = SIZES) =>
      callError(
        "LATERAL.INLET",
        target,
        14,
        45,
        inside,
        CHART,
        "US",
        null,
        40,
        null,
        null,
        null,
        basis,
      );
    for (const basis of ["lowest", "average", "last"]) {
      expect(ask(41, basis)).toMatchObject({
        code: "#N/A",
        message:
          "target is above what the regulators let through: lower it, or use regulators with a higher set pressure",
      });
    }
    expect(ask(30, "last", 0.2)).toMatchObject({
      code: "#N/A",
      message: "target needs an inlet pressure above 10 MPa (1450 psi)",
    });
  });

  test("gives the set pressure itself with the least that it takes", () => {
    const regulated = [null, 40];
    const inlet = callNumber("LATERAL.INLET", 40, ...tail, ...regulated);
    const profile = callTable("LATERAL.PROFILE", ...line({ inlet, regulator: 40 }));
    expect(Math.min(...column(profile, 5))).toBeCloseTo(40, 6);
    expect(Math.min(...column(profile, 4))).toBeCloseTo(45, 6);
  });

  test("a fall that gives more than the target by itself has no answer", () => {
    expect(
      callError("LATERAL.INLET", 5, ...tail, -200, null, null, null, null, "last"),
    ).toMatchObject({
      code: "#N/A",
    });
    expect(
      callError("LATERAL.INLET", 40, ...tail, null, null, null, null, null, "middle").message,
    ).toBe('basis must be one of "lowest", "average", "last"; got "middle"');
    expect(callError("LATERAL.INLET", 0, ...tail).message).toBe(
      "target must be above 0 psi; got 0",
    );
  });
});

describe("LATERAL.MAXHEADS", () => {
  const ask = (...cells: unknown[]) => callNumber("LATERAL.MAXHEADS", ...cells);

  test("is the last n whose line passes", () => {
    const most = ask(0.2, 50, 45, 1.72, CHART, "US", 1);
    const variation = (heads: number) =>
      callNumber("LATERAL.VARIATION", 50, heads, 45, 1.72, CHART, "US", 0.45 * heads);
    expect(variation(most)).toBeLessThanOrEqual(0.2);
    expect(variation(most + 1)).toBeGreaterThan(0.2);
  });

  test("each limit bites, a blank one does not", () => {
    const free = ask(0.2, 50, 45, 1.72, CHART);
    const withLimits = (lowest: unknown, maxvelocity: unknown) =>
      ask(0.2, 50, 45, 1.72, CHART, "US", null, null, null, null, null, lowest, maxvelocity);
    expect(withLimits(0, "")).toBe(free);
    expect(withLimits(48, null)).toBeLessThan(free);
    expect(withLimits(null, 3)).toBeLessThan(free);
  });

  test("ends at what its ranges cover, and at 500", () => {
    expect(
      ask(
        0.2,
        50,
        45,
        [
          [3, 4],
          [2.5, 3],
        ],
        CHART,
      ),
    ).toBe(7);
    expect(ask(0.2, 50, [[45, 45, 45]], 3, CHART)).toBe(3);
    expect(ask(0.5, 50, 45, 3, CHART, "US", null, [[40], [40], [null], [40], [40]])).toBe(5);
    expect(ask(0.2, 50, 45, 40, CHART)).toBe(500);
    // Two ranges of different length: the shorter.
    expect(
      ask(
        0.2,
        50,
        [[45, 45, 45]],
        [
          [3, 4],
          [2.5, 3],
        ],
        CHART,
      ),
    ).toBe(3);
  });

  test("slope, first, riser, regulator and friction are heard", () => {
    const with_ = (...tail: unknown[]) => ask(0.2, 50, 45, 1.72, CHART, "US", ...tail);
    const plain = with_();
    expect(with_(3)).toBeLessThan(plain);
    expect(with_(null, null, 100)).toBeLessThan(plain);
    expect(with_(null, 30)).toBeGreaterThan(plain);
    const lowest = (first: unknown, riser: unknown) => with_(null, null, null, first, riser, 46);
    expect(lowest(1, null)).toBeGreaterThanOrEqual(lowest(null, null));
    expect(lowest(null, 8)).toBeLessThan(lowest(null, null));
  });

  test("none passes: #N/A", () => {
    const error = callError(
      "LATERAL.MAXHEADS",
      0.2,
      50,
      45,
      1.72,
      CHART,
      "US",
      0,
      null,
      null,
      null,
      null,
      60,
    );
    expect(error.code).toBe("#N/A");
    expect(error.message).toMatch(/^even a line of one head/);
    expect(callError("LATERAL.MAXHEADS", 0, 50, 45, 1.72, CHART).message).toBe(
      "limit must be above 0; got 0",
    );
  });
});

describe("LATERAL.CHANGEOVER", () => {
  const TUBING = [
    [1.72, 0.7],
    [2.16, 1.1],
  ];
  const ask = (...cells: unknown[]) => callTable("LATERAL.CHANGEOVER", ...cells);

  test("is the layout with one segment less of the larger that fails", () => {
    const table = ask(0.2, 46, 14, 45, TUBING, CHART, "US");
    const large = table[1][1] as number;
    const variation = (count: number) =>
      callNumber(
        "LATERAL.VARIATION",
        46,
        14,
        45,
        [
          [2.16, count],
          [1.72, 14 - count],
        ],
        CHART,
      );
    expect(variation(large)).toBeLessThanOrEqual(0.2);
    expect(variation(large - 1)).toBeGreaterThan(0.2);
    expect(table[1][0]).toBeCloseTo(2.16, 12);
    expect(table[2]).toEqual([
      expect.closeTo(1.72, 12),
      14 - large,
      expect.closeTo((14 - large) * 45, 9),
      expect.closeTo((14 - large) * 31.5, 9),
    ]);
  });

  test("its first two columns are an `inside`", () => {
    const table = ask(0.3, 46, 14, 45, [...TUBING, [3, 2]], CHART, "US");
    expect(table.slice(1).map((row) => row[1])).toContain(0);
    const inside = table.slice(1).map((row) => row.slice(0, 2));
    expect(callNumber("LATERAL.VARIATION", 46, 14, 45, inside, CHART)).toBeLessThanOrEqual(0.3);
  });

  test("prices are per length of the call", () => {
    const si = ask(
      0.2,
      46 * PSI_IN_KPA,
      14,
      13.716,
      TUBING.map(([bore, price]) => [bore * 25.4, price / 0.3048]),
      CHART.map(([pressure, flow]) => [pressure * PSI_IN_KPA, flow * GPM_IN_M3H]),
      "SI",
    );
    const us = ask(0.2, 46, 14, 45, TUBING, CHART);
    expect(si.slice(1).map((row) => row[1])).toEqual(us.slice(1).map((row) => row[1]));
    expectClose(si[1][3], us[1][3] as number, 1e-9);
    expect(si[0]).toEqual(["inside diameter (mm)", "segments", "length (m)", "cost"]);
  });

  test("each limit bites", () => {
    const large = (...limits: unknown[]) =>
      ask(0.3, 46, 14, 45, TUBING, CHART, "US", null, null, null, null, null, ...limits)[1][1];
    expect(large(null, null)).toBe(ask(0.3, 46, 14, 45, TUBING, CHART)[1][1]);
    expect(large(40, null)).toBeGreaterThan(large(null, null) as number);
    expect(large(null, 5.5)).toBeGreaterThan(large(null, null) as number);
  });

  test("nothing passes, or the list is wrong", () => {
    expect(callError("LATERAL.CHANGEOVER", 0.01, 46, 14, 45, TUBING, CHART)).toMatchObject({
      code: "#N/A",
      message: expect.stringMatching(/^no layout of these sizes keeps within the limits/) as string,
    });
    const error = (tubing: unknown) =>
      callError("LATERAL.CHANGEOVER", 0.2, 46, 14, 45, tubing, CHART).message;
    expect(
      error([
        [2, 1],
        [2, 2],
      ]),
    ).toBe("tubing lists the inside diameter 2 in twice");
    expect(
      error([
        [2, 1],
        [1.5, 0],
      ]),
    ).toBe("tubing row 2 price must be above 0; got 0");
    expect(error([[2], [1.5]])).toMatch(
      /^tubing must be two columns, inside diameter \(in\) and price per ft/,
    );
    expect(error(null)).toMatch(/^tubing is missing/);
  });
});

describe("the handbook's shortcuts", () => {
  test("LATERAL.HEADS does not lose a head to rounding", () => {
    expect(call("LATERAL.HEADS", 0.3, 0.1)).toBe(3);
    expect(call("LATERAL.HEADS", 44.9, 45)).toBe(0);
    expect(call("LATERAL.HEADS", 630, 45, 0)).toBe(14);
    expect(callError("LATERAL.HEADS", 630, 0).message).toBe("spacing must be above 0; got 0");
    expect(callError("LATERAL.HEADS", 0, 45).message).toBe("length must be above 0; got 0");
  });

  test("LATERAL.F refuses what is out of range", () => {
    expect(callError("LATERAL.F", 501).message).toBe(
      "outlets must be a whole number from 1 to 500; got 501",
    );
    expect(callError("LATERAL.F", 10, 3.1).message).toBe(
      "exponent must be above 0 and at most 3; got 3.1",
    );
    expect(callError("LATERAL.F", 10, null, -1).message).toBe("firstratio must be above 0; got -1");
    expect(callNumber("LATERAL.F", 10, 0, "")).toBe(callNumber("LATERAL.F", 10));
  });

  test("LATERAL.LOSS is PIPE.FRICTION times LATERAL.F, in both systems", () => {
    for (const ratio of [1, 0.5]) {
      expectClose(
        callNumber("LATERAL.LOSS", 58, 2.16, 630, 14, "US", 145, ratio),
        callNumber("PIPE.FRICTION", 58, 2.16, 630, "US", 145) *
          callNumber("LATERAL.F", 14, null, ratio),
        1e-12,
      );
    }
    expectClose(
      callNumber("LATERAL.LOSS", 58 * GPM_IN_M3H, 2.16 * 25.4, 630 * 0.3048, 14, "SI"),
      callNumber("LATERAL.LOSS", 58, 2.16, 630, 14) * PSI_IN_KPA,
      1e-9,
    );
    expect(callNumber("LATERAL.LOSS", 0, 2.16, 630, 14, "US", "Darcy")).toBe(0);
    expect(callError("LATERAL.LOSS", -1, 2.16, 630, 14).message).toBe(
      "flow must be 0 gpm or more; got -1",
    );
  });

  test("LATERAL.SYSTEMCU needs the lowest below the average", () => {
    expect(callError("LATERAL.SYSTEMCU", 0.86, 50, 40).message).toBe(
      "lowest must be at most the average, 40; got 50",
    );
    expect(callError("LATERAL.SYSTEMCU", 86, 40, 50).message).toBe(
      "cu must be from 0 to 1; got 86",
    );
  });
});

test("a column of nth heads solves the line once", () => {
  // Lines that no other test asks about, so that the first call solves.
  const unique = [61.25, 400, 45, 12, CHART, "US"];
  const started = performance.now();
  callNumber("LATERAL.PRESSURE", 1, ...unique);
  const first = performance.now() - started;
  const again = performance.now();
  for (let n = 1; n <= 400; n++) callNumber("LATERAL.PRESSURE", n, ...unique);
  // Solving 400 times would take 400 times as long; a remembered line takes next to nothing.
  expect(performance.now() - again).toBeLessThan(100 * first + 50);
});
