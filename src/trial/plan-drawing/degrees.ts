import type { Point } from "../../screen/chart";
import type { Argument, CallError, CellValue, Outcome } from "../../screen/host";

/** Calls a function by its id. */
export type Call = (id: string, ...cells: readonly Argument[]) => Outcome;

/** Two cells of a table: x and y, or latitude and longitude. */
export type Pair = readonly [number, number];

/** The place that is x 0, y 0, as the workbook has it. */
export interface Origin {
  readonly latitude: CellValue;
  readonly longitude: CellValue;
  readonly units: CellValue;
}

/** A hand points no finer: 1e-7 degree is a centimeter. */
const DIGITS = 7;

/** A point of the drawing as a receiver would give it; or why it cannot be. */
export function toDegrees(call: Call, origin: Origin, { x, y }: Point): Pair | CallError {
  const found = turned(call, "FIELD_DEGREES", origin, [x, y]);
  if (!isPair(found)) return found;
  // Adding 0 makes a plain zero of one below it.
  const [latitude, longitude] = found.map((value) => Number(value.toFixed(DIGITS)) + 0);
  return [latitude, longitude];
}

/** The way back, as the page Field turns what was typed. */
export function fromDegrees(call: Call, origin: Origin, place: Pair): Point | CallError {
  const found = turned(call, "FIELD_LOCAL", origin, place);
  return isPair(found) ? { x: found[0], y: found[1] } : found;
}

function turned(call: Call, id: string, origin: Origin, pair: Pair): Pair | CallError {
  const { latitude, longitude, units } = origin;
  const outcome = call(id, [[...pair]], latitude, longitude, units);
  if (outcome.error !== undefined) return outcome.error;
  // Below the header.
  const [first, second] = (outcome.value as CellValue[][])[1];
  return [first as number, second as number];
}

export function isPair(found: object): found is Pair {
  return Array.isArray(found);
}
