import { readyMadeSheets } from "../sheets";
import type { ReadyMadeSheet } from "../sheets/kit/definition";
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

/** In the page's language and then in the others: a file may have been saved in another one. */
export async function booksInAllLanguages(): Promise<(readonly ReadyMadeSheet[])[]> {
  const others = LANGUAGES.filter((language) => language !== spokenLanguage());
  return [
    books(),
    ...(await Promise.all(
      others.map(async (language) => booksSaying(language, await workbookWordsIn(language))),
    )),
  ];
}
