import { anyNumber, readNumber } from "../boundary/numbers";
import { readConversion } from "../boundary/units";
import { convert } from "../formulas/unit-conversion";

/**
 * Converts irrigation units.
 * @customfunction UNIT_CONVERT UNIT.CONVERT
 * @param value Number to convert.
 * @param from Unit it is in, as text: "psi", "ft of water", "gpm", "m³/h", "acre-in", "in/h", "°F" … An unknown one gives an error that lists all.
 * @param to Unit to give it in, of the same quantity.
 * @returns The number in the other unit.
 * @remarks Spaces, hyphens and superscripts may be left out (ft2, m3/h) and case does not matter, except where it tells two units apart: mL is a milliliter, ML a megaliter. Gallons are US gallons. A head of water is at 20 °C (998.2 kg/m³), so 1 psi is 2.311 ft. Temperatures are points on the scale, not differences. The units are: length or depth: ft, in, yd, mi, m, cm, mm, km; area: acre, ha, ft², in², yd², mi², m², cm², mm², km²; volume: gal, imp gal, ft³, in³, yd³, acre-in, acre-ft, L, mL, ML, m³, cm³, ha-mm, ha-m; flow: gpm, gph, gpd, imp gpm, cfs, cfm, acre-in/h, acre-ft/day, L/s, L/min, L/h, m³/h, m³/s, m³/day, ML/day; pressure or head of water: psi, ft of water, in of water, m of water, mm of water, kPa, Pa, MPa, bar, mbar, atm, kgf/cm², in of mercury, mm of mercury; speed or application rate: ft/s, ft/min, in/h, in/day, mph, m/s, mm/h, mm/day, cm/h, km/h; temperature: °F, °C, K; power: hp, metric hp, W, kW, MW; energy: kWh, hp-h, J, kJ, MJ, Btu; force: lbf, N, kN, kgf; mass: lb, oz, short ton, g, kg, t; water capacity of soil: in/ft, mm/m, m/m; solar radiation: MJ/m²/day, W/m², ly/day, kWh/m²/day; density: lb/ft³, lb/gal, kg/m³, g/cm³; kinematic viscosity: ft²/s, m²/s, mm²/s.
 * @source NIST Special Publication 811 (2008), Guide for the Use of the International System of Units, Appendix B.8.
 * @errors #VALUE! for an unknown unit, two units of different quantities (the message names both), a temperature below absolute zero, a blank or text for value.
 * @task how do I change units?
 * @example =IRRIG.UNIT.CONVERT(50, "psi", "ft of water")
 */
export function unitConvert(value: any, from: any, to: any): any {
  const number = readNumber("value", value, anyNumber);
  const conversion = readConversion(from, to);
  return convert(number, conversion.from, conversion.to);
}
