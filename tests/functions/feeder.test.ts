import { callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

describe("FEEDER.LENGTH", () => {
  test.each([[undefined], [null], [""], [0]])("takes %p for the setback as 0", (blank) => {
    expect(callNumber("FEEDER.LENGTH", 7, 50, blank)).toBe(150);
  });

  test("reaches the farther of two positions from between them", () => {
    expect(callNumber("FEEDER.LENGTH", 2, 50)).toBe(25);
    expectClose(callNumber("FEEDER.LENGTH", 13, 50, 40), 302.654919, 1e-8);
  });

  test("names what is wrong", () => {
    expect(callError("FEEDER.LENGTH", 7.5, 50).message).toBe(
      "positions must be a whole number from 1 to 500; got 7.5",
    );
    expect(callError("FEEDER.LENGTH", 501, 50).message).toContain("from 1 to 500; got 501");
    expect(callError("FEEDER.LENGTH", 7, 0).message).toBe("move must be above 0; got 0");
    expect(callError("FEEDER.LENGTH", 7, 50, -1).message).toBe("setback must be 0 or more; got -1");
  });
});

describe("FEEDER.PRESSURE", () => {
  test("adds friction, fittings and rise to what the lateral wants", () => {
    const friction = callNumber("PIPE.FRICTION", 58, 2.6, 300, "US", 140);
    const fittings = callNumber("PIPE.FITTING", 58, 2.6, 5);
    const pressure = callNumber("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", 4, 140, 5);
    expectClose(pressure, 48 + friction + fittings + 4 / 2.310818199, 1e-9);
  });

  test.each([[undefined], [null], [""], [0]])("takes %p for rise and fittings as none", (blank) => {
    const friction = callNumber("PIPE.FRICTION", 58, 2.6, 300);
    expectClose(
      callNumber("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", blank, blank, blank),
      48 + friction,
      1e-12,
    );
  });

  test("is the same feeder in both systems", () => {
    const us = callNumber("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", 4, "Darcy", 5);
    const si = callNumber(
      "FEEDER.PRESSURE",
      48 * 6.894757293,
      58 * 0.22712470704,
      2.6 * 25.4,
      300 * 0.3048,
      "SI",
      4 * 0.3048,
      "Darcy",
      5,
    );
    expectClose(si / 6.894757293, us, 1e-9);
  });

  test("has no answer where the fall alone gives more than wanted", () => {
    expect(callNumber("FEEDER.PRESSURE", 10, 0, 2.6, 300, "US", -20)).toBeCloseTo(1.345, 3);
    expect(callNumber("FEEDER.PRESSURE", 0, 0, 2.6, 300, "US", 0)).toBe(0);
    const error = callError("FEEDER.PRESSURE", 10, 0, 2.6, 300, "US", -30);
    expect(error.code).toBe("#N/A");
    expect(error.message).toBe(
      "rise falls so far that the lateral gets more than inlet with no pressure at the hydrant: " +
        "use smaller tubing or a pressure regulator",
    );
  });

  test("names what is wrong", () => {
    expect(callError("FEEDER.PRESSURE", -1, 58, 2.6, 300).message).toBe(
      "inlet must be 0 psi or more; got -1",
    );
    expect(callError("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", 0, 150, -1).message).toBe(
      "fittings must be 0 or more; got -1",
    );
    expect(callError("FEEDER.PRESSURE", 48, 58, 2.6, 300, "US", "up").message).toBe(
      'rise must be a number in ft; got "up"',
    );
  });
});

describe("FEEDER.HYDRANTS", () => {
  const ROW = [
    [0, 25],
    [0, 75],
    [0, 125],
  ];

  test("takes x and y, or FIELD.RUNS' table with or without its header", () => {
    const field = [
      [0, 0],
      [300, 0],
      [300, 150],
      [0, 150],
    ];
    const runs = callTable("FIELD.RUNS", field, 90, 40, 50);
    const hydrants = callTable("FEEDER.HYDRANTS", runs, 60);
    expect(hydrants[0]).toEqual([
      "hydrant",
      "x",
      "y",
      "first position",
      "last position",
      "farthest",
      "run",
    ]);
    expect(callTable("FEEDER.HYDRANTS", runs.slice(1), 60)).toEqual(hydrants);
    expect(callTable("FEEDER.HYDRANTS", [["x", "y"], ...ROW, [null, ""]], 60)).toEqual(hydrants);
    expect(callTable("FEEDER.REACH", runs, hydrants, 60)).toEqual(
      callTable("FEEDER.REACH", ROW, [[hydrants[1][1], hydrants[1][2]]], 60),
    );
  });

  test("a near end at the origin is one, in two columns and in four", () => {
    const reach = (ends: unknown) => callTable("FEEDER.HYDRANTS", ends, 1000)[1];
    expect(
      reach([
        [0, 50],
        [0, 0],
      ]).slice(3, 6),
    ).toEqual([1, 2, 25]);
    expect(
      reach([
        [1, 1, 0, 50],
        [2, 1, 0, 0],
        [0, 0, 0, 0],
      ]).slice(3, 6),
    ).toEqual([1, 2, 25]);
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("FEEDER.HYDRANTS", ...cells).message;
    expect(error(ROW, 0)).toBe("reach must be above 0; got 0");
    expect(error([[1, 2, 3]], 9)).toBe(
      "ends must be two columns, x and y, or four or more, position, run, x and y; got a range of 1 row and 3 columns",
    );
    expect(error([[1.5, 1, 0, 0]], 9)).toBe(
      "ends row 1 position must be a whole number from 1 to 500; got 1.5",
    );
    expect(error([[1, 0, 0, 5]], 9)).toBe(
      "ends row 1 run must be a whole number from 1 to 1000; got 0",
    );
    expect(error([[1, "a"]], 9)).toBe('ends row 1 y must be a number; got "a"');
    expect(error(new Array(1001).fill([1, 2]), 9)).toBe("ends must have 1 to 1000 rows; got 1001");
  });
});

describe("FEEDER.REACH", () => {
  const FIELD = [
    [0, 0],
    [100, 0],
    [100, 100],
    [50, 50],
    [0, 100],
  ];

  test("says how much is to spare, and with corners where the way leaves the field", () => {
    const table = callTable(
      "FEEDER.REACH",
      [
        [5, 90],
        [5, 10],
      ],
      [
        [95, 90],
        [5, 40],
      ],
      60,
      FIELD,
    );
    expect(table).toEqual([
      ["position", "hydrant", "distance", "to spare", "leaves the field"],
      [1, 2, 50, 10, "no"],
      [2, 2, 30, 30, "no"],
    ]);
    expect(callTable("FEEDER.REACH", [[5, 90]], [[95, 90]], 60, FIELD)[1]).toEqual([
      1,
      1,
      90,
      -30,
      "yes",
    ]);
    expect(callTable("FEEDER.REACH", [[5, 90]], [[95, 90]], 0)[1]).toEqual([1, 1, 90, -90]);
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("FEEDER.REACH", ...cells).message;
    expect(error([[1, 2]], [[1, 2]], -1)).toBe("feeder must be 0 or more; got -1");
    expect(error([[1, 2]], [[1]], 9)).toMatch(
      /^hydrants must be two columns, x and y, or three or more/,
    );
    expect(error([[1, 2]], [[1, 2, "b"]], 9)).toBe('hydrants row 1 y must be a number; got "b"');
    expect(error([[1, 2]], [[1, 2]], 9, FIELD.slice(0, 2))).toBe(
      "corners must have 3 to 200 rows; got 2",
    );
  });
});
