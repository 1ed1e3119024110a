import type { Spills } from "./same-spills";

/** Where a formula's result lies, by unit's sheet, row and column of the formula. */
export type SpillRanges = Readonly<
  Record<string, Readonly<Record<number, Readonly<Record<number, Range>> | undefined>> | undefined>
>;

interface Range {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

/**
 * What formulas fill, without cells in which no formula's result lies any more: the formula engine
 * leaves some behind where a result changes its size in more than one round.
 */
export function withoutLeftOvers(spills: Spills, ranges: SpillRanges): Spills {
  return Object.fromEntries(
    Object.entries(spills).map(([sheet, rows = {}]) => {
      const lies = Object.values(ranges[sheet] ?? {}).flatMap((row) => Object.values(row ?? {}));
      const isFilled = (row: number, column: number) =>
        lies.some(
          ({ startRow, endRow, startColumn, endColumn }) =>
            startRow <= row && row <= endRow && startColumn <= column && column <= endColumn,
        );
      const kept = Object.entries(rows).map(([row, cells = {}]) => [
        row,
        Object.fromEntries(
          Object.entries(cells).filter(([column]) => isFilled(Number(row), Number(column))),
        ),
      ]);
      return [sheet, Object.fromEntries(kept)];
    }),
  ) as Spills;
}
