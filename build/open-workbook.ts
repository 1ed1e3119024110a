import { readyMadeSheets } from "../src/sheets";
import type { UnitSystem } from "../src/sheets/kit/definition";
import { AskedWorkbook, Misuse, type OpenWorkbook } from "./asked-workbook";
import { NAMESPACE } from "./settings";
import { SheetEngine } from "./sheet-engine";

export { Misuse } from "./asked-workbook";

export function workbookIds(): string[] {
  return readyMadeSheets.map(({ id }) => id);
}

/** A ready-made workbook in the formula engine of the trial page's grid. */
export async function openWorkbook(id: string, system: UnitSystem): Promise<OpenWorkbook> {
  const sheet = readyMadeSheets.find((one) => one.id === id);
  if (sheet === undefined)
    throw new Misuse(`there is no workbook "${id}"; there are ${workbookIds().join(", ")}`);
  const book = new AskedWorkbook(sheet.pages(system), (pages) =>
    SheetEngine.open(pages, NAMESPACE),
  );
  await book.set({});
  return book;
}
