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
 * @remarks Spaces, hyphens and superscripts may be left out (ft2, m3/h) and case does not matter, except where it tells two units apart: mL is a milliliter, ML a megaliter. Gallons are US gallons. A head of water is at 20 °C (998.2 kg/m³), so 1 psi is 2.311 ft. Temperatures are points on the scale, not differences. {@text everyUnit}
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
