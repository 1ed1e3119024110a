import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { readyMadeSheets } from "../../../src/sheets";
import type { UnitSystem } from "../../../src/sheets/kit/definition";
import { type Changes, type Content, noChanges } from "../../../src/trial/kept/changes";
import { inputsOf } from "../../../src/trial/kept/inputs";
import { FUNCTION_WORDS } from "../../../src/words/function-words-page";
import { sayWorkbook } from "../../../src/words/es/workbook-say";
import type { Language } from "../../../src/words/language";
import { workbookIn } from "../../../src/words/workbook-reader";
import { bundled } from "../../support/bundled";
import type * as Files from "../../support/workbook-files";

const files = bundled<typeof Files>("workbook-files", "tests/support");

/** As the page in Spanish has them, and as their files are downloaded. */
const spanish = {
  kept: readyMadeSheets.map((sheet) => workbookIn(sheet, sayWorkbook, "keys")),
  whole: readyMadeSheets.map((sheet) => workbookIn(sheet, sayWorkbook)),
  beside: [sayWorkbook(FUNCTION_WORDS)],
};
const { kept, whole, beside } = spanish;
const shelves = [
  { sheets: readyMadeSheets },
  { sheets: kept, beside },
  { sheets: whole, kept, beside },
];

async function saved(
  id: string,
  system: UnitSystem,
  contents: readonly [string, Content][] = [],
  more: Partial<Changes> & { readonly valuesOnly?: boolean; readonly language?: Language } = {},
): Promise<{ bytes: Uint8Array; changes: Changes; value(at: [string, number, number]): unknown }> {
  const { valuesOnly = false, language = "en", ...rest } = more;
  const sheet = (language === "en" ? readyMadeSheets : spanish.kept).find((one) => one.id === id);
  if (sheet === undefined) throw new Error(id);
  const pages = sheet.pages(system);
  const changes = { ...noChanges, ...rest, contents: new Map(contents) };
  const blank = () => ({ value: null });
  const shown = await files.evaluate(
    files.pagesAsTheyStand(pages, changes, blank, "IRRIG"),
    "IRRIG",
  );
  const known = new Set([...pages, ...changes.ownSheets].map(({ name }) => name));
  const bytes = await files.saveWorkbook({
    sheet,
    system,
    pages,
    changes,
    name: "North forty",
    namespace: "IRRIG",
    read: ({ page, row, column }) =>
      known.has(page) ? { value: shown.value(page, row, column) } : { value: null },
    date: new Date(Date.UTC(2026, 10, 26)),
    valuesOnly,
    language,
  });
  return { bytes, changes, value: (at) => shown.value(...at) };
}

function open(bytes: Uint8Array, name = "work.xlsx") {
  return files.openWorkbook(bytes, name, shelves, "IRRIG");
}

test.each(readyMadeSheets.flatMap(({ id }) => [[id, "US"] as const, [id, "SI"] as const]))(
  "%s in %s units opens as it was saved: nothing changed",
  async (id, system) => {
    const opened = await open((await saved(id, system)).bytes);
    expect(opened.sheet.id).toBe(id);
    expect(opened.system).toBe(system);
    expect(opened.name).toBe("North forty");
    expect(opened.changes).toEqual(noChanges);
  },
);

test("every input of every workbook, set to something else, comes back", async () => {
  for (const { id, pages } of readyMadeSheets) {
    const contents = inputsOf(pages("US")).flatMap(({ key, cell }): [string, Content][] => {
      if (cell.name === "Units") return [];
      if (typeof cell.value === "number")
        return [[key, cell.value === 0 ? null : cell.value * 0.9]];
      if (typeof cell.value === "boolean") return [[key, !cell.value]];
      const isText = cell.allowed !== undefined && "text" in cell.allowed;
      return isText ? [[key, `<b>"${key}" & 'more'</b>`]] : [];
    });
    const opened = await open((await saved(id, "US", contents)).bytes);
    expect(opened.changes.contents).toEqual(new Map(contents));
  }
});

/** The workbook in Spanish as the build writes it. */
async function downloaded(id: string, system: "us" | "si"): Promise<Uint8Array> {
  const sheet = whole.find((one) => one.id === id);
  if (sheet === undefined) throw new Error(id);
  const { workbook } = await files.writeSheet(sheet, system === "us" ? "US" : "SI", "es");
  return workbook;
}

const own: [string, Content][] = [
  ["Line!D14", 12],
  ["Line!D15", { formula: "=Heads/2" }],
  ["Line!D19", null],
  ["Line!P3", { formula: '=IRRIG.PIPE.FRICTION(50, 2.067, 100, "US", 150)' }],
  ["Line!P4", "a note"],
  ["Line!D10", "=not a formula"],
  ["Line!Q4", true],
  ["Line!R200", 0.1 + 0.2],
  // The sentence at the top, replaced by a formula of the user's own.
  ["Line!E3", { formula: '="Heads: "&Heads' }],
];
const ownSheets = [
  {
    name: "Notes",
    data: {
      cellData: {
        0: { 0: { v: "hello", t: 1 }, 1: { f: "=Heads*2" }, 2: { v: 1, t: 3 } },
        4: { 1: { v: 7 } },
      },
    },
  },
];

test("own formulas, texts, truths, blanks and pages come back, and so does what they show", async () => {
  const { bytes, value } = await saved("line-layout", "US", own, { ownSheets });
  const { changes } = await open(bytes);
  expect(changes.contents).toEqual(new Map(own));
  expect(changes.ownSheets).toEqual([
    { name: "Notes", data: { ...ownSheets[0].data, rowCount: 200, columnCount: 30 } },
  ]);
  expect(value(["Notes", 0, 1])).toBe(24);
  const again = await saved("line-layout", "US", [...changes.contents], {
    ownSheets: changes.ownSheets,
  });
  for (const [page, row, column] of [
    ["Line", 1, 4],
    ["Line", 2, 15],
    ["Line", 8, 9],
  ] as const)
    expect(again.value([page, row, column])).toEqual(value([page, row, column]));
});

test("the Open XML SDK's validator finds nothing wrong with what was saved, errors in it too", async () => {
  const folder = mkdtempSync(join(tmpdir(), "fieldsum-saved-"));
  try {
    const paths = [];
    const works = [
      await saved("line-layout", "US", own, { ownSheets }),
      await saved("line-layout", "SI", [["Line!D14", -3]]),
      await saved("quote", "US", [["Layout!D10", 11]], { valuesOnly: true }),
    ];
    for (const [i, { bytes }] of works.entries()) {
      const path = join(folder, `${i}.xlsx`);
      writeFileSync(path, bytes);
      paths.push(path);
    }
    const script = join(__dirname, "../../support/open-xml-errors.mjs");
    const printed = execFileSync(process.execPath, [script, ...paths], { encoding: "utf8" });
    expect(JSON.parse(printed)).toEqual(Object.fromEntries(paths.map((path) => [path, []])));
    // A cell in error is one, and no text.
    expect(strFromU8(unzipSync(works[1].bytes)["xl/worksheets/sheet1.xml"])).toMatch(
      /<c [^>]*t="e"[^>]*>.*?#VALUE!/,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}, 120000);

describe("in Spanish", () => {
  const heads: [string, Content][] = [
    ["Layout!D10", 11],
    ["Layout!P3", { formula: "=Heads*2+Layout!D10" }],
  ];

  test("saved there, it says all of its own in Spanish, and opens to the same", async () => {
    const { bytes } = await saved("quote", "US", heads, { language: "es", ownSheets });
    const parts = unzipSync(bytes);
    const texts = Object.entries(parts)
      .filter(([name]) => /\.xml$/.test(name))
      .map(([, part]) => strFromU8(part))
      .join("");
    expect(texts).toContain("Necesita el complemento Fieldsum");
    expect(texts).not.toContain("Needs the Fieldsum add-in");
    expect(texts).toContain(beside[0]);
    const { changes, sheet } = await open(bytes);
    expect(kept).toContain(sheet);
    expect(changes.contents).toEqual(new Map(heads));
    expect(changes.ownSheets.map(({ name }) => name)).toEqual(["Notes"]);
  });

  test("a copy with values only has what functions said put over, and is refused for what it is", async () => {
    const { bytes } = await saved("quote", "US", [["Layout!D10", 40]], {
      language: "es",
      valuesOnly: true,
    });
    const texts = Object.values(unzipSync(bytes)).map((part) => strFromU8(part));
    const all = texts.join("");
    expect(all).toContain("Solo valores, calculados el 2026-11-26.");
    expect(all).not.toMatch(/Values only|Pressure varies by|Not judged/);
    await expect(open(bytes)).rejects.toThrow("values only");
  });

  test.each(readyMadeSheets.map(({ id }, i) => [id, i % 2 === 0 ? "us" : "si"] as const))(
    "the file of %s in %s units, as downloaded, opens as it is: nothing changed",
    async (id, system) => {
      const opened = await open(await downloaded(id, system), `${id}-${system}-es.xlsx`);
      expect(opened.sheet.id).toBe(id);
      expect(opened.system.toLowerCase()).toBe(system);
      expect(opened.changes).toEqual(noChanges);
    },
  );

  test("what someone changed in a downloaded one comes to the places that the page keeps", async () => {
    const parts = unzipSync(await downloaded("quote", "us"));
    const index = whole
      .find(({ id }) => id === "quote")
      ?.pages("US")
      .findIndex(({ name }) => name === sayWorkbook("Layout"));
    const path = `xl/worksheets/sheet${(index ?? 0) + 1}.xml`;
    const text = strFromU8(parts[path]);
    const changed = text.replace(/(<c r="D10"[^>]*>\s*<v>)14(<\/v>)/, "$111$2");
    expect(changed).not.toBe(text);
    const { changes } = await open(zipSync({ ...parts, [path]: strToU8(changed) }));
    expect(changes.contents).toEqual(new Map([["Layout!D10", 11]]));
  });
});

describe("refused in words", () => {
  let good: Uint8Array;
  let parts: Record<string, Uint8Array>;

  beforeAll(async () => {
    good = (await saved("line-layout", "US")).bytes;
    parts = unzipSync(good);
  });

  async function words(bytes: Uint8Array): Promise<string> {
    try {
      await open(bytes);
    } catch (error) {
      if (error instanceof files.Refused) return error.message;
      throw error;
    }
    return "opened";
  }

  test("what is no workbook", async () => {
    await expect(words(strToU8("hello"))).resolves.toContain("no .xlsx");
    await expect(words(new Uint8Array(0))).resolves.toContain("no .xlsx");
    await expect(words(good.slice(0, good.length / 2))).resolves.toContain("damaged");
    await expect(words(zipSync({ "a.xml": strToU8("<a/>") }))).resolves.toContain("no workbook");
  });

  test("what unpacks to far more", async () => {
    const bomb = zipSync({ ...parts, "xl/worksheets/big.xml": new Uint8Array(90e6) });
    expect(bomb.length).toBeLessThan(8e6);
    await expect(words(bomb)).resolves.toContain("unpacks");
    await expect(words(new Uint8Array(9e6))).resolves.toContain("8 MB");
  });

  test("macros and entities", async () => {
    await expect(
      words(zipSync({ ...parts, "xl/vbaProject.bin": strToU8("x") })),
    ).resolves.toContain("macros");
    const entity = strToU8(`<!DOCTYPE a [<!ENTITY b "c">]>${strFromU8(parts["xl/workbook.xml"])}`);
    await expect(words(zipSync({ ...parts, "xl/workbook.xml": entity }))).resolves.toContain(
      "entities",
    );
  });

  test("another workbook, unknown units, another edition, values only, broken markup", async () => {
    const workbook = strFromU8(parts["xl/workbook.xml"]);
    const withWorkbook = (text: string) => zipSync({ ...parts, "xl/workbook.xml": strToU8(text) });
    await expect(
      words(withWorkbook(workbook.replace('name="Stake"', 'name="Other"'))),
    ).resolves.toContain("none of the ready-made");
    await expect(
      words(withWorkbook(workbook.replace(/(name="Heads"[^>]*>[^<]*\$D\$)14/, "$199"))),
    ).resolves.toContain("Heads stands elsewhere");
    await expect(words(withWorkbook("<workbook"))).resolves.toMatch(/damaged|none of/);
    const unknown = (await saved("line-layout", "US", [["Line!D9", "furlongs"]])).bytes;
    await expect(words(unknown)).resolves.toContain("units are unknown");
    const values = (await saved("line-layout", "US", [], { valuesOnly: true })).bytes;
    await expect(words(values)).resolves.toContain("values only");
  });
});
