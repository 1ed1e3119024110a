import type { Browser, Page } from "playwright-core";
import { launchBrowser, openPage, serve, type Served } from "../support/browser";

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

/** Without the grid: the first view judges and computes too. */
async function open(sheet: string): Promise<Page> {
  const { page } = await openPage(browser, `${site.address}#${sheet}/us`, {
    viewport: { width: 390, height: 844 },
  });
  await page.waitForSelector("#reading:not(.unfinished) .answers");
  return page;
}

test.each([
  ["a fraction", "13.5", "got 13.5"],
  ["too many", "600", "got 600"],
  ["words", "22 acres", "got 22 acres"],
  ["a blank", "", "got a blank"],
])("%s where a whole number is due is marked and named first", async (_, typed, got) => {
  const page = await open("line-layout");
  const field = page.getByLabel("Sprinklers on the line");
  const hint = page.locator(`[id="${await field.getAttribute("aria-describedby")}"]`);
  await expect(field.getAttribute("aria-invalid")).resolves.toBe("false");
  await field.fill(typed);
  await field.blur();
  const sentence = `Sprinklers on the line must be a whole number from 1 to 60; ${got}.`;
  await page.waitForFunction(
    (text) => document.querySelector(".answers dd")?.textContent?.includes(text),
    sentence,
  );
  await expect(field.getAttribute("aria-invalid")).resolves.toBe("true");
  await expect(hint.innerText()).resolves.toBe(sentence);
  await field.fill("12");
  await field.blur();
  await page.waitForFunction(
    (text) => !document.querySelector("#reading")?.textContent?.includes(text),
    sentence,
  );
  await expect(field.getAttribute("aria-invalid")).resolves.toBe("false");
  await page.context().close();
});

test("a choice shows what the cell holds and writes what the cell takes", async () => {
  const page = await open("line-layout");
  const compact = page.locator("select", { has: page.locator('option[value="TRUE"]') }).first();
  await expect(compact.inputValue()).resolves.toBe("FALSE");
  await compact.selectOption("TRUE");
  await expect(compact.inputValue()).resolves.toBe("TRUE");
  await expect(compact.getAttribute("aria-invalid")).resolves.toBe("false");
  await page.context().close();
});
