import { amount } from "../../parts/limits";
import { catchSamples } from "../../parts/catch-samples";
import { writeAddress } from "../../kit/address";
import type { Field } from "../../parts/bluestem-flat";
import type { PageBuilder } from "../../kit/builder";
import type { Lesson } from "./lesson";

/** Like columns for the cans' grid; a label takes three of them. */
const CAN_COLUMNS = new Array<number>(10).fill(14);
const CAN_LABELS = 3;

export const cans: Lesson = {
  id: "cans",
  longer: true,
  widths: CAN_COLUMNS,
  labelColumns: CAN_LABELS,
  answer: { formula: "CanDU" },
  write,
};

/** A catch as depth: poured out in mL, or read with a ruler where the sides are straight. */
const depthOf = (caught: string) =>
  `IF(CanReading="mL", IRRIG.APPLICATION.CATCH(${caught}, CanOpening, Units), IRRIG.UNIT.CONVERT(${caught}, CanReading, IF(Units="SI", "mm", "in")))`;

/**
 * Some hosts hand a blank cell over as 0, which would be a dry can and not a missing one. Where a host
 * works out one cell of a range at a time, INDEX has it work out all.
 */
const THERE = 'INDEX(IF(ISNUMBER(Cans), Cans, ""), 0, 0)';

function write(page: PageBuilder, field: Field): void {
  const test = catchSamples(field.system);
  page.heading("Caught, between four sprinklers; blank: the can was knocked over");
  const corner = (row: number, column: number) =>
    page.put(column, row, { role: "label", value: "◎ sprinkler" });
  const top = page.row + 1;
  corner(page.row, 1);
  corner(page.row, 6);
  page.row = top;
  page.plain(
    2,
    test.block.map((row, r) =>
      row.map((caught, c) => ({
        role: "input",
        value: caught,
        label: `Can ${row.length * r + c + 1}`,
        allowed: { ...amount(0, 10000), optional: true },
      })),
    ),
  );
  corner(top + 4, 1);
  corner(top + 4, 6);
  page.nameRange("Cans", `B${top}:E${top + 3}`);
  page.row = top + 6;
  const found = page.block("A", CAN_LABELS);
  found.input("Cans read in mL, or by ruler in", "mL", {
    name: "CanReading",
    allowed: { list: ["mL", "in", "mm"] },
    note: "A ruler gives the depth only in cans with straight sides.",
  });
  found.input("Opening of a can", test.opening, {
    name: "CanOpening",
    unit: "diameter",
    allowed: amount(0.1, 1000),
  });
  found.input("The set ran", test.hours, {
    name: "TestHours",
    unit: { word: "hours" },
    allowed: amount(0.01, 48),
  });
  const all = test.block.flat().length;
  const missing = test.block.flatMap((row, r) =>
    row.map(
      (_, c) =>
        `IF(ISNUMBER(${writeAddress({ row: top + r - 1, column: c + 1 })}), "", "; row ${r + 1}, column ${c + 1}")`,
    ),
  );
  const leftOut = found.sentence(
    "Left out",
    `=IF(CanCount=${all}, "No can: all ${all} count.", "Blank, and so left out: "&MID(${missing.join("&")}, 3, 999)&".")`,
    CAN_COLUMNS.length - CAN_LABELS - 2,
  );
  page.nameRange("CansLeftOut", leftOut);
  found.worked("Cans that count", "=SUMPRODUCT(ISNUMBER(Cans)*1)", {
    name: "CanCount",
    format: "0",
  });
  found.worked("Average depth", `=${depthOf("AVERAGE(Cans)")}`, {
    name: "MeanDepth",
    unit: "depth",
  });
  found.worked("Rate", "=MeanDepth/TestHours", { name: "CanRate", unit: "rate" });
  found.gap();
  found.heading("Distribution uniformity: the driest quarter over the average");
  found.worked(
    "By hand, the driest four",
    // Of fewer cans a quarter cuts one in two, which is the function's work.
    `=IF(CanCount=${all}, (SMALL(Cans, 1)+SMALL(Cans, 2)+SMALL(Cans, 3)+SMALL(Cans, 4))/4/AVERAGE(Cans), "see below")`,
    { format: "0.000" },
  );
  found.worked("By function", `=IRRIG.APPLICATION.DU(${THERE})`, {
    name: "CanDU",
    format: "0.000",
  });
  found.gap();
  found.heading("Christiansen's uniformity: one less the mean departure");
  found.worked("By hand", "=1-SUMPRODUCT(ISNUMBER(Cans)*ABS(Cans-AVERAGE(Cans)))/SUM(Cans)", {
    format: "0.000",
  });
  found.worked("By function", `=IRRIG.APPLICATION.CU(${THERE})`, {
    name: "CanCU",
    format: "0.000",
  });
  found.worked("The plan on the page Base counts on", "=SpotCU", { format: "0.000" });
  page.below(found);

  page.breakPage();
  page.heading("One line's catch across it, laid over that of the next position");
  const across = page.row;
  const middle = (test.row.length - 1) / 2;
  const rows = test.row.map((_, i) => across + 1 + i);
  page.table("A", [
    {
      header: "From the line",
      unit: "length",
      role: "result",
      rows: test.row.map((_, i) => `=${i - middle}*FoldStep`),
    },
    {
      header: "Caught, as above; blank: knocked over",
      role: "input",
      allowed: { ...amount(0, 10000), optional: true },
      rows: test.row,
    },
    {
      header: "Counts as",
      role: "result",
      format: "0.0",
      // The place of a can in the middle takes the mean of its neighbors; an end has to be there.
      rows: rows.map((at, i) =>
        i === 0 || i === rows.length - 1
          ? `=IF(B${at}="", "missing", B${at})`
          : `=IF(B${at}="", IF(COUNT(B${at - 1}, B${at + 1})=2, (B${at - 1}+B${at + 1})/2, "missing"), B${at})`,
      ),
    },
    {
      header: "Depth",
      unit: "depth",
      role: "result",
      rows: rows.map((at) => `=${depthOf(`C${at}`)}`),
    },
  ]);
  const last = across + test.row.length;
  page.nameRange("RowCans", `B${across + 1}:B${last}`);
  page.nameRange("Across", `D${across + 1}:D${last}`);
  page.needsLines(across, 3);
  const after = page.row;
  page.row = across;
  const steps = page.block("F", CAN_LABELS);
  steps.input("One step is", test.step, {
    name: "FoldStep",
    unit: "length",
    allowed: amount(0.1, 100),
  });
  steps.input("The line moves", field.move, {
    name: "FoldMove",
    unit: "length",
    allowed: amount(0.1, 1000),
    note: "A whole number of steps.",
  });
  steps.result(
    "Uniformity of the overlap",
    "=IRRIG.APPLICATION.CU(IRRIG.APPLICATION.FOLD(Across, FoldStep, FoldMove))",
    { format: "0.000" },
  );
  page.row = steps.row + 1;
  const between = page.put(6, page.row, { role: "label", value: "Between two positions" });
  page.row++;
  page.spill("F", "=IRRIG.APPLICATION.FOLD(Across, FoldStep, FoldMove)", {
    rows: Math.round(field.move / test.step),
    headed: false,
    headers: [between],
    reserved: 12,
    columns: ["depth"],
    name: "FoldFirst",
  });
  page.row = Math.max(after, page.row);
  page.chart({
    title: "The line of cans",
    x: { range: `A${rows[0]}:A${last}`, title: "From the line" },
    yTitle: "Depth",
    series: [{ range: `D${rows[0]}:D${last}`, titleAt: `D${across}` }],
    place: { from: `A${page.row + 1}`, to: `F${page.row + 13}` },
    description: "Depth in each can across one line; the numbers stand in the table above.",
  });
  page.row += 14;
}
