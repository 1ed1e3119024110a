import type { Field } from "./bluestem-flat";
import type { Block, PageBuilder } from "../kit/builder";

/**
 * The cells that describe the line, with their names. Every ready-made sheet that solves a line has
 * them, so that their formulas read alike: =IRRIG.LATERAL.FLOW(Inlet, Heads, Spacing, …).
 */
export const LINE =
  "Inlet, Heads, Spacing, Tubing, Chart, Units, Rise, Regulator, Friction, First, Riser";

/** The same without the inlet pressure, as LATERAL.INLET, FLUSH.PRESSURE and PUMP.LINES take it. */
export const LINE_WITHOUT_INLET = LINE.replace("Inlet, ", "");

export const INLET_FORMULA = `=IRRIG.LATERAL.INLET(Lowest, ${LINE_WITHOUT_INLET})`;

/** Heads for which the sheets keep room; the functions take up to 500. */
export const MOST_HEADS = 60;

const quantity = { low: 0, high: 100000 };

export function unitsInput(block: Block, field: Field): void {
  block.input("Units of this workbook", field.system, {
    name: "Units",
    allowed: { list: ["US", "SI"] },
    note: "US: ft, in, psi, gpm. SI: m, mm, kPa, m³/h. A change relabels the sheet; it converts no number that you typed.",
  });
}

/** The heads and what they stand on. */
export function lineInputs(block: Block, field: Field): void {
  block.heading("The line");
  block.input("Heads on the line", field.heads, {
    name: "Heads",
    allowed: { low: 1, high: MOST_HEADS, whole: true },
  });
  block.input("Segments in the larger tubing", field.largeSegments, {
    name: "Changeover",
    allowed: { low: 1, high: MOST_HEADS, whole: true },
    note: "From the inlet on; the rest is in the smaller. As many as heads: one size all the way.",
  });
  block.input("From head to head", field.spacing, {
    name: "Spacing",
    unit: "length",
    allowed: quantity,
  });
  block.input("From the inlet to head 1", undefined, {
    name: "First",
    unit: "length",
    allowed: quantity,
    note: "Blank: the same as from head to head.",
  });
  block.input("Last head above the inlet", 0, {
    name: "Rise",
    unit: "length",
    allowed: { low: -1000, high: 1000 },
    note: "Ground of the last head above that of the inlet, spread evenly. Negative: downhill.",
  });
  block.input("Nozzle above the tubing", field.riser, {
    name: "Riser",
    unit: "length",
    allowed: quantity,
  });
  block.input("Lowest pressure at a nozzle", field.lowestPressure, {
    name: "Lowest",
    unit: "pressure",
    allowed: quantity,
  });
  block.input("Regulator under each head", undefined, {
    name: "Regulator",
    unit: "pressure",
    allowed: quantity,
    note: "Set pressure. Blank: no regulators.",
  });
  block.input("Friction, Hazen–Williams C", field.friction, {
    name: "Friction",
    note: "150 is clean plastic pipe; 140 allows for saddles and joints. The text Darcy takes Darcy–Weisbach.",
  });
}

/** Tubing sizes and the sprinkler's chart, side by side. Names Tubing and Chart. */
export function tubingAndChart(page: PageBuilder, field: Field): void {
  const row = page.row;
  const first = row + 1;
  const second = row + 2;
  const size = { low: 10, high: 200 };
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
      { header: "SDR", role: "input", allowed: { low: 5, high: 50 }, rows: [field.sdr, field.sdr] },
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
  const [pressures, flows] = page.table(
    "I",
    [
      {
        header: "Sprinkler",
        unit: "pressure",
        role: "input",
        allowed: quantity,
        rows: field.chart.map(([pressure]) => pressure),
      },
      {
        header: "Flow",
        unit: "headFlow",
        role: "input",
        allowed: quantity,
        rows: field.chart.map(([, flow]) => flow),
      },
    ],
    row,
  );
  page.nameRange("Chart", `${pressures.split(":")[0]}:${flows.split(":")[1]}`);
}

function inside(row: number): string {
  return `=IRRIG.PIPE.INSIDE("ISO PE", C${row}, D${row}, Units)`;
}
