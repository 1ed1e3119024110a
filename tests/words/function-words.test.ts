import { loadEvaluator } from "../support/sheet-evaluator";
import { NAMESPACE } from "../../build/settings";
import { readyMadeSheets } from "../../src/sheets";
import type { Page } from "../../src/sheets/kit/definition";
import type { ShownValues, Value } from "../../src/sheets/kit/definition";
import { functionWordsPage, shownIn } from "../../src/words/function-words";
import { functionWordsIn } from "../../src/words/load";
import { workbookIn } from "../../src/words/workbook-reader";

const evaluate = loadEvaluator();

async function spanish() {
  const words = await functionWordsIn("es");
  if (words === undefined) throw new Error("no Spanish");
  return words;
}

const textsOf = ({ cells }: Page) => cells.map(({ value }) => value);

test("English needs no page of words", async () => {
  await expect(functionWordsIn("en")).resolves.toBeUndefined();
});

test("headers that a function spills and its labels are listed once; own words and numbers are not", async () => {
  const page: Page = {
    name: "Línea",
    cells: [
      {
        at: "A1",
        role: "result",
        formula: "=IRRIG.LATERAL.PROFILE(1)",
        spill: { rows: 2, columns: 2, reserved: 3, headed: true, formats: [] },
      },
      { at: "D1", role: "sentence", formula: '="cost"' },
    ],
    widths: [10],
    lines: new Map(),
    printArea: "A1:D3",
  } as unknown as Page;
  const values: Record<string, Value> = {
    "0,0": "distance (m)",
    "0,1": "nozzle pressure (kPa)",
    "1,0": 14,
    "1,1": "distance (m)",
    "0,3": "cost",
  };
  const shown: ShownValues = { value: (_, row, column) => values[`${row},${column}`] ?? null };
  const words = await spanish();
  const texts = textsOf(functionWordsPage([page], shown, "SI", words));
  expect(texts.filter((text) => text === "distance (m)")).toHaveLength(1);
  expect(texts).toEqual(
    expect.arrayContaining(["distancia (m)", "nozzle pressure (kPa)", "Palabras de las funciones"]),
  );
  expect(texts).not.toContain("cost");
  // Without checks, nothing is said of them.
  expect(texts).not.toContain("Velocity is …");
  // In a copy without formulas they stand in Spanish, those too that a formula only hands on.
  const there = shownIn([page], shown, words.reader);
  expect([0, 1, 3].map((column) => there.value("Línea", 0, column))).toEqual([
    "distancia (m)",
    "presión en la boquilla (kPa)",
    "costo",
  ]);
  expect(there.value("Línea", 1, 0)).toBe(14);
});

test("a workbook's headers are all there, and all that its checks may say", async () => {
  const words = await spanish();
  const sheet = readyMadeSheets.find(({ id }) => id === "line-layout");
  if (sheet === undefined) throw new Error("no workbook");
  const pages = workbookIn(sheet, words.say).pages("SI");
  const shown = await evaluate(pages, NAMESPACE);
  const texts = textsOf(functionWordsPage(pages, shown, "SI", words));
  for (const said of ["line pressure (kPa)", "presión en la línea (kPa)", "Velocity is …"])
    expect(texts).toContain(said);
  // Each verdict's form has its Spanish beside it, and none is left empty.
  const forms = Object.keys(words.verdicts).filter((form) => !form.startsWith("{fact}"));
  expect(texts.filter((text) => forms.includes(String(text)))).toHaveLength(
    forms.filter((form) => !form.includes("{")).length,
  );
  expect(texts).not.toContain("");
  expect(texts.filter((text) => /\{\w+\}/.test(String(text)))).toEqual([]);
});
