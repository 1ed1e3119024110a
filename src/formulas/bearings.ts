import { coverOf } from "./covered-area";
import { headsOf, type LayoutChoice } from "./field-layout";
import { openRows } from "./field-rows";
import { type FieldRun, placeRuns, requireRuns } from "./field-runs";
import { type Ground, requireHeight } from "./ground-height";
import { polygonArea } from "./polygon";
import { type Field, type TurnedField, turnField } from "./turned-field";

/** What a line along one bearing comes to. */
export interface RankedBearing {
  /** Degrees clockwise from true north. */
  readonly bearing: number;
  readonly runs: number;
  readonly heads: number;
  readonly shareCovered: number;
  /** Steepest ground from head to head, a fraction, up or down; only where the ground is known. */
  readonly steepest?: number;
}

/** Half a turn, degrees: a line turned about lies in the same row. */
const ABOUT = 180;

/** What shares are rounded to when they are compared: less is rounding. */
const SAME_SHARE = 1e-9;

/**
 * Lays a field out at every bearing from 0 to below 180 degrees, a `step` apart, and ranks them:
 * fewest runs first, because every run is a set and a move; then the greater share covered.
 */
export function rankBearings(
  field: Field,
  choice: Omit<LayoutChoice, "bearing">,
  step: number,
  ground?: Ground,
): RankedBearing[] {
  const area = polygonArea(field.corners);
  const ranked: RankedBearing[] = [];
  for (let turn = 0; turn * step < ABOUT; turn++) {
    const bearing = turn * step;
    const turned = turnField(field, bearing);
    const runs = placeRuns(openRows(turned, choice.move, choice.start), choice);
    if (runs.length === 0) continue;
    let heads = 0;
    let covered = 0;
    for (const run of runs) {
      heads += run.heads;
      covered += coverOf(turned, run, choice.move).covered;
    }
    ranked.push({
      bearing,
      runs: runs.length,
      heads,
      shareCovered: covered / area,
      steepest: ground && steepestOf(turned, runs, choice.spacing, ground),
    });
  }
  if (ranked.length === 0) requireRuns([]);
  const rounded = (share: number) => Math.round(share / SAME_SHARE);
  return ranked.sort(
    (a, b) =>
      a.runs - b.runs || rounded(b.shareCovered) - rounded(a.shareCovered) || a.bearing - b.bearing,
  );
}

function steepestOf(
  turned: TurnedField,
  runs: readonly FieldRun[],
  spacing: number,
  ground: Ground,
): number {
  let steepest = 0;
  for (const run of runs) {
    let before: number | undefined;
    for (const { head, place } of headsOf(turned, run, spacing)) {
      const name = `head ${head} of position ${run.position}, run ${run.run}`;
      const height = requireHeight(ground, place, name);
      if (before !== undefined) {
        steepest = Math.max(steepest, Math.abs(height - before) / spacing);
      }
      before = height;
    }
  }
  return steepest;
}
