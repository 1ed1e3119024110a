import { fromCents, sumOfCents, toCents } from "./money";

export interface PricedLine {
  readonly quantity: number;
  readonly price: number;
}

export interface Quote {
  /** Of each line, in order. */
  readonly amounts: readonly number[];
  readonly subtotal: number;
  readonly markup: number;
  readonly tax: number;
  readonly total: number;
}

/**
 * Prices a bill: every line, the markup on their sum and the tax on both are rounded to the cent,
 * half up, and only whole cents are added, so that the column adds up to its total by hand.
 * `markup` and `tax` are fractions. Example: 3 at 0.335 is 1.01; with a markup of 0.5 (0.51) and a
 * tax of 0.1 (0.15) the total is 1.67.
 */
export function quote(lines: readonly PricedLine[], markup: number, tax: number): Quote {
  const amounts = lines.map(({ quantity, price }) => toCents(quantity, price));
  const subtotal = sumOfCents(...amounts);
  const markedUp = toCents(fromCents(subtotal), markup);
  const taxed = toCents(fromCents(sumOfCents(subtotal, markedUp)), tax);
  return {
    amounts: amounts.map(fromCents),
    subtotal: fromCents(subtotal),
    markup: fromCents(markedUp),
    tax: fromCents(taxed),
    total: fromCents(sumOfCents(subtotal, markedUp, taxed)),
  };
}
