import { callError, callNumber, callTable } from "../support/host";
import { expectClose, expectWithin } from "../support/published";

/** Five corners in feet, the first at the origin, a cut-off corner in the northeast. */
const FIELD = [
  [0, 0],
  [630, 0],
  [630, 520],
  [400, 700],
  [0, 700],
];
const CLUMP = [[300, 400, 40]];
const layout = [FIELD, 90, 45, 50, "US", 22.5, 10, CLUMP, 14, 25];
const error = (name: string, ...cells: unknown[]) => callError(name, ...cells).message;
const withCorners = (corners: unknown) => error("FIELD.AREA", corners);
const FOOT = 0.3048;

describe("corners, obstacles and spots, however they are given", () => {
  const runs = callTable("FIELD.RUNS", ...layout);
  const again = (corners: unknown, obstacles: unknown = CLUMP) =>
    callTable("FIELD.RUNS", corners, 90, 45, 50, "US", 22.5, 10, obstacles, 14, 25);

  test("either way round, the first corner again, trailing blanks, a row of headers: one field", () => {
    const blanks = [
      [null, null],
      ["", " "],
      [undefined, ""],
    ];
    const header = [["x (ft)", "y (ft)"]];
    for (const corners of [
      [...FIELD, FIELD[0]],
      [...FIELD, ...blanks],
      [...header, ...FIELD, FIELD[0], ...blanks],
    ]) {
      expect(again(corners)).toEqual(runs);
    }
    again([...FIELD].reverse()).forEach((row, i) =>
      row.forEach((value, j) => {
        if (typeof value === "number") expectWithin(value, Number(runs[i][j]), 1e-9);
      }),
    );
    expect(again(FIELD, [["x", "y", "radius"], ...CLUMP, [0, 0, 0], [null, "", null]])).toEqual(
      runs,
    );
  });

  test("(0, 0) is a corner wherever it stands in the list", () => {
    const area = callNumber("FIELD.AREA", FIELD);
    for (let from = 0; from < FIELD.length; from++) {
      expectClose(
        callNumber("FIELD.AREA", [...FIELD.slice(from), ...FIELD.slice(0, from)]),
        area,
        1e-12,
      );
    }
  });

  test("numbers typed as text are no headers", () => {
    expect(withCorners([["0", "0"], ...FIELD.slice(1)])).toBe(
      'corners row 1 x must be a number in ft; got "0"',
    );
    expect(withCorners([["0,5", "0,5"], ...FIELD])).toMatch(
      /^corners row 1 x must be a number in ft/,
    );
    expect(withCorners([["1e3", "1e3"], ...FIELD])).toMatch(
      /^corners row 1 x must be a number in ft/,
    );
    expect(withCorners([["x", 5], ...FIELD])).toMatch(/^corners row 1 x must be a number in ft/);
  });

  test("what is wrong with them is said, rows counted below the headers", () => {
    expect(withCorners(null)).toBe("corners is missing: it must be two columns, x (ft) and y (ft)");
    expect(withCorners([[1, 2, 3]])).toBe(
      "corners must be two columns, x (ft) and y (ft); got a range of 1 row and 3 columns",
    );
    expect(withCorners([...FIELD.slice(0, 2), [5]])).toMatch(/^corners must be two columns/);
    expect(withCorners(FIELD.slice(0, 2))).toBe("corners must have 3 to 200 rows; got 2");
    expect(withCorners([...FIELD.slice(0, 2), FIELD[0]])).toMatch(/got 2$/);
    expect(withCorners([FIELD[0], FIELD[1], FIELD[1], FIELD[2]])).toMatch(
      /^corners 2 and 3 are the same place/,
    );
    expect(withCorners([...FIELD.slice(0, 2), [null, 5], ...FIELD.slice(2)])).toBe(
      "corners row 3 x is missing: it must be a number in ft",
    );
    expect(withCorners([["x", "y"], ...FIELD.slice(0, 2), [6, "b"]])).toBe(
      'corners row 3 y must be a number in ft; got "b"',
    );
    expect(error("FIELD.AREA", [...FIELD.slice(0, 2), [6, true]], "SI")).toBe(
      "corners row 3 y must be a number in m; got TRUE",
    );
    expect(withCorners([FIELD[0], FIELD[2], FIELD[1], FIELD[4]])).toBe(
      "corners: edge 1–2 crosses edge 3–4",
    );
  });

  test("200 corners are taken, and one more that is the first again", () => {
    const circle = Array.from({ length: 200 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 200;
      return [300 * Math.cos(angle), 300 * Math.sin(angle)];
    });
    // A regular polygon: ½ n r² sin(2π/n).
    const area = (0.5 * 200 * 300 ** 2 * Math.sin(Math.PI / 100)) / 43_560;
    expectClose(callNumber("FIELD.AREA", [...circle, circle[0]]), area, 1e-12);
    expect(withCorners([...circle, [301, -5]])).toBe("corners must have 3 to 200 rows; got 201");
    expect(withCorners([...circle, [301, -5], [302, -4]])).toMatch(/got 202$/);
  });

  test("obstacles: radius above 0, up to 50", () => {
    const message = (obstacles: unknown) =>
      error("FIELD.RUNS", FIELD, 90, 45, 50, "US", 22.5, 10, obstacles);
    expect(message([[300, 400, -1]])).toBe("obstacles row 1 radius must be above 0 ft; got -1");
    expect(message([[300, 400]])).toMatch(
      /^obstacles must be three columns, x \(ft\), y \(ft\) and radius \(ft\); got a range/,
    );
    expect(message(new Array(51).fill([300, 400, 1]))).toBe(
      "obstacles must have 1 to 50 rows; got 51",
    );
    expect(
      callTable("FIELD.RUNS", FIELD, 90, 45, 50, "US", 22.5, 10, new Array(50).fill([300, 400, 1])),
    ).toBeDefined();
  });

  test("spots: three to a hundred, at different places, not on one line", () => {
    const message = (spots: unknown) => error("FIELD.HEIGHT", [[1, 1]], spots);
    expect(
      message([
        [0, 0, 1],
        [9, 0, 2],
      ]),
    ).toBe("spots must have 3 to 100 rows; got 2");
    expect(message(new Array(101).fill([0, 0, 1]))).toMatch(/got 101$/);
    expect(
      message([
        [0, 0, 1],
        [9, 0, 2],
        [0, 0, 3],
      ]),
    ).toBe("spots 1 and 3 are the same place");
    expect(
      message([
        [0, 0, 1],
        [9, 9, 2],
        [4, 4, 3],
      ]),
    ).toMatch(/^spots lie on one line/);
    expect(
      message([
        [0, 0, 1],
        [9, 0, null],
        [0, 9, 3],
      ]),
    ).toBe("spots row 2 height is missing: it must be a number");
    // A spot at the origin at height 0 is a spot.
    expect(
      callTable(
        "FIELD.HEIGHT",
        [[1, 1]],
        [
          [9, 0, 9],
          [0, 9, 18],
          [0, 0, 0],
        ],
      )[1][0],
    ).toBeCloseTo(3, 12);
    const far = callError(
      "FIELD.HEIGHT",
      [
        [1, 1],
        [99, 0],
      ],
      [
        [9, 0, 9],
        [0, 9, 18],
        [0, 0, 0],
      ],
    );
    expect([far.code, far.message]).toEqual([
      "#N/A",
      "spots do not reach points row 2: take heights farther out, beyond it",
    ]);
  });
});

describe("a layout", () => {
  test("in both unit systems is the same field", () => {
    const meters = (table: number[][]) => table.map((row) => row.map((value) => value * FOOT));
    const si = [
      meters(FIELD),
      90,
      45 * FOOT,
      50 * FOOT,
      "SI",
      22.5 * FOOT,
      10 * FOOT,
      meters(CLUMP),
      14,
      25 * FOOT,
    ];
    const us = callTable("FIELD.RUNS", ...layout);
    const them = callTable("FIELD.RUNS", ...si);
    expect(us[0]).toEqual([
      "position",
      "run",
      "near x (ft)",
      "near y (ft)",
      "far x (ft)",
      "far y (ft)",
      "length (ft)",
      "heads",
      "area covered (acre)",
      "beyond the edge (acre)",
    ]);
    expect(them[0][8]).toBe("area covered (ha)");
    expect(them).toHaveLength(us.length);
    const scale = [1, 1, FOOT, FOOT, FOOT, FOOT, FOOT, 1, 0.40468564224, 0.40468564224];
    us.slice(1).forEach((row, i) =>
      row.forEach((value, j) => expectWithin(them[i + 1][j], Number(value) * scale[j], 1e-8)),
    );
    const summary = callTable("FIELD.SUMMARY", ...si);
    expect(summary.map(([label]) => label)).toEqual([
      "area (ha)",
      "positions",
      "runs",
      "heads of the longest run",
      "heads in all",
      "share covered",
      "thrown beyond the edge (ha)",
      "most heads to shut off",
    ]);
    expectWithin(summary[5][1], Number(callTable("FIELD.SUMMARY", ...layout)[5][1]), 1e-9);
  });

  test("by hand: 14 rows, two of them cut by the clump, four by the slanted edge", () => {
    const runs = callTable("FIELD.RUNS", ...layout).slice(1);
    expect(runs).toHaveLength(16);
    // 25 off the middle of a circle of 40: its half chord is √(40² − 25²).
    const half = Math.sqrt(40 ** 2 - 25 ** 2);
    const [first, second] = runs.filter(([position]) => position === 8);
    [8, 1, 10, 375, 300 - half, 375, 290 - half, 6].forEach((value, i) =>
      expectWithin(first[i], value, 1e-9),
    );
    [8, 2, 300 + half, 375, 620, 375, 320 - half, 6].forEach((value, i) =>
      expectWithin(second[i], value, 1e-9),
    );
    // The slanted edge falls 180 over 230; 10 off it is 10·√(230² + 180²)/180 along the row.
    const last = runs[15];
    const edge = 400 + (25 * 230) / 180;
    expectWithin(last[4], edge - (10 * Math.hypot(230, 180)) / 180, 1e-9);
    expect(last[7]).toBe(9);
  });

  test("blanks are half a spacing, no setback, no obstacle, no most, rows in the middle", () => {
    const plain = callTable("FIELD.RUNS", FIELD, 90, 45, 50);
    for (const blank of [null, "", 0]) {
      expect(
        callTable(
          "FIELD.RUNS",
          FIELD,
          90,
          45,
          50,
          "US",
          blank,
          blank,
          blank === 0 ? null : blank,
          blank,
          blank,
        ),
      ).toEqual(plain);
    }
    callTable("FIELD.RUNS", FIELD, 90, 45, 50, "US", 22.5, 0, null, 500, 25).forEach((row, i) =>
      row.forEach((value, j) => {
        if (typeof value === "number") expectWithin(value, Number(plain[i][j]), 1e-9);
      }),
    );
    expect(
      callTable("FIELD.RUNS", FIELD, 90, 45, 50, "US", null, null, null, 5)
        .slice(1)
        .every((row) => row[7] === 5),
    ).toBe(true);
  });

  test("first, setback and start say where the heads stand", () => {
    const heads = (first: unknown, setback: unknown, start: unknown) =>
      callTable("FIELD.HEADS", FIELD, 90, 45, 50, "US", first, setback, null, null, start)[1];
    // Along from the near end, which stands at the setback; x from the edge.
    [
      [30, null, null],
      [30, 10, null],
      [30, 40, null],
      [30, 10, 90],
    ].forEach(([first, setback, start]) => {
      const [position, run, head, along, x, y] = heads(first, setback, start);
      const at = Math.max(Number(first), Number(setback));
      expect([position, run, head]).toEqual([1, 1, 1]);
      expectWithin(x, at, 1e-9);
      expectWithin(along, at - Number(setback), 1e-9);
      // With 40 ft to keep off, 14 rows would begin nearer: 13 do not.
      expectWithin(y, Number(start ?? (setback === 40 ? 50 : 25)), 1e-9);
    });
  });

  test("a bearing and the same a full turn round are one", () => {
    const [back, on] = [-90, 270].map((bearing) =>
      callTable("FIELD.HEADS", FIELD, bearing, 45, 50),
    );
    expect(back).toEqual(on);
    const [slant, round] = [-33, 327].map((bearing) =>
      callTable("FIELD.RUNS", FIELD, bearing, 45, 50),
    );
    expect(slant).toEqual(round);
  });

  test("heights count from the near end, and a spot that does not reach is named", () => {
    const spots = [
      [-10, -10, 4],
      [640, -10, 9],
      [640, 710, 16],
      [-10, 710, 12],
    ];
    const heads = callTable("FIELD.HEADS", ...layout, spots);
    expect(heads[0]).toEqual([
      "position",
      "run",
      "head",
      "along (ft)",
      "x (ft)",
      "y (ft)",
      "height (ft)",
    ]);
    const height = (x: unknown, y: unknown) =>
      Number(callTable("FIELD.HEIGHT", [[x, y]], spots)[1][0]);
    for (const [, , , along, x, y, above] of heads.slice(1, 60)) {
      expectWithin(above, height(x, y) - height(Number(x) - Number(along), y), 1e-9);
    }
    const near = callError("FIELD.HEADS", ...layout, [
      [20, -10, 4],
      [640, -10, 9],
      [640, 710, 16],
      [20, 710, 12],
    ]);
    expect([near.code, near.message]).toEqual([
      "#N/A",
      "spots do not reach the near end of position 1, run 1: take heights farther out, beyond it",
    ]);
    const far = callError("FIELD.HEADS", ...layout, [
      [-10, -10, 4],
      [600, -10, 9],
      [600, 710, 16],
      [-10, 710, 12],
    ]);
    expect(far.message).toMatch(/^spots do not reach head 14 of position 1, run 1/);
  });

  test("too many of anything, and none, are told", () => {
    expect(error("FIELD.RUNS", FIELD, 90, 45, 1)).toBe(
      "move gives more than 500 positions across the corners",
    );
    expect(error("FIELD.RUNS", FIELD, 90, 2, 20)).toBe(
      "spacing and move give more than 5000 heads",
    );
    const none = callError("FIELD.RUNS", FIELD, 90, 45, 50, "US", null, 320);
    expect(none.code).toBe("#N/A");
    expect(none.message).toMatch(/^no row has room for a head/);
    expect(callError("FIELD.RUNS", FIELD, 90, 45, 50, "US", null, null, null, null, 800).code).toBe(
      "#N/A",
    );
    expect(callError("FIELD.BEARINGS", FIELD, 45, 50, "US", null, 320).code).toBe("#N/A");
  });

  test("a wrong argument is named", () => {
    const wrong = (place: number, cell: unknown) =>
      error("FIELD.RUNS", ...layout.map((old, i) => (i === place ? cell : old)));
    expect(wrong(1, 361)).toBe("bearing must be from -360 to 360 degrees; got 361");
    expect(wrong(2, 0)).toBe("spacing must be above 0 ft; got 0");
    expect(wrong(3, -1)).toBe("move must be above 0 ft; got -1");
    expect(wrong(5, -1)).toBe("first must be above 0 ft; got -1");
    expect(wrong(6, -1)).toBe("setback must be 0 ft or more; got -1");
    expect(wrong(8, 501)).toBe("most must be a whole number from 1 to 500; got 501");
    expect(wrong(9, -1)).toBe("start must be above 0 ft; got -1");
  });
});

describe("FIELD.BEARINGS", () => {
  const spots = [
    [-900, -900, 4],
    [1600, -900, 9],
    [1600, 1600, 16],
    [-900, 1600, 12],
  ];

  test("fewest runs first, then the greater share covered; each is what FIELD.SUMMARY says", () => {
    const table = callTable("FIELD.BEARINGS", FIELD, 45, 50, "US", 22.5, 10, CLUMP, 14).slice(
      1,
    ) as number[][];
    expect(table.map(([bearing]) => bearing).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 36 }, (_, i) => 5 * i),
    );
    table.forEach(([bearing, runs, heads, share], i) => {
      const summary = callTable("FIELD.SUMMARY", FIELD, bearing, 45, 50, "US", 22.5, 10, CLUMP, 14);
      expect([runs, heads]).toEqual([summary[2][1], summary[4][1]]);
      expectWithin(share, Number(summary[5][1]), 1e-12);
      if (i === 0) return;
      const [, fewer, , better] = table[i - 1];
      expect(fewer < runs || (fewer === runs && better >= share - 1e-9)).toBe(true);
    });
  });

  test("step is 5 when blank; steepest stands there only with spots", () => {
    const call = (step: unknown, heights: unknown) =>
      callTable("FIELD.BEARINGS", FIELD, 45, 50, "US", null, null, null, null, heights, step);
    expect(call(null, null)).toEqual(call(5, null));
    expect(call(0, null)).toHaveLength(37);
    expect(call(7, null)).toHaveLength(27);
    expect(call(90, null)[0]).toHaveLength(4);
    expect(call(90, spots)[0]).toEqual([
      "bearing (degrees)",
      "runs",
      "heads",
      "share covered",
      "steepest (%)",
    ]);
    expect(error("FIELD.BEARINGS", FIELD, 45, 50, "US", null, null, null, null, null, 0.5)).toBe(
      "step must be from 1 to 90 degrees; got 0.5",
    );
  });
});

describe("FIELD.LOCAL and FIELD.DEGREES", () => {
  test("are each other's way back, to 1e-9 degree, at any place", () => {
    const places = [
      [0, 0],
      [630, 0],
      [-4000, 9000],
      [1e-3, -5],
    ];
    for (const origin of [
      [41.5, -97.25],
      [-33, 180],
      [0, 0],
      [89.999, 10],
    ]) {
      const degrees = callTable("FIELD.DEGREES", places, ...origin);
      expect(degrees[0]).toEqual(["latitude (degrees)", "longitude (degrees)"]);
      const local = callTable("FIELD.LOCAL", degrees, ...origin);
      expect(local[0]).toEqual(["x (ft)", "y (ft)"]);
      // 1e-9 degree is 0.4 thousandths of a foot.
      places.forEach((place, i) =>
        place.forEach((value, j) => expectWithin(local[i + 1][j], value, 1e-4)),
      );
    }
  });

  test("in feet and in meters", () => {
    const us = callTable("FIELD.LOCAL", [[41.501, -97.249]], 41.5, -97.25)[1];
    const si = callTable("FIELD.LOCAL", [[41.501, -97.249]], 41.5, -97.25, "SI")[1];
    us.forEach((value, i) => expectClose(si[i], Number(value) * FOOT, 1e-12));
    expect(Number(us[0])).toBeGreaterThan(0);
    expect(Number(us[1])).toBeGreaterThan(0);
  });

  test("20 km is the farthest", () => {
    expect(callTable("FIELD.DEGREES", [[0, 20_000]], 41.5, -97.25, "SI")).toHaveLength(2);
    expect(
      error(
        "FIELD.DEGREES",
        [
          [0, 0],
          [0, 20_001],
        ],
        41.5,
        -97.25,
        "SI",
      ),
    ).toBe("points row 2 is 20 km from the origin; at most 20 km is flat enough for a plan");
    expect(
      error(
        "FIELD.LOCAL",
        [
          [41.5, -97.25],
          [41.5, 97.25],
        ],
        41.5,
        -97.25,
      ),
    ).toMatch(/^points row 2 is 1\d+ km/);
    expect(error("FIELD.LOCAL", [[41.5, -97.25]], null, -97.25)).toBe(
      "latitude is missing: it must be from -90 to 90 degrees",
    );
    expect(error("FIELD.LOCAL", [[91, -97.25]], 41.5, -97.25)).toBe(
      "points row 1 latitude must be from -90 to 90 degrees; got 91",
    );
    expect(error("FIELD.LOCAL", [[41, -181]], 41.5, -97.25)).toBe(
      "points row 1 longitude must be from -180 to 180 degrees; got -181",
    );
    expect(error("FIELD.DEGREES", [[1, 2]], 41.5, 181)).toBe(
      "longitude must be from -180 to 180 degrees; got 181",
    );
  });
});

describe("FIELD.BEARINGS ranks", () => {
  const square = [
    [0, 0],
    [100, 0],
    [100, 100],
    [0, 100],
  ];

  test("bearings that serve alike from north round, after those with fewer runs", () => {
    const table = callTable(
      "FIELD.BEARINGS",
      square,
      10,
      10,
      "SI",
      null,
      null,
      null,
      null,
      null,
      45,
    );
    expect(table.slice(1).map(([bearing, runs]) => [bearing, runs])).toEqual([
      [0, 10],
      [90, 10],
      [45, 14],
      [135, 14],
    ]);
  });

  test("and names the head whose ground is not known", () => {
    const west = [
      [-50, -50, 1],
      [60, -50, 1],
      [60, 170, 1],
      [-50, 170, 1],
    ];
    const error = callError(
      "FIELD.BEARINGS",
      square,
      10,
      10,
      "SI",
      null,
      null,
      null,
      null,
      west,
      45,
    );
    expect(error).toMatchObject({ code: "#N/A" });
    expect(error.message).toContain("head 1 of position 1, run 1");
  });
});
