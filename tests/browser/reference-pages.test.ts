import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { builtReference } from "../support/built";
import { launchBrowser, type Misdeeds, openPage, serve, type Served } from "../support/browser";

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

let browser: Browser;
let server: Served;

beforeAll(async () => {
  browser = await launchBrowser();
  server = await serve();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

function open(path: string, width = 1280): Promise<{ page: Page; misdeeds: Misdeeds }> {
  return openPage(browser, `${server.address}${path}`, { viewport: { width, height: 900 } });
}

/** Runs the accessibility rules; the policy of the page forbids adding a script any other way. */
async function faultsOf(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe: rules } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await rules.run();
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
}

const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test("a function's page computes its example, follows an edit, and names what is wrong", async () => {
  const { page, misdeeds } = await open("reference/pipe-friction.html");
  const result = page.locator("#result");
  await result.locator(".value").waitFor();
  expect(Number(await result.innerText())).toBeCloseTo(1.7302, 3);

  await page.getByLabel("length").fill("200");
  expect(Number(await result.innerText())).toBeCloseTo(2 * 1.7302, 2);
  expect(await page.locator("#formula").innerText()).toBe(
    '=IRRIG.PIPE.FRICTION(50, 2.067, 200, "US", 150)',
  );

  await page.getByLabel("inside").fill("-1");
  expect(await result.innerText()).toBe("#VALUE! inside must be above 0 in; got -1");

  await page.getByLabel("inside").fill("2.0.67");
  expect(await result.innerText()).toContain("Write a number");

  await page.getByLabel("inside").fill("52.5");
  await page.getByLabel(/^units/).selectOption('"SI"');
  expect(Number(await result.innerText())).toBeGreaterThan(0);
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("a function that spills shows its table", async () => {
  const { page, misdeeds } = await open("reference/lateral-profile.html", 390);
  await page.locator("#result table").waitFor();
  expect(await page.locator("#result tr").count()).toBe(15);
  expect(await sideways(page)).toBe(0);
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("every function's page computes its example without a fault", async () => {
  const { page, misdeeds } = await open("reference/index.html");
  for (const help of builtReference().functions) {
    await page.goto(`${server.address}${help.page}`);
    await page.locator("#result > *").waitFor();
    const error = page.locator("#result .error");
    expect([help.name, await error.allInnerTexts()]).toEqual([help.name, []]);
  }
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("the list finds a function by a question, and keeps the question in the address's way", async () => {
  const { page, misdeeds } = await open(
    "reference/index.html?q=how%20long%20do%20I%20run%20a%20set",
  );
  await page.locator("#found li").first().waitFor();
  expect(await page.locator("#found li").first().innerText()).toContain("SET.TIME");
  await page.getByLabel("What do you want to know?").fill("zzzz");
  expect(await page.locator("#found-count").innerText()).toContain("No function answers");
  await page.getByLabel("What do you want to know?").fill("");
  const { length } = builtReference().functions;
  expect(await page.locator("#families li:visible").count()).toBe(length);
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("every link of the static pages leads to something", async () => {
  const { page } = await open("reference/index.html");
  const found = new Set<string>();
  const paths = ["reference/index.html", "reference/lateral-pressure.html", "sources.html"];
  for (const path of [...paths, "support.html"]) {
    await page.goto(`${server.address}${path}`);
    const links = await page
      .locator("a[href]")
      .evaluateAll((elements) => elements.map((element) => (element as HTMLAnchorElement).href));
    for (const address of links) found.add(address);
  }
  const dead: string[] = [];
  for (const address of found) {
    const [file, part] = address.split("#");
    const answer = await page.request.get(file);
    if (!answer.ok() || (part && !(await answer.text()).includes(`id="${part}"`)))
      dead.push(address);
  }
  expect(found.size).toBeGreaterThan(50);
  expect(dead).toEqual([]);
});

describe.each(["light", "dark"] as const)("accessible in %s", (colorScheme) => {
  test.each([
    "reference/index.html",
    "reference/pump-npsh.html",
    "reference/lateral-profile.html",
    "sources.html",
    "support.html",
  ])("%s", async (path) => {
    const { page } = await openPage(browser, `${server.address}${path}`, {
      viewport: { width: 390, height: 844 },
      colorScheme,
    });
    expect(await faultsOf(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
  });
});
