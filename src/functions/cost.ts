import {
  atLeast,
  between,
  fraction,
  readNumber,
  readOptionalNumber,
  wholeNumber,
} from "../boundary/numbers";
import { spillPairs } from "../boundary/table";
import { MOST_YEARS, yearlyCost } from "../formulas/yearly-cost";

/**
 * Spills what a system costs a year: capital, upkeep, energy, labor and the total.
 * @customfunction COST_YEARLY COST.YEARLY
 * @param capital What is spent at the start (any currency), 0 or more.
 * @param years Years that it lasts, a whole number from 1 to 100.
 * @param interest Interest a year, a fraction from 0 to 1.
 * @param [salvage] What it still brings at the end, from 0 (blank) to the capital.
 * @param [upkeep] Upkeep a year as a share of the capital, a fraction (blank: 0).
 * @param [energy] Energy of the first year, 0 or more (blank: 0).
 * @param [escalation] How much dearer energy gets each year, a fraction from 0 (blank) to 1.
 * @param [labor] Labor a year, 0 or more (blank: 0).
 * @returns Label and value, in the currency given: capital recovery, upkeep, energy, labor, total.
 * @remarks Capital recovery is the equal yearly payment, (capital − salvage)·i/(1 − (1 + i)^−n) + salvage·i. Energy is levelled: the equal yearly payment worth as much as the rising ones. The first year is not escalated; tables for federal projects that escalate it too come out higher by one year's rise. Prices are today's, and interest and escalation must both count inflation or both leave it out.
 * @source Engineering economics: capital recovery factor and present worth of a geometric series, closed form.
 * @errors #VALUE! for a blank or negative cost, years that are not a whole number from 1 to 100, a fraction outside 0 to 1, or salvage above the capital.
 * @task what does a system cost a year?
 * @example =IRRIG.COST.YEARLY(9200, 12, 0.06, 600, 0.02, 640, 0.03, 900)
 */
export function costYearly(
  capital: any,
  years: any,
  interest: any,
  salvage?: any,
  upkeep?: any,
  energy?: any,
  escalation?: any,
  labor?: any,
): any[][] {
  const invested = readNumber("capital", capital, atLeast(0));
  const cost = yearlyCost({
    capital: invested,
    years: readNumber("years", years, wholeNumber(1, MOST_YEARS)),
    interest: readNumber("interest", interest, fraction),
    salvage: readOptionalNumber("salvage", salvage, between(0, invested)) ?? 0,
    upkeep: readOptionalNumber("upkeep", upkeep, fraction) ?? 0,
    energy: readOptionalNumber("energy", energy, atLeast(0)) ?? 0,
    escalation: readOptionalNumber("escalation", escalation, fraction) ?? 0,
    labor: readOptionalNumber("labor", labor, atLeast(0)) ?? 0,
  });
  return spillPairs([
    [{ header: "capital recovery" }, cost.recovery],
    [{ header: "upkeep" }, cost.upkeep],
    [{ header: "energy" }, cost.energy],
    [{ header: "labor" }, cost.labor],
    [{ header: "total" }, cost.total],
  ]);
}
