import { writePackage } from "../../sheets/file/package";
import { fileParts } from "../../sheets/file/workbook-file";
import type { Page, ReadyMadeSheet, UnitSystem } from "../../sheets/kit/definition";
import type { CellValue } from "../../screen/host";
import type { Changes } from "../kept/changes";
import { functionWordsPage, shownIn, valuesOf } from "../../words/function-words";
import type { Language } from "../../words/language";
import { functionWordsIn } from "../../words/load";
import { workbookNotices } from "../../words/workbook-notices";
import type { CellPlace, ShownCell } from "../sheet-values";
import { pagesAsTheyStand } from "./pages";

export interface Saving {
  readonly sheet: ReadyMadeSheet;
  readonly system: UnitSystem;
  readonly pages: readonly Page[];
  readonly changes: Changes;
  /** What the piece of work is called. */
  readonly name: string;
  readonly namespace: string;
  read(place: CellPlace): ShownCell;
  readonly date: Date;
  readonly valuesOnly: boolean;
  readonly language: Language;
}

/** How wide each page is, for the page that opens the file: what stands beside it is worked out there. */
export const WIDTHS = "Fieldsum widths";

/** The workbook of the add-in with what stands there now: formulas and values, or values alone. */
export async function saveWorkbook(saving: Saving): Promise<Uint8Array> {
  const { sheet, system, namespace, valuesOnly, date, name, language } = saving;
  const day = date.toISOString().slice(0, 10);
  const pages = pagesAsTheyStand(saving.pages, saving.changes, saving.read, namespace);
  const words = await functionWordsIn(language);
  const worked = valuesOf(pages, {
    value: (page, row, column): CellValue => saving.read({ page, row, column }).value,
  });
  const notices = workbookNotices[language];
  const notice = valuesOnly
    ? [notices.valuesOnly(day), notices.translated].filter(Boolean).join(" ")
    : notices.whole(day);
  const about = { title: sheet.title, system, namespace, valuesOnly, notice };
  const parts =
    words === undefined
      ? fileParts(pages, worked, about)
      : valuesOnly
        ? fileParts(pages, shownIn(pages, worked, words.reader), about)
        : fileParts([...pages, functionWordsPage(pages, worked, system, words)], worked, about);
  return writePackage(parts, {
    title: name,
    description: sheet.purpose,
    date,
    custom: {
      [WIDTHS]: JSON.stringify(pages.map(({ widths }) => widths.length)),
    },
  });
}
