import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { launchBrowser, openPage, serve, type Served } from "../support/browser";

const NARROW: BrowserContextOptions = { viewport: { width: 390, height: 844 } };
const PATIENCE = { timeout: 90000 };

/** What the page fetches once it stands: the other workbooks among it. */
const LATER = /\/assets\/(?!trial\.)[^/]*\.js$/;

let browser: Browser;
let site: Served;

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serve();
});

afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
});

async function open(before: (page: Page) => Promise<unknown>): Promise<Page> {
  const { page } = await openPage(browser, site.address, {
    ...NARROW,
    before: async (opened) => void (await before(opened)),
  });
  await page.waitForSelector(".answers", PATIENCE);
  return page;
}

const isOpen = (page: Page, id: string) =>
  page.waitForFunction((start) => location.hash.startsWith(`#${start}/`), id, PATIENCE);

test("answers, inputs and cautions of the first workbook need nothing of the others", async () => {
  const page = await open((opened) => opened.route(LATER, (route) => route.abort()));
  await page.waitForSelector("#reading .cautions", PATIENCE);
  const answers = await page.locator(".answers dd").allInnerTexts();
  expect(answers.length).toBeGreaterThan(3);
  for (const answer of answers) expect(answer).toMatch(/\d/);
  const field = page.getByLabel("Sprinklers on the line");
  await field.fill("9");
  await field.blur();
  await expect(page.locator(".answers dd").allInnerTexts()).resolves.not.toEqual(answers);
});

test("a workbook chosen before it was fetched opens when it is there", async () => {
  let release = () => {};
  const held = new Promise<void>((resolve) => (release = resolve));
  const page = await open((opened) =>
    opened.route(LATER, async (route) => {
      await held;
      await route.continue();
    }),
  );
  await page.selectOption("#sheet-choice", "quote");
  await expect(page.evaluate(() => location.hash)).resolves.toMatch(/^#line-layout\//);
  release();
  await isOpen(page, "quote");
  await expect(page.locator("#sheet-choice").inputValue()).resolves.toBe("quote");
  // Back leads to where it was chosen.
  await page.goBack();
  await isOpen(page, "line-layout");
});

test("where it cannot be fetched, that is said, and the next try fetches it", async () => {
  const page = await open((opened) => opened.route(LATER, (route) => route.abort()));
  await page.selectOption("#sheet-choice", "season");
  await page.waitForFunction(
    () => document.querySelector(".work-said")?.textContent?.includes("could not be fetched"),
    undefined,
    PATIENCE,
  );
  await expect(page.locator("#sheet-choice").inputValue()).resolves.toBe("line-layout");
  await page.unroute(LATER);
  await page.selectOption("#sheet-choice", "season");
  await isOpen(page, "season");
});

test("an address of another workbook opens it", async () => {
  const { page, misdeeds } = await openPage(browser, `${site.address}#quote/si`, NARROW);
  await page.waitForSelector(".answers", PATIENCE);
  await expect(page.locator("#sheet-choice").inputValue()).resolves.toBe("quote");
  await expect(page.locator('input[value="SI"]').isChecked()).resolves.toBe(true);
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});
