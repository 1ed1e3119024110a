import { inMoney, type PageBuilder } from "../kit/builder";
import type { Field } from "./bluestem-flat";
import { amount, length } from "./limits";

/** Rows kept for the items of a bill, its header and its closing rows. */
export const MOST_ROWS = 32;

/** Item, quantity, unit; price and amount where there are any. */
const ITEMS = [{ format: "General" }, { format: "General" }, { format: "General" }];
export const PRICED = [...ITEMS, { format: "#,##0.00" }, { format: "#,##0.00" }];

/** A text of the quote's own, over the columns beside its label; blank unless it has a value. */
export function wordsOfQuote(
  page: PageBuilder,
  label: string,
  value: string | undefined,
  name?: string,
): void {
  page.field({ column: 1, row: page.row, label }, 1, {
    role: "input",
    span: 4,
    label,
    allowed: { text: true, ...(value === undefined && { optional: true }) },
    ...(value !== undefined && { value }),
    ...(name !== undefined && { name }),
  });
  page.needsLines(page.row, 2);
  page.row++;
}

/** What is worked out for the customer, in words, with the lines that it needs. */
export function saidOnQuote(
  page: PageBuilder,
  row: number,
  label: string,
  formula: string,
  lines: number,
): void {
  page.field({ column: 1, row, label }, 1, { role: "sentence", formula, span: 4 });
  page.needsLines(row, lines);
}

/** The total of the customer's bill whose header stands in this row. */
export function totalOfBill(top: number): string {
  const last = top + MOST_ROWS - 1;
  return `INDEX(E${top}:E${last}, MATCH("total", A${top}:A${last}, 0))`;
}

/** The bill with the customer's prices; `items` are those of the definition's own inputs. */
export function customersBill(page: PageBuilder, materials: string, items: number): void {
  // The markup is in each price: the customer's page has no row for it.
  const priced = `IRRIG.BILL.QUOTE(${materials}, HSTACK(Items, CustomerPrices), 0, Tax)`;
  page.spill("A", `=FILTER(${priced}, INDEX(${priced}, 0, 1)<>"markup")`, {
    rows: items + 4,
    reserved: MOST_ROWS,
    headerLines: 1,
    money: true,
    columns: PRICED,
  });
}

/** Markup, tax, and how tubing is bought: what stands above a price list. */
export function priceListInputs(page: PageBuilder, field: Field) {
  const block = page.block("A", 1);
  block.input("Markup on cost", 0.25, {
    name: "Markup",
    allowed: amount(0, 2),
    note: "A fraction of the cost: 0.25 is 25%.",
    format: "0%",
  });
  block.input("Tax on the total", 0.06, {
    name: "Tax",
    allowed: amount(0, 0.5),
    format: "0.0%",
  });
  block.input("Length of a roll", field.roll, {
    name: "RollLength",
    unit: "length",
    allowed: amount(1, 10000),
  });
  block.input("Tubing beyond the last sprinkler", field.spare, {
    name: "Spare",
    unit: "length",
    allowed: length,
  });
  return block;
}

/** A price for the customer from the cost in column B of each of these rows. */
export function customersPrices(top: number, count: number) {
  return {
    header: "Customer's price",
    role: "result" as const,
    format: "#,##0.00",
    money: true as const,
    rows: Array.from({ length: count }, (_, i) => `=ROUND(B${top + i}*(1+Markup), 2)`),
  };
}

/**
 * What the bill holds beside the price list, from the next free row on, so that an item without a
 * price is named. The list's items and costs are given as ranges.
 */
export function billWithoutPrices(
  page: PageBuilder,
  materials: string,
  count: number,
  items: string,
  costs: string,
): void {
  const top = page.row;
  page.spill("E", `=${materials}`, {
    rows: count + 1,
    reserved: MOST_ROWS,
    headerLines: 1,
    columns: ITEMS,
  });
  page.row = top;
  const rows = Array.from({ length: MOST_ROWS - 1 }, (_, i) => top + 1 + i);
  page.table("I", [
    {
      header: "Your cost",
      role: "result",
      format: "#,##0.00",
      rows: rows.map((at) => `=IF(E${at}="", "", SUMIF(${items}, E${at}, ${costs}))`),
    },
  ]);
  const missing = rows.reduceRight(
    (rest, at) => `IF(N(I${at}=0)*N(E${at}<>"")=1, E${at}, ${rest})`,
    '""',
  );
  page.gap();
  const block = page.block("E", 1);
  block.result("First item without a price", `=${missing}`, { name: "MissingPrice" });
  block.check(
    "Prices",
    '=IF(MissingPrice="", "OK", "There is no price for "&MissingPrice&": type it in the price list.")',
    1,
  );
  page.row = block.row;
}

type OfPipe = readonly [larger: string, smaller: string, feeder: string];

/** The line's sizes and the feeder's as the bill takes them. */
export function linesOfBill(page: PageBuilder, sizes: OfPipe, lengths: OfPipe): void {
  page.heading("The lines as the bill takes them");
  const row = page.row + 1;
  page.table("A", [
    { header: "Size", role: "result", rows: sizes },
    {
      header: "Segments; length of a feeder",
      role: "result",
      format: "General",
      rows: lengths,
    },
  ]);
  page.nameRange("BillTubing", `A${row}:B${row + 1}`);
  page.nameRange("BillFeeder", `A${row + 2}:B${row + 2}`);
}

/** The quote's total, so many columns after its label: a figure in money. */
export function quoteTotal(
  page: PageBuilder,
  row: number,
  after: number,
  taxIsSaid: boolean,
  formula: string,
): void {
  const text = taxIsSaid ? '="Total ("&Currency&"), tax included"' : '="Total ("&Currency&")"';
  page.field({ column: 1, row, label: { text: "Total", formula: text } }, after, {
    role: "result",
    formula: inMoney(`=${formula}`),
    format: "#,##0.00",
    name: "QuoteTotal",
  });
}
