import { InvalidInput } from "../ground/domain-error";
import { POLYETHYLENE_MODULUS, type Stop } from "../formulas/surge";
import type { Cell } from "./cell";
import { above, atLeast } from "./limits";
import { readOptionalNumber } from "./numbers";
import { seconds, type Units } from "./units";

/** The cells that describe a flow that is stopped. */
export interface SurgeCells {
  readonly flow: Cell;
  readonly outside: Cell;
  readonly inside: Cell;
  readonly length?: Cell;
  readonly closure?: Cell;
  readonly modulus?: Cell;
}

/** Reads a stopped flow; what outside is more than inside is twice the wall. */
export function readSurge(u: Units, cells: SurgeCells): Stop {
  const flow = u.flow.read("flow", cells.flow, atLeast(0));
  const outside = u.diameter.read("outside", cells.outside, above(0));
  const bore = u.diameter.read("inside", cells.inside, above(0));
  if (outside <= bore) {
    throw new InvalidInput(
      `outside must be above inside; got ${u.diameter.say(outside)} and ${u.diameter.say(bore)}`,
    );
  }
  const length = readOptionalNumber("length", cells.length ?? null, above(0), u.length.unit);
  const closure = seconds.readOr("closure", cells.closure ?? null, atLeast(0), 0);
  if (closure > 0 && length === undefined) {
    throw new InvalidInput(
      `length is missing: with a closure time it must be above 0 ${u.length.unit}`,
    );
  }
  return {
    flow,
    outside,
    bore,
    // Polyethylene is the same in both systems: no round number in each.
    modulus:
      u.pressure.readOptional("modulus", cells.modulus ?? null, above(0)) ?? POLYETHYLENE_MODULUS,
    length: u.length.toSI(length ?? 0),
    closure,
  };
}
