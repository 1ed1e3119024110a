import { PlanCosts } from "../../src/solver/plan-costs";
import type { PlanTerms } from "../../src/solver/plan-problem";
import { expectClose } from "../support/published";

const terms = {
  netDepth: 0.03,
  seasonDepth: 0.36,
  years: 10,
  interest: 0.08,
  escalation: 0,
  upkeep: 0.02,
  energyPrice: 0.12,
  performance: 0.8,
  moveTime: 1800,
  wage: 20,
  headPrice: 15,
  linePrice: 250,
} as PlanTerms;

// 8 % over 10 years: i(1 + i)^n/((1 + i)^n − 1).
const recovery = (0.08 * 1.08 ** 10) / (1.08 ** 10 - 1);
// A horsepower is 550 ft·lbf a second, and a plant at the criterion gets 0.885 of one from a kW.
const horsepower = 550 * 0.3048 * 0.45359237 * 9.80665;
const kilowattHours = (998.2 * 9.80665 * 1000 * 12 * 40) / (0.885 * horsepower * 0.8) / 3600;

test("a year of capital, upkeep, energy and labor, each by hand", () => {
  const costs = new PlanCosts(terms);
  expect(costs.irrigations).toBeCloseTo(12, 12);
  expectClose(costs.perCapital, recovery + 0.02, 1e-12);
  // Two lines of 14 heads, tubing for 400 and a feeder for 120 each.
  expectClose(costs.capital(2, 14, 400, 120), 2 * (400 + 14 * 15 + 250 + 120), 1e-12);
  // 1000 m³ a round against 40 m, twelve rounds.
  expectClose(costs.energy(1000, 40), kilowattHours * 0.12, 1e-9);
  // 14 moves a round, half an hour each.
  expectClose(costs.labor(14), 14 * 12 * 0.5 * 20, 1e-12);
  const year = costs.year(1960, 1000, 40, 14);
  expectClose(year.recovery, 1960 * recovery, 1e-12);
  expectClose(year.upkeep, 39.2, 1e-12);
  expectClose(year.energy, kilowattHours * 0.12, 1e-9);
  expectClose(year.labor, 1680, 1e-12);
  expectClose(year.total, 1960 * recovery + 39.2 + kilowattHours * 0.12 + 1680, 1e-9);
});

test("energy that gets dearer by as much as the interest costs as many years' as there are", () => {
  // The first year at today's price, n of them alike in present value, over the present value of 1 a year.
  const level = new PlanCosts(terms).energy(1000, 40);
  const dearer = new PlanCosts({ ...terms, escalation: 0.08 }).energy(1000, 40);
  const annuity = (1 - 1.08 ** -10) / 0.08;
  expectClose(dearer / level, 10 / 1.08 / annuity, 1e-9);
});
