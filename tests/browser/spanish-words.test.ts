import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import { readyMadeSheets } from "../../src/sheets";
import { en } from "../../src/sheets/books/workshop/words/en";
import type { Grid } from "../../src/trial/grid";
import { englishLeft } from "../support/english-left";
import { people } from "../support/people";

declare const trialGrid: Grid;

const PATIENCE = { timeout: 60000 };
const WIDE: BrowserContextOptions = { viewport: { width: 1280, height: 900 } };
const standIn = readFileSync(join(__dirname, "../support/stand-in-excel.js"), "utf8");

/** Titles of what was published, and names that functions take. */
const STAYS = [
  ...["National Engineering Handbook, Part 623 Chapter 11", "Sprinkler Irrigation"],
  ...["Sprinkler System", "Soil Conservation Service", "(share of rating)", "(net depth)"],
  ...["(season depth)", "(day hours)", "(move hours)", "(set hours)", "(main loss)"],
  ...["(pump flow)", "(pump head)", "(head price)", "(line price)", "(energy price)", "(wind)"],
  ...["x and y"],
];

const { address, someone } = people();

async function visit(path: string, options: BrowserContextOptions = {}): Promise<Page> {
  const context = await someone({
    locale: "es-AR",
    viewport: { width: 375, height: 800 },
    ...options,
  });
  const page = await context.newPage();
  await page.goto(address() + path);
  return page;
}

/** Nothing in sight, or read out, is English. */
async function expectSpanish(page: Page, where: string, stays: readonly string[] = []) {
  expect([where, await englishLeft(page, [...STAYS, ...stays])]).toEqual([where, []]);
}

const openAll = (page: Page) =>
  page.evaluate(() =>
    document.querySelectorAll("main details").forEach((one) => one.setAttribute("open", "")),
  );

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

async function work(page: Page, entry: string): Promise<void> {
  await page.locator(".work-buttons summary").click();
  await page.locator(".menu-entries").getByRole("button", { name: entry, exact: true }).click();
}

async function leave(page: Page): Promise<void> {
  await page.locator("dialog .ask-buttons button").last().click();
  await page.waitForSelector("dialog", { state: "detached" });
}

test("every page of the workbooks", async () => {
  const page = await visit("index.html");
  for (const { id } of readyMadeSheets) {
    await page.goto(`${address()}index.html#${id}/us`);
    await page.waitForSelector(".page-view");
    const tabs = page.locator("#choose .tabs:not(.sides) button");
    for (let i = 0; i < (await tabs.count()); i++) {
      await tabs.nth(i).click();
      await expectSpanish(page, `${id}, page ${i + 1}`);
    }
  }
});

test("work that is kept, its menu, its questions and what they say", async () => {
  const page = await visit("index.html");
  await page.waitForSelector(".page-view");
  const heads = page.getByLabel("Aspersores en la línea").first();
  await heads.fill("0");
  await heads.blur();
  await page.getByText("Guardado en este navegador").waitFor();
  await page.getByText("Aspersores en la línea debe ser").first().waitFor();
  await page.locator(".work-buttons summary").click();
  await expectSpanish(page, "the menu, and an input outside its limits");
  await page.locator(".work-buttons summary").click();
  for (const entry of [
    "Cambiar el nombre…",
    "Borrar…",
    "Usar este plan en…",
    "Libros preparados…",
  ]) {
    await work(page, entry);
    await page.waitForSelector("dialog[open]");
    await expectSpanish(page, entry);
    await leave(page);
  }
  for (const entry of ["Guardar como .xlsx", "Guardar una copia solo con valores"]) {
    await work(page, entry);
    await page.locator(".work-said", { hasText: "Guardado como" }).waitFor(PATIENCE);
    await expectSpanish(page, entry);
  }
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    work(page, "Abrir .xlsx…"),
  ]);
  const buffer = Buffer.from("no workbook");
  await chooser.setFiles({ name: "a.xlsx", mimeType: "application/zip", buffer });
  await page.waitForSelector("dialog[open]");
  await expectSpanish(page, "a file that is refused");
  await leave(page);
  await page.locator('#choose input[value="SI"]').click({ force: true });
  await page.waitForSelector("dialog[open]");
  await expectSpanish(page, "other units");
  await page.locator("dialog .ask-buttons button").first().click();
  await page.locator('#choose input[value="SI"]:checked').waitFor({ state: "attached" });
  await expectSpanish(page, "converted");
  await work(page, "Empezar en blanco");
  await page.locator(".work-said", { hasText: "en blanco" }).waitFor();
  // Arguments keep their names.
  await expectSpanish(page, "blank", ["size"]);
  await page.goto(`${address()}index.html#quote/us/Quote?with=xx`);
  await page.getByText("El enlace está dañado").waitFor();
  await expectSpanish(page, "a damaged link");
});

test("the starts, with wrong fields and with a plan", async () => {
  const page = await visit("index.html#start", WIDE);
  await page.waitForSelector(".start-form");
  await button(page, "Proponer un plan").click();
  await expectSpanish(page, "nothing typed");
  await button(page, "Llenar con el campo de muestra").click();
  await button(page, "Proponer un plan").click();
  await page.waitForSelector(".proposed", PATIENCE);
  await openAll(page);
  await expectSpanish(page, "a plan");
  await page.goto(`${address()}index.html#start/line`);
  await page.waitForSelector(".line-figures dd");
  await expectSpanish(page, "my line");
  const field = page.locator(".line-fields input").first();
  for (const wrong of ["x", "60"]) {
    await field.fill(wrong);
    await page.waitForFunction(
      () => !document.querySelector(".line-bar")?.textContent?.includes("…"),
    );
    await expectSpanish(page, `my line with ${wrong}`);
  }
});

test("catch cans, all that stood and with some knocked over", async () => {
  const page = await visit("index.html#cans");
  await page.waitForSelector(".cans-form input");
  for (const layout of ["leg", "row", "field"])
    for (const reading of ["volume", "depth"]) {
      const where = `${layout}, ${reading}`;
      await page.locator(`input[name="layout"][value="${layout}"]`).check();
      await page.locator(`input[name="cans-reading"][value="${reading}"]`).check();
      await openAll(page);
      await expectSpanish(page, where);
      await page.locator(".can input").nth(1).fill("");
      await page.locator(".can input").nth(3).fill("-5");
      await page.locator(".cans-hours .error").nth(1).waitFor();
      await expectSpanish(page, `${where}, two left out`, ["volume"]);
      if (layout === "field") continue;
      await page.locator(".can input").nth(2).fill("");
      await page.getByText(/^Falta el pluviómetro/).waitFor();
      await expectSpanish(page, `${where}, neighbors left out`);
    }
});

test("the list of functions, and what stands under the grid", async () => {
  const page = await visit("index.html", WIDE);
  await page.waitForSelector(".chosen", PATIENCE);
  await button(page, "Funciones").click();
  await page.locator(".function").first().waitFor();
  await page.locator("#function-SET_TIME summary").click();
  await button(page, "Insertar").click();
  await expectSpanish(page, "a function");
  await page.keyboard.press("Escape");
  await page.evaluate(() => {
    const wrong = ["IRRIG.PIPE.FRICTION(50,-1,100)", "1/0", "NOPE(1)", "MATCH(3,A1:A2,0)", '"a"+1'];
    wrong.forEach((formula, i) =>
      trialGrid.enter({ page: "Line", row: 2 + i, column: 15 }, `=${formula}`),
    );
  });
  await page.locator(".wrong li").nth(4).waitFor(PATIENCE);
  await openAll(page);
  await page.locator(".cell-table td").first().waitFor();
  await expectSpanish(page, "cells in error", ["inside"]);
});

test("the pane", async () => {
  const page = await visit("support.html");
  await page.route("https://appsforoffice.microsoft.com/**", (route) =>
    route.fulfill({ body: standIn, contentType: "text/javascript" }),
  );
  await page.goto(`${address()}taskpane.html`);
  const search = page.getByLabel("Buscar funciones");
  await search.waitFor();
  const tabs = page.getByRole("tab");
  for (let i = (await tabs.count()) - 1; i >= 0; i--) {
    await tabs.nth(i).click();
    await page.locator('[role="tab"][aria-selected="true"]').nth(0).waitFor();
    // Names of arguments in the example of a function of one's own.
    await expectSpanish(page, `tab ${i + 1}`, ["value", "from", "to"]);
  }
  await search.fill("SPRINKLER.FLOW");
  await page.getByRole("button", { name: /^SPRINKLER.FLOW/ }).click();
  await page.getByLabel("pressure").fill("-1");
  await page.getByText("pressure debe ser").waitFor();
  await expectSpanish(page, "a function", ["pressure", "units"]);
});

test("the workshop, with hints and answers shown", async () => {
  const page = await visit("workshop.html");
  await page.waitForSelector("h1");
  const lessons = en.lessons.map((_, i) => `lesson-${i + 1}`);
  for (const hash of ["start", "trainer", "handout", "key", "slides", ...lessons]) {
    await page.evaluate((to) => (location.hash = to), hash);
    await page.waitForFunction((to) => document.documentElement.dataset.shown === `#${to}`, hash);
    for (const block of await page.locator(".exercise").all()) {
      await block.locator("input").fill("5 wug");
      await block.locator(".check").click();
      await block.locator(".helps button").first().click();
      await expectSpanish(page, `${hash}, a hint`);
      await block.locator(".helps button").first().click();
      await expectSpanish(page, `${hash}, another`);
      await block.locator(".helps button").last().click();
    }
    await expectSpanish(page, hash);
  }
});
