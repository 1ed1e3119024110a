import type { Block, PageBuilder } from "../kit/builder";
import type { Allowed } from "../kit/definition";
import type { Field } from "./bluestem-flat";
import { amount, height, optional, pressure, size, sdr } from "./limits";

/**
 * The cells that describe the line, with their names. Every ready-made sheet that solves a line has
 * them, so that their formulas read alike: =IRRIG.LATERAL.FLOW(Inlet, Heads, Spacing, …).
 */
export const LINE =
  "Inlet, Heads, Spacing, Tubing, Chart, Units, Rise, Regulator, Friction, First, Riser";

/** The same without the inlet pressure, as LATERAL.INLET, FLUSH.PRESSURE and PUMP.LINES take it. */
export const LINE_WITHOUT_INLET = LINE.replace("Inlet, ", "");

/** Heads for which the sheets keep room; the functions take up to 500. */
export const MOST_HEADS = 60;

const wholeHeads = { low: 1, high: MOST_HEADS, whole: true } as const;

export function workbookInputs(block: Block, field: Field): void {
  block.heading("This workbook");
  block.input("Units of this workbook", field.system, {
    name: "Units",
    allowed: { list: ["US", "SI"] },
    note: "US: ft, in, psi, gpm. SI: m, mm, kPa, m³/h. A change relabels the sheet; it converts no number that you typed.",
  });
  block.input("Name of the field", "Bluestem Flat", { name: "FieldName", allowed: { text: true } });
  block.input("Currency", field.currency, {
    name: "Currency",
    allowed: { text: true },
    note: "Stands behind every amount of money. A change relabels; it converts no price.",
  });
}

/** The sprinklers and what they stand on. */
export function lineInputs(block: Block, field: Field): void {
  block.heading("The line");
  block.input("Sprinklers on the line", field.heads, { name: "Heads", allowed: wholeHeads });
  block.input("Segments in the larger tubing", field.largeSegments, {
    name: "Changeover",
    allowed: { ...wholeHeads, atMost: { name: "Heads", words: "the number of sprinklers" } },
    note: "From the inlet on; the rest is in the smaller. As many as sprinklers: one size all the way.",
  });
  block.input("Sprinkler spacing", field.spacing, {
    name: "Spacing",
    unit: "length",
    allowed: amount(1, 500),
  });
  block.input("Inlet to sprinkler 1", undefined, {
    name: "First",
    unit: "length",
    allowed: optional(amount(0, 1000)),
    note: "Blank: the same as the sprinkler spacing.",
  });
  block.input("Rise, inlet to last sprinkler", 0, {
    name: "Rise",
    unit: "length",
    allowed: height,
    note: "Ground at the last sprinkler above that at the inlet, spread evenly. Negative: downhill.",
  });
  block.input("Nozzle above the tubing", field.riser, {
    name: "Riser",
    unit: "length",
    allowed: amount(0, 30),
  });
  block.input("Lowest pressure wanted at a nozzle", field.lowestPressure, {
    name: "Lowest",
    unit: "pressure",
    allowed: pressure,
  });
  block.input("Regulator under each sprinkler", undefined, {
    name: "Regulator",
    unit: "pressure",
    allowed: optional(pressure),
    note: "Set pressure. Blank: no regulators.",
  });
  block.input("Friction, Hazen–Williams C", field.friction, {
    name: "Friction",
    allowed: { low: 50, high: 200, orText: "Darcy" },
    note: "150 is clean plastic pipe; 140 allows for saddles and joints. The text Darcy takes Darcy–Weisbach.",
  });
  block.input("Pressure may vary by", 0.2, {
    name: "Limit",
    allowed: { low: 0.01, high: 0.5 },
    note: "Fraction of the average: 0.2 is the practice standard's 20%.",
  });
  block.input("Highest velocity of the water", field.greatestSpeed, {
    name: "GreatestSpeed",
    unit: "speed",
    allowed: amount(0.1, 30),
  });
  block.input("Material of tubing and pipe", "PE100", {
    name: "Material",
    allowed: { list: ["PE100", "PE80", "PE4710", "PE3608", "PE2708"] },
    note: "As printed on the tubing and the pipe; where they differ, the weaker.",
  });
}

/** Tubing sizes and the sprinkler's chart, side by side. Names Tubing and Chart. */
export function tubingAndChart(page: PageBuilder, field: Field): void {
  const row = page.row;
  const first = row + 1;
  const second = row + 2;
  const [, , , bores, segments, lengths] = page.table(
    "A",
    [
      // Two columns wide, so size stands in C, SDR in D, inside in E, segments in F, length in G.
      {
        header: "Tubing",
        role: "label",
        span: 2,
        rows: ["From the inlet", "After the changeover"],
      },
      {
        header: "Size (mm)",
        role: "input",
        allowed: size,
        rows: [field.largeTubing, field.smallTubing],
      },
      { header: "SDR", role: "input", allowed: sdr, rows: [field.sdr, field.sdr] },
      {
        header: "Inside",
        unit: "diameter",
        role: "result",
        rows: [inside(first), `=IF(F${second}="", "", ${inside(second).slice(1)})`],
      },
      {
        header: "Segments",
        role: "result",
        rows: [`=MIN(Changeover, Heads)`, `=IF(Heads>F${first}, Heads-F${first}, "")`],
      },
      {
        header: "Length",
        unit: "length",
        role: "result",
        rows: [
          `=F${first}*Spacing+IF(First>0, First-Spacing, 0)`,
          `=IF(F${second}="", 0, F${second}*Spacing)`,
        ],
      },
    ],
    row,
  );
  page.nameRange("Tubing", `${bores.split(":")[0]}:${segments.split(":")[1]}`);
  page.nameRange("Sizes", `C${first}:C${second}`);
  page.nameRange("SDRs", `D${first}:D${second}`);
  page.nameRange("Insides", bores);
  page.nameRange("Lengths", lengths);
  const chart: Allowed = amount(0.001, 100000);
  const [pressures, flows] = page.table(
    "I",
    [
      {
        header: "Sprinkler chart, pressure",
        unit: "pressure",
        role: "input",
        allowed: chart,
        rows: field.chart.map(([at]) => at),
      },
      {
        header: "Sprinkler chart, flow",
        unit: "headFlow",
        role: "input",
        allowed: chart,
        rows: field.chart.map(([, flow]) => flow),
      },
    ],
    row,
  );
  page.needsLines(row, 3);
  page.nameRange("Chart", `${pressures.split(":")[0]}:${flows.split(":")[1]}`);
}

function inside(row: number): string {
  return `=IRRIG.PIPE.INSIDE("ISO PE", C${row}, D${row}, Units)`;
}
