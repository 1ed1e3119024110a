import type { FrictionLaw } from "../formulas/friction";

/** How many times more a head costs by Darcy–Weisbach, whose factor takes iterations; measured. */
const DARCY_HEAD = 4;

/** What passing a head on a walk along a line costs, in heads passed by Hazen–Williams. */
export function headWork({ law }: FrictionLaw): number {
  return law === "Darcy" ? DARCY_HEAD : 1;
}
