import { readyMadeSheets } from "../../src/sheets";
import { outline } from "../../src/trial/page-outline";

const SAYS = ["input", "result", "sentence", "check", "mark", "answer", "text", "formulaText"];

test("a page of cells alone has texts at most", () => {
  const cells = [
    { at: "B2", role: "text", value: "second" },
    { at: "A1", role: "text", value: "first" },
    { at: "A3", role: "result", formula: "=1" },
  ] as const;
  const page = { name: "P", widths: [10], cells, lines: new Map(), printArea: "A1:K40" };
  const { blocks, tables, spilled, first } = outline(page);
  expect([blocks, tables, spilled]).toEqual([[], [], []]);
  expect(first.map(({ value }) => value)).toEqual(["first", "second"]);
});

test.each(readyMadeSheets.map(({ id }) => id))(
  "no cell of %s that says something is lost",
  (id) => {
    const sheet = readyMadeSheets.find((other) => other.id === id);
    for (const one of sheet?.pages("US") ?? []) {
      const parts = outline(one);
      const shown = new Set<unknown>([
        ...parts.answers.flatMap(({ question, answer }) => [question, answer]),
        ...parts.first,
        ...parts.last,
        ...parts.said.flatMap(({ texts }) => texts),
        ...[...parts.blocks, ...parts.tables, ...parts.spilled].flatMap(({ texts }) => texts),
        ...parts.spilled.map(({ formula }) => formula),
        ...parts.blocks.flatMap(({ fields }) =>
          fields.flatMap(({ value, formula }) => [value, formula]),
        ),
        ...parts.tables.flatMap(({ rows }) => rows.flat()),
        ...parts.spilled.map(({ cell }) => cell),
      ]);
      const lost = one.cells.filter((cell) => SAYS.includes(cell.role) && !shown.has(cell));
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

test("a lesson's texts stand under their headings, its formulas by their results", () => {
  const workshop = readyMadeSheets.find(({ id }) => id === "workshop");
  const page = workshop?.pages("US").find(({ name }) => name === "Pressure");
  if (page === undefined) throw new Error("no such lesson");
  const { blocks, said, first, last } = outline(page);
  expect([first, last]).toEqual([[], []]);
  expect(said.map(({ heading, texts }) => [heading.value, texts.length])).toEqual([
    ["By hand, in words", 1],
    ["In the field", 2],
  ]);
  expect(blocks[0].heading?.value).toBe("Guess first");
  expect(blocks[0].texts).toHaveLength(1);
  const byFunction = blocks.find(({ heading }) => heading?.value === "By function");
  for (const { value, formula } of byFunction?.fields ?? [])
    expect(formula?.formula).toBe(`=FORMULATEXT(${value.at})`);
  expect(byFunction?.fields.length).toBeGreaterThan(1);
});
