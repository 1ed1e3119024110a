import fc from "fast-check";
import { call, callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

const GPM_PER_M3H = 4.402867539; // 1000/(3.785411784 × 60)
const PSI_PER_KPA = 0.1450377377;

describe("PIPE.FRICTION", () => {
  test("is the same pipe in both systems once the default is written out", () => {
    const us = callNumber("PIPE.FRICTION", 50, 2.067, 100, "US", 150);
    const si = callNumber("PIPE.FRICTION", 50 / GPM_PER_M3H, 2.067 * 25.4, 30.48, "SI", 150);
    expectClose(si * PSI_PER_KPA, us, 1e-9);
  });

  test.each([[undefined], [null], [""], [0]])("takes %p for friction as C 150", (blank) => {
    const written = callNumber("PIPE.FRICTION", 50, 2.067, 100, "US", 150);
    expect(callNumber("PIPE.FRICTION", 50, 2.067, 100, "US", blank)).toBe(written);
    expect(callNumber("PIPE.FRICTION", 50, 2.067, 100)).toBe(written);
  });

  test("loses nothing without flow or length, by either law", () => {
    expect(callNumber("PIPE.FRICTION", 0, 2.067, 100)).toBe(0);
    expect(callNumber("PIPE.FRICTION", 50, 2.067, 0)).toBe(0);
    expect(callNumber("PIPE.FRICTION", 0, 2.067, 100, "US", "Darcy")).toBe(0);
  });

  test("names what is wrong", () => {
    expect(callError("PIPE.FRICTION", -1, 2, 100).message).toBe(
      "flow must be 0 gpm or more; got -1",
    );
    expect(callError("PIPE.FRICTION", 50, 0, 100, "SI").message).toBe(
      "inside must be above 0 mm; got 0",
    );
    expect(callError("PIPE.FRICTION", 50, 2, "long").message).toBe(
      'length must be a number, 0 ft or more; got "long"',
    );
  });
});

describe("PIPE.VELOCITY and PIPE.MAXFLOW", () => {
  test("undo each other at any flow and bore", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.constantFrom("US", "SI"),
        (flow, inside, units) => {
          const speed = callNumber("PIPE.VELOCITY", flow, inside, units);
          expectClose(callNumber("PIPE.MAXFLOW", inside, units, speed), flow, 1e-12);
        },
      ),
    );
  });

  test("agree in both systems", () => {
    const us = callNumber("PIPE.VELOCITY", 50, 2.067);
    expectClose(
      callNumber("PIPE.VELOCITY", 50 / GPM_PER_M3H, 2.067 * 25.4, "SI") / 0.3048,
      us,
      1e-9,
    );
  });

  test.each([[null], [""], [0]])("take %p for the speed limit as 5 ft/s or 1.5 m/s", (blank) => {
    const us = callNumber("PIPE.MAXFLOW", 2, "US", blank);
    expect(us).toBe(callNumber("PIPE.MAXFLOW", 2, "US", 5));
    const si = callNumber("PIPE.MAXFLOW", 50, "SI", blank);
    expect(si).toBe(callNumber("PIPE.MAXFLOW", 50, "SI", 1.5));
  });
});

describe("PIPE.FITTING", () => {
  test("grows with k and with the square of the flow", () => {
    const one = callNumber("PIPE.FITTING", 20, 2, 1);
    expectClose(callNumber("PIPE.FITTING", 20, 2, 2.5), 2.5 * one, 1e-12);
    expectClose(callNumber("PIPE.FITTING", 40, 2, 1), 4 * one, 1e-12);
    expect(callNumber("PIPE.FITTING", 20, 2, 0)).toBe(0);
    expect(callNumber("PIPE.FITTING", 0, 2, 1)).toBe(0);
  });

  test("names a k below 0", () => {
    expect(callError("PIPE.FITTING", 20, 2, -1).message).toBe("k must be 0 or more; got -1");
  });
});

describe("PIPE.VOLUME", () => {
  test("is the same water in both systems", () => {
    const us = callNumber("PIPE.VOLUME", 2, 100);
    const si = callNumber("PIPE.VOLUME", 50.8, 30.48, "SI");
    expectClose(si / 3.785411784, us, 1e-12);
    expect(callNumber("PIPE.VOLUME", 2, 0)).toBe(0);
  });
});

describe("PIPE.SIZE", () => {
  const insides = [[3.068, 1.38, 2.469, 1.61, 2.067]];

  test("gives the entry itself, to the last digit, so that a lookup finds it", () => {
    for (let thousandths = 2000; thousandths < 2400; thousandths++) {
      const inside = thousandths / 1000;
      expect(call("PIPE.SIZE", 10, 10, 10, inside, "US")).toBe(inside);
    }
  });

  test("is the smallest that passes both limits, whatever the order of the list", () => {
    const bore = fc.integer({ min: 500, max: 6000 }).map((thousandths) => thousandths / 1000);
    fc.assert(
      fc.property(
        fc.array(bore, { minLength: 1, maxLength: 8 }),
        fc.double({ min: 1, max: 300, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        fc.constantFrom<(number | string)[]>(150, 130, "Darcy"),
        (list, flow, maxloss, maxvelocity, friction) => {
          const passes = (inside: number) =>
            callNumber("PIPE.FRICTION", flow, inside, 200, "US", friction) <= maxloss &&
            callNumber("PIPE.VELOCITY", flow, inside) <= maxvelocity;
          const passing = list.filter(passes);
          const column = list.map((inside) => [inside]);
          const size = () =>
            call("PIPE.SIZE", flow, 200, maxloss, column, "US", friction, maxvelocity);
          if (passing.length > 0) expect(size()).toBe(Math.min(...passing));
          else expect(size).toThrow("no pipe in insides is large enough");
        },
      ),
    );
  });

  test("lets a pipe pass that just meets a limit", () => {
    const loss = callNumber("PIPE.FRICTION", 50, 2.067, 300);
    const speed = callNumber("PIPE.VELOCITY", 50, 2.067);
    expect(call("PIPE.SIZE", 50, 300, loss, insides, "US", 150, speed)).toBe(2.067);
    expect(call("PIPE.SIZE", 50, 300, loss * 0.999999, insides, "US", 150, speed)).toBe(2.469);
    expect(call("PIPE.SIZE", 50, 300, loss, insides, "US", 150, speed * 0.999999)).toBe(2.469);
  });

  test("limits the speed to 5 ft/s or 1.5 m/s when blank", () => {
    // 60 gpm runs at 5.74 ft/s in 2.067 in; 12.5 m³/h at 1.53 m/s in 53.8 mm.
    expect(call("PIPE.SIZE", 60, 10, 90, insides)).toBe(2.469);
    expect(call("PIPE.SIZE", 60, 10, 90, insides, "US", null, 0)).toBe(2.469);
    expect(call("PIPE.SIZE", 60, 10, 90, insides, "US", null, 6)).toBe(2.067);
    expect(call("PIPE.SIZE", 12.5, 3, 900, [[53.8, 60]], "SI")).toBe(60);
    expect(call("PIPE.SIZE", 12, 3, 900, [[53.8, 60]], "SI")).toBe(53.8);
  });

  test("says which limit even the largest breaks", () => {
    const slow = callError("PIPE.SIZE", 50, 3000, 0.1, [[3.068, 1]]);
    expect(slow.code).toBe("#N/A");
    expect(slow.message).toBe(
      "no pipe in insides is large enough: even the largest loses more than maxloss; " +
        "list larger pipe or carry less flow in it",
    );
    expect(callError("PIPE.SIZE", 200, 1, 100, [[3.068, 1]]).message).toContain(
      "even the largest runs faster than maxvelocity;",
    );
    expect(callError("PIPE.SIZE", 500, 3000, 1, [[3.068, 1]]).message).toContain(
      "even the largest loses more than maxloss and runs faster than maxvelocity;",
    );
  });

  test("names a wrong list or limit", () => {
    expect(callError("PIPE.SIZE", 50, 300, 5, [[1, "x", 2]]).message).toContain("insides value 2");
    expect(callError("PIPE.SIZE", 50, 300, 5, null).message).toContain("insides is missing");
    expect(callError("PIPE.SIZE", 50, 300, 0, insides).message).toBe(
      "maxloss must be above 0 psi; got 0",
    );
  });
});

describe("PIPE.INSIDE", () => {
  test("gives the metric line tubing's bores", () => {
    expectClose(callNumber("PIPE.INSIDE", "ISO PE", 63, 17, "SI"), 55.1, 1e-12);
    expectClose(callNumber("PIPE.INSIDE", "ISO PE", 50, 17, "SI"), 43.8, 1e-12);
  });

  test("takes the size in the standard's own unit and gives the bore in that of the call", () => {
    const millimeters = callNumber("PIPE.INSIDE", "ISO PE", 63, 17, "SI");
    expectClose(callNumber("PIPE.INSIDE", "ISO PE", 63, 17), millimeters / 25.4, 1e-12);
    const inches = callNumber("PIPE.INSIDE", "IPS PE", 2, 11, "US");
    expectClose(callNumber("PIPE.INSIDE", "IPS PE", 2, 11, "SI"), inches * 25.4, 1e-12);
  });

  test("reads the series in any reasonable spelling", () => {
    const bore = callNumber("PIPE.INSIDE", "IPS PE", 2, 11);
    expect(callNumber("PIPE.INSIDE", "ips-pe", 2, 11)).toBe(bore);
    expect(callError("PIPE.INSIDE", "PVC", 2, 11).message).toBe(
      'series must be one of "ISO PE", "IPS PE", "SIDR"; got "PVC"',
    );
    expect(callError("PIPE.INSIDE", null, 2, 11).message).toContain("series is missing");
  });

  test.each([
    [
      "ISO PE",
      60,
      17,
      "size 60 is not in the ISO PE table here: it lists 20, 25, 32, 40, 50, 63, 75, 90, 110, 125, 140, 160 mm",
    ],
    [
      "ISO PE",
      25,
      17,
      "rating 17 is not in the ISO PE table here for 25 mm: it lists SDR 7.4, 9, 11, 13.6",
    ],
    [
      "IPS PE",
      2.5,
      11,
      "size 2.5 is not in the IPS PE table here: it lists 0.5, 0.75, 1, 1.25, 1.5, 2, 3, 4, 6 in",
    ],
    [
      "IPS PE",
      0.5,
      17,
      "rating 17 is not in the IPS PE table here for 0.5 in: it lists DR 7, 9, 11, 13.5",
    ],
    [
      "IPS PE",
      6,
      12,
      "rating 12 is not in the IPS PE table here for 6 in: it lists DR 7, 9, 11, 13.5, 15.5, 17, 21, 26, 32.5",
    ],
    [
      "SIDR",
      5,
      15,
      "size 5 is not in the SIDR table here: it lists 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 6 in",
    ],
    [
      "SIDR",
      2,
      11,
      "rating 11 is not in the SIDR table here for 2 in: it lists SIDR 5.3, 7, 9, 11.5, 15, 19",
    ],
  ])("has no %s %p at %p, and says what it lists", (series, size, rating, message) => {
    const error = callError("PIPE.INSIDE", series, size, rating);
    expect(error.code).toBe("#N/A");
    expect(error.message).toBe(message);
  });

  test("gives every listed pipe a bore that falls as the wall grows", () => {
    for (const [series, sizes, ratings] of [
      ["ISO PE", [50, 63, 75, 90, 110, 125, 140, 160], [7.4, 9, 11, 13.6, 17, 21, 26]],
      ["IPS PE", [2, 3, 4, 6], [7, 9, 11, 13.5, 15.5, 17, 21, 26, 32.5]],
    ] as const) {
      for (const size of sizes) {
        let last = 0;
        for (const rating of ratings) {
          const bore = callNumber("PIPE.INSIDE", series, size, rating, "SI");
          expect(bore).toBeGreaterThan(last);
          last = bore;
        }
      }
    }
  });
});

describe("PIPE.OUTSIDE", () => {
  test.each([
    ["ISO PE", 63, 17],
    ["ISO PE", 50, 11],
    ["IPS PE", 2, 13.5],
    ["SIDR", 1.5, 15],
  ])("%s %p, ratio %p: the wall between it and the bore is a little above the least", (...pipe) => {
    const outside = callNumber("PIPE.OUTSIDE", ...pipe);
    const inside = callNumber("PIPE.INSIDE", ...pipe);
    const [series, , rating] = pipe;
    const least = series === "SIDR" ? inside / rating : outside / rating;
    expect((outside - inside) / 2 / least).toBeGreaterThan(1.02);
    expect((outside - inside) / 2 / least).toBeLessThan(1.1);
  });

  test("takes the size in the standard's own unit and gives the diameter in that of the call", () => {
    expectClose(callNumber("PIPE.OUTSIDE", "ISO PE", 63, 17, "SI"), 63.2, 1e-12);
    expectClose(callNumber("PIPE.OUTSIDE", "ISO PE", 63, 17), 63.2 / 25.4, 1e-12);
    expectClose(callNumber("PIPE.OUTSIDE", "IPS PE", 2, 11), 2.375, 1e-12);
    expectClose(callNumber("PIPE.OUTSIDE", "IPS PE", 2, 17), 2.375, 1e-12);
    expectClose(callNumber("PIPE.OUTSIDE", "IPS PE", 2, 11, "SI"), 2.375 * 25.4, 1e-12);
  });

  test("a thin wall of small pipe of controlled bore is the least that the standard makes", () => {
    expectClose(callNumber("PIPE.OUTSIDE", "SIDR", 0.5, 15), 0.622 + 2.12 * 0.06, 1e-12);
  });

  test("refuses what PIPE.INSIDE refuses, in the same words", () => {
    for (const pipe of [
      ["ISO PE", 60, 17],
      ["ISO PE", 25, 17],
      ["IPS PE", 6, 12],
      ["SIDR", 2, 13],
      ["PVC", 2, 11],
      ["IPS PE", null, 11],
      ["IPS PE", 2, -1],
    ]) {
      const { code, message } = callError("PIPE.INSIDE", ...pipe);
      expect(callError("PIPE.OUTSIDE", ...pipe)).toMatchObject({ code, message });
    }
  });
});

describe("PIPE.EXPANSION", () => {
  test("the same line in both systems, longer when warmer and shorter when colder", () => {
    expectClose(callNumber("PIPE.EXPANSION", 100, 10), 0.09, 1e-12);
    const feet = callNumber("PIPE.EXPANSION", 630, 54, "US");
    expectClose(callNumber("PIPE.EXPANSION", 630 * 0.3048, 30, "SI"), feet * 0.3048, 1e-12);
    expectClose(callNumber("PIPE.EXPANSION", 630, -54), -feet, 1e-12);
    expect(callNumber("PIPE.EXPANSION", 0, 50)).toBe(0);
  });

  test("a wrong argument is named", () => {
    expect(callError("PIPE.EXPANSION", -1, 10).message).toBe("length must be 0 ft or more; got -1");
    expect(callError("PIPE.EXPANSION", 100, 400).message).toBe(
      "change must be from -360 to 360 °F; got 400",
    );
    expect(callError("PIPE.EXPANSION", 100, -201, "SI").message).toBe(
      "change must be from -200 to 200 °C; got -201",
    );
    expect(callError("PIPE.EXPANSION", 100, null).message).toMatch(/^change is missing/);
  });
});

describe("PIPE.RATING", () => {
  test("is the same pipe in both systems", () => {
    const us = callNumber("PIPE.RATING", "PE4710", 11, "US", 86);
    const si = callNumber("PIPE.RATING", "PE4710", 11, "SI", 30);
    expectClose(si * PSI_PER_KPA, us, 1e-9);
  });

  test("takes a number as the design stress of the units' own industry", () => {
    expectClose(callNumber("PIPE.RATING", 8000, 17, "SI"), 1000, 1e-12);
    expectClose(callNumber("PIPE.RATING", 6400, 17, "SI", 30), 800 * 0.87, 1e-12);
    expectClose(callNumber("PIPE.RATING", 1000, 11, "US", 90), 172, 1e-12);
  });

  test("goes by the material's industry when the series is blank", () => {
    // 30 °C is 86 °F: 0.87 for metric pipe, 0.892 for the inch series.
    expectClose(callNumber("PIPE.RATING", "PE100", 17, "SI", 30), 870, 1e-12);
    expectClose(callNumber("PIPE.RATING", "PE4710", 11, "US", 86), 200 * 0.892, 1e-12);
    expectClose(callNumber("PIPE.RATING", "PE100", 17, "SI", 30, "IPS PE"), 892, 1e-12);
    expectClose(callNumber("PIPE.RATING", "PE4710", 11, "US", 86, "ISO PE"), 174, 1e-12);
    expectClose(callNumber("PIPE.RATING", "PE100", 17, "US", 86) / PSI_PER_KPA, 870, 1e-9);
  });

  test("takes the ratio of a controlled inside diameter as such", () => {
    expectClose(callNumber("PIPE.RATING", 800, 15, "US", null, "SIDR"), 100, 1e-12);
    expectClose(callNumber("PIPE.RATING", 800, 15, "US", 140, "SIDR"), 50, 1e-12);
  });

  test.each([[undefined], [null], [""], [0], [-10], [20]])(
    "takes nothing off at %p, never adds",
    (temperature) => {
      expectClose(callNumber("PIPE.RATING", "PE100", 17, "SI", temperature), 1000, 1e-12);
      expectClose(callNumber("PIPE.RATING", "PE4710", 11, "US", temperature), 200, 1e-12);
    },
  );

  test("stops where the published table stops", () => {
    expectClose(callNumber("PIPE.RATING", "PE100", 17, "SI", 40), 740, 1e-12);
    expectClose(callNumber("PIPE.RATING", "PE100", 17, "US", 104) / PSI_PER_KPA, 740, 1e-9);
    expectClose(callNumber("PIPE.RATING", "PE4710", 11, "SI", 60) * PSI_PER_KPA, 100, 1e-9);
    for (const [units, series, temperature] of [
      ["SI", "ISO PE", 40.1],
      ["US", "IPS PE", 140.1],
      ["US", "SIDR", 141],
    ]) {
      const error = callError("PIPE.RATING", 800, 11, units, temperature, series);
      expect(error.code).toBe("#N/A");
      expect(error.message).toBe(
        "temperature is above the published table: ask the pipe's manufacturer what it carries there",
      );
    }
  });

  test("falls steadily with the temperature", () => {
    let last = Infinity;
    for (let temperature = 73; temperature <= 140; temperature++) {
      const psi = callNumber("PIPE.RATING", "PE4710", 11, "US", temperature);
      if (temperature > 73) expect(psi).toBeLessThan(last);
      last = psi;
    }
  });

  test("refuses a design basis or an MRS, and says so", () => {
    const basis = callError("PIPE.RATING", 1600, 11);
    expect(basis.code).toBe("#VALUE!");
    expect(basis.message).toContain(
      "strength must be the design stress, at most 1000 psi; got 1600",
    );
    expect(basis.message).toContain("hydrostatic design basis or a minimum required strength");
    expect(callError("PIPE.RATING", 10000, 17, "SI").message).toContain(
      "at most 8000 kPa; got 10000",
    );
    expect(callNumber("PIPE.RATING", 1000, 11)).toBeCloseTo(200, 9);
  });

  test("names an unknown material, a ratio out of range and a wild temperature", () => {
    expect(callError("PIPE.RATING", "PE63", 17).message).toBe(
      'strength must be one of "PE4710", "PE3608", "PE2708", "PE100", "PE80"; got "PE63"',
    );
    expect(callError("PIPE.RATING", null, 17).message).toBe(
      "strength is missing: it must be the design stress in psi, or one of PE4710, PE3608, PE2708, PE100, PE80",
    );
    expect(callError("PIPE.RATING", true, 17, "SI").message).toBe(
      "strength must be a number, above 0 kPa; got TRUE",
    );
    expect(callError("PIPE.RATING", "pe 100", 4, "SI").message).toBe(
      "rating must be from 5 to 50; got 4",
    );
    expect(callError("PIPE.RATING", "PE100", 17, "SI", 500).message).toBe(
      "temperature must be from -50 to 200 °C; got 500",
    );
  });

  test("metric pipe is never rated above its nominal pressure, whatever names its strength", () => {
    expectClose(callNumber("PIPE.RATING", "PE100", 26, "SI"), 600, 1e-12);
    expectClose(callNumber("PIPE.RATING", 7000, 26, "SI"), 560, 1e-12);
    expectClose(callNumber("PIPE.RATING", 7900, 26, "SI"), 600, 1e-12);
    expectClose(callNumber("PIPE.RATING", 6401, 21, "SI"), 640.1, 1e-12);
    expectClose(callNumber("PIPE.RATING", 6400, 21, "SI"), 600, 1e-12);
    expectClose(callNumber("PIPE.RATING", "PE100", 26, "SI", 30), 600 * 0.87, 1e-12);
    // Neither other series nor ratios that the metric table does not list have such a class.
    expectClose(callNumber("PIPE.RATING", "PE100", 26, "SI", null, "IPS PE"), 640, 1e-12);
    expectClose(callNumber("PIPE.RATING", "PE100", 17.6, "SI"), 16000 / 16.6, 1e-12);
  });

  test("metric pipe is never rated above 25 bar, however thick its wall, in either unit system", () => {
    for (const strength of ["PE100", "PE80"]) {
      for (const rating of [5, 6]) {
        expectClose(callNumber("PIPE.RATING", strength, rating, "SI"), 2500, 1e-12);
        expectClose(callNumber("PIPE.RATING", strength, rating, "US"), 362.594, 1e-5);
      }
    }
    expectClose(callNumber("PIPE.RATING", "PE80", 6, "SI", 30), 2500 * 0.87, 1e-12);
    expectClose(callNumber("PIPE.RATING", 5000, 6, "SI"), 2000, 1e-12);
    // The inch series has no such end.
    expectClose(callNumber("PIPE.RATING", "PE4710", 6, "US"), 400, 1e-12);
  });
});

describe("PIPE.SURGE", () => {
  const OUTSIDE = 63 / 25.4;
  const INSIDE = 55.1 / 25.4;

  test("is the same stop in both systems", () => {
    const us = callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", 630, 2, 150000);
    const si = callNumber(
      "PIPE.SURGE",
      58 / GPM_PER_M3H,
      63,
      55.1,
      "SI",
      630 * 0.3048,
      2,
      150000 / PSI_PER_KPA,
    );
    expectClose(si * PSI_PER_KPA, us, 1e-9);
  });

  test.each([[null], [""], [0]])("takes %p for the modulus as polyethylene's", (blank) => {
    const written = callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", 630, 2, 150000);
    expect(callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", 630, 2, blank)).toBe(written);
    const metric = callNumber("PIPE.SURGE", 13, 63, 55.1, "SI", null, null, blank);
    expectClose(
      metric,
      callNumber("PIPE.SURGE", 13, 63, 55.1, "SI", null, null, 150000 / PSI_PER_KPA),
      1e-9,
    );
  });

  test("is whole for any closure within the wave's way there and back", () => {
    const sudden = callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE);
    expect(callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", 630, 0)).toBe(sudden);
    // The wave takes about 1.5 s there and back.
    expect(callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", 630, 1.4)).toBe(sudden);
    const slow = callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", 630, 3);
    expect(slow).toBeLessThan(sudden);
    expectClose(callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", 630, 6), slow / 2, 1e-12);
    expectClose(callNumber("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", 315, 3), slow / 2, 1e-12);
  });

  test("needs a length with a closure time", () => {
    for (const blank of [null, "", 0]) {
      expect(callError("PIPE.SURGE", 58, OUTSIDE, INSIDE, "US", blank, 2).message).toBe(
        "length is missing: with a closure time it must be above 0 ft",
      );
    }
  });

  test("names an outside diameter that leaves no wall", () => {
    expect(callError("PIPE.SURGE", 58, 2, 2.17).message).toBe(
      "outside must be above inside; got 2 in and 2.17 in",
    );
    expect(callError("PIPE.SURGE", 58, 2, 2).message).toContain("outside must be above inside");
    expect(callNumber("PIPE.SURGE", 0, OUTSIDE, INSIDE)).toBe(0);
  });
});
