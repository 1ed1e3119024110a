import { readyMadeSheets } from "../../../src/sheets";
import { carryPlan } from "../../../src/trial/kept/carry";
import { blankContents, inputsOf } from "../../../src/trial/kept/inputs";
import type { Content, Contents } from "../../../src/trial/kept/changes";

function pagesOf(id: string) {
  return readyMadeSheets.find((sheet) => sheet.id === id)?.pages("US") ?? [];
}

function carried(
  from: string,
  to: string,
  contents: Contents,
  already: Contents = new Map(),
  shown: (key: string) => number | undefined = () => undefined,
) {
  const result = carryPlan(
    { pages: pagesOf(from), contents, shown },
    { pages: pagesOf(to), contents: already },
  );
  const at = new Map(inputsOf(pagesOf(to)).map(({ called, key, cell }) => [called, { key, cell }]));
  const value = (called: string) => {
    const { key = "", cell } = at.get(called) ?? {};
    return result.contents.has(key) ? result.contents.get(key) : (cell?.value ?? null);
  };
  return { ...result, value };
}

test("the line, its tubing, chart, main and pump stand in every other workbook as they were typed", () => {
  const at = (called: string) =>
    inputsOf(pagesOf("line-layout")).find((input) => input.called === called)?.key ?? "none";
  const typed = new Map<string, Content>([
    [at("Heads"), 11],
    [at("Spacing"), 40],
    [at("Riser"), null],
    [at("FieldName"), "North forty"],
    [at("From the inlet: Size (mm)"), 75],
    [at("Sprinkler chart, flow, row 2"), 4.4],
    [at("Pump curve, flow, row 2"), 42],
    [at("Main, for all lines: Length"), 610],
  ]);
  for (const id of ["quote", "spacing-what-if", "season", "workshop"]) {
    const { value, shared, left } = carried("line-layout", id, typed);
    expect(shared).toBeGreaterThan(40);
    expect(left).toEqual([]);
    expect([
      value("Heads"),
      value("Spacing"),
      value("Riser"),
      value("FieldName"),
      value("From the inlet: Size (mm)"),
      value("Sprinkler chart, flow, row 2"),
      value("Pump curve, flow, row 2"),
      value("Main, for all lines: Length"),
    ]).toEqual([11, 40, null, "North forty", 75, 4.4, 42, 610]);
  }
});

test("the same field typed once: no shared input of two workbooks differs afterwards", () => {
  const from = pagesOf("line-layout");
  const blank = blankContents(from);
  for (const to of ["quote", "spacing-what-if", "season"]) {
    const { value } = carried("line-layout", to, blank);
    const known = new Set(inputsOf(pagesOf(to)).map(({ called }) => called));
    for (const { called, key, cell } of inputsOf(from))
      if (known.has(called))
        expect({ called, is: value(called) }).toEqual({
          called,
          is: blank.has(key) ? null : (cell.value ?? null),
        });
  }
});

test("what only the other workbook has stays, and what was typed there for a shared input does not", () => {
  const prices = new Map<string, Content>([
    ["Prices!B11", 480],
    ["Layout!D10", 20],
  ]);
  const { contents } = carried("line-layout", "quote", new Map(), prices);
  expect(contents).toEqual(new Map([["Prices!B11", 480]]));
});

test("of a formula of the user's own its value goes along; one in error leaves a blank and is named", () => {
  const formula = new Map<string, Content>([["Line!D15", { formula: "=Heads/2" }]]);
  const good = carried("line-layout", "quote", formula, new Map(), () => 6);
  expect([good.value("Changeover"), good.left]).toEqual([6, []]);
  const bad = carried("line-layout", "quote", formula);
  expect([bad.value("Changeover"), bad.left]).toEqual([null, ["Changeover"]]);
});
