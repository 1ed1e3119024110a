import {
  GREATEST_NOMINAL_PRESSURE,
  NOMINAL_PRESSURES,
  PIPE_MATERIALS,
} from "../tables/pipe-materials";
import type { PipeSeries } from "../tables/pipe-sizes";
import {
  INCH_FACTORS,
  METRIC_FACTORS,
  type TemperatureFactors,
} from "../tables/temperature-factors";
import { NoAnswer } from "../ground/domain-error";
import { KILOPASCAL } from "../ground/unit-factors";

/**
 * Allowable working pressure of a pipe from its wall's design stress S:
 *
 *     p = 2S/(DR − 1)      outside diameter controlled (ISO, IPS)
 *     p = 2S/(SIDR + 1)    inside diameter controlled
 *
 * Source: ISO 4427-1 and ASTM D3035, D2239 (the ISO equation of ASTM D2837). Example: S = 8 MPa at
 * SDR 17 is 1000 kPa; S = 1000 psi at DR 11 is 200 psi.
 */
export function pipeRating(series: PipeSeries, designStress: number, rating: number): number {
  return (2 * designStress) / (series === "SIDR" ? rating + 1 : rating - 1);
}

/**
 * What is left of a rating at a pipe-wall temperature (K): 1 up to the reference temperature, by
 * straight lines in the industry's own table above it, no answer beyond the table.
 */
export function temperatureFactor(series: PipeSeries, temperature: number): number {
  return interpolated(series === "ISO PE" ? METRIC_FACTORS : INCH_FACTORS, temperature);
}

function interpolated(factors: TemperatureFactors, temperature: number): number {
  if (temperature <= factors[0][0]) return factors[0][1];
  // The table's own end, typed in either unit, is inside it.
  const ROUNDING = 1e-9;
  const above = factors.findIndex(([end]) => temperature <= end * (1 + ROUNDING));
  if (above < 0) {
    throw new NoAnswer(
      "temperature is above the published table: ask the pipe's manufacturer what it carries there",
    );
  }
  const [warm, warmFactor] = factors[above - 1];
  const [hot, hotFactor] = factors[above];
  return warmFactor + ((temperature - warm) / (hot - warm)) * (hotFactor - warmFactor);
}

const BAR = 100 * KILOPASCAL;

/**
 * The pressure class that the metric standard gives an SDR, Pa, for the weakest of its materials
 * that is at least as strong as the design stress; for an SDR that it does not list, the greatest
 * class there is.
 */
function nominalPressure(designStress: number, rating: number): number {
  const classes = NOMINAL_PRESSURES.get(rating);
  if (classes === undefined) return GREATEST_NOMINAL_PRESSURE * BAR;
  return (designStress <= PIPE_MATERIALS.PE80.designStress ? classes.PE80 : classes.PE100) * BAR;
}

/**
 * Allowable working pressure, Pa, reduced for the temperature (K) where one is given. Metric pipe is
 * never rated above its nominal pressure: fittings, tests and markings go by that.
 */
export function reducedRating(
  series: PipeSeries,
  designStress: number,
  rating: number,
  temperature?: number,
): number {
  const byStress = pipeRating(series, designStress, rating);
  const full =
    series === "ISO PE" ? Math.min(byStress, nominalPressure(designStress, rating)) : byStress;
  return temperature === undefined ? full : full * temperatureFactor(series, temperature);
}
