import { readFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { BrowserContextOptions, Page } from "playwright-core";
import { people } from "../support/people";

declare const axe: { run(context: string): Promise<AxeResults> };

const WIDE: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };
const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, hasTouch: true };
const SMALL: BrowserContextOptions = { viewport: { width: 320, height: 640 } };
const PATIENCE = { timeout: 60000 };

const { address, someone } = people();

async function visit(hash: string, options: BrowserContextOptions = WIDE): Promise<Page> {
  const context = await someone(options);
  const page = await context.newPage();
  await page.goto(address() + hash);
  return page;
}

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

async function proposeSample(page: Page): Promise<void> {
  await button(page, "Fill in the sample field").click();
  await button(page, "Propose a plan").click();
  await page.waitForSelector(".proposed", PATIENCE);
}

async function proposedValue(page: Page, what: string): Promise<string> {
  const row = page.locator(".proposed tr", { has: page.getByRole("rowheader", { name: what }) });
  return row.locator(".value").innerText();
}

async function faultsOf(page: Page): Promise<string[]> {
  await page.evaluate(readFileSync(require.resolve("axe-core/axe.min.js"), "utf8"));
  const { violations } = await page.evaluate(() => axe.run("body"));
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}

const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test("a plan opens in the workbook with the numbers that were proposed, and is kept; Back leads to it", async () => {
  const page = await visit("#start");
  await page.waitForSelector(".start-form");
  await page.getByLabel("Name of the field").fill("North forty");
  await proposeSample(page);
  const heads = await proposedValue(page, "Sprinklers on each line");
  const spacing = await proposedValue(page, "Sprinkler spacing");
  const inlet = await proposedValue(page, "Pressure at the inlet of a line");
  const hours = await proposedValue(page, "Set time");
  await button(page, "Open in Line layout").click();
  await page.waitForURL(/#line-layout\/us\/Line\//);
  expect(await page.locator("#work-choice").innerText()).toContain("North forty");
  expect(await page.getByLabel("Sprinklers on the line").first().inputValue()).toBe(heads);
  expect(await page.getByLabel("Sprinkler spacing").first().inputValue()).toBe(
    String(parseFloat(spacing)),
  );
  const reading = await page.locator("#reading").innerText();
  expect(reading).toContain("All 15 checks pass.");
  expect(reading).toContain(inlet.split(" ")[0]);
  expect(reading).toContain(`Run ${hours.replace(" h", "")} hours`);
  await page.reload();
  await page.waitForSelector("#work-choice");
  expect(await page.getByLabel("Sprinklers on the line").first().inputValue()).toBe(heads);
  await page.goBack();
  await page.waitForSelector(".start-form", PATIENCE);
  expect(page.url()).toContain("#start");
  expect(await page.getByLabel("Length along the lines").inputValue()).toBe("630");
  await page.goForward();
  await page.waitForURL(/#line-layout/);
  expect(await page.locator("#sheet").isVisible()).toBe(true);
}, 120000);

test("wrong and blank fields say so at the field, nothing is proposed, and a change takes the old plan away", async () => {
  const page = await visit("#start", PHONE);
  await page.waitForSelector(".start-form");
  await button(page, "Propose a plan").click();
  expect(await page.locator(".start-status").innerText()).toContain("Nothing is proposed yet");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-invalid"))).toBe(
    "true",
  );
  await proposeSample(page);
  await page.getByLabel("Length along the lines").fill("x");
  expect(await page.locator(".proposed").count()).toBe(0);
  expect(await page.locator(".start-status").innerText()).toContain("Something was changed");
  await button(page, "Propose a plan").click();
  expect(await page.locator(".start .fault").allInnerTexts()).toEqual([
    'Length along the lines: "x" is not a number. One from 20 to 20000 is due.',
  ]);
  expect(await page.locator(".proposed").count()).toBe(0);
});

test("other units convert what was typed: 630 ft never becomes 630 m", async () => {
  const page = await visit("#start");
  await page.waitForSelector(".start-form");
  await button(page, "Fill in the sample field").click();
  await page.locator("#start").getByRole("radio", { name: "SI: m, kPa, m³/h" }).check();
  expect(await page.getByLabel("Length along the lines").inputValue()).toBe("192.024");
  expect(await page.getByLabel("Wetted diameter of a sprinkler").inputValue()).toBe("28");
  await page.locator("#start").getByRole("radio", { name: "US: ft, psi, gpm" }).check();
  expect(Number(await page.getByLabel("Length along the lines").inputValue())).toBeCloseTo(630, 2);
});

test("by keyboard alone: from the first screen to a plan, and a minus without a minus key", async () => {
  const page = await visit("");
  await page.waitForSelector("#work-choice");
  await page.locator("#to-start").focus();
  await page.keyboard.press("Enter");
  await page.waitForSelector(".start-form");
  await page.getByLabel("Rise along the length", { exact: true }).focus();
  await page.keyboard.type("4");
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Enter");
  expect(await page.getByLabel("Rise along the length", { exact: true }).inputValue()).toBe("-4");
  await button(page, "Fill in the sample field").focus();
  await page.keyboard.press("Enter");
  await page.locator("#start").getByLabel("Wind", { exact: true }).focus();
  await page.keyboard.press("Enter");
  await page.waitForSelector(".proposed", PATIENCE);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Proposed");
});

test("on a phone a grower's answers stay in sight while a field is changed, and no old number stays", async () => {
  const page = await visit("#start/line", PHONE);
  await page.waitForSelector(".line-figures dd");
  const bar = page.locator(".line-bar");
  const inSight = async () => {
    const box = await bar.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 999)).toBeLessThanOrEqual(845);
  };
  await inSight();
  expect(await bar.innerText()).toContain("Yes. The last sprinkler gets");
  const inlet = page.getByLabel("Pressure at the inlet");
  expect(await inlet.getAttribute("inputmode")).toBe("decimal");
  await inlet.fill("40");
  await page.waitForFunction(
    () => document.querySelector(".line-answer")?.textContent?.startsWith("No.") === true,
  );
  await inSight();
  await inlet.fill("");
  await page.waitForFunction(
    () =>
      document.querySelector(".line-answer")?.textContent?.startsWith("Nothing is said") === true,
  );
  expect(await page.locator(".line-figures dd").count()).toBe(0);
  expect(await page.locator(".start .fault").innerText()).toContain("blank");
  await inlet.fill("50");
  await page.waitForSelector(".line-figures dd");
  await button(page, "Open these in Line layout").click();
  await page.waitForURL(/#line-layout\/us\/Line\//);
  expect(await page.locator("#work-choice").innerText()).toContain("what if");
});

test("Back and Forward go between the two starts and the cans", async () => {
  const page = await visit("#start");
  await page.waitForSelector(".start-form");
  await page.getByRole("link", { name: "My line" }).click();
  await page.waitForSelector(".line-figures dd");
  await page.getByRole("link", { name: "Catch cans" }).click();
  await page.waitForSelector("#cans h1");
  await page.goBack();
  await page.waitForSelector(".line-figures dd");
  await page.goBack();
  await page.waitForSelector(".start-form");
});

test("in Spanish the start speaks Spanish to the last reason", async () => {
  const page = await visit("#start", { ...WIDE, locale: "es-MX" });
  await page.waitForSelector(".start-form");
  await button(page, "Llenar con el campo de muestra").click();
  await button(page, "Proponer un plan").click();
  await page.waitForSelector(".proposed", PATIENCE);
  const text = await page.locator("#start").innerText();
  expect(text).not.toMatch(/\b(the|with|line|pressure|spacing)\b(?![.A-Z])/);
  expect(await button(page, "Abrir en Trazado de una línea").count()).toBe(1);
});

describe.each(["light", "dark"] as const)(
  "accessible in %s, and no wider than the screen",
  (scheme) => {
    test.each([
      ["#start", WIDE],
      ["#start", PHONE],
      ["#start", SMALL],
      ["#start/line", WIDE],
      ["#start/line", PHONE],
      ["#start/line", SMALL],
    ] as const)("%s", async (hash, options) => {
      const page = await visit(hash, { ...options, colorScheme: scheme });
      if (hash === "#start") {
        await page.waitForSelector(".start-form");
        await button(page, "Propose a plan").click();
        expect(await faultsOf(page)).toEqual([]);
        await proposeSample(page);
      } else await page.waitForSelector(".line-figures dd");
      expect(await faultsOf(page)).toEqual([]);
      expect(await sideways(page)).toBeLessThanOrEqual(0);
    });
  },
);
