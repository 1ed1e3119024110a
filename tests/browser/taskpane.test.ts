import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { launchBrowser, type Misdeeds, openPage, serve, type Served } from "../support/browser";

const HOST_SCRIPT = "https://appsforoffice.microsoft.com/**";
const standIn = readFileSync(join(__dirname, "../support/stand-in-excel.js"), "utf8");
const officeScripts = join(__dirname, "../../node_modules/@microsoft/office-js/dist");
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

interface Cell {
  content: unknown;
  value: unknown;
}

/** What the stand-in workbook holds, as its script declares it. */
interface Workbook {
  sheets: { name: string; cells: Record<string, Cell>; region?: string }[];
  names: { name: string; formula: string; comment: string; value: unknown }[];
  active: string;
  selection: { sheet: string; address: string };
  fail?: string;
}

interface Opened {
  page: Page;
  misdeeds: Misdeeds;
  workbook(): Promise<Workbook>;
  change(step: (workbook: Workbook) => void): Promise<void>;
  cell(address: string): Promise<unknown>;
}

async function open(
  settings: Record<string, unknown> = {},
  options: BrowserContextOptions = {},
): Promise<Opened> {
  const { page, misdeeds } = await openPage(browser, `${server.address}taskpane.html`, {
    viewport: { width: 320, height: 800 },
    ...options,
    before: async (fresh) => {
      await fresh.addInitScript(
        (given) => Object.assign(window, { standInSettings: given }),
        settings,
      );
      await fresh.route(HOST_SCRIPT, (route) =>
        route.fulfill({ body: standIn, contentType: "text/javascript" }),
      );
    },
  });
  page.setDefaultTimeout(10000);
  await page.getByLabel("Search functions").waitFor();
  const workbook = () =>
    page.evaluate(() => {
      const { sheets, names, active, selection } = (window as never as { standIn: Workbook })
        .standIn;
      // Looks and settings hold live objects; the tests ask for what a user would find.
      const found = {
        sheets: sheets.map(({ name, cells }) => ({ name, cells })),
        names: names.map(({ name, formula, comment, value }) => ({
          name,
          formula,
          comment,
          value,
        })),
        active,
        selection,
      };
      return JSON.parse(JSON.stringify(found)) as Workbook;
    });
  return {
    page,
    misdeeds,
    workbook,
    change: (step) => page.evaluate(`(${step.toString()})(window.standIn)`),
    cell: async (address) => (await workbook()).sheets[0].cells[address]?.content,
  };
}

async function tab(page: Page, name: string): Promise<void> {
  await page.getByRole("tab", { name }).click();
}

async function openFunction(page: Page, name: string): Promise<void> {
  await page.getByLabel("Search functions").fill(name);
  await page
    .getByRole("button", { name: new RegExp(`^${name.replace(".", "\\.")} `) })
    .first()
    .click();
}

const insert = (page: Page) =>
  page.getByRole("button", { name: "Insert in the selected cell" }).click();

function expectGood({ misdeeds }: Opened): void {
  expect(misdeeds.errors).toEqual([]);
  expect(misdeeds.outside.filter((address) => !address.includes("/hosted/office.js"))).toEqual([]);
}

describe("functions", () => {
  test("a task as a question finds the function, and its example computes as it is edited", async () => {
    const pane = await open();
    const { page } = pane;
    await page.getByLabel("Search functions").fill("how long do I run a set?");
    await page.locator(".function-entry").first().click();
    await page.getByRole("heading", { name: "SET.TIME" }).waitFor();
    await page.getByRole("button", { name: "All functions" }).click();
    await openFunction(page, "PIPE.FRICTION");
    await page.getByLabel("flow", { exact: true }).fill("0");
    await page.locator("output", { hasText: /^0$/ }).waitFor();
    await page.getByLabel("inside", { exact: true }).fill("-2");
    await page.getByText("inside must be above 0 in; got -2").waitFor();
    await page.getByLabel("inside", { exact: true }).fill("2.067");
    await page.getByLabel("flow", { exact: true }).fill("50");
    await expectText(page.locator("output"), /^1\.730/);
    expectGood(pane);
  });

  test("insert writes an empty cell at once, asks before a filled one, and undoes", async () => {
    const pane = await open();
    const { page, cell } = pane;
    await openFunction(page, "PIPE.FRICTION");
    await insert(page);
    await page.getByText("Put into B4.").waitFor();
    const formula = await cell("B4");
    expect(formula).toMatch(/^=IRRIG\.PIPE\.FRICTION\(/);
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("B4 is as it was.").waitFor();
    expect(await cell("B4")).toBeUndefined();

    await pane.change(
      (workbook) => (workbook.sheets[0].cells.B4 = { content: "my note", value: "my note" }),
    );
    await insert(page);
    await page.getByText("B4 already holds my note. Replace it?").waitFor();
    expect(await cell("B4")).toBe("my note");
    await page.getByRole("button", { name: "Keep what is there" }).click();
    expect(await cell("B4")).toBe("my note");
    await insert(page);
    await page.getByRole("button", { name: "Replace" }).click();
    await page.getByText("Put into B4.").waitFor();
    expect(await cell("B4")).toBe(formula);
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("B4 is as it was.").waitFor();
    expect(await cell("B4")).toBe("my note");
    expectGood(pane);
  });

  test("undo leaves alone a cell that has been changed since", async () => {
    const pane = await open();
    await openFunction(pane.page, "PIPE.FRICTION");
    await insert(pane.page);
    await pane.page.getByText("Put into B4.").waitFor();
    await pane.change(
      (workbook) => (workbook.sheets[0].cells.B4 = { content: "mine", value: "mine" }),
    );
    await pane.page.getByRole("button", { name: "Undo" }).click();
    await pane.page.getByText("B4 has been changed since, so it was left alone.").waitFor();
    expect(await pane.cell("B4")).toBe("mine");
  });

  test("a reference in an example is read from the sheet", async () => {
    const pane = await open();
    await pane.change((workbook) => (workbook.sheets[0].cells.C1 = { content: 50, value: 50 }));
    await openFunction(pane.page, "PIPE.FRICTION");
    await pane.page.getByLabel("inside", { exact: true }).fill("2.067");
    await pane.page.getByLabel("flow", { exact: true }).fill("C1");
    await expectText(pane.page.locator("output"), /^1\.730/);
    await pane.page.getByLabel("flow", { exact: true }).fill("Nothing");
    await pane.page.getByText("Nothing is no cell or name of this sheet.").waitFor();
  });

  test("cautions stand on the page of a function that concerns safety", async () => {
    const { page } = await open();
    await openFunction(page, "PIPE.SURGE");
    await page.getByText("Pressure in pipe and tubing").waitFor();
  });
});

describe("ready-made sheets", () => {
  test("a sheet becomes new worksheets; a second one gets its own names", async () => {
    const pane = await open();
    const { page } = pane;
    await tab(page, "Sheets");
    const add = page.getByRole("button", { name: /Add to this workbook: Line layout/ });
    await add.click();
    await page.getByText(/^Added: /).waitFor();
    const first = await pane.workbook();
    expect(first.sheets.length).toBeGreaterThan(1);
    expect(first.sheets[0].cells).toEqual({});
    expect(first.names.some(({ formula }) => formula.startsWith("=LAMBDA("))).toBe(true);
    const formulas = first.sheets.flatMap(({ cells }) =>
      Object.values(cells).map(({ content }) => String(content)),
    );
    expect(formulas.some((content) => content.includes("IRRIG.LATERAL.PROFILE("))).toBe(true);

    await add.click();
    await page.getByText(/\(2\)/).waitFor();
    const second = await pane.workbook();
    expect(second.sheets.length).toBe(2 * first.sheets.length - 1);
    const upper = second.names.map(({ name }) => name.toUpperCase());
    expect(new Set(upper).size).toBe(upper.length);
    expect(second.sheets.slice(0, first.sheets.length)).toEqual(first.sheets);
    expectGood(pane);
  });
});

interface Place {
  sheet: string;
  address: string;
}

/** What the stand-in remembers of the parts that are no cells. */
interface Remembered {
  sheets: {
    name: string;
    settings: Record<string, unknown>;
    look: Record<string, Record<string, unknown>>;
    rules?: unknown[];
    charts?: {
      series: { name: string; x?: Place; y?: Place; [look: string]: unknown }[];
      settings: Record<string, unknown>;
    }[];
  }[];
  quietSyncs: number;
  loudSyncs: number;
  runs: Record<string, unknown>[];
}

const remembered = (page: Page) =>
  page.evaluate(() => {
    const { sheets, quietSyncs, loudSyncs, runs } = (window as never as { standIn: Remembered })
      .standIn;
    return JSON.parse(JSON.stringify({ sheets, quietSyncs, loudSyncs, runs })) as Remembered;
  });

const addButton = (page: Page, title: string) =>
  page.getByRole("button", { name: new RegExp(`Add to this workbook: ${title}`) });

test.each(["Line layout", "Plan", "Quote", "Workshop", "Spacing what-if", "Season"])(
  "%s: the host takes every part, and no formula is blocked by a merge",
  async (title) => {
    const pane = await open();
    await tab(pane.page, "Sheets");
    await addButton(pane.page, title).click();
    await pane.page.getByText(/^Added: /).waitFor({ timeout: 30000 });
    expect(await pane.page.getByText(/did not take/).count()).toBe(0);
    const { sheets } = await pane.workbook();
    const blocked = sheets.flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(([at, { value }]) =>
        value === "#SPILL!" ? `${name}!${at}` : [],
      ),
    );
    expect(blocked).toEqual([]);
    const host = await remembered(pane.page);
    const lists = host.sheets.filter(({ settings }) => settings.visibility === "Hidden");
    const rules = host.sheets.flatMap(({ look }) =>
      Object.values(look).flatMap((one) => one["dataValidation.rule"] ?? []),
    ) as { list?: { source: string } }[];
    const leading = rules.flatMap(({ list }) => (list?.source.startsWith("=") ? list.source : []));
    expect(lists.length > 0).toBe(leading.length > 0);
    // Everything that writes does it with calculation and screen suspended, but for the last names.
    expect(host.quietSyncs).toBeGreaterThan(host.loudSyncs);
    expect(host.runs.some((one) => one.mergeUndoGroup === true)).toBe(true);
    expect(host.runs.every((one) => one.delayForCellEdit === true)).toBe(true);
    expectGood(pane);
  },
);

test("checks get their colors, charts the names of their cells, each part its sheet of paper", async () => {
  const { page } = await open();
  await tab(page, "Sheets");
  await addButton(page, "Line layout").click();
  await page.getByText(/^Added: /).waitFor();
  const { sheets } = await remembered(page);
  expect(sheets.flatMap(({ rules }) => rules ?? []).length).toBeGreaterThan(10);
  const names = sheets
    .flatMap(({ charts }) => charts ?? [])
    .flatMap(({ series }) => series.map(({ name }) => name));
  expect(names.length).toBeGreaterThan(1);
  for (const name of names) expect(name).toMatch(/^='[^']+'!\$[A-Z]+\$\d+$/);
  const line = sheets.find(({ name }) => name === "Line")!;
  expect(line.settings["pageLayout.setPrintArea"]).toEqual([expect.stringMatching(/^A1:K\d+,A/)]);
  expect(line.settings["pageLayout.zoom"]).toEqual({
    horizontalFitToPages: 1,
    verticalFitToPages: 1,
  });
});

test("a plan's drawing: both axes alike and out of sight, its plot square, each series from the page behind; a second plan draws its own", async () => {
  const { page } = await open();
  await tab(page, "Sheets");
  await addButton(page, "Plan").click();
  await page.getByText(/^Added: /).waitFor({ timeout: 60000 });
  await addButton(page, "Plan").click();
  await page.getByText(/\(2\)/).waitFor({ timeout: 60000 });
  const { sheets } = await remembered(page);
  for (const suffix of ["", " (2)"]) {
    const [drawing] = sheets.find(({ name }) => name === `Plan${suffix}`)?.charts ?? [];
    const look = drawing.settings;
    const [across, up] = ["categoryAxis", "valueAxis"].map((axis) =>
      ["minimum", "maximum", "visible"].map((what) => look[`chart.axes.${axis}.${what}`]),
    );
    expect(across).toEqual(up);
    expect(across[2]).toBe(false);
    expect(look["chart.plotArea.insideWidth"]).toBe(look["chart.plotArea.insideHeight"]);
    expect(drawing.series.length).toBeGreaterThan(8);
    for (const { name, x, y, smooth } of drawing.series) {
      expect([x?.sheet, y?.sheet]).toEqual([`Drawing${suffix}`, `Drawing${suffix}`]);
      // The stand-in computes nothing: a title that is worked out looks like a name taken as text.
      if (name.startsWith("='")) expect(name).toContain(`Drawing${suffix}`);
      // No bent edges.
      expect(smooth).toBe(false);
    }
    // Each its own x.
    expect(new Set(drawing.series.map(({ x }) => x?.address)).size).toBe(drawing.series.length);
  }
});

test("a host that takes a chart's name as text gets the text", async () => {
  const { page } = await open({ namesAreText: true });
  await tab(page, "Sheets");
  await addButton(page, "Line layout").click();
  await page.getByText(/^Added: /).waitFor();
  const { sheets } = await remembered(page);
  const names = sheets
    .flatMap(({ charts }) => charts ?? [])
    .flatMap(({ series }) => series.map(({ name }) => name));
  for (const name of names) expect(name.startsWith("='")).toBe(false);
});

test.each([
  ["charts", "Line: charts"],
  ["dataValidation", "Line: lists and limits"],
  ["conditionalFormats", "Line: colors of checks"],
  ["pageLayout", "Line: print settings"],
])("%s that the host refuses are told, and nothing else is lost", async (part, told) => {
  const pane = await open();
  const { page } = pane;
  await page.evaluate((kind) => {
    (window as never as { standIn: { refuses: string[] } }).standIn.refuses = [kind];
  }, part);
  await tab(page, "Sheets");
  await addButton(page, "Line layout").click();
  await page.getByText(/The numbers are all there, but this Excel did not take:/).waitFor();
  await page.getByText(told).waitFor();
  const { sheets } = await pane.workbook();
  const formulas = sheets.flatMap(({ cells }) => Object.values(cells)).length;
  expect(formulas).toBeGreaterThan(300);
});

test("a sheet that the host refuses half-way leaves nothing behind", async () => {
  const pane = await open();
  await pane.change((workbook) => (workbook.fail = "The name is not valid here."));
  await tab(pane.page, "Sheets");
  await addButton(pane.page, "Line layout").click();
  await pane.page.getByText("Excel says: The name is not valid here.").waitFor();
  const { sheets, names } = await pane.workbook();
  expect(sheets.map(({ name }) => name)).toEqual(["Sheet1"]);
  expect(names).toEqual([]);
});

test("a workbook whose structure is protected is said so, and left alone", async () => {
  const pane = await open();
  await pane.page.evaluate(() => {
    (window as never as { standIn: { protected: boolean } }).standIn.protected = true;
  });
  await tab(pane.page, "Sheets");
  await addButton(pane.page, "Line layout").click();
  await pane.page.getByText("The workbook's structure is protected").waitFor();
  expect((await pane.workbook()).sheets).toHaveLength(1);
});

test("while a cell is being typed in the pane waits, and then goes on", async () => {
  const pane = await open();
  const editing = (yes: boolean) =>
    pane.page.evaluate((now) => {
      (window as never as { standIn: { editing: boolean } }).standIn.editing = now;
    }, yes);
  await openFunction(pane.page, "PIPE.FRICTION");
  await editing(true);
  await insert(pane.page);
  await pane.page.waitForTimeout(300);
  expect(await pane.cell("B4")).toBeUndefined();
  await editing(false);
  await pane.page.getByText("Put into B4.").waitFor();
  expectGood(pane);
});

test("cells stuck at #NAME? are entered again, as the host spells them", async () => {
  const pane = await open();
  const { page } = pane;
  await pane.change((workbook) => {
    workbook.sheets[0].cells = {
      B2: { content: "=_xldudf_IRRIG_SET_TIME(1.4,0.17,0.75)", value: "#NAME?" },
      B3: { content: "=IRRIG.SET.TIME(1,0.2,0.8)", value: "#NAME?" },
    };
  });
  await tab(page, "Check");
  await page.getByRole("button", { name: "Check this sheet" }).click();
  await page.getByRole("button", { name: "Enter these 2 cells again" }).click();
  await page.getByText("2 cells were entered again.").waitFor();
  const { cells } = (await pane.workbook()).sheets[0];
  expect(cells.B2.content).toBe("=IRRIG.SET.TIME(1.4,0.17,0.75)");
  expect(cells.B3.content).toBe("=IRRIG.SET.TIME(1,0.2,0.8)");
  await page.getByText("No errors, and every check is OK").waitFor();
  expectGood(pane);
});

describe("own names", () => {
  const fill = async (page: Page, name: string, fixed: Record<string, string>) => {
    await page.getByLabel("Function", { exact: true }).selectOption("PIPE.FRICTION");
    for (const [argument, text] of Object.entries(fixed)) {
      await page.getByLabel(argument, { exact: true }).fill(text);
    }
    await page.getByLabel("Name", { exact: true }).fill(name);
  };
  const store = (page: Page) => page.getByRole("button", { name: "Store the name" }).click();

  test("make, change, rename and delete a name", async () => {
    const pane = await open();
    const { page } = pane;
    await tab(page, "Names");
    await fill(page, "MYLOSS", { inside: "2.165", friction: "140" });
    await page.getByLabel("Description").fill("63 mm tubing");
    await store(page);
    await page.getByText("MYLOSS is stored.").waitFor();
    expect((await pane.workbook()).names).toMatchObject([
      {
        name: "MYLOSS",
        formula: "=LAMBDA(flow,length,IRRIG.PIPE.FRICTION(flow,2.165,length,,140))",
        comment: "63 mm tubing",
      },
    ]);
    await page.getByRole("heading", { name: "MYLOSS(flow, length)" }).waitFor();

    await page.getByRole("button", { name: "Change MYLOSS" }).click();
    await page.getByLabel("inside", { exact: true }).fill("1.73");
    await store(page);
    await page.getByText("1.73,length").first().waitFor();
    expect((await pane.workbook()).names).toMatchObject([
      { name: "MYLOSS", formula: expect.stringContaining("1.73") },
    ]);

    await page.getByRole("button", { name: "Change MYLOSS" }).click();
    await page.getByLabel("Name", { exact: true }).fill("LOSS50");
    await store(page);
    await page.getByText("LOSS50 is stored.").waitFor();
    expect((await pane.workbook()).names.map(({ name }) => name)).toEqual(["LOSS50"]);

    await page.getByRole("button", { name: "Delete LOSS50" }).click();
    await page.getByRole("button", { name: "Delete", exact: true }).click();
    await page.getByText("LOSS50 is deleted.").waitFor();
    expect((await pane.workbook()).names).toEqual([]);
    expectGood(pane);
  });

  test.each([
    ["A1", "This reads as the address of a cell."],
    ["my loss", "no spaces"],
    ["", "Give it a name."],
    ["units", "The workbook already has this name."],
  ])("the name %p is refused", async (name, reason) => {
    const pane = await open();
    await pane.change((workbook) =>
      workbook.names.push({ name: "Units", formula: "=Sheet1!$A$1", comment: "", value: "" }),
    );
    await tab(pane.page, "Names");
    await fill(pane.page, name, { inside: "2" });
    await store(pane.page);
    await pane.page.getByText(reason).waitFor();
    expect((await pane.workbook()).names).toHaveLength(1);
  });

  test("a host without LAMBDA is named plainly, and nothing is stored", async () => {
    const pane = await open({ lambda: false });
    await tab(pane.page, "Names");
    await fill(pane.page, "MYLOSS", { inside: "2" });
    await store(pane.page);
    await pane.page.getByText("This Excel has no LAMBDA").waitFor();
    expect((await pane.workbook()).names).toEqual([]);
  });

  test("the host's own refusal is shown, and the old name stays", async () => {
    const pane = await open();
    const { page } = pane;
    await tab(page, "Names");
    await fill(page, "MYLOSS", { inside: "2" });
    await store(page);
    await page.getByText("MYLOSS is stored.").waitFor();
    await pane.change((workbook) => (workbook.fail = "The formula is not valid here."));
    await fill(page, "OTHER", { inside: "3" });
    await store(page);
    await page.getByText("Excel says: The formula is not valid here.").waitFor();
    expect((await pane.workbook()).names.map(({ name }) => name)).toEqual(["MYLOSS"]);
  });

  test("an old build is warned of", async () => {
    const { page } = await open({ version: "16.0.18000.20000" });
    await tab(page, "Names");
    await page.getByText("16.0.18000.20000").waitFor();
  });
});

describe("check this sheet", () => {
  test("errors with their messages and checks that are not OK, each with a way there", async () => {
    const pane = await open();
    const { page } = pane;
    await pane.change((workbook) => {
      const put = (address: string, content: string, value: unknown) => {
        workbook.sheets[0].cells[address] = { content, value };
      };
      put("A1", "=IRRIG.PIPE.FRICTION(50,-2,100)", "#VALUE!");
      put("A2", "=IRRIG.PIPE.FRICTION(C1,2,100)", "#VALUE!");
      put("A3", "=IRRIG.PIPE.FRICTION(C1*2,2,100)", "#VALUE!");
      put("A4", "=IRRIG.CHECK.RATE(0.5,0.3)", "Too fast for this soil.");
      put("A5", "=IRRIG.PIPE.FRICTION(50,2,100)", 2);
      put("C1", "text", "text");
    });
    await tab(page, "Check");
    await page.getByRole("button", { name: "Check this sheet" }).click();
    await page
      .getByText("5 using the functions, 3 with an error, 1 with a check that is not OK")
      .waitFor();
    await page.getByText("inside must be above 0 in; got -2").waitFor();
    await page.getByText('flow must be a number, 0 gpm or more; got "text"').waitFor();
    await page.getByText("Its message stands at the cell's own error mark.").waitFor();
    await page.getByText("Too fast for this soil.").waitFor();
    await page.getByRole("button", { name: "Go to A4" }).click();
    expect((await pane.workbook()).selection).toEqual({ sheet: "Sheet1", address: "A4" });
    expectGood(pane);
  });

  test("an empty sheet and a clean one", async () => {
    const pane = await open();
    await tab(pane.page, "Check");
    const run = pane.page.getByRole("button", { name: "Check this sheet" });
    await run.click();
    await pane.page.getByText("No cell of Sheet1 uses the functions.").waitFor();
    await pane.change(
      (workbook) => (workbook.sheets[0].cells.A1 = { content: "=IRRIG.SET.TIME(1,2)", value: 0.5 }),
    );
    await run.click();
    await pane.page.getByText("No errors, and every check is OK.").waitFor();
  });
});

describe("line picture", () => {
  const putProfile = (pane: Opened) =>
    pane.change((workbook) => {
      const rows: unknown[][] = [
        [
          "head",
          "distance (ft)",
          "elevation (ft)",
          "inside diameter (in)",
          "line pressure (psi)",
          "nozzle pressure (psi)",
          "head flow (gpm)",
          "segment flow (gpm)",
        ],
        [1, 45, 0, 2.16, 50, 49, 4.3, 8.5],
        [2, 90, 1, 1.73, 48, 47, 4.2, 4.2],
      ];
      rows.forEach((row, i) =>
        row.forEach((value, j) => {
          workbook.sheets[0].cells[`${String.fromCharCode(65 + j)}${i + 1}`] = {
            content: value,
            value,
          };
        }),
      );
      workbook.sheets[0].region = "A1:H3";
      workbook.selection = { sheet: "Sheet1", address: "B2" };
    });

  test("a selected profile is drawn, with its numbers, and copied as an image", async () => {
    const pane = await open({}, { permissions: ["clipboard-read", "clipboard-write"] });
    const { page } = pane;
    await putProfile(pane);
    await tab(page, "Picture");
    await page.getByRole("button", { name: "Draw the selected line" }).click();
    await page.getByText("2 heads; nozzle pressure from 47 psi at head 2 to 49 psi.").waitFor();
    expect(await page.locator("svg.chart").count()).toBe(2);
    await page.getByRole("button", { name: "Copy as image: Pressure along the line" }).click();
    await page.getByText("The picture is on the clipboard.").waitFor();
    const copied = await page.evaluate(async () => (await navigator.clipboard.read())[0].types);
    expect(copied).toEqual(["image/png"]);
    expectGood(pane);
  });

  test("anything else is told apart", async () => {
    const pane = await open();
    await tab(pane.page, "Picture");
    await pane.page.getByRole("button", { name: "Draw the selected line" }).click();
    await pane.page.getByText("The selection is not a table of LATERAL.PROFILE").waitFor();
  });
});

test("text from cells and names is never read as HTML", async () => {
  const pane = await open();
  const { page } = pane;
  await pane.change((workbook) => {
    const hostile = '<img src=x onerror="window.broken=1"><script>window.broken=1</script>';
    workbook.sheets[0].cells.B4 = { content: hostile, value: hostile };
    workbook.sheets[0].cells.A1 = { content: `=IRRIG.CHECK.RATE(1,"${hostile}")`, value: hostile };
    workbook.sheets[0].name = hostile.slice(0, 31);
    workbook.active = workbook.selection.sheet = workbook.sheets[0].name;
    workbook.names.push({
      name: "X",
      comment: hostile,
      formula: `=LAMBDA(flow,IRRIG.PIPE.FRICTION(flow,"${hostile}",1))`,
      value: "",
    });
  });
  await openFunction(page, "PIPE.FRICTION");
  await insert(page);
  await page.getByText(/already holds <img/).waitFor();
  await tab(page, "Check");
  await page.getByRole("button", { name: "Check this sheet" }).click();
  await page.getByText(/1 with a check/).waitFor();
  await tab(page, "Names");
  await page.getByRole("heading", { name: "X(flow)" }).waitFor();
  expect(await page.locator("img").count()).toBe(0);
  expect(await page.evaluate(() => (window as { broken?: number }).broken)).toBeUndefined();
  expectGood(pane);
});

test("keyboard alone: tabs, search, a page, insert, undo", async () => {
  const pane = await open();
  const { page } = pane;
  const press = (...keys: string[]) =>
    keys.reduce((turn, key) => turn.then(() => page.keyboard.press(key)), Promise.resolve());
  await press("Tab");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Español");
  await press("Tab");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("tab-functions");
  await press("ArrowRight");
  await page.getByText("Each becomes new worksheets in this workbook.").waitFor();
  await press("ArrowLeft", "Tab");
  await page.keyboard.type("friction");
  await press("Tab", "Enter");
  await page.getByRole("heading", { name: "PIPE.FRICTION" }).waitFor();
  await page.getByRole("button", { name: "Insert in the selected cell" }).focus();
  await press("Enter");
  await page.getByText("Put into B4.").waitFor();
  await press("Enter");
  await page.getByText("B4 is as it was.").waitFor();
});

describe("every view, without a violation", () => {
  const views = ["Functions", "Sheets", "Names", "Check", "Picture"];
  const looks: [string, BrowserContextOptions, Record<string, unknown>][] = [
    ["light, 320 px", { viewport: { width: 320, height: 800 } }, {}],
    ["dark, 450 px", { viewport: { width: 450, height: 800 } }, { background: "#212121" }],
    [
      "high contrast, 1280 px",
      { viewport: { width: 1280, height: 800 }, forcedColors: "active" },
      {},
    ],
  ];
  test.each(looks)("%s", async (_, options, settings) => {
    const pane = await open(settings, { ...options, bypassCSP: true });
    const { page } = pane;
    await page.addScriptTag({ content: axe });
    const check = async (what: string) => {
      const violations = await page.evaluate(async () => {
        const runner = (
          window as never as {
            axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
          }
        ).axe;
        return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`);
      });
      expect({ what, violations }).toEqual({ what, violations: [] });
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect({ what, overflow }).toEqual({ what, overflow: 0 });
    };
    for (const view of views) {
      await tab(page, view);
      await check(view);
    }
    await tab(page, "Functions");
    await openFunction(page, "LATERAL.PROFILE");
    await check("LATERAL.PROFILE");
    await insert(page);
    await page.getByText("Put into B4.").waitFor();
    await check("after inserting");
  });
});

describe("the host's real script", () => {
  test("outside Excel the pane still helps and says that it can't insert", async () => {
    const { page, misdeeds } = await openPage(browser, `${server.address}taskpane.html`, {
      before: async (fresh) => {
        await fresh.route(HOST_SCRIPT, (route) => {
          const file = new URL(route.request().url()).pathname.replace("/lib/1/hosted/", "/");
          return route.fulfill({ path: join(officeScripts, file) });
        });
      },
    });
    await page.getByLabel("Search functions").waitFor();
    await openFunction(page, "PIPE.FRICTION");
    await expectText(page.locator("output"), /^\d/);
    await tab(page, "Sheets");
    await page.getByText("This pane is not open in Excel").waitFor();
    // The host's script tries to open a frame of another address; the page's policy blocks it, which is right.
    const blocked = /^Framing .* violates the following Content Security Policy directive/;
    expect(misdeeds.errors.filter((error) => !blocked.test(error))).toEqual([]);
  });
});

test("an older host is told what it lacks", async () => {
  const { page } = await open({
    sets: { "ExcelApi 1.12": false, "CustomFunctionsRuntime 1.2": false },
  });
  await page.getByText("This Excel is too old for:").waitFor();
});

async function expectText(locator: ReturnType<Page["locator"]>, pattern: RegExp): Promise<void> {
  await locator.filter({ hasText: pattern }).first().waitFor({ timeout: 5000 });
}
