import fc from "fast-check";
import { above, anyNumber } from "../../src/boundary/numbers";
import { Measure, readUnits, rounded, type Measures } from "../../src/boundary/units";

const measures = (u: Measures) =>
  Object.entries(u).filter((entry): entry is [string, Measure] => entry[1] instanceof Measure);

test("blank is US; any case, metric and a 0 from a blank cell are understood", () => {
  for (const blank of [null, undefined, "", 0, "0", [[null]]]) {
    expect(readUnits(blank).system).toBe("US");
  }
  for (const text of ["us", "US", " Us "]) expect(readUnits(text).system).toBe("US");
  for (const text of ["si", "SI", "metric", "Metric"]) expect(readUnits(text).system).toBe("SI");
  expect(() => readUnits("imperial")).toThrow('units must be one of "US", "SI"; got "imperial"');
  expect(() => readUnits(1)).toThrow('units must be one of "US", "SI"; got 1');
});

test("the units of the catalogue's table", () => {
  const unitsOf = (system: string) =>
    Object.fromEntries(measures(readUnits(system)).map(([name, measure]) => [name, measure.unit]));
  expect(unitsOf("US")).toEqual({
    length: "ft",
    diameter: "in",
    depth: "in",
    pressure: "psi",
    flow: "gpm",
    rate: "in/h",
    area: "acre",
    pipeVolume: "gal",
    fieldVolume: "gal",
    speed: "ft/s",
    temperature: "°F",
    temperatureChange: "°F",
    power: "hp",
    weight: "lb",
    pull: "lbf",
    wind: "mph",
    waterCapacity: "in/ft",
    viscosity: "ft²/s",
    density: "lb/ft³",
    dailyDepth: "in/day",
  });
  expect(unitsOf("SI")).toEqual({
    length: "m",
    diameter: "mm",
    depth: "mm",
    pressure: "kPa",
    flow: "m³/h",
    rate: "mm/h",
    area: "ha",
    pipeVolume: "L",
    fieldVolume: "m³",
    speed: "m/s",
    temperature: "°C",
    temperatureChange: "°C",
    power: "kW",
    weight: "kg",
    pull: "N",
    wind: "km/h",
    waterCapacity: "mm/m",
    viscosity: "m²/s",
    density: "kg/m³",
    dailyDepth: "mm/day",
  });
});

test("every measure turns back what it turned", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("US", "SI"),
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      (system, value) => {
        for (const [, measure] of measures(readUnits(system))) {
          const back = measure.give(measure.toSI(value));
          expect(Math.abs(back - value)).toBeLessThanOrEqual(
            1e-12 * Math.max(1000, Math.abs(value)),
          );
        }
      },
    ),
  );
});

test("a default is a round number in each system", () => {
  const speedLimit = { US: 5, SI: 1.5 };
  expect(readUnits("US").speed.readOr("velocity", null, above(0), speedLimit)).toBeCloseTo(
    1.524,
    12,
  );
  expect(readUnits("SI").speed.readOr("velocity", 0, above(0), speedLimit)).toBe(1.5);
  expect(readUnits("US").speed.readOr("velocity", 2, above(0), speedLimit)).toBeCloseTo(0.6096, 12);
});

test("a limit in SI reads in the units of the call", () => {
  expect(readUnits("US").temperature.betweenSI(273.15, 373.15)).toMatchObject({
    low: 32,
    high: 212,
  });
  expect(readUnits("SI").temperature.betweenSI(273.15, 373.15)).toMatchObject({
    low: 0,
    high: 100,
  });
});

test("messages round to what a person acts on", () => {
  expect(rounded(48.3551)).toBe("48.4");
  expect(rounded(12345.678)).toBe("12350");
  expect(readUnits("US").pressure.say(333000)).toBe("48.3 psi");
});

test("temperature, freezing and boiling", () => {
  const { temperature } = readUnits("US");
  expect(temperature.read("temperature", 32, anyNumber)).toBeCloseTo(273.15, 10);
  expect(temperature.read("temperature", 212, anyNumber)).toBeCloseTo(373.15, 10);
  expect(readUnits("SI").temperature.read("temperature", 20, anyNumber)).toBeCloseTo(293.15, 10);
});
