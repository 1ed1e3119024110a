import { InvalidInput, NoAnswer } from "../ground/domain-error";
import type { FieldRow } from "./field-rows";
import { exactParts } from "./whole-parts";

/** More heads than this are no field of movable lines. */
export const MOST_FIELD_HEADS = 5000;

/** The most heads on one line. */
export const MOST_LINE_HEADS = 500;

/** How heads stand on the line, m. */
export interface HeadPlacing {
  readonly spacing: number;
  /** From where the row enters the field to head 1; half the spacing where not given. */
  readonly first?: number;
  /** Most heads on the line. */
  readonly most?: number;
}

/** A free stretch of a row with at least one head on it: the line lies here in this position. */
export interface FieldRun {
  /** From 1, over the rows that have a run. */
  readonly position: number;
  /** Which run of its row, from 1 at the near end. */
  readonly run: number;
  readonly across: number;
  /** Near end and far end of what is free, m along. */
  readonly near: number;
  readonly far: number;
  /** Where head 1 stands, m along; the others follow by the spacing. */
  readonly firstHead: number;
  readonly heads: number;
  /** The strip that its heads water, half a spacing either way of the end ones, m along. */
  readonly wetFrom: number;
  readonly wetTo: number;
}

/**
 * Puts heads on the free stretches of rows. Head 1 stands `first` behind where the row enters the
 * field, or at the near end of the stretch where the setback keeps it farther in. A stretch that
 * takes no head is left out, and a row without any is no position. Where two runs of a row come so close that their strips overlap, each
 * waters its half of what both reach, so that no ground counts twice.
 */
export function placeRuns(rows: readonly FieldRow[], placing: HeadPlacing): FieldRun[] {
  const { spacing, first = spacing / 2, most = MOST_LINE_HEADS } = placing;
  const runs: FieldRun[] = [];
  let position = 0;
  let total = 0;
  for (const { across, free } of rows) {
    let run = 0;
    for (const { entry, from, to } of free) {
      const firstHead = Math.max(from, entry + first);
      const heads = Math.min(most, headsBetween(firstHead, to, spacing));
      if (!(heads >= 1)) continue;
      if (run === 0) position++;
      const wetFrom = firstHead - spacing / 2;
      const wetTo = wetFrom + heads * spacing;
      const placed = { position, across, near: from, far: to, firstHead, heads, wetTo };
      const before = runs[runs.length - 1];
      if (run > 0 && before.wetTo > wetFrom) {
        const middle = (before.wetTo + wetFrom) / 2;
        runs[runs.length - 1] = { ...before, wetTo: middle };
        runs.push({ ...placed, run: ++run, wetFrom: middle });
      } else {
        runs.push({ ...placed, run: ++run, wetFrom });
      }
      total += heads;
    }
  }
  if (total > MOST_FIELD_HEADS) {
    throw new InvalidInput(`spacing and move give more than ${MOST_FIELD_HEADS} heads`);
  }
  return runs;
}

function headsBetween(firstHead: number, to: number, spacing: number): number {
  const length = to - firstHead;
  const whole = exactParts(length, spacing) ?? Math.floor(length / spacing);
  return Math.max(0, whole + 1);
}

/** Says so where no row has room for a head. */
export function requireRuns(runs: readonly FieldRun[]): void {
  if (runs.length === 0) {
    throw new NoAnswer(
      "no row has room for a head: use less setback or spacing, a shorter first, or another bearing",
    );
  }
}
