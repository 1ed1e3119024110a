import { inMoney, type PageBuilder, unitText } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import { amount, length, price as anyPrice } from "../parts/limits";

const MOST_ROWS = 32;

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
  for (const [label, value, name] of [
    ["From", "Your name, address and telephone", "QuoteFrom"],
    ["For", "The customer's name and address", "QuoteFor"],
    ["Date, and good until", undefined, "QuoteDate"],
  ] as const) {
    page.put(1, page.row, { role: "label", value: label });
    page.put(2, page.row, {
      role: "input",
      name,
      label,
      span: 4,
      allowed: { text: true, ...(value === undefined && { optional: true }) },
      ...(value !== undefined && { value }),
    });
    page.needsLines(page.row, 2);
    page.row++;
  }
  const totals = page.row;
  page.put(1, totals + 1, { role: "label", value: "Made for" });
  page.put(2, totals + 1, {
    role: "sentence",
    formula: `=ChosenLines&IF(ChosenLines=1, " line of ", " lines of ")&ChosenHeads&" sprinklers; "&FIXED(ChosenFlow, 1)&" "&${unitText("flow")}&" at "&FIXED(ChosenHead, 0)&" "&${unitText("length")}&" of head; calculated, not guaranteed"`,
    span: 4,
  });
  page.needsLines(totals + 1, 2);
  page.put(1, totals + 2, { role: "label", value: "Checks of the plan" });
  page.put(2, totals + 2, { role: "sentence", formula: "=CheckLine", span: 4 });
  page.needsLines(totals + 2, 3);
  page.row = totals + 4;
  const top = page.row;
  page.put(1, totals, { role: "label", formula: '="Total ("&Currency&"), tax included"' });
  page.put(2, totals, {
    role: "result",
    formula: inMoney(
      `=INDEX(E${top}:E${top + MOST_ROWS - 1}, MATCH("total", A${top}:A${top + MOST_ROWS - 1}, 0))`,
    ),
    format: "#,##0.00",
    name: "QuoteTotal",
  });
  // The markup is in each price: the customer's page has no row for it.
  const priced = `IRRIG.BILL.QUOTE(${MATERIALS}, HSTACK(Items, CustomerPrices), 0, Tax)`;
  page.spill("A", `=FILTER(${priced}, INDEX(${priced}, 0, 1)<>"markup")`, {
    rows: BILL_ROWS[field.system] + 4,
    reserved: MOST_ROWS,
    headerLines: 1,
    money: true,
    columns: [
      { format: "General" },
      { format: "General" },
      { format: "General" },
      { format: "#,##0.00" },
      { format: "#,##0.00" },
    ],
  });
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
  const block = page.block("A", 1);
  block.input("Markup on cost", 0.25, {
    name: "Markup",
    allowed: amount(0, 2),
    note: "A fraction of the cost: 0.25 is 25%.",
    format: "0%",
  });
  block.input("Tax on the total", 0.06, { name: "Tax", allowed: amount(0, 0.5), format: "0.0%" });
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
  page.below(block);
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
      rows: list.slice(0, tubing).map(({ price }) => price),
    },
    {
      header: "Customer's price",
      role: "result",
      format: "#,##0.00",
      money: true,
      rows: list.map((_, i) => `=ROUND(B${top + i}*(1+Markup), 2)`),
    },
  ]);
  list.slice(tubing).forEach(({ item: text, price }, i) => {
    page.put(2, top + tubing + i, {
      role: "input",
      value: price,
      label:
        text
          .replace(/"&?|&?"/g, "")
          .replace(/INDEX\(Line\w+, (\d)[^)]*\)/g, "line size $1")
          .replace(/INDEX\(Feeder\w+, (\d)[^)]*\)/g, "feeder size $1")
          .replace(/&/g, " ") + ": your cost",
      format: "#,##0.00",
      allowed: { ...anyPrice, optional: true },
    });
  });
  page.nameRange("Items", items);
  page.nameRange("Costs", items.replace(/A/g, "B"));
  page.nameRange("CustomerPrices", customer);
  const after = page.row;
  page.row = top - 1;
  const bill = page.row;
  page.spill("E", `=${MATERIALS}`, {
    rows: BILL_ROWS[field.system] + 1,
    reserved: MOST_ROWS,
    headerLines: 1,
    columns: [{ format: "General" }, { format: "General" }, { format: "General" }],
  });
  page.row = bill;
  const rows = Array.from({ length: MOST_ROWS - 1 }, (_, i) => bill + 1 + i);
  page.table("I", [
    {
      header: "Your cost",
      role: "result",
      format: "#,##0.00",
      rows: rows.map((at) => `=IF(E${at}="", "", SUMIF(Items, E${at}, Costs))`),
    },
  ]);
  const missing = rows.reduceRight(
    (rest, at) => `IF(N(I${at}=0)*N(E${at}<>"")=1, E${at}, ${rest})`,
    '""',
  );
  page.gap();
  const check = page.block("E", 1);
  check.result("First item without a price", `=${missing}`, { name: "MissingPrice" });
  check.check(
    "Prices",
    '=IF(MissingPrice="", "OK", "There is no price for "&MissingPrice&": type it in the price list.")',
    1,
  );
  page.row = Math.max(after, check.row);
  page.gap();
  page.heading("The lines as the bill takes them");
  const row = page.row + 1;
  page.table("A", [
    {
      header: "Size",
      role: "result",
      rows: ["=ChosenLarger", '=IF(SmallerSegments=0, "", ChosenSmaller)', "=ChosenFeeder"],
    },
    {
      header: "Segments; length of a feeder",
      role: "result",
      format: "General",
      rows: [
        "=LargerSegments",
        '=IF(SmallerSegments=0, "", SmallerSegments)',
        "=ROUND(FeederLength, 1)",
      ],
    },
  ]);
  page.nameRange("BillTubing", `A${row}:B${row + 1}`);
  page.nameRange("BillFeeder", `A${row + 2}:B${row + 2}`);
}
