import { chosenLanguage, localeFor } from "./chosen";
import { messagesIn } from "./errors";
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
}

let spoken: Spoken = {
  language: "en",
  locale: "en-US",
  messages: { error: (message) => message, said: (text) => text },
};

/** The page takes the language that was chosen or that the browser asks for, or the one given. */
export async function speak(language: Language = chosenLanguage()): Promise<Language> {
  spoken = { language, locale: localeFor(language), messages: await messagesIn(language) };
  document.documentElement.lang = language;
  return language;
}

/** Where the edition's help stands, from the folder of the pages. */
export function referenceAddress(language: Language): string {
  return language === "en" ? "reference.json" : `${language}/reference.json`;
}

/** How numbers are written: "1.5" or "1,5". */
export const spokenLocale = (): string => spoken.locale;
/** The message of a cell's error. */
export const errorSaid = (message: string): string => spoken.messages.error(message);
/** A text that a function gives: a header, a label, a verdict. */
export const textSaid = (text: string): string => spoken.messages.said(text);
