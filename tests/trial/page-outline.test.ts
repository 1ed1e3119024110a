import { readyMadeSheets } from "../../src/sheets";
import { outline } from "../../src/trial/page-outline";

test("a page of cells alone has texts at most", () => {
  const cells = [
    { at: "B2", role: "text", value: "second" },
    { at: "A1", role: "text", value: "first" },
    { at: "A3", role: "result", formula: "=1" },
  ] as const;
  const page = { name: "P", widths: [10], cells, lines: new Map(), printArea: "A1:K40" };
  const { blocks, tables, spilled, texts } = outline(page);
  expect([blocks, tables, spilled]).toEqual([[], [], []]);
  expect(texts.map(({ value }) => value)).toEqual(["first", "second"]);
});

test.each(readyMadeSheets.map(({ id }) => id))(
  "no cell of %s that says something is lost",
  (id) => {
    const sheet = readyMadeSheets.find((other) => other.id === id);
    for (const one of sheet?.pages("US") ?? []) {
      const parts = outline(one);
      const shown = new Set<unknown>([
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
