import { ZERO_CELSIUS } from "../ground/unit-factors";

/** Pressure allowed at a pipe-wall temperature over that at the reference: rising K, straight lines between. */
export type TemperatureFactors = readonly (readonly [temperature: number, factor: number])[];

const fahrenheit = (degrees: number) => ((degrees + 459.67) * 5) / 9;
const celsius = (degrees: number) => degrees + ZERO_CELSIUS;

/**
 * Polyethylene pipe of the inch series. Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd
 * edition, chapter 3, table A.2 (from memory; its values above 1 below 73 °F are left out).
 */
export const INCH_FACTORS: TemperatureFactors = [
  [fahrenheit(73), 1],
  [fahrenheit(80), 0.94],
  [fahrenheit(90), 0.86],
  [fahrenheit(100), 0.78],
  [fahrenheit(110), 0.71],
  [fahrenheit(120), 0.64],
  [fahrenheit(130), 0.57],
  [fahrenheit(140), 0.5],
];

/**
 * Polyethylene pipe of the metric series. ISO 4427-1 annex A (from memory; an open table that names
 * no standard has the same).
 */
export const METRIC_FACTORS: TemperatureFactors = [
  [celsius(20), 1],
  [celsius(30), 0.87],
  [celsius(40), 0.74],
];
