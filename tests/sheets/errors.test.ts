import { readyMadeSheets } from "../../src/sheets";
import { nativeFunctionsIn } from "../../src/formula-text/dialect";

/**
 * Only #N/A, "sound, but no answer", may become words in a result. What swallows every error would
 * show words for a wrong input too, and for #NAME? where the add-in is missing.
 */
const SWALLOW_ALL = ["IFERROR", "ISERR", "ERROR.TYPE", "AGGREGATE"];

test.each(
  readyMadeSheets.flatMap((sheet) =>
    (["US", "SI"] as const).map((system) => [`${sheet.id}-${system}`, sheet, system] as const),
  ),
)("%s: no formula turns every error into words", (_, sheet, system) => {
  const swallowing = sheet
    .pages(system)
    .flatMap((page) =>
      page.cells.flatMap(({ at, formula = "" }) =>
        nativeFunctionsIn(formula).some((name) => SWALLOW_ALL.includes(name))
          ? [`${page.name}!${at} ${formula}`]
          : [],
      ),
    );
  expect(swallowing).toEqual([]);
});
