import type { FrictionLaw } from "../formulas/friction";
import { CLEAN_PLASTIC_C, GREATEST_C, LEAST_C } from "../formulas/hazen-williams";
import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, single } from "./cell";
import { spelling } from "./choices";

const DARCY: FrictionLaw = { law: "Darcy" };

/** A number is the Hazen–Williams C, "Darcy" is Darcy–Weisbach, blank (or 0) is clean plastic pipe. */
export function readFriction(cell: Cell): FrictionLaw {
  const value = single("friction", cell);
  if (isBlank(value) || value === 0) return { law: "Hazen–Williams", c: CLEAN_PLASTIC_C };
  if (
    typeof value === "string" &&
    ["darcy", "darcyweisbach", "darcy–weisbach"].includes(spelling(value))
  ) {
    return DARCY;
  }
  if (typeof value === "number" && value >= LEAST_C && value <= GREATEST_C) {
    return { law: "Hazen–Williams", c: value };
  }
  throw new InvalidInput(
    `friction must be a Hazen–Williams C from ${LEAST_C} to ${GREATEST_C}, or "Darcy"; got ${describe(value)}`,
  );
}
