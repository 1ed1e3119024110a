import type { CellValue } from "../screen/host";
import type { FirstValues } from "./first-values";
import type { CellPlace, SheetValues, ShownCell } from "./sheet-values";

/** The spreadsheet, as far as what stands beside it needs it. */
export interface SlowerValues extends Omit<SheetValues, "onSettled"> {
  /** Something was changed and not all that follows from it has been worked out. */
  readonly isBehind: boolean;
}

/**
 * What the document beside the spreadsheet shows: worked out without it, so that no answer waits for
 * the spreadsheet's engine. What is beyond that reckoning, as formulas of the user's own may be,
 * comes from the spreadsheet when it has caught up, and is pending until then: no old number stands
 * as a new one.
 */
export class LiveValues implements SheetValues {
  private grid: SlowerValues | undefined;
  private asked = false;

  constructor(private readonly first: FirstValues) {}

  /** From now on the spreadsheet is there: what is written goes into it too. */
  with(grid: SlowerValues): void {
    this.grid = grid;
  }

  /** Whether something shown has been asked of the spreadsheet, since this was last called. */
  asksGrid(): boolean {
    const asked = this.asked;
    this.asked = false;
    return asked;
  }

  read(place: CellPlace): ShownCell {
    const shown = this.first.read(place);
    if (shown.isPending !== true) return shown;
    this.asked = true;
    return this.grid === undefined || this.grid.isBehind ? shown : this.grid.read(place);
  }

  write(place: CellPlace, value: CellValue): void {
    this.writeBlock(place, [[value]]);
  }

  writeBlock(place: CellPlace, rows: readonly (readonly CellValue[])[]): void {
    if (this.grid === undefined) {
      this.first.writeBlock(place, rows);
      return;
    }
    this.first.writeAlong(place, rows);
    this.grid.writeBlock(place, rows);
  }

  onSettled(listener: () => void): void {
    this.first.onSettled(listener);
  }
}
