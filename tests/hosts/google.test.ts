import { Script } from "node:vm";
import { projectFiles } from "../../build/hosts/google";
import { googlePages } from "../../build/hosts/google/workbooks";
import { respelled, TABLES } from "../../build/hosts/google/formulas";
import type * as Engine from "../../build/sheet-engine";
import { nativeFunctionsIn } from "../../src/formula-text/dialect";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import type { Page } from "../../src/sheets/kit/definition";
import { corpus } from "../calc/corpus";
import { bareContext } from "../support/bare-context";
import { builtReference, runBuiltFunctions } from "../support/built";
import { bundled } from "../support/bundled";
import { StandInGoogle } from "../support/stand-in-google";

const reference = builtReference();
const files = projectFiles(reference);
const spillsOf = new Set(
  reference.functions.filter(({ spills }) => spills).map(({ name }) => name),
);
const spills = (name: string) => spillsOf.has(name);

function fileNamed(name: string): string {
  const text = files.get(name);
  if (text === undefined) throw new Error(`no file ${name}`);
  return text;
}

// One script: what one file declares the others see.
const script = new Script(["Engine.gs", "Writer.gs", "Code.gs"].map(fileNamed).join("\n"));

/** The scripts of the project in a context that has nothing but the language and what is given. */
function project(given: object = {}): Record<string, (...cells: unknown[]) => unknown> {
  const context = bareContext(given);
  script.runInContext(context);
  return context as Record<string, (...cells: unknown[]) => unknown>;
}

test("asks for no more than the sheet that it stands in and a menu there", () => {
  const { oauthScopes } = JSON.parse(fileNamed("appsscript.json")) as { oauthScopes: string[] };
  expect(oauthScopes.map((scope) => scope.replace(/^.*\/auth\//, ""))).toEqual([
    "spreadsheets.currentonly",
    "script.container.ui",
  ]);
});

test("the help says what each argument is: a number, text, a range", () => {
  const code = fileNamed("Code.gs");
  const kinds = (name: string) => {
    const before = code.slice(0, code.indexOf(`function IRRIG_${name}(`));
    const comment = before.slice(before.lastIndexOf("/**"));
    return [...comment.matchAll(/@param \{(\w+)\} \[?(\w+)/g)].map(
      ([, kind, of]) => `${of} ${kind}`,
    );
  };
  expect(kinds("UNIT_CONVERT")).toEqual(["value number", "from string", "to string"]);
  expect(kinds("SOIL_INTAKE").slice(0, 2)).toEqual(["profile string", "slope number"]);
  expect(kinds("APPLICATION_CU").slice(0, 1)).toEqual([expect.stringMatching(/ range$/)]);
  // A number or "Darcy".
  expect(kinds("PIPE_FRICTION")[4]).toBe("friction any");
});

test("every function gives what the add-in gives, value or error, on 30,000 calls and more", () => {
  const functions = runBuiltFunctions();
  const calls = corpus(reference.functions, (id, cells) => {
    const hosted = functions.get(id);
    if (hosted === undefined) throw new Error(`no function ${id}`);
    return hosted(...cells);
  });
  expect(calls.length).toBeGreaterThan(30000);
  const scripts = project();
  const differing = calls.flatMap(({ id, cells, outcome }) => {
    const given = cells.map((cell) => (cell === null ? "" : cell));
    let got: unknown;
    try {
      got = { value: scripts[`IRRIG_${id}`](...given) };
    } catch (error) {
      const [, code, message] = /^(#\S+) (.*)$/s.exec((error as Error).message) ?? [];
      got = { code, message };
    }
    // Of another context: compared as what a sheet would see.
    return JSON.stringify(got) === JSON.stringify(outcome) ? [] : [{ id, cells, outcome, got }];
  });
  expect(differing.slice(0, 3)).toEqual([]);
});

test("a date, a blank and a single cell are taken as the sheet means them", () => {
  const { IRRIG_PIPE_FRICTION: friction, IRRIG_LATERAL_PRESSURE: pressure } = project();
  expect(friction(50, 2.1, 100, "", "")).toBe(friction(50, 2.1, 100));
  expect(() => friction("", 2.1, 100)).toThrow("#VALUE! flow is missing");
  expect(() => friction(50, 2.1, new Date(0))).toThrow("#VALUE! a date stands");
  const chart = [
    [35, 3.7],
    [45, 4.2],
    ["", ""],
  ];
  expect(pressure(14, 14, 45, 45, 2.1, chart)).toBe(pressure(14, 14, 45, 45, [[2.1]], chart));
});

async function values(pages: readonly Page[], typed: Readonly<Record<string, number>> = {}) {
  // Loaded here: it brings a host of its own, whose errors are of another class.
  const engine = await bundled<typeof Engine>("sheet-engine").SheetEngine.open(pages, "IRRIG");
  const cells = pages.flatMap((page, at) =>
    page.cells.map((cell) => ({ page, cell, place: { page: at, ...readAddress(cell.at) } })),
  );
  const contents = cells.flatMap(({ cell, place }) =>
    cell.name !== undefined && cell.name in typed
      ? [{ place, content: { value: typed[cell.name] } }]
      : [],
  );
  if (contents.length > 0) await engine.put(contents);
  const found = new Map(
    cells
      .filter(({ page, cell }) => page.name !== TABLES && cell.formula !== undefined)
      .map(({ page, cell, place }) => {
        const value = engine.value(place);
        // A blank in a table is read as one, or as an empty text.
        return [`${page.name}!${cell.at}`, value === "" ? null : value];
      }),
  );
  engine.close();
  return found;
}

const systems = ["US", "SI"] as const;
const all = readyMadeSheets.flatMap((sheet) =>
  systems.map((system) => ({ sheet, system, name: `${sheet.id} ${system}` })),
);

/** Function names of the user's own are not in this edition. */
function own(pages: readonly Page[]): Page[] {
  return pages.filter(({ functions = [] }) => functions.length === 0);
}

describe.each(all)("$name", ({ sheet, system }) => {
  test("shares its tables, and every cell keeps its value", async () => {
    const pages = googlePages(sheet, system, spills);
    expect(await values(pages)).toEqual(await values(own(sheet.pages(system))));
  });

  test("is written whole, where there is room for it, and not twice", () => {
    const host = new StandInGoogle();
    const scripts = project({
      SpreadsheetApp: host,
      HtmlService: {
        createTemplateFromFile: (name: string) => ({
          getRawContent: () => fileNamed(`${name}.html`),
        }),
      },
    });
    const words = sheet.id.split("-").map((word) => word[0].toUpperCase() + word.slice(1));
    const add = scripts[`add${words.join("")}${system}`];
    add();
    expect(host.alerts).toEqual([]);
    const pages = googlePages(sheet, system, spills);
    expect([...host.sheets.keys()]).toEqual(pages.map(({ name }) => name));
    // There are thousands of cells: what is wrong is gathered and expected once.
    const wrong: unknown[] = [];
    for (const page of pages) {
      const written = host.sheets.get(page.name);
      for (const { at, formula, value } of page.cells) {
        const got = String(written?.values.get(at));
        const isFormula = formula !== undefined;
        if (!isFormula && (value === undefined || value === "")) continue;
        const wanted = respelled(String(value).replace(/^'/, ""));
        if (isFormula ? !got.startsWith("=") : got.replace(/^'/, "") !== wanted) {
          wrong.push([page.name, at, got]);
        }
      }
      for (const cell of written?.values.values() ?? []) {
        if (typeof cell !== "string" || !cell.startsWith("=")) continue;
        // A spill's place must be empty, and no name may keep its dots.
        const isThere = (name: string) =>
          name.startsWith("IRRIG_") ? name in scripts : !name.includes(".");
        if (/IRRIG\./.test(cell) || !nativeFunctionsIn(cell).every(isThere)) {
          wrong.push([page.name, cell]);
        }
      }
    }
    expect(wrong).toEqual([]);
    const before = [...host.sheets.values()].map((written) => written.values.size);
    add();
    expect(host.alerts).toEqual([
      expect.stringMatching(/was not added: this spreadsheet already has/),
    ]);
    expect([...host.sheets.values()].map((written) => written.values.size)).toEqual(before);
  });
});

test("where a shared table is an error, no check that reads it says OK", async () => {
  const sheet = readyMadeSheets[0];
  const pages = googlePages(sheet, "US", spills);
  const checks = pages.flatMap((page) =>
    page.cells.filter(({ role }) => role === "check").map(({ at }) => `${page.name}!${at}`),
  );
  const sound = await values(pages);
  expect(checks.filter((at) => sound.get(at) !== "OK")).toEqual([]);
  const broken = await values(pages, { Heads: 13.5 });
  expect(checks.filter((at) => broken.get(at) === "OK")).toEqual([]);
});
