import { AskedWorkbook, type OpenWorkbook, type Setting } from "../../build/asked-workbook";
import type { Value } from "../../build/workbook-engine";
import { readyMadeSheets } from "../../src/sheets";
import type { Page, UnitSystem } from "../../src/sheets/kit/definition";
import { loadWorkbooks } from "./open-workbook";
import { PageEngine } from "./page-engine";

export const STATIC = "Static pressure and the rating";
export const SURGE = "With surge, against the whole rating";

/** What an input is set to. */
export type Typed = Setting;

const { openWorkbook } = loadWorkbooks();

/** One workbook is open at a time: the next one asked closes it. */
let open: { readonly key: string; readonly page: OpenWorkbook; grid?: OpenWorkbook } | undefined;
let asked = 0;
/** The page's own reckoning is quick; of so many questions one goes to the grid's engine as well. */
const ALSO_ASKED_OF_THE_GRID = 12;

/** What a workbook answers to inputs other than its own; those not given are the definition's. */
export async function ask(id: string, system: UnitSystem, typed: Readonly<Record<string, Typed>>) {
  const key = `${id} ${system}`;
  if (open?.key !== key) {
    closeWorkbook();
    const engine = (pages: readonly Page[]) => Promise.resolve(new PageEngine(pages));
    open = { key, page: new AskedWorkbook(pagesOf(id, system), engine) };
  }
  const answer = await answerOf(open.page, typed);
  if (asked++ % ALSO_ASKED_OF_THE_GRID === 0) {
    open.grid ??= await openWorkbook(id, system);
    const grid = await answerOf(open.grid, typed);
    const expected = comparable(grid, typed);
    const differs = comparable(answer, typed)
      .map((one, at) => [one, expected[at]])
      // As text: the lists of one of them come from outside the test's sandbox.
      .filter(([one, other]) => JSON.stringify(one) !== JSON.stringify(other));
    expect([key, typed, differs]).toEqual([key, typed, []]);
  }
  return answer;
}

async function answerOf(book: OpenWorkbook, typed: Readonly<Record<string, Typed>>) {
  await book.set(typed);
  const checks = book.checks();
  const values = book.values();
  return {
    answers: book.answers(),
    values,
    value: (name: string) => values[name],
    failed: checks.filter(({ ok }) => !ok).map(({ name }) => name),
    says: (name: string) => checks.find((check) => check.name === name)?.text,
  };
}

/**
 * Alike up to what two orders of summing differ by; where one leaves a cell blank, another shows 0.
 * A blank input is handed to a function as a blank by one and as 0 by the other, as hosts do: what
 * is said of it must be the same then, and the values behind need not.
 */
function comparable(
  { answers, failed, values }: Awaited<ReturnType<typeof answerOf>>,
  typed: Readonly<Record<string, Typed>>,
) {
  const isBlank = Object.values(typed).flat(2).includes(null);
  const plain = (value: Value) =>
    typeof value === "number" ? Number(value.toPrecision(9)) : (value ?? 0);
  return [
    answers,
    failed,
    ...Object.entries(isBlank ? {} : values).map(([name, value]) => [
      name,
      Array.isArray(value) ? value.map((row) => row.map(plain)) : plain(value),
    ]),
  ];
}

export function closeWorkbook(): void {
  open?.page.close();
  open?.grid?.close();
  open = undefined;
}

export function pagesOf(id: string, system: UnitSystem): readonly Page[] {
  const sheet = readyMadeSheets.find((one) => one.id === id);
  if (sheet === undefined) throw new Error(`no sheet ${id}`);
  return sheet.pages(system);
}

/** What stands in a range of inputs, from the definition. */
export function inputsOf(id: string, system: UnitSystem, name: string): number[][] {
  const pages = pagesOf(id, system);
  for (const page of pages) {
    const range = page.names?.find((one) => one.name === name)?.range;
    if (range === undefined) continue;
    const [, from, top, to, bottom] = /^([A-Z])(\d+):([A-Z])(\d+)$/.exec(range) ?? [];
    return Array.from({ length: Number(bottom) - Number(top) + 1 }, (_, i) =>
      [from, to].map((letter) =>
        Number(page.cells.find(({ at }) => at === `${letter}${Number(top) + i}`)?.value),
      ),
    );
  }
  throw new Error(`no range ${name}`);
}
