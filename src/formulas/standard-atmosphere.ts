import { GRAVITY } from "../ground/constants";

/**
 * Air pressure at an altitude in the ICAO standard atmosphere, troposphere:
 *
 *     p = p₀ (1 − L z/T₀)^(g/RL)
 *
 * with p₀ = 101 325 Pa, T₀ = 288.15 K, L = 0.0065 K/m and R = 287.052 87 J/(kg·K). Source: ICAO
 * Doc 7488, Manual of the ICAO Standard Atmosphere (the same as ISO 2533:1975). Valid from 5 km
 * below the sea to 11 km above it. Example: 1000 m has 89 875 Pa.
 */
const SEA_LEVEL_PRESSURE = 101325;
const SEA_LEVEL_TEMPERATURE = 288.15;
const LAPSE_RATE = 0.0065;
const GAS_CONSTANT = 287.05287;

export const LOWEST_ALTITUDE = -5000;
export const HIGHEST_ALTITUDE = 11000;

/** Pressure, Pa, at a geopotential altitude, m. */
export function standardAtmosphere(altitude: number): number {
  const warmth = 1 - (LAPSE_RATE * altitude) / SEA_LEVEL_TEMPERATURE;
  return SEA_LEVEL_PRESSURE * warmth ** (GRAVITY / (GAS_CONSTANT * LAPSE_RATE));
}
