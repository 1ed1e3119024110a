import type { Content } from "./changes";

/** What one cell held before and after. */
export interface CellStep {
  readonly key: string;
  /** undefined where the ready-made workbook's own content stood. */
  readonly before: Content | undefined;
  readonly after: Content | undefined;
}

/** Cells that were changed together, and are taken back together. */
export type Step = readonly CellStep[];

/** Steps that can be taken back and taken again, until the grid keeps its own. */
export class Steps {
  private readonly taken: Step[] = [];
  private at = 0;

  get undos(): number {
    return this.at;
  }

  get redos(): number {
    return this.taken.length - this.at;
  }

  /** What was taken back is gone once something else is done. */
  add(step: Step): void {
    this.taken.splice(this.at, this.taken.length, step);
    this.at += 1;
  }

  undo(): Step | undefined {
    if (this.at === 0) return undefined;
    this.at -= 1;
    return this.taken[this.at];
  }

  redo(): Step | undefined {
    if (this.redos === 0) return undefined;
    this.at += 1;
    return this.taken[this.at - 1];
  }

  /** All of them, those taken back too. */
  all(): readonly Step[] {
    return this.taken;
  }
}
