/** A spilled table: one header row, unit in each header, plain numbers (or text) below. */
export type Spill = (string | number)[][];

export interface Column {
  readonly header: string;
  readonly unit?: string;
}

export function headerOf(column: Column): string {
  return column.unit === undefined ? column.header : `${column.header} (${column.unit})`;
}

export function spillTable(columns: readonly Column[], body: Spill): Spill {
  return [columns.map(headerOf), ...body];
}

/** Label and value, the unit in the label. */
export function spillPairs(pairs: readonly (readonly [Column, number | string])[]): Spill {
  return pairs.map(([column, value]) => [headerOf(column), value]);
}

/** One column of numbers, without a header. */
export function column(values: readonly number[]): Spill {
  return values.map((value) => [value]);
}
