import { type Changes, type Content, noChanges } from "../../../src/trial/kept/changes";
import { changesIn, withChanges } from "../../../src/trial/kept/grid-changes";

const ready = () => ({
  sheetOrder: ["page0"],
  styles: {},
  sheets: {
    page0: {
      id: "page0",
      name: "Line",
      defaultRowHeight: 24,
      columnData: { 0: { w: 80 }, 1: { w: 100 } },
      cellData: {
        0: { 0: { v: "Heads", t: 1, s: { bl: 1 } }, 1: { v: 14, s: { fs: 10 } } },
        1: { 1: { f: "=IRRIG.SET.TIME(B1,1,1)", s: {} } },
      },
    },
  },
});

const changes: Changes = {
  contents: new Map<string, Content>([
    ["Line!B1", 12],
    ["Line!B2", { formula: "=B1*2" }],
    ["Line!A1", null],
    ["Line!D9", "00123"],
    ["Line!D10", true],
  ]),
  formats: new Map([["Line!B1", { fs: 14 }]]),
  sizes: new Map([
    ["Line!column 0", 120],
    ["Line!row 7", 60],
  ]),
  ownSheets: [{ name: "Notes", data: { cellData: { 0: { 0: { f: "=Line!B1" } } }, rowCount: 9 } }],
};

function read(book: unknown): Changes {
  return changesIn(book as never, ready() as never, "IRRIG", () => "");
}

test("what was put into a workbook is found in it again, and nothing else", () => {
  expect(read(ready())).toEqual(noChanges);
  const book = withChanges(ready() as never, changes, "IRRIG");
  // Truth values stand there as 1, marked by their type, once the grid has read them.
  Object.assign(book.sheets?.page0?.cellData?.[9]?.[3] ?? {}, { v: 1, t: 3 });
  expect(read(book)).toEqual(changes);
});

test("a look given by its name, and one that says nothing, are read for what they are", () => {
  const book = ready() as unknown as {
    styles: Record<string, unknown>;
    sheets: { page0: { cellData: Record<number, Record<number, object>> } };
  };
  book.styles = { a: { fs: 10, bg: null, pd: {} }, b: { fs: 10, it: 1 } };
  book.sheets.page0.cellData[0][1] = { v: 14, s: "a" };
  expect(read(book)).toEqual(noChanges);
  book.sheets.page0.cellData[0][1] = { v: 14, s: "b" };
  expect(read(book).formats).toEqual(new Map([["Line!B1", { fs: 10, it: 1 }]]));
});

test("contents for a page that is not there are left out", () => {
  const lost = { ...noChanges, contents: new Map([["Gone!A1", 1]]) };
  expect(read(withChanges(ready() as never, lost, "IRRIG"))).toEqual(noChanges);
});
