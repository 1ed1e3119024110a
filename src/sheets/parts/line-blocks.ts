import { soilTextures } from "../../tables/soils";
import type { Field } from "./bluestem-flat";
import { type Block, PageBuilder, unitText } from "../kit/builder";
import type { Page } from "../kit/definition";
import { INLET_FORMULA, LINE, lineInputs, tubingAndChart, unitsInput } from "./line-inputs";

/** Eleven like columns: blocks of label, value and unit at A and G, and the ten of a profile. */
export const COLUMNS: readonly number[] = new Array<number>(11).fill(12);

/** Columns beyond value and unit that a check's sentence may take. */
export const SENTENCE_COLUMNS = 6;

/**
 * The line, the field and the feeder: what is given on the left, what follows from it on the right.
 * The line layout opens with them; other workbooks keep them on a page of their own.
 */
export function lineBlocks(page: PageBuilder, field: Field): void {
  const given = page.block("A");
  given.heading("This workbook");
  unitsInput(given, field);
  given.gap();
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
  found.result(
    "Rate that the soil takes",
    "=IRRIG.SOIL.INTAKE(IRRIG.SOIL.PROFILE(Texture), Slope, Units)",
    { name: "Intake", unit: "rate" },
  );
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
    name: "RoundDays",
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
  found.gap();
  found.heading("Ground and wind");
  groundInputs(found, field);
  page.below(given, found);

  page.breakPage();
  page.heading("Tubing and sprinkler");
  tubingAndChart(page, field);
  page.gap();

  page.heading("From the pump's riser to the line");
  const feeder = page.block("A");
  feederInputs(feeder, field);
  const riser = page.block("G");
  feederResults(riser);
  page.below(feeder, riser);
}

/** The gauge at the far end of the line, as the grower's question asks for it. */
export function farGauge(block: Block): void {
  block.result("The far gauge should read", `=IRRIG.LATERAL.PRESSURE(Heads, ${LINE})`, {
    name: "FarPressure",
    unit: "pressure",
  });
}

/** The blocks on a page of their own, for a workbook that is about something else. */
export function basePage(field: Field, name: string, purpose: string): Page {
  const page = new PageBuilder(name, field.system, COLUMNS, true);
  page.title(`${name}: the line, the field and the feeder`);
  page.freeze();
  page.purpose(purpose);
  page.gap();
  lineBlocks(page, field);
  const gauge = page.block("G");
  farGauge(gauge);
  page.below(gauge);
  return page.build();
}

export const OFFICER_QUESTION =
  "What uniformity, what energy, does it meet the practice standard's numbers?";
export const OFFICER_ANSWER =
  '="Uniformity "&FIXED(LineCU, 2)&" along the line; "&FIXED(Energy, 1)&" kWh for "&IF(Units="SI", "10 mm on a hectare", "an inch on an acre")&". Pressure varies by "&FIXED(100*Variation, 1)&" %: "&IF(Variation<=Limit, "within", "over")&" the limit of "&FIXED(100*Limit, 0)&" %."';

export const GROWER_QUESTION = "How many hours, when do I move, what should the far gauge read?";
export const GROWER_ANSWER = `="Run "&FIXED(SetHours, 1)&" hours, then move: "&SetsPerDay&" set a day with each line, "&FIXED(RoundDays, 0)&" days round the field. The far gauge should read "&FIXED(FarPressure, 1)&" "&${unitText("pressure")}&"."`;

export const DEALER_QUESTION = "How many heads, which rolls, what total?";

function fieldInputs(block: Block, field: Field): void {
  block.input("Between positions of a line", field.move, { name: "Move", unit: "length" });
  block.input("Positions in the field", field.positions, {
    name: "Positions",
    allowed: { low: 1, high: 500, whole: true },
  });
  block.input("Area", field.area, { name: "Area", unit: "area" });
  block.input("Lines", field.lines, { name: "Lines", allowed: { low: 1, high: 20, whole: true } });
  block.input("Net depth to put on", field.netDepth, { name: "NetDepth", unit: "depth" });
  block.input("Application efficiency", field.efficiency, {
    name: "Efficiency",
    allowed: { low: 0.1, high: 1 },
  });
  block.input("Uniformity (CU) at one spot", field.spotUniformity, {
    name: "SpotCU",
    allowed: { low: 0.1, high: 1 },
    note: "From a catch-can test between neighbouring heads.",
  });
  block.input("Hours to move a line", field.moveHours, { name: "MoveHours" });
  block.input("Hours in a working day", field.dayHours, { name: "DayHours" });
  block.input("Pressure may vary by", 0.2, {
    name: "Limit",
    allowed: { low: 0.01, high: 1 },
    note: "Fraction of the average: 0.2 is the practice standard's 20 %.",
  });
}

function groundInputs(block: Block, field: Field): void {
  block.input("Soil", "silt loam", { name: "Texture", allowed: { list: soilTextures } });
  block.input("Slope of the ground", field.slope, { name: "Slope", unit: { word: "%" } });
  block.input("Wetted diameter of a head", field.wetted, { name: "Wetted", unit: "length" });
  block.input("Wind", field.wind, { name: "Wind", unit: "wind" });
}

/** Rows of LATERAL.SUMMARY that the page shows beside its own labels. */
function summary(block: Block): void {
  const row = (n: number) => `=INDEX(IRRIG.LATERAL.SUMMARY(${LINE}), ${n}, 2)`;
  block.result("Flow into the line", row(1), { name: "LineFlow", unit: "flow" });
  block.result("Lowest pressure at a nozzle", row(2), { name: "LeastPressure", unit: "pressure" });
  block.result("at head", row(3), { format: "0" });
  block.result("Highest pressure at a nozzle", row(4), { name: "MostPressure", unit: "pressure" });
  block.result("at head", row(5), { format: "0" });
  block.result("Average pressure at a nozzle", row(6), { name: "MeanPressure", unit: "pressure" });
  block.result("Pressure varies by", row(7), { name: "Variation", format: "0.0%" });
  block.result("Flow varies by", row(8), { name: "FlowVariation", format: "0.0%" });
  block.result("Friction lost", row(9), { name: "FrictionLost", unit: "pressure" });
  block.result("Greatest speed", row(10), { name: "Speed", unit: "speed" });
  block.result("Length of the line", row(11), { name: "LineLength", unit: "length" });
  block.result("Heads outside the chart", row(12), { name: "OutsideChart", format: "0" });
}

function feederInputs(block: Block, field: Field): void {
  block.input("Feeder size (mm)", field.feederTubing, { name: "FeederSize" });
  block.input("SDR", field.sdr, { name: "FeederSDR" });
  block.input("Riser off the ends of the positions", field.setback, {
    name: "Setback",
    unit: "length",
  });
  block.input("Line above the riser", field.feederRise, { name: "FeederRise", unit: "length" });
  block.input("Fittings, sum of k", field.fittings, { name: "FeederFittings" });
  block.input("Riser above the water", field.lift, { name: "Lift", unit: "length" });
  block.input("Lost from the water to the riser", field.pumpLosses, {
    name: "MainLosses",
    unit: "pressure",
  });
  block.input("Highest static pressure", field.staticPressure, {
    name: "StaticPressure",
    unit: "pressure",
    note: "At the lowest point, pump running, valves shut.",
  });
  block.input("Pipe wall in the sun", field.pipeTemperature, {
    name: "WallTemperature",
    unit: "temperature",
  });
  block.input("Pump against the criterion", 0.8, {
    name: "Performance",
    note: "1 is as good as the published criterion for pumping plants; 0.8 is common in the field.",
  });
}

function feederResults(block: Block): void {
  block.result("Positions that one feeder serves", "=ROUNDUP(Positions/Lines, 0)", {
    name: "OwnPositions",
    format: "0",
  });
  block.result(
    "Feeder, straight, without slack",
    "=IRRIG.FEEDER.LENGTH(OwnPositions, Move, Setback)",
    {
      name: "FeederLength",
      unit: "length",
    },
  );
  block.result(
    "Inside of the feeder",
    '=IRRIG.PIPE.INSIDE("ISO PE", FeederSize, FeederSDR, Units)',
    {
      name: "FeederInside",
      unit: "diameter",
    },
  );
  block.result(
    "Pressure the riser must give",
    "=IRRIG.FEEDER.PRESSURE(Inlet, LineFlow, FeederInside, FeederLength, Units, FeederRise, Friction, FeederFittings)",
    { name: "RiserPressure", unit: "pressure" },
  );
  block.result("Total dynamic head", "=IRRIG.PUMP.TDH(RiserPressure, Lift, MainLosses, Units)", {
    name: "TotalHead",
    unit: "length",
  });
  block.result("Flow of all lines", "=Lines*LineFlow", { name: "AllFlow", unit: "flow" });
  block.result(
    "Energy, for an inch or 10 mm",
    '=IRRIG.PUMP.ENERGY(AllFlow, TotalHead, IRRIG.SYSTEM.CAPACITY(1, IF(Units="SI", 10, 1), 1, 1, Units)/AllFlow, "electric", Units, Performance)',
    { name: "Energy", unit: { us: "kWh an acre", si: "kWh a ha" }, format: "0.0" },
  );
  block.result(
    "Tubing may carry, at that temperature",
    '=IRRIG.PIPE.RATING("PE100", FeederSDR, Units, WallTemperature, "ISO PE")',
    { name: "TubingRating", unit: "pressure" },
  );
}
