import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

describe("DRAIN.VOLUME", () => {
  test("both unit systems hold the same water", () => {
    const us = callNumber("DRAIN.VOLUME", [[2], [1.5]], [[300], [200]], "US");
    const si = callNumber("DRAIN.VOLUME", [[50.8], [38.1]], [[91.44], [60.96]], "SI");
    expectClose(si, us * 3.785411784, 1e-12);
    expectClose(callNumber("DRAIN.VOLUME", [[2, 1.5]], [[300, 200]]), us, 1e-15);
  });

  test("a wrong argument is named", () => {
    expect(callError("DRAIN.VOLUME", 0, 100).message).toMatch(/^inside is missing/);
    expect(callError("DRAIN.VOLUME", [[2], [-1]], [[1], [1]]).message).toBe(
      "inside value 2 must be above 0 in; got -1",
    );
    expect(callError("DRAIN.VOLUME", 2, -100, "SI").message).toBe(
      "length must be 0 m or more; got -100",
    );
    expect(callError("DRAIN.VOLUME", [[2], [1.5]], 100).message).toBe(
      "inside and length must have the same number of values; got 2 and 1",
    );
  });
});

describe("DRAIN.TRAPPED", () => {
  const distance = [[0], [100], [200], [300], [400]];
  const dips = [[5], [2], [6], [1], [3]];
  const gallons = (feet: number) => (feet * (Math.PI / 4) * 4 * 12) / 231; // a 2 in bore

  test("both ends open: each dip is full up to the lower of its two rims", () => {
    // First dip up to 5 ft: 100 + 75 ft. Second up to the open end at 3 ft: 40 + 100 ft.
    expectClose(callNumber("DRAIN.TRAPPED", distance, dips, 2), gallons(315), 1e-12);
    for (const blank of [null, "", 0, "0", "BOTH"]) {
      expectClose(callNumber("DRAIN.TRAPPED", distance, dips, 2, "US", blank), gallons(315), 1e-12);
    }
  });

  test("one end open: what lies behind the crest has no other way out", () => {
    expectClose(callNumber("DRAIN.TRAPPED", distance, dips, 2, "US", "start"), gallons(375), 1e-12);
    expectClose(callNumber("DRAIN.TRAPPED", distance, dips, 2, "US", "end"), gallons(340), 1e-12);
  });

  test("a steady slope is empty with its low end open, and full with only its high end open", () => {
    expect(callNumber("DRAIN.TRAPPED", [[0], [60], [90]], [[3], [1], [0]], 2, "US", "end")).toBe(0);
    expect(callNumber("DRAIN.TRAPPED", [[0], [60], [90]], [[3], [1], [0]], 2)).toBe(0);
    expectClose(
      callNumber("DRAIN.TRAPPED", [[0], [60], [90]], [[3], [1], [0]], 2, "US", "start"),
      gallons(90),
      1e-12,
    );
  });

  test("level ground keeps nothing at the height of its way out, all below it", () => {
    expect(callNumber("DRAIN.TRAPPED", [[0], [60]], [[0], [0]], 2)).toBe(0);
    expectClose(
      callNumber("DRAIN.TRAPPED", [[0], [10], [70], [80]], [[1], [0], [0], [1]], 2),
      gallons(80),
      1e-12,
    );
  });

  test("both unit systems hold the same water, with a bore per run or by counts", () => {
    const us = callNumber("DRAIN.TRAPPED", distance, dips, [[2], [2], [1.5], [1.5]]);
    const feet = (column: number[][]) => column.map(([value]) => [value * 0.3048]);
    expectClose(
      callNumber(
        "DRAIN.TRAPPED",
        feet(distance),
        feet(dips),
        [
          [50.8, 2],
          [38.1, 2],
        ],
        "SI",
      ),
      us * 3.785411784,
      1e-12,
    );
    expectClose(us, gallons(175 + 140 * (1.5 / 2) ** 2), 1e-12);
  });

  test("blank cells at the end of the ranges are dropped; a height may be 0", () => {
    const padded = callNumber(
      "DRAIN.TRAPPED",
      [[0], [10], [20], [""], [0]],
      [[1], [-1], [0], [null], [0]],
      2,
    );
    expectClose(padded, gallons(15), 1e-12);
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("DRAIN.TRAPPED", ...cells).message;
    expect(error([[0], [10], [10]], [[1], [2], [3]], 2)).toBe(
      "distance must rise from point to point; value 3 is 10 ft after 10 ft",
    );
    expect(error([[0], [10]], [[1], [2], [3]], 2)).toBe(
      "distance and elevation must have the same number of values; got 2 and 3",
    );
    expect(error([[5]], [[1]], 2)).toBe("distance must have two values or more; got one");
    expect(error(null, [[1]], 2)).toBe("distance is missing: it must be a row or a column");
    expect(
      error(
        [
          [0, 1],
          [2, 3],
        ],
        [[1]],
        2,
      ),
    ).toBe("distance takes one row or one column; got a range of 2 rows and 2 columns");
    expect(error([[0], ["far"]], [[1], [2]], 2)).toBe(
      'distance value 2 must be a number in ft; got "far"',
    );
    expect(error([[0], [10]], [[1], ["high"]], 2, "SI")).toBe(
      'elevation value 2 must be a number in m; got "high"',
    );
    expect(error([[0], [10], [20]], [[1], [2], [3]], [[2], [2], [2]])).toBe(
      "inside has 3 values for 2 runs",
    );
    expect(error([[0], [10]], [[1], [2]], [[2], [2]])).toBe("inside has 2 values for 1 run");
    expect(error([[0], [10]], [[1], [2]], 2, "US", "middle")).toBe(
      'ends must be one of "both", "start", "end"; got "middle"',
    );
  });
});

describe("DRAIN.TIME", () => {
  test("both unit systems agree", () => {
    const us = callNumber("DRAIN.TIME", 1.94, 630, 12.6, "US", 0.75, 140);
    expectClose(
      callNumber("DRAIN.TIME", 1.94 * 25.4, 630 * 0.3048, 12.6 * 0.3048, "SI", 0.75 * 25.4, 140),
      us,
      1e-8,
    );
  });

  test("blank opening is the whole end, blank friction C 150", () => {
    const whole = callNumber("DRAIN.TIME", 50, 200, 4, "SI");
    for (const blank of [null, "", 0]) {
      expect(callNumber("DRAIN.TIME", 50, 200, 4, "SI", blank, blank)).toBe(whole);
    }
    expect(callNumber("DRAIN.TIME", 50, 200, 4, "SI", 50)).toBeGreaterThan(whole);
    expect(callNumber("DRAIN.TIME", 50, 200, 4, "SI", null, 120)).toBeGreaterThan(whole);
  });

  test("Darcy gives an answer close to Hazen–Williams, through the transition too", () => {
    const hazen = callNumber("DRAIN.TIME", 50, 200, 4, "SI", 20, 150);
    expectClose(callNumber("DRAIN.TIME", 50, 200, 4, "SI", 20, "Darcy"), hazen, 0.03);
    // 0.05 % of fall in a small bore runs near Re 2000 to 4000.
    const slow = callNumber("DRAIN.TIME", 25, 100, 0.1, "SI", 20, "Darcy");
    expect(slow).toBeGreaterThan(callNumber("DRAIN.TIME", 25, 100, 0.2, "SI", 20, "Darcy"));
  });

  test("takes longer through less opening, on less fall, from more length", () => {
    const minutes = callNumber("DRAIN.TIME", 50, 200, 4, "SI", 20);
    expect(callNumber("DRAIN.TIME", 50, 200, 4, "SI", 15)).toBeGreaterThan(minutes);
    expect(callNumber("DRAIN.TIME", 50, 200, 3, "SI", 20)).toBeGreaterThan(minutes);
    expect(callNumber("DRAIN.TIME", 50, 250, 4, "SI", 20)).toBeGreaterThan(minutes);
  });

  test("a fall so small that it vanishes ends, and says so", () => {
    for (const fall of [5e-324, 1e-322, 1e-310]) {
      expect(callError("DRAIN.TIME", 1.94, 630, fall, "SI", 0.75).message).toMatch(
        /^the result is beyond the range of numbers/,
      );
    }
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("DRAIN.TIME", ...cells).message;
    expect(error(50, 200, 0, "SI")).toBe("fall must be above 0 m; got 0");
    expect(error(50, 200, 201, "SI")).toBe("fall must be at most the length of the line");
    expect(error(50, 200, 4, "SI", 51)).toBe("opening must be at most the inside diameter");
    expect(error(50, 0, 4, "SI")).toBe("length must be above 0 m; got 0");
    expect(error(0, 200, 4)).toBe("inside must be above 0 in; got 0");
  });
});
