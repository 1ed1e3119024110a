/** Cells that formulas elsewhere fill, by sheet, row and column, as the formula engine keeps them. */
export type Spills = Readonly<Record<string, Cells | undefined>>;

type Cells = Readonly<
  Record<number, Readonly<Record<number, Cell | null | undefined>> | undefined>
>;

interface Cell {
  readonly v?: unknown;
  readonly t?: unknown;
}

export interface ChangedCells {
  readonly sheetId: string;
  readonly range: {
    readonly startRow: number;
    readonly endRow: number;
    readonly startColumn: number;
    readonly endColumn: number;
  };
}

/**
 * The cells that a formula elsewhere filled before or fills now, and that are not what they were. The
 * formula engine computes again what reads a result where it now lies, but not what reads the cells
 * that it has left, and never a second time: whoever reads these cells has to be computed again.
 */
export function changedSpills(before: Spills, after: Spills): ChangedCells[] {
  const sheets = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...sheets].flatMap((sheetId) =>
    changedCells(before[sheetId] ?? {}, after[sheetId] ?? {}).map(({ row, column }) => ({
      sheetId,
      range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
    })),
  );
}

function changedCells(before: Cells, after: Cells): { row: number; column: number }[] {
  return keys(before, after).flatMap((row) => {
    const was = before[row] ?? {};
    const is = after[row] ?? {};
    return keys(was, is)
      .filter((column) => was[column]?.v !== is[column]?.v || was[column]?.t !== is[column]?.t)
      .map((column) => ({ row, column }));
  });
}

function keys(one: object, other: object): number[] {
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].map(Number);
}
