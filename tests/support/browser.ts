import { existsSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { chromium, type Browser, type BrowserContextOptions, type Page } from "playwright-core";
import sirv from "sirv";
import { headersFor } from "../../build/headers";

/** Debian's own. */
const CHROMIUM = "/usr/bin/chromium";

const FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export const built = join(__dirname, "..", "..", "dist");

export async function launchBrowser(): Promise<Browser> {
  if (!existsSync(CHROMIUM))
    throw new Error(`The browser tests need Debian's Chromium at ${CHROMIUM}: install "chromium".`);
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
  // Nothing is kept from one visit to the next unless a test is about that.
  const newContext = browser.newContext.bind(browser);
  browser.newContext = (options) => newContext({ serviceWorkers: "block", ...options });
  return browser;
}

export interface Served {
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Serves a built folder on a free port of this machine, with the headers that the build's server
 * sends, or those that `headers` gives.
 */
export async function serve(
  folder = built,
  headers: (path: string) => Record<string, string> = headersFor,
): Promise<Served> {
  if (!existsSync(join(folder, "index.html")))
    throw new Error(`There is no page in ${folder}: run "npm run build" first.`);
  const files = sirv(folder, { dev: true });
  const server: Server = createServer((request, response) => {
    // The headers that a real host sends, so that the content-security policy is tested too.
    const path = new URL(request.url ?? "/", "http://localhost").pathname;
    for (const [name, value] of Object.entries(headers(path))) response.setHeader(name, value);
    files(request, response, () => {
      response.statusCode = 404;
      response.end();
    });
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

/** What a page did that it should not: console errors, uncaught ones, requests to elsewhere. */
export interface Misdeeds {
  readonly errors: string[];
  readonly outside: string[];
}

export interface OpenOptions extends BrowserContextOptions {
  /** Runs before the page is loaded. */
  readonly before?: (page: Page) => Promise<void>;
}

export async function openPage(
  browser: Browser,
  address: string,
  { before, ...options }: OpenOptions = {},
): Promise<{ page: Page; misdeeds: Misdeeds }> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  await before?.(page);
  const misdeeds: Misdeeds = { errors: [], outside: [] };
  const own = new URL(address).origin;
  page.on("console", (message) => {
    if (message.type() === "error") misdeeds.errors.push(message.text());
  });
  page.on("pageerror", (error) => misdeeds.errors.push(error.message));
  page.on("request", (request) => {
    const { origin, protocol } = new URL(request.url());
    if (origin !== own && protocol !== "data:" && protocol !== "blob:")
      misdeeds.outside.push(request.url());
  });
  await page.goto(address);
  return { page, misdeeds };
}
