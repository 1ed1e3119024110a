/**
 * Days that a net depth lasts at a use a day, not rounded; depth and use in the same unit of length.
 *
 * Source: USDA-NRCS, National Engineering Handbook, Part 623 Chapter 11: the interval is the net
 * depth over the peak daily use. Example: 2 in at 0.25 in a day last 8 days.
 */
export function irrigationInterval(netDepth: number, dailyUse: number): number {
  return netDepth / dailyUse;
}
