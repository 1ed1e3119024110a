import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { WORKBOOKS } from "../../build/hosts/calc/office";
import { pythonFunctions } from "../../build/hosts/python";
import type { Reference } from "../../src/reference";
import { loadedHost } from "../../build/loaded-host";
import { readyMadeSheets } from "../../src/sheets";
import { samplesOf } from "../support/samples";
import { runBuiltFunctions } from "../support/built";
import { loadWorkbooks } from "../support/open-workbook";
import { corpus } from "./corpus";
import { askOffice, withOffice } from "./office";

const root = join(__dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "fieldsum-calc-"));

afterAll(() => rmSync(folder, { recursive: true, force: true }));

function reference(): Reference {
  return JSON.parse(readFileSync(join(root, "dist", "reference.json"), "utf8")) as Reference;
}

test("every function gives what the add-in gives, value or error, on 30,000 calls and more", () => {
  const functions = runBuiltFunctions();
  const calls = corpus(reference().functions, (id, cells) => {
    const hosted = functions.get(id);
    if (hosted === undefined) throw new Error(`no function ${id}`);
    return hosted(...cells);
  });
  expect(calls.length).toBeGreaterThan(30000);
  writeFileSync(join(folder, "corpus.json"), JSON.stringify(calls));
  writeFileSync(join(folder, "fieldsum_functions.py"), pythonFunctions());
  const told = JSON.parse(
    execFileSync("python3", [join(__dirname, "compare.py"), folder], {
      encoding: "utf8",
      maxBuffer: 1 << 28,
    }),
  ) as { functions: Record<string, { calls: number; differ: number; first: unknown[] }> };
  expect(Object.keys(told.functions)).toHaveLength(reference().functions.length);
  const differing = Object.entries(told.functions).filter(([, { differ }]) => differ > 0);
  expect(differing).toEqual([]);
});

withOffice("in the real program: every example typed, a table spread by the menu's entry", () => {
  const { functions } = loadedHost();
  const all = samplesOf(reference().functions);
  const cases = join(folder, "examples.json");
  writeFileSync(
    cases,
    JSON.stringify(all.map(({ help }) => ({ formula: help.example, spills: help.spills }))),
  );
  const told = askOffice<{ sentence: string; cells: unknown[][] }[]>(
    "examples_in_office.py",
    cases,
  );
  expect(told).toHaveLength(all.length);
  const differing = all.flatMap(({ help, cells }, i) => {
    const given = functions.get(help.id)?.(...cells);
    const wanted = Array.isArray(given) ? (given as unknown[][]) : [[given]];
    const { sentence, cells: got } = told[i];
    return sentence === "" && alikeTables(got, wanted)
      ? []
      : [{ id: help.id, wanted, told: told[i] }];
  });
  expect(differing).toEqual([]);
});

function alikeTables(got: readonly unknown[][], wanted: readonly unknown[][]): boolean {
  return (
    got.length === wanted.length &&
    got.every(
      (row, r) =>
        row.length === wanted[r].length && row.every((cell, c) => alike(cell, wanted[r][c])),
    )
  );
}

/** Numbers to one in a thousand million, a cell of this program holding no more than a double. */
function alike(got: unknown, wanted: unknown): boolean {
  if (typeof got === "number" && typeof wanted === "number") {
    return Math.abs(got - wanted) <= 1e-9 * Math.max(Math.abs(wanted), 1e-9);
  }
  return got === wanted;
}

withOffice(
  "in the real program, installed by one command: functions typed, the menu's entries, another spacing in the line workbook",
  async () => {
    const told = askOffice<{
      typed: number;
      wrong: string;
      spread: unknown[][];
      why: string;
      line: [inlet: number, far: number][];
      help: Record<string, { help: string; arguments: [string, string, boolean][] }>;
      menu: [title: string, command: string][];
    }>("in_office.py", join(WORKBOOKS, "line-layout-us.ods"));
    const { openWorkbook } = loadWorkbooks();
    const book = await openWorkbook("line-layout", "US");
    const line: number[][] = [];
    const steps: Record<string, number>[] = [{}, { Spacing: 40 }, { Spacing: 40, Lowest: 44 }];
    for (const changes of steps) {
      await book.set(changes);
      const { Inlet, FarPressure } = book.values();
      line.push([Inlet as number, FarPressure as number]);
    }
    book.close();
    // The handbook equation worked by hand, as in the published checks.
    expect(told.typed).toBeCloseTo(1.7302, 3);
    expect(told.wrong).toBe("#VALUE!");
    expect(told.why).toBe("IRRIG.PIPE.FRICTION: inside must be above 0 in; got -1");
    const plan = loadedHost().functions.get("SET_PLAN")?.(2, 14, 11, 0.75, 24);
    expect(told.spread).toEqual(plan);
    expect(alikeTables(told.line, line)).toBe(true);
    const [opened, closer, higher] = told.line;
    expect(closer[0]).toBeLessThan(opened[0] - 0.5);
    expect(higher[1]).toBeGreaterThan(closer[1] + 3);
    expect(told.menu).toEqual([
      ["Why this error?", "service:fieldsum.Menu?why"],
      ["Spread this table over its cells", "service:fieldsum.Menu?spread"],
    ]);
    const { namespace, functions } = reference();
    expect(told.help).toEqual(
      Object.fromEntries(
        functions.map(({ name, short, arguments: taken }) => [
          `${namespace}.${name}`,
          {
            help: short,
            arguments: taken.map((one) => [one.name, one.help, one.optional]),
          },
        ]),
      ),
    );
  },
);

/** What Calc 7.4 has no function for (LAMBDA names, FILTER and HSTACK), or shows in braces. */
const NOT_IN_CALC = /^_xlfn\.FORMULATEXT\(|_xlws\.FILTER\(|^My[A-Z]\w*\(/;
/** The customer's table of the quote is filtered; these read it. */
const READ_THE_FILTERED = ["Quote!B3", "Quote!B14", "Quote!E12", "Quote!E13", "Cost!B4", "Cost!B5"];

withOffice(
  "in the real program: the formula cells of the add-in's workbooks worked out again",
  () => {
    const sheets = join(folder, "every-sheet");
    execFileSync("npx", ["tsx", "build/sheets.ts", "--to", sheets], { cwd: root, stdio: "pipe" });
    // The plan hands its tables on through FILTER: in Calc 7.4 it finds no plan, and says so.
    const files = readyMadeSheets
      .filter(({ id }) => id !== "plan")
      .flatMap(({ id }) => [`${id}-us.xlsx`, `${id}-si.xlsx`]);
    const told = askOffice<
      Record<
        string,
        {
          count: number;
          same: number;
          differ: [where: string, formula: string][];
          texts: number;
          unlike: string[];
        }
      >
    >("workbooks_in_office.py", ...files.map((name) => join(sheets, name)));
    expect(Object.keys(told)).toEqual(files);
    for (const [file, { count, same, differ, texts, unlike }] of Object.entries(told)) {
      const open = differ.filter(
        ([where, formula]) =>
          !NOT_IN_CALC.test(formula) &&
          !(file.startsWith("quote-") && READ_THE_FILTERED.includes(where)),
      );
      expect([file, open]).toEqual([file, []]);
      expect(same + differ.length).toBe(count);
      expect(same).toBeGreaterThan(300);
      expect([file, unlike]).toEqual([file, []]);
      if (file.startsWith("line-layout")) expect(texts).toBeGreaterThan(0);
    }
  },
);
