import {
  pricedLines,
  readBill,
  readFeeder,
  readPrices,
  readSizedSegments,
  spillMaterials,
  spillQuote,
} from "../boundary/bill";
import { readYesNo } from "../boundary/choices";
import {
  above,
  atLeast,
  fraction,
  MOST_POSITIONS,
  readNumber,
  readOptionalNumber,
  wholeNumber,
} from "../boundary/numbers";
import { readHeads, readSegmentLengths } from "../boundary/line";
import { readUnits } from "../boundary/units";
import { materials } from "../formulas/materials";
import { quote } from "../formulas/quote";
import { rollsFor } from "../formulas/rolls";
import type { Units } from "./units";

/**
 * Spills the bill of materials for equal lines and their feeders.
 * @customfunction BILL_MATERIALS BILL.MATERIALS
 * @param lines Lines to build, a whole number from 1 to 500.
 * @param heads Heads on each line, a whole number from 1 to 500.
 * @param spacing Distance between heads (ft, m), above 0: one value, or a row or column with one per segment from the inlet on.
 * @param tubing Sizes from the inlet on: two columns, size as text and number of segments; the segments add up to the heads.
 * @param feeder Feeder of each line, from the hydrant on: one or more rows of size as text and length (ft, m).
 * @param [first] Distance from the inlet to head 1 (ft, m), above 0; blank or 0: the spacing.
 * @param [regulated] TRUE for a regulator under every head; FALSE or blank for none.
 * @param [roll] Length of a roll (ft, m), above 0: tubing is then counted in whole rolls. Blank or 0: tubing by length.
 * @param [spare] Tubing beyond the last head of each line, for the cap (ft, m), 0 or more; blank or 0 is none.
 * @returns A header row, then item, quantity and unit. Items that are not needed have no row.
 * @remarks Counting rules, each common practice without a published source. Tubing: segments, spare and feeders by size; rolls pooled over the lines, what is left of one begins the next run, and a straight coupler joins wherever a roll ends inside a run. At each head: a head, a saddle for its segment's size, a stand, a flag, and a regulator if regulated. A reducing coupler wherever the size changes, from feeder to line too. For each line: an end cap, a quick connect at either end of the feeder, and a hydrant connection with valve, gauge and screen. One backflow device for the system. Pump, main and risers are not in it, nor clamps, tools and reserves.
 * @source Counting; the rules are common practice.
 * @errors #VALUE! for wrong counts, lengths or text, or segments that do not add up to the heads.
 * @cautions pressure, drilling, rolls and ice, backflow
 * @yesno regulated
 * @task what do I have to buy to build the lines?
 * @example =IRRIG.BILL.MATERIALS(2, 14, 45, {"63 mm SDR 17",7;"50 mm SDR 17",7}, {"75 mm SDR 17",320}, "US", 22.5, TRUE, 300, 4)
 */
export function billMaterials(
  lines: any,
  heads: any,
  spacing: any[][],
  tubing: any[][],
  feeder: any[][],
  units?: Units,
  first?: any,
  regulated?: any,
  roll?: any,
  spare?: any,
): any[][] {
  const u = readUnits(units);
  const rollLength = u.length.readOptional("roll", roll, above(0));
  const bill = materials({
    lines: readNumber("lines", lines, wholeNumber(1, MOST_POSITIONS)),
    segments: readSegmentLengths(u, readHeads(heads), { spacing, first }),
    tubing: readSizedSegments(tubing),
    feeder: readFeeder(u, feeder),
    regulated: readYesNo("regulated", regulated),
    roll: rollLength,
    spare: u.length.readOr("spare", spare, atLeast(0), 0),
  });
  return spillMaterials(u, bill, rollLength);
}

/**
 * Spills a priced bill with subtotal, markup, tax and total.
 * @customfunction BILL_QUOTE BILL.QUOTE
 * @param bill Two or three columns: item, quantity (0 or more) and, if you like, unit, as BILL.MATERIALS gives them. A first row of headers and blank rows are passed over.
 * @param prices Two columns: item and price of one unit. Capitals and spaces tell no items apart; an item stands once. A first row of headers is passed over.
 * @param [markup] Markup on the subtotal, a fraction, 0 or more (0.15 is 15%); blank or 0 is none.
 * @param [tax] Tax on subtotal and markup, a fraction, 0 or more; blank or 0 is none.
 * @returns A header row, then item, quantity, unit, price and amount, and four closing rows: subtotal, markup, tax, total.
 * @remarks Each line, the markup and the tax are rounded to the cent, half up, on the decimal numbers that the cells show, and whole cents are added: the column adds up by hand. Markup is on cost. Currency is the sheet's own.
 * @source Arithmetic.
 * @errors #N/A when an item of the bill has no price, or a blank or 0 one: all of them are named. #VALUE! for wrong text or numbers, an item that is listed twice in the prices, or amounts too large to give to the cent.
 * @task what will the lines cost?
 * @example =IRRIG.BILL.QUOTE({"tubing, 50 mm",630,"ft";"sprinkler head",28,"each"}, {"tubing, 50 mm",0.85;"sprinkler head",9.5}, 0.15, 0.06)
 */
export function billQuote(bill: any[][], prices: any[][], markup?: any, tax?: any): any[][] {
  const rows = readBill(bill);
  const lines = pricedLines(rows, readPrices(prices));
  return spillQuote(
    rows,
    lines,
    quote(
      lines,
      readOptionalNumber("markup", markup, atLeast(0)) ?? 0,
      readOptionalNumber("tax", tax, atLeast(0)) ?? 0,
    ),
  );
}

/**
 * Whole rolls of tubing for a length.
 * @customfunction BILL_ROLLS BILL.ROLLS
 * @param length Length needed (ft or m), 0 or more.
 * @param roll Length of a roll in the same unit, above 0.
 * @param [waste] More for waste, a fraction from 0 to 1 (0.05 is 5%); blank or 0 is none.
 * @returns Rolls, a whole number.
 * @remarks Length × (1 + waste) ÷ roll, rounded up; a length that fills its rolls to the last takes no further one.
 * @source Counting.
 * @errors #VALUE! for a blank, text or negative length, a roll that is not above 0, or a waste outside 0 to 1.
 * @cautions rolls and ice
 * @task how many rolls of tubing do I need?
 * @example =IRRIG.BILL.ROLLS(1260, 300, 0.05)
 */
export function billRolls(length: any, roll: any, waste?: any): any {
  return rollsFor(
    readNumber("length", length, atLeast(0)),
    readNumber("roll", roll, above(0)),
    readOptionalNumber("waste", waste, fraction) ?? 0,
  );
}
