import type * as Engine from "../../build/sheet-engine";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import type { Page, SheetCell, UnitSystem } from "../../src/sheets/kit/definition";
import { FirstValues } from "../../src/trial/first-values";
import { bundled } from "../support/bundled";
import { host, reference } from "../support/page-functions";

/** The view without the grid follows edits one after the other, as the grid's own engine does. */
// It brings functions and a host of its own.
const { SheetEngine } = bundled<typeof Engine>("sheet-engine");

type Input = { readonly page: string; readonly cell: SheetCell };
type Typed = string | number | boolean | null;

/** Every place that holds something, or that a formula elsewhere may fill, and two rows beyond. */
function* places(pages: readonly Page[]) {
  for (const [index, page] of pages.entries())
    for (const { at, spill, formula } of page.cells) {
      const { row, column } = readAddress(at);
      const rows = spill === undefined || formula === undefined ? 1 : spill.reserved;
      const columns = spill === undefined ? 1 : Math.max(spill.columns, spill.formats.length);
      for (let down = 0; down < rows; down++)
        for (let across = 0; across < columns; across++)
          yield { index, page: page.name, row: row + down, column: column + across, at };
    }
}

/** Alike up to what two orders of summing differ by; a blank that a cell shows is no text. */
function isSame(one: Typed, other: Typed): boolean {
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other));
  // A blank that IF hands on is 0 in a spreadsheet; the grid's engine leaves it blank.
  if (one === 0 && other === null) return true;
  return (one ?? "") === (other ?? "");
}

function differences(
  pages: readonly Page[],
  values: FirstValues,
  engine: Engine.SheetEngine,
): string[] {
  const found: string[] = [];
  for (const { index, page, row, column, at } of places(pages)) {
    const grid = engine.value({ page: index, row, column });
    const own = values.read({ page, row, column });
    if (own.isPending === true) found.push(`${page}!${at} is left to the grid`);
    else if (!isSame(own.value, grid))
      found.push(
        `${page}!${at} (${row}, ${column}): ${JSON.stringify(own.value)} where the grid has ${JSON.stringify(grid)}`,
      );
  }
  return found;
}

function inputs(pages: readonly Page[]): Input[] {
  return pages.flatMap((page) =>
    page.cells
      .filter(({ role, name }) => role === "input" && name !== "Units")
      .map((cell) => ({ page: page.name, cell })),
  );
}

/** What people do to an input: another size, nothing, words where a number is due, far too much. */
function edits({ cell }: Input): Typed[] {
  const { value, allowed } = cell;
  if (allowed !== undefined && "list" in allowed) return [allowed.list.at(-1) ?? null];
  if (typeof value === "number") return [value * 1.1, "a few"];
  return [value === undefined ? 3 : `${String(value)} 2`, null];
}

/** Inputs of each workbook that are edited. */
const EDITED = 2;

describe.each(readyMadeSheets.map((sheet) => [sheet.id, sheet] as const))("%s", (_, sheet) => {
  // In SI the formulas are the same.
  test.each(["US"] as const)(
    "every cell shows in %s what the grid's engine works out, before and after edits",
    async (system: UnitSystem) => {
      const pages = sheet.pages(system);
      const values = new FirstValues(pages, new Map(), reference, host);
      const engine = await SheetEngine.open(pages, "IRRIG");
      try {
        expect(differences(pages, values, engine)).toEqual([]);
        const all = inputs(pages);
        const step = Math.max(1, Math.floor(all.length / EDITED));
        for (let at = 0; at < all.length; at += step) {
          const input = all[at];
          const choices = edits(input);
          const content = choices[Math.floor(at / step) % choices.length];
          const place = { page: input.page, ...readAddress(input.cell.at) };
          // Each edit stays: what follows is worked out from all of them, as a user's work is.
          const steps = values.steps.undos;
          values.write(place, content);
          const index = pages.findIndex(({ name }) => name === input.page);
          await engine.put([
            {
              place: { page: index, row: place.row, column: place.column },
              content: content === null ? {} : { value: content },
            },
          ]);
          expect([
            input.cell.label ?? input.cell.at,
            content,
            differences(pages, values, engine),
          ]).toEqual([input.cell.label ?? input.cell.at, content, []]);
          // An input that is in error hides all else: it is put right again.
          if (content === null || typeof content === "string") {
            // Nothing typed where nothing stood is no step.
            if (values.steps.undos > steps) values.undo();
            await engine.put([
              {
                place: { page: index, row: place.row, column: place.column },
                content: input.cell,
              },
            ]);
          }
        }
      } finally {
        engine.close();
      }
    },
  );
});
