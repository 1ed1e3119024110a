import { readAddress } from "../src/sheets/kit/address";
import type { Page } from "../src/sheets/kit/definition";
import { isErrorCode } from "../src/screen/error-words";
import { SheetEngine } from "./sheet-engine";
import type { Value } from "./workbook-engine";

export type { Value } from "./workbook-engine";

/** What every cell of a ready-made sheet shows, computed without a browser. */
export interface EvaluatedSheet {
  /** Value of a cell, spilled cells included; null for an empty one. */
  value(page: string, row: number, column: number): Value;
  /** Cells that show an error, with the message of our own functions where there is one. */
  readonly errors: readonly string[];
}

/** Evaluates with the formula engine of the trial page's grid, so that both show the same numbers. */
export async function evaluate(pages: readonly Page[], namespace: string): Promise<EvaluatedSheet> {
  const engine = await SheetEngine.open(pages, namespace);
  // What a closed engine showed last stays readable.
  engine.close();
  const index = new Map(pages.map((page, i) => [page.name, i]));
  return {
    value: (name, row, column) => {
      const page = index.get(name);
      if (page === undefined) throw new Error(`there is no page ${name}`);
      return engine.value({ page, row, column });
    },
    errors: errorsOf(pages, engine),
  };
}

function errorsOf(pages: readonly Page[], engine: SheetEngine): string[] {
  return pages.flatMap((page, i) =>
    page.cells.flatMap(({ at, formula, spill }) => {
      if (formula === undefined) return [];
      const { row, column } = readAddress(at);
      const read = (down: number, across: number) =>
        engine.value({ page: i, row: row + down, column: column + across });
      const value = read(0, 0);
      const place = `${page.name}!${at}`;
      if (value === null || isErrorCode(value)) {
        const message = engine.message({ page: i, row, column }) ?? "";
        return [`${place} shows ${String(value)}: ${formula} ${message}`.trim()];
      }
      if (spill === undefined) return [];
      const { rows, columns } = spill;
      const fills =
        read(rows - 1, columns - 1) !== null && read(rows, 0) === null && read(0, columns) === null;
      return fills
        ? []
        : [`${place} does not fill ${rows} rows and ${columns} columns: ${formula}`];
    }),
  );
}
