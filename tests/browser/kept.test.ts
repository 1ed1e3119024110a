import { execFileSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { AxeResults } from "axe-core";
import type { BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import type { Grid } from "../../src/trial/grid";
import { people } from "../support/people";

declare const trialGrid: Grid;
declare const axe: { run(context: { exclude: string[][] }): Promise<AxeResults> };

const WIDE: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };
const NARROW: BrowserContextOptions = { viewport: { width: 390, height: 844 } };
const PATIENCE = { timeout: 60000 };

const { address, someone } = people();

async function visit(context: BrowserContext, hash = ""): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address() + hash);
  await page.waitForSelector("#work-choice", PATIENCE);
  return page;
}

async function withGrid(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector(".chosen") !== null, undefined, PATIENCE);
}

async function fill(page: Page, label: string | RegExp, value: string): Promise<void> {
  const field = page.getByLabel(label).first();
  await field.fill(value);
  await field.blur();
}

function valueOf(page: Page, label: string | RegExp): Promise<string> {
  // What leads to a field where something is wrong bears its name too.
  const field = page.locator("input, textarea, select");
  return page.getByLabel(label).and(field).first().inputValue();
}

async function eventually(check: () => Promise<void>): Promise<void> {
  const end = Date.now() + 60000;
  for (;;) {
    try {
      return await check();
    } catch (failure) {
      if (Date.now() > end) throw failure;
      await new Promise((resolve) => setTimeout(resolve, 150));
    }
  }
}

async function work(page: Page, entry: string): Promise<void> {
  await page.locator(".work-buttons summary").click();
  await page.locator(".menu-entries").getByRole("button", { name: entry, exact: true }).click();
}

/** The words of each sheet of paper. */
async function paper(page: Page): Promise<string[]> {
  const pdf = join(tmpdir(), `fieldsum-${process.pid}.pdf`);
  writeFileSync(pdf, await page.pdf({ format: "Letter" }));
  try {
    const text = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" });
    return text.split("\f").filter((sheet) => sheet.trim() !== "");
  } finally {
    rmSync(pdf);
  }
}

const HEADS = "Sprinklers on the line";

describe.each([
  ["on a phone", NARROW],
  ["beside the grid", WIDE],
])("%s", (_, options) => {
  test("what was typed is there after a reload, after Back and after another workbook", async () => {
    const page = await visit(await someone(options));
    if (options === WIDE) await withGrid(page);
    await fill(page, HEADS, "11");
    await eventually(async () => {
      await expect(page.locator("#work-choice").innerText()).resolves.toContain("My line layout");
    });
    await page.reload();
    await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("11"));
    await page.selectOption("#sheet-choice", "quote");
    await page.waitForURL(/#quote\/us\/Quote/);
    await page.goBack();
    await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("11"));
    await page.goForward();
    await page.selectOption("#sheet-choice", "line-layout");
    await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("11"));
  });

  test("undo and redo go through what was typed", async () => {
    const page = await visit(await someone(options));
    if (options === WIDE) await withGrid(page);
    await fill(page, HEADS, "11");
    await page.waitForTimeout(400);
    await fill(page, HEADS, "10");
    await page.waitForTimeout(400);
    const undo = page.getByRole("button", { name: "Undo" });
    await undo.click();
    await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("11"));
    await undo.click();
    await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("14"));
    await page.getByRole("button", { name: "Redo" }).click();
    await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("11"));
  });
});

test("what was typed before the grid came can be taken back, and taken again, with it", async () => {
  const page = await visit(await someone(NARROW));
  await fill(page, HEADS, "11");
  await page.waitForTimeout(400);
  await fill(page, HEADS, "10");
  await page.waitForTimeout(400);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("button", { name: "Spreadsheet" }).click();
  await withGrid(page);
  await page.getByRole("button", { name: "Answers" }).click();
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("11"));
  await page.getByRole("button", { name: "Redo" }).click();
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("10"));
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("button", { name: "Undo" }).click();
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("14"));
});

test("formulas, formats and pages of the user's own are kept with the workbook", async () => {
  const page = await visit(await someone(WIDE));
  await withGrid(page);
  const own = { page: "Line", row: 2, column: 15 };
  await page.evaluate((place) => trialGrid.enter(place, "=Heads*2"), own);
  await page.evaluate(() => {
    const book = (trialGrid as unknown as { book(): { create(...of: unknown[]): void } }).book();
    book.create("Notes", 20, 10);
  });
  await page.evaluate(() => {
    trialGrid.enter({ page: "Notes", row: 0, column: 0 }, "=Heads+1");
    const sheet = (
      trialGrid as unknown as {
        sheet(name: string): {
          getRange(row: number, column: number): { setFontWeight(w: string): void };
        };
      }
    ).sheet("Line");
    sheet.getRange(13, 3).setFontWeight("bold");
  });
  await fill(page, HEADS, "9");
  await page.waitForTimeout(800);
  await page.reload();
  await withGrid(page);
  await eventually(async () => {
    const seen = await page.evaluate((place) => {
      const grid = trialGrid as unknown as {
        sheet(name: string): {
          getRange(r: number, c: number): { getCellStyleData(): { bl?: number } | null };
        };
      };
      return [
        trialGrid.formula(place),
        trialGrid.read(place).value,
        trialGrid.read({ page: "Notes", row: 0, column: 0 }).value,
        grid.sheet("Line").getRange(13, 3).getCellStyleData()?.bl,
      ];
    }, own);
    expect(seen).toEqual(["=Heads*2", 18, 10, 1]);
  });
});

test("what was typed in the very last moment before a reload is there", async () => {
  const page = await visit(await someone(WIDE));
  await withGrid(page);
  await page.evaluate(() => {
    trialGrid.enter({ page: "Line", row: 13, column: 3 }, "9");
    location.reload();
  });
  await page.waitForTimeout(500);
  await page.waitForSelector("#work-choice", PATIENCE);
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("9"));
});

test("rows of a ready-made page stay where they are, and it is said", async () => {
  const page = await visit(await someone(WIDE));
  await withGrid(page);
  const before = await page.evaluate(
    () => trialGrid.read({ page: "Line", row: 13, column: 3 }).value,
  );
  await page.evaluate(() => {
    const grid = trialGrid as unknown as {
      sheet(name: string): { insertRowBefore(at: number): void };
    };
    try {
      grid.sheet("Line").insertRowBefore(5);
    } catch {
      // Refused.
    }
  });
  await page.waitForTimeout(500);
  await expect(
    page.evaluate(() => trialGrid.read({ page: "Line", row: 13, column: 3 }).value),
  ).resolves.toBe(before);
  await expect(page.locator(".work-said").innerText()).resolves.toContain("stay where they are");
});

test("a blank start, the sample and the list lose nothing; deleting asks", async () => {
  const page = await visit(await someone(NARROW));
  await fill(page, HEADS, "11");
  await page.waitForTimeout(400);
  await work(page, "Start blank");
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe(""));
  await work(page, "Back to the sample");
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("14"));
  await page.selectOption("#work-choice", { label: "My line layout (US)" });
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("11"));
  await work(page, "Rename…");
  await page.locator("#ask-line").fill("North forty");
  await page.getByRole("button", { name: "Rename" }).click();
  await eventually(() =>
    expect(page.locator(".work-said").innerText()).resolves.toContain("North forty"),
  );
  await work(page, "Delete…");
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect(valueOf(page, HEADS)).resolves.toBe("11");
  await work(page, "Delete…");
  await page.getByRole("button", { name: "Delete it" }).click();
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("14"));
  await expect(page.locator("#work-choice option").allInnerTexts()).resolves.toEqual([
    "Sample: Bluestem Flat (US)",
    "My line layout 2 (US)",
  ]);
  await page.evaluate(readFileSync(join(require.resolve("axe-core"), "..", "axe.min.js"), "utf8"));
  await page.locator(".work-buttons summary").click();
  const { violations } = await page.evaluate(() => axe.run({ exclude: [[".grid-canvas"]] }));
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
});

describe("the keyboard stays where it is", () => {
  test.each([
    ["nowhere", undefined],
    ["in a field of the form", HEADS],
  ])("digits typed while the grid loads change no cell: %s", async (_, label) => {
    const page = await visit(await someone(WIDE));
    if (label !== undefined) await page.getByLabel(label).first().click();
    const title = page.locator("#sheet-title");
    const before = await title.innerText();
    let digits = 0;
    await eventually(async () => {
      await page.keyboard.press("Backspace");
      await page.keyboard.type(String(++digits % 10));
      expect(await page.locator(".chosen").count()).toBe(1);
    });
    for (let i = 0; i < 20; i++) await page.keyboard.type("7", { delay: 30 });
    await page.waitForTimeout(800);
    await expect(title.innerText()).resolves.toBe(before);
    const read = await page.evaluate(() => ({
      title: trialGrid.read({ page: "Line", row: 0, column: 0 }).value,
      inGrid: document.querySelector("#grid")?.contains(document.activeElement),
    }));
    expect(read).toEqual({ title: "Line layout: Bluestem Flat", inGrid: false });
    if (label !== undefined) {
      expect(digits).toBeGreaterThan(3);
      await expect(valueOf(page, label)).resolves.toContain("7777777");
    }
  });

  test("Escape and then Tab leaves the grid, forward and back", async () => {
    const page = await visit(await someone(WIDE));
    await withGrid(page);
    const where = () =>
      page.evaluate(() => {
        const now = document.activeElement;
        if (document.querySelector("#grid")?.contains(now)) return "in";
        const follows = document.querySelector("#grid")?.compareDocumentPosition(now as Node) ?? 0;
        return (follows & Node.DOCUMENT_POSITION_FOLLOWING) !== 0 ? "after" : "before";
      });
    for (const [keys, expected] of [
      [["Tab"], "in"],
      [["Escape", "Tab"], "after"],
      [["Escape", "Shift+Tab"], "before"],
    ] as const) {
      await page.locator("#grid .grid-canvas").click({ position: { x: 300, y: 250 } });
      await eventually(async () => expect(await where()).toBe("in"));
      for (const key of keys) await page.keyboard.press(key);
      await page.waitForTimeout(100);
      await expect(where()).resolves.toBe(expected);
    }
    await expect(page.locator(".keys").innerText()).resolves.toContain("Esc and then Tab");
  });
});

describe("a comma", () => {
  test("typed into the grid's canvas is a decimal mark where it can be no other", async () => {
    const page = await visit(await someone(WIDE));
    await withGrid(page);
    for (const [typed, read] of [
      ["0,175", 0.175],
      ["1,500", "1,500"],
      ["1.234,5", "1.234,5"],
      ["72,75,69", "72,75,69"],
    ]) {
      await typeIntoCanvas(page, String(typed));
      await eventually(async () =>
        expect(
          await page.evaluate(() => trialGrid.read({ page: "Line", row: 13, column: 3 }).value),
        ).toBe(read),
      );
    }
  });

  test("pasted as a table into the grid, and typed into the form, is read in the same way", async () => {
    const context = await someone(WIDE);
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    const page = await visit(context);
    await withGrid(page);
    await page.evaluate(() => navigator.clipboard.writeText("0,175\t1,500\n3,7\t1234,5"));
    await focusCanvas(page);
    await page.evaluate(() => trialGrid.select({ page: "Line", row: 1, column: 16 }));
    await page.keyboard.press("Control+v");
    await eventually(async () =>
      expect(
        await page.evaluate(() =>
          [
            [1, 16],
            [1, 17],
            [2, 16],
            [2, 17],
          ].map(([row, column]) => trialGrid.read({ page: "Line", row, column }).value),
        ),
      ).toEqual([0.175, "1,500", 3.7, 1234.5]),
    );
    await fill(page, "Sprinkler spacing", "1,500");
    await eventually(() =>
      expect(page.locator("#reading").innerText()).resolves.toContain(
        '"1,500" can be read in two ways: type 1500 or 1.500.',
      ),
    );
    await fill(page, "Sprinkler spacing", "44,5");
    await eventually(() => expect(valueOf(page, "Sprinkler spacing")).resolves.toBe("44.5"));
  });
});

/** Gives the keyboard to the grid as a user does, by a click into it. */
async function focusCanvas(page: Page): Promise<void> {
  await page.locator("#grid .grid-canvas").click({ position: { x: 300, y: 250 } });
}

async function typeIntoCanvas(page: Page, text: string): Promise<void> {
  await focusCanvas(page);
  await page.evaluate(() => trialGrid.select({ page: "Line", row: 13, column: 3 }));
  await page.keyboard.type(text, { delay: 20 });
  await page.keyboard.press("Enter");
}

describe("units", () => {
  test("the sample opens in other units; typed work is asked about and converted, never relabeled", async () => {
    const page = await visit(await someone(NARROW));
    const units = (system: string) =>
      page.locator(`input[name="system"][value="${system}"]`).check({ force: true });
    await units("SI");
    await page.waitForURL(/#line-layout\/si/);
    await units("US");
    await page.waitForURL(/#line-layout\/us/);
    await fill(page, "Sprinkler spacing", "40");
    await page.waitForTimeout(400);
    await page.locator('input[name="system"][value="SI"]').click({ force: true });
    await page.getByRole("button", { name: "Stay in US" }).click();
    await expect(valueOf(page, "Sprinkler spacing")).resolves.toBe("40");
    await expect(page.locator('input[name="system"][value="US"]').isChecked()).resolves.toBe(true);
    await page.locator('input[name="system"][value="SI"]').click({ force: true });
    await page.getByRole("button", { name: "Convert to SI" }).click();
    await page.waitForURL(/#line-layout\/si/);
    await eventually(() => expect(valueOf(page, "Sprinkler spacing")).resolves.toBe("12.192"));
    await expect(page.locator("#work-choice option").allInnerTexts()).resolves.toEqual([
      "Sample: Bluestem Flat (SI)",
      "My line layout, SI (SI)",
      "My line layout (US)",
    ]);
    await page.goBack();
    await eventually(() => expect(valueOf(page, "Sprinkler spacing")).resolves.toBe("40"));
  });

  test("the cell that relabels is no field of the form, and the grid puts it back and says why", async () => {
    const page = await visit(await someone(WIDE));
    await withGrid(page);
    await expect(page.getByLabel("Units of this workbook").count()).resolves.toBe(0);
    const at = { page: "Line", row: 8, column: 3 };
    await expect(page.evaluate((place) => trialGrid.read(place).value, at)).resolves.toBe("US");
    await page.evaluate((place) => trialGrid.enter(place, "SI"), at);
    await eventually(async () =>
      expect(await page.evaluate((place) => trialGrid.read(place).value, at)).toBe("US"),
    );
    await eventually(() =>
      expect(page.locator(".work-said").innerText()).resolves.toContain("chosen at the top"),
    );
  });
});

test.each([0, 15, 90])(
  "a function's name that was typed out stays what it is, %p ms from key to key",
  async (delay) => {
    const page = await visit(await someone(WIDE));
    await withGrid(page);
    const at = { page: "Line", row: 13, column: 3 };
    for (const [typed, entered] of [
      ['=IRRIG.PIPE.INSIDE("ISO PE",63,17)', '=IRRIG.PIPE.INSIDE("ISO PE",63,17)'],
      ["=irrig.set.time(1.5,0.18,0.75)", "=IRRIG.SET.TIME(1.5,0.18,0.75)"],
      ["=SUM(1,2)", "=SUM(1,2)"],
    ]) {
      await focusCanvas(page);
      await page.evaluate((place) => trialGrid.select(place), at);
      await page.evaluate(() => trialGrid.quiet());
      await page.waitForFunction(
        ({ row, column }) => {
          const chosen = trialGrid.chosen();
          const isHere = chosen?.row === row && chosen.column === column;
          return isHere && document.activeElement?.closest("#grid") !== null;
        },
        at,
        { timeout: 30000 },
      );
      await page.keyboard.type(typed, { delay });
      // While its list of names is still coming the grid may let Enter pass: it is pressed again.
      await eventually(async () => {
        await page.keyboard.press("Enter");
        expect((await page.evaluate((place) => trialGrid.formula(place), at)).toUpperCase()).toBe(
          entered,
        );
      });
    }
  },
);

describe("in and out", () => {
  /** Saves by the menu and gives the file's bytes. */
  async function saveFile(page: Page, entry = "Save as .xlsx") {
    const [download] = await Promise.all([
      page.waitForEvent("download", PATIENCE),
      work(page, entry),
    ]);
    return { name: download.suggestedFilename(), path: await download.path() };
  }

  async function openFile(page: Page, file: { name: string; path?: string; buffer?: Buffer }) {
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      work(page, "Open .xlsx…"),
    ]);
    await chooser.setFiles({
      name: file.name,
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: file.buffer ?? readFileSync(file.path ?? ""),
    });
  }

  test.each([
    ["on a phone", NARROW],
    ["beside the grid", WIDE],
  ])("%s: a file opens again to the same values, in another browser too", async (_, options) => {
    const page = await visit(await someone(options));
    if (options === WIDE) await withGrid(page);
    await fill(page, HEADS, "12");
    await fill(page, "Name of the field", "North & <forty>");
    await eventually(async () => {
      expect(await page.locator(".answers").innerText()).toContain("12 sprinklers");
    });
    const answers = await page.locator(".answers").innerText();
    const file = await saveFile(page);
    expect(file.name).toBe("My line layout.xlsx");
    const other = await visit(await someone(NARROW), "#season/si");
    await openFile(other, file);
    await eventually(() => expect(valueOf(other, HEADS)).resolves.toBe("12"));
    await expect(valueOf(other, "Name of the field")).resolves.toBe("North & <forty>");
    await eventually(async () => expect(await other.locator(".answers").innerText()).toBe(answers));
  });

  test("a copy with values only is saved, and refused in words when opened", async () => {
    const page = await visit(await someone(NARROW));
    const copy = await saveFile(page, "Save a copy with values only");
    expect(copy.name).toBe("Line layout, values only.xlsx");
    await openFile(page, copy);
    await expect(page.locator("dialog").innerText()).resolves.toContain("values only");
    await page.getByRole("button", { name: "Close" }).click();
    await openFile(page, { name: "bad.xlsx", buffer: Buffer.from("PK\u0003\u0004 no file") });
    await expect(page.locator("dialog").innerText()).resolves.toContain("damaged");
    await page.getByRole("button", { name: "Close" }).click();
    await expect(page.locator("#work-choice option").count()).resolves.toBe(1);
  });

  test("a link carries what was changed; nothing of it is kept or sent until it is worked on", async () => {
    const context = await someone(NARROW);
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    const page = await visit(context);
    await fill(page, HEADS, "12");
    await page.waitForTimeout(400);
    await work(page, "Copy link");
    await eventually(() =>
      expect(page.locator(".work-said").innerText()).resolves.toContain("copied"),
    );
    const address = await page.evaluate(() => navigator.clipboard.readText());
    const other = await someone(NARROW);
    const asked: string[] = [];
    const visitor = await other.newPage();
    visitor.on("request", (request) => asked.push(request.url()));
    await visitor.goto(address);
    await visitor.waitForSelector("#work-choice");
    await eventually(() => expect(valueOf(visitor, HEADS)).resolves.toBe("12"));
    // The part of an address behind its # stays in the browser.
    expect(asked.filter((url) => url.includes("with="))).toEqual([]);
    expect(
      await visitor.evaluate(() =>
        Object.keys(localStorage).filter((key) => key.includes(":work:")),
      ),
    ).toEqual([]);
    await visitor.reload();
    await eventually(() => expect(valueOf(visitor, HEADS)).resolves.toBe("12"));
    await fill(visitor, HEADS, "13");
    await eventually(() =>
      expect(visitor.locator(".work-said").innerText()).resolves.toContain("Kept"),
    );
    await visitor.goto(`${address.slice(0, -5)}`);
    await eventually(() =>
      expect(visitor.locator(".work-said").innerText()).resolves.toContain("damaged"),
    );
  });

  test("every ready-made workbook can be had as a file, in both units", async () => {
    const page = await visit(await someone(NARROW));
    await work(page, "Ready-made workbooks…");
    const links = await page
      .locator(".downloads a")
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    // Six workbooks, with formulas and as values, in both units.
    expect(links.length).toBe(24);
    for (const link of links) {
      const answer = await page.request.get(link);
      expect([link, answer.status()]).toEqual([link, 200]);
      expect((await answer.body()).subarray(0, 2).toString()).toBe("PK");
    }
  });

  test("every page of every workbook has an address of its own", async () => {
    const page = await visit(await someone(NARROW), "#quote/si/Prices");
    await expect(
      page.locator('#choose button[aria-pressed="true"]').first().innerText(),
    ).resolves.toBe("Prices");
    await page.locator(".tabs").getByRole("button", { name: "Cost", exact: true }).click();
    await page.waitForURL(/#quote\/si\/Cost/);
    await page.goBack();
    await page.waitForURL(/#quote\/si\/Prices/);
    await page.goto(`${address()}#workshop/us/Rate%20and%20soil`);
    await eventually(() =>
      expect(page.locator("#sheet-title").innerText()).resolves.toContain("rain"),
    );
    await page.getByRole("link", { name: "Catch cans" }).click();
    await page.waitForURL(/#cans/);
    await page.goBack();
    await page.waitForURL(/#workshop\/us\/Rate%20and%20soil/);
    await expect(page.locator("#sheet").isVisible()).resolves.toBe(true);
  });
});

test("one plan in all workbooks: the same field is typed once, prices stay", async () => {
  const page = await visit(await someone(NARROW));
  await fill(page, HEADS, "12");
  await fill(page, "Name of the field", "North forty");
  await page.waitForTimeout(400);
  await work(page, "Use this plan in…");
  await page.getByRole("button", { name: "Quote: a new piece of work" }).click();
  await page.waitForURL(/#quote\/us/);
  await eventually(() =>
    expect(page.locator(".answers").innerText()).resolves.toContain("12 sprinklers"),
  );
  await page.locator(".tabs").getByRole("button", { name: "Prices", exact: true }).click();
  await fill(page, /Markup/, "0.4");
  await page.waitForTimeout(400);
  await page.selectOption("#work-choice", { label: "My line layout (US)" });
  await eventually(() => expect(valueOf(page, HEADS)).resolves.toBe("12"));
  await fill(page, HEADS, "10");
  await page.waitForTimeout(400);
  await work(page, "Use this plan in…");
  await page.getByRole("button", { name: /Quote: bring/ }).click();
  await page.waitForURL(/#quote\/us/);
  await eventually(() =>
    expect(page.locator(".answers").innerText()).resolves.toContain("10 sprinklers"),
  );
  await page.locator(".tabs").getByRole("button", { name: "Prices", exact: true }).click();
  await expect(valueOf(page, /Markup/)).resolves.toBe("0.4");
});

describe("printed", () => {
  test("the quote stands on one sheet: from, for, bill, total and terms, long ones whole", async () => {
    const page = await visit(await someone({ ...WIDE, colorScheme: "dark" }), "#quote/us/Quote");
    await withGrid(page);
    const terms = `Half with the order, ${"the rest on delivery and no later than that, ".repeat(4)}end.`;
    await fill(page, /^Terms$/, terms);
    await fill(page, /^For$/, "Grower of the north forty");
    await page.waitForTimeout(500);
    const [first, ...others] = await paper(page);
    for (const word of [
      "From",
      "Grower of the north forty",
      "sprinkler head",
      "backflow device",
      "Total (USD)",
      "end.",
    ])
      expect(first).toContain(word);
    expect(first).toMatch(/total\s+5,769\.32/);
    for (const button of ["Undo", "Spreadsheet", "Piece of work", "What you can change"])
      expect([first, ...others].join()).not.toContain(button);
    // Cautions alone may stand on another sheet.
    expect(others.join()).not.toContain("Total");
    // Afterwards the fields are fields again.
    await expect(page.locator(".printed").count()).resolves.toBe(0);
  });

  test("dark or light, paper is black on white, and the depth map keeps its shading", async () => {
    const page = await visit(
      await someone({ ...WIDE, colorScheme: "dark" }),
      "#line-layout/us/Line",
    );
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    const look = () =>
      page.evaluate(() => {
        const style = (selector: string) =>
          getComputedStyle(document.querySelector(selector) as Element);
        return [style("body").backgroundColor, style("#sheet-title").color];
      });
    await expect(look()).resolves.toEqual(["rgb(255, 255, 255)", "rgb(0, 0, 0)"]);
    // As wide as a sheet of paper within its margins.
    await page.setViewportSize({ width: 718, height: 900 });
    const beyond = await page.locator("#reading table").evaluateAll((tables) =>
      tables.map((table) => {
        const around = table.closest("#reading")?.getBoundingClientRect().right ?? 0;
        return Math.round(table.getBoundingClientRect().right - around);
      }),
    );
    expect(beyond.length).toBeGreaterThan(4);
    expect(Math.max(...beyond)).toBeLessThanOrEqual(0);
    await page.goto(`${address()}#cans`);
    await page.waitForSelector(".depth", { state: "attached" });
    const shades = await page
      .locator(".depth")
      .evaluateAll((cells) =>
        cells.map((cell) => [
          getComputedStyle(cell).backgroundColor,
          getComputedStyle(cell).getPropertyValue("print-color-adjust"),
        ]),
      );
    expect(new Set(shades.map(([color]) => color)).size).toBeGreaterThan(1);
    expect(shades.every(([, adjust]) => adjust === "exact")).toBe(true);
  });
});

test("a quote made on a phone is printed, reopened next day, changed in one price, saved and opened again with the same total", async () => {
  const phone = await someone({ ...NARROW, hasTouch: true, isMobile: true });
  const today = await visit(phone, "#quote/us/Quote");
  await fill(today, /^For$/, "Grower of the north forty");
  await today.locator(".tabs").getByRole("button", { name: "Layout", exact: true }).click();
  await fill(today, HEADS, "12");
  await today.locator(".tabs").getByRole("button", { name: "Quote", exact: true }).click();
  const totalOf = async (page: Page) =>
    /Total ([\d,.]+) USD/.exec(await page.locator(".answers").innerText())?.[1];
  await eventually(async () =>
    expect(await today.locator(".answers").innerText()).toContain("12 sprinklers"),
  );
  const first = await totalOf(today);
  const [printed, ...more] = await paper(today);
  expect(printed).toContain("Grower of the north forty");
  expect(printed).toContain("sprinkler head");
  expect(printed).toMatch(new RegExp(`Total \\(USD\\)\\s+${first ?? "none"}`));
  // Cautions alone may stand on another sheet.
  expect(more.join()).not.toMatch(/Total|sprinkler head/);
  await today.close();

  // The next day, the browser started anew with what it kept: the address of the page alone.
  const kept = await phone.storageState();
  await phone.close();
  const tomorrow = await visit(
    await someone({ ...NARROW, hasTouch: true, isMobile: true, storageState: kept }),
  );
  await eventually(async () => expect(await totalOf(tomorrow)).toBe(first));
  await expect(valueOf(tomorrow, /^For$/)).resolves.toBe("Grower of the north forty");
  await tomorrow.locator(".tabs").getByRole("button", { name: "Prices", exact: true }).click();
  await fill(tomorrow, /^sprinkler head: Your cost$/, "18.5");
  await tomorrow.locator(".tabs").getByRole("button", { name: "Quote", exact: true }).click();
  await eventually(async () => expect(await totalOf(tomorrow)).not.toBe(first));
  const second = await totalOf(tomorrow);
  // 24 heads that cost 2.50 more each, sold at 2.50 × 1.25 more, with 6 % tax.
  const amount = (text = "") => Number(text.replace(/,/g, ""));
  expect(amount(second) - amount(first)).toBeCloseTo(24 * 3.13 * 1.06, 1);
  const [download] = await Promise.all([
    tomorrow.waitForEvent("download", PATIENCE),
    work(tomorrow, "Save as .xlsx"),
  ]);
  const elsewhere = await visit(await someone(WIDE));
  const [chooser] = await Promise.all([
    elsewhere.waitForEvent("filechooser"),
    work(elsewhere, "Open .xlsx…"),
  ]);
  await chooser.setFiles(await download.path());
  await eventually(async () => expect(await totalOf(elsewhere)).toBe(second));
  await withGrid(elsewhere);
  await expect(totalOf(elsewhere)).resolves.toBe(second);
});

test("a function from the list is copied, and inserted into the chosen cell; one that is taken is asked about", async () => {
  const context = await someone(WIDE);
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  const page = await visit(context);
  await withGrid(page);
  await page.evaluate(() => trialGrid.select({ page: "Line", row: 2, column: 15 }));
  await page.getByRole("button", { name: "Functions" }).click();
  await page.getByLabel(/Search by name/).fill("set time");
  const entry = page.locator("#function-SET_TIME");
  await entry.locator("summary").first().click();
  await entry.getByRole("button", { name: "Copy" }).click();
  await eventually(async () =>
    expect(await page.evaluate(() => navigator.clipboard.readText())).toContain("=IRRIG.SET.TIME("),
  );
  const formula = () =>
    page.evaluate(() => trialGrid.formula({ page: "Line", row: 2, column: 15 }));
  await entry.getByRole("button", { name: "Insert" }).click();
  await eventually(async () => expect(await formula()).toContain("=IRRIG.SET.TIME("));
  await page.evaluate(() => trialGrid.select({ page: "Line", row: 13, column: 3 }));
  await entry.getByRole("button", { name: "Insert" }).click();
  await page.getByRole("button", { name: "Leave the cell" }).click();
  await expect(
    page.evaluate(() => trialGrid.read({ page: "Line", row: 13, column: 3 }).value),
  ).resolves.toBe(14);
  for (const link of await page
    .locator(".functions a")
    .evaluateAll((all) => all.map((one) => (one as HTMLAnchorElement).href)))
    expect([link, (await page.request.get(link)).status()]).toEqual([link, 200]);
});

test("a field that may be below zero offers a keyboard with a minus, the others the keypad", async () => {
  const page = await visit(await someone(NARROW));
  const keypad = (label: string) => page.getByLabel(label).first().getAttribute("inputmode");
  await expect(keypad("Rise, inlet to last sprinkler")).resolves.toBeNull();
  await expect(keypad("Sprinkler spacing")).resolves.toBe("decimal");
});
