import type { UnitSystem } from "../kit/definition";

/**
 * Three invented catch tests of Bluestem Flat, each of two hours. They speak of one field: the
 * uniformity (CU) of each is the field's at one spot, and the average is what its sprinklers give on
 * its spacing and move, less a twentieth lost in the air.
 */
export interface CatchSamples {
  /** Diameter of a can's opening. */
  readonly opening: number;
  readonly hours: number;
  /** From can to can, in leg and row. */
  readonly step: number;
  /** Out from one sprinkler that runs alone, mL. */
  readonly leg: readonly number[];
  /** Across one line that runs alone, the line in the middle, mL. */
  readonly row: readonly number[];
  /** Between four sprinklers while everything around runs, mL. */
  readonly block: readonly (readonly number[])[];
}

const samples: Readonly<Record<UnitSystem, CatchSamples>> = {
  US: {
    opening: 4,
    hours: 2,
    step: 10,
    leg: [29, 24, 24, 24, 23, 0],
    row: [0, 4, 16, 36, 64, 99, 64, 36, 17, 4, 0],
    block: [
      [90, 70, 65, 93],
      [75, 54, 47, 70],
      [61, 49, 43, 65],
      [82, 65, 70, 96],
    ],
  },
  SI: {
    opening: 100,
    hours: 2,
    step: 3,
    leg: [26, 26, 25, 24, 23, 0],
    row: [0, 4, 16, 35, 61, 95, 61, 35, 15, 4, 0],
    block: [
      [86, 67, 62, 89],
      [72, 52, 45, 67],
      [58, 47, 41, 62],
      [78, 62, 67, 92],
    ],
  },
};

export function catchSamples(system: UnitSystem): CatchSamples {
  return samples[system];
}
