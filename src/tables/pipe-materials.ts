import { KILOPASCAL, PSI } from "../ground/unit-factors";

/** A polyethylene and the stress its wall may carry for good. */
export interface PipeMaterial {
  /** Hydrostatic design stress, Pa, at the reference temperature. */
  readonly designStress: number;
  /** Which industry's temperature factors it goes with. */
  readonly metric: boolean;
}

/**
 * Design stress by the material's text.
 *
 * Sources: ASTM D3035, hydrostatic design stress at 73 °F (read in a secondary text); ISO
 * 4427-1, minimum required strength over the design coefficient 1.25 (PE 100 read in a secondary
 * text, PE 80 as well).
 */
export const PIPE_MATERIALS = {
  PE4710: { designStress: 1000 * PSI, metric: false },
  PE3608: { designStress: 800 * PSI, metric: false },
  PE2708: { designStress: 800 * PSI, metric: false },
  PE100: { designStress: 8000 * KILOPASCAL, metric: true },
  PE80: { designStress: 6400 * KILOPASCAL, metric: true },
} as const satisfies Readonly<Record<string, PipeMaterial>>;

/** No polyethylene's design stress is higher: a larger number is a basis or an MRS. */
export const GREATEST_DESIGN_STRESS = { US: 1000, SI: 8000 } as const;
