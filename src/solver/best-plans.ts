import type { Design } from "./plan-design";
import { TIE } from "./plan-problem";
import { compareTubing } from "./plan-tubing";

/** The cheapest design of each kind, as many kinds as are wanted. */
export class BestPlans {
  private readonly list: { readonly kind: string; readonly design: Design }[] = [];

  constructor(
    private readonly count: number,
    private readonly below: number,
  ) {}

  /** What a design of a kind may cost and still count; more than a tie, so that ties are judged. */
  bar(kind: string): number {
    const { list, count, below } = this;
    const known = list.find((entry) => entry.kind === kind) ?? list[count - 1];
    return known === undefined ? below : known.design.year.total * (1 + TIE);
  }

  add(kind: string, design: Design): void {
    const { list } = this;
    if (design.year.total >= this.below) return;
    const known = list.findIndex((entry) => entry.kind === kind);
    if (known >= 0) {
      if (compareDesigns(design, list[known].design) >= 0) return;
      list.splice(known, 1);
    }
    let place = list.length;
    while (place > 0 && compareDesigns(design, list[place - 1].design) < 0) place--;
    list.splice(place, 0, { kind, design });
    if (list.length > this.count) list.pop();
  }

  plans(): Design[] {
    return this.list.map(({ design }) => design);
  }
}

/**
 * Cheaper first; of equal costs fewer sizes, then more of the larger; then as the lists have it, so
 * that one problem has one answer.
 */
export function compareDesigns(a: Design, b: Design): number {
  const [costA, costB] = [a.year.total, b.year.total];
  if (Math.abs(costA - costB) > TIE * Math.max(costA, costB)) return costA - costB;
  return (
    compareTubing(a.choice.tubing, b.choice.tubing) ||
    a.choice.laid.spacing - b.choice.laid.spacing ||
    a.choice.laid.move - b.choice.laid.move ||
    a.choice.sprinkler - b.choice.sprinkler ||
    a.choice.pressure - b.choice.pressure ||
    a.choice.feeder - b.choice.feeder
  );
}
