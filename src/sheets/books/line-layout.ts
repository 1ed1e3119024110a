import { bluestemFlat, type Field } from "../parts/bluestem-flat";
import { cautionsPage, PageBuilder, unitText } from "../kit/builder";
import type { Page, ReadyMadeSheet } from "../kit/definition";
import {
  COLUMNS,
  DEALER_QUESTION,
  farGauge,
  GROWER_ANSWER,
  GROWER_QUESTION,
  lineBlocks,
  OFFICER_ANSWER,
  OFFICER_QUESTION,
  SENTENCE_COLUMNS,
} from "../parts/line-blocks";
import { LINE, MOST_HEADS } from "../parts/line-inputs";
import { namesPage } from "../parts/names";

const SUBJECTS = [
  "pressure",
  "overhead wires",
  "roads and buildings",
  "backflow",
  "buried lines",
] as const;

export const lineLayout: ReadyMadeSheet = {
  id: "line-layout",
  title: "Line layout",
  purpose:
    "For whoever lays out a line: how many heads, which tubing, what every head gets, and what the gauges should read.",
  pages: (system) => {
    const field = bluestemFlat(system);
    return [
      linePage(field),
      tubingPage(field),
      stakePage(field),
      namesPage(system),
      cautionsPage(system, SUBJECTS),
    ];
  },
};

function linePage(field: Field): Page {
  const page = new PageBuilder("Line", field.system, COLUMNS, true);
  page.title("Line layout: Bluestem Flat");
  page.question(
    DEALER_QUESTION,
    '=Heads&" heads on each of "&Lines&" lines. "&Rolls&". Tubing in all: "&FIXED(TubingTotal, 2)&"; the workbook Quote adds the rest."',
  );
  page.question(OFFICER_QUESTION, OFFICER_ANSWER);
  page.question(GROWER_QUESTION, GROWER_ANSWER);
  page.freeze();
  page.purpose(
    "Change the cells on a tinted ground with a line under them; everything else follows. The field is invented, and so are its prices.",
  );
  page.gap();

  lineBlocks(page, field);

  page.heading("Gauge at the far end");
  const reading = page.block("A");
  reading.input("Reading where the line begins", undefined, {
    name: "InletReading",
    unit: "pressure",
  });
  reading.input("Reading at the far end", undefined, { name: "FarReading", unit: "pressure" });
  const gauge = page.block("G");
  farGauge(gauge);
  gauge.result("It reads higher or lower by", '=IF(FarReading="", "", FarReading-FarPressure)', {
    name: "FarDifference",
    unit: "pressure",
  });
  page.below(reading, gauge);
  page.row--;
  const sentence = page.block("A");
  sentence.check("What the readings point to", GAUGE_SENTENCE, SENTENCE_COLUMNS, 2);
  page.below(sentence);

  page.heading("Checks");
  const checks = page.block("A");
  checks.check(
    "Pressure along the line",
    "=IRRIG.CHECK.VARIATION(Variation, Limit)",
    SENTENCE_COLUMNS,
  );
  checks.check("Speed in the tubing", "=IRRIG.CHECK.SPEED(Speed, Units)", SENTENCE_COLUMNS);
  checks.check(
    "Lowest pressure and the chart",
    "=IRRIG.CHECK.CHART(LeastPressure, Chart)",
    SENTENCE_COLUMNS,
  );
  checks.check(
    "Highest pressure and the chart",
    "=IRRIG.CHECK.CHART(MostPressure, Chart)",
    SENTENCE_COLUMNS,
  );
  checks.check(
    "Spacing and the wind",
    "=IRRIG.CHECK.SPACING(Spacing, Move, Wetted, Wind, Units)",
    SENTENCE_COLUMNS,
  );
  checks.check("Rate and the soil", "=IRRIG.CHECK.RATE(Rate, Intake)", SENTENCE_COLUMNS);
  checks.check(
    "Static pressure and the tubing",
    "=IRRIG.CHECK.PRESSURE(StaticPressure, TubingRating)",
    SENTENCE_COLUMNS,
  );
  page.below(checks);
  page.cautionsFor(...SUBJECTS);
  page.gap();

  page.breakPage();
  page.heading("Every head");
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
    title: "Flow of each head",
    x: distance,
    yTitle: "Flow",
    series: [{ range: column("G"), titleAt: `G${top}` }],
    place: { from: `G${picture}`, to: `K${picture + 14}` },
    description:
      "Flow of each head against distance from the inlet; the numbers stand in the table below.",
  });
  return page.build();
}

const PRESSURE_UNIT = unitText("pressure");

/** What two gauges that differ from the plan point to. */
const GAUGE_SENTENCE =
  '=IF(OR(InletReading="", FarReading=""), "Type what the two gauges read, the line running and full.", ' +
  `IF(ABS(InletReading-Inlet)>0.05*Inlet, "The line begins with "&FIXED(ABS(InletReading-Inlet), 1)&" "&${PRESSURE_UNIT}&IF(InletReading<Inlet, " less", " more")&" than planned: set the valve first, then read the far gauge again.", ` +
  'IF(ABS(FarDifference)<=0.03*FarPressure, "OK", IF(FarDifference<0, ' +
  '"Lower than planned: look for a leak, a kink, a plugged screen or tubing, or worn nozzles that take more than the chart says.", ' +
  '"Higher than planned: look for plugged nozzles or heads that are shut or missing, then test the gauge."))))';

function tubingPage(field: Field): Page {
  const page = new PageBuilder("Tubing", field.system, COLUMNS, true);
  page.title("Tubing: where to change over, how many rolls, what it costs");
  page.freeze();
  page.purpose(
    "The least-cost choice of sizes within the limits of the page Line, and the rolls for the sizes that you settled on there.",
  );
  page.gap();
  page.heading("Sizes to choose from");
  const first = page.row + 1;
  const sizes = [field.largeTubing, field.smallTubing, field.smallestTubing];
  const prices = [field.price.large, field.price.small, field.price.smallest];
  const rowsOf = (formula: (row: number) => string) => sizes.map((_, i) => formula(first + i));
  const [, , insides, priceRange] = page.table("A", [
    { header: "Size (mm)", role: "input", rows: sizes },
    { header: "SDR", role: "input", rows: sizes.map(() => field.sdr) },
    {
      header: "Inside",
      unit: "diameter",
      role: "result",
      rows: rowsOf((row) => `=IRRIG.PIPE.INSIDE("ISO PE", A${row}, B${row}, Units)`),
    },
    { header: "Price for each", unit: "length", role: "input", format: "0.00", rows: prices },
    {
      header: "Most heads in this size alone",
      role: "result",
      format: "0",
      span: 2,
      rows: rowsOf(
        (row) =>
          `=IFERROR(IRRIG.LATERAL.MAXHEADS(Limit, Inlet, Spacing, C${row}, Chart, Units, 0, Regulator, Friction, First, Riser), 0)`,
      ),
    },
  ]);
  page.nameRange("Candidates", `${insides.split(":")[0]}:${priceRange.split(":")[1]}`);
  page.gap();
  page.heading(
    "Least cost for these heads, where the inlet has more pressure than the page Line asks",
  );
  const limits = page.block("A");
  limits.input("Pressure there is at the inlet", field.inletThereIs, {
    name: "InletThereIs",
    unit: "pressure",
  });
  limits.input("Greatest speed", field.greatestSpeed, { name: "GreatestSpeed", unit: "speed" });
  page.row = limits.row;
  page.spill(
    "A",
    '=IFERROR(IRRIG.LATERAL.CHANGEOVER(Limit, InletThereIs, Heads, Spacing, Candidates, Chart, Units, Rise, Regulator, Friction, First, Riser, Lowest, GreatestSpeed), "No layout of these sizes keeps within the limits: raise the pressure, or take larger tubing.")',
    {
      rows: sizes.length + 1,
      headerLines: 3,
      columns: ["diameter", { format: "0" }, "length", { format: "#,##0.00" }],
    },
  );
  page.gap();
  page.heading("Rolls for the sizes of the page Line");
  const inputs = page.block("A");
  inputs.input("Length of a roll", field.roll, { name: "RollLength", unit: "length" });
  inputs.input("Beyond the last head, for the cap", field.spare, { name: "Spare", unit: "length" });
  inputs.input("Waste", 0, { name: "Waste", note: "Fraction added for cuts and joints." });
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
      header: "Price for each",
      unit: "length",
      role: "result",
      format: "0.00",
      rows: both((_, at) => `=INDEX(Candidates, MATCH(A${at}, A${first}:A${first + 2}, 0), 2)`),
    },
    {
      header: "Cost",
      role: "result",
      format: "#,##0.00",
      rows: both((_, at) => `=C${at}*RollLength*D${at}`),
    },
  ]);
  page.gap();
  const total = page.block("A");
  total.result("Tubing in all", `=SUM(E${row}:E${row + 1})`, {
    name: "TubingTotal",
    format: "#,##0.00",
  });
  total.result(
    "In words",
    `=C${row}&" rolls of "&A${row}&" mm"&IF(C${row + 1}>0, " and "&C${row + 1}&" of "&A${row + 1}&" mm", "")`,
    { name: "Rolls" },
  );
  page.below(total);
  return page.build();
}

function stakePage(field: Field): Page {
  const page = new PageBuilder("Stake", field.system, COLUMNS, true);
  page.title("Flags to stake");
  page.freeze();
  page.purpose(
    "Distances along the line and across the field. With a start in degrees and the bearing of the line, each flag has its position too.",
  );
  page.gap();
  const start = page.block("A");
  start.input("Latitude of the inlet", undefined, { name: "Latitude", unit: { word: "degrees" } });
  start.input("Longitude of the inlet", undefined, {
    name: "Longitude",
    unit: { word: "degrees" },
  });
  const way = page.block("G");
  way.input("Bearing of the line", 90, { name: "LineBearing", unit: { word: "degrees" } });
  way.result("Bearing of the positions", "=MOD(LineBearing+270, 360)", {
    name: "FieldBearing",
    unit: { word: "degrees" },
    format: "0",
    note: "The line lies 90 degrees to the right of the way its positions advance.",
  });
  page.below(start, way);
  const top = page.row;
  page.put(1, top, { role: "heading", value: "Heads of one line", span: 4 });
  page.put(7, top, { role: "heading", value: "Positions of the field", span: 5 });
  page.row++;
  const table = page.row;
  const degrees = { format: "0.000000" };
  page.spill(
    "A",
    "=IRRIG.STAKE.FLAGS(Heads, Spacing, Units, First, Latitude, Longitude, LineBearing)",
    {
      rows: field.heads + 1,
      reserved: MOST_HEADS + 1,
      columns: [{ format: "0" }, "length", degrees, degrees],
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
      columns: [{ format: "0" }, "length", "length", degrees, degrees],
      filled: 3,
    },
  );
  page.printOnOnePage();
  return page.build();
}
