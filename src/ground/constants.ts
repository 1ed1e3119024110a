/** Standard acceleration of gravity, m/s² (NIST SP 811, 2008, Appendix B.8). */
export const GRAVITY = 9.80665;

/** Density of water at 20 °C, kg/m³: one value for every elevation head, so that 1 psi is 2.311 ft. */
export const WATER_DENSITY = 998.2;

/** Weight of a cubic meter of water, N/m³: pressure of one meter of water, Pa. */
export const WATER_WEIGHT = WATER_DENSITY * GRAVITY;
