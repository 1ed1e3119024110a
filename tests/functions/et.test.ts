import fc from "fast-check";
import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

const fahrenheit = (celsius: number) => celsius * 1.8 + 32;

/** A summer day, SI, by argument. */
const day = {
  tmin: 14 as unknown,
  tmax: 30 as unknown,
  dewpoint: 11 as unknown,
  wind: 9 as unknown,
  radiation: 25 as unknown,
  latitude: 40 as unknown,
  elevation: 300 as unknown,
  day: 196 as unknown,
  units: "SI" as unknown,
};
const reference = (change: Partial<typeof day> = {}) =>
  callNumber("ET.REFERENCE", ...Object.values({ ...day, ...change }));
const referenceError = (change: Partial<typeof day>) =>
  callError("ET.REFERENCE", ...Object.values({ ...day, ...change }));

describe("ET.REFERENCE", () => {
  test("a summer day by hand, and the same day in US units", () => {
    expectClose(reference(), 6.163805075782622, 1e-11);
    const us = callNumber(
      "ET.REFERENCE",
      fahrenheit(14),
      fahrenheit(30),
      fahrenheit(11),
      9 / 1.609344,
      25,
      40,
      300 / 0.3048,
      196,
    );
    expectClose(us * 25.4, reference(), 1e-9);
    expectClose(reference({ units: " metric " }), reference(), 1e-12);
  });

  test("the southern hemisphere has its summer in January", () => {
    expect(reference({ latitude: -35, day: 15 })).toBeGreaterThan(0);
    expectClose(
      callNumber("ET.REFERENCE", 8, 22, 4, 10, 20, -35, 50, 366, "SI"),
      4.779284845667935,
      1e-9,
    );
    expect(referenceError({ latitude: -35 }).message).toMatch(/^radiation must be at most/);
  });

  test("drier air takes more, and air without moisture has its limit", () => {
    expect(reference({ dewpoint: 0 })).toBeGreaterThan(reference({ dewpoint: 11 }));
    expectClose(reference({ dewpoint: -100 }), reference({ dewpoint: -60 }), 0.005);
    expectClose(
      callNumber("ET.REFERENCE", 15, 45, -100, 18, 28, 30, 1000, 172, "SI"),
      14.726307391227875,
      1e-9,
    );
  });

  test("a dew point above tmin is taken, up to saturated air; above tmax it cannot be", () => {
    expect(reference({ dewpoint: 16 })).toBeLessThan(reference({ dewpoint: 14 }));
    expect(reference({ dewpoint: 29 })).toBeGreaterThan(0);
    expect(reference({ dewpoint: 30 })).toBeGreaterThan(0);
    expect(referenceError({ dewpoint: 31 })).toMatchObject({
      code: "#VALUE!",
      message: "dewpoint must not be above tmax; got dewpoint 31 °C and tmax 30 °C",
    });
  });

  test("tmin above tmax names both", () => {
    expect(callError("ET.REFERENCE", 75, 60, 50, 5, 20, 40, 900, 196)).toMatchObject({
      code: "#VALUE!",
      message: "tmin must not be above tmax; got tmin 75 °F and tmax 60 °F",
    });
    expect(reference({ tmin: 30 })).toBeGreaterThan(0);
  });

  test("no sunset or no sunrise is no answer, and says so", () => {
    expect(referenceError({ latitude: 75 })).toMatchObject({
      code: "#N/A",
      message:
        "the sun does not set at latitude 75 on day 196: the equations need a day with a sunrise and a sunset",
    });
    expect(referenceError({ latitude: -75 })).toMatchObject({ code: "#N/A" });
    expect(referenceError({ latitude: -75 }).message).toMatch(/^the sun does not rise/);
    expect(reference({ latitude: 65 })).toBeGreaterThan(0);
  });

  test("more radiation than reaches the atmosphere is a slip of units", () => {
    expect(referenceError({ radiation: 290 })).toMatchObject({
      code: "#VALUE!",
      message:
        "radiation must be at most 40.8 MJ/m²/day, what reaches the atmosphere at this latitude on day 196; " +
        "got 290 (a mean in W/m² × 0.0864 is MJ/m²/day)",
    });
    const most = callNumber("ET.RADIATION", 40, 196);
    expect(reference({ radiation: most * (1 - 1e-9) })).toBeGreaterThan(reference());
    expect(referenceError({ radiation: most * 1.001 }).code).toBe("#VALUE!");
  });

  test.each([
    [{ tmin: null }, "tmin is missing: it must be from -50 to 60 °C"],
    [{ tmin: -51 }, "tmin must be from -50 to 60 °C; got -51"],
    [{ tmax: 86, units: "SI" }, "tmax must be from -50 to 60 °C; got 86"],
    [{ tmax: "warm" }, 'tmax must be a number, from -50 to 60 °C; got "warm"'],
    [{ dewpoint: -101 }, "dewpoint must be from -100 to 60 °C; got -101"],
    [{ wind: -1 }, "wind must be from 0 to 200 km/h; got -1"],
    [{ wind: 201 }, "wind must be from 0 to 200 km/h; got 201"],
    [{ radiation: 0 }, "radiation must be above 0 MJ/m²/day; got 0"],
    [{ latitude: 91 }, "latitude must be from -90 to 90 degrees; got 91"],
    [{ elevation: 6001 }, "elevation must be from -450 to 6000 m; got 6001"],
    [{ elevation: 20001, units: "US" }, "elevation must be from -1500 to 20000 ft; got 20001"],
    [{ elevation: -451 }, "elevation must be from -450 to 6000 m; got -451"],
    [{ day: 0 }, "day must be a whole number from 1 to 366; got 0"],
    [{ day: 367 }, "day must be a whole number from 1 to 366; got 367"],
    [{ day: 45000 }, "day must be a whole number from 1 to 366; got 45000"],
    [{ day: 10.5 }, "day must be a whole number from 1 to 366; got 10.5"],
    [{ units: "imperial" }, 'units must be one of "US", "SI"; got "imperial"'],
  ])("%j is refused", (change, message) => {
    expect(referenceError(change)).toMatchObject({ code: "#VALUE!", message });
  });

  test("the limits in °F are those in °C", () => {
    expect(callError("ET.REFERENCE", -59, 60, 50, 5, 20, 40, 900, 196).message).toBe(
      "tmin must be from -58 to 140 °F; got -59",
    );
    expect(callError("ET.REFERENCE", 50, 60, -149, 5, 20, 40, 900, 196).message).toBe(
      "dewpoint must be from -148 to 140 °F; got -149",
    );
  });

  test("any weather gives a number from 0 up", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 18, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 0.75, noNaN: true }),
        fc.double({ min: -66, max: 66, noNaN: true }),
        fc.integer({ min: 1, max: 366 }),
        (tmin, range, depression, wind, share, latitude, when) => {
          const outside = callNumber("ET.RADIATION", latitude, when);
          const et = callNumber(
            "ET.REFERENCE",
            tmin,
            tmin + range,
            tmin - depression,
            wind,
            outside * share,
            latitude,
            200,
            when,
            "SI",
          );
          expect(et).toBeGreaterThanOrEqual(0);
          expect(et).toBeLessThan(100);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("ET.HARGREAVES", () => {
  test("a summer day by hand, in both systems and hemispheres", () => {
    expectClose(callNumber("ET.HARGREAVES", 12, 28, 40, 196, "SI"), 5.791195137485684, 1e-9);
    expectClose(callNumber("ET.HARGREAVES", 12, 28, -40, 15, "SI"), 6.153164885562585, 1e-9);
    expectClose(
      callNumber("ET.HARGREAVES", fahrenheit(12), fahrenheit(28), 40, 196) * 25.4,
      5.791195137485684,
      1e-9,
    );
  });

  test("wrong input", () => {
    expect(callError("ET.HARGREAVES", 20, 10, 40, 196, "SI").message).toBe(
      "tmin must not be above tmax; got tmin 20 °C and tmax 10 °C",
    );
    expect(callError("ET.HARGREAVES", 10, 20, 80, 172, "SI").code).toBe("#N/A");
    expect(callError("ET.HARGREAVES", 10, 20, 40, null, "SI").message).toMatch(/^day is missing/);
  });
});

describe("ET.DEWPOINT", () => {
  test("by hand, in both systems", () => {
    expectClose(callNumber("ET.DEWPOINT", 14, 29, 0.35, 0.9, "SI"), 12.191421062335378, 1e-9);
    expectClose(callNumber("ET.DEWPOINT", -5, 3, 0.6, 0.95, "SI"), -4.807038910256202, 1e-9);
    expectClose(callNumber("ET.DEWPOINT", 14, 29, 0, 0.9, "SI"), 2.269589563047487, 1e-9);
    expectClose(
      callNumber("ET.DEWPOINT", fahrenheit(14), fahrenheit(29), 0.35, 0.9),
      fahrenheit(12.191421062335378),
      1e-9,
    );
  });

  test("saturated air at one temperature has its dew point there", () => {
    expectClose(callNumber("ET.DEWPOINT", 17, 17, 1, 1, "SI"), 17, 1e-12);
  });

  test("a saturated day gives ET.REFERENCE a dew point it takes", () => {
    const dewpoint = callNumber("ET.DEWPOINT", 14, 30, 1, 1, "SI");
    expect(reference({ dewpoint })).toBeGreaterThan(0);
  });

  test.each([
    [[14, 29, 0.9, 0.35], "rhmin must not be above rhmax; got rhmin 0.9 and rhmax 0.35"],
    [[14, 29, 35, 90], "rhmin must be from 0 to 1; got 35"],
    [[14, 29, 0.35, 90], "rhmax must be above 0 and at most 1; got 90"],
    [[14, 29, 0, 0], "rhmax must be above 0 and at most 1; got 0"],
    [[14, 29, null, 1], "rhmin is missing: it must be from 0 to 1"],
    [[29, 14, 0.3, 1], "tmin must not be above tmax; got tmin 29 °C and tmax 14 °C"],
  ])("%j is refused", (cells, message) => {
    expect(callError("ET.DEWPOINT", ...cells, "SI")).toMatchObject({ code: "#VALUE!", message });
  });
});

describe("ET.WIND2M", () => {
  test("by hand, in both systems", () => {
    expectClose(callNumber("ET.WIND2M", 5, 10, "SI"), 3.7397553758397204, 1e-12);
    expectClose(callNumber("ET.WIND2M", 5, 10 / 0.3048), 3.7397553758397204, 1e-12);
    expect(callNumber("ET.WIND2M", 0, 33)).toBe(0);
  });

  test.each([
    [[5, 0.2, "SI"], "height must be from 0.3 to 100 m; got 0.2"],
    [[5, 101, "SI"], "height must be from 0.3 to 100 m; got 101"],
    [[5, 0.9, "US"], "height must be from 1 to 330 ft; got 0.9"],
    [[5, 331, null], "height must be from 1 to 330 ft; got 331"],
    [[-5, 33, "US"], "wind must be from 0 to 200 mph; got -5"],
    [[5, "", "US"], "height is missing: it must be from 1 to 330 ft"],
  ])("%j is refused", (cells, message) => {
    expect(callError("ET.WIND2M", ...cells)).toMatchObject({ code: "#VALUE!", message });
  });
});

describe("ET.SOLAR", () => {
  test("an overcast, a part and a clear day by hand", () => {
    expectClose(callNumber("ET.SOLAR", 0, 40, 196), 10.19987066284214, 1e-12);
    expectClose(callNumber("ET.SOLAR", 8, 40, 196), 21.40217618591077, 1e-12);
    expectClose(callNumber("ET.SOLAR", 14.56824492685053, 40, 196), 30.59961198852642, 1e-12);
  });

  test("a record rounded up to a tenth of an hour is the whole day, more is an error", () => {
    // The day is 14.568 h long.
    expectClose(callNumber("ET.SOLAR", 14.66, 40, 196), 30.59961198852642, 1e-12);
    expect(callError("ET.SOLAR", 14.67, 40, 196)).toMatchObject({
      code: "#VALUE!",
      message: "sunshine must be at most 14.6 h, the length of day 196 at this latitude; got 14.7",
    });
    expect(callError("ET.SOLAR", 25, 40, 196).message).toBe(
      "sunshine must be from 0 to 24 h; got 25",
    );
    expect(callError("ET.SOLAR", 5, 80, 1).code).toBe("#N/A");
  });
});

describe("ET.RADIATION", () => {
  test("by hand, north and south, and on the last day of a leap year", () => {
    expectClose(callNumber("ET.RADIATION", 40, 196), 40.79948265136856, 1e-12);
    expectClose(callNumber("ET.RADIATION", -35, 366), 44.23636047588971, 1e-12);
    expectClose(callNumber("ET.RADIATION", 0, 80), 37.82421310762571, 1e-12);
  });

  test("wrong input and polar days", () => {
    expect(callError("ET.RADIATION", "north", 1).message).toBe(
      'latitude must be a number, from -90 to 90 degrees; got "north"',
    );
    expect(callError("ET.RADIATION", -80, 355)).toMatchObject({
      code: "#N/A",
      message:
        "the sun does not set at latitude -80 on day 355: the equations need a day with a sunrise and a sunset",
    });
  });
});

describe("ET.PEAK", () => {
  test("both systems agree, and the shallower irrigation has the higher peak", () => {
    const inches = callNumber("ET.PEAK", 7.5, 2, "US");
    expect(callNumber("ET.PEAK", 7.5 * 25.4, 2 * 25.4, "SI")).toBeCloseTo(inches * 25.4, 9);
    expect(callNumber("ET.PEAK", 7.5, 1)).toBeGreaterThan(inches);
  });

  test("a wrong argument is named", () => {
    expect(callError("ET.PEAK", 32, 2).message).toBe("month must be from 0 to 31 in; got 32");
    expect(callError("ET.PEAK", 190, 0, "SI").message).toBe("net must be above 0 mm; got 0");
    expect(callError("ET.PEAK", null, 2).message).toMatch(/^month is missing/);
  });
});
