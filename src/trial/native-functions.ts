import type { CellValue } from "../screen/host";
import { formatValue } from "../screen/number-format";
import {
  type Cell,
  compare,
  Fault,
  isTable,
  number,
  single,
  sound,
  type Table,
  text,
  truth,
  type Value,
} from "./cell-values";

/**
 * The host's own functions that the ready-made sheets use, and some that people add. These take
 * single cells, and go over a table cell by cell. Undefined where what is given goes beyond them.
 */
export const liftedFunctions: Readonly<
  Record<string, ((cells: readonly CellValue[]) => CellValue | undefined) | undefined>
> = {
  ABS: ([value]) => Math.abs(number(value)),
  COS: ([value]) => Math.cos(number(value)),
  // The page's own spelling would write a decimal comma, where the file's function does so itself.
  FIXED: ([value, digits = 2, plain]) =>
    fixed(number(value), number(digits), plain !== undefined && truth(plain)),
  INT: ([value]) => Math.floor(number(value)),
  LEN: ([value]) => text(value).length,
  MID: ([value, from, count]) =>
    text(value).slice(number(from) - 1, number(from) - 1 + number(count)),
  MOD: ([value, divisor]) => {
    if (number(divisor) === 0) throw Fault.of("#DIV/0!");
    return number(value) - number(divisor) * Math.floor(number(value) / number(divisor));
  },
  N: ([value]) => (typeof value === "number" ? value : value === true ? 1 : 0),
  NOT: ([value]) => !truth(value),
  PI: () => Math.PI,
  RADIANS: ([value]) => (number(value) / 180) * Math.PI,
  ROUND: ([value, digits = 0]) => rounded(number(value), number(digits), Math.round),
  ROUNDDOWN: ([value, digits = 0]) => rounded(number(value), number(digits), Math.floor),
  ROUNDUP: ([value, digits = 0]) => rounded(number(value), number(digits), Math.ceil),
  SIN: ([value]) => Math.sin(number(value)),
  SQRT: ([value]) => {
    if (number(value) < 0) throw Fault.of("#NUM!");
    return Math.sqrt(number(value));
  },
  TEXT: ([value, code]) => formatValue(value, String(code)),
};

/** These take tables as they are. */
export const wholeFunctions: Readonly<
  Record<string, ((given: readonly Value[]) => Value | undefined) | undefined>
> = {
  AND: (given) => judged(given).every(Boolean),
  AVERAGE: (given) => {
    const all = numbers(given);
    if (all.length === 0) throw Fault.of("#DIV/0!");
    return sum(all) / all.length;
  },
  COUNT: (given) => cells(given).filter((cell) => typeof cell === "number").length,
  COUNTA: (given) => cells(given).filter((cell) => cell !== null).length,
  COUNTIF: ([range, wanted]) => cells([range]).filter(criterion(single(wanted))).length,
  FILTER: ([table, wanted, otherwise]) => {
    const rows = tableOf(table);
    const marks = tableOf(wanted);
    const kept =
      marks.length === 1 && rows.length !== 1
        ? rows.map((row) => row.filter((_, at) => truth(sound(marks[0][at] ?? false))))
        : rows.filter((_, at) => truth(sound(marks[at]?.[0] ?? false)));
    if (kept.length > 0 && kept[0].length > 0) return kept;
    if (otherwise === undefined) throw Fault.of("#CALC!");
    return otherwise;
  },
  HSTACK: (given) => {
    const tables = given.map(tableOf);
    const rows = Math.max(...tables.map((table) => table.length));
    return Array.from({ length: rows }, (_, row) =>
      tables.flatMap((table) => table[row] ?? table[0].map(() => Fault.of("#N/A"))),
    );
  },
  INDEX: ([table, row, column]) => part(table, row, column),
  MATCH: ([wanted, range, kind]) => {
    const looked = single(wanted);
    const all = cells([range]);
    const order = kind === undefined ? 1 : number(single(kind));
    if (order < 0) return undefined;
    // The last that is not greater, in a column that rises; or the very same, whatever its case.
    const at =
      order > 0
        ? lastIn(all, (cell) => typeof cell === typeof looked && notAbove(cell, looked))
        : all.findIndex((cell) => like(cell) === like(looked));
    if (at < 0) throw Fault.of("#N/A");
    return at + 1;
  },
  MAX: (given) => greatest(numbers(given)),
  MIN: (given) => least(numbers(given)),
  MINIFS: ([range, marks, wanted]) => {
    const isKept = criterion(single(wanted));
    const all = cells([marks]);
    return least(numbers([[cells([range]).filter((_, at) => isKept(all[at]))]]));
  },
  OR: (given) => judged(given).some(Boolean),
  ROWS: ([table]) => tableOf(table).length,
  SMALL: ([range, place]) => {
    const found = numbers([range]).sort((one, two) => one - two)[number(single(place)) - 1];
    if (found === undefined) throw Fault.of("#NUM!");
    return found;
  },
  SUM: (given) => sum(numbers(given)),
  SUMIF: ([range, wanted, amounts = range]) => {
    const isKept = criterion(single(wanted));
    const marks = cells([range]);
    return sum(numbers([[cells([amounts]).filter((_, at) => isKept(marks[at]))]]));
  },
  SUMPRODUCT: (given) => {
    const tables = given.map((value) => cells([value]));
    // What is no number counts for 0.
    return sum(
      tables[0].map((_, at) =>
        tables.reduce((product, table) => {
          const cell = sound(table[at] ?? null);
          return product * (typeof cell === "number" ? cell : 0);
        }, 1),
      ),
    );
  },
};

function tableOf(value: Value): Table {
  return isTable(value) ? value : [[value]];
}

/** One cell of a table; a whole column or row where the other number is 0. */
function part(table: Value, row: Value, column: Value | undefined): Value | undefined {
  const rows = tableOf(table);
  // One number in a table of one row counts along the row.
  const isAlong = rows.length === 1 && column === undefined;
  const down = isAlong ? 1 : number(single(row));
  const across = isAlong
    ? number(single(row))
    : column === undefined
      ? rows[0].length === 1
        ? 1
        : 0
      : number(single(column));
  if (down > rows.length || across > rows[0].length) throw Fault.of("#REF!");
  if (down > 0 && across > 0) return sound(rows[Math.floor(down) - 1][Math.floor(across) - 1]);
  if (across > 0) return rows.map((line) => [line[Math.floor(across) - 1]]);
  return down > 0 ? [rows[Math.floor(down) - 1]] : rows;
}

function lastIn(all: readonly Cell[], isWanted: (cell: Cell) => boolean): number {
  return all.reduce<number>((last, cell, at) => (isWanted(cell) ? at : last), -1);
}

function notAbove(cell: Cell, other: CellValue): boolean {
  return !(cell instanceof Fault) && compare("<=", cell, other);
}

function like(cell: Cell): Cell {
  return typeof cell === "string" ? cell.toLowerCase() : cell;
}

function cells(given: readonly Value[]): Cell[] {
  return given.flatMap((value): readonly Cell[] => (isTable(value) ? value.flat() : [value]));
}

/** The numbers; an error among the cells is the result's. */
function numbers(given: readonly Value[]): number[] {
  return cells(given)
    .map(sound)
    .filter((cell) => typeof cell === "number");
}

/** Words and blanks in a table count for nothing. */
function judged(given: readonly Value[]): boolean[] {
  return given.flatMap((value) =>
    isTable(value)
      ? value
          .flat()
          .map(sound)
          .filter((cell) => typeof cell === "number" || typeof cell === "boolean")
          .map(Boolean)
      : [truth(value)],
  );
}

function sum(all: readonly number[]): number {
  return all.reduce((total, value) => total + value, 0);
}

function least(all: readonly number[]): number {
  return all.reduce((one, other) => Math.min(one, other), all[0] ?? 0);
}

function greatest(all: readonly number[]): number {
  return all.reduce((one, other) => Math.max(one, other), all[0] ?? 0);
}

/** "yes", 3, ">0": which cells are counted. Patterns with * and ? are the grid's. */
function criterion(wanted: CellValue): (cell: Cell | undefined) => boolean {
  if (typeof wanted !== "string") return (cell) => cell === wanted;
  const [, operator = "=", of] = /^(<=|>=|<>|<|>|=)?(.*)$/s.exec(wanted) ?? ["", "=", wanted];
  const asNumber = of.trim() === "" ? NaN : Number(of);
  const isNumber = !Number.isNaN(asNumber);
  if (operator === "<>") return (cell) => !isLike(cell);
  if (operator === "=") return isLike;
  return (cell) =>
    isNumber
      ? typeof cell === "number" && compare(operator, cell, asNumber)
      : typeof cell === "string" && compare(operator, cell, of);

  function isLike(cell: Cell | undefined): boolean {
    if (isNumber && typeof cell === "number") return cell === asNumber;
    return like(cell ?? null) === of.toLowerCase() || (of === "" && cell === null);
  }
}

function fixed(value: number, digits: number, isPlain: boolean): string {
  const places = digits > 0 ? `.${"0".repeat(digits)}` : "";
  return formatValue(
    digits < 0 ? rounded(value, digits, Math.round) : value,
    `${isPlain ? "0" : "#,##0"}${places}`,
  );
}

/** Away from 0 as toward it, by the size alone. */
function rounded(value: number, digits: number, round: (size: number) => number): number {
  const scale = 10 ** digits;
  // Undoes the last binary digit's error, so that 1.005 rounds as written.
  return (Math.sign(value) * round(Number((Math.abs(value) * scale).toPrecision(14)))) / scale;
}
