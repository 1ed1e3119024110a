import type { Changes, Content } from "../../../src/trial/kept/changes";
import { type Piece, readPiece, writePiece } from "../../../src/trial/kept/piece";
import { Store } from "../../../src/trial/kept/store";
import { MemoryBox } from "../../support/memory-box";

const changes: Changes = {
  contents: new Map<string, Content>([
    ["Line!D14", 12],
    ["Line!D19", null],
    ["Line!P3", { formula: "=1+1" }],
    ["Line!D10", "North forty"],
    ["Line!D39", true],
  ]),
  formats: new Map([["Line!D14", { bl: 1 }]]),
  sizes: new Map([["Line!column 3", 120]]),
  ownSheets: [{ name: "Notes", data: { cellData: { "0": { "0": { v: 1 } } } } }],
};

const piece: Piece = {
  id: "one",
  name: "North forty",
  sheet: "line-layout",
  system: "US",
  shape: "abc",
  places: { "Line!D14": "Heads" },
  changes,
  revision: 1,
  written: "2026-11-26T12:00:00.000Z",
};

test("a piece of work reads as it was written", () => {
  expect(readPiece(writePiece(piece))).toEqual(piece);
});

test.each([
  ["no JSON", "{"],
  ["a list", "[]"],
  ["another edition", writePiece(piece).replace('"edition":1', '"edition":2')],
  ["unknown units", writePiece(piece).replace('"system":"US"', '"system":"EU"')],
  ["a key that names no cell", writePiece(piece).replace('"Line!D14",12', '"D14",12')],
  ["a cell with a list in it", writePiece(piece).replace(",12]", ",[12]]")],
  ["a formula without its sign", writePiece(piece).replace('"=1+1"', '"1+1"')],
  ["a size that is no number", writePiece(piece).replace("120", '"wide"')],
])("%s is refused whole, and stays where it is", (_, text) => {
  expect(() => readPiece(text)).toThrow();
  const box = new MemoryBox();
  box.setItem("fieldsum:work:one", text);
  const store = new Store(box);
  expect(store.list()).toEqual({ pieces: [], unreadable: 1 });
  expect(store.write({ ...piece, revision: 2 }).kind).toBe("conflict");
  expect(box.getItem("fieldsum:work:one")).toBe(text);
});

test("what another window wrote since is not written over", () => {
  const store = new Store(new MemoryBox());
  expect(store.write(piece).kind).toBe("kept");
  expect(store.write({ ...piece, revision: 2, name: "theirs" }).kind).toBe("kept");
  expect(store.write({ ...piece, revision: 2, name: "ours" }).kind).toBe("conflict");
  expect(store.read("one")?.name).toBe("theirs");
});

test("a full storage, and none at all, are told", () => {
  const box = new MemoryBox();
  box.full = true;
  expect(new Store(box).write(piece).kind).toBe("refused");
  expect(new Store(undefined).write(piece).kind).toBe("refused");
  expect(new Store(undefined).list()).toEqual({ pieces: [], unreadable: 0 });
});

test("the newest stands first; others' entries are left alone", () => {
  const box = new MemoryBox();
  box.setItem("something else", "{");
  const store = new Store(box);
  store.write(piece);
  store.write({ ...piece, id: "two", written: "2026-11-27T12:00:00.000Z" });
  expect(store.list().pieces.map(({ id }) => id)).toEqual(["two", "one"]);
  store.remove("two");
  expect(store.list().pieces.map(({ id }) => id)).toEqual(["one"]);
});

test("what was open last is remembered for each workbook, the newest last", () => {
  const store = new Store(new MemoryBox());
  store.setLast("quote", "one");
  store.setLast("season", "");
  store.setLast("quote", "two");
  expect([...store.last()]).toEqual([
    ["season", ""],
    ["quote", "two"],
  ]);
});
