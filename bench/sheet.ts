import { evaluate } from "../build/sheet-evaluator";
import type { Page, SheetCell } from "../src/sheets/kit/definition";
import { compare, type Row } from "./measure";

const CELLS = 10_000;

/** A column of flows and beside each a formula, as a big sheet would hold them. */
function page(formula: (row: number) => string): Page {
  const cells: SheetCell[] = [];
  for (let row = 1; row <= CELLS; row++) {
    cells.push({ at: `A${row}`, role: "input", value: 5 + row / 100 });
    cells.push({ at: `B${row}`, role: "result", formula: formula(row) });
  }
  return { name: "Column", widths: [10, 10], cells, lines: new Map(), printArea: "A1:B1" };
}

async function milliseconds(formula: (row: number) => string): Promise<[number, number]> {
  const column = page(formula);
  let best = Infinity;
  let last = NaN;
  for (let turn = 0; turn < 3; turn++) {
    const start = performance.now();
    const sheet = await evaluate([column], "IRRIG");
    best = Math.min(best, performance.now() - start);
    last = sheet.value("Column", CELLS - 1, 1) as number;
  }
  return [best, last];
}

/**
 * Ten thousand cells of PIPE.FRICTION against the same arithmetic spelt out in native operators,
 * both computed by the trial grid's formula engine.
 */
export async function sheetRows(): Promise<Row[]> {
  const [ours, ourLast] = await milliseconds((row) => `=IRRIG.PIPE.FRICTION(A${row},2.067,100)`);
  // 1050 (Q/C)^1.852 D^-4.87 ft per 100 ft, and 2.3108 ft a psi.
  const [native, nativeLast] = await milliseconds(
    (row) => `=1050*(A${row}/150)^1.852*2.067^-4.87/2.3108`,
  );
  if (Math.abs(ourLast / nativeLast - 1) > 1e-3) throw new Error("the two sheets disagree");
  return [
    compare(
      `times native formulas: a sheet of ${CELLS} cells of PIPE.FRICTION in the trial grid's engine`,
      ["ours", ours * 1000],
      ["native", native * 1000],
    ),
  ];
}
