import { type PageBuilder } from "../kit/builder";
import { workbook, type PagePlan } from "../kit/workbook";
import { cellsOf, readRange, writeAddress } from "../kit/address";
import { bluestemFlat, type Field } from "../parts/bluestem-flat";
import { amount, pressure, price, sdr, size } from "../parts/limits";
import {
  basePage,
  DEALER_QUESTION,
  GROWER_ANSWER,
  GROWER_QUESTION,
  OFFICER_ANSWER,
  OFFICER_QUESTION,
} from "../parts/line-blocks";
import { namesPage } from "../parts/names";
import { heads } from "./heads";

/** Two grids side by side, five columns each beside their first. */
const COLUMNS = [13, 12, 12, 12, 12, 12, 4, 13, 12, 12, 12, 12, 12];
const STEPS = 5;

export const spacingWhatIf = workbook({
  ...heads.spacingWhatIf,
  subjects: ["pressure", "overhead wires", "roads and buildings"],
  answers: [
    [
      DEALER_QUESTION,
      '="At "&Spacing&" by "&Move&" "&IF(Units="SI", "m", "ft")&": "&Heads&" sprinklers on each of "&Lines&IF(Lines=1, " line", " lines")&". Of "&COUNTA(SpacingMarks)&" choices below, "&COUNTIF(SpacingMarks, "OK")&" pass"&IF(COUNTIF(SpacingMarks, "OK")=0, ".", "; the cheapest of these costs "&FIXED(CheapestOK, 0)&" "&Currency&".")',
    ],
    [OFFICER_QUESTION, OFFICER_ANSWER],
    [GROWER_QUESTION, GROWER_ANSWER],
  ],
  field: bluestemFlat,
  pages: (field) => [
    spacingPage(field),
    pressurePage(field),
    basePage(
      field,
      "Base",
      "The two what-if pages start from these cells: change them here, and both grids move.",
    ),
    namesPage(field.system),
  ],
});

function steps(first: string, step: string): string[] {
  return Array.from({ length: STEPS }, (_, i) =>
    i === 0 ? `=${first}` : `=${first}+${i}*${step}`,
  );
}

function cellIn(range: string, r: number, c: number): string {
  const { row, column } = readRange(range);
  return writeAddress({ row: row + r, column: column + c });
}

function spacingPage(field: Field): PagePlan {
  return {
    name: "Spacing",
    title: "What if: sprinkler spacing by move",
    purpose:
      "One size of tubing, the larger of the page Base, all the way, on Base's slope; the inlet pressure such that the lowest nozzle gets what Base asks. A mark says what fails: soil, rate above what it takes; too wide for the wind; varies, pressure beyond the limit; too fast, water above the velocity; high, a nozzle above the chart; set too long for the working day.",
    widths: COLUMNS,
    landscape: true,
    onePage: true,
    write: (page) => spacings(page, field),
  };
}

function spacings(page: PageBuilder, field: Field): void {
  const given = page.block("A");
  given.heading("Choices");
  for (const [label, value, name] of [
    ["Smallest spacing", field.whatIf.spacing, "LeastSpacing"],
    ["Spacing step", field.whatIf.step, "SpacingStep"],
    ["Smallest move", field.whatIf.move, "LeastMove"],
    ["Move step", field.whatIf.step, "MoveStep"],
  ] as const) {
    given.input(label, value, { name, unit: "length", allowed: amount(1, 500) });
  }
  const money = page.block("H");
  money.heading("Prices");
  money.input("Days to cover the field", field.days, {
    name: "RotationDays",
    allowed: { low: 1, high: 60, whole: true },
  });
  money.input("A sprinkler with saddle and stand", field.price.headSet, {
    name: "HeadSetPrice",
    format: "0.00",
    allowed: price,
  });
  money.input("Tubing, price per", field.price.large, {
    name: "TubingPrice",
    unit: "length",
    format: "0.00",
    allowed: price,
  });
  page.below(given, money);

  const top = page.row;
  const row = (i: number) => top + 1 + i;
  const rows = Array.from({ length: STEPS }, (_, i) => i);
  const line = (i: number) =>
    `B${row(i)}, A${row(i)}, INDEX(Insides, 1), Chart, Units, Rise*(B${row(i)}*A${row(i)})/LineLength, Regulator, Friction, , Riser`;
  const found = (i: number, n: number) =>
    `INDEX(IRRIG.LATERAL.SUMMARY(C${row(i)}, ${line(i)}), ${n}, 2)`;
  const [wide, heads, , flows, , alone] = page.table("A", [
    {
      header: "Spacing",
      unit: "length",
      role: "result",
      rows: steps("LeastSpacing", "SpacingStep"),
    },
    {
      header: "Sprinklers",
      role: "result",
      format: "0",
      rows: rows.map((i) => `=IRRIG.LATERAL.HEADS(LineLength, A${row(i)})`),
    },
    {
      header: "Inlet",
      unit: "pressure",
      role: "result",
      rows: rows.map((i) => `=IRRIG.LATERAL.INLET(Lowest, ${line(i)})`),
    },
    {
      header: "Sprinkler flow",
      unit: "headFlow",
      role: "result",
      rows: rows.map((i) => `=IRRIG.LATERAL.FLOW(C${row(i)}, ${line(i)})/B${row(i)}`),
    },
    {
      header: "Varies by",
      role: "result",
      format: "0.0%",
      rows: rows.map((i) => `=IRRIG.LATERAL.VARIATION(C${row(i)}, ${line(i)})`),
    },
    {
      header: "Line alone",
      role: "mark",
      rows: rows.map(
        (i) =>
          `=IF(E${row(i)}>Limit, "varies", IF(${found(i, 10)}>GreatestSpeed, "too fast", IF(${found(i, 4)}>MAX(INDEX(Chart, 0, 1)), "high", "OK")))`,
      ),
    },
  ]);
  const [moves] = page.table(
    "H",
    [{ header: "Move", unit: "length", role: "result", rows: steps("LeastMove", "MoveStep") }],
    top,
  );
  page.needsLines(top, 2);
  page.gap();

  const down = cellsOf(wide);
  const across = cellsOf(moves);
  const headsAt = cellsOf(heads);
  const aloneAt = cellsOf(alone);
  const flowAt = cellsOf(flows);
  const formats = { downFormat: { format: "0" }, acrossFormat: { format: "0" } };
  const rate = (r: number, c: number) =>
    `IRRIG.APPLICATION.RATE(${flowAt[r]}, ${down[r]}, ${across[c]}, Units)`;
  const hours = (r: number, c: number) => `IRRIG.SET.TIME(NetDepth, ${rate(r, c)}, Efficiency)`;
  const lines = (r: number, c: number) =>
    `IRRIG.SYSTEM.LINES(IRRIG.SET.POSITIONS(Positions*Move, ${across[c]}), IRRIG.SET.PERDAY(${hours(r, c)}, MoveHours, DayHours), RotationDays)`;

  page.heading("Marks and rate");
  const firstRow = page.row;
  const marks = page.grid("A", "Mark", down, across, {
    role: "mark",
    ...formats,
    formula: (r, c) =>
      `=IF(IRRIG.CHECK.RATE(${rate(r, c)}, Intake)<>"OK", "soil", IF(IRRIG.CHECK.SPACING(${down[r]}, ${across[c]}, Wetted, Wind, Units)<>"OK", "too wide", IF(${aloneAt[r]}<>"OK", ${aloneAt[r]}, IF(${hours(r, c)}+MoveHours>DayHours, "set too long", "OK"))))`,
  });
  page.nameRange("SpacingMarks", marks);
  page.row = firstRow;
  const rates = page.grid("H", "Rate", down, across, {
    role: "result",
    format: page.formatOf("rate") ?? "0.00",
    ...formats,
    formula: (r, c) => `=${rate(r, c)}`,
  });
  page.gap();
  page.heading("Set time in hours, and lines needed");
  const secondRow = page.row;
  const times = page.grid("A", "Set time", down, across, {
    role: "result",
    format: "0.0",
    ...formats,
    formula: (r, c) => `=${hours(r, c)}`,
  });
  page.row = secondRow;
  const needed = page.grid("H", "Lines", down, across, {
    role: "result",
    format: "0",
    ...formats,
    formula: (r, c) => `=IF(${hours(r, c)}+MoveHours>DayHours, "none", ${lines(r, c)})`,
  });
  page.gap();
  page.heading("Cost of the lines: sprinklers and tubing");
  const thirdRow = page.row;
  const costs = page.grid("A", "Cost", down, across, {
    role: "result",
    format: "#,##0",
    money: true,
    ...formats,
    formula: (r, c) => {
      const lineCount = cellIn(needed, r, c);
      return `=IF(ISNUMBER(${lineCount}), ${lineCount}*(${headsAt[r]}*HeadSetPrice+LineLength*TubingPrice), "none")`;
    },
  });
  page.nameRange("SpacingCosts", costs);
  const below = page.row;
  page.row = thirdRow;
  const cheapest = page.block("H");
  cheapest.result(
    "Cheapest that passes",
    '=IF(COUNTIF(SpacingMarks, "OK")=0, "none passes", MINIFS(SpacingCosts, SpacingMarks, "OK"))',
    {
      name: "CheapestOK",
      format: "#,##0",
      money: true,
    },
  );
  cheapest.unitOfLast("=Currency");
  page.row = below;
  for (const range of [rates, times, needed, costs]) page.mark(range, marks);
  page.gap();
  page.safety("pressure", "overhead wires", "roads and buildings");
}

/** Columns of the second what-if: three sizes for the whole line, and the line as Base lays it out. */
const SIZES = 3;

function pressurePage(field: Field): PagePlan {
  return {
    name: "Pressure",
    title: "What if: inlet pressure by tubing",
    purpose:
      "The line of the page Base with its sprinklers and spacing, in one size all the way or as laid out there. A mark says what fails: low pressure, a nozzle below what is wanted or below the chart; high, a nozzle above the chart; varies, pressure beyond the limit; too fast, water above the velocity.",
    widths: COLUMNS,
    landscape: true,
    onePage: true,
    write: (page) => pressures(page, field),
  };
}

function pressures(page: PageBuilder, field: Field): void {
  const given = page.block("A");
  given.heading("Choices");
  given.input("Lowest inlet pressure", field.whatIf.pressure, {
    name: "LeastInlet",
    unit: "pressure",
    allowed: pressure,
  });
  given.input("Pressure step", field.whatIf.pressureStep, {
    name: "InletStep",
    unit: "pressure",
    allowed: pressure,
  });
  page.below(given);
  const top = page.row;
  const [inlets] = page.table("A", [
    { header: "Inlet", unit: "pressure", role: "result", rows: steps("LeastInlet", "InletStep") },
  ]);
  const rows = Array.from({ length: SIZES }, (_, i) => top + 1 + i);
  const [sizes, , bores, prices] = page.table(
    "H",
    [
      {
        header: "Size (mm)",
        role: "input",
        allowed: size,
        rows: [field.largeTubing, field.smallTubing, field.smallestTubing],
      },
      { header: "SDR", role: "input", allowed: sdr, rows: rows.map(() => field.sdr) },
      {
        header: "Inside",
        unit: "diameter",
        role: "result",
        rows: rows.map((at) => `=IRRIG.PIPE.INSIDE("ISO PE", H${at}, I${at}, Units)`),
      },
      {
        header: "Price per",
        unit: "length",
        role: "input",
        format: "0.00",
        allowed: price,
        rows: [field.price.large, field.price.small, field.price.smallest],
      },
    ],
    top,
  );
  page.needsLines(top, 2);
  const laidOut = cellIn(sizes, SIZES, 0);
  page.put(8, readRange(laidOut).row + 1, { role: "label", value: "As on Base" });
  page.row = Math.max(page.row, top + STEPS + 1);
  page.gap();

  const down = cellsOf(inlets);
  const across = [...cellsOf(sizes), laidOut];
  const bore = (c: number) => (c < SIZES ? cellsOf(bores)[c] : "Tubing");
  const line = (r: number, c: number) =>
    `${down[r]}, Heads, Spacing, ${bore(c)}, Chart, Units, Rise, Regulator, Friction, First, Riser`;
  const found = (r: number, c: number, row: number) =>
    `INDEX(IRRIG.LATERAL.SUMMARY(${line(r, c)}), ${row}, 2)`;
  const formats = { downFormat: { format: "0" }, acrossFormat: { format: "0" } };

  page.heading("Marks and lowest pressure");
  const firstRow = page.row;
  const marks = page.grid("A", "Mark", down, across, {
    role: "mark",
    ...formats,
    formula: (r, c) =>
      `=IF(${found(r, c, 2)}<MAX(Lowest, MIN(INDEX(Chart, 0, 1))), "low pressure", IF(${found(r, c, 4)}>MAX(INDEX(Chart, 0, 1)), "high", IF(${found(r, c, 7)}>Limit, "varies", IF(${found(r, c, 10)}>GreatestSpeed, "too fast", "OK"))))`,
  });
  page.row = firstRow;
  const lowest = page.grid("H", "Lowest", down, across, {
    role: "result",
    format: page.formatOf("pressure") ?? "0",
    ...formats,
    formula: (r, c) => `=${found(r, c, 2)}`,
  });
  page.gap();
  page.heading("Rate, and set time in hours");
  const secondRow = page.row;
  const rate = (r: number, c: number) =>
    `IRRIG.APPLICATION.RATE(IRRIG.LATERAL.FLOW(${line(r, c)})/Heads, Spacing, Move, Units)`;
  const rates = page.grid("A", "Rate", down, across, {
    role: "result",
    format: page.formatOf("rate") ?? "0.00",
    ...formats,
    formula: (r, c) => `=${rate(r, c)}`,
  });
  page.row = secondRow;
  const times = page.grid("H", "Set time", down, across, {
    role: "result",
    format: "0.0",
    ...formats,
    formula: (r, c) => `=IRRIG.SET.TIME(NetDepth, ${cellIn(rates, r, c)}, Efficiency)`,
  });
  page.gap();
  page.heading("Cost of a line's tubing, and how much its pressure varies");
  const thirdRow = page.row;
  const priceOf = (size: string) => `INDEX(${prices}, MATCH(${size}, ${sizes}, 0))`;
  const costs = page.grid("A", "Cost", down, across, {
    role: "result",
    format: "#,##0",
    money: true,
    ...formats,
    formula: (_, c) =>
      c < SIZES
        ? `=LineLength*${cellsOf(prices)[c]}`
        : `=INDEX(Lengths, 1)*${priceOf("INDEX(Sizes, 1)")}+IF(INDEX(Lengths, 2)>0, INDEX(Lengths, 2)*${priceOf("INDEX(Sizes, 2)")}, 0)`,
  });
  page.row = thirdRow;
  const varies = page.grid("H", "Varies by", down, across, {
    role: "result",
    format: "0.0%",
    ...formats,
    formula: (r, c) => `=${found(r, c, 7)}`,
  });
  for (const range of [lowest, rates, times, costs, varies]) page.mark(range, marks);
  page.gap();
  page.safety("pressure");
}
