import { readFormula } from "../../src/formula-text/formula";
import { referencesOf } from "../../src/formula-text/references";
import { readyMadeSheets } from "../../src/sheets";

test("finds cells, pages and names wherever they stand", () => {
  const { ranges, names } = referencesOf(
    `=IF(-Heads>3%, MyLoss({1,2;Rise,4}, 'Its page'!B2:C3)&"D9", $A$1+2^Line!E5)`,
  );
  expect(ranges).toEqual([
    { page: "Its page", range: "B2:C3" },
    { range: "A1" },
    { page: "Line", range: "E5" },
  ]);
  expect(names).toEqual(["IF", "Heads", "MyLoss", "Rise"]);
});

test("a formula that cannot be read refers to nothing", () => {
  expect(referencesOf("=A1#+[")).toEqual({ ranges: [], names: [] });
});

test("every formula of the ready-made sheets can be read", () => {
  for (const sheet of readyMadeSheets)
    for (const page of sheet.pages("US"))
      for (const { formula } of page.cells)
        if (formula !== undefined) expect(() => readFormula(formula)).not.toThrow();
});
