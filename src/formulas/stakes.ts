import { type Heading, travel, turnRight } from "./geodesic";

/** A flag in the field, SI and degrees. */
export interface Flag {
  /** Which head or which position it is for, from 1. */
  readonly number: number;
  /** Distance from the start in the direction of the bearing, m. */
  readonly along: number;
  /** Distance from there to the right of the bearing, m. */
  readonly across: number;
  /** Undefined where the field has no start on the map. */
  readonly place?: Heading;
}

/** A flag for every head, at the end of each segment (m) from the inlet end of the line. */
export function headFlags(segments: readonly number[], start?: Heading): Flag[] {
  let along = 0;
  return segments.map((segment, i) => {
    along += segment;
    return { number: i + 1, along, across: 0, place: start && travel(start, along) };
  });
}

/**
 * Flags for the near end, and with a `length` (m) the far end, of every position of a line. The
 * positions advance by `move` (m) from the start; the line lies at a right angle to the way they
 * advance, on its right.
 */
export function positionFlags(
  positions: number,
  move: number,
  length?: number,
  start?: Heading,
): Flag[] {
  const flags: Flag[] = [];
  for (let number = 1; number <= positions; number++) {
    const along = (number - 1) * move;
    const near = start && travel(start, along);
    flags.push({ number, along, across: 0, place: near });
    if (length !== undefined) {
      const far = near && travel(turnRight(near, 90), length);
      flags.push({ number, along, across: length, place: far });
    }
  }
  return flags;
}
