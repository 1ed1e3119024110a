/** The longest life that is reckoned with: no tubing, pump or bank asks for more. */
export const MOST_YEARS = 100;

/** What a system costs to own and to run, any one currency; shares are of 1 a year. */
export interface Ownership {
  readonly capital: number;
  /** Whole years that it lasts. */
  readonly years: number;
  readonly interest: number;
  /** What it still brings at the end. */
  readonly salvage: number;
  /** Upkeep a year as a share of the capital. */
  readonly upkeep: number;
  /** Energy of the first year. */
  readonly energy: number;
  /** How much dearer energy gets each year. */
  readonly escalation: number;
  /** Labor a year. */
  readonly labor: number;
}

export interface YearlyCost {
  readonly recovery: number;
  readonly upkeep: number;
  readonly energy: number;
  readonly labor: number;
  readonly total: number;
}

/**
 * Equal yearly payments that pay back 1 with interest in so many years, CRF = i/(1 − (1 + i)^−n);
 * without interest 1/n. Example: 8 % and 10 years are 0.14903.
 */
export function capitalRecovery(interest: number, years: number): number {
  if (interest === 0) return 1 / years;
  // Not 1 − (1 + i)^−n: for a small interest that has lost its digits.
  return interest / -Math.expm1(-years * Math.log1p(interest));
}

/**
 * How many times the first year's cost a cost that rises every year is worth as equal yearly
 * payments: CRF·Σ (1 + e)^(k−1)/(1 + i)^k, k from 1 to n. The first year itself is not escalated.
 * Example: 9 % a year dearer, 20 % interest, 20 years: 1.594.
 */
export function levelling(escalation: number, interest: number, years: number): number {
  let worth = 0;
  let payment = 1 / (1 + interest);
  for (let year = 1; year <= years; year++) {
    worth += payment;
    payment *= (1 + escalation) / (1 + interest);
  }
  return capitalRecovery(interest, years) * worth;
}

/**
 * The year's cost in its parts. What comes back at the end need not be recovered, but its interest
 * is paid all along: (capital − salvage)·CRF + salvage·i.
 */
export function yearlyCost(owned: Ownership): YearlyCost {
  const { capital, years, interest, salvage } = owned;
  const recovery = (capital - salvage) * capitalRecovery(interest, years) + salvage * interest;
  const upkeep = owned.upkeep * capital;
  const energy = owned.energy * levelling(owned.escalation, interest, years);
  const { labor } = owned;
  return { recovery, upkeep, energy, labor, total: recovery + upkeep + energy + labor };
}
