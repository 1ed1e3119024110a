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
    const row = page.locator(".stacks tbody tr").first();
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
    .locator(".stacks tbody tr")
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
    const page = await visit(`#${id}/us/`, 390);
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
