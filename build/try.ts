import type { UnitSystem } from "../src/sheets/kit/definition";
import type { Setting } from "./asked-workbook";
import { Misuse, openWorkbook, workbookIds } from "./open-workbook";
import type { Value } from "./workbook-engine";

const USAGE = `npm run --silent try -- <workbook> <US|SI> Name=value 'Range=[[1],[2]]' …
npm run --silent try -- list`;

const SYSTEMS: readonly UnitSystem[] = ["US", "SI"];

function isSystem(word: string | undefined): word is UnitSystem {
  return SYSTEMS.some((system) => system === word);
}

/** As JSON where it reads as such, else the text as it stands. */
function readValue(name: string, text: string): Setting {
  if (text === "") return null;
  if (text.startsWith("[")) return readRows(name, text);
  try {
    const value: unknown = JSON.parse(text);
    if (isValue(value)) return value;
  } catch {
    return text;
  }
  throw new Misuse(`${name} must be a number, a text, true, false, null or rows; got ${text}`);
}

function readRows(name: string, text: string): Value[][] {
  const wrong = new Misuse(`${name} must be rows of values, such as [[1, 2], [3, 4]]; got ${text}`);
  let rows: unknown;
  try {
    rows = JSON.parse(text);
  } catch {
    throw wrong;
  }
  const isRows = (given: unknown): given is Value[][] =>
    Array.isArray(given) &&
    given.length > 0 &&
    given.every((row) => Array.isArray(row) && row.length > 0 && row.every(isValue));
  if (!isRows(rows)) throw wrong;
  return rows;
}

function isValue(value: unknown): value is Value {
  return value === null || ["string", "number", "boolean"].includes(typeof value);
}

function readSettings(words: readonly string[]): Record<string, Setting> {
  return Object.fromEntries(
    words.map((word) => {
      const split = word.indexOf("=");
      if (split < 1) throw new Misuse(`"${word}" is no Name=value`);
      const name = word.slice(0, split).trim();
      return [name, readValue(name, word.slice(split + 1).trim())];
    }),
  );
}

async function list(): Promise<unknown> {
  const workbooks = [];
  for (const workbook of workbookIds()) {
    const us = await openWorkbook(workbook, "US");
    const si = await openWorkbook(workbook, "SI");
    workbooks.push({
      workbook,
      inputs: us.inputs.map(({ name, place, label, value }, i) => ({
        name,
        place,
        label,
        US: value,
        SI: si.inputs[i].value,
      })),
    });
  }
  return workbooks;
}

async function answer(words: readonly string[]): Promise<unknown> {
  const [workbook, system, ...settings] = words;
  if (workbook === undefined) throw new Misuse(USAGE);
  if (workbook === "list") return list();
  if (!workbookIds().includes(workbook))
    throw new Misuse(`there is no workbook "${workbook}"; there are ${workbookIds().join(", ")}`);
  if (!isSystem(system))
    throw new Misuse(`units must be US or SI; got ${system ?? "nothing"}\n${USAGE}`);
  const book = await openWorkbook(workbook, system);
  await book.set(readSettings(settings));
  return {
    answers: book.answers(),
    checks: book.checks(),
    values: book.values(),
    errors: book.errors(),
  };
}

answer(process.argv.slice(2)).then(
  (found) => process.stdout.write(`${JSON.stringify(found, null, 2)}\n`, () => process.exit(0)),
  (error: unknown) => {
    const misuse = error instanceof Misuse;
    console.error(misuse ? error.message : error);
    process.exit(misuse ? 2 : 1);
  },
);
