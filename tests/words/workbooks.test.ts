import { loadEvaluator } from "../support/sheet-evaluator";
import { NAMESPACE } from "../../build/settings";
import { readyMadeSheets } from "../../src/sheets";
import { readAddress } from "../../src/sheets/kit/address";
import type { Page, SheetCell, UnitSystem } from "../../src/sheets/kit/definition";
import { sayWorkbook } from "../../src/words/es/workbook-say";
import { workbooks } from "../../src/words/es/workbooks";
import { functionWordsPage } from "../../src/words/function-words";
import { workbookIn } from "../../src/words/workbook-reader";
import { hasEnglish } from "../support/english-left";

const evaluate = loadEvaluator();
const SYSTEMS: readonly UnitSystem[] = ["US", "SI"];
const each = readyMadeSheets.flatMap((sheet) =>
  SYSTEMS.map((system) => [`${sheet.id} ${system}`, sheet, system] as const),
);

/** What is the same in both languages, or is taken by a function and stays. */
const STAYS = [
  ...["Plan", "Base", " is ", " mm", "Total (", ". Total ", "Bluestem Flat", "Darcy"],
  ...["m of water", "ft of water", "1000 ft³", "silt loam", "very coarse sand"],
  ...["clover hay", "alfalfa hay", "natural gas", "x and y"],
];

/** Titles of what was published, and the names of PLAN.SEARCH's terms behind their Spanish. */
const CITED = [
  ...[
    "National Engineering Handbook, Part 623 Chapter 11, Sprinkler Irrigation",
    "Sprinkler System",
  ],
  ...["Soil Conservation Service", "(share of rating)", "(net depth)", "(season depth)"],
  ...["(day hours)", "(move hours)", "(set hours)", "(main loss)", "(pump flow)", "(pump head)"],
  ...["(line price)", "(head price)", "(energy price)", "(wind)", "x and y"],
];

test("each text that a workbook has is said in Spanish, and none that no workbook has", () => {
  const asked = new Set<string>();
  const say = (text: string) => {
    asked.add(text);
    return text;
  };
  for (const sheet of readyMadeSheets)
    for (const system of SYSTEMS) workbookIn(sheet, say).pages(system);
  const texts = [...asked];
  const unsaid = texts.filter(
    (text) =>
      sayWorkbook(text) === text &&
      /[a-z]{3} |[A-Z][a-z]{3}| [a-z]{2}/.test(text) &&
      !STAYS.includes(text) &&
      // Functions of the user's own, which stand beside them as formulas.
      !/^=|^My[A-Z]/.test(text),
  );
  expect(unsaid).toEqual([]);
  // Nor half of it, where a text is put together.
  const mixed = texts.filter((text) => {
    const said = sayWorkbook(text);
    return (
      said !== text && hasEnglish(CITED.reduce((rest, one) => rest.split(one).join(" "), said))
    );
  });
  expect(mixed.map((text) => [text, sayWorkbook(text)])).toEqual([]);
  // The last page of a file in Spanish has texts too.
  const reader = { said: (text: string) => `${text}.`, error: (text: string) => text };
  const shown = { value: () => "words" };
  const verdicts = { words: "palabras" };
  functionWordsPage(readyMadeSheets[0].pages("US"), shown, "US", { reader, verdicts, say });
  const behind = [...asked].join("\n");
  expect(Object.keys(workbooks).filter((text) => !behind.includes(text))).toEqual([]);
});

test("what waits begins in Spanish as the workbook's own formula and its colors look for it", () => {
  const texts = readyMadeSheets.flatMap((sheet) =>
    sheet.pages("US").flatMap(({ cells }) => cells.map(({ formula }) => formula ?? "")),
  );
  const verdicts = texts.flatMap((formula) => formula.match(/"(?:Not judged:|Type )[^"]+"/g) ?? []);
  expect(verdicts.length).toBeGreaterThan(10);
  // The line at the top compares the first ten letters.
  expect(sayWorkbook("Not judged")).toHaveLength("Not judged".length);
  for (const verdict of new Set(verdicts)) {
    const begins = verdict.startsWith('"Not') ? sayWorkbook("Not judged") : sayWorkbook("Type");
    expect(sayWorkbook(verdict.slice(1, -1))).toMatch(new RegExp(`^${begins}[: ]`));
  }
  const [{ waiting }] = workbookIn(readyMadeSheets[0], sayWorkbook).pages("US");
  expect(waiting).toEqual(["Escriba ", "No juzgado"]);
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
    // A picture is drawn from a page that there is, by the name that it has here.
    spanish.forEach(({ charts = [], name }, p) =>
      charts.forEach(({ page = name }, i) => {
        const { page: was = english[p].name } = english[p].charts?.[i] ?? {};
        expect(page).toBe(spanish[english.findIndex((one) => one.name === was)].name);
      }),
    );
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
