import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { builtReference } from "../support/built";
import { launchBrowser, openPage, serve, type Served } from "../support/browser";

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const standIn = readFileSync(join(__dirname, "../support/stand-in-excel.js"), "utf8");
const PHONE = { viewport: { width: 375, height: 800 } };

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

const open = (path: string, options: BrowserContextOptions = {}) =>
  openPage(browser, `${server.address}${path}`, { locale: "es-AR", ...PHONE, ...options });

/** The policy of the page forbids adding a script any other way. */
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

test("a function's page computes, reads and shows decimal commas, and says errors in Spanish", async () => {
  const { page, misdeeds } = await open("es/reference/pipe-friction.html");
  const result = page.locator("#result");
  await result.locator(".value").waitFor();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe("es");
  expect(await page.locator(".notice").innerText()).toContain("todavía no ha leído");
  expect(Number((await result.innerText()).replace(",", "."))).toBeCloseTo(1.7302, 3);
  expect(await result.innerText()).toContain(",");
  await page.getByLabel("inside").fill("2,067");
  expect(Number((await result.innerText()).replace(",", "."))).toBeCloseTo(1.7302, 3);
  expect(await page.locator("#formula").innerText()).toContain("2.067");
  await page.getByLabel("inside").fill("-1");
  expect(await result.innerText()).toBe("#VALUE! inside debe ser mayor que 0 in; recibió -1");
  await page.getByLabel("inside").fill("2,0,67");
  expect(await result.innerText()).toContain("Escriba un número");
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("where the reader writes a point, a comma is no decimal sign", async () => {
  const { page } = await open("es/reference/pipe-friction.html", { locale: "es-MX" });
  const result = page.locator("#result");
  await result.locator(".value").waitFor();
  expect(Number(await result.innerText())).toBeCloseTo(1.7302, 3);
  await page.getByLabel("inside").fill("2,067");
  expect(await result.innerText()).toContain("Escriba un número");
});

test("the list searches in Spanish, with and without accents", async () => {
  const { page } = await open("es/reference/index.html?q=caudal%20del%20aspersor");
  await page.locator("#found li").first().waitFor();
  expect(await page.locator("#found").innerText()).toContain("SPRINKLER.FLOW");
  await page.getByLabel("¿Qué quiere saber?").fill("presion");
  expect(await page.locator("#found").innerText()).toContain("LATERAL.PRESSURE");
  await page.getByLabel("¿Qué quiere saber?").fill("zzzz");
  expect(await page.locator("#found-count").innerText()).toContain("Ninguna función");
});

test("a Spanish browser is led to the Spanish page; a choice goes before it and is kept", async () => {
  const { page } = await open("reference/pipe-friction.html?q=1");
  await page.waitForURL("**/es/reference/pipe-friction.html?q=1");
  await page.getByRole("link", { name: "English" }).click();
  await page.waitForURL("**/reference/pipe-friction.html");
  await page.locator("#result .value").waitFor();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe("en");
  await page.goto(`${server.address}reference/index.html`);
  await page.locator("#search").waitFor();
  expect(page.url()).not.toContain("/es/");
  await page.getByRole("link", { name: "Español" }).click();
  await page.waitForURL("**/es/reference/index.html");
});

test("an English browser stays on the English pages", async () => {
  const { page } = await open("reference/pipe-friction.html", { locale: "en-US" });
  await page.locator("#result .value").waitFor();
  expect(page.url()).not.toContain("/es/");
});

test("no Spanish page of a function is wider than a phone, and each computes its example", async () => {
  const { page, misdeeds } = await open("es/reference/index.html");
  const wide: string[] = [];
  for (const help of builtReference().functions) {
    await page.goto(`${server.address}es/${help.page}`);
    await page.locator("#result > *").waitFor();
    if ((await sideways(page)) > 0) wide.push(help.name);
    expect([help.name, await page.locator("#result .error").allInnerTexts()]).toEqual([
      help.name,
      [],
    ]);
  }
  expect(wide).toEqual([]);
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

describe.each(["light", "dark"] as const)("accessible in %s", (colorScheme) => {
  test.each([
    "es/reference/index.html",
    "es/reference/pump-npsh.html",
    "es/reference/lateral-profile.html",
    "es/support.html",
  ])("%s", async (path) => {
    const { page } = await open(path, { colorScheme });
    expect(await faultsOf(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
  });
});

test("the pane speaks Spanish in a Spanish browser, and another choice is kept", async () => {
  const { page } = await openPage(browser, `${server.address}taskpane.html`, {
    locale: "es-AR",
    viewport: { width: 320, height: 800 },
    before: async (fresh) => {
      await fresh.route("https://appsforoffice.microsoft.com/**", (route) =>
        route.fulfill({ body: standIn, contentType: "text/javascript" }),
      );
    },
  });
  await page.getByLabel("Buscar funciones").fill("caudal");
  expect(await page.evaluate(() => document.documentElement.lang)).toBe("es");
  expect(await page.locator(".notice").innerText()).toContain("todavía no ha leído");
  await page.getByRole("button", { name: /^SPRINKLER.FLOW/ }).click();
  await page.getByLabel("pressure").fill("-1");
  await page.getByText("pressure debe ser").waitFor();
  expect(await sideways(page)).toBe(0);
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole("button", { name: "English" }).click();
  await page.getByLabel("Search functions").waitFor();
  await page.reload();
  await page.getByLabel("Search functions").waitFor();
});

describe("the trial page in Spanish", () => {
  test("speaks Spanish, with the reader's decimal sign, and keeps another choice", async () => {
    const { page, misdeeds } = await open("index.html");
    await page.getByText("¿Se sostiene el plan?").waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe("es");
    expect(await page.locator("#notice").innerText()).toContain("todavía no ha leído");
    expect(await page.locator("#reading").innerText()).toMatch(/\d,\d/);
    await page.getByLabel("Espaciamiento de aspersores").fill("0");
    await page
      .getByText(/^Espaciamiento de aspersores debe ser un número de 1 a 500; recibió 0/)
      .and(page.locator(".hint"))
      .waitFor();
    await page.getByRole("button", { name: "English" }).click();
    await page.getByText("Does the plan hold?").waitFor();
    expect(await page.locator("#notice").isVisible()).toBe(false);
    // Work that was begun in one language is there in the other.
    expect(await page.locator("#work-choice").inputValue()).not.toBe("");
    expect(await page.getByLabel("Sprinkler spacing").inputValue()).toBe("0");
    expect(misdeeds).toEqual({ errors: [], outside: [] });
  });

  test("the list of functions is searched in Spanish", async () => {
    const { page } = await open("index.html");
    await page.getByRole("button", { name: "Funciones" }).click();
    await page.getByLabel(/Busque por nombre/).fill("caudal aspersor");
    // The best matches come first.
    const found = await page
      .locator(".function:visible")
      .evaluateAll((all) => all.slice(0, 10).map(({ id }) => id));
    expect(found).toContain("function-SPRINKLER_FLOW");
    expect(await page.locator("#function-PIPE_EXPANSION").isVisible()).toBe(false);
  });

  test.each([
    ["line-layout", "light"],
    ["workshop", "dark"],
    ["quote", "light"],
  ] as const)("accessible: %s in %s", async (sheet, colorScheme) => {
    const { page } = await open(`index.html#${sheet}/si`, { colorScheme });
    await page.waitForSelector(".page-view");
    // Pictures are drawn once their width is known.
    await page.waitForFunction(
      () =>
        document.querySelector("#reading")?.textContent?.includes("calculando…") === false &&
        [...document.querySelectorAll(".figure")].every((one) => one.querySelector("svg") !== null),
    );
    expect(await faultsOf(page)).toEqual([]);
  });

  test("the catch cans too", async () => {
    const { page } = await open("index.html#cans");
    await page.getByText("Lo que dicen los pluviómetros").first().waitFor();
    expect(await faultsOf(page)).toEqual([]);
    expect(await sideways(page)).toBe(0);
  });
});

/** Its lessons are walked through in both languages in workshop.test.ts. */
test("the workshop's contents are in Spanish, marked as not yet read by a practitioner", async () => {
  const { page, misdeeds } = await open("workshop.html");
  await page.getByText("Once lecciones cortas").waitFor();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe("es");
  expect(await page.locator("#notice").isVisible()).toBe(true);
  expect(await faultsOf(page)).toEqual([]);
  expect(await sideways(page)).toBe(0);
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});
