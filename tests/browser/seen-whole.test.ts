import type { BrowserContextOptions, Page } from "playwright-core";
import { packContents } from "../../src/trial/files/link";
import { people } from "../support/people";

const PATIENCE = { timeout: 120000 };

const { address, someone } = people();

async function visit(hash: string, width: number, more: BrowserContextOptions = {}): Promise<Page> {
  const context = await someone({ viewport: { width, height: 800 }, ...more });
  const page = await context.newPage();
  await page.goto(address() + hash);
  await page.waitForSelector(".page-view");
  return page;
}

/** The bill, once the grid has worked it out. */
async function bill(page: Page): Promise<void> {
  await page.waitForSelector(".spilled table.stacks tbody tr:nth-child(10)", PATIENCE);
}

const hiddenSideways = (page: Page) =>
  page.evaluate(() => {
    const frame = document.querySelector(".spilled .scrolled");
    return frame === null ? -1 : frame.scrollWidth - frame.clientWidth;
  });

test.each([320, 390])(
  "at %d px a row of the bill is a block: the item, and each figure with its column's name",
  async (width) => {
    const page = await visit("#quote/us/Quote", width);
    await bill(page);
    expect(await hiddenSideways(page)).toBe(0);
    const row = page.locator(".spilled .stacks tbody tr").first();
    const cells = await row.locator("td").evaluateAll((all) =>
      all.map((cell) => ({
        text: cell.textContent ?? "",
        column: getComputedStyle(cell, "::before").content,
        top: cell.getBoundingClientRect().top,
      })),
    );
    expect(cells[0].text).toContain("tubing");
    expect(new Set(cells.map(({ top }) => top)).size).toBe(cells.length);
    for (const { text, column } of cells.slice(1))
      if (text !== "") expect(column).toMatch(/^"[A-Za-z]/);
    expect(cells.at(-1)?.text).toMatch(/^[\d,]+\.\d\d$/);
  },
);

test("at 1280 px the bill shows its prices without scrolling, items left and figures right", async () => {
  const page = await visit("#quote/us/Quote", 1280);
  await bill(page);
  expect(await hiddenSideways(page)).toBe(0);
  const aligned = await page
    .locator(".spilled .stacks tbody tr")
    .first()
    .locator("td")
    .evaluateAll((cells) => cells.map((cell) => getComputedStyle(cell).textAlign));
  expect(aligned[0]).toBe("left");
  expect(aligned.at(-1)).toBe("right");
});

test("what waits for the grid says computing, a table too", async () => {
  const context = await someone({ viewport: { width: 390, height: 800 } });
  const page = await context.newPage();
  // A formula of one's own, of functions that the grid alone knows.
  const given = packContents(new Map([["Layout!D10", { formula: "=ROUND(EXP(LN(14)),0)" }]]));
  await page.goto(`${address()}#quote/us/Quote?with=${given}`);
  await page.waitForFunction(
    () => document.querySelector(".spilled")?.textContent?.includes("computing…") === true,
  );
  await bill(page);
  expect(await page.locator("#reading").innerText()).not.toContain("computing…");
});

test.each(["quote", "line-layout", "season", "spacing-what-if", "workshop"])(
  "on every page of %s a field has a name of words, and no number is cut",
  async (id) => {
    const page = await visit(`#${id}/us/`, 320);
    const tabs = page.locator("#choose .tabs:not(.sides) button");
    const wrong: string[] = [];
    for (let index = 0; index < (await tabs.count()); index++) {
      await tabs.nth(index).click();
      wrong.push(
        ...(await page.evaluate(() => {
          const found: string[] = [];
          for (const control of document.querySelectorAll<HTMLInputElement | HTMLSelectElement>(
            "#reading input, #reading select",
          )) {
            const name = control.getAttribute("aria-label") ?? control.labels?.[0]?.textContent;
            if (!/[A-Za-z]{2}/.test(name ?? "") || /column \d+, row \d+/i.test(name ?? ""))
              found.push(`field "${name ?? ""}"`);
            if (control.classList.contains("number") && control.scrollWidth > control.clientWidth)
              found.push(`${name ?? ""} is cut: ${control.value}`);
          }
          return found;
        })),
      );
    }
    expect(wrong).toEqual([]);
  },
);

test("sentences longer than a figure stand at the left, under their label", async () => {
  const page = await visit("#quote/us/Quote", 1280);
  const aligned = await page
    .locator("dd.sentence")
    .evaluateAll((all) => all.map((one) => getComputedStyle(one).textAlign));
  expect(aligned.length).toBeGreaterThan(0);
  expect(new Set(aligned)).toEqual(new Set(["left"]));
});

test("a lesson reads from the guess to the field, each formula under its result", async () => {
  const page = await visit("#workshop/us/Pressure", 390);
  const told = await page.locator("#sheet .reading").innerText();
  const order = [
    "Water rubs along the wall",
    "Guess first",
    "Pressure lost in the pipe below",
    "Guess 5",
    "By function",
    "=IRRIG.PIPE.FRICTION(PipeFlow",
    "By hand, in words",
    "1050 times",
    "In the field",
    "Read a gauge at each end of the feeder",
    "Source:",
  ].map((text) => told.indexOf(text));
  expect(order).toEqual([...order].sort((one, other) => one - other));
  expect(order[0]).toBeGreaterThanOrEqual(0);
  const under = await page.locator(".values > div:has(.formula)").evaluateAll((all) =>
    all.map((one) => {
      const [value, formula] = one.querySelectorAll("dd");
      return formula.getBoundingClientRect().top - value.getBoundingClientRect().bottom;
    }),
  );
  expect(under.length).toBeGreaterThan(5);
  expect(Math.min(...under)).toBeGreaterThanOrEqual(0);
});

test("what is wrong is told by its cause, from another page too, and leads there", async () => {
  const page = await visit("#quote/us/Layout", 390);
  const spacing = page.getByLabel("Sprinkler spacing", { exact: true });
  await spacing.fill("-5");
  await spacing.blur();
  const tabs = page.locator("#choose .tabs:not(.sides)");
  await tabs.getByRole("button", { name: "Quote", exact: true }).click();
  const causes = page.locator(".causes > ul > li");
  await causes.first().waitFor();
  expect(await causes.count()).toBe(1);
  expect(await causes.innerText()).toContain("Layout: Sprinkler spacing");
  expect(await causes.innerText()).toMatch(/must be a number from .* got -5/);
  expect(await causes.locator("summary").innerText()).toMatch(/\d+ results follow from it/);
  await causes.locator("summary").click();
  expect(await causes.locator("details").innerText()).toContain(
    "Layout: Lowest pressure at a nozzle",
  );
  await causes.getByRole("button").click();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe(
    await spacing.getAttribute("id"),
  );
  await spacing.fill("45");
  await spacing.blur();
  await page.waitForSelector(".causes", { state: "detached" });
});

test("a long text is typed into a field as high as the text, and read from the left", async () => {
  const page = await visit("#quote/us/Quote", 390);
  const terms = page.getByLabel("Terms");
  const before = await terms.evaluate((field) => field.clientHeight);
  await terms.fill("Half with the order, the rest on delivery and no later than that. ".repeat(5));
  const [height, hidden, aligned, tag] = await terms.evaluate((field) => [
    field.clientHeight,
    field.scrollHeight - field.clientHeight,
    getComputedStyle(field).textAlign,
    field.tagName,
  ]);
  expect([hidden, aligned, tag]).toEqual([0, "left", "TEXTAREA"]);
  expect(height).toBeGreaterThan(before);
});
