import { type Language, languageFor } from "./language";

const KEPT_UNDER = "fieldsum.language";

/** Some browsers and frames refuse to keep anything: the choice then lasts as long as the page. */
export function keptLanguage(): string | null {
  try {
    return localStorage.getItem(KEPT_UNDER);
  } catch {
    return null;
  }
}

export function keepLanguage(language: Language): void {
  try {
    localStorage.setItem(KEPT_UNDER, language);
  } catch {
    // See above.
  }
}

export function chosenLanguage(): Language {
  // Outside a browser nobody reads.
  const wanted = typeof navigator === "undefined" ? [] : (navigator.languages ?? []);
  return languageFor(wanted, keptLanguage());
}

/**
 * Where numbers are written as the reader writes them: "1,5" in much of South America and in Spain,
 * "1.5" in Mexico. English pages keep the point that their texts and formulas have.
 */
export function localeFor(language: Language): string {
  if (language === "en") return "en-US";
  const own = navigator.languages.find((locale) => languageFor([locale]) === language);
  return own ?? "es-419";
}

/** A number alone that is written with the reader's decimal comma, as a formula has it; else the text as it is. */
export function withPoint(text: string, locale: string): string {
  const hasComma = new Intl.NumberFormat(locale).format(1.5).includes(",");
  return hasComma && /^[+-]?\d*,\d+$/.test(text) ? text.replace(",", ".") : text;
}
