import { callError, callNumber, callTable } from "../support/host";
import { expectClose } from "../support/published";

const GPM = 0.2271247069; // m³/h

describe("SOURCE.DAYS", () => {
  test("both unit systems agree", () => {
    expectClose(
      callNumber("SOURCE.DAYS", 900000 * 0.003785411784, 118 * GPM, 11, "SI", 15 * GPM),
      callNumber("SOURCE.DAYS", 900000, 118, 11, "US", 15),
      1e-9,
    );
  });

  test.each([null, "", 0])("inflow %p is none", (inflow) => {
    expect(callNumber("SOURCE.DAYS", 240, 1, 24, "SI", inflow)).toBeCloseTo(10, 12);
  });

  test("never runs out where the inflow makes up for the pumping", () => {
    expect(callError("SOURCE.DAYS", 240, 2, 12, "SI", 1)).toMatchObject({
      code: "#N/A",
      message: "the water never runs out: the inflow makes up for all that is pumped",
    });
    expect(callNumber("SOURCE.DAYS", 0, 2, 12, "SI")).toBe(0);
  });

  test("a wrong argument is named", () => {
    expect(callError("SOURCE.DAYS", -1, 2, 12).message).toBe(
      "volume must be 0 gal or more; got -1",
    );
    expect(callError("SOURCE.DAYS", 100, 0, 12, "SI").message).toBe(
      "flow must be above 0 m³/h; got 0",
    );
    expect(callError("SOURCE.DAYS", 100, 1, 25).message).toBe(
      "hours must be above 0 and at most 24 h; got 25",
    );
    expect(callError("SOURCE.DAYS", 100, 1, 12, "US", -3).message).toBe(
      "inflow must be 0 gpm or more; got -3",
    );
  });
});

describe("SOURCE.BALANCE", () => {
  const needs = [[0], [60], [90], [50]];

  test("one row a month, the unit in the headers", () => {
    expect(callTable("SOURCE.BALANCE", 100, needs, "SI", [[30], [10], [5], [5]], 5)).toEqual([
      ["month", "held at the end (m³)", "short (m³)", "run over (m³)"],
      [1, 100, 0, 25],
      [2, 45, 0, 0],
      [3, 0, 45, 0],
      [4, 0, 50, 0],
    ]);
    expect(callTable("SOURCE.BALANCE", 100, needs)[0][1]).toBe("held at the end (gal)");
  });

  test.each([null, "", 0, [[null], [""]]])("inflows or losses of %p are none", (blank) => {
    const plain = callTable("SOURCE.BALANCE", 100, needs);
    expect(callTable("SOURCE.BALANCE", 100, needs, "US", blank, blank)).toEqual(plain);
  });

  test("a row serves as well as a column, and a month without need counts", () => {
    const row = callTable("SOURCE.BALANCE", 100, [[0, 60, 90, 0]], "SI", 3);
    expect(row).toEqual(callTable("SOURCE.BALANCE", 100, [[0], [60], [90], [0]], "SI", 3));
    expect(row).toHaveLength(5);
  });

  test("a wrong argument is named", () => {
    const message = (...cells: unknown[]) => callError("SOURCE.BALANCE", ...cells).message;
    expect(message(-1, needs)).toBe("volume must be 0 gal or more; got -1");
    expect(message(100, null)).toBe("needs is missing: it must be 0 gal or more");
    expect(message(100, [[5], [-2]], "SI")).toBe("needs value 2 must be 0 m³ or more; got -2");
    expect(message(100, needs, "US", [[1], [2]])).toBe(
      "inflows must have one value or one a month; got 2 for 4 months of needs",
    );
    expect(message(100, needs, "US", 0, [[1], [2], [3], [4], [5]])).toBe(
      "losses must have one value or one a month; got 5 for 4 months of needs",
    );
    expect(message(100, needs, "US", [[1], [null], [3], [4]])).toMatch(
      /^inflows value 2 is missing/,
    );
    expect(message(100, needs, "US", [[1], [2], [3], [null]])).toMatch(/got 3 for 4 months/);
    const long = Array.from({ length: 121 }, () => [1]);
    expect(message(100, long)).toBe("needs must have at most 120 months; got 121");
    expect(callTable("SOURCE.BALANCE", 100, long.slice(1))).toHaveLength(121);
  });
});
