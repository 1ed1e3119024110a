import { PageBuilder } from "../../../src/sheets/kit/builder";

const anyNumber = { low: -1000, high: 1000 };

function builder(): PageBuilder {
  return new PageBuilder("P", "US", new Array<number>(12).fill(10));
}

test("a label belongs to the value and the unit on its right, under its own block's heading", () => {
  const page = builder();
  const line = page.block("A");
  line.heading("The line");
  line.input("Spacing", 45, { unit: "length", allowed: anyNumber });
  const results = page.block("G");
  results.heading("What it does");
  results.result("Inlet", "=1");
  page.below(line, results);
  expect(page.build().parts?.blocks).toEqual([
    { heading: "A1", fields: [{ label: "A2", value: "D2", unit: "E2" }] },
    { heading: "G1", fields: [{ label: "G2", value: "J2" }] },
  ]);
});

test("blocks side by side under one heading stay apart, each from the top down", () => {
  const page = builder();
  page.heading("Feeder");
  const left = page.block("A");
  const right = page.block("G");
  left.input("Size", 75, { allowed: anyNumber });
  right.result("Pressure", "=1");
  left.input("Fittings", 6, { allowed: anyNumber });
  expect(page.build().parts?.blocks).toEqual([
    {
      heading: "A1",
      fields: [
        { label: "A2", value: "D2" },
        { label: "A3", value: "D3" },
      ],
    },
    { heading: "A1", fields: [{ label: "G2", value: "J2" }] },
  ]);
});

test("a block whose upper lines are written last is in order all the same", () => {
  const page = builder();
  const block = page.block("A");
  block.row = 5;
  block.result("Below", "=1");
  block.row = 2;
  block.result("Above", "=2");
  expect(page.build().parts?.blocks[0].fields.map(({ label }) => label)).toEqual(["A2", "A5"]);
});

test("a heading below a block is not the block's", () => {
  const page = builder();
  page.row = 5;
  page.heading("Later");
  page.row = 1;
  page.heading("First");
  const block = page.block("A");
  block.result("Value", "=1");
  expect(page.build().parts?.blocks[0].heading).toBe("A1");
});

test("a unit that depends on more goes to the value just written", () => {
  const page = builder();
  const block = page.block("A");
  block.result("Energy", "=1");
  block.unitOfLast('="kWh"');
  block.result("Plain", "=2");
  expect(page.build().parts?.blocks[0].fields).toEqual([
    { label: "A1", value: "D1", unit: "E1" },
    { label: "A2", value: "D2" },
  ]);
});

test("a table has the cells below its headers, a shorter column none where it ends", () => {
  const page = builder();
  page.heading("Tubing");
  page.table("A", [
    { header: "Tubing", role: "label", span: 2, rows: ["From the inlet", "After"] },
    { header: "Size", role: "input", allowed: anyNumber, rows: [63, undefined] },
    { header: "Price", role: "result", rows: ["=1"] },
  ]);
  expect(page.build().parts?.tables).toEqual([
    {
      heading: "A1",
      headers: ["A2", "C2", "D2"],
      rows: [
        ["A3", "C3", "D3"],
        ["A4", "C4", undefined],
      ],
    },
  ]);
});

test("a cell unlike the others of its column stands in the column", () => {
  const page = builder();
  const input = { role: "input", value: 300, label: "Main: Length", allowed: anyNumber } as const;
  page.table("A", [{ header: "Length", unit: "length", role: "result", rows: [input, "=1"] }]);
  const { cells, parts } = page.build();
  expect(parts?.tables[0].rows).toEqual([["A2"], ["A3"]]);
  expect(cells.find(({ at }) => at === "A2")).toEqual({ at: "A2", ...input });
});

test("the headers of a grid's rows belong to it", () => {
  const page = builder();
  page.row = 5;
  page.grid("A", "Rate", ["A1", "A2"], ["B1"], { role: "result", formula: () => "=1" });
  expect(page.build().parts?.tables).toEqual([
    {
      headers: ["A5", "B5"],
      rows: [
        ["A6", "B6"],
        ["A7", "B7"],
      ],
    },
  ]);
});

test("cells that no headers name are a table without them", () => {
  const page = builder();
  page.plain(2, [[{ role: "input", value: 1 }, undefined, { role: "mark", formula: "=1" }]]);
  expect(page.build().parts?.tables).toEqual([{ headers: [], rows: [["B1", undefined, "D1"]] }]);
});

test("a spill has its headers, or the cells above that name its columns", () => {
  const page = builder();
  const above = page.put(1, 1, { role: "header", value: "Flag" });
  page.row = 2;
  page.spill("A", "=1", { rows: 2, headed: false, headers: [above], columns: ["length"] });
  page.spill("C", "=2", { rows: 2, columns: ["length"] });
  expect(page.build().parts?.spilled).toEqual([
    { headers: ["A1"], cell: "A2" },
    { headers: [], cell: "C4" },
  ]);
});
