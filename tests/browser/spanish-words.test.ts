import { readFileSync, appendFileSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContextOptions, Page } from "playwright-core";
import { readyMadeSheets } from "../../src/sheets";
import { en } from "../../src/sheets/books/workshop/words/en";
import { englishLeft } from "../support/english-left";
import { people } from "../support/people";

const PATIENCE = { timeout: 60000 };
const standIn = readFileSync(join(__dirname, "../support/stand-in-excel.js"), "utf8");

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

const button = (page: Page, name: string | RegExp) =>
  page.getByRole("button", { name, exact: true });
const seen = new Set<string>();
async function note(page: Page, k: string) {
  const fresh = (await englishLeft(page)).filter((t) => !seen.has(t));
  fresh.forEach((t) => seen.add(t));
  appendFileSync("/tmp/ws/left2.txt", `== ${k}\n${fresh.join("\n")}\n`);
}

const openAll = (page: Page) =>
  page.evaluate(() =>
    document.querySelectorAll("main details").forEach((one) => one.setAttribute("open", "")),
  );

async function work(page: Page, entry: string): Promise<void> {
  await page.locator(".work-buttons summary").click();
  await page.locator(".menu-entries").getByRole("button", { name: entry, exact: true }).click();
}
const leave = (page: Page) => page.locator("dialog .ask-buttons button").last().click();

test("pages of the workbooks", async () => {
  const page = await visit("index.html");
  for (const sheet of readyMadeSheets) {
    await page.goto(`${address()}index.html#${sheet.id}/us`);
    await page.waitForSelector(".page-view");
    await page.waitForFunction((id) => location.hash.includes(id), sheet.id);
    const tabs = page.locator("#choose .tabs:not(.sides) button");
    for (let i = 0; i < (await tabs.count()); i++) {
      await tabs.nth(i).click();
      await note(page, `${sheet.id} ${await tabs.nth(i).innerText()}`);
    }
  }
}, 300000);

test("work", async () => {
  const page = await visit("index.html");
  await page.waitForSelector(".page-view");
  await page.getByLabel("Aspersores en la línea").first().fill("11");
  await page.getByLabel("Aspersores en la línea").first().blur();
  await page.getByText("Guardado en este navegador").waitFor();
  await note(page, "kept");
  await page.locator(".work-buttons summary").click();
  await note(page, "menu");
  await page.locator(".work-buttons summary").click();
  for (const entry of [
    "Cambiar el nombre…",
    "Borrar…",
    "Usar este plan en…",
    "Libros preparados…",
  ]) {
    await work(page, entry);
    await page.waitForSelector("dialog[open]");
    await note(page, entry);
    await leave(page);
  }
  await work(page, "Copiar el enlace");
  await page.waitForTimeout(500);
  await note(page, "link");
  if (await page.locator("dialog[open]").count()) await leave(page);
  for (const entry of ["Guardar como .xlsx", "Guardar una copia solo con valores"]) {
    await work(page, entry);
    await page.getByText("Guardado como").waitFor(PATIENCE);
    await note(page, entry);
  }
  const [chooser] = await Promise.all([
    page.waitForEvent("filechooser"),
    work(page, "Abrir .xlsx…"),
  ]);
  await chooser.setFiles({
    name: "a.xlsx",
    mimeType: "application/zip",
    buffer: Buffer.from("no"),
  });
  await page.waitForSelector("dialog[open]");
  await note(page, "refused");
  await leave(page);
  await page.locator("#choose").getByText("SI", { exact: true }).click();
  await page.waitForSelector("dialog[open]");
  await note(page, "units");
  await page.locator("dialog .ask-buttons button").first().click();
  await page.waitForTimeout(500);
  await note(page, "converted");
  await work(page, "Empezar en blanco");
  await page.waitForTimeout(500);
  await note(page, "blank");
  await page.getByLabel("Aspersores en la línea").first().fill("0");
  await page.getByLabel("Aspersores en la línea").first().blur();
  await page.getByLabel("Espaciamiento de aspersores").first().fill("1,500");
  await page.getByLabel("Espaciamiento de aspersores").first().blur();
  await page.waitForTimeout(500);
  await note(page, "wrong");
  await work(page, "Hacer una copia");
  await page.waitForTimeout(500);
  await note(page, "copy");
  await work(page, "Volver a la muestra");
  await page.waitForTimeout(500);
  await note(page, "back to sample");
  await page.goto(`${address()}index.html#quote/us/Quote?with=xx`);
  await page.waitForTimeout(1000);
  await note(page, "bad link");
}, 300000);

test("starts and cans", async () => {
  const page = await visit("index.html#start", { viewport: { width: 1280, height: 800 } });
  await page.waitForSelector(".start-form");
  await note(page, "start");
  await button(page, "Proponer un plan").click();
  await note(page, "start empty");
  await button(page, "Llenar con el campo de muestra").click();
  await button(page, "Proponer un plan").click();
  await page.waitForSelector(".proposed", PATIENCE);
  await openAll(page);
  await note(page, "start proposed");
  await page.goto(`${address()}index.html#start/line`);
  await page.waitForSelector(".line-figures dd");
  await note(page, "line");
  await page.locator(".line-fields input").first().fill("x");
  await page.waitForTimeout(600);
  await note(page, "line wrong");
  await page.locator(".line-fields input").first().fill("60");
  await page.waitForTimeout(900);
  await note(page, "line 60");
  await page.goto(`${address()}index.html#cans`);
  await page.waitForSelector(".cans-form input");
  for (const layout of ["leg", "row", "field"])
    for (const reading of ["volume", "depth"]) {
      await page.locator(`input[name="layout"][value="${layout}"]`).check();
      await page.locator(`input[name="cans-reading"][value="${reading}"]`).check();
      await openAll(page);
      await note(page, `cans ${layout} ${reading}`);
      await page.locator(".can input").nth(1).fill("");
      await page.locator(".can input").nth(3).fill("-5");
      await page.getByText("Omitido").first().waitFor();
      await note(page, `cans ${layout} ${reading} left out`);
      await page.locator(".can input").nth(2).fill("x");
      await page.waitForTimeout(400);
      await note(page, `cans ${layout} ${reading} two`);
    }
}, 300000);

test("functions and grid", async () => {
  const page = await visit("index.html", { viewport: { width: 1280, height: 900 } });
  await page.waitForFunction(() => document.querySelector(".chosen") !== null, undefined, PATIENCE);
  await button(page, "Funciones").click();
  await page.waitForSelector(".function");
  await note(page, "functions");
  for (const d of (await page.locator(".function:visible").all()).slice(0, 3)) await d.click();
  await note(page, "function open");
  await page.evaluate(() => {
    const g = (window as never as { trialGrid: { enter(p: unknown, f: string): void } }).trialGrid;
    g.enter({ page: "Line", row: 2, column: 15 }, "=IRRIG.PIPE.FRICTION(50,-1,100)");
    g.enter({ page: "Line", row: 3, column: 15 }, "=1/0");
    g.enter({ page: "Line", row: 4, column: 15 }, "=NOPE(1)");
    g.enter({ page: "Line", row: 5, column: 15 }, "=MATCH(3,A1:A2,0)");
    g.enter({ page: "Line", row: 6, column: 15 }, '="a"+1');
  });
  await page.waitForTimeout(2500);
  await openAll(page);
  await page.waitForTimeout(500);
  await note(page, "under grid");
}, 300000);

test("pane", async () => {
  const page = await visit("support.html");
  await page.route("https://appsforoffice.microsoft.com/**", (route) =>
    route.fulfill({ body: standIn, contentType: "text/javascript" }),
  );
  await page.goto(`${address()}taskpane.html`);
  await page.getByLabel("Buscar funciones").waitFor();
  await note(page, "pane");
  const tabs = page.getByRole("tab");
  for (let i = 0; i < (await tabs.count()); i++) {
    await tabs.nth(i).click();
    await page.waitForTimeout(600);
    await note(page, `pane ${await tabs.nth(i).innerText()}`);
  }
  await tabs.nth(0).click();
  await page.getByLabel("Buscar funciones").fill("FLOW");
  await page.waitForTimeout(300);
  await note(page, `pane search`);
  await page.getByRole("button", { name: /^SPRINKLER.FLOW/ }).click();
  await page.waitForTimeout(300);
  await note(page, `pane function`);
  await page.getByLabel("pressure").fill("-1");
  await page.waitForTimeout(600);
  await note(page, `pane function wrong`);
}, 100000);

test("workshop", async () => {
  const page = await visit("workshop.html");
  await page.waitForSelector("h1");
  for (const hash of [
    "start",
    "trainer",
    "handout",
    "key",
    "slides",
    ...en.lessons.map((_, i) => `lesson-${i + 1}`),
  ]) {
    await page.evaluate((to) => (location.hash = to), hash);
    await page.waitForFunction((to) => document.documentElement.dataset.shown === `#${to}`, hash);
    await note(page, hash);
    for (const block of await page.locator(".exercise").all()) {
      await block.locator("input").fill("xx");
      await block.locator(".check").click();
      await block.locator(".helps button").first().click();
      await note(page, hash + " hint");
      await block.locator("input").fill("5 wug");
      await block.locator(".check").click();
      await block.locator(".helps button").first().click();
      await note(page, hash + " hint2");
      await block.locator(".helps button").last().click();
      await note(page, hash + " shown");
    }
  }
}, 100000);
