import { InvalidInput } from "../ground/domain-error";
import { tooNear, type Stretch } from "./too-near";
import type { TurnedField } from "./turned-field";
import { wholeParts } from "./whole-parts";

/** A longer plan is no plan of one field. */
export const MOST_ROWS = 500;

/** More pieces of row than this are no field. */
export const MOST_RUNS = 1000;

/** A piece of a row where a line can lie, m along. */
export interface Free extends Stretch {
  /** Where the row comes into the field, or out of an obstacle, before it: `from` less the setback. */
  readonly entry: number;
}

/** A row across the field, where the line may lie, and what of it is free. */
export interface FieldRow {
  /** How far across the turned field, m. */
  readonly across: number;
  readonly free: readonly Free[];
}

/**
 * The rows of a field, `move` apart, and what a line can use of each: the parts of the row inside
 * the corners, less what is nearer than the setback to an edge, less what an obstacle takes.
 *
 * With a `start` the first row lies that far from the nearest corner across, and rows follow as long
 * as they lie in the field. Without one there are as many rows as moves fit across, rounded, and
 * they lie in the middle: between ¼ and ¾ of a move is left on either side, and never less than the
 * setback. Example: 700 ft across and a move of 50 ft are 14 rows, the first 25 ft in.
 */
export function openRows(field: TurnedField, move: number, start?: number): FieldRow[] {
  const width = field.farthest - field.nearest;
  const positions =
    start === undefined
      ? centredRows(width, move, field.setback)
      : Math.max(0, wholeParts(width - field.setback - start, move) + 1);
  if (positions > MOST_ROWS) {
    throw new InvalidInput(`move gives more than ${MOST_ROWS} positions across the corners`);
  }
  const first = start ?? (width - (positions - 1) * move) / 2;
  const rows: FieldRow[] = [];
  let runs = 0;
  for (let k = 0; k < positions; k++) {
    const across = field.nearest + first + k * move;
    const free = freeStretches(field, across);
    runs += free.length;
    if (runs > MOST_RUNS) {
      throw new InvalidInput(
        `corners, obstacles and setback cut the rows into more than ${MOST_RUNS} runs`,
      );
    }
    rows.push({ across, free });
  }
  return rows;
}

function centredRows(width: number, move: number, setback: number): number {
  const rounded = wholeParts(width + move / 2, move);
  const clear = wholeParts(width - 2 * setback, move) + 1;
  return Math.max(1, Math.min(rounded, clear));
}

function freeStretches(field: TurnedField, across: number): Free[] {
  let bare = insideEdges(field, across);
  for (const { along, across: middle, radius } of field.obstacles) {
    const circle = { along, across: middle };
    bare = without(bare, tooNear(circle, circle, across, radius, field.tolerance));
  }
  if (field.setback === 0) return bare.map(({ from, to }) => ({ entry: from, from, to }));
  let kept: Stretch[] = bare;
  const { corners, setback, tolerance } = field;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    kept = without(kept, tooNear(corners[j], corners[i], across, setback, tolerance));
  }
  return kept.map(({ from, to }) => {
    // What is kept lies in one stretch that is bare.
    const entry = bare.reduce((found, piece) => (piece.from <= from ? piece.from : found), from);
    return { entry, from, to };
  });
}

/**
 * The parts of a row inside the corners, edges themselves included. A row through a corner or along
 * an edge is the sum of the rows a hair above and below, so that it does not hang on rounding.
 */
function insideEdges(field: TurnedField, across: number): Stretch[] {
  const { corners, tolerance } = field;
  if (!corners.some((corner) => Math.abs(corner.across - across) <= tolerance)) {
    return cutAt(field, across);
  }
  const both = [
    ...cutAt(field, across - 2 * tolerance),
    ...cutAt(field, across + 2 * tolerance),
  ].sort((a, b) => a.from - b.from);
  const joined: Stretch[] = [];
  for (const piece of both) {
    const last = joined[joined.length - 1];
    if (last !== undefined && piece.from <= last.to) {
      joined[joined.length - 1] = { from: last.from, to: Math.max(last.to, piece.to) };
    } else {
      joined.push(piece);
    }
  }
  return joined;
}

/** Every second gap between the places where a row meets the edges is inside. */
function cutAt({ corners }: TurnedField, across: number): Stretch[] {
  const cuts: number[] = [];
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [a, b] = [corners[j], corners[i]];
    if (a.across <= across !== b.across <= across) {
      const share = (across - a.across) / (b.across - a.across);
      cuts.push(a.along + share * (b.along - a.along));
    }
  }
  cuts.sort((a, b) => a - b);
  const inside: Stretch[] = [];
  for (let i = 0; i + 1 < cuts.length; i += 2) inside.push({ from: cuts[i], to: cuts[i + 1] });
  return inside;
}

function without(pieces: readonly Stretch[], taken: Stretch | undefined): Stretch[] {
  if (taken === undefined) return pieces as Stretch[];
  const left: Stretch[] = [];
  for (const { from, to } of pieces) {
    if (taken.to <= from || taken.from >= to) {
      left.push({ from, to });
      continue;
    }
    if (taken.from >= from) left.push({ from, to: taken.from });
    if (taken.to <= to) left.push({ from: taken.to, to });
  }
  return left;
}
