import { KILOPASCAL } from "../ground/unit-factors";

/**
 * Pressure of the air at an elevation, at 20 °C:
 *
 *     P = 101.3 ((293 − 0.0065 z) / 293)^5.26      kPa; z in m
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), equation 7. Example: 81.8 kPa at 1800 m
 * (Example 2).
 */
export function barometricPressure(elevation: number): number {
  return KILOPASCAL * 101.3 * ((293 - 0.0065 * elevation) / 293) ** 5.26;
}

/**
 * Psychrometric constant, Pa/K, at a pressure of the air (Pa): γ = 0.000665 P (equation 8, with
 * 2.45 MJ/kg to evaporate water). Example: 0.054 kPa/°C at 1800 m (Example 2).
 */
export function psychrometricConstant(airPressure: number): number {
  return 0.665e-3 * airPressure;
}
