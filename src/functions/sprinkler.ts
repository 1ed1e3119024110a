import { above, atLeast, readOptionalNumber } from "../boundary/numbers";
import {
  coefficientUnit,
  giveCoefficient,
  readChart,
  readDischarge,
  readSpacingWind,
} from "../boundary/sprinkler";
import { spillPairs } from "../boundary/table";
import { readUnits } from "../boundary/units";
import { headFlow, pressureForFlow } from "../formulas/discharge-law";
import { NOZZLE_COEFFICIENT, nozzleFlow } from "../formulas/nozzle";
import { fitPowerLaw } from "../formulas/power-law-fit";
import { largestSpacing } from "../formulas/sprinkler-spacing";
import type { Units } from "./units";

/**
 * Flow of a sprinkler head at a pressure.
 * @customfunction SPRINKLER_FLOW SPRINKLER.FLOW
 * @param pressure Pressure at the nozzle (psi, kPa), 0 or more.
 * @param discharge The sprinkler's performance chart, two columns: pressure (psi, kPa) and flow (gpm, m³/h); or one number, the coefficient K in flow = K·√pressure.
 * @returns Flow (gpm, m³/h).
 * @remarks One row of a chart gives K with exponent ½. More rows are joined by power laws, q = K·p^x between each two, and the end pieces go on beyond the chart; CHECK.CHART says when a pressure is outside it.
 * @source The orifice equation with the manufacturer's own points; USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative pressure, or a chart with a blank, a repeated pressure or a flow that falls as the pressure rises.
 * @task how much does a head give at this pressure?
 * @example =IRRIG.SPRINKLER.FLOW(42, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function sprinklerFlow(pressure: any, discharge: any[][], units?: Units): any {
  const u = readUnits(units);
  return u.flow.give(
    headFlow(readDischarge(u, discharge), u.pressure.read("pressure", pressure, atLeast(0))),
  );
}

/**
 * Pressure at which a sprinkler head gives a flow.
 * @customfunction SPRINKLER_PRESSURE SPRINKLER.PRESSURE
 * @param flow Flow of the head (gpm, m³/h), 0 or more.
 * @param discharge The sprinkler's performance chart, two columns: pressure (psi, kPa) and flow (gpm, m³/h); or one number, the coefficient K in flow = K·√pressure.
 * @returns Pressure at the nozzle (psi, kPa).
 * @remarks The reverse of SPRINKLER.FLOW.
 * @source The orifice equation with the manufacturer's own points; USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #N/A where the chart's flow does not change with the pressure. #VALUE! for a blank, text or negative flow, or a chart with a blank, a repeated pressure or a flow that falls as the pressure rises.
 * @task what pressure does a head need for this flow?
 * @example =IRRIG.SPRINKLER.PRESSURE(4, {35,3.7;45,4.2;55,4.6}, "US")
 */
export function sprinklerPressure(flow: any, discharge: any[][], units?: Units): any {
  const u = readUnits(units);
  return u.pressure.give(
    pressureForFlow(readDischarge(u, discharge), u.flow.read("flow", flow, atLeast(0))),
  );
}

/**
 * Flow of a round nozzle from its diameter.
 * @customfunction SPRINKLER_NOZZLE SPRINKLER.NOZZLE
 * @param diameter Nozzle diameter (in, mm), above 0.
 * @param pressure Pressure at the nozzle (psi, kPa), 0 or more.
 * @param [cd] Discharge coefficient, above 0 and at most 1 (blank or 0: 0.96).
 * @returns Flow (gpm, m³/h).
 * @remarks cd·A·√(2p/ρ), in US units 29.85·cd·D²·√p. For a plain round nozzle; the sprinkler's own chart goes first.
 * @source USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11 (2016).
 * @errors #VALUE! for a blank, text or negative pressure, a diameter that is not above 0, or a coefficient above 1.
 * @task how much does a nozzle of this size give?
 * @example =IRRIG.SPRINKLER.NOZZLE(0.1563, 45, "US", 0.96)
 */
export function sprinklerNozzle(diameter: any, pressure: any, units?: Units, cd?: any): any {
  const u = readUnits(units);
  return u.flow.give(
    nozzleFlow(
      u.diameter.read("diameter", diameter, above(0)),
      u.pressure.read("pressure", pressure, atLeast(0)),
      readOptionalNumber("cd", cd, above(0, 1)) ?? NOZZLE_COEFFICIENT,
    ),
  );
}

/**
 * Spills the coefficient K and the exponent x of q = K·p^x, fitted to a sprinkler's chart.
 * @customfunction SPRINKLER_K SPRINKLER.K
 * @param chart The sprinkler's performance chart, two columns: pressure (psi, kPa) and flow (gpm, m³/h), each above 0, rows in any order.
 * @returns Two rows of label and value: K (gpm per psi^x, m³/h per kPa^x) and the exponent x.
 * @remarks Least squares on the logarithms of pressure and flow. One row gives x = ½. As the discharge argument, a K alone means exponent ½: where x is far from ½, give the chart itself.
 * @source Linear least squares; the orifice equation.
 * @errors #VALUE! for a chart with a blank, text, a number that is not above 0, a repeated pressure or a flow that falls as the pressure rises.
 * @task what is the K of this sprinkler?
 * @example =IRRIG.SPRINKLER.K({35,3.7;45,4.2;55,4.6}, "US")
 */
export function sprinklerK(chart: any[][], units?: Units): any[][] {
  const u = readUnits(units);
  const { pressures, flows } = readChart(u, chart, "chart");
  const law = fitPowerLaw(pressures, flows);
  return spillPairs([
    [{ header: "K", unit: coefficientUnit(u) }, giveCoefficient(u, law)],
    [{ header: "exponent x" }, law.exponent],
  ]);
}

/**
 * Spills the largest spacing of heads along the line and of positions of the line, for a wetted diameter and a wind speed.
 * @customfunction SPRINKLER_SPACING SPRINKLER.SPACING
 * @param wetted Wetted diameter of the sprinkler (ft, m), above 0, from its sheet at the pressure used.
 * @param wind Usual wind speed while irrigating (mph, km/h), 0 or more.
 * @returns Two rows of label and value: spacing along the line and between positions (ft, m).
 * @remarks Along the line 50% of the wetted diameter. Between positions 65% in calm air, up to and at 0.5 mph (0.8 km/h), 60% up to and at 5 mph (8 km/h), 50% up to and at 10 mph (16 km/h), 45% above: a step, so look at the next class too. A wind that shows as a limit to three digits is that limit. A starting point: a catch test on the field goes first.
 * @source Older issues of USDA-NRCS Conservation Practice Standard 442, Irrigation System, Sprinkler (from memory).
 * @errors #VALUE! for a wetted diameter that is not above 0, or a blank, text or negative wind.
 * @cautions roads and buildings, overhead wires, treated water
 * @task how far apart may heads and positions be?
 * @example =IRRIG.SPRINKLER.SPACING(90, 4, "US")
 */
export function sprinklerSpacing(wetted: any, wind: any, units?: Units): any[][] {
  const u = readUnits(units);
  const { along, between } = largestSpacing(
    u.length.read("wetted", wetted, above(0)),
    readSpacingWind(u, wind),
  );
  return spillPairs([
    [{ header: "along the line", unit: u.length.unit }, u.length.give(along)],
    [{ header: "between positions", unit: u.length.unit }, u.length.give(between)],
  ]);
}
