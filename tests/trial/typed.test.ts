import { parseNumber } from "../../src/trial/numbers-read";
import { commaFault, readTyped } from "../../src/trial/typed";

test.each([
  ["45", 45],
  [" 1,234.5 ", 1234.5],
  ["-0.5", -0.5],
  ["", null],
  ["  ", null],
  ["Darcy", "Darcy"],
  ["12 ft", "12 ft"],
  ["Infinity", "Infinity"],
])("%p typed is %p", (text, value) => {
  expect(readTyped(text)).toBe(value);
});

test.each([
  ["0,175", 0.175],
  ["-0,175", -0.175],
  ["3,7", 3.7],
  ["12,50", 12.5],
  [",5", 0.5],
  ["1500,5", 1500.5],
  ["1234,567", 1234.567],
  ["01,500", 1.5],
  ["1,2345", 1.2345],
  ["1,234,567", 1234567],
  ["12,345.", 12345],
])("a comma that can be read in one way only is so read: %p is %p", (text, value) => {
  expect(readTyped(text)).toBe(value);
  expect(commaFault(readTyped(text))).toBeUndefined();
  expect(parseNumber(text)?.v).toBe(value);
});

test.each(["1,500", "-1,500", "175,000", "1.234,5", "1,23,456", "1,2.5", "1 234,5", "72,75,69"])(
  "%p is no number; it is said how to write it",
  (text) => {
    expect(readTyped(text)).toBe(text);
    expect(commaFault(text)).toContain("type ");
    expect(parseNumber(text)).toBeNull();
  },
);

test("both readings are offered", () => {
  expect(commaFault("1,500")).toBe('"1,500" can be read in two ways: type 1500 or 1.500.');
});

test.each(["Half with the order, the rest on delivery", "Lane 5, North", null, 3, true, ","])(
  "%p is not taken for a number",
  (value) => expect(commaFault(value)).toBeUndefined(),
);

test("currency and percent keep their meaning around a comma", () => {
  expect(parseNumber("$0,5")?.v).toBe(0.5);
  expect(parseNumber("12,5%")?.v).toBeCloseTo(0.125, 12);
  expect(parseNumber("$1,500")).toBeNull();
  expect(parseNumber("1500")?.v).toBe(1500);
});
