import { OfficeMockObject } from "office-addin-mock";
import * as workbook from "../../src/taskpane/workbook";

/** Puts a mocked host in place: reading what was not loaded, or before sync, throws. */
function host(content: Record<string, unknown>): OfficeMockObject {
  const mock = new OfficeMockObject({
    context: { workbook: content },
    async run(_options: unknown, batch: (context: unknown) => Promise<unknown>) {
      return batch(this.context);
    },
  });
  (globalThis as { Excel?: unknown }).Excel = mock;
  return mock;
}

type Mocked = Record<string, Record<string, unknown>>;
const inside = (mock: OfficeMockObject) =>
  (mock as unknown as { context: { workbook: Mocked } }).context.workbook;

test("the selected cell: its sheet, address and content", async () => {
  host({
    cell: { address: "'My sheet'!B4", formulas: [["=1+1"]] },
    getActiveCell(this: Mocked) {
      return this.cell;
    },
  });
  expect(await workbook.selectedCell()).toEqual({
    sheet: "My sheet",
    address: "B4",
    content: "=1+1",
  });
});

function withCell() {
  return host({
    worksheets: {
      range: { formulas: [["old"]], values: [[7]] },
      sheet: {
        getRange() {
          return inside(current).worksheets.range;
        },
      },
      getItem() {
        return inside(current).worksheets.sheet;
      },
    },
  });
}
let current: OfficeMockObject;

test("writing a cell sets its formula and gives what it shows", async () => {
  current = withCell();
  expect(
    await workbook.writeCell({ sheet: "S", address: "B4" }, "=IRRIG.PIPE.FRICTION(1,2,3)"),
  ).toBe(7);
  expect(await workbook.contentOf({ sheet: "S", address: "B4" })).toBe(
    "=IRRIG.PIPE.FRICTION(1,2,3)",
  );
});

/** A used range of so many rows, that is handed over part by part. */
function withUsed(rows: unknown[][], values = rows) {
  const asked: number[] = [];
  current = host({
    worksheets: {
      sheet: {
        name: "Plan",
        used: {
          isNullObject: false,
          rowIndex: 2,
          columnIndex: 26,
          rowCount: rows.length,
          columnCount: rows[0].length,
        },
        getUsedRangeOrNullObject(this: Mocked) {
          return this.used;
        },
        getRangeByIndexes: (row: number, _column: number, count: number) => {
          asked.push(count);
          const from = row - 2;
          const part = {
            formulas: rows.slice(from, from + count),
            values: values.slice(from, from + count),
          };
          return { ...part, load: () => undefined, untrack: () => undefined };
        },
      },
      getActiveWorksheet(this: Mocked) {
        return this.sheet;
      },
    },
  });
  return asked;
}

test("formulas of the active sheet, with their addresses", async () => {
  withUsed(
    [
      ["text", "=A1"],
      [5, "=IRRIG.SET.TIME(1,2)"],
    ],
    [
      ["text", 1],
      [5, "#VALUE!"],
    ],
  );
  expect(await workbook.formulasOfSheet()).toEqual({
    sheet: "Plan",
    cells: [
      { address: "AB3", formula: "=A1", value: 1 },
      { address: "AB4", formula: "=IRRIG.SET.TIME(1,2)", value: "#VALUE!" },
    ],
  });
});

test("a large sheet is read in parts", async () => {
  const rows = Array.from({ length: 30000 }, (_, i) => [i, i === 29999 ? "=1" : ""]);
  const asked = withUsed(rows);
  const { cells } = await workbook.formulasOfSheet();
  expect(cells).toEqual([{ address: "AB30002", formula: "=1", value: "=1" }]);
  expect(asked).toEqual([10000, 10000, 10000]);
});

test("an empty sheet has no formulas", async () => {
  current = host({
    worksheets: {
      sheet: {
        name: "Plan",
        used: { isNullObject: true, rowIndex: 0, columnIndex: 0, rowCount: 0, columnCount: 0 },
        getUsedRangeOrNullObject(this: Mocked) {
          return this.used;
        },
      },
      getActiveWorksheet(this: Mocked) {
        return this.sheet;
      },
    },
  });
  expect(await workbook.formulasOfSheet()).toEqual({ sheet: "Plan", cells: [] });
});

function withNames(value: unknown) {
  const deleted: string[] = [];
  current = host({
    names: {
      items: [{ name: "MYLOSS", formula: "=LAMBDA(x,x)", comment: "mine" }],
      stored: { value, delete: () => deleted.push("stored") },
      added: [] as unknown[],
      add(this: { stored: unknown }, ...given: unknown[]) {
        added.push(given);
        return this.stored;
      },
      getItem: (name: string) => ({ delete: () => deleted.push(name) }),
    },
  });
  const added: unknown[][] = [];
  return { deleted, added };
}

test("names are listed, stored and deleted", async () => {
  const { deleted, added } = withNames("");
  expect(await workbook.names()).toEqual([
    { name: "MYLOSS", formula: "=LAMBDA(x,x)", comment: "mine" },
  ]);
  expect(await workbook.addName({ name: "N", formula: "=LAMBDA(x,x)", comment: "c" })).toBe(
    "stored",
  );
  expect(added).toEqual([["N", "=LAMBDA(x,x)", "c"]]);
  await workbook.deleteName("MYLOSS");
  expect(deleted).toEqual(["MYLOSS"]);
});

test("a host without LAMBDA keeps no broken name", async () => {
  const { deleted } = withNames("#NAME?");
  expect(await workbook.addName({ name: "N", formula: "=LAMBDA(x,x)", comment: "" })).toBe(
    "no LAMBDA",
  );
  expect(deleted).toEqual(["stored"]);
});

test("a reference that the host does not know has no values", async () => {
  current = host({
    worksheets: {
      sheet: {
        getRange() {
          throw new Error("InvalidArgument");
        },
      },
      getActiveWorksheet(this: Mocked) {
        return this.sheet;
      },
    },
  });
  expect(await workbook.valuesOf("Nothing")).toBeUndefined();
});

test("the state of the host: requirement sets, version, dark or light", async () => {
  const office = (bodyBackgroundColor: string) => ({
    HostType: { Excel: "Excel" },
    onReady: async () => ({ host: "Excel" }),
    context: {
      diagnostics: { platform: "PC", version: "16.0.1.2" },
      officeTheme: { bodyBackgroundColor },
      requirements: {
        isSetSupported: (set: string, version: string) => `${set} ${version}` !== "ExcelApi 1.12",
      },
    },
  });
  const globals = globalThis as { Office?: unknown };
  globals.Office = office("#262626");
  const state = await workbook.hostState();
  expect(state).toMatchObject({ inExcel: true, platform: "PC", version: "16.0.1.2", dark: true });
  expect([state.has("functions"), state.has("cells"), state.has("spills")]).toEqual([
    true,
    true,
    false,
  ]);
  globals.Office = office("#FFFFFF");
  expect((await workbook.hostState()).dark).toBe(false);
  globals.Office = { HostType: { Excel: "Excel" }, onReady: async () => ({ host: null }) };
  expect(await workbook.hostState()).toMatchObject({ inExcel: false, dark: false });
});
