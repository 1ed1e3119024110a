import { chosenLanguage, localeFor } from "./chosen";
import { messagesIn, screenWordsIn, workbookWordsIn } from "./load";
import type { Language } from "./language";
import type { MessageReader } from "./message-reader";

/**
 * The language that a page speaks from its first line to its last: decided once, before anything is
 * drawn. Another choice loads the page anew.
 */
interface Spoken {
  readonly language: Language;
  readonly locale: string;
  readonly messages: MessageReader;
  readonly screen: (text: string) => string;
  readonly workbook: (text: string) => string;
}

let spoken: Spoken = {
  language: "en",
  locale: "en-US",
  messages: { error: (message) => message, said: (text) => text },
  screen: (text) => text,
  workbook: (text) => text,
};

/** The page takes the language that was chosen or that the browser asks for, or the one given. */
export async function speak(language: Language = chosenLanguage()): Promise<Language> {
  const [messages, screen, workbook] = await Promise.all([
    messagesIn(language),
    screenWordsIn(language),
    workbookWordsIn(language),
  ]);
  spoken = { language, locale: localeFor(language), messages, screen, workbook };
  document.documentElement.lang = language;
  return language;
}

/** Where the edition's help stands, and the part of it that calls take, from the folder of the pages. */
export function referenceAddress(
  language: Language,
  file: "reference.json" | "callables.json" = "reference.json",
): string {
  return language === "en" ? file : `${language}/${file}`;
}

/** How numbers are written: "1.5" or "1,5". */
export const spokenLocale = (): string => spoken.locale;
/** Where a comma parts the decimals, and so no thousands. */
export const writesComma = (): boolean =>
  new Intl.NumberFormat(spoken.locale).format(1.5).includes(",");
export const spokenLanguage = (): Language => spoken.language;
/** A text of the screen, by its English. */
export const screenSaid = (text: string): string => spoken.screen(text);
/** A text of a ready-made workbook. */
export const workbookSaid = (text: string): string => spoken.workbook(text);
/** The message of a cell's error: a function's, or the page's own words for one of the spreadsheet's. */
export function errorSaid(message: string): string {
  const said = spoken.messages.error(message);
  return said === message ? spoken.screen(message) : said;
}
/** A text that a function gives: a header, a label, a verdict. */
export const textSaid = (text: string): string => spoken.messages.said(text);
