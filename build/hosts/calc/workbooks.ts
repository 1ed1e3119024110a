import { execFileSync } from "node:child_process";
import { mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileParts } from "../../../src/sheets/file/workbook-file";
import { writePackage } from "../../../src/sheets/file/package";
import type { Language } from "../../../src/words/language";
import { BUILD_DATE, NAMESPACE } from "../../settings";
import { evaluate } from "../../sheet-evaluator";
import { DAY, fileName, sheetsIn, SYSTEMS } from "../../sheets";
import { EXTENSION, OFFICE_PYTHON, WORKBOOKS } from "./office";
import { calcPages } from "./pages";

const notices = {
  en: `Needs the Fieldsum extension for LibreOffice; the values here were computed on ${DAY}.`,
  es: `Necesita la extensión Fieldsum para LibreOffice; los valores se calcularon el ${DAY}. Traducción aún no leída por un profesional del riego.`,
} as const;

/**
 * The ready-made workbooks for this program, by file name: written as the add-in's are, from pages
 * that it can work out, and saved by the program itself.
 */
export async function writeWorkbooks(
  language: Language,
  only: readonly string[],
): Promise<readonly string[]> {
  const folder = join(WORKBOOKS, `.${process.pid}`);
  mkdirSync(folder, { recursive: true });
  try {
    const names: string[] = [];
    for (const sheet of await sheetsIn(language)) {
      if (only.length > 0 && !only.includes(sheet.id)) continue;
      for (const system of SYSTEMS) {
        const name = fileName(sheet, system, language);
        const pages = sheet.pages(system);
        const shown = await evaluate(pages, NAMESPACE);
        const about = { title: sheet.title, description: sheet.purpose, date: BUILD_DATE };
        const options = { ...about, system, namespace: NAMESPACE, notice: notices[language] };
        const changed = calcPages(pages, shown);
        const read = {
          // The page of tables is this edition's own.
          value: (page: string, row: number, column: number) =>
            pages.some((one) => one.name === page) ? shown.value(page, row, column) : null,
        };
        writeFileSync(
          join(folder, `${name}.xlsx`),
          await writePackage(fileParts(changed, read, options), about),
        );
        names.push(name);
      }
    }
    const script = join(__dirname, "save_as_ods.py");
    execFileSync(OFFICE_PYTHON, [script, EXTENSION, folder, ...names], {
      stdio: ["ignore", "inherit", "pipe"],
    });
    for (const name of names)
      renameSync(join(folder, `${name}.ods`), join(WORKBOOKS, `${name}.ods`));
    return names;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
