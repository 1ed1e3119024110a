import { densityOfWater } from "./water-density";

/**
 * Dynamic viscosity of liquid water at 0.1 MPa, µPa·s, with T* = T/300 K:
 *
 *     µ = 280.68 T*^−1.9 + 511.45 T*^−7.7 + 61.131 T*^−19.6 + 0.45903 T*^−40
 *
 * Source: IAPWS SR6-08, Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa
 * (2011); Pátek et al., Journal of Physical and Chemical Reference Data 38 (2009). Valid from −20 to
 * 110 °C within 1%. Example: 1.0016 mPa·s at 20 °C.
 */
const TERMS: readonly (readonly [coefficient: number, exponent: number])[] = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
];
const REFERENCE_TEMPERATURE = 300;
const MICRO = 1e-6;

/** Dynamic viscosity, Pa·s, at a temperature (K). */
export function dynamicViscosity(temperature: number): number {
  const reduced = temperature / REFERENCE_TEMPERATURE;
  return (
    MICRO *
    TERMS.reduce((sum, [coefficient, exponent]) => sum + coefficient * reduced ** exponent, 0)
  );
}

/** Kinematic viscosity, m²/s, at a temperature (K): ν = µ/ρ. */
export function kinematicViscosity(temperature: number): number {
  return dynamicViscosity(temperature) / densityOfWater(temperature);
}
