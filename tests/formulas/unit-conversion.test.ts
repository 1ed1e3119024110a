import { convert } from "../../src/formulas/unit-conversion";
import type { ConversionUnit } from "../../src/tables/conversion-units";

const kelvin: ConversionUnit = { symbol: "K", scale: 1, offset: 0, aliases: [] };
const celsius: ConversionUnit = { symbol: "°C", scale: 1, offset: 273.15, aliases: [] };

test("nothing is colder than absolute zero, with an offset on either side", () => {
  expect(convert(-273.15, celsius, kelvin)).toBe(0);
  expect(() => convert(-273.16, celsius, kelvin)).toThrow("below absolute zero; got -273.16 °C");
  expect(() => convert(-0.01, kelvin, celsius)).toThrow("below absolute zero; got -0.01 K");
});

test("a temperature loses the dust of its offsets, 0.1 + 273.15 − 273.15 too", () => {
  const other: ConversionUnit = { ...celsius };
  expect(convert(0.1, celsius, other)).toBe(0.1);
  expect(convert(20.1, celsius, kelvin)).toBe(293.25);
});
