import { readyMadeSheets } from "../../../src/sheets";
import type { Content, Contents } from "../../../src/trial/kept/changes";
import { convertPlan } from "../../../src/trial/kept/convert-units";
import { inputsOf } from "../../../src/trial/kept/inputs";
import { callNumber } from "../../support/host";

const convert = (value: number, from: string, to: string) =>
  callNumber("UNIT.CONVERT", value, from, to);

function toSI(id: string, contents: Contents = new Map()) {
  const sheet = readyMadeSheets.find((one) => one.id === id);
  if (sheet === undefined) throw new Error(id);
  const pages = sheet.pages("SI");
  const converted = convertPlan(
    { pages: sheet.pages("US"), contents },
    { pages, system: "SI" },
    convert,
  );
  const at = new Map(inputsOf(pages).map(({ called, key, cell }) => [called, { key, cell }]));
  const value = (called: string) => {
    const { key = "", cell } = at.get(called) ?? {};
    return converted.contents.has(key) ? converted.contents.get(key) : cell?.value;
  };
  return { ...converted, value };
}

// Factors: NIST SP 811 (2008), Appendix B.8: 1 ft = 0.3048 m, 1 in = 25.4 mm, 1 psi = 6.894757 kPa,
// 1 acre = 0.4046873 ha (US survey foot; the international one gives 0.4046856), 1 gal = 3.785412 L,
// 1 mph = 1.609344 km/h.
test.each([
  ["line-layout", "Spacing", 45 * 0.3048],
  ["line-layout", "Lowest", 40 * 6.894757],
  ["line-layout", "NetDepth", 1.4 * 25.4],
  ["line-layout", "Wind", 4 * 1.609344],
  ["line-layout", "Area", 10 * 0.404686],
  ["line-layout", "WaterTemperature", ((72 - 32) * 5) / 9],
  ["line-layout", "LowestRise", -3 * 0.3048],
  ["line-layout", "Sprinkler chart, flow, row 1", (3.7 * 3.785412 * 60) / 1000],
  ["line-layout", "Price per, row 1", 1.1 / 0.3048],
  ["line-layout", "Main, for all lines: Size (mm)", 90],
  ["line-layout", "Heads", 14],
  ["line-layout", "Texture", "silt loam"],
  ["line-layout", "Regulator", undefined],
  ["quote", "sprinkler head: Your cost", 16],
  ["quote", "Currency", "USD"],
  ["spacing-what-if", "TubingPrice", 1.1 / 0.3048],
  ["spacing-what-if", "InletStep", 4 * 6.894757],
  ["season", "Pond", 4800000 * 0.003785412],
  ["season", "HeadWeight", 6 * 0.4535924],
  ["season", "DayLow", ((61 - 32) * 5) / 9],
])("%s: %s in SI units is %p", (id, called, expected) => {
  const value = toSI(id).value(called);
  if (typeof expected === "number") expect(Number(value) / expected).toBeCloseTo(1, 5);
  else expect(value).toBe(expected);
});

test("every input of every workbook is converted or the same in both units; none is left", () => {
  for (const { id } of readyMadeSheets)
    expect({ id, left: toSI(id).left }).toEqual({ id, left: [] });
});

test("what was typed is converted, a blank stays blank, formulas and own cells are named", () => {
  const { value, left } = toSI(
    "line-layout",
    new Map<string, Content>([
      ["Line!D16", 40],
      ["Line!D19", null],
      ["Line!D15", { formula: "=Heads/2" }],
      ["Line!P3", 12],
    ]),
  );
  expect(value("Spacing")).toBeCloseTo(12.192, 6);
  expect(value("Riser")).toBeNull();
  expect(left).toEqual(["Changeover", "Line!P3"]);
});

test("a price per 1000 gallons is one per cubic meter", () => {
  const { pages } = readyMadeSheets.find(({ id }) => id === "season") ?? readyMadeSheets[0];
  const { key = "" } = inputsOf(pages("US")).find(({ called }) => called === "WaterPrice") ?? {};
  // 1000 gal are 3.785412 m³.
  expect(Number(toSI("season", new Map([[key, 2]])).value("WaterPrice"))).toBeCloseTo(
    2 / 3.785412,
    6,
  );
});

test("there and back is the same plan", () => {
  for (const sheet of readyMadeSheets) {
    const us = sheet.pages("US");
    const si = sheet.pages("SI");
    const there = convertPlan(
      { pages: us, contents: new Map() },
      { pages: si, system: "SI" },
      convert,
    );
    const back = convertPlan(
      { pages: si, contents: there.contents },
      { pages: us, system: "US" },
      convert,
    );
    const ready = new Map(inputsOf(us).map(({ key, cell }) => [key, cell.value]));
    for (const [key, content] of back.contents)
      expect({ key, ratio: Number(content) / Number(ready.get(key)) }).toEqual({
        key,
        ratio: expect.closeTo(1, 8),
      });
  }
});
