import type { Page } from "playwright-core";
import { readyMadeSheets } from "../../src/sheets";
import { englishLeft } from "../support/english-left";
import { people } from "../support/people";

const { address, someone } = people();

async function visit(path: string, width = 375): Promise<Page> {
  const context = await someone({ locale: "es-AR", viewport: { width, height: 800 } });
  const page = await context.newPage();
  await page.goto(address() + path);
  return page;
}

test("explore", async () => {
  const page = await visit("index.html");
  const out: Record<string, string[]> = {};
  await page.locator("#reading > *").first().waitFor();
  for (const sheet of readyMadeSheets) {
    for (const { name } of sheet.pages("SI")) {
      await page.goto(`${address()}index.html#${sheet.id}/si/${encodeURIComponent(name)}`);
      await page.locator("#reading > *").first().waitFor();
      await page.waitForTimeout(700);
      out[`${sheet.id} ${name}`] = await englishLeft(page);
    }
  }
  for (const hash of ["start", "start/line", "cans"]) {
    await page.goto(`${address()}index.html#${hash}`);
    await page.waitForTimeout(1500);
    out[hash] = await englishLeft(page);
  }
  await page.goto(`${address()}workshop.html`);
  for (const hash of ["start", "trainer", "handout", "key", "slides", "lesson-1", "lesson-2", "lesson-6", "lesson-10"]) {
    await page.evaluate((to) => (location.hash = to), hash);
    await page.waitForTimeout(1500);
    out[hash] = await englishLeft(page);
  }
  const seen = new Set<string>();
  for (const [k, v] of Object.entries(out)) { const fresh = v.filter((t) => !seen.has(t)); fresh.forEach((t) => seen.add(t)); require("fs").appendFileSync("/tmp/ws/left.txt", `== ${k}\n${fresh.join("\n")}\n`); }
}, 300000);
