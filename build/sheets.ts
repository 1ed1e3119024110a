import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { parseArgs } from "node:util";
import { readyMadeSheets } from "../src/sheets";
import { isLanguage, type Language, LANGUAGES } from "../src/words/language";
import { functionWordsPage, shownIn, valuesOf } from "../src/words/function-words";
import { functionWordsIn, workbookWordsIn } from "../src/words/load";
import { workbookNotices } from "../src/words/workbook-notices";
import { workbookIn } from "../src/words/workbook-reader";
import type { ReadyMadeSheet, UnitSystem } from "../src/sheets/kit/definition";
import { fileParts } from "../src/sheets/file/workbook-file";
import { BUILD_DATE, dist, NAMESPACE, root } from "./settings";
import { evaluate } from "./sheet-evaluator";
import { writePackage } from "../src/sheets/file/package";

export const SYSTEMS: readonly UnitSystem[] = ["US", "SI"];

export function fileName(sheet: ReadyMadeSheet, system: UnitSystem, language: Language): string {
  return `${sheet.id}-${system.toLowerCase()}${language === "en" ? "" : `-${language}`}`;
}

export async function sheetsIn(language: Language): Promise<readonly ReadyMadeSheet[]> {
  const say = await workbookWordsIn(language);
  return language === "en" ? readyMadeSheets : readyMadeSheets.map((one) => workbookIn(one, say));
}

interface Files {
  readonly workbook: Uint8Array;
  /** The same without formulas, for people without the add-in and for viewers that cannot evaluate. */
  readonly valuesOnly: Uint8Array;
}

/** "2026-11-26" */
export const DAY = BUILD_DATE.toISOString().slice(0, 10);

/** One ready-made sheet in one system. Refuses a sheet with a cell that shows an error. */
export async function writeSheet(
  sheet: ReadyMadeSheet,
  system: UnitSystem,
  language: Language,
): Promise<Files> {
  const pages = sheet.pages(system);
  const evaluated = await evaluate(pages, NAMESPACE);
  if (evaluated.errors.length > 0) {
    throw new Error(`${sheet.title} (${system}) shows errors:\n${evaluated.errors.join("\n")}`);
  }
  const words = await functionWordsIn(language);
  const about = { title: sheet.title, description: sheet.purpose, date: BUILD_DATE };
  const write = (notice: string, valuesOnly: boolean) => {
    const isWhole = words === undefined || valuesOnly;
    const written = isWhole
      ? pages
      : [...pages, functionWordsPage(pages, evaluated, system, words)];
    const shown =
      words === undefined || !valuesOnly ? evaluated : shownIn(pages, evaluated, words.reader);
    return writePackage(
      fileParts(written, valuesOf(pages, shown), {
        ...about,
        system,
        namespace: NAMESPACE,
        notice,
        valuesOnly,
      }),
      about,
    );
  };
  const notices = workbookNotices[language];
  const file = `${fileName(sheet, system, language)}.xlsx`;
  const valuesOnly = [notices.valuesOnly(DAY), notices.formulasIn(file), notices.translated];
  return {
    workbook: await write(notices.whole(DAY), false),
    valuesOnly: await write(valuesOnly.filter(Boolean).join(" "), true),
  };
}

/** Prints copies without formulas: the printing program has none of our functions. */
function writePdfs(copies: ReadonlyMap<string, Uint8Array>, folder: string): void {
  const scratch = mkdtempSync(join(tmpdir(), "fieldsum-"));
  try {
    const paths = [...copies].map(([name, bytes]) => {
      const path = join(scratch, `${name}.xlsx`);
      writeFileSync(path, bytes);
      return path;
    });
    const profile = `-env:UserInstallation=file://${join(scratch, "profile")}`;
    execFileSync(
      "soffice",
      [profile, "--headless", "--convert-to", "pdf", "--outdir", folder, ...paths],
      { stdio: "ignore" },
    );
  } catch (error) {
    const missing = (error as NodeJS.ErrnoException).code === "ENOENT";
    throw missing
      ? new Error("--pdf needs LibreOffice: install it so that the command soffice is found")
      : error;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** What the workbooks are made from: while none of it changes, they are not made anew. */
function madeFrom(): string {
  const hash = createHash("sha256").update(`${NAMESPACE} ${DAY} ${process.version}`);
  hash.update(readFileSync(join(root, "package-lock.json")));
  const folders = ["src", "build"].map((name) => join(root, name));
  for (const folder of folders)
    for (const name of readdirSync(folder, { recursive: true, encoding: "utf8" }).sort())
      if (name.endsWith(".ts") && !/^(trial|taskpane|screen|reference-pages|hosts)\b/.test(name))
        hash.update(name).update(readFileSync(join(folder, name)));
  return hash.digest("hex").slice(0, 16);
}

const kept = join(root, "node_modules", ".cache", "ready-made");

/** One ready-made sheet in one system, as it was made before where nothing has changed since. */
async function made(
  source: string | undefined,
  sheet: ReadyMadeSheet,
  system: UnitSystem,
  language: Language,
): Promise<Files> {
  if (source === undefined) return writeSheet(sheet, system, language);
  const folder = join(kept, source);
  const name = fileName(sheet, system, language);
  const paths = [`${name}.xlsx`, `${name}-values.xlsx`].map((file) => join(folder, file));
  if (!paths.every((path) => existsSync(path))) {
    const { workbook, valuesOnly } = await writeSheet(sheet, system, language);
    mkdirSync(folder, { recursive: true });
    [workbook, valuesOnly].forEach((bytes, i) => {
      // Another process may be at it: a file that is there is whole.
      writeFileSync(`${paths[i]}.${process.pid}`, bytes);
      renameSync(`${paths[i]}.${process.pid}`, paths[i]);
    });
  }
  const [workbook, valuesOnly] = paths.map((path) => new Uint8Array(readFileSync(path)));
  return { workbook, valuesOnly };
}

/** All of them, for those who take them from the page. */
export async function writeReadyMade(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  for (const language of LANGUAGES) await writeSheets({ folder, only: [], language, fresh: false });
}

/** Writes them into a folder; returns the copies without formulas, by name. */
async function writeSheets({
  folder,
  only,
  language,
  fresh,
}: Omit<Options, "pdf">): Promise<Map<string, Uint8Array>> {
  const source = fresh ? undefined : madeFrom();
  const copies = new Map<string, Uint8Array>();
  for (const sheet of await sheetsIn(language)) {
    if (only.length > 0 && !only.includes(sheet.id)) continue;
    for (const system of SYSTEMS) {
      const name = fileName(sheet, system, language);
      const { workbook, valuesOnly } = await made(source, sheet, system, language);
      writeFileSync(join(folder, `${name}.xlsx`), workbook);
      writeFileSync(join(folder, `${name}-values.xlsx`), valuesOnly);
      copies.set(name, valuesOnly);
    }
  }
  return copies;
}

interface Options {
  readonly pdf: boolean;
  readonly folder: string;
  /** Ids of the sheets to write; all when empty. */
  readonly only: readonly string[];
  readonly language: Language;
  /** Whether to make them anew even where nothing has changed. */
  readonly fresh: boolean;
}

function readOptions(words: readonly string[]): Options {
  const { values } = parseArgs({
    args: [...words],
    options: {
      pdf: { type: "boolean", default: false },
      to: { type: "string", default: join(dist, "sheets") },
      only: { type: "string", multiple: true, default: [] },
      language: { type: "string", default: "en" },
      fresh: { type: "boolean", default: false },
    },
  });
  const ids = readyMadeSheets.map(({ id }) => id);
  const unknown = values.only.find((id) => !ids.includes(id));
  if (unknown !== undefined) throw new Error(`no sheet ${unknown}; there are ${ids.join(", ")}`);
  const { language, fresh } = values;
  if (!isLanguage(language)) throw new Error(`no language ${language}; there are en, es`);
  return { pdf: values.pdf, folder: values.to, only: values.only, language, fresh };
}

async function main(words: readonly string[]): Promise<void> {
  const options = readOptions(words);
  mkdirSync(options.folder, { recursive: true });
  const copies = await writeSheets(options);
  for (const name of copies.keys()) {
    const path = join(options.folder, `${name}.xlsx`);
    console.log(`${relative(root, path)}  ${(statSync(path).size / 1024).toFixed(0)} kB`);
  }
  if (options.pdf) writePdfs(copies, options.folder);
}

if (require.main === module) {
  main(process.argv.slice(2)).then(
    () => process.exit(0),
    (error: unknown) => {
      console.error(error instanceof Error ? error.message : error);
      process.exit(1);
    },
  );
}
