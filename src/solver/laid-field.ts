import { coverOf } from "../formulas/covered-area";
import { type FieldRow, openRows } from "../formulas/field-rows";
import { type FieldRun, placeRuns } from "../formulas/field-runs";
import { type Ground, requireHeight } from "../formulas/ground-height";
import { fewestHydrants, type NearEnd } from "../formulas/hydrants";
import { distance, polygonArea } from "../formulas/polygon";
import { shareOut } from "../formulas/rotation";
import { type Field, type TurnedField, turnField } from "../formulas/turned-field";
import { NoAnswer } from "../ground/domain-error";

/** The ground of a field: heights taken, or one slope along the lines (rise over run). */
export type FieldGround = { readonly heights: Ground } | { readonly slope: number };

/** Runs that are one to the solver: as many heads on the same ground. */
export interface RunKind {
  readonly heads: number;
  /** How many runs of the field are of this kind. */
  readonly count: number;
  /** Near end to head 1, m. */
  readonly first: number;
  /** Ground at each head above the near end, m. */
  readonly elevation: readonly number[];
  /** Ground at the highest near end of the kind, above height 0, m. */
  readonly nearHeight: number;
}

/**
 * How much work laying fields out may be, in corners and heads passed: a few tenths of a second.
 */
const MOST_WORK = 2e6;

/** Lays one field out for many spacings and moves, each only once. */
export class FieldLayouts {
  private readonly turned: TurnedField;
  private readonly area: number;
  private readonly rows = new Map<number, readonly FieldRow[]>();
  private readonly laid = new Map<string, LaidField | undefined>();
  /** Numbers for sets of kinds. */
  private readonly hydraulics = new Map<string, number>();
  private work = 0;

  constructor(
    field: Field,
    bearing: number,
    private readonly ground: FieldGround,
  ) {
    this.turned = turnField(field, bearing);
    this.area = polygonArea(field.corners);
  }

  /** Undefined where no row has room for a head. */
  at(spacing: number, move: number): LaidField | undefined {
    const key = `${spacing} ${move}`;
    if (!this.laid.has(key)) this.laid.set(key, this.lay(spacing, move));
    return this.laid.get(key);
  }

  private lay(spacing: number, move: number): LaidField | undefined {
    const { turned } = this;
    let rows = this.rows.get(move);
    if (rows === undefined) {
      rows = openRows(turned, move);
      this.rows.set(move, rows);
      this.count(rows.length * (turned.corners.length + turned.obstacles.length));
    }
    const runs = placeRuns(rows, { spacing });
    if (runs.length === 0) return undefined;
    this.count(runs.length * turned.corners.length);
    const covered = runs.reduce((sum, run) => sum + coverOf(turned, run, move).covered, 0);
    const laid = this.onGround(runs, spacing, move);
    return new LaidField(spacing, move, covered / this.area, laid, (kinds) => {
      const known = this.hydraulics.get(kinds) ?? this.hydraulics.size;
      this.hydraulics.set(kinds, known);
      return known;
    });
  }

  private onGround(runs: readonly FieldRun[], spacing: number, move: number): LaidRun[] {
    const { turned, ground } = this;
    this.count(runs.reduce((sum, { heads }) => sum + heads, 0));
    if ("heights" in ground) {
      return runs.map((run) => {
        const name = `position ${run.position}, run ${run.run}`;
        const nearEnd = turned.place(run.near, run.across);
        const nearHeight = requireHeight(ground.heights, nearEnd, `the near end of ${name}`);
        const elevation = Array.from({ length: run.heads }, (_, i) => {
          const place = turned.place(run.firstHead + i * spacing, run.across);
          return requireHeight(ground.heights, place, `head ${i + 1} of ${name}`) - nearHeight;
        });
        return {
          run,
          // No run has another's ground.
          kind: `${move} ${run.position} ${run.run}`,
          nearEnd: { ...run, ...nearEnd },
          nearHeight,
          first: firstOf(run),
          elevation,
        };
      });
    }
    const { slope } = ground;
    // Heads in a row rise alike, so runs with as many are of one kind.
    return runs.map((run) => {
      const first = firstOf(run);
      return {
        run,
        kind: `${run.heads} ${first}`,
        nearEnd: { ...run, ...turned.place(run.near, run.across) },
        nearHeight: slope * (run.near - runs[0].near),
        first,
        elevation: Array.from({ length: run.heads }, (_, i) => slope * (first + i * spacing)),
      };
    });
  }

  private count(work: number): void {
    this.work += work;
    if (this.work > MOST_WORK) {
      throw new NoAnswer(
        "spacings and moves lay this field out in too many ways to try: give fewer of them, or fewer corners",
      );
    }
  }
}

/** To a thousand-millionth of a meter: what rounding leaves must not make two kinds of one. */
function firstOf(run: FieldRun): number {
  return Math.round((run.firstHead - run.near) * 1e9) / 1e9;
}

interface LaidRun extends Pick<RunKind, "first" | "elevation" | "nearHeight"> {
  readonly run: FieldRun;
  /** The same for runs of one kind. */
  readonly kind: string;
  readonly nearEnd: NearEnd;
}

/** A field laid out with one spacing and one move, as the search asks about it. */
export class LaidField {
  /** The longest first; of those with as many heads the one whose last head is highest. */
  readonly kinds: readonly RunKind[];
  /** Segments of the line that all runs share, m. */
  readonly segmentLength: readonly number[];
  /** Sets once round the field: one a run. */
  readonly sets: number;
  /** Over all runs. */
  readonly heads: number;
  readonly highestNearEnd: number;
  /** The lowest that tubing lies, above height 0, m. */
  readonly lowestGround: number;
  /** The same number for layouts in which a line has the same pressures. */
  readonly hydraulics: number;
  private readonly nearEnds: readonly NearEnd[];
  private readonly feeders = new Map<number, number>();
  private readonly leastFeeders = new Map<number, number>();

  constructor(
    readonly spacing: number,
    readonly move: number,
    /** Share of the field. */
    readonly coverage: number,
    runs: readonly LaidRun[],
    numbered: (kinds: string) => number,
  ) {
    const kinds = new Map<string, RunKind>();
    for (const { run, kind, first, elevation, nearHeight } of runs) {
      const known = kinds.get(kind);
      kinds.set(kind, {
        heads: run.heads,
        first,
        elevation,
        count: (known?.count ?? 0) + 1,
        nearHeight: Math.max(known?.nearHeight ?? -Infinity, nearHeight),
      });
    }
    this.hydraulics = numbered(`${spacing};${[...kinds.keys()].sort().join()}`);
    const last = ({ elevation }: RunKind) => elevation[elevation.length - 1];
    this.kinds = [...kinds.values()].sort((a, b) => b.heads - a.heads || last(b) - last(a));
    this.segmentLength = new Array<number>(this.kinds[0].heads).fill(spacing);
    (this.segmentLength as number[])[0] = Math.max(...this.kinds.map(({ first }) => first));
    this.sets = runs.length;
    this.heads = runs.reduce((sum, { run }) => sum + run.heads, 0);
    this.highestNearEnd = Math.max(...runs.map(({ nearHeight }) => nearHeight));
    this.lowestGround = Math.min(
      ...runs.map(({ nearHeight, elevation }) => nearHeight + Math.min(0, ...elevation)),
    );
    // Second runs of a row are moved through after all first ones, as hydrants are placed.
    this.nearEnds = runs.map(({ nearEnd }) => nearEnd).sort((a, b) => a.run - b.run);
  }

  /**
   * Straight feeder, m, that lets every line reach its positions from a hydrant of its own: each
   * takes a block of neighbors, as in the rotation, and all feeders are as long as the longest.
   */
  feeder(lines: number): number {
    let longest = this.feeders.get(lines);
    if (longest === undefined) {
      longest = Math.max(...this.blocks(lines).map(farthestFromHydrant));
      this.feeders.set(lines, longest);
    }
    return longest;
  }

  /** No feeder is shorter: wherever the hydrant stands, one of two near ends is half their distance off. */
  leastFeeder(lines: number): number {
    let least = this.leastFeeders.get(lines);
    if (least === undefined) {
      const apart = this.blocks(lines).map((block) => distance(block[0], block[block.length - 1]));
      least = Math.max(...apart) / 2;
      this.leastFeeders.set(lines, least);
    }
    return least;
  }

  private blocks(lines: number): NearEnd[][] {
    return shareOut(this.sets, lines).map((block) =>
      block.map((place) => this.nearEnds[place - 1]),
    );
  }
}

/** One hydrant for a block, even where it goes over from first runs to second ones. */
function farthestFromHydrant(block: readonly NearEnd[]): number {
  const asOneRow = block.map((end) => ({ ...end, run: 1 }));
  return fewestHydrants(asOneRow, Infinity)[0].farthest;
}
