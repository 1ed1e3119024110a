import type { CellValue } from "./host";
import { formatValue } from "./number-format";

type Value = CellValue | CellValue[][];

/**
 * The host's own functions that the ready-made sheets use, for the view before the grid. Undefined
 * where what is given goes beyond them.
 */
export const nativeFunctions: Readonly<
  Record<string, (given: readonly Value[]) => Value | undefined>
> = {
  ABS: ([value]) => Math.abs(Number(value)),
  AND: (given) => cells(given).every(Boolean),
  AVERAGE: (given) => sum(given) / numbers(given).length,
  COUNT: (given) => numbers(given).length,
  FIXED: ([value, digits, plain]) =>
    typeof value === "number"
      ? formatValue(
          value,
          `${plain === true ? "0" : "#,##0"}${Number(digits ?? 2) > 0 ? `.${"0".repeat(Number(digits ?? 2))}` : ""}`,
        )
      : undefined,
  INDEX: ([table, row, column]) =>
    Array.isArray(table)
      ? (table[Number(row ?? 1) - 1]?.[Number(column ?? 1) - 1] ?? undefined)
      : table,
  INT: ([value]) => Math.floor(Number(value)),
  ISNUMBER: ([value]) => typeof value === "number",
  MAX: (given) => (numbers(given).length === 0 ? 0 : Math.max(...numbers(given))),
  MIN: (given) => (numbers(given).length === 0 ? 0 : Math.min(...numbers(given))),
  NOT: ([value]) => !value,
  OR: (given) => cells(given).some(Boolean),
  ROUND: ([value, digits]) => rounded(Number(value), Number(digits ?? 0), Math.round),
  ROUNDDOWN: ([value, digits]) => rounded(Number(value), Number(digits ?? 0), Math.trunc),
  ROUNDUP: ([value, digits]) =>
    rounded(
      Number(value),
      Number(digits ?? 0),
      (part) => Math.sign(part) * Math.ceil(Math.abs(part)),
    ),
  SQRT: ([value]) => (Number(value) < 0 ? undefined : Math.sqrt(Number(value))),
  SUM: (given) => sum(given),
  TEXT: ([value, code]) => formatValue(value as CellValue, String(code)),
};

function cells(given: readonly Value[]): CellValue[] {
  return given.flatMap((value) => (Array.isArray(value) ? value.flat() : [value]));
}

function numbers(given: readonly Value[]): number[] {
  return cells(given).filter((value) => typeof value === "number");
}

function sum(given: readonly Value[]): number {
  return numbers(given).reduce((total, value) => total + value, 0);
}

function rounded(value: number, digits: number, round: (value: number) => number): number {
  const scale = 10 ** digits;
  // Undoes the last binary digit's error, so that 1.005 rounds as written.
  return round(Number((value * scale).toPrecision(14))) / scale;
}
