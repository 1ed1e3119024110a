import { INCH, MINUTE, US_GALLON } from "../ground/unit-factors";

/**
 * Hazen–Williams friction, the handbook form
 *
 *     J = 1050 (Q/C)^1.852 D^−4.87      ft per 100 ft; Q in gpm, D in inches
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11, Sprinkler Irrigation.
 * Valid for water near 20 °C in turbulent flow. Example: 50 gpm in a 2.067 in bore at C 150 loses
 * 4.00 ft in 100 ft. The constant below is the same equation in m³/s and m, not a second rounding.
 */
export const FLOW_EXPONENT = 1.852;
export const BORE_EXPONENT = 4.87;

const PER_100_FT = 1050;
const GPM = US_GALLON / MINUTE;

/** Bounds of the C values in published tables, rough old iron to the smoothest plastic. */
export const LEAST_C = 50;
export const GREATEST_C = 200;

/** The handbook's C for clean plastic pipe; it leaves out saddles and joints (140 allows for them). */
export const CLEAN_PLASTIC_C = 150;

const SI_CONSTANT = (PER_100_FT / 100) * GPM ** -FLOW_EXPONENT * INCH ** BORE_EXPONENT;

/** Head lost per unit length for 1 m³/s: multiplied by Q^1.852 gives m per m. */
export function hazenWilliamsCoefficient(c: number, bore: number): number {
  return SI_CONSTANT * c ** -FLOW_EXPONENT * bore ** -BORE_EXPONENT;
}

/** Head lost to friction, m, by a flow (m³/s) through a bore (m) over a length (m). */
export function hazenWilliams(flow: number, bore: number, length: number, c: number): number {
  return hazenWilliamsCoefficient(c, bore) * flow ** FLOW_EXPONENT * length;
}
