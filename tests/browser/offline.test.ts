import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { built, launchBrowser, serve, type Served } from "../support/browser";

const PATIENCE = { timeout: 120000 };

let browser: Browser;
let folder: string;
let site: Served;
let context: BrowserContext;

beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), "pages-"));
  cpSync(built, folder, { recursive: true, filter: (path) => !path.includes("sheets") });
  site = await serve(folder);
  context = await browser.newContext({
    serviceWorkers: "allow",
    viewport: { width: 1280, height: 800 },
  });
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function visit(path = ""): Promise<Page> {
  const page = await context.newPage();
  await page.goto(site.address + path);
  return page;
}

function answers(page: Page): Promise<string> {
  return page.locator(".answers").innerText();
}

async function answered(page: Page): Promise<string> {
  await page.waitForFunction(
    () => /All \d+ checks pass/.test(document.querySelector(".answers")?.textContent ?? ""),
    undefined,
    PATIENCE,
  );
  return answers(page);
}

function newest(page: Page): Promise<string | undefined> {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return registration?.waiting?.state ?? registration?.active?.state;
  });
}

let before = "";

test("after the first visit the pages work without a network: answers, edits, the grid, the workshop", async () => {
  const first = await visit();
  before = await answered(first);
  await first.waitForFunction(
    () => navigator.serviceWorker.ready.then(() => true),
    undefined,
    PATIENCE,
  );
  await first.close();

  await context.setOffline(true);
  const page = await visit();
  expect(await answered(page)).toBe(before);
  const spacing = page.getByLabel("Sprinkler spacing").first();
  await spacing.fill("40");
  await spacing.blur();
  await page.waitForFunction(
    (old) => document.querySelector(".answers")?.textContent !== old,
    before,
    PATIENCE,
  );
  expect(await answers(page)).not.toBe(before);
  await page.waitForFunction(() => document.querySelector(".chosen") !== null, undefined, PATIENCE);
  await page.getByRole("button", { name: "Functions" }).click();
  await page.waitForSelector("#functions input", PATIENCE);
  await page.close();

  const workshop = await visit("workshop.html#lesson-1");
  await workshop.getByRole("heading", { level: 1 }).waitFor(PATIENCE);
  expect(await workshop.locator("svg").count()).toBeGreaterThan(0);
  await workshop.close();
});

test("nothing but files of this folder is kept, and nothing of the pages inside Excel", async () => {
  const page = await visit();
  const kept = await page.evaluate(async () => {
    const names = await caches.keys();
    const requests = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
    return requests.flat().map(({ url }) => url);
  });
  expect(kept.length).toBeGreaterThan(20);
  expect(kept.filter((url) => !url.startsWith(site.address))).toEqual([]);
  expect(
    kept.filter((url) => /taskpane|functions\.html|functions\.json|manifest/.test(url)),
  ).toEqual([]);
  await page.close();
});

test("a newer build is offered, loaded when asked, and replaces the one before as a whole", async () => {
  await context.setOffline(false);
  const index = join(folder, "index.html");
  writeFileSync(index, readFileSync(index, "utf8").replace("<html ", '<html data-build="newer" '));
  const worker = join(folder, "offline.js");
  const script = readFileSync(worker, "utf8");
  const revised = script.replace(/(url:"index\.html",revision:")[0-9a-f]+/, "$1newer");
  expect(revised).not.toBe(script);
  writeFileSync(worker, revised);

  const page = await visit();
  const build = () => document.documentElement.dataset.build;
  expect(await page.evaluate(build)).toBeUndefined();
  const field = page.getByLabel("Sprinkler spacing").first();
  await field.fill("42");
  await field.blur();
  await page.getByText("There is a newer version of this page.").waitFor(PATIENCE);
  expect(await newest(page)).toBe("installed");
  await page.getByRole("button", { name: "Load it" }).click();
  await page.waitForFunction(
    () => document.documentElement.dataset.build === "newer",
    undefined,
    PATIENCE,
  );
  // What was typed is a piece of work of one's own, and still there.
  await page.waitForFunction(
    () => [...document.querySelectorAll("input")].some(({ value }) => value === "42"),
    undefined,
    PATIENCE,
  );
  const revisions = await page.evaluate(async () => {
    const [name] = await caches.keys();
    const requests = await (await caches.open(name)).keys();
    return requests.map(({ url }) => url).filter((url) => url.includes("index.html"));
  });
  expect(revisions).toHaveLength(1);
  expect(revisions[0]).toContain("newer");
  await page.close();
});
