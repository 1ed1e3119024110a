import { loadEvaluator } from "../support/sheet-evaluator";
import { NAMESPACE } from "../../build/settings";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import type { Page, SheetCell, UnitSystem } from "../../src/sheets/kit/definition";
import { sayWorkbook } from "../../src/words/es/workbook-say";
import { WAITING_FOR_WORDS, workbookIn } from "../../src/words/workbook-reader";

const evaluate = loadEvaluator();
const SYSTEMS: readonly UnitSystem[] = ["US", "SI"];
const each = readyMadeSheets
  .filter(({ id }) => !WAITING_FOR_WORDS.has(id))
  .flatMap((sheet) => SYSTEMS.map((system) => [`${sheet.id} ${system}`, sheet, system] as const));

test("no workbook waits for its words", () => {
  expect([...WAITING_FOR_WORDS]).toEqual([]);
});

/** A formula without its pieces of text and the names of pages. */
const bare = (formula = "") =>
  formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/'[^']+'!|\w+!/g, "!");
const numbers = (text: unknown) => (String(text).match(/\d[\d.,]*\d|\d/g) ?? []).sort().join(" ");

describe.each(each)("%s in Spanish", (_, sheet, system) => {
  const english = sheet.pages(system);
  const spanish = workbookIn(sheet, sayWorkbook).pages(system);

  test("has the same cells, names, limits and formulas", () => {
    const frame = (page: Page) =>
      page.cells.map((cell: SheetCell) => ({
        ...cell,
        formula: bare(cell.formula),
        value: typeof cell.value === "string" ? numbers(cell.value) : cell.value,
        label: cell.label === undefined ? undefined : "",
        note: cell.note === undefined ? undefined : numbers(cell.note),
        format: bare(cell.format),
      }));
    expect(spanish.map(frame)).toEqual(english.map(frame));
    expect(new Set(spanish.map(({ name }) => name)).size).toBe(english.length);
    for (const { name } of spanish) expect(name.length).toBeLessThanOrEqual(31);
  });

  test("says what people read in Spanish; a text that is new or reworded may wait for its own", () => {
    const read = new Set(["title", "purpose", "question", "heading", "label", "text", "caution"]);
    const texts = english.flatMap((page) =>
      page.cells.flatMap(({ role, value, note }) => [
        ...(read.has(role) && typeof value === "string" ? [value] : []),
        ...(note === undefined ? [] : [note]),
      ]),
    );
    // Items of a bill and names of functions are what the functions give: they stay.
    const words = texts.filter((text) => /[a-z]{3} |[A-Z][a-z]{3}/.test(text));
    const unsaid = words.filter((text) => sayWorkbook(text) === text);
    expect(unsaid.length > words.length / 20 ? unsaid : []).toEqual([]);
  });

  test("shows the same numbers, and OK where there is OK", async () => {
    // One after the other: the engine has its functions once.
    const here = await evaluate(english, NAMESPACE);
    const there = await evaluate(spanish, NAMESPACE);
    expect(there.errors).toEqual([]);
    const differing: string[] = [];
    english.forEach((page, p) => {
      for (const { at, formula, spill } of page.cells) {
        const { row, column } = readAddress(at);
        for (let down = 0; down < (spill?.rows ?? 1); down++) {
          for (let across = 0; across < (spill?.columns ?? 1); across++) {
            const was = here.value(page.name, row + down, column + across);
            const is = there.value(spanish[p].name, row + down, column + across);
            const same =
              typeof was === "string" && was !== "OK" && was !== ""
                ? typeof is === "string" && numbers(was) === numbers(is)
                : was === is;
            if (!same) differing.push(`${page.name}!${at} ${String(was)} ${String(is)} ${formula}`);
          }
        }
      }
    });
    expect(differing).toEqual([]);
  });
});
