import { bluestemFlat, type Field } from "./bluestem-flat";
import { cautionsPage, PageBuilder } from "./builder";
import type { Page, ReadyMadeSheet } from "./definition";
import { INLET_FORMULA, LINE, lineInputs, MOST_HEADS, tubingAndChart } from "./line-inputs";
import { namesPage } from "./names";

/** Eleven like columns: blocks of label, value and unit at A and G, and the ten of the profile. */
const COLUMNS = new Array<number>(11).fill(12);

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
    "How many heads, which rolls, what total?",
    '=Heads&" heads on each of "&Lines&" lines. "&Rolls&". Tubing in all: "&FIXED(TubingTotal, 2)&"; the workbook Quote adds the rest."',
  );
  page.question(
    "What uniformity, what energy, does it meet the practice standard's numbers?",
    '="Uniformity "&FIXED(LineCU, 2)&" along the line; "&FIXED(Energy, 1)&" kWh for "&IF(Units="SI", "10 mm on a hectare", "an inch on an acre")&". Pressure varies by "&FIXED(100*Variation, 1)&" %: "&IF(Variation<=Limit, "within", "over")&" the limit of "&FIXED(100*Limit, 0)&" %."',
  );
  page.question(
    "How many hours, when do I move, what should the far gauge read?",
    `="Run "&FIXED(SetHours, 1)&" hours, then move: "&SetsPerDay&" set a day with each line, "&FIXED(Round, 0)&" days round the field. The far gauge should read "&FIXED(FarPressure, 1)&" "&${'IF(Units="SI", "kPa", "psi")'}&"."`,
  );
  page.freeze();
  page.purpose(
    "Change the cells on a tinted ground with a line under them; everything else follows. The field is invented, and so are its prices.",
  );
  page.gap();

  const given = page.block("A");
  lineInputs(given, field);
  given.gap();
  given.heading("The field and the day");
  fieldInputs(given, field);

  const found = page.block("G");
  found.heading("What the line does");
  found.result("Pressure where the line begins", INLET_FORMULA, {
    name: "Inlet",
    unit: "pressure",
  });
  summary(found);
  found.gap();
  found.heading("What the ground gets");
  found.result("Flow of the average head", "=LineFlow/Heads", {
    name: "HeadFlow",
    unit: "headFlow",
  });
  found.result("Application rate", "=IRRIG.APPLICATION.RATE(HeadFlow, Spacing, Move, Units)", {
    name: "Rate",
    unit: "rate",
  });
  found.result("Set time", "=IRRIG.SET.TIME(NetDepth, Rate, Efficiency)", {
    name: "SetHours",
    unit: { word: "hours" },
    format: "0.0",
  });
  found.result("Sets a day with one line", "=IRRIG.SET.PERDAY(SetHours, MoveHours, DayHours)", {
    name: "SetsPerDay",
    format: "0",
  });
  found.result("Days round the field", "=IF(SetsPerDay>0, Positions/(Lines*SetsPerDay), 0)", {
    name: "Round",
    unit: { word: "days" },
    format: "0.0",
  });
  found.result(
    "Uniformity of the whole line",
    "=IRRIG.LATERAL.SYSTEMCU(SpotCU, LeastPressure, MeanPressure)",
    {
      name: "LineCU",
      format: "0.00",
    },
  );
  found.result("Water in the line, to drain", "=IRRIG.DRAIN.VOLUME(Insides, Lengths, Units)", {
    name: "LineVolume",
    unit: "pipeVolume",
  });
  page.below(given, found);

  page.heading("Tubing and sprinkler");
  tubingAndChart(page, field);
  page.gap();

  page.breakPage();
  page.heading("From the pump's riser to the line");
  const feeder = page.block("A");
  feederInputs(feeder, field);
  const riser = page.block("G");
  feederResults(riser);
  page.below(feeder, riser);

  page.heading("Gauge at the far end");
  const reading = page.block("A");
  reading.input("Reading where the line begins", undefined, {
    name: "InletReading",
    unit: "pressure",
  });
  reading.input("Reading at the far end", undefined, { name: "FarReading", unit: "pressure" });
  const gauge = page.block("G");
  gauge.result("The far gauge should read", `=IRRIG.LATERAL.PRESSURE(Heads, ${LINE})`, {
    name: "FarPressure",
    unit: "pressure",
  });
  gauge.result("It reads higher or lower by", '=IF(FarReading="", "", FarReading-FarPressure)', {
    name: "FarDifference",
    unit: "pressure",
  });
  page.below(reading, gauge);
  page.row--;
  const sentence = page.block("A");
  sentence.check("What the readings point to", GAUGE_SENTENCE, 6, 2);
  page.below(sentence);

  page.heading("Checks");
  const checks = page.block("A");
  checks.check("Pressure along the line", "=IRRIG.CHECK.VARIATION(Variation, Limit)", 6);
  checks.check("Speed in the tubing", "=IRRIG.CHECK.SPEED(Speed, Units)", 6);
  checks.check("Lowest pressure and the chart", "=IRRIG.CHECK.CHART(LeastPressure, Chart)", 6);
  checks.check("Highest pressure and the chart", "=IRRIG.CHECK.CHART(MostPressure, Chart)", 6);
  checks.check(
    "Spacing and the wind",
    "=IRRIG.CHECK.SPACING(Spacing, Move, Wetted, Wind, Units)",
    6,
  );
  checks.check("Rate and the soil", "=IRRIG.CHECK.RATE(Rate, Intake)", 6);
  checks.check(
    "Static pressure and the tubing",
    "=IRRIG.CHECK.PRESSURE(StaticPressure, TubingRating)",
    6,
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
