import { InvalidInput } from "../ground/domain-error";
import { rollJoints, rollsFor } from "./rolls";

/** A run of tubing of one size, as the trade names it: the size is text and stays text. */
export interface SizedLength {
  readonly size: string;
  readonly length: number;
}

/** What is to be built: equal lines, each with its feeder. Lengths in m. */
export interface LineLayout {
  readonly lines: number;
  /** Length of each segment, from the inlet to head 1 on. */
  readonly segments: readonly number[];
  /** Sizes from the inlet on, and for how many segments each. */
  readonly tubing: readonly { readonly size: string; readonly segments: number }[];
  /** Sizes from the hydrant to the line. */
  readonly feeder: readonly SizedLength[];
  readonly regulated: boolean;
  /** Length of a roll; undefined where tubing is bought by length. */
  readonly roll?: number;
  /** Tubing beyond the last head. */
  readonly spare: number;
}

/** One row of the bill. A tubing row without a roll is a length, m; every other one is a count. */
export interface Material {
  readonly part: Part;
  /** Sizes the part fits: none, one, or two for a reducing coupler. */
  readonly sizes: readonly string[];
  readonly quantity: number;
}

export type Part =
  | "tubing"
  | "straight coupler"
  | "sprinkler head"
  | "saddle"
  | "stand"
  | "regulator"
  | "reducing coupler"
  | "end cap"
  | "quick connect"
  | "hydrant connection"
  | "backflow device"
  | "flag";

/**
 * Counts what a crew needs to build the lines. The rules are common practice, without a published
 * source:
 *
 * - tubing: segments, spare and feeder by size; in whole rolls where a roll is given, pooled over
 *   the lines, with a straight coupler wherever a roll ends inside a run;
 * - at every head a head, a saddle that fits its segment, a stand and a flag, and a regulator if
 *   the heads are regulated;
 * - a reducing coupler wherever the size changes, from feeder to line too;
 * - for every line an end cap, a quick connect at either end of the feeder, and a hydrant connection;
 * - one backflow device for the system.
 */
export function materials(layout: LineLayout): Material[] {
  const { lines, segments, feeder, regulated, roll } = layout;
  const listed = layout.tubing.reduce((sum, { segments: count }) => sum + count, 0);
  if (listed !== segments.length) {
    throw new InvalidInput(`tubing lists ${listed} segments for ${segments.length} heads`);
  }

  const segmentSizes = layout.tubing.flatMap(({ size, segments: count }) =>
    new Array<string>(count).fill(size),
  );
  const line = runsOf(segmentSizes.map((size, i) => ({ size, length: segments[i] })));
  const endRun = line[line.length - 1];
  line[line.length - 1] = { ...endRun, length: endRun.length + layout.spare };
  const feed = runsOf(feeder);

  const bill = new Bill();
  const pieces = [...repeated(line, lines), ...repeated(feed, lines)];
  for (const [size, lengths] of bySize(pieces)) {
    const total = lengths.reduce((sum, length) => sum + length, 0);
    bill.add("tubing", [size], roll === undefined ? total : rollsFor(total, roll));
  }
  if (roll !== undefined) {
    for (const [size, lengths] of bySize(pieces)) {
      bill.add("straight coupler", [size], rollJoints(lengths, roll));
    }
  }
  const heads = lines * segments.length;
  bill.add("sprinkler head", [], heads);
  for (const size of segmentSizes) bill.add("saddle", [size], lines);
  bill.add("stand", [], heads);
  if (regulated) bill.add("regulator", [], heads);
  const fromRiser = [...feed, ...line];
  for (let i = 1; i < fromRiser.length; i++) {
    const [before, after] = [fromRiser[i - 1].size, fromRiser[i].size];
    if (before !== after) bill.add("reducing coupler", [before, after], lines);
  }
  bill.add("end cap", [endRun.size], lines);
  bill.add("quick connect", [feed[0].size], lines);
  bill.add("quick connect", [feed[feed.length - 1].size], lines);
  bill.add("hydrant connection", [], lines);
  bill.add("backflow device", [], 1);
  bill.add("flag", [], heads);
  return bill.rows();
}

/** Rows in the order in which their parts first came; equal parts are added up, none left at 0. */
class Bill {
  private readonly counted = new Map<string, Material>();

  add(part: Part, sizes: readonly string[], quantity: number): void {
    const key = JSON.stringify([part, ...sizes]);
    const known = this.counted.get(key)?.quantity ?? 0;
    this.counted.set(key, { part, sizes, quantity: known + quantity });
  }

  rows(): Material[] {
    return [...this.counted.values()].filter(({ quantity }) => quantity > 0);
  }
}

/** Neighbors of one size joined to one run. */
function runsOf(parts: readonly SizedLength[]): SizedLength[] {
  const runs: SizedLength[] = [];
  for (const part of parts) {
    const last = runs[runs.length - 1];
    if (last?.size === part.size) {
      runs[runs.length - 1] = { size: part.size, length: last.length + part.length };
    } else {
      runs.push(part);
    }
  }
  return runs;
}

function repeated<T>(list: readonly T[], times: number): T[] {
  return new Array<readonly T[]>(times).fill(list).flat();
}

/** Lengths of each size, sizes in the order in which they first come. */
function bySize(parts: readonly SizedLength[]): Map<string, number[]> {
  const lengths = new Map<string, number[]>();
  for (const { size, length } of parts) {
    const known = lengths.get(size);
    if (known === undefined) lengths.set(size, [length]);
    else known.push(length);
  }
  return lengths;
}
