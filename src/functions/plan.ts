import { readOptionalNumber, wholeNumber } from "../boundary/numbers";
import { Memory } from "../boundary/memory";
import { type PlanCells, readPlanProblem } from "../boundary/plan";
import { limitsTable, plansTable } from "../boundary/plan-tables";
import type { Spill } from "../boundary/table";
import type { Measures } from "../boundary/units";
import type { PlanProblem } from "../solver/plan-problem";
import type { Units } from "./units";

const COUNT = wholeNumber(1, 20);
const DEFAULT_COUNT = 5;

/** A sheet takes one plan apart cell by cell: all of them ask for the same table. */
const tables = new Memory<Spill>(8);

function remembered(
  cells: PlanCells,
  asked: number | string,
  answer: (u: Measures, problem: PlanProblem) => Spill,
): Spill {
  const table = tables.recall([asked, ...Object.values(cells)], () => {
    const { u, problem } = readPlanProblem(cells);
    return answer(u, problem);
  });
  // A copy, so that what a host does with it stays with the host.
  return table.map((row) => [...row]);
}

/**
 * Spills the cheapest plans for a field by the year: spacing, move, sprinkler, tubing, feeder, lines.
 * @customfunction PLAN_SEARCH PLAN.SEARCH
 * @arguments plan
 * @param sprinklers Four columns, name, pressure (psi, kPa), flow (gpm, m³/h) and wetted diameter (ft, m); a chart's rows under one name, up to 25 names. One row alone gives no range of pressures.
 * @param tubing Sizes for the line, four columns: size, inside diameter (in, mm), price per length (ft, m) and pressure rating (psi, kPa); up to 25. A plan has two of them at most.
 * @param terms Two columns, name and value, in any order: see the remarks. Names not known, given twice or lacking are named.
 * @param [count] Plans to show, 1 to 20 (blank or 0: 5).
 * @returns A header row, then a row for each different plan (spacing, move, sprinkler, lines), the cheapest first: what to lay, sets, hours, pressures, flow, variation, share covered, capital, the year's cost in its parts, whether it is the same as the best within 3%, and the limit without which that spacing, move and sprinkler would cost least. Money is to three digits.
 * @remarks Terms, default in parentheses; all others must be given. Field: bearing of the line in degrees (0; a rectangle lies along x), setback of the line from the edge (0), slope along the line in %, uphill positive (0), coverage, least share of the field (0.9), wind in mph or km/h (0). Line: riser (0), friction, C or "Darcy" (150), variation (0.2), speed (5 ft/s, 1.5 m/s), share of rating (0.72). Water: intake, net depth, efficiency, uniformity of the low quarter (1: the set goes by the average), season depth, net. Time: days once round, day hours (24), move hours, set hours (from the depth). Pump: lift, main loss as pressure with all lines running, pump flow and pump head (no limit). Money: head price, line price without tubing and feeder, years, interest, escalation of energy (0), upkeep, share of the capital (0), energy price per kWh, performance of the plant against the criterion (1), wage per hour. A unit in parentheses behind a name is passed over.
 * All runs are checked, each on its own ground with the heads behind it shut off, one inlet pressure for all: highest pressure, speed and rate with the fewest lines of the rotation running, lowest pressure and pump head with all; the rating with the valves shut, the pump at that head. The pump's own shut-off head may be higher: see PUMP.STATIC. Lift is up to the near end of position 1, or to height 0 of the spots. Spacing is at most 50% of the wetted diameter, the move what SPRINKLER.SPACING allows, both at the lowest nozzle's pressure. Lines are as few as come round in time; each has a hydrant amid its positions and a straight feeder: add slack. Nothing above 10 MPa at an inlet is considered.
 * Every design counts that is not certain to cost more or to break a limit: the result is that of trying all. Of equal costs the one with fewer sizes, then more of the larger. At most 10 million designs; a search that would take more than about a second is an error that says so.
 * @source Practice standards for sprinkler systems and pipelines (NRCS 442, 430) for variation, spacing and share of the rating; engineering economics for the yearly cost; the sources of LATERAL.PRESSURE, FIELD.RUNS and PUMP.ENERGY for the rest.
 * @errors #VALUE! for a blank or wrong argument or term, by name. #N/A where no row takes a head, where the choices are too many, or where no plan keeps to every limit: it names the limit without which there would be one, what that plan needs, and which others would do.
 * @cautions pressure, roads and buildings, overhead wires
 * @task which spacing, sprinkler, tubing and how many lines cost least?
 * @example =IRRIG.PLAN.SEARCH({630,700}, {40,45}, {45,50}, {38,42}, {"medium",35,3.7,90;"medium",45,4.2,94;"medium",55,4.6,96}, {"63 mm",2.16,1.1,145;"50 mm",1.72,0.7,145}, {"75 mm",2.58,1.55,145}, {"friction",140;"intake",0.5;"net depth",1.4;"efficiency",0.75;"days",7;"day hours",12;"move hours",0.75;"season depth",14;"lift",18;"main loss",4;"head price",40;"line price",170;"years",12;"interest",0.06;"energy price",0.14;"wage",18}, "US", 3)
 */
export function planSearch(
  field: any[][],
  spacings: any[][],
  moves: any[][],
  pressures: any[][],
  sprinklers: any[][],
  tubing: any[][],
  feeders: any[][],
  terms: any[][],
  units?: Units,
  count?: any,
  obstacles?: any[][],
  spots?: any[][],
): any[][] {
  const wanted = readOptionalNumber("count", count, COUNT) ?? DEFAULT_COUNT;
  return remembered(
    {
      field,
      spacings,
      moves,
      pressures,
      sprinklers,
      tubing,
      feeders,
      terms,
      units,
      obstacles,
      spots,
    },
    wanted,
    (u, problem) => plansTable(u, problem, wanted),
  );
}

/**
 * Spills what each limit of a plan costs: its value, what the best plan without it would need, and the saving.
 * @customfunction PLAN_LIMITS PLAN.LIMITS
 * @arguments plan
 * @param sprinklers Four columns, name, pressure (psi, kPa), flow (gpm, m³/h) and wetted diameter (ft, m); a chart's rows under one name, up to 25 names.
 * @param tubing Sizes for the line, four columns: size, inside diameter (in, mm), price per length (ft, m) and pressure rating (psi, kPa); up to 25.
 * @param terms Two columns, name and value, in any order, as PLAN.SEARCH takes them.
 * @returns A header row, then a row a limit: its name, what it allows now, what the best plan without it comes to, that plan's cost a year, and what it saves a year against the best plan with all limits. Money is to three digits.
 * @remarks The search of PLAN.SEARCH with one limit left out and all others kept. A limit that saves nothing shows the best plan itself; where no plan keeps to all limits, the ones without which there is none stay blank. Without day hours the day has 24; without days one line goes round, however long it takes; without set hours a set is as long as the depth asks. A limit that is left out here is a question, not advice: variation, speed, rating and intake keep crop, pipe and soil from harm.
 * @source As PLAN.SEARCH.
 * @errors #VALUE! for a blank or wrong argument or term, by name. #N/A where no row takes a head, where the choices are too many, or where no plan keeps to the limits, whichever one is left out.
 * @cautions pressure, roads and buildings, overhead wires
 * @task what would it save to loosen a limit?
 * @example =IRRIG.PLAN.LIMITS({630,700}, {40,45}, {45,50}, {38,42}, {"medium",35,3.7,90;"medium",45,4.2,94;"medium",55,4.6,96}, {"63 mm",2.16,1.1,145;"50 mm",1.72,0.7,145}, {"75 mm",2.58,1.55,145}, {"friction",140;"intake",0.5;"net depth",1.4;"efficiency",0.75;"days",7;"day hours",12;"move hours",0.75;"season depth",14;"lift",18;"main loss",4;"head price",40;"line price",170;"years",12;"interest",0.06;"energy price",0.14;"wage",18}, "US")
 */
export function planLimits(
  field: any[][],
  spacings: any[][],
  moves: any[][],
  pressures: any[][],
  sprinklers: any[][],
  tubing: any[][],
  feeders: any[][],
  terms: any[][],
  units?: Units,
  obstacles?: any[][],
  spots?: any[][],
): any[][] {
  return remembered(
    {
      field,
      spacings,
      moves,
      pressures,
      sprinklers,
      tubing,
      feeders,
      terms,
      units,
      obstacles,
      spots,
    },
    "limits",
    limitsTable,
  );
}
