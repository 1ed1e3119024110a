import { readAddress } from "../../src/sheets/kit/address";
import type { Page } from "../../src/sheets/kit/definition";
import type { CellValue } from "../../src/screen/host";
import { FirstValues } from "../../src/trial/first-values";
import { LiveValues, type SlowerValues } from "../../src/trial/live-values";
import type { CellPlace, ShownCell } from "../../src/trial/sheet-values";
import { host, reference } from "../support/page-functions";

const page: Page = {
  name: "One",
  widths: [10, 10],
  lines: new Map(),
  printArea: "A1:B9",
  cells: [
    { at: "A1", role: "input", value: 14 },
    { at: "A2", role: "result", formula: "=A1*2" },
  ],
};

const at = (address: string): CellPlace => ({ page: "One", ...readAddress(address) });

/** A page of the user's own, which only the spreadsheet knows. */
const BEYOND = { formula: "='My own'!A1+One!A1" };

/** A spreadsheet that says what it is told to, and notes what is written into it. */
class StandInGrid implements SlowerValues {
  isBehind = false;
  shown: ShownCell = { value: 99 };
  readonly written: [CellPlace, readonly (readonly CellValue[])[]][] = [];

  read(): ShownCell {
    return this.shown;
  }

  write(place: CellPlace, value: CellValue): void {
    this.writeBlock(place, [[value]]);
  }

  writeBlock(place: CellPlace, rows: readonly (readonly CellValue[])[]): void {
    this.written.push([place, rows]);
  }
}

function begin() {
  const first = new FirstValues([page], new Map([["One!B1", BEYOND]]), reference, host);
  return { first, live: new LiveValues(first), grid: new StandInGrid() };
}

test("before the spreadsheet is there, answers follow at once and can be taken back", () => {
  const { first, live } = begin();
  const settled = jest.fn();
  live.onSettled(settled);
  live.write(at("A1"), 20);
  expect(live.read(at("A2"))).toEqual({ value: 40 });
  expect(settled).toHaveBeenCalledTimes(1);
  expect(first.steps.undos).toBe(1);
  first.undo();
  expect(live.read(at("A2"))).toEqual({ value: 28 });
});

test("with the spreadsheet, a change goes into both, and only the spreadsheet has the step", () => {
  const { first, live, grid } = begin();
  live.with(grid);
  const settled = jest.fn();
  live.onSettled(settled);
  grid.isBehind = true;
  live.write(at("A1"), 20);
  expect(grid.written).toEqual([[at("A1"), [[20]]]]);
  expect(first.steps.undos).toBe(0);
  expect(settled).toHaveBeenCalledTimes(1);
  // The spreadsheet has not caught up, and nothing here waits for it.
  expect(live.read(at("A2"))).toEqual({ value: 40 });
  live.writeBlock(at("A1"), [[30], [5]]);
  expect(grid.written.at(-1)).toEqual([at("A1"), [[30], [5]]]);
  expect(live.read(at("A1"))).toEqual({ value: 30 });
  expect(live.read(at("A2"))).toEqual({ value: 5 });
});

test("the spreadsheet is not asked for what is worked out without it", () => {
  const { live, grid } = begin();
  live.with(grid);
  expect(live.read(at("A2"))).toEqual({ value: 28 });
  expect(live.asksGrid()).toBe(false);
});

test("an error is an answer too, and no reason to ask the spreadsheet", () => {
  const { live, grid } = begin();
  live.with(grid);
  live.write(at("A1"), "words");
  expect(live.read(at("A2")).error?.code).toBe("#VALUE!");
  expect(live.asksGrid()).toBe(false);
});

test("what is beyond is pending until the spreadsheet has caught up: no old number as a new one", () => {
  const { live, grid } = begin();
  const pending = { value: null, isPending: true };
  expect(live.read(at("B1"))).toEqual(pending);
  grid.isBehind = true;
  live.with(grid);
  expect(live.read(at("B1"))).toEqual(pending);
  grid.isBehind = false;
  expect(live.read(at("B1"))).toEqual({ value: 99 });
  grid.isBehind = true;
  expect(live.read(at("B1"))).toEqual(pending);
});

test("that something shown waits for the spreadsheet is told once", () => {
  const { live } = begin();
  expect(live.asksGrid()).toBe(false);
  live.read(at("B1"));
  expect(live.asksGrid()).toBe(true);
  expect(live.asksGrid()).toBe(false);
});
