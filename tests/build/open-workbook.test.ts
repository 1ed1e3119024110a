import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import type { Page, SheetCell } from "../../src/sheets/kit/definition";
import { DEFAULT_NAMESPACE } from "../../src/formula-text/dialect";
import type { OpenWorkbook } from "../../build/asked-workbook";
import { Chance } from "../support/chance";
import { loadEvaluator } from "../support/sheet-evaluator";
import { loadWorkbooks } from "../support/open-workbook";

const { openWorkbook, workbookIds, Misuse } = loadWorkbooks();
const evaluate = loadEvaluator();

let open: OpenWorkbook | undefined;
afterEach(() => open?.close());

async function opened(id: string, system: "US" | "SI" = "US"): Promise<OpenWorkbook> {
  open = await openWorkbook(id, system);
  return open;
}

describe("a workbook to be asked", () => {
  test.each(workbookIds())("%s: as it stands it answers and shows no error", async (id) => {
    for (const system of ["US", "SI"] as const) {
      const book = await opened(id, system);
      expect(book.errors()).toEqual([]);
      expect(book.answers().length).toBeGreaterThan(0);
      for (const answer of book.answers()) expect(answer).not.toMatch(/^#/);
      expect(Object.keys(book.values())).toEqual(expect.arrayContaining(["Units"]));
      expect(book.values().Units).toBe(system);
    }
  });

  test("says why a check fails, and forgets what was set before", async () => {
    const book = await opened("line-layout");
    const failed = () => book.checks().filter(({ ok }) => !ok);
    expect(failed()).toEqual([]);
    await book.set({ Rise: 60 });
    expect(failed().length).toBeGreaterThan(0);
    for (const { text } of failed()) expect(text).not.toBe("OK");
    await book.set({ Wind: 0 });
    expect(book.values().Rise).toBe(0);
    expect(failed()).toEqual([]);
  });

  test("a range takes its first rows and keeps the rest; null is a blank cell", async () => {
    const book = await opened("line-layout");
    const before = book.values().Chart as (number | null)[][];
    await book.set({ Chart: [[30, 3.5]] });
    expect(book.values().Chart).toEqual([[30, 3.5], ...before.slice(1)]);
    await book.set({ Chart: [before[0], before[1], [null, null]] });
    expect(book.values().Chart).toEqual([before[0], before[1], [null, null]]);
  });

  test("the cause stands first, once; what follows from it says so", async () => {
    const book = await opened("quote");
    await book.set({ Costs: [[null]] });
    const [cause, ...rest] = book.errors();
    expect(cause.code).toBe("#N/A");
    expect(cause.message).toMatch(/^no price for "/);
    expect(cause).not.toHaveProperty("follows");
    expect(book.values().QuoteTotal).toBe("#N/A");
    const items = book.values().Costs as (string | null)[][];
    // A name may be given with its price, and only as it stands.
    await book.set({ Costs: [[items[0][0], null]] });
    expect(book.errors()[0]).toEqual(cause);
    await expect(book.set({ Costs: [["gold", 1]] })).rejects.toThrow(/worked out by the workbook/);
    expect(
      rest.some(({ cell, follows }) => cell.startsWith("Quote!") && follows !== undefined),
    ).toBe(true);
  });

  test("an input outside its limits is named before all errors", async () => {
    const book = await opened("line-layout");
    await book.set({ Heads: "22 acres" });
    const [first, ...rest] = book.errors();
    expect(first.code).toBe("limits");
    expect(first.message).toMatch(/must be a whole number from 1 to \d+; got 22 acres\.$/);
    expect(rest.filter(({ code }) => code === "limits")).toEqual([]);
    expect(rest.find(({ follows }) => follows === undefined)).toBeUndefined();
  });

  test.each([
    [{ Nothing: 1 }, /^there is no name "Nothing"\. Inputs are Units,/],
    [
      { Inlet: 1 },
      /^Inlet is no input: Line!\w+ is worked out by the workbook\. Inputs are Units,/,
    ],
    [{ Chart: 1 }, /^Chart is 3 by 2 cells: give rows/],
    [{ Heads: [[1], [2]] }, /^Heads is 1 by 1 cells; got 2 by 1/],
  ])("%j is refused in words", async (settings: Readonly<Record<string, unknown>>, words) => {
    const book = await opened("line-layout");
    await expect(book.set(settings as never)).rejects.toThrow(Misuse);
    await expect(book.set(settings as never)).rejects.toThrow(words);
  });

  test("names no workbook that there is not", async () => {
    await expect(openWorkbook("nothing", "US")).rejects.toThrow(/^there is no workbook "nothing"/);
  });
});

/** A workbook that has been open for long shows what a fresh one shows. */
describe.each(workbookIds())("%s: nothing stale", (id) => {
  test("after errors, and back", async () => {
    const random = new Chance(20250611);
    const book = await opened(id);
    const inputs = book.inputs.filter(({ value }) => typeof value === "number");
    const pages = readyMadeSheets.find((one) => one.id === id)?.pages("US") ?? [];
    for (let i = 0; i < 6; i++) {
      const { name, place } = random.pick(inputs);
      const setting = random.pick([null, "words", 0, 3]);
      await book.set({ [name]: setting });
      const fresh = await evaluate(withValue(pages, place, setting), DEFAULT_NAMESPACE);
      const shown = fresh.errors.flatMap((error) =>
        / shows #\S/.exec(error) ? [error.split(" shows ")[0]] : [],
      );
      const wrong = book.errors().flatMap(({ cell, code }) => (code === "limits" ? [] : [cell]));
      expect({ name, setting, wrong: wrong.sort() }).toEqual({
        name,
        setting,
        wrong: shown.sort(),
      });
      const values = book.values();
      for (const [named, { page, row, column }] of namedCells(pages))
        expect([name, setting, named, values[named]]).toEqual([
          name,
          setting,
          named,
          fresh.value(page, row, column),
        ]);
    }
  });
});

function namedCells(pages: readonly Page[]) {
  return pages.flatMap((page) =>
    page.cells.flatMap(({ name, at }) =>
      name === undefined ? [] : [[name, { page: page.name, ...readAddress(at) }] as const],
    ),
  );
}

function withValue(
  pages: readonly Page[],
  place: string,
  value: SheetCell["value"] | null,
): Page[] {
  return pages.map((page) => ({
    ...page,
    cells: page.cells.map((cell) =>
      `${page.name}!${cell.at}` === place
        ? { ...cell, value: value ?? undefined, formula: undefined }
        : cell,
    ),
  }));
}
