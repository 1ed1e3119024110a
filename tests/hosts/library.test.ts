import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { libraryFiles } from "../../build/hosts/library";
import { exportNameOf } from "../../src/functions/export-name";
import { builtReference } from "../support/built";
import { call } from "../support/host";
import { samplesOf } from "../support/samples";

const reference = builtReference();
const folder = mkdtempSync(join(tmpdir(), "fieldsum-library-"));

beforeAll(() => {
  const source = join(folder, "source");
  mkdirSync(source);
  for (const [name, text] of libraryFiles(reference)) writeFileSync(join(source, name), text);
  // Packed as it would be passed on: what the package does not list is not there.
  const packed = npm(source, "pack", "--pack-destination", folder).trim();
  writeFileSync(join(folder, "package.json"), '{ "type": "module", "private": true }');
  npm(folder, "install", "--no-audit", "--no-fund", join(folder, packed));
});

function npm(at: string, ...words: readonly string[]): string {
  return execFileSync("npm", [...words, "--silent", "--offline"], { cwd: at, encoding: "utf8" });
}

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

/** What the compiler, at its strictest, says of a script; it writes what node runs. */
function compiled(name: string): string {
  try {
    execFileSync(
      process.execPath,
      [
        join(__dirname, "../../node_modules/typescript/bin/tsc"),
        ...["--strict", "--module", "nodenext", "--target", "es2022"],
        join(folder, name),
      ],
      { cwd: folder, encoding: "utf8" },
    );
    return "";
  } catch (error) {
    return (error as { stdout: string }).stdout;
  }
}

test("a typed script is held to the arguments", () => {
  writeFileSync(
    join(folder, "right.ts"),
    'import { lateralProfile, pipeFriction } from "fieldsum";\nexport const loss = pipeFriction(50, 2.1, 100, "SI");\nexport const rows: unknown[][] = lateralProfile(48, 14, 45, [[2.17, 14]], [[35, 3.7], [45, 4.2]]);\n',
  );
  expect(compiled("right.ts")).toBe("");
  writeFileSync(
    join(folder, "wrong.ts"),
    'import { pipeFriction } from "fieldsum";\npipeFriction(50);\n',
  );
  expect(compiled("wrong.ts")).toMatch(/TS2554/);
});

test("the read-me's own script compiles, runs, and gives what the read-me says", () => {
  const readme = readFileSync(join(folder, "node_modules", "fieldsum", "README.md"), "utf8");
  const script = /```ts\n(.*?)```/s.exec(readme)?.[1] ?? "";
  expect(script).toContain("lateralPressure(");
  writeFileSync(join(folder, "readme.ts"), script);
  expect(compiled("readme.ts")).toBe("");
  const shown = execFileSync(process.execPath, [join(folder, "readme.js")], {
    cwd: folder,
    encoding: "utf8",
  });
  const wanted = call("LATERAL.PRESSURE", 14, 48, 14, 45, TUBING, CHART, "US") as number;
  const [pressure, message] = shown.trim().split("\n");
  expect(Number(pressure)).toBe(wanted);
  expect(script).toContain(`// ${wanted.toFixed(2)} psi`);
  expect(script).toContain(`// ${message}\n`);
});

const TUBING = [
  [2.17, 7],
  [1.72, 7],
];
const CHART = [
  [35, 3.7],
  [45, 4.2],
  [55, 4.6],
];
