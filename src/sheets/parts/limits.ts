import type { Allowed } from "../kit/definition";

/**
 * What the inputs of the ready-made sheets allow. Wide enough for every real field in either unit
 * system; what lies beyond is a slip of the finger.
 */
export type Bounds = Allowed & { readonly low: number; readonly high: number };

export function amount(low: number, high: number): Bounds {
  return { low, high };
}

export function optional(allowed: Bounds): Bounds {
  return { ...allowed, optional: true };
}

export const pressure = amount(1, 2000);
export const height = amount(-1000, 1000);
export const length = amount(0, 100000);
export const flow = amount(0, 100000);
export const price = amount(0, 1000000);
export const degrees = amount(-360, 360);
/** Nominal outside diameter in mm, as the standard's series runs. */
export const size = amount(10, 2000);
export const sdr = amount(5, 50);
export const fraction = amount(0.1, 1);
export const temperature = amount(-40, 150);
export const percent = amount(-100, 100);
/** Above this the intake table has no entry. */
export const slope = amount(0, 16);
export const hours = amount(0, 24);
