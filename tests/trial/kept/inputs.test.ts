import { readyMadeSheets } from "../../../src/sheets";
import { blankContents, inputsOf, shapeOf } from "../../../src/trial/kept/inputs";
import { Steps } from "../../../src/trial/kept/steps";
import { readRoute, writeRoute } from "../../../src/trial/kept/route";

test("every input of every workbook has a name of its own there, the same in both units", () => {
  for (const sheet of readyMadeSheets) {
    const [us, si] = (["US", "SI"] as const).map((system) =>
      inputsOf(sheet.pages(system)).map(({ called }) => called),
    );
    expect(new Set(us).size).toBe(us.length);
    expect(si).toEqual(us);
  }
});

test("a blank workbook holds no figure of the sample's field, and keeps its choices and limits", () => {
  for (const sheet of readyMadeSheets) {
    const pages = sheet.pages("US");
    const blank = blankContents(pages);
    for (const { key, cell } of inputsOf(pages)) {
      const stands = !blank.has(key) && cell.value !== undefined;
      if (!stands || typeof cell.value === "boolean") continue;
      const isList = cell.allowed !== undefined && "list" in cell.allowed;
      const name = cell.name ?? "";
      if (!isList)
        expect("Currency Friction Limit GreatestSpeed Performance Adequacy Efficiency").toContain(
          name,
        );
    }
    expect([...blank.values()].every((content) => content === null)).toBe(true);
  }
});

test("the shape of a workbook is the same each time, and another for another workbook", () => {
  const shapes = readyMadeSheets.map((sheet) => shapeOf(sheet.pages("US")));
  expect(readyMadeSheets.map((sheet) => shapeOf(sheet.pages("US")))).toEqual(shapes);
  expect(new Set(shapes).size).toBe(shapes.length);
});

test("steps go back and forth; a new one ends what was taken back", () => {
  const steps = new Steps();
  expect(steps.undo()).toBeUndefined();
  steps.add([{ key: "A!A1", before: undefined, after: 1 }]);
  steps.add([{ key: "A!A1", before: 1, after: 2 }]);
  expect(steps.undo()).toEqual([{ key: "A!A1", before: 1, after: 2 }]);
  expect([steps.undos, steps.redos]).toEqual([1, 1]);
  expect(steps.redo()?.[0].after).toBe(2);
  expect(steps.redo()).toBeUndefined();
  steps.undo();
  steps.add([{ key: "A!A1", before: 1, after: 3 }]);
  expect([steps.undos, steps.redos]).toEqual([2, 0]);
});

test.each([
  { cans: true },
  { cans: false },
  { cans: false, sheet: "quote", system: "SI" as const, page: "20 percent", piece: "abc1" },
  { cans: false, sheet: "quote", system: "US" as const, page: "Prices", given: "eJx_-" },
])("an address says and is read as the same: %p", (route) => {
  expect(readRoute(writeRoute(route))).toEqual(route);
});

test("an address that is none leads nowhere", () => {
  expect(readRoute("#quote/%E0%A4%A/x")).toEqual({ cans: false, sheet: "quote", page: "x" });
});
