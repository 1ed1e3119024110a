import { pumpingEnergy } from "../formulas/pumping-energy";
import { capitalRecovery, levelling, type YearlyCost } from "../formulas/yearly-cost";
import { HOUR, KILOWATT } from "../ground/unit-factors";
import type { PlanTerms } from "./plan-problem";

const KILOWATT_HOUR = KILOWATT * HOUR;

/** What plans cost a year under one set of terms: the factors once, then sums and products. */
export class PlanCosts {
  private readonly recovery: number;
  private readonly levelling: number;
  /** Irrigations in a season; the last may be a part of one. */
  readonly irrigations: number;

  constructor(private readonly terms: PlanTerms) {
    this.recovery = capitalRecovery(terms.interest, terms.years);
    this.levelling = levelling(terms.escalation, terms.interest, terms.years);
    this.irrigations = terms.seasonDepth / terms.netDepth;
  }

  /** What each unit of capital costs a year. */
  get perCapital(): number {
    return this.recovery + this.terms.upkeep;
  }

  /** Energy a year to pump a volume (m³) once round the field against a head (m). */
  energy(volume: number, head: number): number {
    const { energyPrice, performance } = this.terms;
    const season = pumpingEnergy(volume * this.irrigations, head, 1, "electric", performance);
    return (season / KILOWATT_HOUR) * energyPrice * this.levelling;
  }

  /** Labor a year: a line is moved after each set. */
  labor(sets: number): number {
    const { moveTime, wage } = this.terms;
    return sets * this.irrigations * (moveTime / HOUR) * wage;
  }

  /** Lines and their feeders, once. */
  capital(lines: number, heads: number, tubing: number, feeder: number): number {
    const { headPrice, linePrice } = this.terms;
    return lines * (tubing + heads * headPrice + linePrice + feeder);
  }

  year(capital: number, volume: number, head: number, sets: number): YearlyCost {
    const recovery = capital * this.recovery;
    const upkeep = capital * this.terms.upkeep;
    const energy = this.energy(volume, head);
    const labor = this.labor(sets);
    return { recovery, upkeep, energy, labor, total: recovery + upkeep + energy + labor };
  }
}
