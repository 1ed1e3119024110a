import { inMoney, type PageBuilder, unitText } from "../kit/builder";
import { workbook, type PagePlan } from "../kit/workbook";
import { bluestemFlat, type Field } from "../parts/bluestem-flat";
import {
  billWithoutPrices,
  customersBill,
  customersPrices,
  linesOfBill,
  MOST_ROWS,
  PRICED,
  priceListInputs,
  quoteTotal,
  saidOnQuote,
  totalOfBill,
  wordsOfQuote,
} from "../parts/bill";
import { price as anyPrice } from "../parts/limits";
import { basePage, DEALER_QUESTION } from "../parts/line-blocks";
import { namesPage } from "../parts/names";
import { heads } from "./heads";

export const quote = workbook({
  ...heads.quote,
  subjects: ["pressure", "overhead wires", "backflow", "buried lines"],
  answers: [
    [
      DEALER_QUESTION,
      '=Lines&IF(Lines=1, " line of ", " lines of ")&Heads&" sprinklers; "&RollsInWords&". Total "&FIXED(QuoteTotal, 2)&" "&Currency&"."',
    ],
  ],
  field: bluestemFlat,
  pages: (field) => [
    quotePage(field),
    pricesPage(field),
    costPage(field),
    basePage(
      field,
      "Layout",
      "The lines that the quote is for. Lay them out in the workbook Line layout first; type its cells here.",
    ),
    namesPage(field.system),
  ],
});

const MATERIALS =
  "IRRIG.BILL.MATERIALS(Lines, Heads, Spacing, BillTubing, BillFeeder, Units, First, Regulated, RollLength, Spare)";

/** Lines of the dealer's own below the bill: what no formula knows. */
const OWN_LINES = ["Pump, delivered and set", "Delivery", "Labor", "Discount"] as const;

function quotePage(field: Field): PagePlan {
  return {
    name: "Quote",
    title: { text: "Quote", formula: '="Quote: movable sprinkler lines for "&FieldName' },
    widths: [52, 14, 12, 19, 23],
    onePage: true,
    write: (page) => customersPage(page, field),
  };
}

function customersPage(page: PageBuilder, field: Field): void {
  wordsOfQuote(page, "From", "Your name, address and telephone");
  wordsOfQuote(page, "For", "The customer's name and address");
  wordsOfQuote(page, "Date", undefined);
  wordsOfQuote(page, "Good until", undefined);
  wordsOfQuote(
    page,
    "Terms",
    "Half with the order, the rest on delivery. Prices as of the date above.",
  );
  wordsOfQuote(
    page,
    "Not included",
    "Main and hydrants; permits; electrical work by a licensed electrician.",
  );
  page.gap();
  const totals = page.row;
  saidOnQuote(
    page,
    totals + 3,
    "Made for",
    `=IF(InputFault<>"OK", "", FIXED(AllFlow, ${field.system === "US" ? 0 : 1})&" "&${unitText("flow")}&" at "&FIXED(TotalHead, 0)&" "&${unitText("length")}&" of head ("&FIXED(TotalHead*${PRESSURE_OF_HEAD}, 0)&" "&${unitText("pressure")}&") from the pump; calculated, not guaranteed")`,
    2,
  );
  saidOnQuote(page, totals + 4, "Checks of the plan", "=CheckLine", 3);

  page.row = totals + 6;
  const own = page.row + 1;
  page.table("A", [
    {
      header: "Besides the table below, tax included",
      role: "label",
      span: 4,
      rows: [...OWN_LINES],
    },
    {
      header: "Amount",
      role: "input",
      format: "#,##0.00",
      allowed: { low: -1000000, high: 1000000, optional: true },
      rows: OWN_LINES.map(() => undefined),
    },
  ]);
  page.gap();
  const top = page.row;
  quoteTotal(
    page,
    totals,
    4,
    false,
    `${totalOfBill(top)}+SUM(E${own}:E${own + OWN_LINES.length - 1})`,
  );
  const perArea = `="Per "&IF(Units="SI", "ha", "acre")&" ("&Currency&")"`;
  page.field({ column: 1, row: totals + 1, label: { text: "Per area", formula: perArea } }, 4, {
    role: "result",
    formula: inMoney("=QuoteTotal/Area"),
    format: "#,##0.00",
  });
  const roll = (row: number, before: string) =>
    `IF(C${row}="roll", "${before}"&B${row}&" × "&A${row}, "")`;
  page.field({ column: 1, row: totals + 2, label: "Rolls" }, 1, {
    role: "sentence",
    formula: `=${roll(top + 1, "")}&${roll(top + 2, "; ")}&${roll(top + 3, "; ")}`,
    name: "RollsInWords",
    span: 4,
  });
  page.needsLines(totals + 2, 2);
  customersBill(page, MATERIALS, field.billRows);
  page.safety("pressure", "backflow", "overhead wires");
}

/** The pressure of one unit of head, in the units of the sheet. */
const PRESSURE_OF_HEAD =
  'IF(Units="SI", IRRIG.UNIT.CONVERT(1, "m of water", "kPa"), IRRIG.UNIT.CONVERT(1, "ft of water", "psi"))';

/** Every item that the bill can hold for tubing of these sizes, and its price for one. */
function pricesPage(field: Field): PagePlan {
  return {
    name: "Prices",
    title: "Price list",
    purpose:
      "Change only the prices. A missing price stops the quote and is named. Invented prices.",
    widths: [46, 16, 18, 4, 46, 10, 10, 3, 12],
    onePage: true,
    landscape: true,
    write: (page) => prices(page, field),
  };
}

function prices(page: PageBuilder, field: Field): void {
  const block = priceListInputs(page, field);
  block.result("A regulator under each sprinkler", '=IF(Regulator="", FALSE, Regulator>0)', {
    name: "Regulated",
  });
  page.below(block);

  const entries = priceList(field);
  const top = page.row + 1;
  const [items, costs, customer] = page.table("A", [
    { header: "Item", role: "label", rows: entries.map(({ item }) => item) },
    {
      header: "Your cost",
      role: "input",
      format: "#,##0.00",
      allowed: { ...anyPrice, optional: true },
      rows: entries.map(({ price }) => price),
    },
    customersPrices(top, entries.length),
  ]);
  page.nameRange("Items", items);
  page.nameRange("Costs", `${items.split(":")[0]}:${costs.split(":")[1]}`);
  page.nameRange("CustomerPrices", customer);
  const after = page.row;
  page.row = top - 1;
  billWithoutPrices(page, MATERIALS, field.billRows, items, costs);
  page.row = Math.max(after, page.row);
  page.gap();

  linesOfBill(
    page,
    [
      '=INDEX(Sizes, 1)&" mm"',
      '=IF(INDEX(Lengths, 2)=0, "", INDEX(Sizes, 2)&" mm")',
      '=FeederSize&" mm"',
    ],
    ["=INDEX(Tubing, 1, 2)", "=INDEX(Tubing, 2, 2)", "=ROUND(FeederLength, 1)"],
  );
}

interface Entry {
  /** A text, or a formula that gives one. */
  readonly item: string;
  readonly price: number;
}

function priceList(field: Field): Entry[] {
  const { price, feederTubing, largeTubing, smallTubing, smallestTubing, roll } = field;
  const sizes = [feederTubing, largeTubing, smallTubing, smallestTubing];
  const perLength = [price.feeder, price.large, price.small, price.smallest];
  const onLine = sizes.slice(1);
  const { parts } = price;
  const steps = sizes.flatMap((from, i) => sizes.slice(i + 1).map((to) => ({ from, to })));
  return [
    ...sizes.map((size, i) => ({
      item: `="tubing, ${size} mm"&IF(RollLength>0, ", roll of "&RollLength&" "&${unitText("length")}, "")`,
      price: Number((perLength[i] * roll).toFixed(2)),
    })),
    ...sizes.map((size) => ({ item: `straight coupler, ${size} mm`, price: parts.coupler })),
    { item: "sprinkler head", price: parts.head },
    ...onLine.map((size) => ({ item: `saddle, ${size} mm`, price: parts.saddle })),
    { item: "stand", price: parts.stand },
    { item: "regulator", price: parts.regulator },
    ...steps.map(({ from, to }) => ({
      item: `reducing coupler, ${from} mm to ${to} mm`,
      price: parts.reducer,
    })),
    ...onLine.map((size) => ({ item: `end cap, ${size} mm`, price: parts.cap })),
    ...sizes
      .slice(0, 2)
      .map((size) => ({ item: `quick connect, ${size} mm`, price: parts.connect })),
    { item: "hydrant connection with valve, gauge and screen", price: parts.riser },
    { item: "backflow device", price: parts.backflow },
    { item: "flag", price: parts.flag },
  ];
}

/** What it costs the dealer: not for the customer. */
function costPage(field: Field): PagePlan {
  return {
    name: "Cost",
    title: "What it costs you: not for the customer",
    purpose:
      "Your costs, the markup on their sum, tax. On the customer's page the markup is in each price, rounded to the cent there, so the two totals may differ by some cents: the customer's counts.",
    widths: [46, 11, 9, 13, 15],
    write: (page) => costs(page, field),
  };
}

function costs(page: PageBuilder, field: Field): void {
  const block = page.block("A", 1);
  block.result("The customer pays", "=QuoteTotal", { format: "#,##0.00", money: true });
  const top = block.row + 3;
  const closing = (label: string) =>
    `INDEX(E${top}:E${top + MOST_ROWS}, MATCH("${label}", A${top}:A${top + MOST_ROWS}, 0))`;
  block.result("Your cost before tax", `=${closing("subtotal")}`, {
    format: "#,##0.00",
    money: true,
  });
  page.row = top;
  page.spill("A", `=IRRIG.BILL.QUOTE(${MATERIALS}, Costs, Markup, Tax)`, {
    rows: field.billRows + 5,
    reserved: MOST_ROWS + 1,
    headerLines: 1,
    money: true,
    columns: PRICED,
  });
}
