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
  prepareSheets([page, other], { sheets, names }, namespace, "US").sheets;
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

test("a long list, and one with commas, stands on a hidden worksheet of a free name", () => {
  const long = Array.from({ length: 60 }, (_, i) => `entry ${i}`);
  const book = prepareSheets(
    [
      {
        ...other,
        cells: [
          { at: "A1", role: "input", allowed: { list: long } },
          { at: "A2", role: "input", allowed: { list: ["a, b", "63"] } },
          { at: "A3", role: "input", allowed: { list: long } },
          { at: "A4", role: "input", allowed: { list: ["US", "SI"] } },
        ],
      },
    ],
    { sheets: ["LISTS"], names: [] },
    "IRRIG",
    "US",
  );
  expect(book.lists).toEqual({ name: "Lists (2)", columns: [long, ["a, b", "'63"]] });
  expect(book.sheets[0].cells.map(({ list }) => list)).toEqual([
    "='Lists (2)'!$A$1:$A$60",
    "='Lists (2)'!$B$1:$B$2",
    "='Lists (2)'!$A$1:$A$60",
    "US,SI",
  ]);
});

test("a verdict is not merged: it runs on, or is worked out beside the page where it wraps", () => {
  const [{ cells }] = prepareSheets(
    [
      {
        ...page,
        cells: [
          { at: "A2", role: "check", formula: "=IRRIG.CHECK.RATE(B1, B2)", span: 3 },
          { at: "A3", role: "check", formula: "=IRRIG.CHECK.SPEED(B1)", span: 2 },
          { at: "A4", role: "check", formula: '=IF(B1>2, "OK", "Too low")', span: 2 },
        ],
      },
    ],
    { sheets: [], names: [] },
    "IRRIG",
    "US",
  ).sheets;
  expect(cells.map(({ at, merged, content }) => [at, merged, content])).toEqual([
    ["A2", undefined, "=IRRIG.CHECK.RATE(B1, B2)"],
    ["A3", "A3:B3", "=C3"],
    ["A4", "A4:B4", '=IF(B1>2, "OK", "Too low")'],
    ["C3", undefined, "=IRRIG.CHECK.SPEED(B1)"],
  ]);
  expect(cells[0].look.wrap).toBe(false);
});

test.each(["1/2", "63", "TRUE", "-", "(none)", "May 5", "10%"])(
  "the text %s stays text",
  (text) => {
    const [{ cells }] = prepareSheets(
      [{ ...other, cells: [{ at: "A1", role: "text", value: text }] }],
      { sheets: [], names: [] },
      "IRRIG",
      "US",
    ).sheets;
    expect(cells[0].content).toBe(`'${text}`);
  },
);

test.each(
  readyMadeSheets.flatMap((sheet) =>
    (["US", "SI"] as const).map((system) => [sheet.title, system, sheet] as const),
  ),
)("%s, %s: twice into one workbook, no name or worksheet stands twice", (_, system, sheet) => {
  const first = prepareSheets(
    sheet.pages(system),
    { sheets: [], names: [] },
    "IRRIG",
    system,
  ).sheets;
  const taken = {
    sheets: first.map(({ name }) => name),
    names: first.flatMap(({ names, functions }) =>
      [...names, ...functions].map(({ name }) => name),
    ),
  };
  const second = prepareSheets(sheet.pages(system), taken, "IRRIG", system).sheets;
  const all = [
    ...taken.names,
    ...second.flatMap(({ names, functions }) => [...names, ...functions].map(({ name }) => name)),
  ].map((name) => name.toUpperCase());
  expect(new Set(all).size).toBe(all.length);
  for (const { name } of [...first, ...second]) expect(name.length).toBeLessThanOrEqual(31);
});

test("a picture drawn from another page follows that page to its free name", () => {
  const plan = readyMadeSheets.find(({ id }) => id === "plan");
  const { sheets } = prepareSheets(
    plan?.pages("US") ?? [],
    { sheets: ["Plan", "Drawing"], names: [] },
    "IRRIG",
    "US",
  );
  const drawn = sheets.flatMap(({ name, charts }) => charts.map((chart) => [name, chart.page]));
  expect(drawn).toContainEqual(["Plan (2)", "Drawing (2)"]);
  for (const [, page] of drawn)
    if (page !== undefined) expect(sheets.map(({ name }) => name)).toContain(page);
});
