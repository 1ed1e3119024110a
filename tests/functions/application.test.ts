import fc from "fast-check";
import { callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

describe("APPLICATION.RATE", () => {
  test("both unit systems give the same rate", () => {
    const us = callNumber("APPLICATION.RATE", 4.2, 45, 50, "US");
    const si = callNumber(
      "APPLICATION.RATE",
      4.2 * 0.227124707,
      45 * 0.3048,
      50 * 0.3048,
      "metric",
    );
    expectClose(si / 25.4, us, 1e-9);
  });

  test("blank units are US, and no flow is no rate", () => {
    expect(callNumber("APPLICATION.RATE", 4, 40, 50)).toBe(
      callNumber("APPLICATION.RATE", 4, 40, 50, "US"),
    );
    expect(callNumber("APPLICATION.RATE", 0, 40, 50)).toBe(0);
  });

  test("a wrong argument is named with what came and what is allowed", () => {
    expect(callError("APPLICATION.RATE", -1, 40, 50)).toMatchObject({
      code: "#VALUE!",
      message: "flow must be 0 gpm or more; got -1",
    });
    expect(callError("APPLICATION.RATE", 4, 0, 50).message).toBe(
      "spacing must be above 0 ft; got 0",
    );
    expect(callError("APPLICATION.RATE", 4, 40, "wide", "SI").message).toBe(
      'move must be a number, above 0 m; got "wide"',
    );
    expect(callError("APPLICATION.RATE", null, 40, 50).message).toMatch(/^flow is missing/);
  });
});

describe("APPLICATION.DEPTH", () => {
  test("is gross without an efficiency, net with one", () => {
    expect(callNumber("APPLICATION.DEPTH", 0.25, 8)).toBe(2);
    expect(callNumber("APPLICATION.DEPTH", 0.25, 8, 0.75)).toBe(1.5);
  });

  test.each([null, "", 0, 1])("efficiency %p is 1", (efficiency) => {
    expect(callNumber("APPLICATION.DEPTH", 0.5, 3, efficiency)).toBe(1.5);
  });

  test("a percentage is refused", () => {
    expect(callError("APPLICATION.DEPTH", 0.5, 3, 75).message).toBe(
      "efficiency must be above 0 and at most 1; got 75",
    );
    expect(callError("APPLICATION.DEPTH", 0.5, -3).message).toBe(
      "hours must be 0 h or more; got -3",
    );
  });
});

describe("APPLICATION.CATCH", () => {
  test("both unit systems give the same depth", () => {
    expectClose(
      callNumber("APPLICATION.CATCH", 120, 101.6, "SI"),
      callNumber("APPLICATION.CATCH", 120, 4) * 25.4,
      1e-12,
    );
    expect(callNumber("APPLICATION.CATCH", 0, 4)).toBe(0);
  });

  test("a wrong argument is named", () => {
    expect(callError("APPLICATION.CATCH", -5, 4).message).toBe(
      "volume must be 0 mL or more; got -5",
    );
    expect(callError("APPLICATION.CATCH", 5, 0, "SI").message).toBe(
      "opening must be above 0 mm; got 0",
    );
  });
});

describe("APPLICATION.CU and APPLICATION.DU", () => {
  const catches = [10, 8, 12, 9, 11, 10, 7, 13];

  test("an empty cell is no can, a 0 is a dry can, any shape of range will do", () => {
    const grid = [
      [10, 8, null, 12, 9],
      [11, "", 10, 7, 13],
    ];
    expect(callNumber("APPLICATION.CU", grid)).toBe(callNumber("APPLICATION.CU", [catches]));
    expect(callNumber("APPLICATION.DU", grid)).toBe(callNumber("APPLICATION.DU", [catches]));
    expect(callNumber("APPLICATION.DU", [[...catches, 0]])).toBeLessThan(0.75);
  });

  test.each([null, "", 0, 0.25])("fraction %p is the low quarter", (fraction) => {
    expectClose(callNumber("APPLICATION.DU", [catches], fraction), 0.75, 1e-12);
  });

  test("the can that the fraction cuts counts in part", () => {
    // Low quarter of six: the lowest and half of the next, (1 + 2/2) / 1.5.
    expectClose(callNumber("APPLICATION.DU", [[1, 2, 3, 4, 5, 6]]), 2 / 1.5 / 3.5, 1e-12);
    expectClose(callNumber("APPLICATION.DU", [[6, 2, 3, 4, 5, 1]], 0.5), 2 / 3.5, 1e-12);
    expectClose(callNumber("APPLICATION.DU", [[1, 3]], 0.1), 0.5, 1e-12);
    expectClose(callNumber("APPLICATION.DU", [catches], 1), 1, 1e-12);
  });

  test("an even catch is 1, and neither depends on the order or the unit", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 2, maxLength: 40 }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (depths, factor) => {
          const turned = [depths.map((depth) => depth * factor).reverse()];
          for (const name of ["APPLICATION.CU", "APPLICATION.DU"]) {
            const uniformity = callNumber(name, [depths]);
            expect(uniformity).toBeLessThanOrEqual(1 + 1e-12);
            expect(Math.abs(callNumber(name, turned) - uniformity)).toBeLessThan(1e-9);
            expect(callNumber(name, [depths.map(() => depths[0])])).toBeCloseTo(1, 12);
          }
        },
      ),
    );
  });

  test("a wrong argument is named", () => {
    expect(callError("APPLICATION.CU", [[1], ["dry"]]).message).toBe(
      'catch row 2 column 1 must be a number, 0 or more; got "dry"',
    );
    expect(callError("APPLICATION.CU", [[1, -2]]).message).toBe(
      "catch row 1 column 2 must be 0 or more; got -2",
    );
    expect(callError("APPLICATION.DU", [[5], [null]]).message).toBe(
      "catch must hold at least 2 cans; got 1",
    );
    expect(callError("APPLICATION.CU", [[0], [0], [0]]).message).toBe(
      "catch holds no water: all 3 cans are 0",
    );
    expect(callError("APPLICATION.CU", [[null], [""]]).message).toBe(
      "catch is missing: it must be 0 or more",
    );
    expect(callError("APPLICATION.DU", [catches], 25).message).toBe(
      "fraction must be above 0 and at most 1; got 25",
    );
  });
});

describe("APPLICATION.OVERLAP", () => {
  test("straight lines join the catches, the last is where the water ends", () => {
    // One cell, its center 50 from each of four heads that reach it.
    const at50 = (radial: number[], step: number) =>
      callTable("APPLICATION.OVERLAP", [radial], step, 60, 80, 1)[0][0];
    expect(at50([8, 0], 80)).toBeCloseTo(4 * 3, 12);
    expect(at50([8, 6, 1], 40)).toBeCloseTo(4 * 4.75, 12);
    expect(at50([8, 6], 50)).toBeCloseTo(4 * 6, 12);
    expect(at50([8, 6], 49)).toBe(0);
  });

  test("a row runs along the line, the rows go from one position to the next", () => {
    const depths = callTable("APPLICATION.OVERLAP", [[1], [0]], 12, 10, 40, 4) as number[][];
    expect(depths).toHaveLength(4);
    expect(depths.every((row) => row.length === 4)).toBe(true);
    // The center is 5 from the line, 1.25 along it from one head and 8.75 from the next.
    const twoHeads = 2 - (Math.hypot(1.25, 5) + Math.hypot(8.75, 5)) / 12;
    expect(depths[0][0]).toBeCloseTo(twoHeads, 12);
    expect(depths[1][0]).toBe(0);
    expect(depths[3]).toEqual(depths[0].map((depth) => expect.closeTo(depth, 12)));
  });

  test.each([null, "", 0, 10])("grid %p is 10 cells a side", (grid) => {
    const depths = callTable("APPLICATION.OVERLAP", [[1], [0]], 40, 45, 50, grid);
    expect(depths).toHaveLength(10);
    expect(depths[0]).toHaveLength(10);
  });

  test("keeps the water of any profile", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 2, maxLength: 8 }),
        fc.integer({ min: 30, max: 60 }),
        fc.integer({ min: 30, max: 60 }),
        fc.integer({ min: 30, max: 150 }),
        (inner, spacing, move, reach) => {
          const radial = [...inner, 0];
          const step = reach / (radial.length - 1);
          // Volume of a turned straight piece between radii a and b, depths p and q.
          let volume = 0;
          for (let i = 1; i < radial.length; i++) {
            const [a, b, p, q] = [(i - 1) * step, i * step, radial[i - 1], radial[i]];
            volume += (Math.PI * (b - a) * (p * (2 * a + b) + q * (a + 2 * b))) / 3;
          }
          const cells = callTable(
            "APPLICATION.OVERLAP",
            [radial],
            step,
            spacing,
            move,
            40,
          ).flat() as number[];
          const mean = cells.reduce((sum, depth) => sum + depth, 0) / cells.length;
          expect(Math.abs(mean - volume / (spacing * move))).toBeLessThan(
            0.01 * Math.max(...radial),
          );
        },
      ),
      { numRuns: 25 },
    );
  });

  test("limits are named", () => {
    const overlap = (...cells: unknown[]) => callError("APPLICATION.OVERLAP", ...cells).message;
    expect(overlap([[1], [0]], 40, 45, 50, 101)).toBe(
      "grid must be a whole number from 1 to 100; got 101",
    );
    expect(overlap([[1], [0]], 40, 45, 50, 2.5)).toMatch(/^grid must be a whole number/);
    expect(overlap([[1], [0]], 401, 40, 50)).toBe(
      "radial reaches 401, more than 10 times the smaller of spacing and move (40): check step, spacing and move",
    );
    expect(overlap(5, 40, 45, 50)).toBe(
      "radial must hold at least 2 depths, at the head and one step out; got 1",
    );
    expect(overlap([[1], [-1]], 40, 45, 50)).toBe("radial value 2 must be 0 or more; got -1");
    expect(overlap([[1], [0]], 0, 45, 50)).toBe("step must be above 0; got 0");
    expect(overlap([[1], [0]], 40, 0, 50)).toBe("spacing must be above 0; got 0");
    expect(overlap([[1], [0]], 40, 45, null)).toMatch(/^move is missing/);
  });
});

describe("APPLICATION.FOLD", () => {
  test("lays the catch over itself at every move, from the line on", () => {
    const across = [[1], [2], [4], [8], [16], [32], [64]];
    // The line is at 8; a move of 3 steps brings 1 and 64 there, 2 and 16 a step away.
    expect(callTable("APPLICATION.FOLD", across, 10, 30)).toEqual([[73], [18], [36]]);
    expect(callTable("APPLICATION.FOLD", across, 10, 10)).toEqual([[127]]);
    expect(callTable("APPLICATION.FOLD", [[5]], 10, 30)).toEqual([[5], [0], [0]]);
    expect(callTable("APPLICATION.FOLD", [[1, 2, 4]], 1.525, 18.3)).toHaveLength(12);
  });

  test("loses no water", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 99 }), { maxLength: 20 }),
        fc.integer({ min: 1, max: 40 }),
        (half, steps) => {
          const across = [[...half, 7, ...half.map((depth) => depth + 1)]];
          const folded = callTable("APPLICATION.FOLD", across, 0.1, 0.1 * steps).flat() as number[];
          expect(folded).toHaveLength(steps);
          expect(folded.reduce((a, b) => a + b)).toBe(across[0].reduce((a, b) => a + b));
        },
      ),
    );
  });

  test("a wrong argument is named", () => {
    const fold = (...cells: unknown[]) => callError("APPLICATION.FOLD", ...cells).message;
    expect(fold([[1], [2]], 10, 30)).toBe(
      "catch must hold an odd number of cans, with the line at the middle one; got 2",
    );
    expect(fold([[1], [2], [1]], 10, 35)).toBe(
      "move must be a whole number of steps; got a move of 35 and a step of 10",
    );
    expect(fold([[1], [2], [1]], 1e6, 1e-6)).toMatch(/^move must be a whole number of steps/);
    expect(fold([[1], [2], [1]], 1, 501)).toBe("move must be at most 500 steps; got 501 (501 ÷ 1)");
    expect(fold([[1], [null], [1]], 10, 30)).toBe("catch value 2 is missing: it must be 0 or more");
    expect(
      fold(
        [
          [1, 2],
          [1, 2],
        ],
        10,
        30,
      ),
    ).toMatch(/^catch takes one row or one column/);
    expect(fold(null, 10, 30)).toBe("catch is missing: it must be 0 or more");
    expect(callTable("APPLICATION.FOLD", [[1]], 1, 500)).toHaveLength(500);
  });
});

describe("APPLICATION.COARSENESS, EFFECTIVE and EFFICIENCY", () => {
  test("both unit systems agree", () => {
    expectClose(
      callNumber("APPLICATION.COARSENESS", 45 * 6.894757293168361, 3.96875, "SI"),
      callNumber("APPLICATION.COARSENESS", 45, 0.15625),
      1e-12,
    );
    expectClose(
      callNumber("APPLICATION.EFFECTIVE", 5.08, 16.09344, 12, "SI"),
      callNumber("APPLICATION.EFFECTIVE", 0.2, 10, 12),
      1e-12,
    );
  });

  test("a still day without evaporation loses the constant's share only", () => {
    expect(callNumber("APPLICATION.EFFECTIVE", 0, 0, 12)).toBe(0.976);
  });

  test("beyond the equation's range is no answer", () => {
    expect(callError("APPLICATION.EFFECTIVE", 25, 83, 17, "SI")).toMatchObject({
      code: "#N/A",
      message:
        "the equation leaves less than 0.1 for the ground: et and wind are beyond what it was made for",
    });
    expect(callNumber("APPLICATION.EFFECTIVE", 25, 82, 17, "SI")).toBeGreaterThan(0.1);
    expect(callError("APPLICATION.EFFICIENCY", 0.5, 0.95)).toMatchObject({
      code: "#N/A",
      message:
        "no depth of water is enough at this adequacy with so low a cu: raise cu or lower adequacy",
    });
  });

  test.each([null, "", 0, 1])("effective %p is no loss in the air", (effective) => {
    expectClose(callNumber("APPLICATION.EFFICIENCY", 0.86, 0.8, effective), 0.853392, 1e-9);
  });

  test("never more than what reaches the ground", () => {
    expect(callNumber("APPLICATION.EFFICIENCY", 0.6, 0.5, 0.9)).toBe(0.9);
    expect(callNumber("APPLICATION.EFFICIENCY", 1, 0.95)).toBe(1);
  });

  test("a wrong argument is named", () => {
    expect(callError("APPLICATION.EFFICIENCY", 86, 0.8).message).toBe(
      "cu must be above 0 and at most 1; got 86",
    );
    expect(callError("APPLICATION.EFFICIENCY", 0.86, 0.99).message).toBe(
      "adequacy must be from 0.5 to 0.95; got 0.99",
    );
    expect(callError("APPLICATION.EFFICIENCY", 0.86, 0.8, 1.2).message).toBe(
      "effective must be above 0 and at most 1; got 1.2",
    );
    expect(callError("APPLICATION.COARSENESS", 0, 0.15).message).toBe(
      "pressure must be above 0 psi; got 0",
    );
    expect(callError("APPLICATION.COARSENESS", 45, -1, "SI").message).toBe(
      "nozzle must be above 0 mm; got -1",
    );
    expect(callError("APPLICATION.EFFECTIVE", -1, 5, 12).message).toBe(
      "et must be 0 in/day or more; got -1",
    );
    expect(callError("APPLICATION.EFFECTIVE", 5, -1, 12, "SI").message).toBe(
      "wind must be 0 km/h or more; got -1",
    );
    expect(callError("APPLICATION.EFFECTIVE", 5, 1, 0, "SI").message).toBe(
      "coarseness must be above 0; got 0",
    );
  });
});
