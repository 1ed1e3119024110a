import { capitalRecovery, levelling, yearlyCost } from "../../src/formulas/yearly-cost";
import { expectClose } from "../support/published";

test("the total is the sum of the parts", () => {
  const cost = yearlyCost({
    capital: 1000,
    years: 10,
    interest: 0.05,
    salvage: 100,
    upkeep: 0.02,
    energy: 300,
    escalation: 0.04,
    labor: 70,
  });
  expectClose(cost.recovery, 900 * capitalRecovery(0.05, 10) + 5, 1e-14);
  expectClose(cost.upkeep, 20, 1e-14);
  expectClose(cost.energy, 300 * levelling(0.04, 0.05, 10), 1e-14);
  expect(cost.labor).toBe(70);
  expectClose(cost.total, cost.recovery + cost.upkeep + cost.energy + 70, 1e-14);
});

test("of one year nothing is escalated", () => {
  expectClose(levelling(0.5, 0.1, 1), 1, 1e-15);
});
