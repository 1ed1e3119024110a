import { readFileSync } from "node:fs";
import { join } from "node:path";
import { buildSync } from "esbuild";
import type { Reference } from "../../src/reference";
import { readyMadeSheets } from "../../src/sheets";
import { licencesText, readPackage } from "../licences";
import { dist, root } from "../settings";
import { codeText, workbookFile } from "./google/code";
import { googleWorkbook } from "./google/workbooks";
import { writeEdition, writeFolder } from "./edition";
import { libraryFolders } from "./python/program";

const PROJECT = join(dist, "hosts", "google");

/** Only the sheet that it stands in, and a menu there. */
const MANIFEST = {
  timeZone: "Etc/UTC",
  exceptionLogging: "NONE",
  runtimeVersion: "V8",
  oauthScopes: [
    "https://www.googleapis.com/auth/spreadsheets.currentonly",
    "https://www.googleapis.com/auth/script.container.ui",
  ],
};

/** The files of the script project, by name. */
export function projectFiles(reference: Reference): ReadonlyMap<string, string> {
  const spills = new Set(
    reference.functions.filter((help) => help.spills).map(({ name }) => name.toUpperCase()),
  );
  // Every call of a function loads the whole script, but no pages: what only the menu needs is kept
  // in these, as text.
  const workbooks = readyMadeSheets.flatMap((sheet) =>
    (["US", "SI"] as const).map((system): [string, string] => [
      `${workbookFile(sheet.id, system)}.html`,
      JSON.stringify(googleWorkbook(sheet, system, (name) => spills.has(name))).replace(
        /</g,
        "\\u003c",
      ),
    ]),
  );
  return new Map([
    ["appsscript.json", `${JSON.stringify(MANIFEST, null, 2)}\n`],
    ["Engine.gs", script("google-engine", "FieldsumEngine_")],
    ["Writer.gs", script("google-writer", "FieldsumWriter_")],
    ["Code.gs", `${codeText(reference)}\n`],
    ...workbooks,
    ["LICENSE", readFileSync(join(root, "LICENSE"), "utf8")],
    ["licences.txt", licencesText(libraryFolders().map(readPackage))],
  ]);
}

function script(entry: string, globalName: string): string {
  const { outputFiles } = buildSync({
    entryPoints: [join(root, "src", "hosts", `${entry}.ts`)],
    bundle: true,
    write: false,
    format: "iife",
    globalName,
    target: "es2020",
    minifyWhitespace: true,
    minifySyntax: true,
    charset: "utf8",
    legalComments: "none",
    logLevel: "warning",
  });
  return outputFiles[0].text;
}

/** Writes dist/hosts/google from the reference, the sources and the definitions. */
function writeProject(reference: Reference): void {
  const files = projectFiles(reference);
  writeFolder(PROJECT, files);
  const bytes = [...files.values()].reduce((sum, text) => sum + text.length, 0);
  console.log(
    `hosts/google: ${reference.functions.length} functions, ${readyMadeSheets.length} workbooks, ${Math.round(bytes / 1000)} kB`,
  );
}

if (require.main === module) writeEdition(writeProject);
