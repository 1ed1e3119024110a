import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { libraryFiles } from "../../build/hosts/library";
import { exportNameOf } from "../../src/functions/export-name";
import { builtReference } from "../support/built";
import { call } from "../support/host";
import { samplesOf } from "../support/samples";

const reference = builtReference();
const folder = mkdtempSync(join(tmpdir(), "fieldsum-library-"));
const installed = join(folder, "node_modules", "fieldsum");

beforeAll(() => {
  const source = join(folder, "source");
  mkdirSync(source);
  mkdirSync(installed, { recursive: true });
  for (const [name, text] of libraryFiles(reference)) writeFileSync(join(source, name), text);
  // Packed as it would be passed on: what the package does not list is not there.
  const packed = execFileSync(
    "npm",
    ["pack", "--silent", "--offline", "--pack-destination", folder],
    {
      cwd: source,
      encoding: "utf8",
    },
  ).trim();
  execFileSync("tar", ["-xzf", join(folder, packed), "-C", installed, "--strip-components=1"]);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function run(script: string): string {
  const path = join(folder, "script.mjs");
  writeFileSync(path, script);
  return execFileSync(process.execPath, [path], { cwd: folder, encoding: "utf8" });
}

test("a script imports every function and gets what a cell gets", () => {
  const samples = samplesOf(reference.functions).map(({ help, cells }) => ({
    name: exportNameOf(help.id),
    cells,
    expected: call(help.name, ...cells),
  }));
  const got = run(
    `import * as fieldsum from "fieldsum";
     const samples = ${JSON.stringify(samples.map(({ name, cells }) => ({ name, cells })))};
     console.log(JSON.stringify(samples.map(({ name, cells }) => fieldsum[name](...cells))));`,
  );
  expect(samples).toHaveLength(reference.functions.length);
  expect(JSON.parse(got)).toEqual(
    JSON.parse(JSON.stringify(samples.map(({ expected }) => expected))),
  );
});

test("what has no answer is thrown, with its code and its message", () => {
  const got = run(
    `import { CellError, pipeFriction } from "fieldsum";
     try { pipeFriction(-1, 2, 100); } catch (error) {
       console.log(error instanceof CellError, error.code, error.message);
     }`,
  );
  expect(got.trim()).toBe("true #VALUE! flow must be 0 gpm or more; got -1");
});

test("a typed script is held to the arguments", () => {
  const check = (text: string): string => {
    writeFileSync(join(folder, "typed.mts"), text);
    try {
      execFileSync(
        process.execPath,
        [
          join(__dirname, "../../node_modules/typescript/bin/tsc"),
          ...["--noEmit", "--strict", "--module", "nodenext", "--target", "es2022"],
          join(folder, "typed.mts"),
        ],
        { cwd: folder, encoding: "utf8" },
      );
      return "";
    } catch (error) {
      return (error as { stdout: string }).stdout;
    }
  };
  expect(
    check(
      'import { lateralProfile, pipeFriction } from "fieldsum";\nconst loss = pipeFriction(50, 2.1, 100, "SI");\nconst rows: unknown[][] = lateralProfile(48, 14, 45, [[2.17, 14]], [[35, 3.7], [45, 4.2]]);\nconsole.log(loss, rows);\n',
    ),
  ).toBe("");
  expect(check('import { pipeFriction } from "fieldsum";\npipeFriction(50);\n')).toMatch(/TS2554/);
});
