import { soilTextures } from "../../tables/soils";
import { type Block, type PageBuilder, unitText } from "../kit/builder";
import type { PagePlan } from "../kit/workbook";
import type { Field } from "./bluestem-flat";
import { amount, fraction, hours, optional, pressure, slope } from "./limits";
import {
  LINE,
  LINE_WITHOUT_INLET,
  lineInputs,
  tubingAndChart,
  workbookInputs,
} from "./line-inputs";
import { planChecks, setCheck } from "./plan-checks";
import { SET_TOO_LONG } from "./sentences";
import { MOST_LINES, pipesAndCurve, supplyInputs, supplyResults } from "./supply";

/**
 * Eleven columns: blocks of label, value and unit at A and G, and the eleven of a profile. The last
 * takes the longest unit whole.
 */
export const COLUMNS: readonly number[] = [...new Array<number>(10).fill(12), 17];

/**
 * The line, the field, the water and the pump: what is given on the left, the results on the right,
 * the checks below. The line layout opens with them; other workbooks keep them on a page of their own.
 */
export function lineBlocks(page: PageBuilder, field: Field): void {
  const line = page.block("A");
  workbookInputs(line, field);
  line.gap();
  lineInputs(line, field);
  const runs = page.block("G");
  runs.heading("Results: the line");
  lineResults(runs, "planned");
  page.below(line, runs);

  // Side by side, so that a page of paper ends between the two and not within one.
  const given = page.block("A");
  given.heading("The field and the day");
  fieldInputs(given, field);
  const found = page.block("G");
  found.heading("Results: the ground");
  found.result("Application rate", "=IRRIG.APPLICATION.RATE(HeadFlow, Spacing, Move, Units)", {
    name: "Rate",
    unit: "rate",
  });
  found.result(
    "Rate the soil takes",
    "=IRRIG.SOIL.INTAKE(IRRIG.SOIL.PROFILE(Texture, Compact), Slope, Units)",
    { name: "Intake", unit: "rate" },
  );
  setResults(found);
  found.result("Days to cover the field", `=${ROUND_DAYS}`, {
    name: "RoundDays",
    unit: { word: "days" },
    format: "0",
  });
  found.result("Days the net depth lasts", "=NetDepth/CropUse", {
    name: "Interval",
    unit: { word: "days" },
    format: "0.0",
  });
  found.result("Water in the line, to drain", "=IRRIG.DRAIN.VOLUME(Insides, Lengths, Units)", {
    name: "LineVolume",
    unit: "pipeVolume",
  });
  energyResult(found);
  page.below(given, found);

  page.breakPage();
  page.heading("Tubing and sprinkler");
  tubingAndChart(page, field);
  page.gap();

  page.heading("Water, pump, main and feeder");
  pipesAndCurve(page, field);
  page.gap();
  const supply = page.block("A");
  supplyInputs(supply, field);
  const pump = page.block("G");
  supplyResults(pump);
  page.below(supply, pump);

  page.breakPage();
  page.heading("Checks");
  const checks = page.block("A");
  setCheck(checks);
  planChecks(checks);
  page.below(checks);
}

/** What the far gauge shows when the line runs as planned. */
export function farGauge(block: Block): void {
  block.result("The far gauge should read", `=IRRIG.LATERAL.PRESSURE(Heads, ${LINE})`, {
    name: "FarPressure",
    unit: "pressure",
  });
}

/** The blocks on a page of their own, for a workbook that is about something else. */
export function basePage(field: Field, name: string, purpose: string): PagePlan {
  return {
    name,
    title: `${name}: the line, the field, the water`,
    purpose,
    widths: COLUMNS,
    landscape: true,
    write(page) {
      lineBlocks(page, field);
      page.safety("pressure");
    },
  };
}

export const OFFICER_QUESTION = "How evenly does it water, and how much energy does it take?";
export const OFFICER_ANSWER = `="Uniformity (CU) "&FIXED(LineCU, 2)&" along the line; pressure varies by "&FIXED(100*Variation, 1)&"%, the limit is "&FIXED(100*Limit, 0)&"%. "&IFNA("Energy: "&FIXED(Energy, 1)&" kWh "&IF(Units="SI", "per 10 mm on a hectare", "per acre-inch")&".", "No energy: the pump's curve ends below the flow of all lines.")`;

export const GROWER_QUESTION = "How many hours, when do I move, what should the far gauge read?";

export const GROWER_ANSWER = `=IF(SetsPerDay=0, ${SET_TOO_LONG}, "Run "&FIXED(SetHours, 1)&" hours, then move: "&SetsPerDay&IF(SetsPerDay=1, " set", " sets")&" a day with each line, "&FIXED(RoundDays, 0)&" days to cover the field. The far gauge should read "&FIXED(FarPressure, 1)&" "&${unitText("pressure")}&".")`;

export const DEALER_QUESTION = "How many sprinklers, which rolls, what total?";

/** Whole days, each line with a block of positions of its own, whole sets a day. */
const ROUND_DAYS =
  'IF(SetsPerDay=0, "set too long", ROUNDUP(ROUNDUP(Positions/Lines, 0)/SetsPerDay, 0))';

/**
 * The planned inlet pressure and the line solved at the lateral inlet's: as planned where a line is
 * laid out (a check says when the pump cannot give it), or what the pump really gives.
 */
export function lineResults(block: Block, inlet: "planned" | "as the pump gives it"): void {
  block.result("Lateral inlet, planned", `=IRRIG.LATERAL.INLET(Lowest, ${LINE_WITHOUT_INLET})`, {
    name: "PlannedInlet",
    unit: "pressure",
    note: "The least that gives the lowest nozzle what is wanted.",
  });
  block.result(
    "Flow into the line, planned",
    `=IRRIG.LATERAL.FLOW(PlannedInlet, ${LINE_WITHOUT_INLET})`,
    { name: "PlannedFlow", unit: "flow" },
  );
  block.result(
    "Lateral inlet",
    inlet === "planned" ? "=PlannedInlet" : "=MIN(PlannedInlet, OpenInlet)",
    {
      name: "Inlet",
      unit: "pressure",
      note:
        inlet === "planned"
          ? "Set it at the valve, with the gauge at the inlet."
          : "As planned, set at the valve; less where the pump gives less with every valve open.",
    },
  );
  const row = (n: number) => `=INDEX(IRRIG.LATERAL.SUMMARY(${LINE}), ${n}, 2)`;
  block.result("Flow into the line", row(1), { name: "LineFlow", unit: "flow" });
  block.result("Average flow per sprinkler", "=LineFlow/Heads", {
    name: "HeadFlow",
    unit: "headFlow",
  });
  block.result("Lowest pressure at a nozzle", row(2), { name: "LeastPressure", unit: "pressure" });
  block.result("Sprinkler with the lowest pressure", row(3), { format: "0" });
  block.result("Highest pressure at a nozzle", row(4), { name: "MostPressure", unit: "pressure" });
  block.result("Sprinkler with the highest pressure", row(5), { format: "0" });
  block.result("Average pressure at a nozzle", row(6), { name: "MeanPressure", unit: "pressure" });
  block.result("Pressure varies by", row(7), { name: "Variation", format: "0.0%" });
  block.result("Flow varies by", row(8), { name: "FlowVariation", format: "0.0%" });
  block.result("Friction lost", row(9), { name: "FrictionLost", unit: "pressure" });
  block.result("Highest velocity in the line", row(10), { name: "Speed", unit: "speed" });
  block.result("Length of the line", row(11), { name: "LineLength", unit: "length" });
  block.result("Sprinklers outside the chart", row(12), { name: "OutsideChart", format: "0" });
  block.result("Highest pressure in the tubing", row(14), {
    name: "LineHighest",
    unit: "pressure",
  });
  block.result("Lowest pressure under a regulator", row(16), {
    name: "RegulatorInlet",
    unit: "pressure",
  });
  farGauge(block);
  block.result(
    "Uniformity (CU) of the whole line",
    "=IRRIG.LATERAL.SYSTEMCU(SpotCU, LeastPressure, MeanPressure)",
    { name: "LineCU", format: "0.00" },
  );
}

export function setResults(block: Block): void {
  block.result("Set time", "=IRRIG.SET.TIME(NetDepth, Rate, Efficiency)", {
    name: "SetHours",
    unit: { word: "hours" },
    format: "0.0",
  });
  block.result("Sets a day with one line", "=IRRIG.SET.PERDAY(SetHours, MoveHours, DayHours)", {
    name: "SetsPerDay",
    format: "0",
  });
}

/** For the depth of an inch or 10 mm, the pump at the head of its curve. */
export function energyResult(block: Block): void {
  block.result(
    "Energy",
    '=IRRIG.PUMP.ENERGY(AllFlow, PumpHead, IRRIG.SYSTEM.CAPACITY(1, IF(Units="SI", 10, 1), 1, 1, Units)/AllFlow, "electric", Units, Performance)',
    {
      name: "Energy",
      unit: { us: "kWh per acre-inch", si: "kWh per ha × 10 mm" },
      format: "0.0",
    },
  );
}

function fieldInputs(block: Block, field: Field): void {
  moveInput(block, field);
  block.input("Positions in the field", field.positions, {
    name: "Positions",
    allowed: { low: 1, high: 500, whole: true },
  });
  block.input("Area", field.area, { name: "Area", unit: "area", allowed: amount(0.01, 100000) });
  block.input("Lines", field.lines, {
    name: "Lines",
    allowed: { low: 1, high: MOST_LINES, whole: true },
    note: "All of them run at once.",
  });
  block.input("Net depth of an irrigation", field.netDepth, {
    name: "NetDepth",
    unit: "depth",
    allowed: amount(0.01, 1000),
  });
  block.input("Water the crop uses a day", field.cropUse, {
    name: "CropUse",
    unit: "dailyDepth",
    allowed: amount(0.001, 50),
    note: "At the peak. The workbook Season computes it.",
  });
  block.input("Application efficiency", field.efficiency, {
    name: "Efficiency",
    allowed: fraction,
    note: "The workbook Season computes it.",
  });
  spotUniformity(block, field);
  dayInputs(block, field);
  soilInputs(block, field);
  wettedInput(block, field);
  block.input("Wind", field.wind, { name: "Wind", unit: "wind", allowed: amount(0, 200) });
}

export function moveInput(block: Block, field: Field): void {
  block.input("Move", field.move, {
    name: "Move",
    unit: "length",
    allowed: amount(1, 1000),
    note: "From one position of the line to the next.",
  });
}

export function soilInputs(block: Block, field: Field): void {
  block.input("Soil", "silt loam", {
    name: "Texture",
    allowed: { list: soilTextures, knownBy: "IRRIG.SOIL.AWC($)" },
  });
  block.input("Over compact subsoil", false, {
    name: "Compact",
    allowed: { list: ["TRUE", "FALSE"] },
  });
  block.input("Slope of the ground", field.slope, {
    name: "Slope",
    unit: { word: "%" },
    allowed: slope,
  });
}

export function wettedInput(block: Block, field: Field): void {
  block.input("Wetted diameter of a sprinkler", field.wetted, {
    name: "Wetted",
    unit: "length",
    allowed: amount(1, 1000),
  });
}

export function spotUniformity(block: Block, field: Field): void {
  block.input("Uniformity (CU) at one spot", field.spotUniformity, {
    name: "SpotCU",
    allowed: fraction,
    note: "From a catch-can test between neighboring sprinklers.",
  });
}

export function dayInputs(block: Block, field: Field): void {
  block.input("Hours to move a line", field.moveHours, { name: "MoveHours", allowed: hours });
  block.input("Hours in a working day", field.dayHours, {
    name: "DayHours",
    allowed: amount(1, 24),
  });
}

/** Two gauges read on the running line. */
export function readingInputs(block: Block): void {
  for (const [label, name] of [
    ["Reading at the inlet", "InletReading"],
    ["Reading at the far end", "FarReading"],
  ]) {
    block.input(label, undefined, {
      name,
      unit: "pressure",
      allowed: optional({ ...pressure, low: 0 }),
    });
  }
}
