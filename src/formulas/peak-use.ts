import { DAY, INCH } from "../ground/unit-factors";

/**
 * Daily use of a crop over the peak period of its peak month, m/s: the average over as many of the
 * hottest days in a row as one net irrigation lasts, so the more the shallower it is.
 *
 *     u_p = 0.034 u_m^1.09 I^−0.09      u_p in/day, u_m the month's use in, I the net depth in
 *
 * Source: USDA Soil Conservation Service, Technical Release 21, Irrigation Water Requirements (1967,
 * revised 1970), peak period use, from memory; printed there for months of 4 in and more. Its
 * average is held up to that of the month's days, below which no peak can lie. Depths in m. Example:
 * 7.5 in in the month and 2 in net are 0.287 in a day, against 0.242 on average.
 */
export function peakPeriodUse(monthUse: number, net: number): number {
  const inchesADay = 0.034 * (monthUse / INCH) ** 1.09 * (net / INCH) ** -0.09;
  return Math.max((inchesADay * INCH) / DAY, monthUse / LONGEST_MONTH);
}

const LONGEST_MONTH = 31 * DAY;
