import { spokenLanguage } from "../../words/spoken";
import { writePackage } from "../../sheets/file/package";
import { fileParts } from "../../sheets/file/workbook-file";
import type { Page, ReadyMadeSheet, UnitSystem } from "../../sheets/kit/definition";
import type { CellValue } from "../../screen/host";
import type { Changes } from "../kept/changes";
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
}

/** How the notice begins in each language, as in the ready-made files: a file that is opened may be in either. */
export const NOTICE = {
  en: {
    formulas: "Needs the Fieldsum add-in; the values here were computed on ",
    values: "Values only, computed on ",
  },
  es: {
    formulas: "Necesita el complemento Fieldsum; los valores se calcularon el ",
    values: "Solo valores, calculados el ",
  },
} as const;

/** How wide each page is, for the page that opens the file: what stands beside it is worked out there. */
export const WIDTHS = "Fieldsum widths";

/** The workbook of the add-in with what stands there now: formulas and values, or values alone. */
export async function saveWorkbook(saving: Saving): Promise<Uint8Array> {
  const { sheet, system, namespace, valuesOnly, date, name } = saving;
  const day = date.toISOString().slice(0, 10);
  const pages = pagesAsTheyStand(saving.pages, saving.changes, saving.read, namespace);
  const value = (page: string, row: number, column: number): CellValue =>
    saving.read({ page, row, column }).value;
  const parts = fileParts(
    pages,
    { value },
    {
      title: sheet.title,
      system,
      namespace,
      valuesOnly,
      notice: `${NOTICE[spokenLanguage()][valuesOnly ? "values" : "formulas"]}${day}.`,
    },
  );
  return writePackage(parts, {
    title: name,
    description: sheet.purpose,
    date,
    custom: {
      [WIDTHS]: JSON.stringify(pages.map(({ widths }) => widths.length)),
    },
  });
}
