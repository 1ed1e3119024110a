import { HOUR } from "../ground/unit-factors";

/**
 * Design factors for a pull on polyethylene pipe: how much of the tensile yield strength may be
 * used, and the part of that left for the time the pull lasts (s). ASTM F1804, Standard Practice
 * for Determining Allowable Tensile Load for Polyethylene (PE) Gas Pipe During Pull-In Installation
 * (formula and factors read in secondary texts).
 */
export const YIELD_FACTOR = 0.4;

export const TIME_FACTORS: readonly (readonly [longest: number, factor: number])[] = [
  [1 * HOUR, 1],
  [12 * HOUR, 0.95],
  [24 * HOUR, 0.91],
];
