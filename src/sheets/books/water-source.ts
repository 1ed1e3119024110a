import type { Field } from "../parts/bluestem-flat";
import { PageBuilder } from "../kit/builder";
import type { Page } from "../kit/definition";
import { COLUMNS, SENTENCE_COLUMNS } from "../parts/line-blocks";
import { LINE, LINE_WITHOUT_INLET, lineInputs, tubingAndChart } from "../parts/line-inputs";

const MOST_RUNNING = 4;

/** Rows of PUMP.LINES: what happens when lines run on one pump. */
const ROWS = [
  { header: "Flow", unit: "flow", name: "AllFlow" },
  { header: "Pump head", unit: "length", name: "PumpHead" },
  { header: "At the riser", unit: "pressure", name: "RiserPressure" },
  { header: "Line begins", unit: "pressure", name: "Inlet" },
  { header: "Lowest nozzle", unit: "pressure", name: "LeastPressure" },
  { header: "Average head", unit: "headFlow", name: "HeadFlow" },
] as const;

function lines(running: string): string {
  return `IRRIG.PUMP.LINES(PumpCurve, Lift, ${running}, Main, Feeder, ${LINE_WITHOUT_INLET})`;
}

/** Pump, main, feeders and lines together, for one to four lines running; and how long the pond lasts. */
export function waterSourcePage(field: Field): Page {
  const page = new PageBuilder("Water source", field.system, COLUMNS, true);
  page.title("Water source: pond, pump, main and lines together");
  page.freeze();
  page.purpose(
    "Change how many lines run: every flow and pressure here, and on the other pages, moves with it.",
  );
  page.gap();

  const given = page.block("A");
  given.heading("Water and pump");
  given.input("Lines running", field.lines, {
    name: "Running",
    allowed: { low: 1, high: MOST_RUNNING, whole: true },
  });
  given.input("Riser above the water", field.lift, { name: "Lift", unit: "length" });
  given.input("Pump above the water", field.suctionLift, { name: "SuctionLift", unit: "length" });
  given.input("Lost on the suction side", field.suctionLoss, {
    name: "SuctionLoss",
    unit: "length",
  });
  given.input("Suction head the pump requires", field.npshRequired, {
    name: "RequiredSuction",
    unit: "length",
  });
  given.input("Warmest water", field.waterTemperature, {
    name: "WaterTemperature",
    unit: "temperature",
  });
  given.input("Above the sea", field.altitude, { name: "Altitude", unit: "length" });
  given.input("Efficiency of the pump", field.pumpEfficiency, {
    name: "PumpEfficiency",
    allowed: { low: 0.05, high: 1 },
  });
  given.input("Water in the pond that may be taken", field.pond, {
    name: "Pond",
    unit: "fieldVolume",
    format: "#,##0",
  });
  given.input("Runs in, day and night", field.pondInflow, { name: "Inflow", unit: "flow" });
  given.input("Lowest point below the riser", field.drop, { name: "Drop", unit: "length" });
  given.input("Pipe wall in the sun", field.pipeTemperature, {
    name: "WallTemperature",
    unit: "temperature",
  });
  given.input("Valve shuts in", 5, { name: "Closure", unit: { word: "seconds" } });
  given.gap();
  lineInputs(given, field);
  given.input("Uniformity (CU) at one spot", field.spotUniformity, {
    name: "SpotCU",
    allowed: { low: 0.1, high: 1 },
  });
  given.input("Share of the area to get enough", field.adequacy, {
    name: "Adequacy",
    allowed: { low: 0.5, high: 0.95 },
  });
  given.input("Nozzle", field.nozzle, { name: "Nozzle", unit: "diameter" });
  given.input("Pressure may vary by", 0.2, { name: "Limit", allowed: { low: 0.01, high: 1 } });

  const found = page.block("G");
  found.heading("With that many lines running");
  ROWS.forEach(({ header, unit, name }, i) =>
    found.result(header, `=INDEX(${lines("Running")}, ${i + 1}, 2)`, { name, unit }),
  );
  found.result("The far gauge should read", `=IRRIG.LATERAL.PRESSURE(Heads, ${LINE})`, {
    name: "FarPressure",
    unit: "pressure",
  });
  found.result("Pressure varies by", `=IRRIG.LATERAL.VARIATION(${LINE})`, {
    name: "Variation",
    format: "0.0%",
  });
  found.result(
    "Pressure of the average head",
    "=IRRIG.SPRINKLER.PRESSURE(HeadFlow, Chart, Units)",
    {
      name: "MeanPressure",
      unit: "pressure",
    },
  );
  found.result(
    "Uniformity of the whole line",
    "=IRRIG.LATERAL.SYSTEMCU(SpotCU, LeastPressure, MeanPressure)",
    {
      name: "LineCU",
      format: "0.00",
    },
  );
  found.result(
    "Share that reaches the ground",
    "=IRRIG.APPLICATION.EFFECTIVE(CropUse, Wind2m, IRRIG.APPLICATION.COARSENESS(MeanPressure, Nozzle, Units), Units)",
    { name: "Effective", format: "0.00" },
  );
  found.gap();
  found.heading("Pump");
  found.result("Shaft power", "=IRRIG.PUMP.POWER(AllFlow, PumpHead, PumpEfficiency, Units)", {
    name: "ShaftPower",
    unit: "power",
  });
  found.result(
    "Suction head there is",
    "=IRRIG.PUMP.NPSH(SuctionLift, SuctionLoss, Units, WaterTemperature, Altitude)",
    { name: "AvailableSuction", unit: "length" },
  );
  found.result("Static pressure, valves shut", "=IRRIG.PUMP.STATIC(PumpCurve, Lift, Units, Drop)", {
    name: "StaticPressure",
    unit: "pressure",
  });
  found.result(
    "Surge in the main when it stops",
    "=IRRIG.PIPE.SURGE(AllFlow, MainOutside, INDEX(Main, 1, 1), Units, INDEX(Main, 1, 2), Closure)",
    { name: "Surge", unit: "pressure" },
  );
  found.result(
    "Pipe may carry, at that temperature",
    '=IRRIG.PIPE.RATING("PE100", MIN(MainSDR, FeederSDR), Units, WallTemperature, "ISO PE")',
    { name: "PipeRating", unit: "pressure" },
  );
  found.gap();
  found.heading("Pond");
  found.result("Pumping a day", "=SetHours*SetsPerDay", {
    name: "PumpingHours",
    unit: { word: "hours" },
    format: "0.0",
  });
  found.result(
    "The pond lasts",
    '=IF(PumpingHours=0, "no pumping", IF(AllFlow*PumpingHours<=Inflow*24, "always", IRRIG.SOURCE.DAYS(Pond, AllFlow, PumpingHours, Units, Inflow)))',
    { name: "PondDays", unit: { word: "days" }, format: "0" },
  );
  page.below(given, found);

  page.breakPage();
  page.heading("Tubing and sprinkler");
  tubingAndChart(page, field);
  page.gap();
  pipesAndCurve(page, field);
  page.gap();

  page.heading("One to four lines running");
  const top = page.row;
  const running = Array.from({ length: MOST_RUNNING }, (_, i) => i + 1);
  page.table("A", [
    { header: "Lines running", role: "result", format: "0", rows: running },
    ...ROWS.map(({ header, unit }, i) => ({
      header,
      unit,
      role: "result" as const,
      rows: running.map(
        (_, n) => `=IFERROR(INDEX(${lines(`$A${top + 1 + n}`)}, ${i + 1}, 2), "none")`,
      ),
    })),
    {
      header: "Lowest pressure wanted",
      role: "check" as const,
      span: 2,
      rows: running.map((_, n) => `=IF(N(F${top + 1 + n})>=Lowest, "OK", "Below what is wanted")`),
    },
  ]);
  page.needsLines(top, 2);
  page.gap();

  page.heading("Checks");
  const checks = page.block("A");
  checks.check("Suction", "=IRRIG.CHECK.NPSH(AvailableSuction, RequiredSuction)", SENTENCE_COLUMNS);
  checks.check(
    "Static pressure and the pipe",
    "=IRRIG.CHECK.PRESSURE(StaticPressure, PipeRating)",
    SENTENCE_COLUMNS,
  );
  checks.check(
    "With surge, against the whole rating",
    "=IRRIG.CHECK.PRESSURE(RiserPressure+Surge, PipeRating, 1)",
    SENTENCE_COLUMNS,
  );
  checks.check(
    "Speed in the main",
    "=IRRIG.CHECK.SPEED(IRRIG.PIPE.VELOCITY(AllFlow, INDEX(Main, 1, 1), Units), Units)",
    SENTENCE_COLUMNS,
  );
  checks.check(
    "Pressure along the line",
    "=IRRIG.CHECK.VARIATION(Variation, Limit)",
    SENTENCE_COLUMNS,
  );
  checks.check(
    "Lowest pressure and the chart",
    "=IRRIG.CHECK.CHART(LeastPressure, Chart)",
    SENTENCE_COLUMNS,
  );
  page.below(checks);
  page.cautionsFor("pressure", "electricity", "water edge", "fuel", "backflow");
  return page.build();
}

function pipesAndCurve(page: PageBuilder, field: Field): void {
  const row = page.row + 1;
  const inside = (at: number) => `=IRRIG.PIPE.INSIDE("ISO PE", C${at}, D${at}, Units)`;
  const sizes = [field.mainTubing, field.feederTubing];
  page.table(
    "A",
    [
      { header: "Pipe", role: "label", span: 2, rows: ["Main, for all lines", "Feeder, one each"] },
      { header: "Size (mm)", role: "input", rows: sizes },
      { header: "SDR", role: "input", rows: [field.sdr, field.sdr] },
      { header: "Inside", unit: "diameter", role: "result", rows: [inside(row), inside(row + 1)] },
      {
        header: "Length",
        unit: "length",
        role: "input",
        rows: [field.mainLength, field.feederLength],
      },
      {
        header: "Outside",
        unit: "diameter",
        role: "result",
        rows: [row, row + 1].map(
          (at) => `=IRRIG.UNIT.CONVERT(C${at}, "mm", IF(Units="SI", "mm", "in"))`,
        ),
      },
    ],
    row - 1,
  );
  page.nameRange("Main", `E${row}:F${row}`);
  page.nameRange("Feeder", `E${row + 1}:F${row + 1}`);
  page.nameRange("MainOutside", `G${row}`);
  page.nameRange("MainSDR", `D${row}`);
  page.nameRange("FeederSDR", `D${row + 1}`);
  const [flows, heads] = page.table(
    "I",
    [
      {
        header: "Pump, flow",
        unit: "flow",
        role: "input",
        rows: field.pumpCurve.map(([flow]) => flow),
      },
      {
        header: "Head",
        unit: "length",
        role: "input",
        rows: field.pumpCurve.map(([, head]) => head),
      },
    ],
    row - 1,
  );
  page.nameRange("PumpCurve", `${flows.split(":")[0]}:${heads.split(":")[1]}`);
}
