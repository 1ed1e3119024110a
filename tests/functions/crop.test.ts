import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

describe("CROP.ROOT", () => {
  test("the same depth in both systems", () => {
    expect(callNumber("CROP.ROOT", "alfalfa hay", "SI")).toBe(1);
    expectClose(callNumber("CROP.ROOT", "alfalfa hay"), 1 / 0.3048, 1e-12);
  });

  test.each([
    "Alfalfa Hay, Single Cutting",
    "alfalfa-hay single cutting",
    "ALFALFA_HAY_SINGLE_CUTTING",
  ])("%p is a reasonable spelling", (crop) => {
    expect(callNumber("CROP.KC", crop, "mid")).toBe(1.2);
  });

  test("an unknown crop is an error with the list; a name for several is unknown", () => {
    for (const crop of ["moss", "wheat", "beans"]) {
      const error = callError("CROP.ROOT", crop);
      expect(error.code).toBe("#VALUE!");
      expect(error.message).toContain(' It must be one of "alfalfa hay", ');
      expect(error.message).toMatch(/^unknown crop ".*"rotated pasture", .*"walnut orchard"$/);
    }
    expect(callError("CROP.ROOT", "").message).toMatch(/^crop is missing: it must be one of/);
  });
});

describe("CROP.DEPLETION", () => {
  test.each([null, "", 0])("et %p leaves the published fraction", (et) => {
    expect(callNumber("CROP.DEPLETION", "rotated pasture", "SI", et)).toBe(0.6);
    expect(callNumber("CROP.DEPLETION", "rotated pasture", null, et)).toBe(0.6);
  });

  test("adjusted for ET, the same in both systems, between 0.1 and 0.8", () => {
    expectClose(callNumber("CROP.DEPLETION", "alfalfa", "SI", 7.62), 0.55 - 0.04 * 2.62, 1e-12);
    expectClose(callNumber("CROP.DEPLETION", "alfalfa", "US", 0.3), 0.55 - 0.04 * 2.62, 1e-12);
    expect(callNumber("CROP.DEPLETION", "celery", "SI", 12)).toBe(0.1);
    expect(callNumber("CROP.DEPLETION", "cotton", "SI", 0.5)).toBe(0.8);
  });

  test.each([
    [["alfalfa", "US", 5], "et must be above 0 and at most 1 in/day; got 5"],
    [["alfalfa", null, -0.1], "et must be above 0 and at most 1 in/day; got -0.1"],
    [["alfalfa", "SI", 26], "et must be above 0 and at most 25 mm/day; got 26"],
    [["alfalfa", "SI", "much"], 'et must be a number, above 0 and at most 25 mm/day; got "much"'],
  ])("%j is refused", (cells, message) => {
    expect(callError("CROP.DEPLETION", ...cells)).toMatchObject({ code: "#VALUE!", message });
  });
});

describe("CROP.KC", () => {
  test.each([
    ["initial", 0.4],
    ["Mid-Season", 0.95],
    ["late season", 0.9],
    ["END", 0.9],
  ])("alfalfa at the stage %p", (stage, expected) => {
    expect(callNumber("CROP.KC", "lucerne", stage)).toBe(expected);
  });

  test("an unknown or missing stage is an error with the list", () => {
    expect(callError("CROP.KC", "alfalfa", "ripe")).toMatchObject({
      code: "#VALUE!",
      message: 'stage must be one of "initial", "mid", "end"; got "ripe"',
    });
    expect(callError("CROP.KC", "alfalfa", null).message).toBe(
      'stage is missing: it must be one of "initial", "mid", "end"',
    );
  });
});
