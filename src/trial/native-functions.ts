import type { CellValue } from "../screen/host";
import { formatValue } from "../screen/number-format";

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
  COUNTA: (given) => cells(given).filter((value) => value !== null).length,
  COUNTIF: ([range, wanted]) => cells([range]).filter((value) => value === wanted).length,
  INDEX: ([table, row, column]) => part(table, row, column),
  INT: ([value]) => Math.floor(Number(value)),
  ISNUMBER: ([value]) => typeof value === "number",
  MATCH: ([wanted, range, kind]) => {
    // An exact match only; text without regard to case.
    const at = cells([range]).findIndex((value) => like(value) === like(wanted as CellValue));
    return kind === 0 && at >= 0 ? at + 1 : undefined;
  },
  MAX: (given) => (numbers(given).length === 0 ? 0 : Math.max(...numbers(given))),
  MID: ([text, from, count]) =>
    String(text ?? "").slice(Number(from) - 1, Number(from) - 1 + Number(count)),
  MIN: (given) => (numbers(given).length === 0 ? 0 : Math.min(...numbers(given))),
  MINIFS: ([range, marks, wanted]) => {
    const kept = cells([range]).filter((_, index) => cells([marks])[index] === wanted);
    return nativeFunctions.MIN([[kept]]);
  },
  MOD: ([value, divisor]) =>
    Number(divisor) === 0
      ? undefined
      : Number(value) - Number(divisor) * Math.floor(Number(value) / Number(divisor)),
  N: ([value]) => (typeof value === "number" ? value : value === true ? 1 : 0),
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
  ROWS: ([table]) => (Array.isArray(table) ? table.length : 1),
  SMALL: ([range, place]) => numbers([range]).sort((one, two) => one - two)[Number(place) - 1],
  SUMIF: ([range, wanted, amounts]) => {
    const kept = cells([amounts]).filter(
      (_, index) => like(cells([range])[index]) === like(wanted as CellValue),
    );
    return sum([[kept]]);
  },
  SQRT: ([value]) => (Number(value) < 0 ? undefined : Math.sqrt(Number(value))),
  SUM: (given) => sum(given),
  TEXT: ([value, code]) => formatValue(value as CellValue, String(code)),
};

/** One cell of a table; a whole column or row where the other number is 0. */
function part(table: Value, row: Value, column: Value): Value | undefined {
  if (!Array.isArray(table)) return table;
  // One number in a table of one row counts along the row.
  const isAlong = table.length === 1 && column === undefined;
  const down = isAlong ? 1 : Number(row ?? 0);
  const across = isAlong ? Number(row) : Number(column ?? (table[0].length === 1 ? 1 : 0));
  if (down > 0 && across > 0) return table[down - 1]?.[across - 1];
  if (across > 0) return table.map((line) => [line[across - 1]]);
  return down > 0 ? [table[down - 1]] : table;
}

function like(value: CellValue): CellValue {
  return typeof value === "string" ? value.toLowerCase() : value;
}

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
