import type * as Engine from "../../build/sheet-engine";
import { readAddress } from "../../src/sheets/kit/address";
import type { Page, SheetCell } from "../../src/sheets/kit/definition";
import { DEFAULT_NAMESPACE } from "../../src/formula-text/dialect";
import { bundled } from "../support/bundled";

const { SheetEngine } = bundled<typeof Engine>("sheet-engine");

function page(name: string, cells: Record<string, string | number>): Page {
  return {
    name,
    widths: [10, 10, 10, 10],
    lines: new Map(),
    printArea: "A1:D9",
    cells: Object.entries(cells).map(([at, content]): SheetCell => ({
      at,
      role: "result",
      ...(typeof content === "string" && content.startsWith("=")
        ? { formula: content }
        : { value: content }),
    })),
  };
}

async function opened(cells: Record<string, string | number>) {
  const engine = await SheetEngine.open([page("One", cells)], DEFAULT_NAMESPACE);
  const place = (at: string) => ({ page: 0, ...readAddress(at) });
  return {
    engine,
    read: (at: string) => engine.value(place(at)),
    put: (at: string, value: string | number | undefined) =>
      engine.put([{ place: place(at), content: value === undefined ? {} : { value } }]),
  };
}

test("what reads cells that a result has left is computed again", async () => {
  const { engine, read, put } = await opened({
    A1: 3,
    B1: `=SEQUENCE(A1)`,
    C1: "=SUM(B2:B9)",
    D1: '=IF(INDEX(B1:B9, 3)=3, "full", "short")',
  });
  expect([read("C1"), read("D1")]).toEqual([5, "full"]);
  await put("A1", 2);
  expect([read("B3"), read("C1"), read("D1")]).toEqual([null, 2, "short"]);
  await put("A1", "words");
  expect([read("B1"), read("B2"), read("C1"), read("D1")]).toEqual(["#VALUE!", null, 0, "short"]);
  await put("A1", 4);
  expect([read("C1"), read("D1")]).toEqual([9, "full"]);
  engine.close();
});

test("results that come from results that fill cells come to rest", async () => {
  const { engine, read, put } = await opened({
    A1: 2,
    D3: "=SUM(C1:C9)",
    C1: "=B1:B4*10",
    B1: "=SEQUENCE(A1)*2",
  });
  expect(read("D3")).toBe(60);
  await put("A1", 4);
  expect(read("D3")).toBe(200);
  await put("A1", 1);
  expect(read("D3")).toBe(20);
  engine.close();
});

test("our functions' errors keep their sentence as long as they stand", async () => {
  const { engine, read, put } = await opened({
    A1: -1,
    B1: "=IRRIG.PIPE.FRICTION(50, A1, 100)",
    C1: "=B1*2",
  });
  const at = (column: number) => ({ page: 0, row: 0, column });
  expect(read("B1")).toBe("#VALUE!");
  expect(engine.message(at(1))).toMatch(/^inside must be above 0/);
  expect(engine.message(at(2))).toBeUndefined();
  await put("A1", 2.067);
  expect(read("C1")).toBeCloseTo(2 * Number(read("B1")), 10);
  expect(engine.message(at(1))).toBeUndefined();
  engine.close();
});

test("an error that is compared stays an error, however often it is compared", async () => {
  const { engine, read } = await opened({
    A1: '="x"+1',
    A2: "=NA()",
    A3: "7",
    B1: "=A1>=1",
    B2: '=IF(A1>=1, "OK", "no")',
    B3: '=IF(A1="OK", 1, 0)',
    B4: "=A1<=1",
    C1: "=A2>=1",
    C2: '=IF(A2>=1, "OK", "no")',
    C3: '=IF(AND(A2<5, TRUE), "OK", "no")',
    // A text of digits is a text: above every number.
    D1: "=A3>100",
    D2: "=A3>100",
    D3: "=A3=7",
  });
  for (const at of ["B1", "B2", "B3", "B4"]) expect([at, read(at)]).toEqual([at, "#VALUE!"]);
  for (const at of ["C1", "C2", "C3"]) expect([at, read(at)]).toEqual([at, "#N/A"]);
  expect([read("D1"), read("D2"), read("D3")]).toEqual([true, true, false]);
  engine.close();
});
