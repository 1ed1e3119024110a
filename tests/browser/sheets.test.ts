import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { XMLParser } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";
import type { Browser, Page as BrowserPage } from "playwright-core";
import type { Grid } from "../../src/trial/grid";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress, writeAddress } from "../../src/sheets/kit/address";
import type { Page } from "../../src/sheets/kit/definition";
import { launchBrowser, openPage, serve, type Misdeeds, type Served } from "../support/browser";

declare const trialGrid: Grid;

/** Every value that a workbook file stores beside a formula is the one that the trial grid shows. */
const AGREEMENT = 1e-9;
const PATIENCE = { timeout: 120000 };
const folder = mkdtempSync(join(tmpdir(), "fieldsum-stored-"));

let browser: Browser;
let site: Served;
let page: BrowserPage;
let misdeeds: Misdeeds;

beforeAll(async () => {
  const script = join(__dirname, "../../build/sheets.ts");
  execFileSync(process.execPath, ["--import", "tsx", script, "--to", folder], { stdio: "pipe" });
  browser = await launchBrowser();
  site = await serve();
  ({ page, misdeeds } = await openPage(browser, site.address, {
    viewport: { width: 1280, height: 800 },
  }));
}, 300000);

afterAll(async () => {
  await browser?.close();
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

interface FileCell {
  readonly "@r": string;
  readonly "@t"?: string;
  readonly v?: string;
}

type Stored = number | string | boolean | undefined;

/** Values that the file holds, by page and address. */
function stored(name: string, pages: readonly Page[]): (page: number, at: string) => Stored {
  const parts = unzipSync(readFileSync(join(folder, `${name}.xlsx`)));
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "@",
    parseTagValue: false,
    trimValues: false,
    isArray: (tag) => ["row", "c", "si"].includes(tag),
  });
  const xml = (path: string) => parser.parse(strFromU8(parts[path])) as never;
  const { sst } = xml("xl/sharedStrings.xml") as {
    sst: { si: { t: string | { "#text": string } }[] };
  };
  const strings = sst.si.map(({ t }) => (typeof t === "string" ? t : t["#text"]));
  const sheets = pages.map((_, i) => {
    const { worksheet } = xml(`xl/worksheets/sheet${i + 1}.xml`) as {
      worksheet: { sheetData: { row: { c?: FileCell[] }[] } };
    };
    const cells = worksheet.sheetData.row.flatMap(({ c }) => c ?? []);
    return new Map(cells.map((cell) => [cell["@r"], cell]));
  });
  return (index, at) => {
    const cell = sheets[index].get(at);
    if (cell?.v === undefined) return undefined;
    if (cell["@t"] === "s") return strings[Number(cell.v)];
    if (cell["@t"] === "str") return cell.v;
    return cell["@t"] === "b" ? cell.v === "1" : Number(cell.v);
  };
}

interface Computed {
  readonly index: number;
  readonly at: string;
  readonly page: string;
  readonly row: number;
  readonly column: number;
}

/** Every cell that a formula fills. */
function computed(pages: readonly Page[]): Computed[] {
  return pages.flatMap((one, index) =>
    one.cells.flatMap(({ at, formula, spill }) => {
      if (formula === undefined) return [];
      const { row, column } = readAddress(at);
      return Array.from({ length: spill?.rows ?? 1 }, (_, down) =>
        Array.from({ length: spill?.columns ?? 1 }, (__, across) => {
          const place = { row: row + down, column: column + across };
          return { index, page: one.name, at: writeAddress(place), ...place };
        }),
      ).flat();
    }),
  );
}

/** The page opens on the first sheet in US units; choosing what is chosen already opens nothing. */
let open = `${readyMadeSheets[0].id} US`;

async function show(id: string, system: string): Promise<void> {
  const ready = () => page.waitForSelector('html[data-grid="ready"]', PATIENCE);
  const choose = async (next: string, act: () => Promise<unknown>) => {
    if (next === open) return;
    await ready();
    await page.evaluate(() => delete document.documentElement.dataset.grid);
    await act();
    open = next;
  };
  const [openId] = open.split(" ");
  await choose(`${openId} ${system}`, () =>
    page.check(`input[name="system"][value="${system}"]`, { force: true }),
  );
  await choose(`${id} ${system}`, () => page.selectOption("#sheet-choice", id));
  await ready();
}

function agrees(shown: unknown, value: Stored): boolean {
  if (typeof shown === "number" && typeof value === "number") {
    return Math.abs(shown - value) <= AGREEMENT * Math.max(Math.abs(value), 1e-300);
  }
  // An empty text is stored as none.
  if (shown === "" || shown === null) return value === undefined || value === "";
  return shown === value;
}

test.each(
  readyMadeSheets.flatMap((sheet) =>
    (["US", "SI"] as const).map((system) => ({ sheet, system, title: sheet.title })),
  ),
)(
  "$title ($system): the trial grid shows what the file stores, and no error",
  async ({ sheet, system }) => {
    await show(sheet.id, system);
    const pages = sheet.pages(system);
    const cells = computed(pages);
    const shown = await page.evaluate(
      (places) => places.map((place) => trialGrid.read(place)),
      cells,
    );
    const value = stored(`${sheet.id}-${system.toLowerCase()}`, pages);
    const differing = cells.flatMap((cell, i) => {
      const expected = value(cell.index, cell.at);
      return agrees(shown[i].value, expected)
        ? []
        : [`${cell.page}!${cell.at}: ${JSON.stringify(shown[i])}, stored ${String(expected)}`];
    });
    expect(differing).toEqual([]);
    expect(cells.length).toBeGreaterThan(100);
    // And none of what it shows is an error, of its own names and lists either.
    const wrong = await page.evaluate(
      (names) => names.flatMap((name) => trialGrid.wrong(name)),
      pages.map(({ name }) => name),
    );
    expect(wrong).toEqual([]);
  },
  300000,
);

test("nothing went wrong on the page meanwhile", () => {
  expect(misdeeds).toEqual(Object.fromEntries(Object.keys(misdeeds).map((key) => [key, []])));
});
