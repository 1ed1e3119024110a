import type { MonthOfWater } from "../formulas/source-balance";
import { InvalidInput } from "../ground/domain-error";
import { type Cell, isBlank } from "./cell";
import { atLeast } from "./limits";
import type { Units } from "./units";

/** Ten years: a longer range is a slip of columns. */
const MOST_MONTHS = 120;

/** The needs month by month, each with its inflow and loss: one value for all months or one each. */
export function readMonthsOfWater(
  u: Units,
  cells: { readonly needs: Cell; readonly inflows: Cell; readonly losses: Cell },
): MonthOfWater[] {
  const needs = u.fieldVolume.readValues("needs", cells.needs, atLeast(0));
  if (needs.length > MOST_MONTHS) {
    throw new InvalidInput(`needs must have at most ${MOST_MONTHS} months; got ${needs.length}`);
  }
  const inflows = readForEachMonth(u, "inflows", cells.inflows, needs.length);
  const losses = readForEachMonth(u, "losses", cells.losses, needs.length);
  return needs.map((need, i) => ({ need, inflow: inflows[i], loss: losses[i] }));
}

function readForEachMonth(u: Units, name: string, cell: Cell, months: number): number[] {
  const values = isAllBlank(cell) ? [0] : u.fieldVolume.readValues(name, cell, atLeast(0));
  if (values.length === 1) return Array.from({ length: months }, () => values[0]);
  if (values.length !== months) {
    throw new InvalidInput(
      `${name} must have one value or one a month; got ${values.length} for ${months} months of needs`,
    );
  }
  return values;
}

function isAllBlank(cell: Cell): boolean {
  return Array.isArray(cell) ? (cell as unknown[]).flat().every(isBlank) : isBlank(cell);
}
