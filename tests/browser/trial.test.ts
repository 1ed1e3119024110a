import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import type { Grid } from "../../src/trial/grid";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import { formatValue } from "../../src/screen/number-format";
import { outline } from "../../src/trial/page-outline";
import { launchBrowser, openPage, serve, type Misdeeds, type Served } from "../support/browser";
import { callNumber } from "../support/host";

declare const trialGrid: Grid;
declare const axe: { run(context: { exclude: string[][] }): Promise<AxeResults> };

const WIDE: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };
const NARROW: BrowserContextOptions = { viewport: { width: 390, height: 844 } };
const NARROWEST: BrowserContextOptions = { viewport: { width: 320, height: 640 } };
const PATIENCE = { timeout: 90000 };

/** The answers, once all that stands below them has been made too. */
const WHOLE = "#reading:not(.unfinished) .answers";

let browser: Browser;
let site: Served;

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serve();
});

// Pages left open go on computing and drawing beside those of the next test.
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
});

async function open(
  options: BrowserContextOptions,
  hash = "",
): Promise<{ page: Page; misdeeds: Misdeeds }> {
  return openPage(browser, site.address + hash, options);
}

async function openWithGrid(): Promise<{ page: Page; misdeeds: Misdeeds }> {
  const opened = await open(WIDE);
  await opened.page.waitForFunction(
    () => document.documentElement.dataset.grid === "ready",
    undefined,
    PATIENCE,
  );
  return opened;
}

/** Where a named cell of the first sheet stands. */
function named(name: string) {
  for (const page of readyMadeSheets[0].pages("US"))
    for (const cell of page.cells)
      if (cell.name === name) return { page: page.name, ...readAddress(cell.at) };
  throw new Error(`no cell ${name}`);
}

/** Types into the grid through its interface. What follows is computed in its own time. */
async function enter(page: Page, name: string, typed: string): Promise<void> {
  await page.evaluate(([place, text]) => trialGrid.enter(place, text), [
    named(name),
    typed,
  ] as const);
}

/** Tries until it passes, or fails as it failed last. */
async function eventually(check: () => Promise<void>): Promise<void> {
  const end = Date.now() + PATIENCE.timeout;
  for (;;) {
    try {
      return await check();
    } catch (failure) {
      if (Date.now() > end) throw failure;
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
  }
}

function read(page: Page, name: string) {
  return page.evaluate((place) => trialGrid.read(place), named(name));
}

/** The line of the sheet as it stands, for a direct call. */
async function line(page: Page): Promise<unknown[]> {
  const value = async (name: string) => (await read(page, name)).value;
  const table = async (name: string) => {
    const range = readyMadeSheets[0]
      .pages("US")
      .flatMap((one) => (one.names ?? []).map((entry) => ({ page: one.name, ...entry })))
      .find((entry) => entry.name === name);
    if (range === undefined) throw new Error(`no range ${name}`);
    const [from, to] = range.range.split(":").map(readAddress);
    const rows = [];
    for (let row = from.row; row <= to.row; row++) {
      const cells = [];
      for (let column = from.column; column <= to.column; column++) {
        const place = { page: range.page, row, column };
        cells.push((await page.evaluate((at) => trialGrid.read(at), place)).value);
      }
      rows.push(cells);
    }
    return rows;
  };
  return [
    await value("Inlet"),
    await value("Heads"),
    await value("Spacing"),
    await table("Tubing"),
    await table("Chart"),
    await value("Units"),
    await value("Rise"),
    await value("Regulator"),
    await value("Friction"),
    await value("First"),
    await value("Riser"),
  ];
}

/**
 * All but the markup that the grid library makes itself. What the grid shows and does stands in
 * the document, the form and the table beside it, which are checked.
 */
const LIBRARY = [[".grid-canvas"], ["[data-react-aria-top-layer]"]];

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(readFileSync(join(require.resolve("axe-core"), "..", "axe.min.js"), "utf8"));
  const { violations: found } = await page.evaluate((exclude) => axe.run({ exclude }), LIBRARY);
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}

test("the answers and the picture stand before the grid has been asked for", async () => {
  const { page, misdeeds } = await open(NARROW);
  await page.waitForFunction(
    () =>
      [...document.querySelectorAll(".answers dd")].every((answer) => answer.textContent !== "") &&
      document.querySelector("svg.chart path.series") !== null,
    undefined,
    PATIENCE,
  );
  const asked = await page.evaluate(() =>
    performance
      .getEntriesByType("resource")
      .reduce((sum, entry) => sum + (entry as PerformanceResourceTiming).decodedBodySize, 0),
  );
  expect(asked).toBeLessThan(1_000_000);
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("an input changed in the grid changes the last head's pressure as a direct call does", async () => {
  const { page, misdeeds } = await openWithGrid();
  let before = (await read(page, "FarPressure")).value as number;
  for (const [name, typed] of [
    ["Lowest", "45"],
    // Downhill, where the last head is not the lowest, so that every input moves its pressure.
    ["Rise", "-20"],
    ["Spacing", "40"],
    ["Heads", "12"],
  ]) {
    await enter(page, name, typed);
    await eventually(async () => {
      const given = await line(page);
      const direct = callNumber("LATERAL.PRESSURE", given[1], ...given);
      const shown = (await read(page, "FarPressure")).value as number;
      expect(shown).not.toBeCloseTo(before, 2);
      expect(shown).toBeCloseTo(direct, 6);
      await expect(page.locator(".answers").innerText()).resolves.toContain(direct.toFixed(1));
    });
    before = (await read(page, "FarPressure")).value as number;
  }
  // The picture and the table follow: one mark a head, one row a head.
  await eventually(async () => {
    await expect(page.locator("svg.chart").first().locator("circle").count()).resolves.toBe(12);
    await expect(page.locator(".spilled tbody tr").count()).resolves.toBe(12);
  });
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("an input changed in the form changes the grid, and the other way round", async () => {
  const { page } = await openWithGrid();
  const field = page.getByLabel("Sprinklers on the line");
  await field.fill("9");
  await field.blur();
  await page.waitForFunction(
    (place) => trialGrid.read(place).value === 9,
    named("Heads"),
    PATIENCE,
  );
  await enter(page, "Heads", "11");
  await eventually(() => expect(field.inputValue()).resolves.toBe("11"));
});

test("an error shows its sentence beside the grid, in the document and in the list", async () => {
  const { page } = await openWithGrid();
  await enter(page, "Spacing", "-45");
  await eventually(async () => {
    const inlet = await read(page, "PlannedInlet");
    expect(inlet.error?.code).toBe("#VALUE!");
    expect(inlet.error?.message).toContain("spacing");
    const { message } = inlet.error ?? {};
    await expect(page.locator(".wrong").innerText()).resolves.toContain(message);
    await expect(page.locator(".results .error").first().innerText()).resolves.toContain("#VALUE!");
  });
  const { error } = await read(page, "PlannedInlet");
  await page.locator(".wrong li", { hasText: error?.message }).first().getByRole("button").click();
  await page.waitForFunction(
    (message) => document.querySelector(".chosen")?.textContent?.includes(message),
    error?.message ?? "",
    PATIENCE,
  );
});

test("a range where one cell is due says so", async () => {
  const { page } = await openWithGrid();
  const at = { page: "Line", row: 3, column: 14 };
  await page.evaluate((place) => trialGrid.enter(place, "=IRRIG.PIPE.FRICTION(Chart, 2, 100)"), at);
  await page.waitForFunction(
    (place) => trialGrid.read(place).error?.message.includes("takes one cell"),
    at,
    PATIENCE,
  );
});

test("a function typed into a free cell works, by the form that needs no canvas", async () => {
  const { page } = await openWithGrid();
  await page.getByLabel("Cell", { exact: true }).fill("P3");
  await page.getByLabel("Value or formula").fill('=IRRIG.PIPE.FRICTION(50, 2.067, 100, "US", 150)');
  await page.getByRole("button", { name: "Enter" }).click();
  await page.waitForFunction(
    (place) => typeof trialGrid.read(place).value === "number",
    { page: "Line", row: 2, column: 15 },
    PATIENCE,
  );
  const shown = await page.evaluate(
    () => trialGrid.read({ page: "Line", row: 2, column: 15 }).value,
  );
  expect(shown).toBeCloseTo(callNumber("PIPE.FRICTION", 50, 2.067, 100, "US", 150), 9);
  await page.getByText("All cells of this page as a table").click();
  // The table is filled when the browser tells that it was opened, which may be a moment later.
  await eventually(async () => {
    await expect(
      page.locator(".cell-table td", { hasText: "Line layout" }).count(),
    ).resolves.toBeGreaterThan(0);
  });
});

test("after an edit, the document and the grid, each by its own reckoning, hold the same answers", async () => {
  const { page } = await openWithGrid();
  const [first] = readyMadeSheets[0].pages("US");
  const answers = outline(first).answers.map(({ answer }) => answer);
  const shown = () => page.locator(".answers dd").allInnerTexts();
  const before = await shown();
  const field = page.getByLabel("Sprinkler spacing");
  await field.fill("37");
  await field.blur();
  await page.waitForFunction(
    (place) => trialGrid.read(place).value === 37,
    named("Spacing"),
    PATIENCE,
  );
  await page.evaluate(() => trialGrid.quiet());
  const places = answers.map(({ at }) => ({ page: first.name, ...readAddress(at) }));
  const held = await page.evaluate(
    (all) => all.map((place) => trialGrid.read(place).value),
    places,
  );
  expect(answers.length).toBeGreaterThan(3);
  const texts = await shown();
  expect(texts).toEqual(answers.map(({ format }, i) => formatValue(held[i], format)));
  expect(texts).not.toEqual(before);
});

test("the list holds every function and finds one by what it answers", async () => {
  const { page } = await open(WIDE);
  await page.getByRole("button", { name: "Functions" }).click();
  const { catalogue } = await import("../../src/catalogue");
  await expect(page.locator("details.function").count()).resolves.toBe(catalogue.length);
  await page.getByLabel(/Search by name/).fill("lateral pressure head");
  const entry = page.locator("#function-LATERAL_PRESSURE");
  await expect(entry.isVisible()).resolves.toBe(true);
  await entry.locator("summary").first().click();
  const text = await entry.innerText();
  for (const argument of ["inlet", "heads", "spacing", "regulator", "riser"])
    expect(text).toContain(argument);
  // The best match first, what does not match not at all, as in every other search of functions.
  await expect(page.locator("details.function:visible").first().getAttribute("id")).resolves.toBe(
    "function-LATERAL_PRESSURE",
  );
  await expect(page.locator("#function-STAKE_GRID").isVisible()).resolves.toBe(false);
  await page.keyboard.press("Escape");
  await expect(page.locator("#functions").isVisible()).resolves.toBe(false);
});

test("the cans give depths, uniformity, the pattern and the hours as direct calls do", async () => {
  const { page, misdeeds } = await open(WIDE, "#cans");
  await page
    .getByRole("radio", { name: "A block of cans among running sprinklers" })
    .check({ force: true });
  const first = page.getByLabel("Can in row 1, column 1, mL");
  await first.fill("55");
  const volumes = await page
    .locator(".can input")
    .evaluateAll((inputs) => inputs.map((input) => Number((input as HTMLInputElement).value)));
  expect(volumes[0]).toBe(55);
  const depths = volumes.map((volume) => callNumber("APPLICATION.CATCH", volume, 4, "US"));
  const cu = callNumber("APPLICATION.CU", [depths]);
  const du = callNumber("APPLICATION.DU", [depths]);
  // The test ran two hours.
  const rate = depths.reduce((sum, depth) => sum + depth, 0) / depths.length / 2;
  await page.waitForFunction(
    (shown) => document.querySelector(".map td.depth")?.textContent?.startsWith(shown),
    depths[0].toFixed(2),
    PATIENCE,
  );
  const said = await page.locator("#cans").innerText();
  expect(said).toContain(cu.toFixed(2));
  expect(said).toContain(du.toFixed(2));
  expect(said).toContain(`Run ${callNumber("SET.TIME", 1.4, rate).toFixed(1)} hours`);
  expect(said).toContain(`Run ${callNumber("SET.TIME", 1.4, rate, du).toFixed(1)} hours`);
  // A can that cannot count is left out by name; the others go on.
  const without = depths.slice(1);
  for (const [typed, reason] of [
    ["-3", "volume"],
    ["", "is blank"],
  ]) {
    await first.fill(typed);
    await page.waitForFunction(
      (wanted) => document.querySelector(".cans-hours .error")?.textContent?.includes(wanted),
      reason,
      PATIENCE,
    );
    await expect(page.locator(".cans-hours .error").innerText()).resolves.toContain(
      "row 1, column 1",
    );
    const said = await page.locator("#cans").innerText();
    expect(said).toContain(callNumber("APPLICATION.CU", [without]).toFixed(2));
    const mean = without.reduce((sum, depth) => sum + depth, 0) / without.length;
    expect(said).toContain(`Run ${callNumber("SET.TIME", 1.4, mean / 2).toFixed(1)} hours`);
  }
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("numbers pasted into the first can fill the others", async () => {
  const { page } = await open(WIDE, "#cans");
  await page.getByLabel("Can at 0 ft, mL").evaluate((input) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "40\n35\n28");
    input.dispatchEvent(new ClipboardEvent("paste", { clipboardData, cancelable: true }));
  });
  await expect(page.getByLabel("Can at 0 ft, mL").inputValue()).resolves.toBe("40");
  await expect(page.getByLabel("Can at 20 ft, mL").inputValue()).resolves.toBe("28");
});

test.each([
  ["wide", WIDE],
  ["390 px", NARROW],
  ["320 px", NARROWEST],
])("nothing runs over the edge: %s", async (_, options) => {
  for (const hash of ["", "#cans"]) {
    const { page } = await open(options, hash);
    await page.waitForSelector(hash === "" ? WHOLE : ".map", PATIENCE);
    await page.waitForTimeout(200);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBe(0);
  }
});

test("on a phone every page of every workbook is worked out without the grid", async () => {
  const { page } = await open(NARROW);
  const large: string[] = [];
  page.on("response", (response) => {
    if (Number(response.headers()["content-length"]) > 3e6) large.push(response.url());
  });
  for (const { id } of readyMadeSheets) {
    await page.selectOption("#sheet-choice", id);
    for (const tab of await page.locator(".tabs[aria-label='Pages of the sheet'] button").all()) {
      await tab.click();
      await page.waitForFunction(
        () => !document.querySelector("#reading")?.textContent?.includes("computing…"),
        undefined,
        PATIENCE,
      );
    }
  }
  expect(large).toEqual([]);
});

test("a phone gets the grid when it asks for it", async () => {
  const { page, misdeeds } = await open(NARROW);
  await page.getByRole("button", { name: "Spreadsheet" }).click();
  await page.waitForFunction(
    () => document.documentElement.dataset.grid === "ready",
    undefined,
    PATIENCE,
  );
  await expect(page.locator("#grid canvas").first().isVisible()).resolves.toBe(true);
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test.each([
  ["light", WIDE, ""],
  ["dark", WIDE, ""],
  ["light", NARROW, "#cans"],
  ["dark", NARROW, "#cans"],
] as const)(
  "nothing for the accessibility checker to find: %s %#",
  async (colorScheme, options, hash) => {
    const { page } = await open({ ...options, colorScheme }, hash);
    await page.waitForSelector(hash === "" ? WHOLE : ".map", PATIENCE);
    await page.getByRole("button", { name: "Functions" }).click();
    await expect(violations(page)).resolves.toEqual([]);
    await page.keyboard.press("Escape");
    await expect(violations(page)).resolves.toEqual([]);
  },
);

test("the keyboard reaches everything: skip link first, focus seen", async () => {
  const { page } = await open(WIDE);
  await page.waitForSelector(WHOLE, PATIENCE);
  await page.keyboard.press("Tab");
  await expect(page.evaluate(() => document.activeElement?.textContent)).resolves.toBe(
    "Skip to the content",
  );
  await page.keyboard.press("Enter");
  await expect(page.evaluate(() => document.activeElement?.id)).resolves.toBe("main");
  await page.keyboard.press("Tab");
  const outline = await page.evaluate(() => {
    const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement as Element);
    return `${outlineStyle} ${outlineWidth}`;
  });
  expect(outline).toBe("solid 3px");
});
