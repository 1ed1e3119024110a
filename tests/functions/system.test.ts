import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

const HECTARES_AN_ACRE = 0.40468564224;

describe("SYSTEM.CAPACITY and SYSTEM.VOLUME", () => {
  test("both unit systems agree", () => {
    const [area, depth] = [10 * HECTARES_AN_ACRE, 2.5 * 25.4];
    expectClose(
      callNumber("SYSTEM.CAPACITY", area, depth, 7, 11, "SI"),
      callNumber("SYSTEM.CAPACITY", 10, 2.5, 7, 11) * 0.003785411784 * 60,
      1e-12,
    );
    expectClose(
      callNumber("SYSTEM.VOLUME", area, depth, "SI"),
      callNumber("SYSTEM.VOLUME", 10, 2.5) * 0.003785411784,
      1e-12,
    );
  });

  test("a wrong argument is named", () => {
    expect(callError("SYSTEM.CAPACITY", -1, 2, 7, 11).message).toBe(
      "area must be 0 acre or more; got -1",
    );
    expect(callError("SYSTEM.CAPACITY", 1, -2, 7, 11, "SI").message).toBe(
      "depth must be 0 mm or more; got -2",
    );
    expect(callError("SYSTEM.CAPACITY", 1, 2, 0, 11).message).toBe("days must be above 0; got 0");
    expect(callError("SYSTEM.CAPACITY", 1, 2, 7, 25).message).toBe(
      "hours must be above 0 and at most 24 h; got 25",
    );
    expect(callError("SYSTEM.VOLUME", "ten", 2).message).toBe(
      'area must be a number, 0 acre or more; got "ten"',
    );
    expect(callError("SYSTEM.VOLUME", 10, -1, "SI").message).toBe(
      "depth must be 0 mm or more; got -1",
    );
  });
});

describe("SYSTEM.INTERVAL", () => {
  test("is not rounded, and a wrong argument is named", () => {
    expect(callNumber("SYSTEM.INTERVAL", 2, 0.3)).toBe(2 / 0.3);
    expect(callError("SYSTEM.INTERVAL", -2, 0.3).message).toBe("net must be 0 or more; got -2");
    expect(callError("SYSTEM.INTERVAL", 2, 0).message).toBe("use must be above 0; got 0");
  });
});

describe("SYSTEM.LINES", () => {
  test("counts whole sets of each line", () => {
    expect(callNumber("SYSTEM.LINES", 14, 1, 7)).toBe(2);
    expect(callNumber("SYSTEM.LINES", 12, 1, 6.9)).toBe(2);
    expect(callNumber("SYSTEM.LINES", 13, 1, 6.9)).toBe(3);
    expect(callNumber("SYSTEM.LINES", 13, 2, 6.5)).toBe(1);
    expect(callNumber("SYSTEM.LINES", 3, 0.5, 6)).toBe(1);
    expect(callNumber("SYSTEM.LINES", 3, 0.1, 30)).toBe(1);
  });

  test("a wrong argument is named", () => {
    expect(callError("SYSTEM.LINES", 14, 1, 0.9)).toMatchObject({
      code: "#N/A",
      message:
        "no whole set fits into 0.9 days at 1 a day: shorten the set or lengthen the interval",
    });
    expect(callError("SYSTEM.LINES", 0, 1, 7).message).toBe(
      "positions must be a whole number, 1 or more; got 0",
    );
    expect(callError("SYSTEM.LINES", 14, 0, 7).message).toBe("setsperday must be above 0; got 0");
    expect(callError("SYSTEM.LINES", 14, 1, -7).message).toBe("days must be above 0; got -7");
  });
});
