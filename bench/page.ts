import { rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import type { Browser, BrowserContextOptions, CDPSession, Page } from "playwright-core";
import { packedCopy } from "../build/packed";
import { answeringPacked, listen } from "../build/serve";
import { dist } from "../build/settings";
import { launchBrowser } from "../tests/support/browser";
import type { Row } from "./measure";

/** A phone of some years ago, or a laptop, is about this much slower than the machine measured on. */
const TIMES_SLOWER = 4;

/** What browsers' own tools call a slow 4G network. */
const SLOW_4G = {
  offline: false,
  downloadThroughput: 1.6e6 / 8,
  uploadThroughput: 750e3 / 8,
  latency: 150,
};

const PHONE: BrowserContextOptions = { viewport: { width: 390, height: 844 }, isMobile: true };
const DESKTOP: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };

const SECONDS_TO_ANSWERS = 2.5;
const MEGABYTES_TO_ANSWERS = 0.25;
const SECONDS_AN_EDIT = 0.5;
/** Up to which a shift of what is read is called good by those who defined its measure. */
const SHIFT = 0.1;

const PATIENCE = { timeout: 120_000 };

/** How often each is measured; the median counts. */
const TURNS = 3;

/** The built folder as a plain static host sends it: with its headers, and in gzip, no better. */
async function compressedHost(): Promise<{ address: string; close(): void }> {
  const copy = packedCopy(dist, ["gz"]);
  const server = await listen(createServer(answeringPacked(copy)), 0, "127.0.0.1");
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () => {
      server.closeAllConnections();
      server.close();
      rmSync(copy, { recursive: true });
    },
  };
}

/** What the page writes down about itself while it is visited. */
interface Watched {
  /** When every answer was there and had been painted, milliseconds. */
  answers?: number;
  shift: number;
  /** When the document beside the spreadsheet last changed. */
  changed: number;
}

declare const watched: Watched;

/** Runs in the page, before anything of it. */
function watch(): void {
  const notes: Watched = { shift: 0, changed: 0 };
  Object.assign(globalThis, { watched: notes });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & { value: number })[])
      notes.shift += entry.value;
  }).observe({ type: "layout-shift", buffered: true });
  const look = (changes: readonly MutationRecord[]) => {
    const read = document.querySelector("#reading");
    if (changes.some(({ target }) => read?.contains(target) === true))
      notes.changed = performance.now();
    const answers = [...document.querySelectorAll(".answers dd")];
    if (notes.answers !== undefined || answers.length === 0) return;
    if (answers.some(({ textContent }) => !/\d/.test(textContent ?? ""))) return;
    notes.answers = Infinity;
    requestAnimationFrame(() => setTimeout(() => (notes.answers = performance.now())));
  };
  new MutationObserver(look).observe(document, {
    childList: true,
    characterData: true,
    subtree: true,
  });
}

async function slowed(page: Page): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: TIMES_SLOWER });
  return session;
}

async function visited(
  browser: Browser,
  options: BrowserContextOptions,
  act: (page: Page) => Promise<void>,
): Promise<void> {
  const context = await browser.newContext({ serviceWorkers: "allow", ...options });
  try {
    const page = await context.newPage();
    // What runs the bench marks functions by their names; what is sent into a page has no such mark.
    await page.addInitScript("globalThis.__name = (made) => made");
    await page.addInitScript(watch);
    await act(page);
  } finally {
    await context.close();
  }
}

interface FirstVisit {
  readonly seconds: number;
  readonly megabytes: number;
  readonly shift: number;
}

/** A first visit on a slow phone, until the answers are read. */
async function firstVisit(browser: Browser, address: string): Promise<FirstVisit> {
  let found: FirstVisit | undefined;
  await visited(browser, PHONE, async (page) => {
    const session = await slowed(page);
    await session.send("Network.enable");
    await session.send("Network.emulateNetworkConditions", SLOW_4G);
    let bytes = 0;
    session.on("Network.dataReceived", ({ encodedDataLength }) => (bytes += encodedDataLength));
    await page.goto(address, { waitUntil: "commit" });
    await page.waitForFunction(() => Number.isFinite(watched.answers), undefined, PATIENCE);
    const megabytes = bytes / 1e6;
    const { answers = NaN } = await page.evaluate(() => watched);
    // What comes late must not push away what is being read.
    await page.waitForLoadState("networkidle", PATIENCE);
    const { shift } = await page.evaluate(() => watched);
    found = { seconds: answers / 1000, megabytes, shift };
  });
  if (found === undefined) throw new Error("the visit ended before its answers");
  return found;
}

/** A value typed into the field at a slow desktop, with the spreadsheet beside it. */
async function edit(browser: Browser, address: string, field: string): Promise<Edited> {
  const found: Reaction[] = [];
  let shift = NaN;
  await visited(browser, DESKTOP, async (page) => {
    await page.goto(address);
    const ready = () => document.documentElement.dataset.grid === "ready";
    await page.waitForFunction(ready, undefined, PATIENCE);
    await slowed(page);
    shift = (await page.evaluate(() => watched)).shift;
    for (let turn = 0; turn < TURNS; turn++) found.push(await page.evaluate(typeInto, field));
  });
  return {
    read: median(found.map(({ read }) => read)),
    grid: median(found.map(({ grid }) => grid)),
    shift,
  };
}

/** Milliseconds from a key to the last change of the document, and of the spreadsheet beside it. */
interface Reaction {
  readonly read: number;
  readonly grid: number;
}

interface Edited extends Reaction {
  readonly shift: number;
}

/** Runs in the page: types another last digit, and waits until document and grid are at rest. */
async function typeInto(label: string): Promise<Reaction> {
  interface Settling {
    onSettled(listener: () => void): void;
  }
  const { trialGrid } = globalThis as unknown as { trialGrid: Settling };
  const labels = [...document.querySelectorAll<HTMLLabelElement>("#reading label")];
  const input = labels.find(({ textContent }) => textContent === label)?.control;
  if (!(input instanceof HTMLInputElement)) throw new Error(`no field ${label}`);
  input.focus();
  const digit = input.value.endsWith("1") ? "2" : "1";
  input.setSelectionRange(input.value.length - 1, input.value.length);
  watched.changed = 0;
  let settled = 0;
  trialGrid.onSettled(() => (settled = performance.now()));
  const start = performance.now();
  document.execCommand("insertText", false, digit);
  const isAtRest = () => {
    const last = Math.max(settled, watched.changed);
    return settled > 0 && watched.changed > 0 && performance.now() - last > 1500;
  };
  while (!isAtRest()) await new Promise((resolve) => setTimeout(resolve, 50));
  return { read: watched.changed - start, grid: settled - start };
}

function median(values: readonly number[]): number {
  return [...values].sort((one, two) => one - two)[Math.floor(values.length / 2)];
}

function limited(what: string, measured: number, most: number, times: string): Row {
  return { what, ratio: measured / most, target: { bound: "at most", value: 1 }, times };
}

/** The trial page in Chromium: how long a reader waits, what it costs, and whether the page jumps. */
export async function pageRows(): Promise<Row[]> {
  const host = await compressedHost();
  const browser = await launchBrowser();
  try {
    const visits: FirstVisit[] = [];
    for (let turn = 0; turn < TURNS; turn++) visits.push(await firstVisit(browser, host.address));
    const seconds = median(visits.map((visit) => visit.seconds));
    const megabytes = median(visits.map((visit) => visit.megabytes));
    const phoneShift = Math.max(...visits.map(({ shift }) => shift));
    const phone = `a phone, processor ${TIMES_SLOWER} times slower, slow 4G`;
    const desktop = `a desktop, processor ${TIMES_SLOWER} times slower`;
    const edits = [
      ["line layout", await edit(browser, `${host.address}#line-layout/us`, "Sprinkler spacing")],
      ["quote", await edit(browser, `${host.address}#quote/us/Layout`, "Sprinkler spacing")],
    ] as const;
    return [
      limited(
        `of its limit of ${SECONDS_TO_ANSWERS} s: first visit to the answers read, ${phone}`,
        seconds,
        SECONDS_TO_ANSWERS,
        `${seconds.toFixed(2)} s`,
      ),
      limited(
        `of its limit of ${MEGABYTES_TO_ANSWERS} MB: received by then, compressed`,
        megabytes,
        MEGABYTES_TO_ANSWERS,
        `${megabytes.toFixed(3)} MB`,
      ),
      limited(
        `of its limit of ${SHIFT}: shift of the layout (CLS) of that visit`,
        phoneShift,
        SHIFT,
        phoneShift.toFixed(3),
      ),
      ...edits.flatMap(([book, { read, grid, shift }]) => [
        limited(
          `of its limit of ${SECONDS_AN_EDIT} s: key typed to all answers, tables and pictures of the ${book}, ${desktop}`,
          read / 1000,
          SECONDS_AN_EDIT,
          `${read.toFixed(0)} ms`,
        ),
        {
          what: `times that limit: the same to the last cell of the spreadsheet beside it`,
          ratio: grid / 1000 / SECONDS_AN_EDIT,
          times: `${grid.toFixed(0)} ms`,
        },
        limited(
          `of its limit of ${SHIFT}: shift of the layout (CLS) until that spreadsheet stood there`,
          shift,
          SHIFT,
          shift.toFixed(3),
        ),
      ]),
    ];
  } finally {
    await browser.close();
    host.close();
  }
}
