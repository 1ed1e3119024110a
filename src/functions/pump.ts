import { lineCells } from "../boundary/line";
import { above, anyNumber, atLeast, readNumber, readOptionalNumber } from "../boundary/numbers";
import {
  askLinesOnPump,
  curveAt,
  energyMeasure,
  linesRunningTable,
  readCurve,
  readEnergySource,
  readPlainCurve,
  steadyDuty,
} from "../boundary/pump";
import { spillTable } from "../boundary/table";
import { hourMeasure, readUnits } from "../boundary/units";
import { netPositiveSuctionHead } from "../formulas/net-positive-suction-head";
import { shaftPower } from "../formulas/pump-power";
import { pumpingEnergy } from "../formulas/pumping-energy";
import { HIGHEST_ALTITUDE, LOWEST_ALTITUDE } from "../formulas/standard-atmosphere";
import { staticPressure } from "../formulas/static-pressure";
import { totalDynamicHead } from "../formulas/total-dynamic-head";
import { ZERO_CELSIUS } from "../ground/unit-factors";
import type { LineArguments } from "./line-arguments";
import type { Units } from "./units";

/** @customenum {string} */
enum EnergySource {
  /** kWh */
  Electric = "electric",
  /** gallons or liters */
  Diesel = "diesel",
  /** gallons or liters, liquid */
  Propane = "propane",
  /** gallons or liters */
  Gasoline = "gasoline",
  /** thousand cubic feet or cubic meters */
  NaturalGas = "natural gas",
}

/**
 * Total dynamic head that a pump must give.
 * @customfunction PUMP_TDH PUMP.TDH
 * @param pressure Pressure wanted at the far end, where the line is fed (psi, kPa), 0 or more.
 * @param lift Height from the water surface up to that point (ft, m), negative when it lies below the water.
 * @param losses Friction from the water to that point, pipe, fittings, screen and valves together (psi, kPa), 0 or more; 0 is none.
 * @param [velocity] Velocity of the water there (ft/s, m/s), 0 or more; blank or 0 leaves the velocity head out.
 * @returns Head (ft, m).
 * @remarks Bernoulli's equation with friction: pressure and losses as height of water at 20 °C (2.311 ft a psi), plus the lift, plus V²/2g.
 * @source Bernoulli's equation; water 998.2 kg/m³, g 9.80665 m/s².
 * @errors #VALUE! for a blank or text among the first three, or a negative pressure, loss or velocity.
 * @cautions pressure, electricity
 * @task how much head must my pump make?
 * @example =IRRIG.PUMP.TDH(48, 12, 6.5, "US", 4)
 */
export function pumpTdh(pressure: any, lift: any, losses: any, units?: Units, velocity?: any): any {
  const u = readUnits(units);
  return u.length.give(
    totalDynamicHead(
      u.pressure.read("pressure", pressure, atLeast(0)),
      u.length.read("lift", lift, anyNumber),
      u.pressure.read("losses", losses, atLeast(0)),
      u.speed.readOr("velocity", velocity, atLeast(0), 0),
    ),
  );
}

/**
 * Power at the pump's shaft.
 * @customfunction PUMP_POWER PUMP.POWER
 * @arguments pump
 * @param efficiency Efficiency of the pump as a fraction, above 0 and at most 1, as its curve shows at this flow.
 * @returns Power (hp, kW).
 * @remarks Flow × head × weight of water over the efficiency; the handbooks' QH/3960 in US units. The motor or engine needs more: its own losses, those of a drive, and a reserve. The pump's curve and the motor's nameplate go first.
 * @source Definition of power; water 998.2 kg/m³, g 9.80665 m/s².
 * @errors #VALUE! for a blank, text or negative flow or head, or an efficiency outside 0 to 1.
 * @cautions electricity, fuel
 * @task how large a motor does my pump need?
 * @example =IRRIG.PUMP.POWER(118, 135, 0.68, "US")
 */
export function pumpPower(flow: any, head: any, efficiency: any, units?: Units): any {
  const u = readUnits(units);
  return u.power.give(
    shaftPower(
      u.flow.read("flow", flow, atLeast(0)),
      u.length.read("head", head, atLeast(0)),
      readNumber("efficiency", efficiency, above(0, 1)),
    ),
  );
}

/**
 * Net positive suction head available at a pump that draws from open water.
 * @customfunction PUMP_NPSH PUMP.NPSH
 * @param lift Height of the pump above the water (ft, m); negative when the water stands above the pump.
 * @param loss Friction of the suction side, strainer and fittings with it, as height of water (ft, m), 0 or more.
 * @param [temperature] Water temperature, 32 to 212 °F or 0 to 100 °C; omitted: 68 °F, 20 °C. A blank cell may count as 0, which is 0 °C in "SI" and the default in "US".
 * @param [altitude] Height above the sea (ft, m), −16,404 to 36,089 ft or −5000 to 11,000 m; blank or 0 is the sea.
 * @returns Head (ft, m). Below 0 the water would boil before it reaches the pump.
 * @remarks Air pressure of the ICAO standard atmosphere at the altitude, less the vapor pressure of water at the temperature, less lift and loss. Weather takes off up to about 1 ft (0.3 m) more. Compare it with what the pump's own curve requires, and leave a margin.
 * @source ICAO Doc 7488, standard atmosphere; ANSI/HI 9.6.1, definition.
 * @errors #VALUE! for a blank or text lift or loss, a negative loss, or a temperature or altitude out of range.
 * @cautions water edge, electricity
 * @task can my pump draw water from this depth?
 * @example =IRRIG.PUMP.NPSH(8, 2.5, "US", 75, 1800)
 */
export function pumpNpsh(
  lift: any,
  loss: any,
  units?: Units,
  temperature?: any,
  altitude?: any,
): any {
  const u = readUnits(units);
  return u.length.give(
    netPositiveSuctionHead(
      u.length.read("lift", lift, anyNumber),
      u.length.read("loss", loss, atLeast(0)),
      u.temperature.readOr(
        "temperature",
        temperature,
        u.temperature.betweenSI(ZERO_CELSIUS, ZERO_CELSIUS + 100),
        {
          US: 68,
          SI: 20,
        },
      ),
      u.length.readOr(
        "altitude",
        altitude,
        u.length.betweenSI(LOWEST_ALTITUDE, HIGHEST_ALTITUDE),
        0,
      ),
    ),
  );
}

/**
 * Energy or fuel that pumping takes.
 * @customfunction PUMP_ENERGY PUMP.ENERGY
 * @arguments pump
 * @param hours Hours of pumping, 0 or more.
 * @param source "electric", "diesel", "propane", "gasoline" or "natural gas".
 * @param [performance] How well the pumping plant does against the published criterion, above 0 and at most 2; blank or 0: 1, as good as the criterion. 0.8 is common in the field.
 * @returns Electricity in kWh; diesel, propane and gasoline in gal or L; natural gas in 1000 ft³ or m³.
 * @remarks Water power × hours ÷ (criterion × performance). The criteria are the Nebraska Pumping Plant Performance Criteria, work on the water from a unit of energy with a good pump: electricity 0.885 whp·h a kWh, diesel 12.5 a gal, propane 6.89 a gal, gasoline 8.66 a gal (8.55 in other printings), natural gas 61.7 a 1000 ft³.
 * @source University of Nebraska–Lincoln Extension, Nebraska Pumping Plant Performance Criteria.
 * @errors #VALUE! for a blank, text or negative number, or a source that is not on the list.
 * @cautions fuel, electricity
 * @task what does pumping cost in fuel or electricity?
 * @example =IRRIG.PUMP.ENERGY(118, 135, 11, "electric", "US", 0.8)
 */
export function pumpEnergy(
  flow: any,
  head: any,
  hours: any,
  source: EnergySource,
  units?: Units,
  performance?: any,
): any {
  const u = readUnits(units);
  const energySource = readEnergySource(source);
  return energyMeasure(u, energySource).give(
    pumpingEnergy(
      u.flow.read("flow", flow, atLeast(0)),
      u.length.read("head", head, atLeast(0)),
      hourMeasure.read("hours", hours, atLeast(0)),
      energySource,
      readOptionalNumber("performance", performance, above(0, 2)) ?? 1,
    ),
  );
}

/**
 * Spills the flow and head at which a pump runs on a system.
 * @customfunction PUMP_DUTY PUMP.DUTY
 * @param curve The pump's curve: two columns, flow (gpm, m³/h) and head (ft, m), two points or more, from the least flow up.
 * @param demand The system's curve in the same two columns: the total dynamic head it asks at each flow.
 * @returns A header row, then flow (gpm, m³/h) and head (ft, m).
 * @remarks A monotone cubic goes through the points of either curve (two points: a straight line), and nothing is guessed beyond them. The pump must be above the demand at less flow and below it at more, or it does not settle there. A last row of 0 and 0 counts as blank.
 * @source Fritsch and Carlson (1980), SIAM Journal on Numerical Analysis 17; Fritsch and Butland (1984), SIAM Journal on Scientific and Statistical Computing 5.
 * @errors #VALUE! for a curve that is not two columns of numbers, one point only, or a flow listed twice. #N/A when the curves do not cross (and which is above), cross more than once (and where), or cross the wrong way round.
 * @cautions electricity, pressure
 * @task at what flow and pressure will my pump run?
 * @example =IRRIG.PUMP.DUTY({0,148;60,141;120,124;170,98}, {40,92;80,104;120,122;160,146}, "US")
 */
export function pumpDuty(curve: any[][], demand: any[][], units?: Units): any[][] {
  const u = readUnits(units);
  const duty = steadyDuty(
    u,
    readCurve(u, "curve", curve, atLeast(0)),
    readCurve(u, "demand", demand, anyNumber),
  );
  return spillTable(
    [
      { header: "flow", unit: u.flow.unit },
      { header: "head", unit: u.length.unit },
    ],
    [[u.flow.give(duty.flow), u.length.give(duty.head)]],
  );
}

/**
 * Any column of a pump's sheet at a flow: head, efficiency, suction head required or power.
 * @customfunction PUMP_CURVE PUMP.CURVE
 * @param points Two columns, flow and what the sheet gives at it, two points or more, from the least flow up; 0 or more, in the units of the sheet.
 * @param flow Flow, in the unit of the first column, 0 or more.
 * @returns What the curve gives at that flow, in the unit of the second column.
 * @remarks A monotone cubic goes through the points (two points: a straight line), so that the curve never swings beyond them. Nothing is guessed below the first point or above the last. A last row of 0 and 0 counts as blank.
 * @source Fritsch and Carlson (1980), SIAM Journal on Numerical Analysis 17; Fritsch and Butland (1984), SIAM Journal on Scientific and Statistical Computing 5.
 * @errors #VALUE! for points that are not two columns of numbers, one point only, a flow listed twice, or a negative, blank or text flow. #N/A for a flow outside the points.
 * @cautions electricity
 * @task what does my pump's sheet give at this flow?
 * @example =IRRIG.PUMP.CURVE({0,148;60,141;120,124;170,98}, 90)
 */
export function pumpCurve(points: any[][], flow: any): any {
  const curve = readPlainCurve("points", points);
  return curveAt(curve, readNumber("flow", flow, atLeast(0)));
}

/**
 * Highest pressure in the line while the pump runs against shut valves.
 * @customfunction PUMP_STATIC PUMP.STATIC
 * @arguments pump
 * @param curve The pump's curve: two columns, flow (gpm, m³/h) and head (ft, m), from the least flow up; it must have a point at zero flow.
 * @param [drop] Fall from the hydrant down to the lowest point of the line (ft, m), 0 or more; blank or 0 is none.
 * @returns Pressure (psi, kPa).
 * @remarks The head of the curve at zero flow, less the lift, plus the drop, as pressure. Every pipe, joint and valve at the lowest point must be rated for it; a sudden stop adds surge (PIPE.SURGE). A pump whose curve rises from zero flow makes more head at some flow than this.
 * @source Hydrostatics; water 998.2 kg/m³, g 9.80665 m/s².
 * @errors #VALUE! for a curve that is not two columns of numbers, a blank or text lift, or a negative drop. #N/A when the curve has no point at zero flow, or does not lift the water to the line.
 * @cautions pressure, electricity
 * @task what is the highest pressure my pipe can see?
 * @example =IRRIG.PUMP.STATIC({0,148;60,141;120,124;170,98}, 12, "US", 13)
 */
export function pumpStatic(curve: any[][], lift: any, units?: Units, drop?: any): any {
  const u = readUnits(units);
  return u.pressure.give(
    staticPressure(
      readCurve(u, "curve", curve, atLeast(0)),
      u.length.read("lift", lift, anyNumber),
      u.length.readOr("drop", drop, atLeast(0), 0),
    ),
  );
}

/**
 * Spills label and value for equal lines that run on one pump: flow of all lines, pump head, hydrant pressure, lateral inlet pressure, lowest nozzle pressure and average flow per sprinkler.
 * @customfunction PUMP_LINES PUMP.LINES
 * @arguments line
 * @param curve The pump's curve: two columns, flow (gpm, m³/h) and head (ft, m), two points or more.
 * @param lift Height from the water surface up to the hydrant (ft, m), negative when the hydrant lies below the water.
 * @param running Number of lines that run at once, 1 to 100.
 * @param main Pipe from the pump to the hydrant, which carries all lines: two columns, inside diameter (in, mm) and length (ft, m), one row per size in series.
 * @param feeder Pipe from the hydrant to each line, which carries that line alone: two columns, inside diameter (in, mm) and length (ft, m), one row per size in series.
 * @param [rise] Ground above the hydrant (ft, m), uphill positive: one value is that of the last head, spread evenly with distance; a row or column is each head's own. Blank or 0: level.
 * @param [first] Distance from where the lateral begins to head 1 (ft, m), above 0 (blank or 0: the spacing). Not with a range of spacings, which holds it.
 * @returns 6 rows of label and value, with the unit in the label.
 * @remarks Pump, main, feeders and lines solved together: the lines take what the pump then gives them. All lines are alike and stand on the hydrant's level plus the rise; fittings are not counted. A monotone cubic goes through the points of the curve and nothing is guessed beyond them; the pump runs on the falling branch, from its highest head on. Heads that run dry show as a lowest nozzle pressure of 0.
 * @source Energy and continuity; friction of USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016), or Colebrook (1939), Journal of the ICE 11; curve by Fritsch and Butland (1984).
 * @errors #N/A when the pump does not lift the water to the lowest head, or the lines take less or more water than the curve covers. {@text lineWrong}
 * @cautions pressure, electricity, backflow
 * @task what pressure is left when one more line runs?
 * @example =IRRIG.PUMP.LINES({0,148;60,141;120,124;170,98}, 12, 2, {2.9,250}, {2.6,320}, 14, 45, {2.16,7;1.72,7}, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function pumpLines(
  curve: any[][],
  lift: any,
  running: any,
  main: any[][],
  feeder: any[][],
  ...line: LineArguments
): any[][] {
  return linesRunningTable(
    askLinesOnPump({ curve, lift, running, main, feeder, ...lineCells(line) }),
  );
}
