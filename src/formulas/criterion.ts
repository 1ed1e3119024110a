/**
 * How far a value is beyond a criterion. A value that rounding leaves beside its bound keeps it:
 * (50 − 40)/50 is the limit of 0.2, whatever its last binary digit.
 */
const ROUNDING = 1e-9;

/** How far above the most that is allowed; 0 where it is not. */
export function excess(value: number, most: number): number {
  return value <= most * (1 + ROUNDING) ? 0 : value - most;
}

/** How far below the least that is needed; 0 where it is not. */
export function shortfall(value: number, least: number): number {
  return value >= least * (1 - ROUNDING) ? 0 : least - value;
}
