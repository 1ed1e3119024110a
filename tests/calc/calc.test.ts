import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pythonFunctions } from "../../build/hosts/python";
import type { Reference } from "../../src/reference";
import { loadedHost } from "../../build/stand-in-host";
import { loadWorkbooks } from "../support/open-workbook";
import { corpus } from "./corpus";

const root = join(__dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "fieldsum-calc-"));

afterAll(() => rmSync(folder, { recursive: true, force: true }));

function reference(): Reference {
  return JSON.parse(readFileSync(join(root, "dist", "reference.json"), "utf8")) as Reference;
}

test("every function gives what the add-in gives, value or error, on 30,000 calls and more", () => {
  const { functions } = loadedHost();
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

/** The real program, where it is there. Without it this is said, and nothing of it is claimed. */
const hasOffice =
  spawnSync("soffice", ["--version"]).status === 0 &&
  spawnSync("/usr/bin/python3", ["-c", "import uno"]).status === 0;

const inOffice = hasOffice ? test : (name: string) => console.log(`no LibreOffice here: ${name}`);

inOffice(
  "in the real program: functions typed, and the line workbook with another spacing",
  async () => {
    const sheets = join(folder, "sheets");
    execFileSync("npx", ["tsx", "build/sheets.ts", "--to", sheets, "--only", "line-layout"], {
      cwd: root,
      stdio: "pipe",
    });
    const out = execFileSync(
      "/usr/bin/python3",
      [
        join(__dirname, "in_office.py"),
        join(root, "dist", "hosts", "fieldsum.oxt"),
        join(sheets, "line-layout-us.xlsx"),
      ],
      { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] },
    );
    const told = JSON.parse(out) as { typed: number; wrong: string; far: number };
    const { openWorkbook } = loadWorkbooks();
    const book = await openWorkbook("line-layout", "US");
    await book.set({ Spacing: 40 });
    const far = book.values().FarPressure as number;
    book.close();
    // The handbook equation worked by hand, as in the published checks.
    expect(told.typed).toBeCloseTo(1.7302, 3);
    expect(told.wrong).toBe("#VALUE!");
    expect(Math.abs(told.far / far - 1)).toBeLessThan(1e-9);
  },
);
