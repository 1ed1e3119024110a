import { type PageBuilder, unitText } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import {
  billWithoutPrices,
  customersBill,
  customersPrices,
  linesOfBill,
  priceListInputs,
  quoteTotal,
  saidOnQuote,
  totalOfBill,
  wordsOfQuote,
} from "../parts/bill";
import { price as anyPrice } from "../parts/limits";

/** Items in the bill of the first row of the best plans. */
const BILL_ROWS = { US: 17, SI: 16 };

const MATERIALS =
  "IRRIG.BILL.MATERIALS(ChosenLines, ChosenHeads, ChosenSpacing, BillTubing, BillFeeder, Units, ChosenSpacing/2, FALSE, RollLength, Spare)";

/** The bill of the row chosen, priced for the customer. */
export function planQuotePage(field: Field): PagePlan {
  return {
    name: "Quote",
    title: { text: "Quote", formula: '="Quote: the plan of "&FieldName' },
    widths: [50, 14, 12, 19, 23],
    onePage: true,
    write: (page) => bill(page, field),
  };
}

function bill(page: PageBuilder, field: Field): void {
  wordsOfQuote(page, "From", "Your name, address and telephone", "QuoteFrom");
  wordsOfQuote(page, "For", "The customer's name and address", "QuoteFor");
  wordsOfQuote(page, "Date, and good until", undefined, "QuoteDate");
  const totals = page.row;
  saidOnQuote(
    page,
    totals + 1,
    "Made for",
    `=ChosenLines&IF(ChosenLines=1, " line of ", " lines of ")&ChosenHeads&" sprinklers; "&FIXED(ChosenFlow, 1)&" "&${unitText("flow")}&" at "&FIXED(ChosenHead, 0)&" "&${unitText("length")}&" of head; calculated, not guaranteed"`,
    2,
  );
  saidOnQuote(page, totals + 2, "Checks of the plan", "=CheckLine", 3);
  page.row = totals + 4;
  quoteTotal(page, totals, 1, true, totalOfBill(page.row));
  customersBill(page, MATERIALS, BILL_ROWS[field.system]);
  page.text(
    "Not included: pump, main and hydrants; permits; electrical work by a licensed electrician.",
  );
  page.safety("pressure", "backflow", "overhead wires");
}

export function planPricesPage(field: Field): PagePlan {
  return {
    name: "Prices",
    title: "Price list",
    purpose:
      "Change only the prices; those of tubing stand on the page Field. A missing price stops the quote and is named. Invented prices.",
    widths: [46, 16, 18, 4, 46, 10, 10, 3, 12],
    onePage: true,
    landscape: true,
    write: (page) => prices(page, field),
  };
}

interface Entry {
  readonly item: string;
  /** A price to type, or a formula. */
  readonly price: number | string;
}

/** Every item that a bill can hold for the sizes offered. */
function entries({ price: { parts } }: Field): Entry[] {
  const line = [1, 2, 3].map((n) => ({
    name: `INDEX(LineNames, ${n})`,
    cost: `INDEX(LineSizes, ${n}, 3)`,
  }));
  const feeders = [1, 2].map((n) => ({
    name: `INDEX(FeederNames, ${n})`,
    cost: `INDEX(FeederSizes, ${n}, 3)`,
  }));
  const all = [...line, ...feeders];
  const steps = [
    ...feeders.flatMap((from) => line.map((to) => [from, to] as const)),
    [line[0], line[1]] as const,
    [line[0], line[2]] as const,
    [line[1], line[2]] as const,
  ];
  return [
    ...all.map(({ name, cost }) => ({
      item: `"tubing, "&${name}&IF(RollLength>0, ", roll of "&RollLength&" "&${unitText("length")}, "")`,
      price: `=${cost}*IF(RollLength>0, RollLength, 1)`,
    })),
    ...all.map(({ name }) => ({ item: `"straight coupler, "&${name}`, price: parts.coupler })),
    { item: '"sprinkler head"', price: parts.head },
    ...line.map(({ name }) => ({ item: `"saddle, "&${name}`, price: parts.saddle })),
    { item: '"stand"', price: parts.stand },
    ...steps.map(([from, to]) => ({
      item: `"reducing coupler, "&${from.name}&" to "&${to.name}`,
      price: parts.reducer,
    })),
    ...line.map(({ name }) => ({ item: `"end cap, "&${name}`, price: parts.cap })),
    ...all.map(({ name }) => ({ item: `"quick connect, "&${name}`, price: parts.connect })),
    { item: '"hydrant connection with valve, gauge and screen"', price: parts.riser },
    { item: '"backflow device"', price: parts.backflow },
    { item: '"flag"', price: parts.flag },
  ];
}

function prices(page: PageBuilder, field: Field): void {
  page.below(priceListInputs(page, field));
  const list = entries(field);
  const top = page.row + 1;
  // Where two sizes offered are the same, their item stands once.
  const item = (text: string, i: number) =>
    i === 0
      ? `=${text}`
      : `=IF(COUNTIF(A${top}:A${top + i - 1}, ${text})>0, "as above, row ${i + 1}", ${text})`;
  const tubing = list.filter(({ price }) => typeof price === "string").length;
  const [items, , customer] = page.table("A", [
    { header: "Item", role: "label", rows: list.map(({ item: text }, i) => item(text, i)) },
    {
      header: "Tubing: your cost",
      role: "result",
      format: "#,##0.00",
      money: true,
      // What has no formula is an input of its own.
      rows: list.map(({ item: text, price }, i) => (i < tubing ? price : costInput(text, price))),
    },
    customersPrices(top, list.length),
  ]);
  page.nameRange("Items", items);
  page.nameRange("Costs", items.replace(/A/g, "B"));
  page.nameRange("CustomerPrices", customer);
  const after = page.row;
  page.row = top - 1;
  billWithoutPrices(page, MATERIALS, BILL_ROWS[field.system], "Items", "Costs");
  page.row = Math.max(after, page.row);
  page.gap();
  linesOfBill(
    page,
    ["=ChosenLarger", '=IF(SmallerSegments=0, "", ChosenSmaller)', "=ChosenFeeder"],
    ["=LargerSegments", '=IF(SmallerSegments=0, "", SmallerSegments)', "=ROUND(FeederLength, 1)"],
  );
}

/** Your cost of an item, under the item's name without its formulas. */
function costInput(item: string, value: string | number | undefined) {
  const label = item
    .replace(/"&?|&?"/g, "")
    .replace(/INDEX\(Line\w+, (\d)[^)]*\)/g, "line size $1")
    .replace(/INDEX\(Feeder\w+, (\d)[^)]*\)/g, "feeder size $1")
    .replace(/&/g, " ");
  return {
    role: "input" as const,
    value,
    label: `${label}: your cost`,
    format: "#,##0.00",
    allowed: { ...anyPrice, optional: true as const },
  };
}
