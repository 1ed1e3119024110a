import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { strToU8, type Zippable, zipSync } from "fflate";
import type { Reference } from "../../src/reference";
import { isLanguage } from "../../src/words/language";
import { licencesText, readPackage } from "../licences";
import { BUILD_DATE, dist, root, VERSION } from "../settings";
import {
  addIn,
  catalogueModule,
  description,
  interfaceText,
  job,
  menu,
  packageManifest,
} from "./calc/parts";
import { EXTENSION, hasOffice } from "./calc/office";
import { writeEdition } from "./edition";
import { pythonFunctions } from "./python";
import { libraryFolders } from "./python/program";

const own = (name: string) => readFileSync(join(__dirname, "calc", name), "utf8");

/** The files of the extension, by their path in it: text, all of it. */
export function extensionFiles(reference: Reference): ReadonlyMap<string, string> {
  return new Map([
    ["META-INF/manifest.xml", packageManifest()],
    ["description.xml", description(VERSION)],
    ["CalcAddIns.xcu", addIn(reference)],
    ["Addons.xcu", menu()],
    ["Jobs.xcu", job()],
    // The program reads the text of an interface as well as a compiled one.
    ["functions.idl", interfaceText(reference)],
    ["component.py", own("component.py")],
    ["pythonpath/fieldsum_catalogue.py", catalogueModule(reference)],
    ["pythonpath/fieldsum_cells.py", own("pythonpath/fieldsum_cells.py")],
    ["pythonpath/fieldsum_document.py", own("pythonpath/fieldsum_document.py")],
    ["pythonpath/fieldsum_functions.py", pythonFunctions()],
    ["LICENSE", readFileSync(join(root, "LICENSE"), "utf8")],
    ["licences.txt", licencesText(libraryFolders().map(readPackage))],
  ]);
}

export function packed(files: ReadonlyMap<string, string>): Uint8Array {
  const entries: Zippable = {};
  for (const [path, text] of files) entries[path] = [strToU8(text), { mtime: BUILD_DATE }];
  return zipSync(entries, { level: 9 });
}

/** Writes dist/hosts/fieldsum.oxt from the reference and the sources. */
function writeExtension(reference: Reference): void {
  const bytes = packed(extensionFiles(reference));
  mkdirSync(join(dist, "hosts"), { recursive: true });
  writeFileSync(EXTENSION, bytes);
  console.log(
    `hosts/fieldsum.oxt: ${reference.functions.length} functions, ${Math.round(bytes.length / 1000)} kB`,
  );
}

async function writeAll(reference: Reference): Promise<void> {
  const { values } = parseArgs({
    options: {
      language: { type: "string", default: "en" },
      only: { type: "string", multiple: true, default: [] },
    },
  });
  if (!isLanguage(values.language))
    throw new Error(`no language ${values.language}; there are en, es`);
  writeExtension(reference);
  if (!hasOffice()) {
    console.log(
      "hosts/calc: no workbooks, for LibreOffice with python3-uno is not here to save them",
    );
    return;
  }
  // Only here: tests of the extension cannot load the writer of workbooks.
  const { writeWorkbooks } = await import("./calc/workbooks");
  const names = await writeWorkbooks(values.language, values.only);
  console.log(`hosts/calc: ${names.length} workbooks`);
}

if (require.main === module) writeEdition(writeAll);
