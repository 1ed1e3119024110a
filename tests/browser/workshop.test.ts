import { readFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import jsQR from "jsqr";
import { PNG } from "pngjs";
import { exercises } from "../../src/sheets/books/workshop/exercises";
import { en } from "../../src/sheets/books/workshop/words/en";
import { es } from "../../src/sheets/books/workshop/words/es";
import { readAnswer } from "../../src/workshop-page/answer";
import { launchBrowser, openPage, serve, type Misdeeds, type Served } from "../support/browser";
import { loadWorkbooks } from "../support/open-workbook";
import { workedAnswer } from "../support/workshop-answers";

declare const axe: { run(): Promise<AxeResults> };

const PHONE: BrowserContextOptions = { viewport: { width: 375, height: 700 } };
const WALL: BrowserContextOptions = { viewport: { width: 1920, height: 1080 } };

let browser: Browser;
let site: Served;
beforeAll(async () => {
  browser = await launchBrowser();
  site = await serve();
});
afterAll(async () => {
  await browser?.close();
  await site?.close();
});

type System = "US" | "SI";
type Edition = readonly [language: "en" | "es", system: System];

/** A reader with a decimal point, and one with a decimal comma. */
const LOCALES = { en: "en-US", es: "es-AR" } as const;
const WORDS = { en, es } as const;
const editions: readonly Edition[] = [
  ["en", "US"],
  ["en", "SI"],
  ["es", "US"],
  ["es", "SI"],
];

/** Units change numbers alone, nothing that the checker looks at: it looks once in each language. */
const isChecked = ([language, system]: Edition) => (language === "en") === (system === "US");

async function open(
  hash: string,
  options: BrowserContextOptions,
  [language, system]: Edition = ["en", "US"],
): Promise<{ page: Page; misdeeds: Misdeeds }> {
  const opened = await openPage(browser, `${site.address}workshop.html?units=${system}#${hash}`, {
    locale: LOCALES[language],
    ...options,
  });
  await opened.page.waitForSelector("h1");
  return opened;
}

const checker = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(checker);
  const { violations: found } = await page.evaluate(() => axe.run());
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}

function over(page: Page): Promise<number> {
  return page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
}

/** Words in a picture that its edge cuts, or that stand on one another. */
function spoiledWords(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll("svg.plot")].flatMap((picture) => {
      const frame = picture.getBoundingClientRect();
      const words = [...picture.querySelectorAll("text")].map((word) => ({
        text: word.textContent ?? "",
        box: word.getBoundingClientRect(),
      }));
      const cut = words.filter(
        ({ box }) =>
          box.left < frame.left ||
          box.right > frame.right + 0.5 ||
          box.top < frame.top ||
          box.bottom > frame.bottom,
      );
      // Boxes are a little higher than their letters.
      const slack = frame.height / 50;
      const met = words.flatMap(({ text, box }, i) =>
        words
          .slice(i + 1)
          .filter(
            ({ box: other }) =>
              box.left < other.right &&
              other.left < box.right &&
              box.top + slack < other.bottom &&
              other.top + slack < box.bottom,
          )
          .map((other) => `${text} on ${other.text}`),
      );
      return [...cut.map(({ text }) => `cut: ${text}`), ...met];
    }),
  );
}

/** As a person of that language writes it, with four digits. */
function typed(value: number, language: "en" | "es", unit = ""): string {
  const text = Number(value.toPrecision(4)).toLocaleString(LOCALES[language], {
    maximumFractionDigits: 6,
  });
  return `${text} ${unit}`.trim();
}

const numbers = en.lessons.map((_, i) => i + 1);
const shown = (page: Page, hash: string) =>
  page.waitForFunction((to) => document.documentElement.dataset.shown === to, hash);

describe.each(editions)("on a phone, %s, %s", (language, system) => {
  const words = WORDS[language];
  const { verdicts } = words.page;
  const checked = isChecked([language, system]);

  test("each lesson is done from its question to the right answer", async () => {
    const { page, misdeeds } = await open("start", PHONE, [language, system]);
    await page.locator(".contents a").first().click();
    const all = exercises(system);
    let points = 0;
    for (const number of numbers) {
      const lesson = words.lessons[number - 1];
      await shown(page, `#lesson-${number}`);
      expect(await page.locator("h1").innerText()).toBe(lesson.title);
      expect(await page.locator(".question").innerText()).toBe(lesson.question);
      await page.locator(".guess input").fill("1");
      // The picture moves with its first control.
      const before = await page.locator(".frame").innerHTML();
      const slider = page.locator('.control input[type="range"]').first();
      await slider.focus();
      expect([number, await spoiledWords(page)]).toEqual([number, []]);
      await page.keyboard.press("Home");
      expect([number, (await page.locator(".frame").innerHTML()) !== before]).toEqual([
        number,
        true,
      ]);
      expect([number, await spoiledWords(page)]).toEqual([number, []]);
      const mine = all.filter((exercise) => exercise.lesson === lesson.id);
      for (const [i, exercise] of mine.entries()) {
        const block = page.locator(".exercise").nth(i);
        const box = block.locator("input");
        const verdict = () => block.locator(".verdict").innerText();
        // A decimal point in a question for readers of commas would be read as thousands.
        const asked = await block.locator("label").innerText();
        expect(asked).not.toMatch(language === "es" ? /\d\.\d/ : /\d,\d/);
        await box.fill("-77");
        await block.locator(".check").click();
        expect(await verdict()).toContain(verdicts["not yet"]);
        const [hint, ask] = [block.locator(".helps button").first(), block.locator(".help")];
        for (let hints = 0; hints < 2; hints++) {
          await hint.click();
          expect(await ask.innerText()).not.toMatch(/[{}]|^$/);
        }
        const right = workedAnswer(exercise, system);
        const unit = exercise.unit === "hours" && language === "es" ? "horas" : exercise.unit;
        await box.fill(typed(right * 1.2 + 1, language, unit));
        await page.keyboard.press("Enter");
        expect(await verdict()).toContain(verdicts["not yet"]);
        await box.fill(typed(right, language, unit));
        await page.keyboard.press("Enter");
        expect([exercise.id, await verdict()]).toEqual([exercise.id, verdicts.right]);
        points++;
      }
      expect(await page.locator(".score").innerText()).toContain(
        words.page.score.replace("{right}", String(points)).replace("{all}", String(all.length)),
      );
      expect([number, await over(page)]).toEqual([number, 0]);
      if (checked) expect([number, await violations(page)]).toEqual([number, []]);
      await page.locator(".turning a").last().click();
    }
    expect(points).toBe(all.length);
    expect(misdeeds).toEqual({ errors: [], outside: [] });
  });

  test("the trainer's page has every lesson, its link and code, and the key of all exercises", async () => {
    const { page } = await open("trainer", PHONE, [language, system]);
    expect(await page.locator(".trained").count()).toBe(en.lessons.length);
    expect(await page.locator(".trained a").nth(2).getAttribute("href")).toBe(
      `${site.address}workshop.html${system === "SI" ? "?units=SI" : ""}#lesson-3`,
    );
    const key = await page.locator(".answers li strong").allInnerTexts();
    expect(key.length).toBe(exercises(system).length);
    for (const [i, exercise] of exercises(system).entries()) {
      const read = readAnswer(key[i])?.value ?? NaN;
      expect([exercise.id, Math.abs(read / workedAnswer(exercise, system) - 1) < 0.01]).toEqual([
        exercise.id,
        true,
      ]);
    }
    expect(await over(page)).toBe(0);
    expect(await violations(page)).toEqual([]);
  });
});

test.each(["US", "SI"] as const)(
  "the lesson's set is the plan's, as the workbooks have it (%s)",
  async (system) => {
    const book = await loadWorkbooks().openWorkbook("line-layout", system);
    const hours = book.values().SetHours as number;
    book.close();
    const { page } = await open("lesson-3", PHONE, ["en", system]);
    await expect(page.locator(".picture .said").innerText()).resolves.toContain(hours.toFixed(1));
  },
);

test.each(["US", "SI"] as const)(
  "with 28 sprinklers the page says that F no longer holds (%s)",
  async (system) => {
    const { page } = await open("lesson-6", PHONE, ["en", system]);
    const said = page.locator(".picture .said");
    expect(await said.innerText()).toBe(`✓ ${en.pictures.alongSaid}`);
    await page.locator('.control input[type="range"]').focus();
    await page.keyboard.press("End");
    expect(await said.innerText()).toBe(`✗ ${en.pictures.alongLong}`);
    const rows = await page.locator(".numbers td").allInnerTexts();
    const [equal, solved] = rows.slice(2).map(parseFloat);
    // The solved line loses less, for its far sprinklers give less.
    expect(solved).toBeLessThan(0.9 * equal);
  },
);

test("an answer that was shown is no point", async () => {
  const { page } = await open("lesson-2", PHONE);
  const block = page.locator(".exercise").first();
  await block.getByRole("button", { name: "Show me" }).click();
  await expect(block.locator(".help").innerText()).resolves.toContain(
    "96.25 × 4.1 ÷ (45 × 50) = 0.175",
  );
  await block.locator("input").fill("0.175");
  await page.keyboard.press("Enter");
  await expect(block.locator(".verdict").innerText()).resolves.toContain("Right.");
  await expect(page.locator(".score").innerText()).resolves.toContain("0 of 18");
});

describe.each(editions)("on the wall and on paper, %s, %s", (language, system) => {
  const edition: Edition = [language, system];
  const checked = isChecked(edition);

  test("nothing under 28 px, all on one screen, nothing cut, arrow keys turn", async () => {
    const { page } = await open("slide-1", WALL, edition);
    for (const number of numbers) {
      await shown(page, `#slide-${number}`);
      // What it means in the field is opened when the talk gets there.
      await page.locator("summary").click();
      const found = await page.evaluate(() => {
        const sizes = [...document.querySelectorAll("main *")]
          .filter((element) => element.getClientRects().length > 0)
          .filter((element) =>
            [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()),
          )
          .map((element) => {
            const svg = element.closest("svg");
            const scale = svg === null ? 1 : (svg.getScreenCTM()?.a ?? 1);
            return parseFloat(getComputedStyle(element).fontSize) * scale;
          });
        const { scrollHeight, scrollWidth } = document.documentElement;
        return { least: Math.min(...sizes), tall: scrollHeight, wide: scrollWidth };
      });
      expect([number, found.least >= 28, found.tall <= 1080, found.wide <= 1920]).toEqual([
        number,
        true,
        true,
        true,
      ]);
      expect([number, await spoiledWords(page)]).toEqual([number, []]);
      if (checked) expect([number, await violations(page)]).toEqual([number, []]);
      await page.keyboard.press("Escape");
      await shown(page, `#lesson-${number}`);
      await page.locator(".lesson-top a").click();
      await shown(page, `#slide-${number}`);
      await page.keyboard.press("ArrowRight");
    }
    await page.keyboard.press("ArrowLeft");
    await shown(page, `#slide-${numbers.length - 1}`);
  });

  test("handout and key print on one page, every slide on one of its own", async () => {
    const { page } = await open("start", WALL, edition);
    for (const [hash, sheets] of [
      ["handout", 1],
      ["key", 1],
      ["slide-2", 1],
      ["slides", numbers.length],
    ] as const) {
      await page.evaluate((to) => (location.hash = to), hash);
      await shown(page, `#${hash}`);
      for (const format of ["Letter", "A4"]) {
        const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString("latin1");
        expect([hash, format, pdf.match(/\/Type\s*\/Page\b/g)?.length]).toEqual([
          hash,
          format,
          sheets,
        ]);
      }
      if (hash === "handout" || hash === "key") {
        const blanks = await page.locator(".handout .blank").count();
        expect(hash === "key" ? blanks === 0 : blanks >= 20).toBe(true);
      }
      if (hash !== "slide-2") expect([hash, await violations(page)]).toEqual([hash, []]);
    }
  });
});

/** What a camera sees of the page's first code, read by a library that did not draw it. */
async function readCode(page: Page): Promise<string | undefined> {
  const code = page.locator(".join-code").first();
  await code.scrollIntoViewIfNeeded();
  const { data, width, height } = PNG.sync.read(await code.screenshot());
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
}

/** The page under the address that a hall's laptop has: not this machine's own. */
async function inAHall(hash: string, options: BrowserContextOptions): Promise<Page> {
  const hall = "http://192.168.7.20:3000/";
  const { page } = await openPage(browser, `${hall}workshop?units=SI#${hash}`, {
    ...options,
    before: async (fresh) => {
      void (await fresh.route(`${hall}**`, async (route) => {
        const { pathname } = new URL(route.request().url());
        const path = pathname === "/workshop" ? "workshop.html" : pathname.slice(1);
        await route.fulfill({ response: await route.fetch({ url: `${site.address}${path}` }) });
      }));
    },
  });
  await page.waitForSelector("h1");
  return page;
}

test.each(["light", "dark"] as const)(
  "a phone's camera reads the trainer's code, and it opens the lesson (%s)",
  async (colorScheme) => {
    const { page } = await open("trainer", { ...PHONE, colorScheme }, ["en", "SI"]);
    const address = await readCode(page);
    expect(address).toBe(`${site.address}workshop.html?units=SI#lesson-1`);
    expect(await page.locator(".caution").innerText()).toContain("this computer alone");
    await page.goto(address ?? "");
    await page.waitForSelector(".question");
    expect(await page.locator(".question").innerText()).toBe(en.lessons[0].question);
    expect(await page.locator('input[value="SI"]').isChecked()).toBe(true);
  },
);

test("in a hall the wall has the code, all still on one screen; the laptop's own address has none", async () => {
  const page = await inAHall("slide-10", WALL);
  expect(await readCode(page)).toBe("http://192.168.7.20:3000/workshop?units=SI#lesson-10");
  for (const number of numbers) {
    await page.evaluate((n) => (location.hash = `slide-${n}`), number);
    await shown(page, `#slide-${number}`);
    const tall = await page.evaluate(() => document.documentElement.scrollHeight);
    expect([number, tall <= 1080]).toEqual([number, true]);
  }
  await page.evaluate(() => (location.hash = "trainer"));
  await shown(page, "#trainer");
  expect(await page.locator(".caution").count()).toBe(0);
  const { page: alone } = await open("slide-1", WALL);
  expect(await alone.locator(".join-code").count()).toBe(0);
});

test.each(["light", "dark"] as const)(
  "contents, %s: nothing for the checker to find",
  async (colorScheme) => {
    const { page } = await open("start", { ...PHONE, colorScheme });
    await expect(page.locator(".contents li").count()).resolves.toBe(en.lessons.length);
    await expect(violations(page)).resolves.toEqual([]);
  },
);
