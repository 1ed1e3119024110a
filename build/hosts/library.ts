import { readFileSync } from "node:fs";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { exportNameOf } from "../../src/functions/export-name";
import type { ArgumentHelp, FunctionHelp, Reference } from "../../src/reference";
import { licencesText, readPackage } from "../licences";
import { dist, root } from "../settings";
import { writeEdition, writeFolder } from "./edition";
import { libraryFolders } from "./python/program";
import { inComment, parameterName } from "./script-text";

const LIBRARY = join(dist, "hosts", "npm");

/** The files of the package, by name. */
export function libraryFiles(reference: Reference): ReadonlyMap<string, string> {
  return new Map([
    ["package.json", `${JSON.stringify(packageOf(reference), null, 2)}\n`],
    ["engine.js", engine()],
    ["index.js", moduleText(reference)],
    ["index.d.ts", typesText(reference)],
    ["README.md", readmeText(reference)],
    ["LICENSE", readFileSync(join(root, "LICENSE"), "utf8")],
    ["licences.txt", licencesText(libraryFolders().map(readPackage))],
  ]);
}

function packageOf({ version }: Reference) {
  return {
    name: "fieldsum",
    version,
    description: "Formulas for people who plan movable sprinkler lines",
    license: "MIT",
    type: "module",
    sideEffects: false,
    exports: { ".": { types: "./index.d.ts", default: "./index.js" } },
    types: "./index.d.ts",
    files: ["index.js", "index.d.ts", "engine.js", "licences.txt"],
  };
}

function engine(): string {
  const { outputFiles } = buildSync({
    entryPoints: [join(root, "src", "hosts", "library-engine.ts")],
    bundle: true,
    write: false,
    format: "esm",
    target: "es2020",
    charset: "utf8",
    legalComments: "none",
    logLevel: "warning",
  });
  return outputFiles[0].text;
}

function moduleText({ functions }: Reference): string {
  return [
    'import { CellError, guardedFunctions } from "./engine.js";',
    "export { CellError };",
    ...functions.map(
      ({ id }) => `export const ${exportNameOf(id)} = guardedFunctions.get("${id}");`,
    ),
    "",
  ].join("\n");
}

function typesText({ functions }: Reference): string {
  return [
    "/** A value of a cell; null is an empty one, and leaves an optional argument out. */",
    "export type Cell = number | string | boolean | null;",
    "",
    "/** What a function throws: the code that a cell would show, and a message that names the argument. */",
    "export class CellError extends Error {",
    '  readonly code: "#VALUE!" | "#N/A";',
    "}",
    ...functions.map(declarationOf),
    "",
  ].join("\n");
}

function declarationOf(help: FunctionHelp): string {
  const names = help.arguments.map(({ name }) => parameterName(name));
  return [
    "",
    "/**",
    ` * ${inComment(help.short)}`,
    ...help.arguments.map((argument, i) => ` * @param ${names[i]} ${inComment(argument.help)}`),
    ` * @returns ${inComment(help.returns)}`,
    ` * @throws CellError. ${inComment(help.errors)}`,
    " */",
    `export declare function ${exportNameOf(help.id)}(${help.arguments
      .map((argument, i) => `${names[i]}${argument.optional ? "?" : ""}: ${typeOf(argument)}`)
      .join(
        ", ",
      )}): ${help.spills ? "(number | string | boolean)[][]" : "number | string | boolean"};`,
  ].join("\n");
}

function typeOf({ range, choices, yesNo }: ArgumentHelp): string {
  if (range) return "Cell | readonly (readonly Cell[])[]";
  if (choices !== undefined) return "string | null";
  return yesNo === true ? "boolean | null" : "Cell";
}

function readmeText({ functions }: Reference): string {
  return `# fieldsum

The functions of the spreadsheet add-in for scripts and notebooks: ${functions.length} of them, with the same
arguments, units and errors.

\`\`\`ts
import { CellError, lateralPressure, pipeFriction } from "fieldsum";

const chart = [[35, 3.7], [45, 4.2], [55, 4.6]];
// The pressure at the fourteenth head.
console.log(lateralPressure(14, 48, 14, 45, [[2.17, 7], [1.72, 7]], chart, "US")); // 42.29 psi
try {
  pipeFriction(50, -1, 100);
} catch (error) {
  if (error instanceof CellError) console.log(error.message); // inside must be above 0 in; got -1
}
\`\`\`

An argument left out is \`undefined\` or \`null\`, a range is an array of rows, a table comes back as one,
with its headers. What has no answer throws a \`CellError\` with the code that a cell would show and a
message that names the argument. Units are "US" (ft, in, psi, gpm) unless "SI" (m, mm, kPa, m³/h) is
given.

A result that holds for the numbers given says nothing of codes, the manufacturer's instructions or
the work of licensed people, which come first.
`;
}

/** Writes dist/hosts/npm from the reference and the sources. */
function writeLibrary(reference: Reference): void {
  writeFolder(LIBRARY, libraryFiles(reference));
  console.log(`hosts/npm: ${reference.functions.length} functions`);
}

if (require.main === module) writeEdition(writeLibrary);
