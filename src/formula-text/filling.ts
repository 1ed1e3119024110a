import { DEFAULT_NAMESPACE, type Token, tokens } from "./dialect";

/** What a workbook's names stand for, as far as it matters whether a formula fills one cell. */
export interface Names {
  /** Names of ranges of more than one cell, in upper case. */
  readonly ranges: ReadonlySet<string>;
  /** Names of functions of the user's own, in upper case. */
  readonly functions: ReadonlySet<string>;
}

/** The host's functions whose result may be a reference to several cells, or an array. */
const GIVES_MANY = new Set(
  (
    "BYCOL BYROW CHOOSE CHOOSECOLS CHOOSEROWS DROP EXPAND FILTER FREQUENCY HSTACK INDEX INDIRECT LAMBDA " +
    "LET LINEST MAKEARRAY MAP OFFSET REDUCE SCAN SEQUENCE SORT SORTBY TAKE TOCOL TOROW TRANSPOSE TREND " +
    "UNIQUE VSTACK XLOOKUP"
  ).split(" "),
);

const every = () => true;
const only =
  (...places: readonly number[]) =>
  (place: number) =>
    places.includes(place);
const notCriteria = (place: number) => place === 0 || place % 2 === 1;

/** The host's functions that make one value of many, and the arguments in which they do. */
const TAKES_MANY: Readonly<Record<string, (place: number) => boolean>> = {
  ...Object.fromEntries(
    (
      "AND AVERAGE AVERAGEA COLUMNS CONCAT COUNT COUNTA COUNTBLANK MAX MEDIAN MIN OR PRODUCT ROWS " +
      "STDEV SUM SUMPRODUCT SUMSQ TEXTJOIN"
    )
      .split(" ")
      .map((name) => [name, every]),
  ),
  AVERAGEIF: only(0, 2),
  COUNTIF: only(0),
  COUNTIFS: (place) => place % 2 === 0,
  INDEX: only(0),
  LARGE: only(0),
  LOOKUP: only(1, 2),
  MATCH: only(1),
  MAXIFS: notCriteria,
  MINIFS: notCriteria,
  SMALL: only(0),
  SUMIF: only(0, 2),
  SUMIFS: notCriteria,
  VLOOKUP: only(1),
  XMATCH: only(1),
};

/** A call around the token that is looked at; "" for parentheses that only group. */
interface Around {
  readonly name: string;
  place: number;
}

/**
 * Whether a formula may fill more than its own cell, as far as its text tells: what calls one of our
 * functions, and what has a range, an array or a function that gives one where one value is wanted.
 * The host stores such a formula as a dynamic array, and one that is stored plainly it shows with an
 * "@" before the part.
 */
export function mayFillCells(formula: string, names: Names): boolean {
  const all = tokens(formula).filter(({ text }) => text.trim() !== "");
  const stack: Around[] = [];
  const isTaken = (from: number, to: number): boolean => {
    const around = stack[stack.length - 1];
    if (around === undefined) return false;
    // As part of an expression many values stay many, but in the one function made for that.
    const alone = isStart(all[from - 1]) && isEnd(all[to]);
    return (
      (TAKES_MANY[around.name]?.(around.place) ?? false) && (alone || around.name === "SUMPRODUCT")
    );
  };
  for (let i = 0; i < all.length; i++) {
    const { kind, text } = all[i];
    if (kind === "comma" && stack.length > 0) stack[stack.length - 1].place++;
    if (kind === "close") stack.pop();
    if (text === "{") {
      const end = all.findIndex((token, at) => at > i && token.text === "}") + 1;
      if (!isTaken(i, end)) return true;
      i = end - 1;
      continue;
    }
    if (text === "(") stack.push({ name: "", place: 0 });
    if (kind === "sheet") continue;
    if (kind !== "name") continue;
    const name = text.toUpperCase();
    if (all[i + 1]?.text === "(") {
      if (name.startsWith(`${DEFAULT_NAMESPACE}.`) || names.functions.has(name)) return true;
      if (GIVES_MANY.has(name) && !isTaken(i, closing(all, i + 1) + 1)) return true;
      stack.push({ name, place: 0 });
      i++;
      continue;
    }
    const end = endOfReference(all, i);
    const isMany = end > i + 1 || names.ranges.has(name);
    const from = all[i - 1]?.text === "!" ? i - 2 : i;
    if (isMany && !isTaken(from, end)) return true;
    i = end - 1;
  }
  return false;
}

function isStart(token: Token | undefined): boolean {
  return token?.kind === "open" || token?.kind === "comma";
}

function isEnd(token: Token | undefined): boolean {
  return token?.kind === "close" || token?.kind === "comma";
}

/** Of the parenthesis that opens at `open`. */
function closing(all: readonly Token[], open: number): number {
  let depth = 0;
  for (let i = open; i < all.length; i++) {
    if (all[i].kind === "open") depth++;
    if (all[i].kind === "close" && --depth === 0) return i;
  }
  return all.length;
}

/** Behind B4:C9 or B4#, whose first part stands at `at`; behind the name itself otherwise. */
function endOfReference(all: readonly Token[], at: number): number {
  if (all[at + 1]?.text === "#") return at + 2;
  return all[at + 1]?.text === ":" ? at + 3 : at + 1;
}
