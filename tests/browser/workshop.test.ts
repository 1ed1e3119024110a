import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { exercises, type Exercise } from "../../src/sheets/books/workshop/exercises";
import { en } from "../../src/sheets/books/workshop/words/en";
import { launchBrowser, openPage, serve, type Misdeeds, type Served } from "../support/browser";
import { call } from "../support/host";
import { loadWorkbooks } from "../support/open-workbook";

declare const axe: { run(): Promise<AxeResults> };

const PHONE: BrowserContextOptions = { viewport: { width: 375, height: 700 } };
const WALL: BrowserContextOptions = { viewport: { width: 1920, height: 1080 } };

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

async function open(
  hash: string,
  options: BrowserContextOptions,
  system = "US",
): Promise<{ page: Page; misdeeds: Misdeeds }> {
  const opened = await openPage(
    browser,
    `${site.address}workshop.html?units=${system}#${hash}`,
    options,
  );
  await opened.page.waitForSelector("h1");
  return opened;
}

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(readFileSync(join(require.resolve("axe-core"), "..", "axe.min.js"), "utf8"));
  const { violations: found } = await page.evaluate(() => axe.run());
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}

function over(page: Page): Promise<number> {
  return page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
}

function right({ call: { name, arguments: cells, pick } }: Exercise): number {
  const value = call(name, ...cells.map((cell) => (typeof cell === "object" ? [[...cell]] : cell)));
  return (pick === undefined ? value : (value as number[][])[pick[0] - 1][pick[1] - 1]) as number;
}

const numbers = en.lessons.map((_, i) => i + 1);

describe.each(["US", "SI"] as const)("on a phone, %s", (system) => {
  test.each(numbers)("lesson %i is done from its question to the right answer", async (number) => {
    const { page, misdeeds } = await open(`lesson-${number}`, PHONE, system);
    const lesson = en.lessons[number - 1];
    await expect(page.locator(".question").innerText()).resolves.toBe(lesson.question);
    await page.locator(".guess input").fill("1");
    // The picture moves with its first control.
    const before = await page.locator(".numbers, .plot").allInnerTexts();
    const slider = page.locator('.control input[type="range"]').first();
    await slider.focus();
    for (let i = 0; i < 6; i++) await page.keyboard.press("ArrowLeft");
    await expect(page.locator(".numbers, .plot").allInnerTexts()).resolves.not.toEqual(before);
    const mine = exercises(system).filter((exercise) => exercise.lesson === lesson.id);
    for (const [i, exercise] of mine.entries()) {
      const block = page.locator(".exercise").nth(i);
      await block.locator("input").fill("-77");
      await block.getByRole("button", { name: "Check" }).click();
      await expect(block.locator(".verdict").innerText()).resolves.toContain("Not yet");
      await block.getByRole("button", { name: "Hint" }).click();
      await block.getByRole("button", { name: "Second hint" }).click();
      await expect(block.locator(".help").innerText()).resolves.not.toMatch(/[{}]/);
      await block.locator("input").fill(`${right(exercise).toPrecision(4)} ${exercise.unit}`);
      await page.keyboard.press("Enter");
      await expect(block.locator(".verdict").innerText()).resolves.toContain("Right.");
    }
    await expect(page.locator(".score").innerText()).resolves.toContain(`${mine.length} of 18`);
    await expect(over(page)).resolves.toBe(0);
    await expect(violations(page)).resolves.toEqual([]);
    expect(misdeeds).toEqual({ errors: [], outside: [] });
  });
});

test.each(["US", "SI"] as const)(
  "the lesson's set is the plan's, as the workbooks have it (%s)",
  async (system) => {
    const book = await loadWorkbooks().openWorkbook("line-layout", system);
    const hours = book.values().SetHours as number;
    book.close();
    const { page } = await open("lesson-3", PHONE, system);
    await expect(page.locator(".picture .said").innerText()).resolves.toContain(hours.toFixed(1));
  },
);

test("an answer that was shown is no point", async () => {
  const { page } = await open("lesson-2", PHONE);
  const block = page.locator(".exercise").first();
  await block.getByRole("button", { name: "Show me" }).click();
  await expect(block.locator(".help").innerText()).resolves.toContain(
    "96.25 × 4.1 ÷ (45 × 50) = 0.175",
  );
  await block.locator("input").fill("0.175");
  await page.keyboard.press("Enter");
  await expect(block.locator(".verdict").innerText()).resolves.toContain("Right.");
  await expect(page.locator(".score").innerText()).resolves.toContain("0 of 18");
});

test("on the wall: nothing under 28 px, all on one screen, arrow keys turn", async () => {
  const { page } = await open("slide-1", WALL);
  for (const number of numbers) {
    await page.waitForFunction(
      (n) => document.documentElement.dataset.shown === `#slide-${n}`,
      number,
    );
    const found = await page.evaluate(() => {
      const sizes = [...document.querySelectorAll("main *")]
        .filter((element) => element.getClientRects().length > 0)
        .filter((element) =>
          [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()),
        )
        .map((element) => {
          const svg = element.closest("svg");
          const scale = svg === null ? 1 : (svg.getScreenCTM()?.a ?? 1);
          return parseFloat(getComputedStyle(element).fontSize) * scale;
        });
      return { least: Math.min(...sizes), tall: document.documentElement.scrollHeight };
    });
    expect([number, found.least >= 28, found.tall <= 1080]).toEqual([number, true, true]);
    await expect(violations(page)).resolves.toEqual([]);
    await page.keyboard.press("ArrowRight");
  }
  await page.keyboard.press("ArrowLeft");
  await page.waitForFunction(() => document.documentElement.dataset.shown === "#slide-10");
  await page.keyboard.press("Escape");
  await page.waitForFunction(() => document.documentElement.dataset.shown === "#lesson-10");
});

test.each(["handout", "key"])("the %s prints on one page", async (hash) => {
  const { page } = await open(hash, WALL);
  for (const format of ["Letter", "A4"]) {
    const pdf = (await page.pdf({ format })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBe(1);
  }
  const blanks = await page.locator(".handout .blank").count();
  expect(hash === "key" ? blanks === 0 : blanks >= 20).toBe(true);
  await expect(violations(page)).resolves.toEqual([]);
});

test("the trainer's page has every lesson, its link, and the key of all exercises", async () => {
  const { page } = await open("trainer", PHONE, "SI");
  await expect(page.locator(".trained").count()).resolves.toBe(en.lessons.length);
  await expect(page.locator(".answers li").count()).resolves.toBe(exercises("SI").length);
  await expect(page.locator(".trained a").nth(2).getAttribute("href")).resolves.toBe(
    `${site.address}workshop.html?units=SI#lesson-3`,
  );
  await expect(over(page)).resolves.toBe(0);
  await expect(violations(page)).resolves.toEqual([]);
});

test.each(["light", "dark"] as const)(
  "contents, %s: nothing for the checker to find",
  async (colorScheme) => {
    const { page } = await open("start", { ...PHONE, colorScheme });
    await expect(page.locator(".contents li").count()).resolves.toBe(en.lessons.length);
    await expect(violations(page)).resolves.toEqual([]);
  },
);
