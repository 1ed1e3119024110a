import { NoAnswer } from "../ground/domain-error";
import { headWork } from "./head-work";
import type { Line } from "./line";
import { keepsWithin, type LineLimits } from "./line-limits";
import { solveLine, type SolvedLine } from "./solve-line";

/** A size of tubing, SI: bore, m, and price a meter. */
export interface PricedTubing {
  readonly bore: number;
  readonly price: number;
}

/** Segments in each size, in the order of the sizes. */
export type Layout = readonly number[];

/**
 * How many heads may be passed by Hazen–Williams before the search is given up: a few tenths of a
 * second. Two sizes never come near it; many sizes on a long line do.
 */
const MOST_WORK = 3e6;

/** Costs this close, as a share, are a tie: sums of the same prices in another order. */
const TIE = 1e-9;

/** A bound must be passed by more than what two runs of a line differ by. */
const SLACK = 1e-8;

/**
 * The cheapest way to lay a line in the sizes given (large to small, and so from the inlet on)
 * within the limits; of equal costs the one with fewer sizes, then the one with more of the larger.
 *
 * Every layout counts, since no rule says that a cheaper one is worse: on falling ground a smaller
 * size can even the pressures out. A layout is left unsolved only where it is certain that it cannot
 * win: dearer than the best so far, or out of limits by cannotPass.
 */
export function cheapestLayout(
  line: Omit<Line, "bore">,
  sizes: readonly PricedTubing[],
  limits: LineLimits,
  mostWork = MOST_WORK,
): Layout {
  return new LayoutSearch(line, sizes, limits, mostWork).run();
}

class LayoutSearch {
  private readonly count: number;
  private readonly last: number;
  /** Length of the first n segments, m. */
  private readonly lengthOf: number[] = [0];
  /** Lowest price of the sizes behind each. */
  private readonly cheapestAfter: number[];
  private best: { readonly cost: number; readonly layout: Layout } | undefined;
  private work = 0;
  private readonly perHead: number;

  constructor(
    private readonly line: Omit<Line, "bore">,
    private readonly sizes: readonly PricedTubing[],
    private readonly limits: LineLimits,
    private readonly mostWork: number,
  ) {
    this.count = line.segmentLength.length;
    this.last = sizes.length - 1;
    this.perHead = headWork(line.friction);
    for (const length of line.segmentLength) {
      this.lengthOf.push(this.lengthOf[this.lengthOf.length - 1] + length);
    }
    this.cheapestAfter = sizes.map((_, i) =>
      Math.min(...sizes.slice(Math.min(i + 1, this.last)).map(({ price }) => price)),
    );
  }

  run(): Layout {
    this.layFrom([], 0, 0);
    if (this.best === undefined) {
      throw new NoAnswer(
        "no layout of these sizes keeps within the limits: raise the inlet pressure, use larger tubing, fewer heads or looser limits",
      );
    }
    return this.best.layout;
  }

  /** Tries every end of one size, behind segments already laid at a cost, cheapest first. */
  private layFrom(laid: Layout, start: number, cost: number): void {
    const size = laid.length;
    if (size === this.last) {
      this.judge(laid, start, cost);
      return;
    }
    const ends = this.endsWorthTrying(laid, start);
    const price = this.sizes[size].price;
    if (price < this.cheapestAfter[size]) ends.reverse();
    for (const end of ends) {
      const costToEnd = cost + price * (this.lengthOf[end] - this.lengthOf[start]);
      const rest = this.lengthOf[this.count] - this.lengthOf[end];
      // The bound only rises from here on.
      if (!this.canWin(costToEnd + rest * this.cheapestAfter[size])) return;
      this.layFrom([...laid, end - start], end, costToEnd);
    }
  }

  private canWin(cost: number): boolean {
    return this.best === undefined || cost <= this.best.cost * (1 + TIE);
  }

  /** The last size takes what is left. */
  private judge(laid: Layout, start: number, cost: number): void {
    const { price } = this.sizes[this.last];
    const total = cost + price * (this.lengthOf[this.count] - this.lengthOf[start]);
    const layout = [...laid, this.count - start];
    if (!this.beatsBest(total, layout)) return;
    const solved = this.solve(layout);
    if (keepsWithin(this.limits, solved)) this.best = { cost: total, layout };
  }

  private beatsBest(cost: number, layout: Layout): boolean {
    const { best } = this;
    if (best === undefined) return true;
    if (Math.abs(cost - best.cost) > TIE * best.cost) return cost < best.cost;
    const used = (counts: Layout) => counts.filter((segments) => segments > 0).length;
    if (used(layout) !== used(best.layout)) return used(layout) < used(best.layout);
    const differs = layout.findIndex((segments, i) => segments !== best.layout[i]);
    return differs >= 0 && layout[differs] > best.layout[differs];
  }

  /**
   * Where this size may end, rising. Of all layouts with the same segments up to `start`, those that
   * end the size at or before `end` have no larger bore anywhere than the one that goes on with the
   * next size to the far end: if that one tells that none of them can pass, they all drop out. Halving
   * finds how far this goes in a few runs.
   */
  private endsWorthTrying(laid: Layout, start: number): number[] {
    // At least one segment is common to all, so that the highest pressure has a bound.
    const common = Math.max(start, 1);
    let dropped = common - 1;
    let kept = this.count + 1;
    while (kept - dropped > 1) {
      const end = Math.floor((dropped + kept) / 2);
      const largest = this.solve([...laid, end - start, this.count - end]);
      if (cannotPass(this.limits, largest, common)) dropped = end;
      else kept = end;
    }
    const ends = start === 0 ? [0] : [];
    for (let end = kept; end <= this.count; end++) ends.push(end);
    return ends;
  }

  /** `layout` may leave out sizes at the end that it does not use. */
  private solve(layout: Layout): SolvedLine {
    if (this.work > this.mostWork) {
      throw new NoAnswer(
        `${this.sizes.length} sizes on ${this.count} heads can be laid in too many ways to try: use fewer sizes`,
      );
    }
    const bore = layout.flatMap((segments, i) =>
      new Array<number>(segments).fill(this.sizes[i].bore),
    );
    const solved = solveLine({ ...this.line, bore });
    this.work += this.perHead * solved.passed;
    return solved;
  }
}

/**
 * Whether a solved line tells that none can pass that has the same bores up to head `common` and
 * no larger ones beyond. Two facts bear it. The total head at the last head rises with every bore
 * (for a given one there, a larger bore asks less of the inlet), so in the others the last nozzle
 * has no more than here. And the inflow rises with every bore, so the others draw no more through
 * the common segments and have there no less pressure than here. With the lowest pressure at most
 * `low` and the highest at least `high`, (highest − lowest)/average is at least 1 − low/high, since
 * no average is above the highest.
 */
function cannotPass(limits: LineLimits, solved: SolvedLine, common: number): boolean {
  const { nozzlePressure } = solved;
  const low = nozzlePressure[nozzlePressure.length - 1];
  if (low <= 0 || low < limits.lowest * (1 - SLACK)) return true;
  let high = low;
  for (let i = 0; i < common; i++) high = Math.max(high, nozzlePressure[i]);
  return 1 - low / high > limits.variation + SLACK;
}
