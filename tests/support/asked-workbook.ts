import type { OpenWorkbook, Setting } from "../../build/open-workbook";
import { readyMadeSheets } from "../../src/sheets";
import type { Page, UnitSystem } from "../../src/sheets/kit/definition";
import { loadWorkbooks } from "./open-workbook";

const { openWorkbook } = loadWorkbooks();

export const STATIC = "Static pressure and the rating";
export const SURGE = "With surge, against the whole rating";

/** What an input is set to. */
export type Typed = Setting;

/** One workbook is open at a time: the next one asked closes it. */
let open: { readonly key: string; readonly book: OpenWorkbook } | undefined;

/** What a workbook answers to inputs other than its own; those not given are the definition's. */
export async function ask(id: string, system: UnitSystem, typed: Readonly<Record<string, Typed>>) {
  const key = `${id} ${system}`;
  if (open?.key !== key) {
    open?.book.close();
    open = { key, book: await openWorkbook(id, system) };
  }
  const { book } = open;
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

export function closeWorkbook(): void {
  open?.book.close();
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
