import type { AskedBook, Inputs } from "./asked-book";

/** Parts of a length that stand a round distance apart, at most so far. */
export interface Parts {
  readonly count: number;
  readonly apart: number;
}

/** Distances that are easy to measure, the coarsest first, in ft or m. */
const ROUND = [1, 0.5, 0.1];
const DIGITS = 6;

/**
 * The fewest parts of a length that keep within the greatest distance, or some more, and the round
 * distance that makes so many. `counted` is the formula that says how many parts a distance makes.
 */
export function partsOf(
  book: AskedBook,
  inputs: Inputs,
  {
    length,
    most,
    more = 0,
  }: { readonly length: number; readonly most: number; readonly more?: number },
  counted: (apart: number) => string,
): Parts {
  const ask = (formula: string) => book.ask(inputs, { count: formula }).number("count");
  const fewest = ask(`=IRRIG.SET.POSITIONS(${length}, ${most})`) + more;
  const exact = length / fewest;
  for (const step of ROUND) {
    const apart = rounded(Math.ceil(exact / step - 1e-9) * step);
    if (apart <= most && ask(counted(apart)) === fewest) return { count: fewest, apart };
  }
  const apart = rounded(exact);
  return { count: ask(counted(apart)), apart };
}

/** Without the tail of digits that reckoning leaves. */
export function rounded(value: number): number {
  return Number(value.toPrecision(DIGITS));
}
