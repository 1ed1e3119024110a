import { readyMadeSheets } from "../../src/sheets";
import type { Page, SheetCell } from "../../src/sheets/kit/definition";
import { outline } from "../../src/trial/page-outline";

function page(cells: readonly SheetCell[]): Page {
  return { name: "P", widths: [10], cells, lines: new Map(), printArea: "A1:K40" };
}

test("a label belongs to the value and the unit on its right, under its heading", () => {
  const { blocks } = outline(
    page([
      { at: "A1", role: "heading", value: "The line", span: 5 },
      { at: "G1", role: "heading", value: "What it does", span: 5 },
      { at: "A2", role: "label", value: "Spacing" },
      { at: "D2", role: "input", value: 45 },
      { at: "E2", role: "unit", value: "ft" },
      { at: "G2", role: "label", value: "Inlet" },
      { at: "J2", role: "result", formula: "=1" },
    ]),
  );
  expect(blocks).toEqual([
    {
      heading: expect.objectContaining({ value: "The line" }),
      fields: [
        {
          label: expect.objectContaining({ value: "Spacing" }),
          value: expect.objectContaining({ value: 45 }),
          unit: expect.objectContaining({ value: "ft" }),
        },
      ],
    },
    {
      heading: expect.objectContaining({ value: "What it does" }),
      fields: [
        {
          label: expect.objectContaining({ value: "Inlet" }),
          value: expect.objectContaining({ formula: "=1" }),
        },
      ],
    },
  ]);
});

test("blocks side by side under one heading stay apart", () => {
  const { blocks } = outline(
    page([
      { at: "A1", role: "heading", value: "Feeder", span: 11 },
      { at: "A2", role: "label", value: "Size" },
      { at: "D2", role: "input", value: 75 },
      { at: "G2", role: "label", value: "Pressure" },
      { at: "J2", role: "result", formula: "=1" },
      { at: "A3", role: "label", value: "Fittings" },
      { at: "D3", role: "input", value: 6 },
    ]),
  );
  expect(blocks.map(({ fields }) => fields.map(({ label }) => label.value))).toEqual([
    ["Size", "Fittings"],
    ["Pressure"],
  ]);
});

test("cells under headers are a table, and its labels are no fields", () => {
  const { blocks, tables } = outline(
    page([
      { at: "A1", role: "header", value: "Tubing", span: 2 },
      { at: "C1", role: "header", value: "Size" },
      { at: "A2", role: "label", value: "From the inlet", span: 2 },
      { at: "C2", role: "input", value: 63 },
      { at: "A3", role: "label", value: "After", span: 2 },
      { at: "C3", role: "input", value: 50 },
    ]),
  );
  expect(blocks).toEqual([]);
  expect(tables).toHaveLength(1);
  expect(tables[0].rows.map((row) => row.map((cell) => cell?.value))).toEqual([
    ["From the inlet", 63],
    ["After", 50],
  ]);
});

test.each(readyMadeSheets.map(({ id }) => id))(
  "no cell of %s that says something is lost",
  (id) => {
    const sheet = readyMadeSheets.find((other) => other.id === id);
    for (const one of sheet?.pages("US") ?? []) {
      const parts = outline(one);
      const shown = new Set<unknown>([
        parts.title,
        ...parts.answers.flatMap(({ question, answer }) => [question, answer]),
        ...parts.blocks.flatMap(({ fields }) => fields.flatMap(({ value }) => value)),
        ...parts.tables.flatMap(({ rows }) => rows.flat()),
        ...parts.spilled.map(({ cell }) => cell),
      ]);
      const lost = one.cells.filter(
        (cell) => ["input", "result", "check", "answer"].includes(cell.role) && !shown.has(cell),
      );
      expect(lost.map(({ at }) => `${one.name}!${at}`)).toEqual([]);
    }
  },
);

test("the headers of rows belong to their table, a text below it does not", () => {
  const { tables, texts } = outline(
    page([
      { at: "A1", role: "header", value: "Rate" },
      { at: "B1", role: "header", value: 11 },
      { at: "C1", role: "header", value: 13 },
      { at: "A2", role: "header", value: 10 },
      { at: "B2", role: "result", formula: "=1" },
      { at: "C2", role: "result", formula: "=2" },
      { at: "A3", role: "header", value: 12 },
      { at: "B3", role: "result", formula: "=3" },
      { at: "C3", role: "result", formula: "=4" },
      { at: "A4", role: "text", value: "What the numbers mean.", span: 5 },
    ]),
  );
  expect(tables).toHaveLength(1);
  expect(tables[0].rows.map((row) => row.map((cell) => cell?.value ?? cell?.formula))).toEqual([
    [10, "=1", "=2"],
    [12, "=3", "=4"],
  ]);
  expect(texts).toHaveLength(1);
});

test("no page of any sheet has a table without rows, or a header twice", () => {
  for (const sheet of readyMadeSheets) {
    for (const each of sheet.pages("US")) {
      const { tables } = outline(each);
      const all = tables.flatMap(({ headers, rows }) => [...headers, ...rows.flat()]);
      const shown = all.filter((cell) => cell !== undefined);
      expect(new Set(shown).size).toBe(shown.length);
      for (const { rows } of tables) expect(rows.length).toBeGreaterThan(0);
    }
  }
});
