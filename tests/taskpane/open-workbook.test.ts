import type { Page } from "../../src/sheets/kit/definition";
import { readyMadeSheets } from "../../src/sheets";
import { prepareSheets } from "../../src/taskpane/open-workbook";

const page: Page = {
  name: "Line",
  widths: [12, 8],
  lines: new Map([[3, 2]]),
  printArea: "A1:H20",
  frozenRows: 2,
  cells: [
    { at: "A1", role: "title", value: "Line" },
    {
      at: "B2",
      role: "input",
      value: 45,
      name: "Spacing",
      format: "0.0",
      allowed: { low: 1, high: 200 },
    },
    { at: "B3", role: "input", value: "US", name: "Units", allowed: { list: ["US", "SI"] } },
    {
      at: "D5",
      role: "result",
      formula: "=IRRIG.LATERAL.PROFILE(50,14,Spacing,2.16,0.6,Units)",
      spill: { rows: 15, columns: 2, reserved: 41, headed: true, formats: ["0", "0.0"] },
    },
    { at: "A6", role: "formulaText", formula: "=IRRIG.PIPE.FRICTION(50,2,100)" },
    { at: "A7", role: "text", value: "=looks like one", span: 3 },
    { at: "A8", role: "result", formula: "='Other page'!A1+Other.Rate" },
  ],
};
const other: Page = {
  name: "Other page",
  widths: [10],
  lines: new Map(),
  printArea: "A1:A1",
  cells: [{ at: "A1", role: "result", formula: "=Line!B2*2", name: "Other.Rate" }],
};

const prepared = (sheets: string[] = [], names: string[] = [], namespace = "IRRIG") =>
  prepareSheets([page, other], { sheets, names }, namespace);
const contentOf = (sheet: ReturnType<typeof prepared>[number], at: string) =>
  sheet.cells.find((cell) => cell.at === at)?.content;

test("in a workbook with neither name everything keeps its own", () => {
  const [line, second] = prepared();
  expect([line.name, second.name]).toEqual(["Line", "Other page"]);
  expect(line.names).toEqual([
    { name: "Spacing", range: "B2" },
    { name: "Units", range: "B3" },
  ]);
  expect(contentOf(line, "D5")).toBe("=IRRIG.LATERAL.PROFILE(50,14,Spacing,2.16,0.6,Units)");
  expect(contentOf(second, "A1")).toBe("=Line!B2*2");
});

test("names and worksheets that are taken get a number, and the formulas follow", () => {
  const [line, second] = prepared(
    ["line", "Other page", "Other page (2)"],
    ["UNITS", "Other.Rate"],
  );
  expect([line.name, second.name]).toEqual(["Line (2)", "Other page (3)"]);
  expect(line.names.map(({ name }) => name)).toEqual(["Spacing", "Units_2"]);
  expect(contentOf(line, "D5")).toBe("=IRRIG.LATERAL.PROFILE(50,14,Spacing,2.16,0.6,Units_2)");
  expect(contentOf(line, "A8")).toBe("='Other page (3)'!A1+Other.Rate_2");
  expect(contentOf(second, "A1")).toBe("='Line (2)'!B2*2");
});

test("another build's namespace", () => {
  expect(contentOf(prepared([], [], "FIELD")[0], "D5")).toContain("=FIELD.LATERAL.PROFILE(");
});

test("formats of a spill stand on all that it may fill, below its headers", () => {
  const spilling = prepared()[0].cells.find(({ at }) => at === "D5");
  expect(spilling?.formats).toEqual([
    { range: "D6:D45", code: "0" },
    { range: "E6:E45", code: "0.0" },
  ]);
});

test("text that begins like a formula stays text", () => {
  const [line] = prepared();
  expect(contentOf(line, "A6")).toBe("'=IRRIG.PIPE.FRICTION(50,2,100)");
  expect(contentOf(line, "A7")).toBe("'=looks like one");
  expect(line.cells.find(({ at }) => at === "A7")?.merged).toBe("A7:C7");
});

test("inputs carry what they allow", () => {
  const [line] = prepared();
  expect(line.cells.find(({ at }) => at === "B3")?.list).toBe("US,SI");
  expect(line.cells.find(({ at }) => at === "B2")?.between).toEqual({
    low: 1,
    high: 200,
    whole: false,
  });
});

test.each(
  readyMadeSheets.flatMap((sheet) =>
    (["US", "SI"] as const).map((system) => [sheet.title, system, sheet] as const),
  ),
)("%s, %s: twice into one workbook, no name or worksheet stands twice", (_, system, sheet) => {
  const first = prepareSheets(sheet.pages(system), { sheets: [], names: [] }, "IRRIG");
  const taken = {
    sheets: first.map(({ name }) => name),
    names: first.flatMap(({ names, functions }) =>
      [...names, ...functions].map(({ name }) => name),
    ),
  };
  const second = prepareSheets(sheet.pages(system), taken, "IRRIG");
  const all = [
    ...taken.names,
    ...second.flatMap(({ names, functions }) => [...names, ...functions].map(({ name }) => name)),
  ].map((name) => name.toUpperCase());
  expect(new Set(all).size).toBe(all.length);
  for (const { name } of [...first, ...second]) expect(name.length).toBeLessThanOrEqual(31);
});
