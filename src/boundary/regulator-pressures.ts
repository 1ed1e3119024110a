import { InvalidInput } from "../ground/domain-error";
import type { Cell } from "./cell";
import { above, atLeast } from "./limits";
import { REGULATOR_LOSS } from "./line";
import type { Units } from "./units";

/** The pressures that a line's regulators work between, Pa. */
export interface RegulatorPressures {
  readonly low: number;
  readonly high: number;
  readonly set: number;
  readonly loss: number;
  /** What a regulator must have under it: set and loss. */
  readonly needed: number;
  /** What it may have under it; Infinity where the sheet gives no limit. */
  readonly most: number;
}

export function readRegulatorPressures(
  u: Units,
  cells: {
    readonly lowest: Cell;
    readonly highest: Cell;
    readonly set: Cell;
    readonly loss?: Cell;
    readonly limit?: Cell;
  },
): RegulatorPressures {
  const low = u.pressure.read("lowest", cells.lowest, atLeast(0));
  const high = u.pressure.read("highest", cells.highest, atLeast(0));
  if (low > high) {
    throw new InvalidInput(
      `lowest must not be above highest; got ${u.pressure.say(low)} and ${u.pressure.say(high)}`,
    );
  }
  const set = u.pressure.read("set", cells.set, above(0));
  const loss = u.pressure.readOr("loss", cells.loss ?? null, atLeast(0), REGULATOR_LOSS);
  const most = u.pressure.readOptional("limit", cells.limit ?? null, above(0)) ?? Infinity;
  return { low, high, set, loss, needed: set + loss, most };
}
