import { causesFirst } from "../../../src/sheets/kit/causes";
import type { Page, SheetCell } from "../../../src/sheets/kit/definition";
import { linkedCells } from "../../../src/sheets/kit/precedents";

const cell = (at: string, formula?: string, name?: string): SheetCell => ({
  at,
  role: formula === undefined ? "input" : "result",
  ...(formula !== undefined && { formula }),
  ...(name !== undefined && { name }),
});
const page = (name: string, cells: readonly SheetCell[]): Page => ({
  name,
  widths: [10],
  cells,
  lines: new Map(),
  printArea: "A1:A9",
});

/** Spacing → flow → total; beside them a cell that is wrong by itself. */
const cells = linkedCells([
  page("Total", [cell("A1", "='Line'!A2*2"), cell("A2", "=1/0")]),
  page("Line", [cell("A1", undefined, "Spacing"), cell("A2", "=SPACING+1"), cell("A3", "=5")]),
]);
const at = (place: string) => {
  const found = cells.find((linked) => linked.place === place);
  if (found === undefined) throw new Error(place);
  return found;
};
const told = (...places: string[]) =>
  causesFirst(places.map(at)).map(({ linked, follows }) => [linked.place, follows?.place]);

test("a cause comes before what follows from it, however far and on whatever page", () => {
  expect(told("Total!A1", "Total!A2", "Line!A1", "Line!A2")).toEqual([
    ["Total!A2", undefined],
    ["Line!A1", undefined],
    ["Total!A1", "Line!A1"],
    ["Line!A2", "Line!A1"],
  ]);
});

test("what is right in between hides no cause, and what is right is none", () => {
  expect(told("Total!A1", "Line!A1")).toEqual([
    ["Line!A1", undefined],
    ["Total!A1", "Line!A1"],
  ]);
  expect(told("Total!A1", "Line!A2")).toEqual([
    ["Line!A2", undefined],
    ["Total!A1", "Line!A2"],
  ]);
  expect(told("Line!A3", "Total!A2")).toEqual([
    ["Line!A3", undefined],
    ["Total!A2", undefined],
  ]);
  expect(told()).toEqual([]);
});
