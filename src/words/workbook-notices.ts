import type { Language } from "./language";

/** What stands at the foot of every printed page of a workbook, by the language that it speaks. */
export interface Notices {
  whole(day: string): string;
  valuesOnly(day: string): string;
  /** What a copy with values only says beyond that, where there is a file with the formulas. */
  formulasIn(file: string): string;
  /** Said of a translation. */
  readonly translated?: string;
}

export const workbookNotices: Readonly<Record<Language, Notices>> = {
  en: {
    whole: (day) => `Needs the Fieldsum add-in; the values here were computed on ${day}.`,
    valuesOnly: (day) => `Values only, computed on ${day}.`,
    formulasIn: (file) => `The formulas are in ${file}.`,
  },
  es: {
    whole: (day) =>
      `Necesita el complemento Fieldsum; los valores se calcularon el ${day}. Traducción aún no leída por un profesional del riego. Lo que dan las funciones está en inglés: la última hoja lo traduce.`,
    valuesOnly: (day) => `Solo valores, calculados el ${day}.`,
    formulasIn: (file) => `Las fórmulas están en ${file}.`,
    translated: "Traducción aún no leída por un profesional del riego.",
  },
};

const DAY = "\u0000";
const beginnings = Object.values(workbookNotices).flatMap(({ whole, valuesOnly }) =>
  [whole(DAY), valuesOnly(DAY)].map((text) => text.slice(0, text.indexOf(DAY))),
);

/** Whether a text is one of these, of whatever day. */
export function isWorkbookNotice(text: string): boolean {
  return beginnings.some((beginning) => text.startsWith(beginning));
}
