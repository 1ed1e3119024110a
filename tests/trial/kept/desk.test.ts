import { readyMadeSheets } from "../../../src/sheets";
import { type Contents, noChanges } from "../../../src/trial/kept/changes";
import { Desk } from "../../../src/trial/kept/desk";
import { writePiece } from "../../../src/trial/kept/piece";
import { Store } from "../../../src/trial/kept/store";
import { MemoryBox } from "../../support/memory-box";

function sheetOf(id: string) {
  const sheet = readyMadeSheets.find((one) => one.id === id);
  if (sheet === undefined) throw new Error(`no sheet ${id}`);
  return sheet;
}

const lineLayout = sheetOf("line-layout");
const quote = sheetOf("quote");

function withContents(...contents: [string, string | number | null][]) {
  return { ...noChanges, contents: new Map(contents) as Contents };
}

function deskOn(box: MemoryBox): Desk {
  return new Desk(readyMadeSheets, new Store(box));
}

test("the sample becomes a piece of work with the first change, and is itself never changed", () => {
  const box = new MemoryBox();
  const desk = deskOn(box);
  desk.openSample(quote, "US");
  desk.change(noChanges);
  expect(desk.open.piece).toBeUndefined();
  desk.change(withContents(["Layout!D10", 12]));
  expect(desk.open.piece?.name).toBe("My quote");
  desk.openSample(quote, "US");
  expect(desk.open.changes).toEqual(noChanges);
  const again = deskOn(box);
  expect(again.openWhereLeft()).toBe(false);
  again.openPiece(again.store.list().pieces[0].id);
  expect(again.open.changes.contents).toEqual(new Map([["Layout!D10", 12]]));
});

test("what was open when the page was left is open next time, by workbook too", () => {
  const box = new MemoryBox();
  const desk = deskOn(box);
  desk.openSample(quote, "SI");
  desk.change(withContents(["Layout!D10", 12]));
  const { id } = desk.open.piece ?? {};
  const next = deskOn(box);
  expect(next.openWhereLeft()).toBe(true);
  expect(next.open.piece?.id).toBe(id);
  expect(next.open.system).toBe("SI");
  next.openLast(lineLayout, "SI");
  expect(next.open.piece).toBeUndefined();
  next.openLast(quote, "US");
  expect(next.open.piece?.id).toBe(id);
});

test("two windows on one piece: neither writes over the other", () => {
  const box = new MemoryBox();
  const one = deskOn(box);
  one.begin(quote, "US", "Shared", noChanges);
  const { id = "" } = one.open.piece ?? {};
  const two = deskOn(box);
  two.openPiece(id);
  two.change(withContents(["Layout!D10", 11]));
  one.change(withContents(["Layout!D10", 9]));
  expect(one.open.piece?.name).toBe("Shared (this window)");
  const held = one.store
    .list()
    .pieces.map(({ name, changes }) => [name, changes.contents.get("Layout!D10")]);
  expect(new Map(held as [string, number][])).toEqual(
    new Map([
      ["Shared", 11],
      ["Shared (this window)", 9],
    ]),
  );
});

test("no two pieces have the same name", () => {
  const desk = deskOn(new MemoryBox());
  desk.begin(quote, "US", "Plan", noChanges);
  desk.begin(quote, "US", "Plan", noChanges);
  expect(desk.open.piece?.name).toBe("Plan 2");
  desk.rename("Plan");
  expect(desk.open.piece?.name).toBe("Plan 2");
  desk.rename("  ");
  expect(desk.open.piece?.name).toBe("Plan 2");
  desk.rename("North forty");
  expect(desk.open.piece?.name).toBe("North forty");
});

test("before something else is opened, what was just typed is handed over to the old piece", () => {
  const desk = deskOn(new MemoryBox());
  desk.begin(quote, "US", "Plan", noChanges);
  const { id = "" } = desk.open.piece ?? {};
  let late = true;
  desk.beforeLeaving(() => {
    if (late) desk.change(withContents(["Layout!D10", 13]));
    late = false;
  });
  desk.openSample(lineLayout, "US");
  expect(desk.store.read(id)?.changes.contents.get("Layout!D10")).toBe(13);
});

test("work of an earlier edition stands where its inputs are now; what has no place is named", () => {
  const box = new MemoryBox();
  const desk = deskOn(box);
  desk.begin(lineLayout, "US", "Old", withContents(["Line!D14", 12]));
  const { piece } = desk.open;
  if (piece === undefined) throw new Error("no piece");
  box.setItem(
    "fieldsum:work:old",
    writePiece({
      ...piece,
      id: "old",
      shape: "earlier",
      places: { "Line!D99": "Heads", "Line!D98": "Gone" },
      changes: withContents(["Line!D99", 12], ["Line!D98", 1], ["Line!Z300", 7], ["Line!D14", 3]),
    }),
  );
  desk.openPiece("old");
  expect(desk.open.changes.contents).toEqual(
    new Map([
      ["Line!D14", 12],
      ["Line!Z300", 7],
    ]),
  );
  expect(desk.open.lost).toEqual(["Line!D14", "Gone"]);
});

test("deleted is gone, and only that", () => {
  const desk = deskOn(new MemoryBox());
  desk.begin(quote, "US", "One", noChanges);
  desk.begin(quote, "US", "Two", noChanges);
  desk.remove();
  expect(desk.open.piece).toBeUndefined();
  expect(desk.store.list().pieces.map(({ name }) => name)).toEqual(["One"]);
});

test("a work that cannot be kept says so", () => {
  const box = new MemoryBox();
  box.full = true;
  const desk = deskOn(box);
  desk.openSample(quote, "US");
  desk.change(withContents(["Layout!D10", 12]));
  expect(desk.notKept).toContain("full");
  box.full = false;
  desk.change(withContents(["Layout!D10", 13]));
  expect(desk.notKept).toBe("");
});
