import { type Block, unitText } from "../kit/builder";
import { SENTENCE_COLUMNS, SET_TOO_LONG, WAITS_FOR_SET } from "./sentences";

/** Comes before every other check of a workbook: what follows from the set waits for it. */
export function setCheck(checks: Block): void {
  checks.check("Set and the day", `=IF(SetsPerDay=0, ${SET_TOO_LONG}, "OK")`, SENTENCE_COLUMNS);
}

/**
 * The checks of a plan, the same in every workbook that has one: the weakest part at the highest
 * pressure, every velocity, both ends of the chart, the pump at the flow of all lines, ground and day.
 */
export function planChecks(checks: Block): void {
  const check = (label: string, formula: string) => checks.check(label, formula, SENTENCE_COLUMNS);
  check("Pressure along the line", "=IRRIG.CHECK.VARIATION(Variation, Limit)");
  check("Lowest pressure", `=${lowestPressure()}`);
  check("Highest pressure and the chart", "=IRRIG.CHECK.CHART(MostPressure, Chart)");
  check(
    "Pressure for the regulators",
    '=IF(Regulator="", "OK", IRRIG.CHECK.REGULATOR(RegulatorInlet, LineHighest, Regulator, Units))',
  );
  check("Velocity in the line", "=IRRIG.CHECK.SPEED(Speed, Units, GreatestSpeed)");
  check("Velocity in the feeder", `=${speed("LineFlow", "FeederInside")}`);
  check("Velocity in the main", `=${speed("AllFlow", "INDEX(Main, 1, 1)")}`);
  check(
    "Static pressure and the rating",
    `=${withShutOff("IRRIG.CHECK.PRESSURE(StaticPressure, PipeRating)")}`,
  );
  check(
    "With surge, against the whole rating",
    `=${withShutOff("IRRIG.CHECK.PRESSURE(WithSurge, PipeRating, 1)")}`,
  );
  check("Pump and lines", `=${pump()}`);
  check("Suction", "=IRRIG.CHECK.NPSH(AvailableSuction, RequiredSuction)");
  check("Rate and the soil", "=IRRIG.CHECK.RATE(Rate, Intake)");
  check("Spacing and the wind", "=IRRIG.CHECK.SPACING(Spacing, Move, Wetted, Wind, Units)");
  check(
    "Days and the crop",
    `=IF(SetsPerDay=0, ${WAITS_FOR_SET}, IF(RoundDays<=Interval+0.05, "OK", "It takes "&RoundDays&" days to cover the field; the crop uses up the depth in "&FIXED(Interval, 1)&": use more lines, or a shorter round."))`,
  );
}

/** The highest pressure is the pump's at zero flow: a curve without that point has no answer. */
function withShutOff(judged: string): string {
  return `IF(MIN(INDEX(PumpCurve, 0, 1))>0, "The pump curve has no point at zero flow: type the shut-off head in its first row.", ${judged})`;
}

function speed(flow: string, bore: string): string {
  return `IRRIG.CHECK.SPEED(IRRIG.PIPE.VELOCITY(${flow}, ${bore}, Units), Units, GreatestSpeed)`;
}

const PRESSURE = unitText("pressure");

/** Within what the sheet shows of a pressure. */
const SHOWN = 'IF(Units="SI", 0.5, 0.05)';

/** What is wanted first, then what the chart covers. */
function lowestPressure(): string {
  return (
    `IF(LeastPressure<Lowest-${SHOWN}, "The lowest nozzle gets "&FIXED(LeastPressure, 1)&" "&${PRESSURE}&"; "&FIXED(Lowest, 1)&" "&${PRESSURE}&" is wanted: run fewer lines, take a larger pump or larger pipe.", ` +
    "IRRIG.CHECK.CHART(LeastPressure, Chart))"
  );
}

/** With every valve open and all lines running, the pump must give what the plan asks of it. */
function pump(): string {
  return `IFNA(IF(OpenInlet>=PlannedInlet-${SHOWN}, "OK", "With all lines running the pump gives "&FIXED(OpenInlet, 1)&" "&${PRESSURE}&" at the lateral inlet; the plan needs "&FIXED(PlannedInlet, 1)&" "&${PRESSURE}&": run fewer lines, or take a larger pump or main."), "With all lines running the pump's curve gives no answer: it ends below their flow, or does not lift the water to the line.")`;
}
