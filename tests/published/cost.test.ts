import { callTable } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

/** The rows of COST.YEARLY by their labels. */
function yearly(...cells: unknown[]): Record<string, unknown> {
  return Object.fromEntries(callTable("COST.YEARLY", ...cells));
}

const recovery = (interest: number, years: number) =>
  yearly(1, years, interest)["capital recovery"];

/** Energy levelled, of 1 in the first year. */
const levelled = (interest: number, years: number, escalation: number) =>
  yearly(0, years, interest, 0, 0, 1, escalation).energy;

published(
  {
    source: "Engineering economics, capital recovery factor",
    where: "i/(1 − (1 + i)^−n): 8%, 10 years 0.14903; 6%, 15 years 0.10296; 20%, 15 years 0.21388",
    seen: "closed form",
  },
  () => {
    expectWithin(recovery(0.08, 10), 0.14903, 5e-6);
    expectWithin(recovery(0.06, 15), 0.10296, 5e-6);
    expectWithin(recovery(0.2, 15), 0.21388, 5e-6);
    // The equal payments are worth the capital: each brought back to the start by its interest.
    let worth = 0;
    for (let year = 1; year <= 15; year++) worth += Number(recovery(0.2, 15)) / 1.2 ** year;
    expectClose(worth, 1, 1e-12);
    // Without interest an equal part a year, and next to nothing no other.
    expectClose(recovery(0, 8), 1 / 8, 1e-15);
    expectClose(recovery(1e-12, 8), 1 / 8, 1e-11);
  },
);

published(
  {
    source: "A federal manual of farm water projects, average annual equivalent",
    where: "$403 at 8 3/8% over 50 years: $34.40 a year as printed, $34.37 by the closed form",
    seen: "from memory",
  },
  () => {
    const year = yearly(403, 50, 0.08375)["capital recovery"];
    expectWithin(year, 34.37, 0.005);
    expectClose(year, 34.4, 0.001);
  },
);

published(
  {
    source: "Equivalent annualized cost of escalating energy, farm irrigation handbooks",
    where: "9% a year dearer: 20% interest, 20 years 1.594; 15 years 1.4847",
    seen: "from memory",
  },
  () => {
    expectWithin(levelled(0.2, 20, 0.09), 1.594, 0.0005);
    expectWithin(levelled(0.2, 15, 0.09), 1.4847, 0.00005);
  },
);

published(
  {
    source: "Engineering economics, present worth of a geometric series",
    where:
      "CRF·(1 − ((1 + e)/(1 + i))^n)/(i − e); n·CRF/(1 + i) where e = i; salvage by its interest",
    seen: "closed form",
  },
  () => {
    const geometric = (i: number, n: number, e: number) =>
      ((i / (1 - (1 + i) ** -n)) * (1 - ((1 + e) / (1 + i)) ** n)) / (i - e);
    for (const [i, n, e] of [
      [0.06, 12, 0.03],
      [0.2, 20, 0.09],
      [0.05, 30, 0.08],
    ]) {
      expectClose(levelled(i, n, e), geometric(i, n, e), 1e-12);
    }
    expectClose(levelled(0.07, 9, 0.07), (9 * Number(recovery(0.07, 9))) / 1.07, 1e-12);
    // Without escalation the first year's cost is every year's.
    expectClose(levelled(0.07, 9, 0), 1, 1e-14);
    // What comes back at the end, brought to the start, need not be spent.
    const salvaged = yearly(5000, 10, 0.08, 800)["capital recovery"];
    expectClose(salvaged, (5000 - 800 / 1.08 ** 10) * Number(recovery(0.08, 10)), 1e-12);
  },
);
