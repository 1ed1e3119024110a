import { pane as englishPane } from "./en/pane";
import { reference as englishReference } from "./en/reference";
import { support as englishSupport } from "./en/support";
import { pane as spanishPane } from "./es/pane";
import { reference as spanishReference } from "./es/reference";
import { support as spanishSupport } from "./es/support";
import type { Language } from "./language";
import type { Words } from "./shape";

type Spoken<English> = Readonly<Record<Language, Words<English>>>;

/** A screen's words by language; a bundle holds those of the screens that it shows. */
export const referenceWords: Spoken<typeof englishReference> = {
  en: englishReference,
  es: spanishReference,
};

export const paneWords: Spoken<typeof englishPane> = {
  en: englishPane,
  es: spanishPane,
};

export const supportWords: Spoken<typeof englishSupport> = {
  en: englishSupport,
  es: spanishSupport,
};
