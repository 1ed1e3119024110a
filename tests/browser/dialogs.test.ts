import { readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { rmSync, writeFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { people } from "../support/people";

declare const axe: { run(context: string): Promise<AxeResults> };

const { address, someone } = people();
const rules = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** Places in the menu of a piece of work of one's own, whatever the language. */
const MENU = [
  "rename",
  "copy",
  "blank",
  "sample",
  "delete",
  "use",
  "save",
  "values",
  "open",
  "link",
];

async function choose(page: Page, entry: string): Promise<void> {
  await page.locator(".work-buttons summary").click();
  const index = entry === "files" ? MENU.length : MENU.indexOf(entry);
  await page.locator(".menu-entries button").nth(index).click();
}

/** What axe finds in the question that is open, and whether the keyboard is in it. */
async function faults(page: Page): Promise<string[]> {
  await page.waitForSelector("dialog[open]");
  return page.evaluate(async () => {
    const { violations } = await axe.run("dialog");
    const dialog = document.querySelector("dialog");
    return [
      ...violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`)),
      ...(dialog?.contains(document.activeElement) === true ? [] : ["the keyboard is elsewhere"]),
      ...(dialog !== null && dialog.scrollWidth > dialog.clientWidth ? ["cut at the side"] : []),
    ];
  });
}

const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.closest("summary, label, button")?.textContent ?? "");

const SPANISH = { locale: "es-MX" };
const ENGLISH = { locale: "en-US" };

test.each([
  ["English, light", { ...ENGLISH, colorScheme: "light" as const }],
  ["English, dark", { ...ENGLISH, colorScheme: "dark" as const }],
  ["Spanish, light", { ...SPANISH, colorScheme: "light" as const }],
  ["Spanish, dark", { ...SPANISH, colorScheme: "dark" as const }],
])(
  "every question is clean and holds the keyboard; Esc leaves it and brings the keyboard back: %s",
  async (_, options) => {
    const context = await someone({ ...options, viewport: { width: 375, height: 800 } });
    // Without it the link is shown to be copied by hand.
    await context.clearPermissions();
    const page = await context.newPage();
    await page.goto(`${address()}#line-layout/us/Line`);
    await page.waitForSelector(".page-view");
    await page.evaluate(rules);
    await page.evaluate(() => {
      Object.defineProperty(navigator, "clipboard", { value: undefined });
    });
    const field = page.locator("#reading .inputs input.number").first();
    await field.fill("11");
    await field.blur();
    await page.waitForFunction(() => location.hash.includes("piece") || location.hash.length > 20);
    const broken = join(tmpdir(), `fieldsum-${process.pid}.xlsx`);
    writeFileSync(broken, "no workbook");
    const found: Record<string, string[]> = {};
    const titles = new Set<string>();
    const opener = await page.locator(".work-buttons summary").innerText();
    const leave = async (what: string, where: string) => {
      found[what] = await faults(page);
      titles.add(await page.locator("dialog h2").innerText());
      await page.keyboard.press("Escape");
      await page.waitForSelector("dialog", { state: "detached" });
      expect([what, (await focused(page)).trim()]).toEqual([what, where]);
    };
    try {
      for (const entry of ["rename", "delete", "use", "link", "files"]) {
        await choose(page, entry);
        await leave(entry, opener.trim());
      }
      const [chooser] = await Promise.all([page.waitForEvent("filechooser"), choose(page, "open")]);
      await chooser.setFiles(broken);
      await leave("refused", opener.trim());
      await page.locator(".systems input").nth(1).focus();
      await page.keyboard.press("Space");
      await page.waitForSelector("dialog[open]");
      found.units = await faults(page);
      titles.add(await page.locator("dialog h2").innerText());
      await page.keyboard.press("Escape");
      await page.waitForSelector("dialog", { state: "detached" });
      expect(await page.evaluate(() => document.activeElement?.closest(".systems") !== null)).toBe(
        true,
      );
      expect(await page.locator(".systems input").first().isChecked()).toBe(true);
      await page.locator(".work-buttons summary").click();
      found.menu = (await page.evaluate(() => axe.run(".work-bar"))).violations.map(({ id }) => id);
      await page.keyboard.press("Escape");
    } finally {
      rmSync(broken);
    }
    expect(titles.size).toBe(7);
    for (const title of titles)
      if (options.locale === "es-MX")
        expect(title).not.toMatch(/\b(the|is|not|opened|Delete|Name|From|units|plan in)\b/);
    expect(found).toEqual(Object.fromEntries(Object.keys(found).map((what) => [what, []])));
  },
);
