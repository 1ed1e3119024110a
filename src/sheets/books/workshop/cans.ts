import { amount } from "../../parts/limits";
import { catchSamples } from "../../parts/catch-samples";
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

function write(page: PageBuilder, field: Field): void {
  const test = catchSamples(field.system);
  page.heading("Caught (mL), between four sprinklers; blank: the can was knocked over");
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
  found.worked("Cans that count", "=SUMPRODUCT(ISNUMBER(Cans)*1)", {
    name: "CanCount",
    format: "0",
  });
  found.worked("Average depth", "=IRRIG.APPLICATION.CATCH(AVERAGE(Cans), CanOpening, Units)", {
    name: "MeanDepth",
    unit: "depth",
  });
  found.worked("Rate", "=MeanDepth/TestHours", { name: "CanRate", unit: "rate" });
  found.gap();
  found.heading("Distribution uniformity: the driest quarter over the average");
  found.worked(
    "By hand, the driest four",
    "=(SMALL(Cans, 1)+SMALL(Cans, 2)+SMALL(Cans, 3)+SMALL(Cans, 4))/4/AVERAGE(Cans)",
    { format: "0.000" },
  );
  found.worked("By function", "=IRRIG.APPLICATION.DU(Cans)", { name: "CanDU", format: "0.000" });
  found.gap();
  found.heading("Christiansen's uniformity: one less the mean departure");
  found.worked("By hand", "=1-SUMPRODUCT(ISNUMBER(Cans)*ABS(Cans-AVERAGE(Cans)))/SUM(Cans)", {
    format: "0.000",
  });
  found.worked("By function", "=IRRIG.APPLICATION.CU(Cans)", { name: "CanCU", format: "0.000" });
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
      header: "Caught (mL)",
      role: "input",
      allowed: amount(0, 10000),
      rows: test.row,
    },
    {
      header: "Depth",
      unit: "depth",
      role: "result",
      rows: rows.map((at) => `=IRRIG.APPLICATION.CATCH(B${at}, CanOpening, Units)`),
    },
  ]);
  const last = across + test.row.length;
  page.nameRange("Across", `C${across + 1}:C${last}`);
  page.needsLines(across, 2);
  const after = page.row;
  page.row = across;
  const steps = page.block("E", CAN_LABELS);
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
  const between = page.put(5, page.row, { role: "label", value: "Between two positions" });
  page.row++;
  page.spill("E", "=IRRIG.APPLICATION.FOLD(Across, FoldStep, FoldMove)", {
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
    series: [{ range: `C${rows[0]}:C${last}`, titleAt: `C${across}` }],
    place: { from: `A${page.row + 1}`, to: `F${page.row + 13}` },
    description: "Depth in each can across one line; the numbers stand in the table above.",
  });
  page.row += 14;
}
