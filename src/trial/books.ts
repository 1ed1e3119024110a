import type { Page, ReadyMadeSheet, UnitSystem } from "../sheets/kit/definition";
import { allSheets, firstSheet, shelf } from "../sheets/shelf";
import { FUNCTION_WORDS } from "../words/function-words-page";
import { type Language, LANGUAGES } from "../words/language";
import { workbookWordsIn } from "../words/load";
import { spokenLanguage, workbookSaid } from "../words/spoken";
import { workbookIn } from "../words/workbook-reader";
import type { Shelf } from "./files/open";

/** Those whose pages are here, by their ids. */
const here = new Map([[firstSheet.id, firstSheet]]);
let fetching: Promise<void> | undefined;

/** Whether all workbooks can be opened, or only the first. */
export const allBooksAreHere = (): boolean => here.size === shelf.length;

/**
 * Fetches the workbooks that the page did not begin with; the first visit to it would be longer by
 * them. Where that fails, the next call tries again.
 */
export function fetchAllBooks(): Promise<void> {
  fetching ??= allSheets().then(
    (sheets) => {
      for (const sheet of sheets) here.set(sheet.id, sheet);
    },
    (error: unknown) => {
      fetching = undefined;
      throw error;
    },
  );
  return fetching;
}

/** The shelf's workbooks; the pages of one that is not here yet cannot be asked for. */
const standing = shelf.map((head): ReadyMadeSheet => {
  return {
    ...head,
    pages: remembered((system) => {
      const sheet = here.get(head.id);
      if (sheet === undefined) throw new Error(`${head.title} has not been fetched yet`);
      return sheet.pages(system);
    }),
  };
});

/** Pages never change, and take a while to make. */
function remembered(make: ReadyMadeSheet["pages"]): ReadyMadeSheet["pages"] {
  const known = new Map<UnitSystem, readonly Page[]>();
  return (system) => {
    let pages = known.get(system);
    if (pages === undefined) known.set(system, (pages = make(system)));
    return pages;
  };
}

const made = new Map<Language, readonly ReadyMadeSheet[]>([["en", standing]]);

function booksSaying(language: Language, say: (text: string) => string): readonly ReadyMadeSheet[] {
  const known = made.get(language);
  if (known !== undefined) return known;
  const books = standing.map((sheet) => {
    const said = workbookIn(sheet, say, "keys");
    return { ...said, pages: remembered((system) => said.pages(system)) };
  });
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
  const sheets = await allSheets();
  await fetchAllBooks();
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
            { sheets: sheets.map((sheet) => workbookIn(sheet, say)), kept, beside },
          ];
    }),
  );
  return all.flat();
}
