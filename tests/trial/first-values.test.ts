import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import type { Page, SheetCell } from "../../src/sheets/kit/definition";
import type { Content } from "../../src/trial/kept/changes";
import { FirstValues } from "../../src/trial/first-values";
import { host, reference } from "../support/page-functions";

function one(cells: readonly SheetCell[]): Page {
  return { name: "One", widths: [10, 10], lines: new Map(), printArea: "A1:B9", cells };
}

test("a typed value goes through to what depends on it, and errors carry their message", () => {
  const pages = readyMadeSheets[0].pages("US");
  const values = new FirstValues(pages, new Map(), reference, host);
  const cell = (name: string) => {
    for (const page of pages)
      for (const { name: own, at } of page.cells)
        if (own === name) return { page: page.name, ...readAddress(at) };
    throw new Error(`no cell ${name}`);
  };
  const before = values.read(cell("LineFlow")).value as number;
  let settled = 0;
  values.onSettled(() => (settled += 1));
  values.write(cell("Heads"), 10);
  expect(settled).toBe(1);
  expect(values.read(cell("LineFlow")).value).toBeLessThan(before * 0.8);
  values.write(cell("Spacing"), -45);
  const { error } = values.read(cell("LineFlow"));
  expect(error?.code).toBe("#VALUE!");
  expect(error?.message).toContain("spacing");
});

test("an error stands in the first cell of what it would have filled; the others are blank", () => {
  const page = one([
    { at: "A1", role: "input", value: 14 },
    {
      at: "B1",
      role: "result",
      formula: "=IRRIG.STAKE.FLAGS(A1, 45)",
      spill: { rows: 15, columns: 2, reserved: 20, headed: true, formats: ["0", "0"] },
    },
    { at: "A2", role: "result", formula: "=SUM(C2:C15)" },
  ]);
  const values = new FirstValues([page], new Map(), reference, host);
  const read = (at: string) => values.read({ page: "One", ...readAddress(at) });
  expect(read("C2").value).toBe(45);
  expect(read("A2").value).toBeGreaterThan(0);
  values.write({ page: "One", ...readAddress("A1") }, "words");
  expect(read("B1").error?.code).toBe("#VALUE!");
  expect(read("C2")).toEqual({ value: null });
  expect(read("A2")).toEqual({ value: 0 });
});

test("formulas of the user's own count, and a cell in a result's way; pages of the user's own are beyond", () => {
  const page = one([
    { at: "A1", role: "input", value: 14 },
    {
      at: "B1",
      role: "result",
      formula: "=IRRIG.STAKE.FLAGS(A1, 45)",
      spill: { rows: 15, columns: 2, reserved: 20, headed: true, formats: ["0", "0"] },
    },
  ]);
  const open = (...typed: [string, Content][]) =>
    new FirstValues([page], new Map(typed), reference, host);
  const read = (values: FirstValues, at: string) =>
    values.read({ page: "One", ...readAddress(at) }).value;
  const own = open(["One!A9", { formula: "=A1*2" }], ["One!A1", 10]);
  expect(read(own, "A9")).toBe(20);
  expect(own.leavesBlanks()).toBe(false);
  expect(open(["One!A9", { formula: "=Notes!A1" }]).leavesBlanks()).toBe(true);
  const blocked = open(["One!B3", "in the way"]);
  expect(read(blocked, "B1")).toBe("#SPILL!");
  expect(read(blocked, "C2")).toBe(null);
  blocked.write({ page: "One", ...readAddress("B3") }, null);
  expect(read(blocked, "C2")).toBe(45);
  // A formula that comes back to itself is the grid's to name.
  expect(open(["One!A9", { formula: "=A9+1" }]).leavesBlanks()).toBe(true);
});

test("what the ready-made workbook holds anyway, typed again, is no change", () => {
  const pages = readyMadeSheets[0].pages("US");
  const typed = new Map<string, Content>();
  const values = new FirstValues(pages, typed, reference, host);
  const heads = { page: "Line", ...readAddress("D14") };
  values.write(heads, 14);
  expect([typed.size, values.steps.undos]).toEqual([0, 0]);
  values.write(heads, 10);
  values.write(heads, 14);
  expect([typed.size, values.steps.undos]).toEqual([0, 2]);
  values.undo();
  expect(typed.get("Line!D14")).toBe(10);
  values.redo();
  expect(typed.size).toBe(0);
});

test("what is beyond the first view is told as not worked out yet, and not as a blank", () => {
  const page: Page = {
    name: "One",
    widths: [10],
    lines: new Map(),
    printArea: "A1:A2",
    cells: [
      { at: "A1", role: "result", formula: "=NOSUCH(1)" },
      { at: "A2", role: "input" },
    ],
  };
  const values = new FirstValues([page], new Map(), reference, host);
  const read = (at: string) => values.read({ page: "One", ...readAddress(at) });
  expect(read("A1")).toEqual({ value: null, isPending: true });
  expect(read("A2")).toEqual({ value: null });
});

test("a root of a negative number, a division by 0 and a number too large are errors", () => {
  const page = one([
    { at: "A1", role: "input", value: -0.9 },
    { at: "B1", role: "result", formula: "=A1^1.852" },
    { at: "B2", role: "result", formula: "=1/(A1-A1)" },
    { at: "B3", role: "result", formula: "=A1*10^308*10" },
    { at: "B4", role: "result", formula: "=B1*2" },
  ]);
  const values = new FirstValues([page], new Map(), reference, host);
  const code = (at: string) => values.read({ page: "One", ...readAddress(at) }).error?.code;
  expect(["B1", "B2", "B3", "B4"].map(code)).toEqual(["#NUM!", "#DIV/0!", "#NUM!", "#NUM!"]);
});
