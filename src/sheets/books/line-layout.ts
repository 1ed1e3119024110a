import { type PageBuilder, unitText } from "../kit/builder";
import { workbook, type PagePlan } from "../kit/workbook";
import { bluestemFlat, type Field } from "../parts/bluestem-flat";
import {
  amount,
  degrees,
  length,
  optional,
  pressure,
  price,
  sdr,
  size,
  temperature,
} from "../parts/limits";
import {
  COLUMNS,
  DEALER_QUESTION,
  GROWER_ANSWER,
  GROWER_QUESTION,
  lineBlocks,
  OFFICER_ANSWER,
  OFFICER_QUESTION,
  readingInputs,
} from "../parts/line-blocks";
import { LINE, MOST_HEADS } from "../parts/line-inputs";
import { namesPage } from "../parts/names";
import { SENTENCE_COLUMNS } from "../parts/sentences";
import { heads } from "./heads";

export const lineLayout = workbook({
  ...heads.lineLayout,
  subjects: ["pressure", "overhead wires", "roads and buildings", "backflow", "buried lines"],
  answers: [
    [
      DEALER_QUESTION,
      '=Heads&" sprinklers on each of "&Lines&IF(Lines=1, " line. ", " lines. ")&Rolls&". Tubing in all: "&FIXED(TubingTotal, 2)&" "&Currency&"; the workbook Quote adds the rest."',
    ],
    [OFFICER_QUESTION, OFFICER_ANSWER],
    [GROWER_QUESTION, GROWER_ANSWER],
  ],
  field: bluestemFlat,
  pages: (field) => [linePage(field), tubingPage(field), stakePage(field), namesPage(field.system)],
});

function linePage(field: Field): PagePlan {
  return {
    name: "Line",
    title: { text: "Line layout", formula: '="Line layout: "&FieldName' },
    purpose:
      "Change the shaded cells; everything else follows. The field is invented, and so are its prices.",
    widths: COLUMNS,
    landscape: true,
    write(page) {
      lineBlocks(page, field);

      page.heading("Gauge at the far end");
      const reading = page.block("A");
      readingInputs(reading);
      const gauge = page.block("G");
      gauge.result("Difference from plan", '=IF(FarReading="", "", FarReading-FarPressure)', {
        name: "FarDifference",
        unit: "pressure",
      });
      page.below(reading, gauge);
      page.row--;
      const sentence = page.block("A");
      sentence.sentence("What the readings point to", GAUGE_SENTENCE, SENTENCE_COLUMNS);
      page.below(sentence);
      page.safety("pressure", "overhead wires", "roads and buildings", "backflow");
      page.gap();

      page.breakPage();
      everySprinkler(page, field);
    },
  };
}

function everySprinkler(page: PageBuilder, field: Field): void {
  page.heading("Every sprinkler");
  const picture = page.row;
  page.gap(16);
  const top = page.row;
  page.spill("A", `=IRRIG.LATERAL.PROFILE(${LINE})`, {
    rows: field.heads + 1,
    reserved: MOST_HEADS + 1,
    headerLines: 3,
    columns: [
      { format: "0" },
      "length",
      { format: "0.0" },
      "diameter",
      "pressure",
      "pressure",
      "headFlow",
      "flow",
      "speed",
      { format: field.system === "US" ? "0.00" : "0.0" },
      { format: "General" },
    ],
  });
  const column = (letter: string) => `${letter}${top + 1}:${letter}${top + MOST_HEADS}`;
  const distance = { range: column("B"), title: "Distance from the inlet" };
  page.chart({
    title: "Pressure along the line",
    x: distance,
    yTitle: "Pressure",
    series: [
      { range: column("E"), titleAt: `E${top}` },
      { range: column("F"), titleAt: `F${top}` },
    ],
    place: { from: `A${picture}`, to: `E${picture + 14}` },
    description:
      "Pressure in the tubing and at the nozzle against distance from the inlet; the numbers stand in the table below.",
  });
  page.chart({
    title: "Flow of each sprinkler",
    x: distance,
    yTitle: "Flow",
    series: [{ range: column("G"), titleAt: `G${top}` }],
    place: { from: `G${picture}`, to: `K${picture + 14}` },
    description:
      "Flow of each sprinkler against distance from the inlet; the numbers stand in the table below.",
  });
}

const PRESSURE_UNIT = unitText("pressure");

/** What two gauges that differ from the plan point to. */
const GAUGE_SENTENCE =
  '=IF(OR(InletReading="", FarReading=""), "Type what the two gauges read, the line running and full.", ' +
  `IF(ABS(InletReading-Inlet)>0.05*Inlet, "The inlet has "&FIXED(ABS(InletReading-Inlet), 1)&" "&${PRESSURE_UNIT}&IF(InletReading<Inlet, " less", " more")&" than planned: set the valve first, then read the far gauge again.", ` +
  'IF(ABS(FarDifference)<=0.03*FarPressure, "The line runs as planned.", IF(FarDifference<0, ' +
  '"Lower than planned: look for a leak, a kink, a plugged screen or tubing, or worn nozzles that take more than the chart says.", ' +
  '"Higher than planned: look for plugged nozzles or sprinklers that are shut or missing, then test the gauge."))))';

function tubingPage(field: Field): PagePlan {
  return {
    name: "Tubing",
    title: "Tubing: where to change over, how many rolls, what it costs",
    purpose:
      "The least-cost choice of sizes within the limits of the page Line, and the rolls for the sizes that you settled on there.",
    widths: COLUMNS,
    landscape: true,
    write: (page) => tubing(page, field),
  };
}

function tubing(page: PageBuilder, field: Field): void {
  page.heading("Sizes to choose from");
  const first = page.row + 1;
  const sizes = [field.largeTubing, field.smallTubing, field.smallestTubing];
  const prices = [field.price.large, field.price.small, field.price.smallest];
  const rowsOf = (formula: (row: number) => string) => sizes.map((_, i) => formula(first + i));
  // Every limit of the line counts: a size that keeps the variation may still be too fast or too low.
  const most = (row: number) =>
    `=IFNA(IRRIG.LATERAL.MAXHEADS(Limit, InletThereIs, Spacing, C${row}, Chart, Units, 100*Rise/LineLength, Regulator, Friction, First, Riser, Lowest, GreatestSpeed), "none")`;
  const [, , insides, priceRange, alone] = page.table("A", [
    { header: "Size (mm)", role: "input", allowed: size, rows: sizes },
    { header: "SDR", role: "input", allowed: sdr, rows: sizes.map(() => field.sdr) },
    {
      header: "Inside",
      unit: "diameter",
      role: "result",
      rows: rowsOf((row) => `=IRRIG.PIPE.INSIDE("ISO PE", A${row}, B${row}, Units)`),
    },
    {
      header: "Price per",
      unit: "length",
      role: "input",
      format: "0.00",
      allowed: price,
      rows: prices,
    },
    {
      header: "Most sprinklers in this size alone",
      role: "result",
      format: "0",
      span: 2,
      rows: rowsOf(most),
    },
  ]);
  page.nameRange("MostHeads", alone);
  page.nameRange("Candidates", `${insides.split(":")[0]}:${priceRange.split(":")[1]}`);
  page.gap();
  page.heading("Least cost for these sprinklers at the pressure available");
  const limits = page.block("A");
  limits.input("Pressure available at inlet", field.inletThereIs, {
    name: "InletThereIs",
    unit: "pressure",
    allowed: pressure,
  });
  page.row = limits.row;
  page.spill(
    "A",
    '=IFNA(IRRIG.LATERAL.CHANGEOVER(Limit, InletThereIs, Heads, Spacing, Candidates, Chart, Units, Rise, Regulator, Friction, First, Riser, Lowest, GreatestSpeed), "No layout of these sizes keeps within the limits: raise the pressure, or take larger tubing.")',
    {
      rows: sizes.length + 1,
      headerLines: 3,
      columns: ["diameter", { format: "0" }, "length", { format: "#,##0.00" }],
      money: true,
    },
  );
  page.gap();
  page.heading("Rolls for the sizes of the page Line");
  const inputs = page.block("A");
  inputs.input("Length of a roll", field.roll, {
    name: "RollLength",
    unit: "length",
    allowed: amount(1, 10000),
  });
  inputs.input("Beyond the last sprinkler, for the cap", field.spare, {
    name: "Spare",
    unit: "length",
    allowed: length,
  });
  inputs.input("Waste", 0, {
    name: "Waste",
    allowed: amount(0, 0.5),
    note: "Fraction added for cuts and joints.",
  });
  page.below(inputs);
  const row = page.row + 1;
  const both = (formula: (n: number, at: number) => string) =>
    [1, 2].map((n) => formula(n, row + n - 1));
  page.table("A", [
    { header: "Size (mm)", role: "result", format: "0", rows: both((n) => `=INDEX(Sizes, ${n})`) },
    {
      header: "All lines",
      unit: "length",
      role: "result",
      rows: both(
        (n) =>
          `=Lines*(INDEX(Lengths, ${n})+${n === 1 ? "IF(INDEX(Lengths, 2)=0, Spare, 0)" : "IF(INDEX(Lengths, 2)=0, 0, Spare)"})`,
      ),
    },
    {
      header: "Rolls",
      role: "result",
      format: "0",
      rows: both((_, at) => `=IF(B${at}=0, 0, IRRIG.BILL.ROLLS(B${at}, RollLength, Waste))`),
    },
    {
      header: "Price per",
      unit: "length",
      role: "result",
      format: "0.00",
      rows: both((_, at) => `=INDEX(Candidates, MATCH(A${at}, A${first}:A${first + 2}, 0), 2)`),
    },
    {
      header: "Cost",
      role: "result",
      format: "#,##0.00",
      money: true,
      rows: both((_, at) => `=C${at}*RollLength*D${at}`),
    },
  ]);
  page.gap();
  const total = page.block("A");
  total.result("Tubing in all", `=SUM(E${row}:E${row + 1})`, {
    name: "TubingTotal",
    format: "#,##0.00",
    money: true,
  });
  total.unitOfLast("=Currency");
  total.result(
    "In words",
    `=C${row}&IF(C${row}=1, " roll of ", " rolls of ")&A${row}&" mm"&IF(C${row + 1}>0, " and "&C${row + 1}&" of "&A${row + 1}&" mm", "")`,
    { name: "Rolls" },
  );
  page.below(total);
  page.safety("pressure");
}

function stakePage(field: Field): PagePlan {
  return {
    name: "Stake",
    title: { text: "Flags to stake", formula: '="Flags to stake: "&FieldName' },
    purpose:
      "Distances along the line and across the field. With a start in degrees and the bearing of the line, each flag has its position too.",
    widths: COLUMNS,
    landscape: true,
    onePage: true,
    write: (page) => stakes(page, field),
  };
}

function stakes(page: PageBuilder, field: Field): void {
  page.safety("buried lines", "overhead wires");
  page.gap();
  const start = page.block("A");
  start.input("Latitude of the inlet", undefined, {
    name: "Latitude",
    unit: { word: "degrees" },
    allowed: optional(amount(-90, 90)),
  });
  start.input("Longitude of the inlet", undefined, {
    name: "Longitude",
    unit: { word: "degrees" },
    allowed: optional(amount(-180, 180)),
  });
  const way = page.block("G");
  way.input("Bearing of the line", 90, {
    name: "LineBearing",
    unit: { word: "degrees" },
    allowed: degrees,
  });
  way.result("Bearing of the positions", "=MOD(LineBearing+270, 360)", {
    name: "FieldBearing",
    unit: { word: "degrees" },
    format: "0",
    note: "The line lies 90 degrees to the right of the way its positions advance.",
  });
  page.below(start, way);
  const laid = page.block("A");
  laid.input("Tubing wall when it is staked", field.stakeTemperature, {
    name: "StakeTemperature",
    unit: "temperature",
    allowed: temperature,
    note: "In the morning, or full of cold water.",
  });
  const grown = page.block("G");
  grown.result(
    "The line grows in the sun by",
    "=IRRIG.PIPE.EXPANSION(LineLength, WallTemperature-StakeTemperature, Units)",
    {
      name: "LineGrowth",
      unit: "length",
      note: "Leave so much slack at the hydrant and at the end stake; at each sprinkler its share. The pipe wall in the sun stands on the page Line.",
    },
  );
  page.below(laid, grown);
  const top = page.row;
  page.headingOver(1, top, 4, "Sprinklers of one line");
  page.headingOver(7, top, 5, "Positions of the field");
  page.row++;
  const table = page.row;
  const place = { format: "0.000000" };
  page.spill(
    "A",
    "=IRRIG.STAKE.FLAGS(Heads, Spacing, Units, First, Latitude, Longitude, LineBearing)",
    {
      rows: field.heads + 1,
      reserved: MOST_HEADS + 1,
      columns: [{ format: "0" }, "length", place, place],
      filled: 2,
    },
  );
  page.row = table;
  page.spill(
    "G",
    "=IRRIG.STAKE.POSITIONS(Positions, Move, Units, LineLength, Latitude, Longitude, FieldBearing)",
    {
      rows: 2 * field.positions + 1,
      reserved: 2 * MOST_HEADS + 1,
      columns: [{ format: "0" }, "length", "length", place, place],
      filled: 3,
    },
  );
}
