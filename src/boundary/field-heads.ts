import { InvalidInput } from "../ground/domain-error";
import { MOST_RUNS } from "../formulas/field-rows";
import { MOST_FIELD_HEADS } from "../formulas/field-runs";
import type { Point } from "../formulas/polygon";
import { type Cell } from "./cell";
import { readPoint } from "./field";
import { anyNumber, atLeast, headCount, MOST_POSITIONS, wholeNumber } from "./limits";
import { checked } from "./numbers";
import { readTable } from "./rows-of-table";
import type { Measure } from "./units";

/** One run of a line as FIELD.HEADS gives it, head by head. */
export interface HeadsOfRun {
  readonly position: number;
  readonly run: number;
  /** Distance of each head from the near end, m. */
  readonly along: number[];
  readonly places: Point[];
  /** Ground at each head above the near end, m; 0 where the table has no heights. */
  readonly heights: number[];
}

/** How a message names a run. */
export function runName({ position, run }: Pick<HeadsOfRun, "position" | "run">): string {
  return `position ${position}, run ${run}`;
}

/** Reads FIELD.HEADS' table, and refuses one that was sorted or cut inside a run. */
export function readFieldHeads(length: Measure, cell: Cell): HeadsOfRun[] {
  const table = readTable("heads", cell, {
    columns:
      "six or seven columns, as FIELD.HEADS gives them: position, run, head, along, x, y and height",
    widths: [6, 7],
    least: 1,
    most: MOST_FIELD_HEADS,
    zeroIsBlank: true,
  });
  const runs: HeadsOfRun[] = [];
  table.forEach((row, i) => {
    const place = `heads row ${i + 1}`;
    const position = checked(`${place} position`, row[0], wholeNumber(1, MOST_POSITIONS));
    const number = checked(`${place} run`, row[1], wholeNumber(1, MOST_RUNS));
    const head = checked(`${place} head`, row[2], headCount);
    let run = runs[runs.length - 1];
    if (run === undefined || run.position !== position || run.run !== number) {
      run = { position, run: number, along: [], places: [], heights: [] };
      runs.push(run);
    }
    if (head !== run.along.length + 1) {
      throw new InvalidInput(
        `${place} head must be ${run.along.length + 1} of ${runName(run)}; got ${head}`,
      );
    }
    const along = length.readAt(`${place} along`, row[3], atLeast(0));
    if (along <= run.along[head - 2]) {
      throw new InvalidInput(`${place} along must be more than at the head before it`);
    }
    run.along.push(along);
    run.places.push(readPoint(length, place, row.slice(4)));
    run.heights.push(row.length === 7 ? length.readAt(`${place} height`, row[6], anyNumber) : 0);
  });
  return runs;
}
