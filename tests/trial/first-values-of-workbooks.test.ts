import type * as Evaluator from "../../build/sheet-evaluator";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress, writeAddress } from "../../src/sheets/kit/address";
import type { Page, SheetCell, UnitSystem } from "../../src/sheets/kit/definition";
import { FirstValues } from "../../src/trial/first-values";
import { bundled } from "../support/bundled";
import { host, reference } from "../support/page-functions";

/** The view before the grid shows what the grid's own formula engine then shows, cell by cell. */
// It brings functions and a host of its own.
const { evaluate } = bundled<typeof Evaluator>("sheet-evaluator");

type Shown = string | number | boolean | null;

/** Places of all cells that can show something, those that formulas fill among them. */
function places(page: Page): { row: number; column: number }[] {
  return page.cells.flatMap(({ at, spill }) => {
    const { row, column } = readAddress(at);
    const { reserved = 1, columns = 1, formats = [] } = spill ?? {};
    return Array.from({ length: reserved }, (_, down) =>
      Array.from({ length: Math.max(columns, formats.length) }, (__, across) => ({
        row: row + down,
        column: column + across,
      })),
    ).flat();
  });
}

function alike(one: Shown, other: Shown): boolean {
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other));
  // A blank that IF hands on is 0 in a spreadsheet; the grid's engine leaves it blank.
  if (one === 0 && other === null) return true;
  // A formula that gives "" and a blank look the same.
  return (one ?? "") === (other ?? "");
}

function changed(pages: readonly Page[], change: (cell: SheetCell) => SheetCell): Page[] {
  return pages.map((page) => ({ ...page, cells: page.cells.map(change) }));
}

async function differences(pages: readonly Page[]): Promise<string[]> {
  const inGrid = await evaluate(pages, "IRRIG");
  const first = new FirstValues(pages, new Map(), reference, host);
  return pages.flatMap((page) =>
    places(page).flatMap((place) => {
      const { value, isPending } = first.read({ page: page.name, ...place });
      const wanted = inGrid.value(page.name, place.row, place.column);
      if (isPending !== true && alike(value, wanted)) return [];
      return `${page.name}!${writeAddress(place)}: ${isPending ? "not worked out" : String(value)}, in the grid ${String(wanted)}`;
    }),
  );
}

const everyWorkbook = readyMadeSheets.flatMap((sheet) =>
  (["US", "SI"] as const).map((system): [string, UnitSystem] => [sheet.id, system]),
);

function pagesOf(id: string, system: UnitSystem): readonly Page[] {
  return readyMadeSheets.find((sheet) => sheet.id === id)?.pages(system) ?? [];
}

describe.each(everyWorkbook)("%s %s", (id, system) => {
  test("with every other number input a tenth more", async () => {
    let count = 0;
    const pages = changed(pagesOf(id, system), (cell) =>
      cell.role === "input" && typeof cell.value === "number" && count++ % 2 === 0
        ? { ...cell, value: Number((cell.value * 1.1).toPrecision(4)) }
        : cell,
    );
    expect(await differences(pages)).toEqual([]);
  });

  test("with inputs outside their limits and inputs of words", async () => {
    let count = 0;
    const wrong = [-1e6, "words"];
    const pages = changed(pagesOf(id, system), (cell) => {
      if (cell.role !== "input" || typeof cell.value !== "number") return cell;
      const at = count++ % 9;
      return at < wrong.length ? { ...cell, value: wrong[at] } : cell;
    });
    expect(await differences(pages)).toEqual([]);
  });

  // The grid hands a blank to our functions as 0, this view as the blank that it is; both name it.
  test("with a blank input: both say the same to fix first", async () => {
    let count = 0;
    const pages = changed(pagesOf(id, system), (cell) =>
      cell.role === "input" && typeof cell.value === "number" && count++ === 2
        ? { ...cell, value: undefined }
        : cell,
    );
    const found = (await differences(pages)).filter((difference) =>
      difference.startsWith("Checks!"),
    );
    expect(found).toEqual([]);
  });
});
