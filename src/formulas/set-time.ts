/**
 * Depth, rate and time of a set, in any units that belong together (m, m/s and s, or in, in/h and h):
 * what reaches the root zone is what is discharged times the application efficiency.
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11: gross depth is net depth
 * over efficiency, set time is gross depth over rate. Example: 2.4 in net at 70% is 3.43 in gross,
 * 6.86 h at 0.5 in/h.
 */

/** Depth that a rate puts on in a time; the net depth where an efficiency below 1 is given. */
export function appliedDepth(rate: number, time: number, efficiency: number): number {
  return rate * time * efficiency;
}

/** Time to put on a net depth. */
export function timeForDepth(netDepth: number, rate: number, efficiency: number): number {
  return netDepth / (rate * efficiency);
}
