import type { Shelf } from "./files/open";
import { readyMadeSheets } from "../sheets";
import type { ReadyMadeSheet } from "../sheets/kit/definition";
import { FUNCTION_WORDS } from "../words/function-words-page";
import { type Language, LANGUAGES } from "../words/language";
import { workbookWordsIn } from "../words/load";
import { spokenLanguage, workbookSaid } from "../words/spoken";
import { workbookIn } from "../words/workbook-reader";

const made = new Map<Language, readonly ReadyMadeSheet[]>();

function booksSaying(language: Language, say: (text: string) => string): readonly ReadyMadeSheet[] {
  if (language === "en") return readyMadeSheets;
  const known = made.get(language);
  if (known !== undefined) return known;
  const books = readyMadeSheets.map((sheet) => workbookIn(sheet, say, "keys"));
  made.set(language, books);
  return books;
}

/** The ready-made workbooks in the page's language. */
export function books(): readonly ReadyMadeSheet[] {
  return booksSaying(spokenLanguage(), workbookSaid);
}

/**
 * What a file may have been written from: the workbooks of each language, the page's own first, as
 * this page saves them and as they are downloaded, with the names of their pages put over too.
 */
export async function shelves(): Promise<Shelf[]> {
  const spoken = spokenLanguage();
  const others = LANGUAGES.filter((language) => language !== spoken);
  const all = await Promise.all(
    [spoken, ...others].map(async (language): Promise<Shelf[]> => {
      const say = await workbookWordsIn(language);
      const kept = booksSaying(language, say);
      const beside = [say(FUNCTION_WORDS)];
      return language === "en"
        ? [{ sheets: kept, beside }]
        : [
            { sheets: kept, beside },
            { sheets: readyMadeSheets.map((sheet) => workbookIn(sheet, say)), kept, beside },
          ];
    }),
  );
  return all.flat();
}
