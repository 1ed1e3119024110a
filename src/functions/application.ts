import {
  above,
  atLeast,
  between,
  readNumber,
  readNumbers,
  readOptionalNumber,
  wholeNumber,
} from "../boundary/numbers";
import { readCatches, readCatchesInPlace, readEfficiency } from "../boundary/sprinkler";
import { column } from "../boundary/table";
import { milliliters, readUnits } from "../boundary/units";
import {
  applicationEfficiencyFor,
  GREATEST_ADEQUACY,
  LEAST_ADEQUACY,
} from "../formulas/application-efficiency";
import { averageRate } from "../formulas/application-rate";
import { catchDepth } from "../formulas/catch-depth";
import { christiansenUniformity } from "../formulas/christiansen-uniformity";
import { coarsenessIndex } from "../formulas/coarseness-index";
import { distributionUniformity } from "../formulas/distribution-uniformity";
import { effectivePortion } from "../formulas/effective-portion";
import { foldCatch } from "../formulas/fold";
import { overlapGrid } from "../formulas/overlap";
import { appliedDepth } from "../formulas/set-time";
import type { Units } from "./units";

/** Cells a side of the overlap grid: what is computed when blank, and the most a sheet can ask for. */
const GRID = 10;
const LARGEST_GRID = 100;

const LOW_QUARTER = 0.25;

/**
 * Average application rate: a head's flow over the ground it stands for.
 * @customfunction APPLICATION_RATE APPLICATION.RATE
 * @param flow Flow of one head (gpm, m³/h), 0 or more.
 * @param spacing Distance between heads along the line (ft, m), above 0.
 * @param move Distance between positions of the line (ft, m), above 0.
 * @returns Average rate (in/h, mm/h), as discharged.
 * @remarks flow ÷ (spacing × move), the trade's 96.3 q/(S·M) with its exact constant 96.25. Evaporation and drift are not taken off. A line of unequal heads: give the average flow; LATERAL.FLOW divided by the number of heads is one.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative flow, or a spacing or move that is not above 0.
 * @task how fast does the water go on?
 * @example =IRRIG.APPLICATION.RATE(12.5, 40, 60, "US")
 */
export function applicationRate(flow: any, spacing: any, move: any, units?: Units): any {
  const u = readUnits(units);
  return u.rate.give(
    averageRate(
      u.flow.read("flow", flow, atLeast(0)),
      u.length.read("spacing", spacing, above(0)),
      u.length.read("move", move, above(0)),
    ),
  );
}

/**
 * Depth of water that a rate puts on in a time: gross, or net when an efficiency is given.
 * @customfunction APPLICATION_DEPTH APPLICATION.DEPTH
 * @param rate Application rate (in/h, mm/h), 0 or more.
 * @param hours Time, h, 0 or more.
 * @param [efficiency] Application efficiency, a fraction above 0 up to 1 (blank or 0: 1, which gives the gross depth).
 * @returns Depth: in for a rate in in/h, mm for a rate in mm/h.
 * @remarks rate × hours × efficiency. Takes no units argument: the depth is in the rate's own unit of length. APPLICATION.EFFICIENCY gives an efficiency.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative rate or hours, or an efficiency above 1.
 * @task how much water does a set put on?
 * @example =IRRIG.APPLICATION.DEPTH(0.25, 11, 0.75)
 */
export function applicationDepth(rate: any, hours: any, efficiency?: any): any {
  return appliedDepth(
    readNumber("rate", rate, atLeast(0)),
    readNumber("hours", hours, atLeast(0), "h"),
    readEfficiency(efficiency),
  );
}

/**
 * Depth of water in a catch can.
 * @customfunction APPLICATION_CATCH APPLICATION.CATCH
 * @param volume Water caught, mL in both unit systems, 0 or more.
 * @param opening Diameter of the can's opening (in, mm), above 0.
 * @returns Depth (in, mm).
 * @remarks Volume over the area of the opening, (π/4)·opening². A can with sloping sides counts by its opening. Divide by the hours of the test for a rate.
 * @source The volume of a cylinder; the catch-can equation PR = 3.66 V/(T·A) of irrigation audits (mL, min, square inches).
 * @errors #VALUE! for a blank, text or negative volume, or an opening that is not above 0.
 * @task how deep is the water in a catch can?
 * @example =IRRIG.APPLICATION.CATCH(50, 4, "US")
 */
export function applicationCatch(volume: any, opening: any, units?: Units): any {
  const u = readUnits(units);
  return u.depth.give(
    catchDepth(
      milliliters.read("volume", volume, atLeast(0)),
      u.diameter.read("opening", opening, above(0)),
    ),
  );
}

/**
 * Christiansen uniformity of a catch, a fraction.
 * @customfunction APPLICATION_CU APPLICATION.CU
 * @param catch_ Catches, a range of any shape: depths or volumes, in any one unit, from cans of one size, each standing for the same area. Empty cells are skipped; a 0 is a can that caught nothing.
 * @returns Fraction: 1 is even; a very poor catch falls below 0.
 * @remarks CU = 1 − Σ|z − m|/(n·m), with m the mean of the n catches z. At least two cans, and some water in one of them. A host that hands empty cells over as 0 makes them dry cans: leave no gaps in the range.
 * @source Christiansen (1942), Irrigation by Sprinkling, California Agricultural Experiment Station Bulletin 670.
 * @errors #VALUE! for text, a negative catch, fewer than two cans, or cans that are all 0.
 * @task how evenly does the water fall?
 * @example =IRRIG.APPLICATION.CU({10;8;12;9;11;10;7;13})
 */
export function applicationCu(catch_: any[][]): any {
  return christiansenUniformity(readCatches(catch_));
}

/**
 * Distribution uniformity of a catch, a fraction: the mean of its lowest quarter over the mean of all.
 * @customfunction APPLICATION_DU APPLICATION.DU
 * @param catch_ Catches, a range of any shape: depths or volumes, in any one unit, from cans of one size, each standing for the same area. Empty cells are skipped; a 0 is a can that caught nothing.
 * @param [fraction] The lowest part to compare, a fraction above 0 up to 1 (blank or 0: 0.25, the low quarter; 0.5 is the low half).
 * @returns Fraction from 0 to 1.
 * @remarks A can that the fraction cuts counts in part: of 10 cans the low quarter is the lowest two and half of the third. The handbooks avoid the question with cans in multiples of four. At least two cans, and some water in one of them. A host that hands empty cells over as 0 makes them dry cans: leave no gaps in the range.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for text, a negative catch, fewer than two cans, cans that are all 0, or a fraction above 1.
 * @task how dry is the driest quarter?
 * @example =IRRIG.APPLICATION.DU({10;8;12;9;11;10;7;13}, 0.25)
 */
export function applicationDu(catch_: any[][], fraction?: any): any {
  return distributionUniformity(
    readCatches(catch_),
    readOptionalNumber("fraction", fraction, above(0, 1)) ?? LOW_QUARTER,
  );
}

/**
 * Spills the depths between four heads, from one head's radial catch overlapped with all others.
 * @customfunction APPLICATION_OVERLAP APPLICATION.OVERLAP
 * @param radial Depth caught at the head, one step out, two steps out and so on: a row or column of two or more, each 0 or more, in any unit. Straight lines between; none beyond the last, so end with the 0 where the throw ends.
 * @param step Distance between two of these catches (ft, m), above 0.
 * @param spacing Distance between heads along the line, in the step's unit, above 0.
 * @param move Distance between positions of the line, in the step's unit, above 0.
 * @param [grid] Cells a side, a whole number up to 100 (blank or 0: 10).
 * @returns Depths in the unit of the radial catch, grid rows by grid columns, without a header: each row runs along the line from head to head, the rows go from one position to the next.
 * @remarks Values at the centers of the cells. Every head and position whose throw reaches a cell is counted, on a field of equal heads without an edge, in still air. The water is kept: the mean of the cells is the head's volume over spacing × move, within 0.2% at 10 cells a side where the throw is at least half of spacing and of move, and 0.01% at 100. Give the cells to APPLICATION.CU and APPLICATION.DU. The throw may be up to 10 times the spacing or move.
 * @source Superposition of one head's pattern, as the handbooks overlap catches (Christiansen 1942).
 * @errors #VALUE! for a blank, text or negative value, fewer than two catches, a grid above 100, or a throw of more than 10 spacings or moves.
 * @task what pattern do overlapping heads make?
 * @example =IRRIG.APPLICATION.OVERLAP({0.3;0.28;0.24;0.15;0.05;0}, 10, 45, 50, 5)
 */
export function applicationOverlap(
  radial: any[][],
  step: any,
  spacing: any,
  move: any,
  grid?: any,
): any[][] {
  return overlapGrid(
    {
      depths: readNumbers("radial", radial, atLeast(0)),
      step: readNumber("step", step, above(0)),
    },
    readNumber("spacing", spacing, above(0)),
    readNumber("move", move, above(0)),
    readOptionalNumber("grid", grid, wholeNumber(1, LARGEST_GRID)) ?? GRID,
  );
}

/**
 * Spills the depths between two positions of a line, from one line's catch laid over itself at every move.
 * @customfunction APPLICATION_FOLD APPLICATION.FOLD
 * @param catch_ Catches across the line, one row or column of an odd count with the line at the middle can, each 0 or more, in any unit. Every cell needs a number: a can that was left out would shift the others.
 * @param step Distance between two cans (ft, m), above 0.
 * @param move Distance between positions of the line, in the step's unit: a whole number of steps, at most 500.
 * @returns Depths in the unit of the catch, one column of move ÷ step rows without a header: at the line, one step from it, and so on up to a step before the next position.
 * @remarks Every can a whole number of moves away adds to a place, so no water is lost: the column adds up to the sum of the cans. Give the column to APPLICATION.CU and APPLICATION.DU.
 * @source Superposition of one line's pattern, as the handbooks overlap catches (Christiansen 1942).
 * @errors #VALUE! for a blank, text or negative catch, an even count of cans, or a move that is not a whole number of steps from 1 to 500.
 * @task what falls between two positions?
 * @example =IRRIG.APPLICATION.FOLD({0.1;0.3;0.5;0.6;0.5;0.3;0.1}, 10, 40)
 */
export function applicationFold(catch_: any[][], step: any, move: any): any[][] {
  return column(
    foldCatch(
      readCatchesInPlace(catch_),
      readNumber("step", step, above(0)),
      readNumber("move", move, above(0)),
    ),
  );
}

/**
 * Coarseness index of a sprinkler's spray, by pressure and nozzle.
 * @customfunction APPLICATION_COARSENESS APPLICATION.COARSENESS
 * @param pressure Pressure at the nozzle (psi, kPa), above 0.
 * @param nozzle Nozzle diameter (in, mm), above 0.
 * @returns Index from 7 (coarse drops) to 17 (fine spray), without a unit.
 * @remarks P^1.3/B with P in psi and B in 64ths of an inch, held to 7 and 17; SI is converted to these, so both systems agree. For APPLICATION.EFFECTIVE.
 * @source Keller and Bliesner (1990), Sprinkle and Trickle Irrigation; from memory, the bounds also in the CIGR Handbook of Agricultural Engineering, Volume I (1999).
 * @errors #VALUE! for a blank or text, or a pressure or nozzle that is not above 0.
 * @task how fine is the spray?
 * @example =IRRIG.APPLICATION.COARSENESS(45, 0.15625, "US")
 */
export function applicationCoarseness(pressure: any, nozzle: any, units?: Units): any {
  const u = readUnits(units);
  return coarsenessIndex(
    u.pressure.read("pressure", pressure, above(0)),
    u.diameter.read("nozzle", nozzle, above(0)),
  );
}

/**
 * Part of the discharge that reaches the ground after evaporation and wind drift, a fraction.
 * @customfunction APPLICATION_EFFECTIVE APPLICATION.EFFECTIVE
 * @param et Reference evapotranspiration (in/day, mm/day), 0 or more.
 * @param wind Wind speed (mph, km/h), 0 or more.
 * @param coarseness Coarseness index of the spray, above 0, as APPLICATION.COARSENESS gives it; held to 7 and 17.
 * @returns Fraction, at most 0.982 and not below 0.1.
 * @remarks 0.976 + 0.005ET − 0.00017ET² + 0.0012W − CI(0.00043ET + 0.00018W + 0.000016ET·W), ET in mm a day, W in km/h. Coefficients from memory. An estimate for the mean weather of a set, not for gusts.
 * @source Keller and Bliesner (1990), Sprinkle and Trickle Irrigation, after Frost and Schwalen (1955); from memory.
 * @errors #VALUE! for a blank, text or negative value; #N/A where the equation gives less than 0.1.
 * @task how much is lost to wind and sun?
 * @example =IRRIG.APPLICATION.EFFECTIVE(0.25, 6, 12, "US")
 */
export function applicationEffective(et: any, wind: any, coarseness: any, units?: Units): any {
  const u = readUnits(units);
  return effectivePortion(
    u.dailyDepth.read("et", et, atLeast(0)),
    u.wind.read("wind", wind, atLeast(0)),
    readNumber("coarseness", coarseness, above(0)),
  );
}

/**
 * Application efficiency, a fraction, from uniformity and the share of the field that must get enough.
 * @customfunction APPLICATION_EFFICIENCY APPLICATION.EFFICIENCY
 * @param cu Christiansen uniformity, a fraction above 0 up to 1; APPLICATION.CU gives it.
 * @param adequacy Share of the area that must get at least the net depth, a fraction from 0.5 to 0.95 (0.8 is common for field crops, 0.9 for high-value ones: common practice).
 * @param [effective] Part of the discharge that reaches the ground, a fraction above 0 up to 1, as APPLICATION.EFFECTIVE gives it (blank or 0: 1, no loss in the air).
 * @returns Fraction.
 * @remarks (1 + (6.06 − 24.9a + 34.9a² − 18.6a³)(1 − cu)) × effective, never above effective; published with a in percent, coefficients from memory. It stands for depths that scatter normally and holds from half of the area to 95%. Leakage is not included.
 * @source Keller and Bliesner (1990), Sprinkle and Trickle Irrigation; from memory.
 * @errors #VALUE! for a blank or text, a fraction above 1, or an adequacy outside 0.5 to 0.95; #N/A where cu is so low that no depth is enough.
 * @task what efficiency do I plan with?
 * @example =IRRIG.APPLICATION.EFFICIENCY(0.86, 0.8, 0.95)
 */
export function applicationEfficiency(cu: any, adequacy: any, effective?: any): any {
  return applicationEfficiencyFor(
    readNumber("cu", cu, above(0, 1)),
    readNumber("adequacy", adequacy, between(LEAST_ADEQUACY, GREATEST_ADEQUACY)),
    readEfficiency(effective, "effective"),
  );
}
