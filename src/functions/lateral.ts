import { readOptionalChoice } from "../boundary/choices";
import {
  above,
  atLeast,
  fraction,
  headCount,
  readNumber,
  readOptionalNumber,
} from "../boundary/numbers";
import {
  readHeads,
  readLine,
  readLineLimits,
  readLineWithoutTubing,
  readLongestLine,
} from "../boundary/line";
import {
  askLine,
  askRunningLine,
  layoutTable,
  profileTable,
  readHeadIndex,
  solvedRuns,
  summaryTable,
} from "../boundary/solved-line";
import { readFriction, readPricedTubing } from "../boundary/pipe";
import { readUnits } from "../boundary/units";
import { FLOW_EXPONENT } from "../formulas/hazen-williams";
import { headsThatFit } from "../formulas/heads-that-fit";
import { multipleOutletFactor } from "../formulas/multiple-outlet-factor";
import { multipleOutletLoss } from "../formulas/multiple-outlet-loss";
import { systemUniformity } from "../formulas/system-uniformity";
import { cheapestLayout } from "../solver/changeover";
import { inletFor, MOST_INLET_PRESSURE } from "../solver/find-inlet";
import { mostHeads } from "../solver/most-heads";
import { spreadOf } from "../solver/spread";
import type { LineArguments } from "./line-arguments";
import type { Units } from "./units";

/** @customenum {string} */
enum Basis {
  /** the head with the least pressure has the target */
  lowest = "lowest",
  /** the mean of all heads is the target */
  average = "average",
  /** the head at the far end has the target */
  last = "last",
}

const BASES = [Basis.lowest, Basis.average, Basis.last];

/** Friction goes with the flow itself (laminar) to a little above its square. */
const FLOW_EXPONENT_RANGE = above(0, 3);

/**
 * Pressure in the tubing at the nth head of a line.
 * @customfunction LATERAL_PRESSURE LATERAL.PRESSURE
 * @arguments line
 * @returns Line pressure (psi, kPa), in the tubing under the head; LATERAL.PROFILE gives the one at the nozzle.
 * @remarks {@text lineSolved}
 * @source {@text lineSource}
 * @errors {@text lineRunsOut} {@text lineWrong}
 * @task what pressure does each head get?
 * @example =IRRIG.LATERAL.PRESSURE(14, 45, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function lateralPressure(n: any, inlet: any, ...line: LineArguments): any {
  const { u, solved } = askRunningLine(inlet, line);
  return u.pressure.give(solved.linePressure[readHeadIndex(n, solved)]);
}

/**
 * Flow of the nth head of a line.
 * @customfunction LATERAL_HEADFLOW LATERAL.HEADFLOW
 * @arguments line
 * @returns Flow (gpm, m³/h).
 * @remarks {@text lineSolved}
 * @source {@text lineSource}
 * @errors {@text lineRunsOut} {@text lineWrong}
 * @task how much does each head give?
 * @example =IRRIG.LATERAL.HEADFLOW(14, 45, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function lateralHeadflow(n: any, inlet: any, ...line: LineArguments): any {
  const { u, solved } = askRunningLine(inlet, line);
  return u.flow.give(solved.headFlow[readHeadIndex(n, solved)]);
}

/**
 * Flow into a line of heads.
 * @customfunction LATERAL_FLOW LATERAL.FLOW
 * @arguments line
 * @returns Flow (gpm, m³/h).
 * @remarks {@text lineSolved}
 * @source {@text lineSource}
 * @errors {@text lineRunsOut} {@text lineWrong}
 * @task how much water does a line take?
 * @example =IRRIG.LATERAL.FLOW(45, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function lateralFlow(inlet: any, ...line: LineArguments): any {
  const { u, solved } = askRunningLine(inlet, line);
  return u.flow.give(solved.inflow);
}

/**
 * Spills one row per head of a line: head, distance, elevation, inside diameter, line pressure, nozzle pressure, head flow, segment flow, speed and friction loss of the segment before the head, and whether its water runs.
 * @customfunction LATERAL_PROFILE LATERAL.PROFILE
 * @arguments line
 * @returns A header row and one row per head, 11 columns, with the units in the header. The last says in words what the water does at the head: "runs"; "dry", its nozzle, above full tubing; "part full", air in the tubing and water running past; "empty", no water gets there. Where air stands, the line pressure is 0; the loss of a segment that runs part full is all its fall.
 * @remarks {@text lineSolved} A head that stands above what is left of the pressure lets air in, so that what lies beyond is no siphon: water that passes it runs down part full until it fills the tubing again. Heads are taken to have no check valve.
 * @source {@text lineSource}
 * @errors {@text lineWrong} Heads that run dry are shown with flow 0 and nozzle pressure 0.
 * @task how do pressure and flow run along the line?
 * @example =IRRIG.LATERAL.PROFILE(45, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function lateralProfile(inlet: any, ...line: LineArguments): any[][] {
  return profileTable(askLine(inlet, line));
}

/**
 * Spills label and value for a line: flow; lowest, highest and average nozzle pressure and where; pressure and flow variation; friction lost; greatest speed; length; heads outside the chart's pressures and without pressure; highest line pressure and where; lowest pressure under a regulator; air in the line.
 * @customfunction LATERAL_SUMMARY LATERAL.SUMMARY
 * @arguments line
 * @returns 17 rows of label and value, with the unit in the label. The variations are fractions, (highest − lowest)/average, empty where no head runs. The highest line pressure is that of the inlet or at a head, while the line runs; the lowest under a regulator has the riser's height taken off and is empty without regulators: CHECK.REGULATOR takes both. The last row says in words at which head air gets in, or "none".
 * @remarks {@text lineSolved} A head that stands above what is left of the pressure lets air in, so that what lies beyond is no siphon. Where the discharge is a coefficient there is no chart to be outside of; a chart of one row covers that one pressure.
 * @source {@text lineSource}
 * @errors {@text lineWrong} Heads that run dry are shown with flow 0 and nozzle pressure 0.
 * @task does the line keep within the limits?
 * @example =IRRIG.LATERAL.SUMMARY(45, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function lateralSummary(inlet: any, ...line: LineArguments): any[][] {
  return summaryTable(askLine(inlet, line));
}

/**
 * Variation of the nozzle pressure along a line, (highest − lowest)/average.
 * @customfunction LATERAL_VARIATION LATERAL.VARIATION
 * @arguments line
 * @returns A fraction: 0.2 is the 20% of the trade's rule.
 * @remarks {@text lineSolved}
 * @source {@text lineSource}
 * @errors {@text lineRunsOut} {@text lineWrong}
 * @task is the pressure even enough along the line?
 * @example =IRRIG.LATERAL.VARIATION(45, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function lateralVariation(inlet: any, ...line: LineArguments): any {
  const { solved } = askRunningLine(inlet, line);
  return spreadOf(solved.nozzlePressure).variation;
}

/**
 * The smallest inlet pressure that gives a target pressure at the nozzle to the lowest head, on average or to the last.
 * @customfunction LATERAL_INLET LATERAL.INLET
 * @arguments line
 * @param target Pressure wanted at the nozzle (psi, kPa), above 0.
 * @param [basis] "lowest" (blank): the head with the least pressure has the target; "average": the mean of all heads; "last": the head at the far end.
 * @returns Inlet pressure (psi, kPa).
 * @remarks {@text lineSolved} Pressures up to 10 MPa (1450 psi) are sought.
 * @source {@text lineSource}
 * @errors #N/A when the target is above what the regulators let through, when it needs more than 10 MPa, when the fall of the ground alone gives more, or when another head runs dry (the message names it). #VALUE! for a blank, text or impossible argument, and for ranges that don't fit the number of heads.
 * @cautions pressure
 * @task what pressure must the lateral start with?
 * @example =IRRIG.LATERAL.INLET(40, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function lateralInlet(
  target: any,
  heads: any,
  spacing: any[][],
  inside: any[][],
  discharge: any[][],
  units?: Units,
  rise?: any[][],
  regulator?: any[][],
  friction?: any,
  first?: any,
  riser?: any,
  basis?: Basis,
): any {
  const u = readUnits(units);
  const line = readLine(u, readHeads(heads), MOST_INLET_PRESSURE, {
    spacing,
    inside,
    discharge,
    rise,
    regulator,
    friction,
    first,
    riser,
  });
  return u.pressure.give(
    inletFor(
      line,
      u.pressure.read("target", target, above(0)),
      readOptionalChoice("basis", basis, BASES) ?? "lowest",
    ),
  );
}

/**
 * Whole heads that fit a length.
 * @customfunction LATERAL_HEADS LATERAL.HEADS
 * @param length Length from the inlet to the end of the field or the line, above 0, in any unit.
 * @param spacing Distance between heads, above 0, in the same unit.
 * @param [first] Distance from the inlet to head 1, above 0, in the same unit (blank or 0: the spacing).
 * @returns Number of heads, 0 where the first does not fit.
 * @remarks Head 1 stands at the first distance, the others a spacing apart; the last one stands within the length.
 * @source Arithmetic.
 * @errors #VALUE! for a blank, text or a length that is not above 0.
 * @task how many heads fit the field?
 * @example =IRRIG.LATERAL.HEADS(630, 45)
 */
export function lateralHeads(length: any, spacing: any, first?: any): any {
  const between = readNumber("spacing", spacing, above(0));
  return headsThatFit(
    readNumber("length", length, above(0)),
    between,
    readOptionalNumber("first", first, above(0)) ?? between,
  );
}

/**
 * The most heads for which a line, and every shorter one, keeps within a pressure variation and other limits.
 * @customfunction LATERAL_MAXHEADS LATERAL.MAXHEADS
 * @arguments line
 * @param spacing Distance between heads (ft, m), above 0; or a row or column with one length per segment from the inlet on, which also is the most heads tried.
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size. One value; one column with a value per segment, or two columns (inside diameter, number of segments) from the inlet on, which also are the most heads tried.
 * @param [slope] Slope of the ground along the line (percent of the length), uphill positive (blank or 0: level).
 * @param [regulator] Outlet set pressure of a regulator under each head (psi, kPa), blank or 0: none. One value for all, one column with a value per head (blank: none there), or two columns (set, loss), one row for all or a row per head; rows also are the most heads tried. The loss is 5 psi or 34.5 kPa unless given; a blank cell for it may count as 0.
 * @returns Number of heads, at most 500 or as many as the ranges cover.
 * @remarks Solves the line cut off behind head 1, 2, 3 … and stops at the first that does not pass: a longer line that passes by chance (on falling ground) is not counted, since the line is laid and run shorter too. A line with a dry head never passes. The sizes of two columns are laid from the inlet in full.
 * @source {@text lineSource}
 * @errors #N/A when even one head does not pass. #VALUE! for a blank, text or impossible argument.
 * @task how long may the line be?
 * @example =IRRIG.LATERAL.MAXHEADS(0.2, 50, 45, 1.72, {35,3.7;45,4.2;55,4.6}, "US", 1)
 */
export function lateralMaxheads(
  limit: any,
  inlet: any,
  spacing: any[][],
  inside: any[][],
  discharge: any[][],
  units?: Units,
  slope?: any,
  regulator?: any[][],
  friction?: any,
  first?: any,
  riser?: any,
  lowest?: any,
  maxvelocity?: any,
): any {
  const u = readUnits(units);
  const longest = readLongestLine(u, u.pressure.read("inlet", inlet, above(0)), {
    spacing,
    inside,
    discharge,
    slope,
    regulator,
    friction,
    first,
    riser,
  });
  return mostHeads(longest, readLineLimits(u, limit, lowest, maxvelocity));
}

/**
 * Spills how many segments of a line to lay in each size of tubing, large to small from the inlet, for the least cost within the limits.
 * @customfunction LATERAL_CHANGEOVER LATERAL.CHANGEOVER
 * @arguments line
 * @param tubing Two columns: inside diameter (in, mm), the bore, above 0, and price per length (per ft, per m), above 0; any order.
 * @returns A header row and one row per size, large to small: inside diameter, segments, length, cost. The first two columns below the header can be the inside argument of the other LATERAL functions; a size that is not used has 0 segments.
 * @remarks The true least: every layout counts that is not certain to be dearer or out of limits. Of equal costs the one with fewer sizes, then the one with more of the larger. Cost is length times price; couplers are not counted. A line with a dry head never passes.
 * @source {@text lineSource}
 * @errors #N/A when no layout keeps within the limits, or when many sizes on a long line can be laid in too many ways to try. #VALUE! for a blank, text or impossible argument, a size that is listed twice, and for ranges that don't fit the number of heads.
 * @task where do I change from large tubing to small?
 * @example =IRRIG.LATERAL.CHANGEOVER(0.2, 46, 14, 45, {2.16,1.1;1.72,0.7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function lateralChangeover(
  limit: any,
  inlet: any,
  heads: any,
  spacing: any[][],
  tubing: any[][],
  discharge: any[][],
  units?: Units,
  rise?: any[][],
  regulator?: any[][],
  friction?: any,
  first?: any,
  riser?: any,
  lowest?: any,
  maxvelocity?: any,
): any[][] {
  const u = readUnits(units);
  const line = readLineWithoutTubing(
    u,
    readHeads(heads),
    u.pressure.read("inlet", inlet, above(0)),
    { spacing, discharge, rise, regulator, friction, first, riser },
  );
  const sizes = readPricedTubing(u, tubing);
  const limits = readLineLimits(u, limit, lowest, maxvelocity);
  return layoutTable(u, line, sizes, cheapestLayout(line, sizes, limits));
}

/**
 * Multiple-outlet factor: friction in a line with equal outlets over that of the same line carrying the full flow to its end.
 * @customfunction LATERAL_F LATERAL.F
 * @arguments line
 * @param [exponent] Exponent of the flow in the friction equation, above 0 and at most 3 (blank or 0: 1.852, Hazen–Williams).
 * @param [firstratio] Distance from the inlet to the first outlet as a share of the spacing, above 0 (blank or 0: 1; 0.5 for half a spacing).
 * @returns A factor, 1 for one outlet.
 * @remarks Christiansen's factor as the exact sum, Σ i^m / N^(m+1); where the first outlet is nearer, the sum with a shorter first segment over the shorter line.
 * @source J. E. Christiansen, Irrigation by Sprinkling, University of California Bulletin 670 (1942).
 * @errors #VALUE! for a number of outlets that is not a whole number from 1 to 500, or an exponent or ratio that is out of range.
 * @task what is the friction factor for a line with outlets?
 * @example =IRRIG.LATERAL.F(14, 1.852, 1)
 */
export function lateralF(outlets: any, exponent?: any, firstratio?: any): any {
  return multipleOutletFactor(
    readNumber("outlets", outlets, headCount),
    readOptionalNumber("exponent", exponent, FLOW_EXPONENT_RANGE) ?? FLOW_EXPONENT,
    readOptionalNumber("firstratio", firstratio, above(0)) ?? 1,
  );
}

/**
 * Friction lost in a line with equal outlets, by the handbook shortcut: friction of the full flow times the multiple-outlet factor.
 * @customfunction LATERAL_LOSS LATERAL.LOSS
 * @arguments line
 * @param flow Flow at the inlet (gpm, m³/h), 0 or more.
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other.
 * @param length Length from the inlet to the last outlet (ft, m), 0 or more.
 * @param [firstratio] Distance from the inlet to the first outlet as a share of the spacing, above 0 (blank or 0: 1).
 * @returns Pressure lost (psi, kPa).
 * @remarks PIPE.FRICTION of the full flow times LATERAL.F. With "Darcy", which has no factor, the sum over the segments with equal outlets. Heads that differ in flow are for LATERAL.PROFILE.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016); Christiansen (1942).
 * @errors #VALUE! for a blank, text or negative flow or length, an inside diameter that is not above 0, or a number of outlets that is not a whole number from 1 to 500.
 * @task how much pressure does a line lose, by the handbook?
 * @example =IRRIG.LATERAL.LOSS(58, 2.16, 630, 14, "US", 150)
 */
export function lateralLoss(
  flow: any,
  inside: any,
  length: any,
  outlets: any,
  units?: Units,
  friction?: any,
  firstratio?: any,
): any {
  const u = readUnits(units);
  return u.pressure.give(
    multipleOutletLoss({
      flow: u.flow.read("flow", flow, atLeast(0)),
      bore: u.diameter.read("inside", inside, above(0)),
      length: u.length.read("length", length, atLeast(0)),
      outlets: readNumber("outlets", outlets, headCount),
      friction: readFriction(friction),
      firstRatio: readOptionalNumber("firstratio", firstratio, above(0)) ?? 1,
    }),
  );
}

/**
 * Uniformity of a whole line from the coefficient of uniformity of one spot.
 * @customfunction LATERAL_SYSTEMCU LATERAL.SYSTEMCU
 * @param cu Christiansen's uniformity at one spot, a fraction from 0 to 1.
 * @param lowest Lowest pressure at the heads of the line, above 0, in any unit.
 * @param average Average pressure at the heads, above 0, in the same unit.
 * @returns A fraction.
 * @remarks cu·(1 + √(lowest/average))/2.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11.
 * @errors #VALUE! for a uniformity outside 0 to 1, a pressure that is not above 0, or a lowest pressure above the average.
 * @task how even is the whole line?
 * @example =IRRIG.LATERAL.SYSTEMCU(0.86, 40, 43)
 */
export function lateralSystemcu(cu: any, lowest: any, average: any): any {
  return systemUniformity(
    readNumber("cu", cu, fraction),
    readNumber("lowest", lowest, above(0)),
    readNumber("average", average, above(0)),
  );
}

/**
 * Spills one row per run of a line over a field, each solved on its own ground with the heads behind it shut off.
 * @customfunction LATERAL_RUNS LATERAL.RUNS
 * @arguments line
 * @param heads The table of FIELD.HEADS: position, run, head, along, x, y and, where the ground is not level, height (ft, m), in its order; up to 5,000 rows.
 * @param spacing Distance between heads (ft, m), above 0; or a row or column with one length per segment, from the inlet to head 1 on. It must be that of the layout.
 * @param inside Inside diameter (in, mm), above 0: the bore, not the nominal size; PIPE.INSIDE turns one into the other. One value, one column with a value per segment, or two columns (inside diameter, number of segments) from the inlet on. They reach at least to the last head of the longest run.
 * @param [first] Distance from the inlet to head 1 (ft, m), above 0. Blank or 0: as the table of heads has it, run by run. Not with a range of spacings, which holds it.
 * @param [lowest] Pressure wanted at the lowest nozzle of every run (psi, kPa), above 0. Blank or 0: not asked.
 * @returns A header row, then a row per run: position, run, heads, flow (gpm, m³/h), lowest and highest nozzle pressure, highest line pressure (psi, kPa), pressure variation, (highest − lowest)/average at the nozzles, greatest speed in the line (ft/s, m/s), and with a lowest the inlet pressure that gives it (psi, kPa).
 * @remarks The inlet is at the near end of each run, and heights count from there. Every run has the line's own tubing from the inlet on; heads behind its last one are shut off or uncoupled. The highest line pressure is that of the line while it runs, the inlet's included; with the valve shut it is higher: check the rating against that (PUMP.STATIC). The run with the lowest nozzle pressure, and the one with the highest line pressure, decide for all.
 * @source {@text lineSource}
 * @errors #N/A where no inlet pressure gives the lowest; it names the run. #VALUE! for a blank, text or impossible argument, a table of heads that is not in order, a spacing that is not that of the table, and ranges that end before the longest run. Heads that run dry show as a lowest pressure of 0.
 * @cautions pressure
 * @task which run of the field is the worst?
 * @example =IRRIG.LATERAL.RUNS(55, {1,1,1,20,20,30,0.4;1,1,2,60,60,30,1.2;1,1,3,100,100,30,1.9;2,1,1,20,20,80,0.9;2,1,2,60,60,80,2.1}, 40, {2.16,2;1.72,1}, {35,3.7;45,4.2;55,4.6}, "US", , 150, , 2, 40)
 */
export function lateralRuns(
  inlet: any,
  heads: any[][],
  spacing: any[][],
  inside: any[][],
  discharge: any[][],
  units?: Units,
  regulator?: any[][],
  friction?: any,
  first?: any,
  riser?: any,
  lowest?: any,
): any[][] {
  return solvedRuns({
    inlet,
    heads,
    spacing,
    inside,
    discharge,
    units,
    regulator,
    friction,
    first,
    riser,
    lowest,
  });
}
