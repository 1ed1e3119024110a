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

describe("STAKE.MAP", () => {
  const FLAGS = [
    ["a", 0, 0],
    [7, 3000, -50],
  ];
  const error = (...cells: unknown[]) => callError("STAKE.MAP", ...cells).message;

  test("is one column of text; feet and meters give one file", () => {
    for (const format of ["GPX", "kml", " geo json "]) {
      const us = callTable("STAKE.MAP", FLAGS, format, 41.5, -97.25);
      const meters = FLAGS.map(([name, x, y]) => [name, Number(x) * 0.3048, Number(y) * 0.3048]);
      expect(callTable("STAKE.MAP", meters, format, 41.5, -97.25, "SI")).toEqual(us);
      expect(us.every((row) => row.length === 1 && typeof row[0] === "string")).toBe(true);
    }
  });

  test("blank rows at the end and a row of headers are passed over", () => {
    const padded = [["name", "x", "y"], ...FLAGS, [0, 0, 0], [null, "", null]];
    expect(callTable("STAKE.MAP", padded, "GPX", 41.5, -97.25)).toEqual(
      callTable("STAKE.MAP", FLAGS, "GPX", 41.5, -97.25),
    );
  });

  test("no number in it has a power of ten or a minus before nothing", () => {
    const lines = callTable("STAKE.MAP", [["a", -1e-6, -1e-6]], "GPX", 0, 0);
    expect(lines[2][0]).toBe('  <wpt lat="0.000000000" lon="0.000000000"><name>a</name></wpt>');
  });

  test("a wrong argument is named", () => {
    expect(error(FLAGS, "shape", 41.5, -97.25)).toBe(
      'format must be one of "GPX", "KML", "GeoJSON"; got "shape"',
    );
    expect(error(FLAGS, null, 41.5, -97.25)).toBe(
      'format is missing: it must be one of "GPX", "KML", "GeoJSON"',
    );
    expect(error([["a", 1]], "GPX", 41.5, -97.25)).toBe(
      "points must be three columns, name, x (ft) and y (ft); got a range of 1 row and 2 columns",
    );
    expect(error([[null, 1, 2]], "GPX", 41.5, -97.25)).toBe(
      "points row 1 name is missing: it must be text or a number",
    );
    expect(error([[true, 1, 2]], "GPX", 41.5, -97.25)).toBe(
      "points row 1 name must be text or a number; got TRUE",
    );
    expect(error([["a", 1, "b"]], "GPX", 41.5, -97.25)).toBe(
      'points row 1 y must be a number in ft; got "b"',
    );
    expect(error([["a", 1, 70_000]], "GPX", 41.5, -97.25)).toMatch(
      /^points row 1 is 21 km from the origin/,
    );
    expect(error(FLAGS, "GPX", null, -97.25)).toMatch(/^latitude is missing/);
    expect(error(FLAGS, "GPX", 41.5, 200)).toMatch(/^longitude must be from -180 to 180/);
    expect(error([["x".repeat(201), 1, 2]], "GPX", 41.5, -97.25)).toBe(
      "points row 1 name must have at most 200 letters; got 201",
    );
    expect(callTable("STAKE.MAP", [["x".repeat(200), 1, 2]], "GPX", 41.5, -97.25)).toHaveLength(4);
  });

  test("names that no map file can hold are refused, all others are kept", () => {
    for (const sign of [
      "\n",
      "\t",
      "\u0000",
      "\u007f",
      "\u009f",
      "\u2028",
      "\u2029",
      "\ufffe",
      "\uffff",
      "\ud800",
      "\udc00x",
    ]) {
      expect(error([[`a${sign}b`, 1, 2]], "GeoJSON", 41.5, -97.25)).toBe(
        "points row 1 name holds a sign that a map file cannot hold, such as a line break",
      );
    }
    for (const name of ["a b", "a\u00a0b", "\u{10000}", "\ue000"]) {
      const line = String(callTable("STAKE.MAP", [[name, 1, 2]], "GeoJSON", 41.5, -97.25)[1][0]);
      expect(JSON.parse(line).properties.name).toBe(name);
    }
  });
});
