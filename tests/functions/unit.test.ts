import { join } from "node:path";
import fc from "fast-check";
import { readDocComments } from "../../build/doc-comments";
import { readUnits, type Measures } from "../../src/boundary/units";
import { QUANTITIES } from "../../src/tables/conversion-units";
import { callError, callNumber } from "../support/host";
import { expectClose } from "../support/published";

const convert = (value: number, from: string, to: string) =>
  callNumber("UNIT.CONVERT", value, from, to);

test("there and back gives the number again, for any two units of a quantity", () => {
  const pair = fc
    .constantFrom(...QUANTITIES)
    .chain(({ units }) => fc.tuple(fc.constantFrom(...units), fc.constantFrom(...units)));
  fc.assert(
    fc.property(pair, fc.double({ min: 1, max: 1e6, noNaN: true }), ([from, to], value) => {
      const there = convert(value, from.symbol, to.symbol);
      // Beyond the largest number that any argument takes there is no way back.
      fc.pre(Math.abs(there) <= 1e12);
      expectClose(convert(there, to.symbol, from.symbol), value, 1e-9);
    }),
  );
});

test("knows every unit that the other functions speak, by the same factor", () => {
  for (const system of ["US", "SI"]) {
    const measures = Object.entries(readUnits(system) as Measures).filter(
      ([name]) => name !== "system",
    );
    for (const [name, measure] of measures) {
      const quantity = QUANTITIES.find(({ units }) =>
        units.some((entry) => entry.symbol === measure.unit),
      );
      if (quantity === undefined) throw new Error(`${name}: no unit ${measure.unit}`);
      const entry = quantity.units.find(({ symbol }) => symbol === measure.unit);
      if (entry === undefined) throw new Error(`${name}: no unit ${measure.unit}`);
      expectClose(entry.scale, measure.toSI(1) - measure.toSI(0), 1e-9);
    }
  }
});

test("no two units share a spelling", () => {
  const seen = new Map<string, string>();
  for (const { units } of QUANTITIES) {
    for (const { symbol, aliases } of units) {
      for (const spelling of new Set([symbol, ...aliases].map(bare))) {
        if (seen.has(spelling)) throw new Error(`${spelling}: ${seen.get(spelling)} and ${symbol}`);
        seen.set(spelling, symbol);
      }
    }
  }
});

function bare(text: string): string {
  return text
    .replace(/²/g, "2")
    .replace(/³/g, "3")
    .replace(/[\s\-_.^°·]+/g, "");
}

test("every unit is found by its symbol and by each further spelling, in lower case too", () => {
  for (const { units } of QUANTITIES) {
    const base = units[0].symbol;
    for (const { symbol, aliases } of units) {
      const value = convert(7, symbol, base);
      for (const alias of aliases) expect(convert(7, alias, base)).toBe(value);
      if (!["ML", "ML/day"].includes(symbol))
        expect(convert(7, symbol.toLowerCase(), base)).toBe(value);
    }
  }
});

test.each([
  ["ft2", "ft²"],
  ["ft^2", "ft²"],
  ["M3/H", "m³/h"],
  ["GPM", "gpm"],
  ["acre in", "acre-in"],
  ["Acre-Feet", "acre-ft"],
  ["f", "°F"],
  ["° F", "°F"],
  ["deg. F", "°F"],
  ["KPA", "kPa"],
  ["ML", "ML"],
  ["ml", "mL"],
  ["mpa", "MPa"],
  ["Ft H2O", "ft of water"],
])("%s is %s", (spelling, symbol) => {
  expect(convert(3, spelling, symbol)).toBe(3);
});

test("tells apart what case tells apart", () => {
  expect(convert(1, "ML", "mL")).toBe(1e9);
  expect(callError("UNIT.CONVERT", 1, "Ml", "gal").message).toBe(
    'from could be mL or ML; got "Ml"',
  );
  // A milliwatt and a millipascal are no unit here; they are not the mega ones.
  expect(callError("UNIT.CONVERT", 1, "mW", "W").message).toMatch(
    /^from has the unknown unit "m(W|Pa)"\. It must be one of/,
  );
  expect(callError("UNIT.CONVERT", 1, "mPa", "Pa").message).toMatch(
    /^from has the unknown unit "m(W|Pa)"\. It must be one of/,
  );
});

test.each([
  ["°F", "°C"],
  ["F", "C"],
  ["deg F", "deg C"],
  ["Fahrenheit", "Celsius"],
])("212 %s is 100 %s", (from, to) => {
  expectClose(convert(212, from, to), 100, 1e-12);
});

test("an unknown unit lists all", () => {
  const { code, message } = callError("UNIT.CONVERT", 1, "psi", "furlong");
  expect(code).toBe("#VALUE!");
  expect(message).toMatch(
    /^to has the unknown unit "furlong"\. It must be one of length or depth: ft, in, yd.*; area: acre, ha/,
  );
  for (const { units } of QUANTITIES) {
    for (const { symbol } of units) expect(message).toContain(symbol);
  }
  for (const missing of [null, "", 0]) {
    expect(callError("UNIT.CONVERT", 1, missing, "psi").message).toMatch(
      /^from is missing: it must be one of length or depth: ft, in/,
    );
  }
  expect(callError("UNIT.CONVERT", 1, 12, "psi").message).toMatch(
    /^from has the unknown unit 12\. /,
  );
});

test("the help lists every unit, as the error does", () => {
  const { functions } = readDocComments(join(__dirname, "../../src/functions/unit.ts"));
  const { message } = callError("UNIT.CONVERT", 1, "psi", "furlong");
  expect(functions[0].remarks).toContain(`The units are: ${message.split("must be one of ")[1]}.`);
});

test("refuses a change of quantity, and names both", () => {
  expect(callError("UNIT.CONVERT", 1, "gpm", "psi").message).toBe(
    "from and to must be of one quantity; gpm is flow, psi is pressure or head of water",
  );
  expect(callError("UNIT.CONVERT", 1, "lb", "lbf").message).toBe(
    "from and to must be of one quantity; lb is mass, lbf is force",
  );
});

test("leaves no dust behind", () => {
  expect(convert(1, "ft", "in")).toBe(12);
  expect(convert(0.1, "m", "mm")).toBe(100);
  expect(convert(68, "°F", "°C")).toBe(20);
  expect(convert(-459.67, "°F", "K")).toBe(0);
  expect(convert(1 / 3, "psi", "psi")).toBe(1 / 3);
  expect(convert(0, "psi", "kPa")).toBe(0);
  expect(convert(-14.5, "psi", "bar")).toBeCloseTo(-0.99974, 5);
});

test("stops at absolute zero", () => {
  expect(callError("UNIT.CONVERT", -300, "°C", "°F").message).toBe(
    "value is below absolute zero; got -300 °C",
  );
  expect(callError("UNIT.CONVERT", -1, "K", "°F").message).toContain("below absolute zero");
});

test("the factors that no other check reaches", () => {
  for (const [value, from, to, expected] of [
    [1, "cm", "mm", 10],
    [1, "km", "m", 1000],
    [1, "ha", "m²", 10000],
    [1, "cm²", "mm²", 100],
    [1, "km²", "ha", 100],
    [1, "cm³", "mL", 1],
    [1, "ha-mm", "m³", 10],
    [1, "ha-m", "m³", 10000],
    [60, "gph", "gpm", 1],
    [60, "L/min", "L/s", 1],
    [3600, "L/h", "L/s", 1],
    [3.6, "m³/h", "L/s", 1],
    [86400, "m³/day", "m³/s", 1],
    [1, "ML/day", "m³/day", 1000],
    [24, "acre-in/h", "acre-ft/day", 48],
    [1.20095, "imp gpm", "gpm", 1.44228],
    [1, "MPa", "kPa", 1000],
    [24, "in/h", "in/day", 576],
    [24, "mm/h", "mm/day", 576],
    [1, "cm/h", "mm/h", 10],
    [1, "ft/s", "ft/min", 60],
    [1, "MW", "kW", 1000],
    [1, "kW", "W", 1000],
    [1, "kJ", "J", 1000],
    [1, "hp-h", "kWh", 0.74569987],
    [1, "kN", "N", 1000],
    [1, "t", "kg", 1000],
    [1, "kg", "g", 1000],
    [12, "in/ft", "mm/m", 1000],
    [1, "m/m", "mm/m", 1000],
    [8.64, "MJ/m²/day", "W/m²", 100],
    [100, "ly/day", "MJ/m²/day", 4.184],
    [1, "kWh/m²/day", "MJ/m²/day", 3.6],
    [1, "g/cm³", "kg/m³", 1000],
    [1, "m²/s", "mm²/s", 1e6],
  ] as const) {
    expectClose(convert(value, from, to), expected, 2e-6);
  }
});

test("value must be a number", () => {
  expect(callError("UNIT.CONVERT", null, "psi", "kPa").message).toContain("value is missing");
  expect(callError("UNIT.CONVERT", "five", "psi", "kPa").message).toContain('got "five"');
});
