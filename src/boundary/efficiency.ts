import type { Cell } from "./cell";
import { above } from "./limits";
import { readOptionalNumber } from "./numbers";

/** An application efficiency, a fraction; blank (or 0, which no system has) is 1: nothing lost. */
export function readEfficiency(cell: Cell, name = "efficiency"): number {
  return readOptionalNumber(name, cell, above(0, 1)) ?? 1;
}
