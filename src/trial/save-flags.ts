import type { Page } from "../sheets/kit/definition";
import { readAddress, readRange } from "../sheets/kit/address";
import { make } from "../screen/dom";
import { errorSaid, screenSaid, textSaid } from "../words/spoken";
import type { SheetValues } from "./sheet-values";

/** Ending and media type of each format of a map file. */
const FORMATS: Readonly<Record<string, readonly [ending: string, type: string]>> = {
  GPX: ["gpx", "application/gpx+xml"],
  KML: ["kml", "application/vnd.google-earth.kml+xml"],
  GEOJSON: ["geojson", "application/geo+json"],
};

/** A button that saves the map file of a page that has one; no other page gets any. */
export function saveFlags(page: Page, values: () => SheetValues): HTMLElement[] {
  const lines = page.names?.find(({ name }) => name === "MapFile")?.range;
  const format = page.cells.find(({ name }) => name === "Format")?.at;
  if (lines === undefined || format === undefined) return [];
  const said = make("p", { role: "status" });
  const button = make("button", { type: "button" }, "Save flags");
  button.addEventListener("click", () => {
    const text = fileText(page.name, lines, values());
    const chosen = values().read({ page: page.name, ...readAddress(format) }).value;
    const [ending, type] = FORMATS[String(chosen).toUpperCase()] ?? [];
    if (ending === undefined || text.lines.length < 2) {
      said.textContent =
        (text.fault && errorSaid(text.fault)) ??
        (text.lines[0] && textSaid(text.lines[0])) ??
        screenSaid("There are no flags to save.");
      return;
    }
    const url = URL.createObjectURL(new Blob([`${text.lines.join("\n")}\n`], { type }));
    make("a", { href: url, download: `flags.${ending}` }).click();
    URL.revokeObjectURL(url);
    said.textContent = screenSaid(
      `Saved as flags.${ending}. A plan is no survey: have buried lines located before you drive a stake.`,
    );
  });
  return [make("div", { class: "save-flags" }, button, said)];
}

function fileText(page: string, range: string, values: SheetValues) {
  const { row, column, rows } = readRange(range);
  const lines: string[] = [];
  for (let down = 0; down < rows; down++) {
    const shown = values.read({ page, row: row + down, column });
    if (shown.error !== undefined) return { lines: [], fault: shown.error.message };
    if (shown.value === null || shown.value === "") break;
    lines.push(String(shown.value));
  }
  return { lines, fault: undefined };
}
