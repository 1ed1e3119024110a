/** The languages that the screens speak. The names of functions and their choices stay as they are. */
export const LANGUAGES = ["en", "es"] as const;
export type Language = (typeof LANGUAGES)[number];

/** As each language calls itself: whoever wants it can read it. */
export const OWN_NAMES: Readonly<Record<Language, string>> = { en: "English", es: "Español" };

export function isLanguage(text: unknown): text is Language {
  return LANGUAGES.some((language) => language === text);
}

/**
 * What was chosen once, else the first of the reader's languages ("es-MX" is Spanish) that the
 * screens speak, else English.
 */
export function languageFor(wanted: readonly string[], kept?: string | null): Language {
  if (isLanguage(kept)) return kept;
  const spoken = wanted.map((locale) => locale.toLowerCase().split("-")[0]).find(isLanguage);
  return spoken ?? "en";
}
