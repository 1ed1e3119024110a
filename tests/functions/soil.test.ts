import { call, callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

describe("SOIL.AWC", () => {
  test("the same soil in both systems", () => {
    expectClose(callNumber("SOIL.AWC", "silt loam"), 2, 1e-12);
    expectClose(callNumber("SOIL.AWC", "silt loam", "SI"), (2 / 12) * 1000, 1e-12);
  });

  test.each(["Silt Loam", "SILT-LOAM", " silt loams ", "silt_loam"])(
    "%p is silt loam",
    (texture) => {
      expect(callNumber("SOIL.AWC", texture)).toBe(callNumber("SOIL.AWC", "silt loam"));
    },
  );

  test.each([
    ["sand", 1],
    ["Muck", 2.5],
    ["loamy fine sand", 1],
    ["coarse sandy loam", 1.5],
  ])("%p is known by another name", (texture, expected) => {
    expectClose(callNumber("SOIL.AWC", texture), expected, 1e-12);
  });

  test("an unknown texture is an error with the list", () => {
    const error = callError("SOIL.AWC", "gumbo");
    expect(error.code).toBe("#VALUE!");
    expect(error.message).toMatch(
      /^unknown texture "gumbo"\. It must be one of "very coarse sand", .*"peat"$/,
    );
    expect(callError("SOIL.AWC", null).message).toMatch(/^texture is missing: it must be one of/);
    expect(callError("SOIL.AWC", 0).message).toMatch(/^texture is missing/);
    expect(callError("SOIL.AWC", 3).message).toMatch(/^unknown texture 3\. It must/);
  });
});

describe("SOIL.PROFILE", () => {
  test.each([null, "", 0, false])("compact %p is a soil alike to 6 ft", (compact) => {
    expect(call("SOIL.PROFILE", "silt loam", compact)).toBe("silt loam");
  });

  test("the words TRUE and FALSE as text, as a list or a cell of text hands them over", () => {
    expect(call("SOIL.PROFILE", "silt loam", "TRUE")).toBe("silt loam over compact");
    expect(call("SOIL.PROFILE", "silt loam", "FALSE")).toBe("silt loam");
  });

  test("over a compact subsoil; a heavy clay stays what it is", () => {
    expect(call("SOIL.PROFILE", "Loamy Sand", true)).toBe("coarse sandy over compact");
    expect(call("SOIL.PROFILE", "silty clay", true)).toBe("heavy clay");
  });

  test("the table has no profile for peat", () => {
    for (const compact of [false, true]) {
      expect(callError("SOIL.PROFILE", "peat", compact)).toMatchObject({
        code: "#N/A",
        message:
          "the table of application rates has no profile for peat: have the rate tested on the ground",
      });
    }
  });

  test("wrong input", () => {
    expect(callError("SOIL.PROFILE", "silt loam", "yes").message).toBe(
      'compact must be TRUE or FALSE; got "yes"',
    );
    expect(callError("SOIL.PROFILE", "chalk").message).toMatch(
      /^unknown texture "chalk"\. It must/,
    );
  });
});

describe("SOIL.INTAKE", () => {
  test("takes what SOIL.PROFILE gives, in both systems", () => {
    const profile = call("SOIL.PROFILE", "silt loam", true);
    expectClose(callNumber("SOIL.INTAKE", profile, 2), 0.3, 1e-12);
    expectClose(callNumber("SOIL.INTAKE", profile, 2, "SI"), 0.3 * 25.4, 1e-12);
  });

  test("a slope on a boundary belongs to the flatter class", () => {
    const at = (slope: number) => callNumber("SOIL.INTAKE", "silt loam", slope);
    for (const [boundary, flatter, steeper] of [
      [5, 0.5, 0.4],
      [8, 0.4, 0.3],
      [12, 0.3, 0.2],
    ]) {
      expectClose(at(boundary), flatter, 1e-12);
      expectClose(at(boundary + 1e-9), steeper, 1e-12);
    }
    expectClose(at(0), 0.5, 1e-12);
    expectClose(at(16), 0.2, 1e-12);
  });

  test("above 16 % the table has no answer", () => {
    expect(callError("SOIL.INTAKE", "silt loam", 16.1)).toMatchObject({
      code: "#N/A",
      message:
        "the table of application rates ends at a slope of 16%: have the rate tested on the ground",
    });
  });

  test.each([
    "Silt loams over more compact soils",
    "silt-loam over compact",
    "SILT LOAM OVER COMPACT",
  ])("%p is a reasonable spelling", (profile) => {
    expectClose(callNumber("SOIL.INTAKE", profile, 0), 0.3, 1e-12);
  });

  test("sod takes more than bare ground; blank is bare", () => {
    for (const blank of [null, "", 0, "bare", "Bare"]) {
      expectClose(callNumber("SOIL.INTAKE", "silt loam", 2, "US", blank), 0.5, 1e-12);
    }
    for (const sod of ["sod", "SOD", "cover", "grass"]) {
      expectClose(callNumber("SOIL.INTAKE", "silt loam", 2, "US", sod), 1, 1e-12);
    }
    expectClose(callNumber("SOIL.INTAKE", "silt loam", 2, "SI", "sod"), 25.4, 1e-12);
    expect(callError("SOIL.INTAKE", "silt loam", 2, "US", "mulch").message).toBe(
      'cover must be one of "bare", "sod"; got "mulch"',
    );
  });

  test("wrong input", () => {
    expect(callError("SOIL.INTAKE", "rock", 2).message).toBe(
      'profile must be one of "coarse sandy", "coarse sandy over compact", "light sandy loam", ' +
        '"light sandy loam over compact", "silt loam", "silt loam over compact", "heavy clay"; got "rock"',
    );
    expect(callError("SOIL.INTAKE", "silt loam", -2).message).toBe(
      "slope must be 0% or more; got -2",
    );
    expect(callError("SOIL.INTAKE", "silt loam", null).message).toMatch(/^slope is missing/);
  });
});

describe("SOIL.NET", () => {
  test("the same depth in both systems", () => {
    expectClose(callNumber("SOIL.NET", 1.9, 2, 0.5), 1.9, 1e-12);
    expectClose(
      callNumber("SOIL.NET", (1.9 / 12) * 1000, 2 * 0.3048, 0.5, "SI"),
      1.9 * 25.4,
      1e-12,
    );
  });

  test.each([
    [[0, 2, 0.5], "awc must be above 0 and at most 12 in/ft; got 0"],
    [[150, 2, 0.5], "awc must be above 0 and at most 12 in/ft; got 150"],
    [[1001, 2, 0.5, "SI"], "awc must be above 0 and at most 1000 mm/m; got 1001"],
    [[1.9, 0, 0.5], "root must be above 0 ft; got 0"],
    [[1.9, 2, 50], "depletion must be above 0 and at most 1; got 50"],
    [[1.9, 2, 0], "depletion must be above 0 and at most 1; got 0"],
    [[1.9, 2, ""], "depletion is missing: it must be above 0 and at most 1"],
  ])("%j is refused", (cells, message) => {
    expect(callError("SOIL.NET", ...cells)).toMatchObject({ code: "#VALUE!", message });
  });

  test("from field to net depth with functions alone, the same in both systems", () => {
    const net = (units: string) =>
      callNumber(
        "SOIL.NET",
        callNumber("SOIL.AWC", "silt loam", units),
        callNumber("CROP.ROOT", "rotated pasture", units),
        callNumber("CROP.DEPLETION", "rotated pasture", units),
        units,
      );
    expectClose(net("US") * 25.4, net("SI"), 1e-9);
    expectClose(net("SI"), (2000 / 12) * 0.5 * 0.6, 1e-9);
  });
});

describe("SOIL.RAIN", () => {
  test("both systems agree", () => {
    const inches = callNumber("SOIL.RAIN", 3, 7, 2, "US");
    expectClose(callNumber("SOIL.RAIN", 3 * 25.4, 7 * 25.4, 2 * 25.4, "SI"), inches * 25.4, 1e-9);
  });

  test("never above the rain or the use", () => {
    expect(callNumber("SOIL.RAIN", 4, 0, 2)).toBe(0);
    expect(callNumber("SOIL.RAIN", 0, 7, 2)).toBe(0);
    expectClose(callNumber("SOIL.RAIN", 9, 2, 3), 2, 1e-12);
  });

  test("a wrong argument is named", () => {
    expect(callError("SOIL.RAIN", -1, 7, 2).message).toBe("rain must be 0 in or more; got -1");
    expect(callError("SOIL.RAIN", 3, 32, 2).message).toBe("use must be from 0 to 31 in; got 32");
    expect(callError("SOIL.RAIN", 3, 776, 50, "SI").message).toBe(
      "use must be from 0 to 775 mm; got 776",
    );
    expect(callError("SOIL.RAIN", 3, 7, 0).message).toBe("net must be above 0 in; got 0");
    expect(callError("SOIL.RAIN", null, 7, 2).message).toMatch(/^rain is missing/);
  });
});
