import { type PageBuilder } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "../parts/bluestem-flat";
import { amount, flow } from "../parts/limits";
import {
  COLUMNS,
  energyResult,
  lineResults,
  spotUniformity,
  wettedInput,
} from "../parts/line-blocks";
import { lineInputs, tubingAndChart } from "../parts/line-inputs";
import { planChecks } from "../parts/plan-checks";
import { openValves, pipesAndCurve, supplyInputs, supplyResults } from "../parts/supply";

/** Lines on one pump that the table below shows. */
export const MOST_RUNNING = 4;

/** Rows of PUMP.LINES: what happens when lines run on one pump, every valve open. */
const ROWS = [
  { header: "Flow", unit: "flow" },
  { header: "Pump head", unit: "length" },
  { header: "At the hydrant", unit: "pressure" },
  { header: "Lateral inlet", unit: "pressure" },
  { header: "Lowest nozzle", unit: "pressure" },
  { header: "Average per sprinkler", unit: "headFlow" },
] as const;

/** Pump, main, feeders and lines together, for one to four lines running; and how long the pond lasts. */
export function waterSourcePage(field: Field): PagePlan {
  return {
    name: "Water source",
    title: "Water source: pond, pump, main and lines together",
    purpose:
      "Change how many lines run: every flow and pressure here, and on the other pages, moves with it.",
    widths: COLUMNS,
    landscape: true,
    write: (page) => waterSource(page, field),
  };
}

function waterSource(page: PageBuilder, field: Field): void {
  const given = page.block("A");
  given.heading("Water and pump");
  const running = given.input("Lines running at once", field.lines, {
    name: "Running",
    allowed: { low: 1, high: MOST_RUNNING, whole: true },
  });
  // The parts that every workbook shares call them Lines.
  page.nameRange("Lines", running);
  given.input("Water in the pond that may be taken", field.pond, {
    name: "Pond",
    unit: "fieldVolume",
    format: "#,##0",
    allowed: amount(0, 1e12),
  });
  given.input("Inflow to the pond", field.pondInflow, {
    name: "Inflow",
    unit: "flow",
    allowed: flow,
  });
  supplyInputs(given, field);
  const pump = page.block("G");
  supplyResults(pump);
  energyResult(pump);
  pump.gap();
  pump.heading("Pond");
  pump.result("Pumping a day", "=SetHours*SetsPerDay", {
    name: "PumpingHours",
    unit: { word: "hours" },
    format: "0.0",
  });
  pump.result(
    "The pond lasts",
    '=IF(SetsPerDay=0, "set too long", IF(AllFlow*PumpingHours<=Inflow*24, "always", IRRIG.SOURCE.DAYS(Pond, AllFlow, PumpingHours, Units, Inflow)))',
    { name: "PondDays", unit: { word: "days" }, format: "0" },
  );
  page.below(given, pump);

  // Side by side, so that a page of paper ends between the two and not within one.
  const line = page.block("A");
  lineInputs(line, field);
  spotUniformity(line, field);
  line.input("Share of the area to get enough", field.adequacy, {
    name: "Adequacy",
    allowed: amount(0.5, 0.95),
  });
  line.input("Nozzle diameter", field.nozzle, {
    name: "Nozzle",
    unit: "diameter",
    allowed: amount(0.01, 100),
  });
  wettedInput(line, field);

  const found = page.block("G");
  found.heading("Results: the line");
  lineResults(found, "as the pump gives it");
  found.result("Wind while it runs", "=WeatherWind", { name: "Wind", unit: "wind" });
  found.result(
    "Share that reaches the ground",
    "=IRRIG.APPLICATION.EFFECTIVE(CropUse, Wind2m, IRRIG.APPLICATION.COARSENESS(MeanPressure, Nozzle, Units), Units)",
    { name: "Effective", format: "0.00" },
  );
  page.below(line, found);

  page.breakPage();
  page.heading("Tubing and sprinkler");
  tubingAndChart(page, field);
  page.gap();
  page.heading("Main, feeder and pump curve");
  pipesAndCurve(page, field);
  page.gap();

  page.heading("One to four lines running, every valve open");
  const top = page.row;
  const counts = Array.from({ length: MOST_RUNNING }, (_, i) => i + 1);
  const [, flows, heads] = page.table("A", [
    { header: "Lines running", role: "result", format: "0", rows: counts },
    ...ROWS.map(({ header, unit }, i) => ({
      header,
      unit,
      role: "result" as const,
      rows: counts.map(
        (_, n) => `=IFNA(INDEX(${openValves(`$A${top + 1 + n}`)}, ${i + 1}, 2), "none")`,
      ),
    })),
    {
      header: "Lowest pressure wanted",
      role: "mark" as const,
      span: 2,
      rows: counts.map((_, n) => `=IF(N(F${top + 1 + n})>=Lowest, "OK", "Below what is wanted")`),
    },
  ]);
  page.needsLines(top, 2);
  page.nameRange("RunningFlow", flows);
  page.nameRange("RunningHead", heads);
  page.gap();

  page.heading("Checks of the plan");
  const checks = page.block("A");
  planChecks(checks);
  page.below(checks);
  page.safety("pressure", "electricity", "water edge", "fuel", "backflow");
}
