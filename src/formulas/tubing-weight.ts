import { WATER_DENSITY } from "../ground/constants";
import { boreArea } from "./mean-speed";

/** Density of polyethylene pipe, kg/m³: the usual round value between 0.93 and 0.96 g/cm³. */
export const POLYETHYLENE_DENSITY = 950;

/** A length of tubing of one size, SI. */
export interface Tubing {
  readonly outside: number;
  readonly inside: number;
  readonly length: number;
}

/**
 * Mass, kg, of tubing: its wall of polyethylene, and the water (20 °C) in it when it is full. The
 * volume of a tube; example: 100 m of 63 mm tubing with a bore of 55.4 mm weighs 67 kg, and 308 kg
 * when full.
 */
export function tubingWeight({ outside, inside, length }: Tubing, full: boolean): number {
  const wall = boreArea(outside) - boreArea(inside);
  const water = full ? boreArea(inside) : 0;
  return length * (wall * POLYETHYLENE_DENSITY + water * WATER_DENSITY);
}

/** Mass, kg, of a line: its tubing and the heads on it. */
export function lineWeight(
  tubing: readonly Tubing[],
  heads: number,
  headWeight: number,
  full: boolean,
): number {
  return tubing.reduce((sum, part) => sum + tubingWeight(part, full), heads * headWeight);
}
