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

/**
 * Nominal pressure (PN), bar, by SDR and material: what metric pipe is sold for, rounded down to a
 * preferred number from the 2σ/(SDR − 1) that its stress would carry.
 *
 * Source: ISO 4427-2:2007, table of nominal pressures (read in a secondary text).
 */
export const NOMINAL_PRESSURES: ReadonlyMap<
  number,
  { readonly PE100: number; readonly PE80: number }
> = new Map([
  [7.4, { PE100: 25, PE80: 20 }],
  [9, { PE100: 20, PE80: 16 }],
  [11, { PE100: 16, PE80: 12.5 }],
  [13.6, { PE100: 12.5, PE80: 10 }],
  [17, { PE100: 10, PE80: 8 }],
  [21, { PE100: 8, PE80: 6 }],
  [26, { PE100: 6, PE80: 5 }],
  [33, { PE100: 5, PE80: 4 }],
]);

/**
 * The greatest nominal pressure of metric pipe, bar, however thick its wall.
 *
 * Source: ISO 4427-2:2007, scope: a maximum operating pressure up to and including 25 bar (read in
 * its publisher's abstract); its table gives PE 80 at SDR 6 PN 25 and PE 100 none (read in a
 * secondary text).
 */
export const GREATEST_NOMINAL_PRESSURE = 25;
