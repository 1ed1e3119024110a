import { WATER_DENSITY } from "../ground/constants";
import { meanSpeed } from "./mean-speed";
import { FOOT, PSI } from "../ground/unit-factors";

/**
 * Surge when the flow in a pipe is stopped: the elastic wave (Joukowsky).
 *
 *     a = 4660/√(1 + (K/E)·D/t)  ft/s      ΔP = ρ a ΔV
 *
 * K is the bulk modulus of water, E the wall's short-term modulus, D the bore and t the wall.
 * Source: Plastics Pipe Institute, Handbook of Polyethylene Pipe, 2nd edition, chapter 6, which
 * writes D/t as DR − 2. Example: DR 17 with E = 150 000 psi has a = 837 ft/s, 11.26 psi for each
 * foot a second stopped.
 */
const WAVE_IN_RIGID_PIPE = 4660 * FOOT;
const BULK_MODULUS = 300_000 * PSI;

/** Dynamic modulus of polyethylene for a pressure wave (same handbook), Pa. */
export const POLYETHYLENE_MODULUS = 150_000 * PSI;

/** Speed of a pressure wave in the pipe, m/s. */
export function waveSpeed(bore: number, wall: number, modulus: number): number {
  return WAVE_IN_RIGID_PIPE / Math.sqrt(1 + (BULK_MODULUS / modulus) * (bore / wall));
}

/** Pressure above the running pressure, Pa, when water at `speed` stops before its wave is back. */
export function suddenSurge(speed: number, wave: number): number {
  return WATER_DENSITY * wave * speed;
}

/**
 * What is left of the sudden surge when the valve takes `closure` seconds to close evenly: all of it
 * up to the wave's way there and back, 2L/a; from there in inverse proportion to the time.
 */
export function closureShare(length: number, wave: number, closure: number): number {
  const thereAndBack = (2 * length) / wave;
  return closure <= thereAndBack ? 1 : thereAndBack / closure;
}

/** A flow that is stopped in a pipe, SI. */
export interface Stop {
  readonly flow: number;
  readonly outside: number;
  readonly bore: number;
  readonly modulus: number;
  /** Length back to where the wave is thrown back, m. */
  readonly length: number;
  /** Time to close, s; 0 is at once. */
  readonly closure: number;
}

/** Surge pressure, Pa. */
export function surgePressure({ flow, outside, bore, modulus, length, closure }: Stop): number {
  const wave = waveSpeed(bore, (outside - bore) / 2, modulus);
  return suddenSurge(meanSpeed(flow, bore), wave) * closureShare(length, wave, closure);
}
