import * as spanish from "./es/messages";
import type { Language } from "./language";
import { messageReader } from "./message-reader";

const reader = messageReader(spanish);

/** The message of a cell's error in a language; as it came where there is no translation. */
export function errorIn(message: string, language: Language): string {
  return language === "en" ? message : reader.error(message);
}

/** A text that a function gives (a header, a label, a verdict) in a language. */
export function saidIn(text: string, language: Language): string {
  return language === "en" ? text : reader.said(text);
}
