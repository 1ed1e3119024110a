/** Cells that formulas elsewhere fill, by sheet, row and column, as the formula engine keeps them. */
export type Spills = Readonly<Record<string, Cells | undefined>>;

type Cells = Readonly<
  Record<number, Readonly<Record<number, Cell | null | undefined>> | undefined>
>;

interface Cell {
  readonly v?: unknown;
  readonly t?: unknown;
}

/**
 * Whether formulas fill the same cells with the same values as before. While they do not, the
 * workbook has not come to rest: the formula engine computes again what reads a result where it now
 * lies, once, but not what reads cells that a result has left (because it grew shorter or became an
 * error), nor what reads a result that itself comes from one.
 */
export function sameSpills(before: Spills, after: Spills): boolean {
  return everyKey(before, after, (sheet) =>
    everyKey(before[sheet] ?? {}, after[sheet] ?? {}, (row) => {
      const was = before[sheet]?.[Number(row)] ?? {};
      const is = after[sheet]?.[Number(row)] ?? {};
      return everyKey(was, is, (key) => {
        const column = Number(key);
        return was[column]?.v === is[column]?.v && was[column]?.t === is[column]?.t;
      });
    }),
  );
}

function everyKey(one: object, other: object, holds: (key: string) => boolean): boolean {
  return [...Object.keys(one), ...Object.keys(other)].every(holds);
}
