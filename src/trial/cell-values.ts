import type { CallError, CellValue } from "../screen/host";
import { wordsOfError } from "../screen/error-words";

/** A cell's error: thrown on its way through formulas, and standing where it is one of many cells. */
export class Fault extends Error {
  constructor(readonly error: CallError) {
    super(error.message);
  }

  static of(code: string): Fault {
    return new Fault({ code, message: wordsOfError(code) });
  }
}

/** A formula beyond this reckoning; the grid computes it. */
export class Beyond extends Error {}

export type Cell = CellValue | Fault;
export type Table = readonly (readonly Cell[])[];
/** What a formula gives: an error is thrown where it is all that there is. */
export type Value = CellValue | Table;

export function isTable(value: Value): value is Table {
  return Array.isArray(value);
}

/** A fault as a cell among others. */
export function caught<V>(compute: () => V): V | Fault {
  try {
    return compute();
  } catch (thrown) {
    if (thrown instanceof Fault) return thrown;
    throw thrown;
  }
}

export function sound(cell: Cell): CellValue {
  if (cell instanceof Fault) throw cell;
  return cell;
}

/** The one cell that a value is; of more the grid says what shows. */
export function single(value: Value): CellValue {
  if (!isTable(value)) return value;
  if (value.length !== 1 || value[0].length !== 1) throw new Beyond();
  return sound(value[0][0]);
}

export function number(cell: CellValue): number {
  if (typeof cell === "number") return cell;
  const read = cell === null ? 0 : cell === "" ? NaN : Number(cell);
  if (!Number.isFinite(read))
    throw new Fault({ code: "#VALUE!", message: `a number is due where "${String(cell)}" stands` });
  return read;
}

export function truth(cell: CellValue): boolean {
  if (typeof cell !== "string") return Boolean(cell);
  const word = cell.toUpperCase();
  if (word !== "TRUE" && word !== "FALSE") throw Fault.of("#VALUE!");
  return word === "TRUE";
}

export function text(cell: CellValue): string {
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "number" ? String(Number(cell.toPrecision(15))) : cell;
}

export function compare(operator: string, left: CellValue, right: CellValue): boolean {
  const order = orderOf(left, right);
  switch (operator) {
    case "=":
      return order === 0;
    case "<>":
      return order !== 0;
    case "<":
      return order < 0;
    case ">":
      return order > 0;
    case "<=":
      return order <= 0;
    case ">=":
      return order >= 0;
    default:
      throw new Beyond();
  }
}

/** As sheets order values: numbers before text before truth; a blank is like the other's nothing. */
function orderOf(left: CellValue, right: CellValue): number {
  const blankFor = (other: CellValue) =>
    typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;
  const one = left ?? blankFor(right);
  const two = right ?? blankFor(left);
  const rank = (value: CellValue) => ["number", "string", "boolean"].indexOf(typeof value);
  if (rank(one) !== rank(two)) return rank(one) - rank(two);
  const [a, b] =
    typeof one === "string"
      ? [one.toLowerCase(), String(two).toLowerCase()]
      : [Number(one), Number(two)];
  return a < b ? -1 : a > b ? 1 : 0;
}
