import { bluestemFlat, type Field } from "../parts/bluestem-flat";
import { cautionsPage, PageBuilder, unitText } from "../kit/builder";
import type { Page, ReadyMadeSheet } from "../kit/definition";
import {
  basePage,
  DEALER_QUESTION,
  GROWER_ANSWER,
  GROWER_QUESTION,
  OFFICER_ANSWER,
  OFFICER_QUESTION,
} from "../parts/line-blocks";
import { namesPage } from "../parts/names";

const SUBJECTS = ["pressure", "overhead wires", "backflow", "buried lines"] as const;

/** Rows kept for the items of a bill, its header and its closing rows. */
const MOST_ROWS = 32;

export const quote: ReadyMadeSheet = {
  id: "quote",
  title: "Quote",
  purpose:
    "For a dealer: from the layout to a bill of materials, priced, on one page for the customer.",
  pages: (system) => {
    const field = bluestemFlat(system);
    return [
      quotePage(field),
      pricesPage(field),
      costPage(field),
      basePage(
        field,
        "Layout",
        "The lines that the quote is for. Lay them out in the workbook Line layout first; type its cells here.",
      ),
      namesPage(system),
      cautionsPage(system, SUBJECTS),
    ];
  },
};

const MATERIALS =
  "IRRIG.BILL.MATERIALS(Lines, Heads, Spacing, BillTubing, BillFeeder, Units, First, Regulated, RollLength, Spare)";

function quotePage(field: Field): Page {
  const page = new PageBuilder("Quote", field.system, [46, 11, 9, 13, 15]);
  page.title("Quote: movable sprinkler lines for Bluestem Flat");
  page.question(
    DEALER_QUESTION,
    '=Lines&" lines of "&Heads&" heads; "&RollsInWords&". Total "&FIXED(QuoteTotal, 2)&"."',
    165,
  );
  page.question(OFFICER_QUESTION, OFFICER_ANSWER);
  page.question(GROWER_QUESTION, GROWER_ANSWER);
  page.freeze();
  page.gap();
  for (const [label, value] of [
    ["From", "Your name, address and telephone"],
    ["For", "The customer's name and address"],
    ["Date, and good until", ""],
    ["Terms", "Half with the order, the rest on delivery. Prices as of the date above."],
    ["Not in it", "Pump, main and riser; permits; electrical work by a licensed electrician."],
  ]) {
    page.put(1, page.row, { role: "label", value: label });
    page.put(2, page.row, {
      role: "input",
      span: 4,
      ...(value !== "" && { value }),
    });
    page.needsLines(page.row, 2);
    page.row++;
  }
  page.gap();
  const totals = page.row;
  page.put(1, totals, { role: "label", value: "Total" });
  page.put(5, totals, {
    role: "result",
    formula: `=INDEX(E${totals + 4}:E${totals + 3 + MOST_ROWS}, MATCH("total", A${totals + 4}:A${totals + 3 + MOST_ROWS}, 0))`,
    format: "#,##0.00",
    name: "QuoteTotal",
  });
  page.put(1, totals + 1, {
    role: "label",
    formula: `="That is, for each "&IF(Units="SI", "ha", "acre")`,
  });
  page.put(5, totals + 1, { role: "result", formula: "=QuoteTotal/Area", format: "#,##0.00" });
  page.put(1, totals + 2, { role: "label", value: "Rolls" });
  const roll = (row: number, before: string) =>
    `IF(C${row}="roll", "${before}"&B${row}&" × "&A${row}, "")`;
  const top = totals + 4;
  page.put(2, totals + 2, {
    role: "answer",
    formula: `=${roll(top + 1, "")}&${roll(top + 2, "; ")}&${roll(top + 3, "; ")}`,
    name: "RollsInWords",
    span: 4,
  });
  page.needsLines(totals + 2, 2);
  page.row = top;
  // The markup is in each price: the customer's page has no row for it.
  const priced = `IRRIG.BILL.QUOTE(${MATERIALS}, HSTACK(Items, CustomerPrices), 0, Tax)`;
  page.spill("A", `=FILTER(${priced}, INDEX(${priced}, 0, 1)<>"markup")`, {
    rows: field.billRows + 4,
    reserved: MOST_ROWS,
    headerLines: 1,
    columns: [
      { format: "General" },
      { format: "General" },
      { format: "General" },
      { format: "#,##0.00" },
      { format: "#,##0.00" },
    ],
  });
  page.printOnOnePage();
  return page.build();
}

/** Every item that the bill can hold for tubing of these sizes, and its price for one. */
function pricesPage(field: Field): Page {
  const page = new PageBuilder("Prices", field.system, [46, 16, 18]);
  page.title("Price list");
  page.freeze();
  page.purpose(
    "Change the prices; they are all that is yours to change on this page and the next. An item of the bill that has no price here stops the quote, and is named there. Invented prices.",
  );
  page.gap();
  const block = page.block("A", 1);
  block.input("Markup on cost", 0.25, {
    name: "Markup",
    allowed: { low: 0, high: 5 },
    format: "0%",
  });
  block.input("Tax on the total", 0.06, {
    name: "Tax",
    allowed: { low: 0, high: 1 },
    format: "0.0%",
  });
  block.input("Length of a roll", field.roll, { name: "RollLength", unit: "length" });
  block.input("Tubing beyond the last head", field.spare, { name: "Spare", unit: "length" });
  block.input("More feeder than straight, for curves", field.slack, {
    name: "Slack",
    unit: "length",
  });
  block.result("A regulator under each head", '=IF(Regulator="", FALSE, Regulator>0)', {
    name: "Regulated",
  });
  page.below(block);

  const entries = priceList(field);
  const top = page.row + 1;
  const [items, costs, prices] = page.table("A", [
    { header: "Item", role: "label", rows: entries.map(({ item }) => item) },
    {
      header: "Your cost",
      role: "input",
      format: "#,##0.00",
      allowed: { low: 0, high: 1000000 },
      rows: entries.map(({ price }) => price),
    },
    {
      header: "Customer's price",
      role: "result",
      format: "#,##0.00",
      rows: entries.map((_, i) => `=ROUND(B${top + i}*(1+Markup), 2)`),
    },
  ]);
  page.nameRange("Items", items);
  page.nameRange("Costs", `${items.split(":")[0]}:${costs.split(":")[1]}`);
  page.nameRange("CustomerPrices", prices);
  page.gap();

  page.heading("The lines as the bill takes them");
  const row = page.row + 1;
  page.table("A", [
    {
      header: "Size",
      role: "result",
      rows: [
        '=INDEX(Sizes, 1)&" mm"',
        '=IF(INDEX(Lengths, 2)=0, "", INDEX(Sizes, 2)&" mm")',
        '=FeederSize&" mm"',
      ],
    },
    {
      header: "Segments; length of a feeder",
      role: "result",
      format: "General",
      rows: ["=INDEX(Tubing, 1, 2)", "=INDEX(Tubing, 2, 2)", "=ROUND(FeederLength+Slack, 1)"],
    },
  ]);
  page.nameRange("BillTubing", `A${row}:B${row + 1}`);
  page.nameRange("BillFeeder", `A${row + 2}:B${row + 2}`);
  page.printOnOnePage();
  return page.build();
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
    { item: "riser connection with valve, gauge and screen", price: parts.riser },
    { item: "backflow device", price: parts.backflow },
    { item: "flag", price: parts.flag },
  ];
}

/** What it costs the dealer: not for the customer. */
function costPage(field: Field): Page {
  const page = new PageBuilder("Cost", field.system, [46, 11, 9, 13, 15]);
  page.title("What it costs you: not for the customer");
  page.freeze();
  page.purpose(
    "Your costs, the markup on their sum, tax. On the customer's page the markup is in each price, rounded to the cent there, so the two totals may differ by some cents: the customer's counts.",
  );
  page.gap();
  const block = page.block("A", 1);
  block.result("The customer pays", "=QuoteTotal", { format: "#,##0.00" });
  const top = block.row + 3;
  const closing = (label: string) =>
    `INDEX(E${top}:E${top + MOST_ROWS}, MATCH("${label}", A${top}:A${top + MOST_ROWS}, 0))`;
  block.result("Your cost before tax", `=${closing("subtotal")}`, { format: "#,##0.00" });
  page.row = top;
  page.spill("A", `=IRRIG.BILL.QUOTE(${MATERIALS}, Costs, Markup, Tax)`, {
    rows: field.billRows + 5,
    reserved: MOST_ROWS + 1,
    headerLines: 1,
    columns: [
      { format: "General" },
      { format: "General" },
      { format: "General" },
      { format: "#,##0.00" },
      { format: "#,##0.00" },
    ],
  });
  return page.build();
}
