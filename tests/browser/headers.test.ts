import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { built, launchBrowser, openPage, serve, type Served } from "../support/browser";
import { joined, readRules } from "../support/static-host";

/** Every header as the strictest host sends it: all rules of dist/_headers that match, joined. */
let browser: Browser;
let server: Served;
let around: Server;
let frameOf: (page: string) => string;

beforeAll(async () => {
  browser = await launchBrowser();
  const rules = readRules(readFileSync(join(built, "_headers"), "utf8"));
  server = await serve(built, (path) => joined(rules, path));
  // Somebody else's page that shows ours in a frame, as Excel on the web does.
  around = createServer((request, response) => {
    const page = new URL(request.url ?? "/", "http://localhost").searchParams.get("page") ?? "";
    response.setHeader("Content-Type", "text/html");
    response.end(
      `<!doctype html><title>Around</title><iframe src="${server.address}${page}"></iframe>`,
    );
  });
  await new Promise<void>((resolve) => around.listen(0, "127.0.0.1", resolve));
  const { port } = around.address() as AddressInfo;
  frameOf = (page) => `http://localhost:${port}/?page=${page}`;
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  around?.closeAllConnections();
  around?.close();
});

const standIn = readFileSync(join(__dirname, "../support/stand-in-excel.js"), "utf8");
const withHost = async (page: Page) => {
  await page.route("https://appsforoffice.microsoft.com/**", (route) =>
    route.fulfill({ body: standIn, contentType: "text/javascript" }),
  );
};

test("the trial page works under its joined headers", async () => {
  const { page, misdeeds } = await openPage(browser, server.address);
  await page.locator("canvas").first().waitFor({ timeout: 60000 });
  expect(misdeeds).toEqual({ errors: [], outside: [] });
});

test("the pane works under its joined headers, in a frame of another address too", async () => {
  const alone = await openPage(browser, `${server.address}taskpane.html`, { before: withHost });
  await alone.page.getByLabel("Search functions").waitFor();
  expect(alone.misdeeds.errors).toEqual([]);
  const framed = await openPage(browser, frameOf("taskpane.html"), { before: withHost });
  await framed.page.frameLocator("iframe").getByLabel("Search functions").waitFor();
  expect(framed.misdeeds.errors.filter((error) => !/favicon/.test(error))).toEqual([]);
});

test("the functions' page runs its script in a frame", async () => {
  const { page } = await openPage(browser, frameOf("functions.html"), {
    before: async (fresh) => {
      await fresh.route("https://appsforoffice.microsoft.com/**", (route) =>
        route.fulfill({
          body: "globalThis.associated = 0; globalThis.CustomFunctions = { Error: class extends Error {}, ErrorCode: {}, associate: () => { associated += 1; } };",
          contentType: "text/javascript",
        }),
      );
    },
  });
  const [, frame] = page.frames();
  expect(
    await frame.evaluate(() => (globalThis as { associated?: number }).associated),
  ).toBeGreaterThan(90);
});

test("a page that is nobody's to frame is refused in one", async () => {
  const { page, misdeeds } = await openPage(browser, frameOf("index.html"));
  await page.waitForTimeout(1000);
  expect(misdeeds.errors.join("\n")).toMatch(/frame-ancestors|refused to connect|X-Frame/i);
});
