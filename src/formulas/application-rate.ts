/**
 * Average application rate, m/s: a head's flow (m³/s) over the ground it stands for, the spacing of
 * heads along the line times the move between positions of the line (m).
 *
 *     I = 96.3 q / (S M)      in/h; q in gpm, S and M in ft
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11, Sprinkler Irrigation. The
 * printed 96.3 is 231 in³/gal × 60 min/h ÷ 144 in²/ft² = 96.25, rounded; here it is exact. It is
 * the mean over the area as discharged: evaporation and drift come off it, and under one head it
 * rains harder or softer. Example: 12.5 gpm at 40 ft by 60 ft is 0.50 in/h.
 */
export function averageRate(flow: number, spacing: number, move: number): number {
  return flow / (spacing * move);
}
