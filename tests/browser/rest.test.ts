import type { Browser, Page as BrowserPage } from "playwright-core";
import type { Grid } from "../../src/trial/grid";
import { DEFAULT_NAMESPACE } from "../../src/formula-text/dialect";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress, readRange } from "../../src/sheets/kit/address";
import type { Page, SheetCell } from "../../src/sheets/kit/definition";
import { launchBrowser, openPage, serve, type Served } from "../support/browser";
import { Chance } from "../support/chance";
import { loadEvaluator } from "../support/sheet-evaluator";

declare const trialGrid: Grid;

const evaluate = loadEvaluator();
const PATIENCE = { timeout: 90000 };

let browser: Browser;
let site: Served;

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serve();
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
});

interface Place {
  readonly page: string;
  readonly row: number;
  readonly column: number;
}

async function openSheet(id: string, firstPage: string): Promise<BrowserPage> {
  const { page } = await openPage(browser, `${site.address}#${id}/us`, {
    viewport: { width: 1280, height: 800 },
  });
  const isOpen = (name: string) => {
    try {
      return document.querySelector(".chosen") !== null && trialGrid.extent(name).rows > 0;
    } catch {
      return false;
    }
  };
  await page.waitForFunction(
    () => document.documentElement.dataset.grid === "ready",
    undefined,
    PATIENCE,
  );
  await page.waitForFunction(isOpen, firstPage, PATIENCE);
  return page;
}

/** Types into a cell and waits until the page says that all that follows has been computed. */
async function enter(page: BrowserPage, place: Place, typed: string): Promise<void> {
  await page.evaluate(
    ({ at, text }) =>
      new Promise<void>((resolve) => {
        trialGrid.onSettled(resolve);
        trialGrid.enter(at, text);
      }),
    { at: place, text: typed },
  );
}

/** Every cell that a formula gives or fills. */
function computed(pages: readonly Page[]): Place[] {
  return pages.flatMap((page) =>
    page.cells.flatMap(({ at, formula, spill }) => {
      if (formula === undefined) return [];
      const { row, column } = readAddress(at);
      const { reserved = 1, columns = 1 } = spill ?? {};
      return Array.from({ length: reserved * columns }, (_, i) => ({
        page: page.name,
        row: row + Math.floor(i / columns),
        column: column + (i % columns),
      }));
    }),
  );
}

function changed(pages: readonly Page[], place: Place, typed: string): Page[] {
  const isIt = (page: Page, cell: SheetCell) => {
    const { row, column } = readAddress(cell.at);
    return page.name === place.page && row === place.row && column === place.column;
  };
  const value = typed === "" ? undefined : Number.isNaN(Number(typed)) ? typed : Number(typed);
  return pages.map((page) => ({
    ...page,
    cells: page.cells.map((cell) => (isIt(page, cell) ? { ...cell, value } : cell)),
  }));
}

/** As the grid keeps numbers. */
const rounded = (value: unknown) =>
  typeof value === "number" ? Number(value.toPrecision(10)) : (value ?? "");

describe.each(readyMadeSheets.map(({ id }) => id))("%s", (id) => {
  test("after every edit, also one that leads to errors, no cell is older than its inputs", async () => {
    const random = new Chance(11);
    const pages = readyMadeSheets.find((one) => one.id === id)?.pages("US") ?? [];
    const inputs = pages.flatMap((page) =>
      page.cells
        .filter(({ role, value }) => role === "input" && typeof value === "number")
        .map(({ at, value }) => ({ place: { page: page.name, ...readAddress(at) }, value })),
    );
    const page = await openSheet(id, pages[0].name);
    const cells = computed(pages);
    for (let i = 0; i < 5; i++) {
      const { place, value } = random.pick(inputs);
      const typed = random.pick(["", "words", "0", String(Number(value) * 1.5)]);
      await enter(page, place, typed);
      const fresh = await evaluate(changed(pages, place, typed), DEFAULT_NAMESPACE);
      const shown = await page.evaluate(
        (all) => all.map((cell) => trialGrid.read(cell).value),
        cells,
      );
      const stale = cells.flatMap((cell, k) => {
        const is = rounded(shown[k]);
        const due = rounded(fresh.value(cell.page, cell.row, cell.column));
        return is === due ? [] : [{ ...cell, is, due }];
      });
      expect({ place, typed, stale: stale.slice(0, 5) }).toEqual({ place, typed, stale: [] });
      await enter(page, place, String(value));
    }
    await page.context().close();
  });
});

test("a price that is blanked takes total, card and table with it, and its return brings them back", async () => {
  const pages = readyMadeSheets.find(({ id }) => id === "quote")?.pages("US") ?? [];
  const page = await openSheet("quote", pages[0].name);
  const prices = pages.flatMap(({ name, names = [] }) =>
    names.filter((one) => one.name === "Costs").map(({ range }) => ({ name, ...readRange(range) })),
  )[0];
  const price = { page: prices.name, row: prices.row, column: prices.column + prices.columns - 1 };
  const total = pages.flatMap((one) =>
    one.cells
      .filter(({ name }) => name === "QuoteTotal")
      .map(({ at }) => ({ page: one.name, ...readAddress(at) })),
  )[0];
  const read = (place: Place) => page.evaluate((at) => trialGrid.read(at).value, place);
  const document = () => page.locator("#reading").innerText();
  const [was, priced] = [await read(total), await read(price)];
  expect(typeof was).toBe("number");
  const before = await document();
  await enter(page, price, "");
  expect(await read(total)).toBe("#N/A");
  const without = await document();
  expect(without).toContain("no price for");
  const money = Number(was).toLocaleString("en-US", { minimumFractionDigits: 2 });
  expect(before).toContain(money.slice(0, -1));
  expect(without).not.toContain(money.slice(0, -1));
  await enter(page, price, String(priced));
  expect(await read(total)).toBe(was);
  expect(await document()).toBe(before);
  await page.context().close();
});
