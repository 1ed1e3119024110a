import { callError, callTable } from "../support/host";
import { expectClose } from "../support/published";

describe("STAKE.FLAGS", () => {
  test("without a start it gives distances only", () => {
    const table = callTable("STAKE.FLAGS", 3, 45, "US", 20);
    expect(table[0]).toEqual(["head", "distance (ft)"]);
    expect(table.slice(1).map(([head]) => head)).toEqual([1, 2, 3]);
    [20, 65, 110].forEach((distance, i) => expectClose(table[i + 1][1], distance, 1e-12));
    for (const blank of [null, "", 0]) {
      expect(callTable("STAKE.FLAGS", 3, 45, "US", 20, blank, blank, 90)).toEqual(table);
    }
  });

  test("blank first is the spacing; a range holds every segment", () => {
    const even = callTable("STAKE.FLAGS", 3, 45);
    expectClose(even[1][1], 45, 1e-12);
    const uneven = callTable("STAKE.FLAGS", 3, [[20], [45], [50]]);
    [20, 65, 115].forEach((distance, i) => expectClose(uneven[i + 1][1], distance, 1e-12));
    expect(callError("STAKE.FLAGS", 3, [[20], [45], [50]], "US", 10).message).toMatch(
      /^first goes with one spacing/,
    );
    expect(callError("STAKE.FLAGS", 4, [[20], [45], [50]]).message).toBe(
      "spacing has 3 values for 4 heads",
    );
  });

  test("both unit systems mark the same places", () => {
    const us = callTable("STAKE.FLAGS", 14, 45, "US", 22.5, 41.5, -97.25, 85);
    const si = callTable("STAKE.FLAGS", 14, 45 * 0.3048, "SI", 22.5 * 0.3048, 41.5, -97.25, 85);
    expect(us[0]).toEqual(["head", "distance (ft)", "latitude (degrees)", "longitude (degrees)"]);
    expect(si[0][1]).toBe("distance (m)");
    us.slice(1).forEach((row, i) => {
      expectClose(si[i + 1][1], Number(row[1]) * 0.3048, 1e-12);
      expectClose(si[i + 1][2], Number(row[2]), 1e-12);
      expectClose(si[i + 1][3], Number(row[3]), 1e-12);
    });
  });

  test("a start on the equator or the prime meridian is a start", () => {
    expect(callTable("STAKE.FLAGS", 1, 45, "US", null, 0, 30, 0)[1]).toHaveLength(4);
    expect(callTable("STAKE.FLAGS", 1, 45, "US", null, 51, 0, 0)[1]).toHaveLength(4);
  });

  test("longitude runs on across 180 degrees", () => {
    const [, row] = callTable("STAKE.FLAGS", 1, 2000, "SI", null, 10, 179.999, 90);
    expect(Number(row[3])).toBeLessThan(-179.9);
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("STAKE.FLAGS", ...cells).message;
    expect(error(14, 45, "US", null, 41.5)).toBe(
      "longitude is missing: it must be from -180 to 180 degrees",
    );
    expect(error(14, 45, "US", null, "", 20, 3)).toBe(
      "latitude is missing: it must be from -90 to 90 degrees",
    );
    expect(error(14, 45, "US", null, 41.5, -97)).toBe(
      "bearing is missing: it must be from -360 to 360 degrees",
    );
    expect(error(14, 45, "US", null, 91, -97, 3)).toBe(
      "latitude must be from -90 to 90 degrees; got 91",
    );
    expect(error(14, 45, "US", null, 41, -181, 3)).toBe(
      "longitude must be from -180 to 180 degrees; got -181",
    );
    expect(error(14, 45, "US", null, 41, -97, 361)).toBe(
      "bearing must be from -360 to 360 degrees; got 361",
    );
    expect(error(0, 45)).toBe("heads must be a whole number from 1 to 500; got 0");
    expect(error(14, 0)).toMatch(/^spacing/);
  });
});

describe("STAKE.POSITIONS", () => {
  test("without length and start: the near ends", () => {
    const table = callTable("STAKE.POSITIONS", 3, 50);
    expect(table[0]).toEqual(["position", "along (ft)", "across (ft)"]);
    [0, 50, 100].forEach((along, i) => {
      expect(table[i + 1][0]).toBe(i + 1);
      expect(table[i + 1][1]).toBeCloseTo(along, 9);
      expect(table[i + 1][2]).toBe(0);
    });
    expect(table).toHaveLength(4);
    expect(callTable("STAKE.POSITIONS", 3, 50, "US", 0, 0, 0)).toEqual(table);
  });

  test("with a length each position has a near and a far end", () => {
    const table = callTable("STAKE.POSITIONS", 2, 15, "SI", 196);
    expect(table.slice(1)).toEqual([
      [1, 0, 0],
      [1, 0, 196],
      [2, 15, 0],
      [2, 15, 196],
    ]);
  });

  test("the line lies to the right of the way the positions advance", () => {
    // North: the line runs east. Down under and in feet just the same.
    for (const latitude of [41.5, -33]) {
      const [, near, far, next] = callTable(
        "STAKE.POSITIONS",
        2,
        50,
        "US",
        630,
        latitude,
        -97.25,
        0,
      );
      expect(near[3]).toBeCloseTo(latitude, 9);
      expect(near[4]).toBeCloseTo(-97.25, 9);
      expect(Number(far[4])).toBeGreaterThan(-97.25);
      expect(far[3]).toBeCloseTo(latitude, 5);
      expect(Number(next[3])).toBeGreaterThan(latitude);
      expect(next[4]).toBeCloseTo(-97.25, 9);
    }
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("STAKE.POSITIONS", ...cells).message;
    expect(error(2.5, 50)).toMatch(/^positions must be a whole number from 1 to/);
    expect(error(2, 0, "SI")).toBe("move must be above 0 m; got 0");
    expect(error(2, 50, "US", -1)).toBe("length must be above 0 ft; got -1");
    expect(error(2, 50, "US", 630, 41.5, -97.25)).toBe(
      "bearing is missing: it must be from -360 to 360 degrees",
    );
  });
});
