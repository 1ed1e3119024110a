import type { LineLayout, Material, SizedLength } from "../formulas/materials";
import type { PricedLine, Quote } from "../formulas/quote";
import { InvalidInput, NoAnswer } from "../ground/domain-error";
import { type Cell, describe, isBlank, rows } from "./cell";
import { spelling } from "./choices";
import { above, atLeast, checked, MOST_HEADS, wholeNumber } from "./numbers";
import { readPairs } from "./sprinkler";
import { type Spill, spillTable } from "./table";
import { rounded, type Measures } from "./units";

/** Text of a cell, as it stands but for spaces around it. A number is taken as its text: a size may be one. */
export function readText(place: string, cell: Cell): string {
  if (typeof cell === "number" && Number.isFinite(cell)) return String(cell);
  if (typeof cell === "string" && cell.trim() !== "") return cell.trim();
  throw new InvalidInput(`${place} must be text; got ${describe(cell)}`);
}

/** Rows *(size, number of segments)*; a size may be listed and not laid. */
export function readSizedSegments(cell: Cell): LineLayout["tubing"] {
  return readPairs("tubing", cell, "two columns, size and number of segments")
    .map(([size, count], i) => ({
      size: readText(`tubing row ${i + 1} size`, size),
      segments: checked(
        `tubing row ${i + 1} number of segments`,
        count,
        wholeNumber(0, MOST_HEADS),
      ),
    }))
    .filter(({ segments }) => segments > 0);
}

/** Rows *(size, length)* from the hydrant on. */
export function readFeeder(u: Measures, cell: Cell): SizedLength[] {
  const columns = `two columns, size and length (${u.length.unit})`;
  return readPairs("feeder", cell, columns).map(([size, length], i) => ({
    size: readText(`feeder row ${i + 1} size`, size),
    length: u.length.readAt(`feeder row ${i + 1} length`, length, above(0)),
  }));
}

/** Enough digits for a length on a bill; the rest is what meters and back leave behind. */
const LENGTH_DIGITS = 12;

/** The bill as a sheet sees it: item, quantity, unit. */
export function spillMaterials(u: Measures, bill: readonly Material[], roll?: number): Spill {
  return spillTable(
    [{ header: "item" }, { header: "quantity" }, { header: "unit" }],
    bill.map((material) => {
      const item = itemOf(u, material, roll);
      if (material.part !== "tubing") return [item, material.quantity, "each"];
      if (roll !== undefined) return [item, material.quantity, "roll"];
      const length = u.length.give(material.quantity);
      return [item, Number(length.toPrecision(LENGTH_DIGITS)), u.length.unit];
    }),
  );
}

function itemOf(u: Measures, { part, sizes }: Material, roll?: number): string {
  if (part === "tubing") {
    const tubing = `tubing, ${sizes[0]}`;
    return roll === undefined
      ? tubing
      : `${tubing}, roll of ${rounded(u.length.give(roll))} ${u.length.unit}`;
  }
  if (part === "hydrant connection") return "hydrant connection with valve, gauge and screen";
  return sizes.length === 0 ? part : `${part}, ${sizes.join(" to ")}`;
}

/** A row of a bill that someone wants priced. */
interface BillRow {
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
}

/** Rows *(item, quantity, unit)*, the unit optional; a first row of headers and blank rows are passed over. */
export function readBill(cell: Cell): BillRow[] {
  const grid = rows(cell);
  const width = grid[0]?.length ?? 0;
  const columns = "two or three columns, item, quantity and unit";
  if (grid.every((row) => row.every(isBlankOrZero))) {
    throw new InvalidInput(`bill is missing: it must be ${columns}`);
  }
  if (width < 2 || width > 3) {
    throw new InvalidInput(`bill must be ${columns}; got ${describe(cell)}`);
  }
  const bill: BillRow[] = [];
  grid.forEach(([item, quantity, unit], i) => {
    if (i === 0 && isHeader(item, quantity, ["quantity", "qty"])) return;
    if (isBlankOrZero(item) && isBlankOrZero(quantity)) return;
    bill.push({
      item: readText(`bill row ${i + 1} item`, item),
      quantity: checked(`bill row ${i + 1} quantity`, quantity, atLeast(0)),
      unit: isBlankOrZero(unit) ? "" : readText(`bill row ${i + 1} unit`, unit),
    });
  });
  return bill;
}

/** Prices by item. A blank or 0 price is no price; letter case and spaces tell no items apart. */
export function readPrices(cell: Cell): ReadonlyMap<string, number> {
  const prices = new Map<string, number>();
  readPairs("prices", cell, "two columns, item and price").forEach(([item, price], i) => {
    if (i === 0 && isHeader(item, price, ["price", "unitprice"])) return;
    if (isBlankOrZero(item) && isBlankOrZero(price)) return;
    const name = readText(`prices row ${i + 1} item`, item);
    if (isBlankOrZero(price)) return;
    if (prices.has(keyOf(name))) throw new InvalidInput(`prices lists "${name}" twice`);
    prices.set(keyOf(name), checked(`prices row ${i + 1} price`, price, above(0)));
  });
  return prices;
}

/** Every row with its price; one without is no answer, by name. */
export function pricedLines(
  bill: readonly BillRow[],
  prices: ReadonlyMap<string, number>,
): PricedLine[] {
  const unpriced = bill.filter(({ item }) => !prices.has(keyOf(item)));
  if (unpriced.length > 0) {
    throw new NoAnswer(`no price for ${unpriced.map(({ item }) => `"${item}"`).join(", ")}`);
  }
  return bill.map(({ item, quantity }) => ({
    quantity,
    price: prices.get(keyOf(item)) as number,
  }));
}

export function spillQuote(
  bill: readonly BillRow[],
  lines: readonly PricedLine[],
  quote: Quote,
): Spill {
  const closing = (label: string, amount: number) => [label, "", "", "", amount];
  return spillTable(
    ["item", "quantity", "unit", "price", "amount"].map((header) => ({ header })),
    [
      ...bill.map(({ item, quantity, unit }, i) => [
        item,
        quantity,
        unit,
        lines[i].price,
        quote.amounts[i],
      ]),
      closing("subtotal", quote.subtotal),
      closing("markup", quote.markup),
      closing("tax", quote.tax),
      closing("total", quote.total),
    ],
  );
}

/** Not `spelling`, which takes hyphens and slashes out: 1-1/2 and 11/2 are two sizes. */
function keyOf(item: string): string {
  return item.trim().replace(/\s+/g, " ").toLowerCase();
}

function isBlankOrZero(cell: Cell): boolean {
  return isBlank(cell) || cell === 0;
}

function isHeader(item: Cell, number: Cell, words: readonly string[]): boolean {
  return (
    typeof number === "string" &&
    (words.includes(spelling(number)) || (typeof item === "string" && spelling(item) === "item"))
  );
}
