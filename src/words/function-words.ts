import { PageBuilder } from "../sheets/kit/builder";
import { readAddress } from "../sheets/kit/address";
import type { Page, SheetCell, ShownValues, UnitSystem } from "../sheets/kit/definition";
import { FUNCTION_WORDS } from "./function-words-page";
import type { MessageReader, MessageTables } from "./message-reader";
import type { Say } from "./workbook-reader";

/** What functions say, as a reader of another language needs it. */
export interface FunctionWords {
  readonly reader: MessageReader;
  readonly verdicts: MessageTables["verdicts"];
  readonly say: Say;
}

/** The page of the functions' words has no formulas, and so nothing is worked out on it. */
export function valuesOf(pages: readonly Page[], shown: ShownValues): ShownValues {
  const names = new Set(pages.map(({ name }) => name));
  return {
    value: (page, row, column) => (names.has(page) ? shown.value(page, row, column) : null),
  };
}

const FUNCTION = /\bIRRIG\./;
const CHECK = /\bIRRIG\.CHECK\./;
const WIDTHS = [58, 62];

/**
 * What functions give stays English in the cells of every language: formulas of other workbooks read
 * it, and a host has one copy of the functions for all of its users. A workbook in another language
 * ends with a page that puts their words over: those that stand in its cells, and what its checks may
 * come to say.
 */
export function functionWordsPage(
  pages: readonly Page[],
  shown: ShownValues,
  system: UnitSystem,
  { reader, verdicts, say }: FunctionWords,
): Page {
  const page = new PageBuilder(say(FUNCTION_WORDS), system, WIDTHS);
  page.title(say(FUNCTION_WORDS));
  page.freeze();
  page.text(
    say("What the functions give is in English in every cell; here it is in your language."),
  );
  page.gap();
  const given = new Set(
    pages.flatMap((one) => one.cells.flatMap((cell) => textsOf(one, cell, shown))),
  );
  const put = [...given].map((text) => [text, reader.said(text)] as const);
  twoColumns(
    page,
    say,
    say("In the cells now"),
    put.filter(([text, said]) => text !== said),
  );
  if (pages.some(({ cells }) => cells.some(({ formula = "" }) => CHECK.test(formula)))) {
    const forms = Object.entries(verdicts).filter(([text]) => !text.startsWith("{fact}"));
    twoColumns(page, say, say("What a check may say: what is, its limit, the cure"), forms);
  }
  return page.build();
}

/** Copies without formulas have nothing that reads what the functions gave: it is put over whole. */
export function shownIn(
  pages: readonly Page[],
  shown: ShownValues,
  { said }: MessageReader,
): ShownValues {
  const given = new Map(
    pages.map((page) => [
      page.name,
      new Set(
        page.cells.flatMap((cell) =>
          cell.formula === undefined || cell.role === "formulaText"
            ? []
            : placesOf(cell).map(([r, c]) => `${r},${c}`),
        ),
      ),
    ]),
  );
  return {
    value: (name, row, column) => {
      const value = shown.value(name, row, column);
      const isGiven = given.get(name)?.has(`${row},${column}`) === true;
      return typeof value === "string" && isGiven ? said(value) : value;
    },
  };
}

function placesOf({ at, spill }: SheetCell): [number, number][] {
  const { row, column } = readAddress(at);
  const { reserved = 1, columns = 1 } = spill ?? {};
  return Array.from({ length: reserved * columns }, (_, i) => [
    row + Math.floor(i / columns),
    column + (i % columns),
  ]);
}

function textsOf({ name }: Page, cell: SheetCell, shown: ShownValues): string[] {
  if (!FUNCTION.test(cell.formula ?? "")) return [];
  return placesOf(cell).flatMap(([row, column]) => {
    const value = shown.value(name, row, column);
    return typeof value === "string" && value !== "" ? [value] : [];
  });
}

const withoutNames = (form: string) => form.replace(/\{\w+\}/g, "…");

function twoColumns(
  page: PageBuilder,
  say: Say,
  heading: string,
  rows: readonly (readonly [english: string, said: string])[],
): void {
  if (rows.length === 0) return;
  page.heading(heading);
  const top = page.row;
  page.table("A", [
    {
      header: say("The function says"),
      role: "text",
      rows: rows.map(([text]) => `'${withoutNames(text)}`),
    },
    {
      header: say("In your language"),
      role: "text",
      rows: rows.map(([, said]) => `'${withoutNames(said)}`),
    },
  ]);
  rows.forEach((pair, i) => {
    const lines = pair.map((text, column) => Math.ceil((1.15 * text.length) / WIDTHS[column]));
    page.needsLines(top + 1 + i, Math.max(...lines));
  });
  page.gap();
}
