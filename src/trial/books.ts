import type { Page, ReadyMadeSheet, UnitSystem } from "../sheets/kit/definition";
import { allSheets, firstSheet, shelf } from "../sheets/shelf";
import { type Language, LANGUAGES } from "../words/language";
import { workbookWordsIn } from "../words/load";
import { spokenLanguage, workbookSaid } from "../words/spoken";
import { workbookIn } from "../words/workbook-reader";

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

/** In the page's language and then in the others: a file may have been saved in another one. */
export async function booksInAllLanguages(): Promise<(readonly ReadyMadeSheet[])[]> {
  await fetchAllBooks();
  const others = LANGUAGES.filter((language) => language !== spokenLanguage());
  return [
    books(),
    ...(await Promise.all(
      others.map(async (language) => booksSaying(language, await workbookWordsIn(language))),
    )),
  ];
}
