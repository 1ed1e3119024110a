import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

const POUND = 0.45359237; // kg
const LBF = 4.4482216152605; // N
const PSI = 6.894757293168; // kPa

describe("TOW.WEIGHT", () => {
  const two = [
    [[2.48], [1.97]],
    [[2.15], [1.72]],
    [[315], [315]],
  ] as const;

  test("both unit systems weigh the same, two sizes are summed", () => {
    const us = callNumber("TOW.WEIGHT", ...two, 14, 6, "US", "full");
    const scaled = (column: readonly (readonly number[])[], by: number) =>
      column.map(([value]) => [value * by]);
    const si = callNumber(
      "TOW.WEIGHT",
      scaled(two[0], 25.4),
      scaled(two[1], 25.4),
      scaled(two[2], 0.3048),
      14,
      6 * POUND,
      "SI",
      "full",
    );
    expectClose(si, us * POUND, 1e-9);
    const large = callNumber("TOW.WEIGHT", 2.48, 2.15, 315, 14, 6);
    const small = callNumber("TOW.WEIGHT", 1.97, 1.72, 315, 0, 0);
    expectClose(large + small, us, 1e-12);
  });

  test("blank contents is full; drained is lighter", () => {
    const full = callNumber("TOW.WEIGHT", ...two, 14, 6, "US", "Full");
    for (const blank of [null, "", 0]) {
      expect(callNumber("TOW.WEIGHT", ...two, 14, 6, "US", blank)).toBe(full);
    }
    expect(callNumber("TOW.WEIGHT", ...two, 14, 6, "US", "drained")).toBeLessThan(full / 2);
  });

  test("a wrong argument is named", () => {
    const error = (...cells: unknown[]) => callError("TOW.WEIGHT", ...cells).message;
    expect(error([[2.48], [1.97]], 2.15, 315, 14, 6)).toBe(
      "outside and inside must have the same number of values; got 2 and 1",
    );
    expect(error(2.15, 2.15, 315, 14, 6)).toBe(
      "inside must be below outside; got 2.15 in in tubing of 2.15 in",
    );
    expect(error(2.48, 2.15, 315, 14.5, 6)).toBe(
      "heads must be a whole number from 0 to 500; got 14.5",
    );
    expect(error(63, 55, 96, 14, -1, "SI")).toBe("headweight must be 0 kg or more; got -1");
    expect(error(63, 55, 96, 14, 3, "SI", "half")).toBe(
      'contents must be one of "full", "drained"; got "half"',
    );
    expect(error(-63, 55, 96, 14, 3, "SI")).toBe("outside must be above 0 mm; got -63");
  });
});

describe("TOW.PULL", () => {
  test("both unit systems agree", () => {
    const us = callNumber("TOW.PULL", 520, 0.45, "US", 2);
    expectClose(callNumber("TOW.PULL", 520 * POUND, 0.45, "SI", 2), us * LBF, 1e-9);
  });

  test("blank slope is level; steep downhill needs no pull", () => {
    for (const blank of [null, "", 0]) {
      expect(callNumber("TOW.PULL", 520, 0.5, "US", blank)).toBeCloseTo(260, 9);
    }
    expect(callNumber("TOW.PULL", 520, 0.5, "US", -60)).toBe(0);
  });

  test("a wrong argument is named", () => {
    expect(callError("TOW.PULL", -1, 0.5).message).toBe("weight must be 0 lb or more; got -1");
    expect(callError("TOW.PULL", 520, 45).message).toBe("drag must be from 0 to 3; got 45");
    expect(callError("TOW.PULL", 520, 0.5, "US", 101).message).toBe(
      "slope must be from -100 to 100%; got 101",
    );
  });
});

describe("TOW.SAFEPULL", () => {
  test("both unit systems agree", () => {
    const us = callNumber("TOW.SAFEPULL", 1.97, 17, 2600, "US", 95, 90, 900);
    const si = callNumber("TOW.SAFEPULL", 1.97 * 25.4, 17, 2600 * PSI, "SI", 35, 90, 900 * LBF);
    expectClose(si, us * LBF, 1e-9);
  });

  test("a weaker joint governs, a stronger one does not", () => {
    const tubing = callNumber("TOW.SAFEPULL", 1.97, 17, 2600);
    expectClose(callNumber("TOW.SAFEPULL", 1.97, 17, 2600, "US", null, null, 300), 300, 1e-12);
    expect(callNumber("TOW.SAFEPULL", 1.97, 17, 2600, "US", null, null, 5000)).toBe(tubing);
    expect(callNumber("TOW.SAFEPULL", 1.97, 17, 2600, "US", 0, 0, 0)).toBe(tubing);
    expect(callNumber("TOW.SAFEPULL", 1.97, 17, 2600, "US", "", 60, "")).toBe(tubing);
  });

  test("beyond the tables there is no answer", () => {
    expect(callError("TOW.SAFEPULL", 1.97, 17, 2600, "US", 141)).toMatchObject({ code: "#N/A" });
    expect(callError("TOW.SAFEPULL", 50, 17, 18000, "SI", 61).message).toMatch(
      /^temperature is above the published table/,
    );
    expect(callError("TOW.SAFEPULL", 1.97, 17, 2600, "US", 73, 1441)).toMatchObject({
      code: "#N/A",
      message: "the published time factors end at 24 hours of pull",
    });
  });

  test("a wrong argument is named", () => {
    expect(callError("TOW.SAFEPULL", 1.97, 17, null).message).toBe(
      "yield is missing: it must be above 0 psi",
    );
    expect(callError("TOW.SAFEPULL", 1.97, 2, 2600).message).toBe("rating must be above 2; got 2");
    expect(callError("TOW.SAFEPULL", 0, 17, 2600).message).toBe(
      "outside must be above 0 in; got 0",
    );
    expect(callError("TOW.SAFEPULL", 1.97, 17, 2600, "US", 70, -5).message).toBe(
      "minutes must be above 0 min; got -5",
    );
    expect(callError("TOW.SAFEPULL", 50, 17, 18000, "SI", 20, 60, -5).message).toBe(
      "joint must be above 0 N; got -5",
    );
  });
});

describe("TOW.BEND", () => {
  test("between printed ratings the next higher counts", () => {
    expect(callNumber("TOW.BEND", 10, 12)).toBe(250);
    expect(callNumber("TOW.BEND", 10, 13.6)).toBe(270);
    expect(callNumber("TOW.BEND", 10, 17.6)).toBe(270);
    expect(callNumber("TOW.BEND", 10, 21.1)).toBe(340);
  });

  test("with a fitting in the bend one multiple holds for every ratio", () => {
    for (const rating of [11, 17, 26]) {
      expect(callNumber("TOW.BEND", 10, rating, true)).toBe(1000);
      for (const blank of [null, "", 0, false]) {
        expect(callNumber("TOW.BEND", 10, rating, blank)).toBe(callNumber("TOW.BEND", 10, rating));
      }
    }
    expect(callError("TOW.BEND", 10, 26.5, true).code).toBe("#N/A");
    expect(callError("TOW.BEND", 10, 17, "yes").message).toBe(
      'fitting must be TRUE or FALSE; got "yes"',
    );
  });

  test("outside the table there is no answer", () => {
    expect(callError("TOW.BEND", 10, 9)).toMatchObject({
      code: "#N/A",
      message: "rating 9 is outside the published table, which runs from 11 to 26",
    });
    expect(callError("TOW.BEND", 10, 26.5).code).toBe("#N/A");
    expect(callError("TOW.BEND", 10, 1).message).toBe("rating must be above 2; got 1");
    expect(callError("TOW.BEND", -10, 17).message).toBe("outside must be above 0; got -10");
  });
});
