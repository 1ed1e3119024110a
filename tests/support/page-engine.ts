import type { NewContent, Place, Value, WorkbookEngine } from "../../build/workbook-engine";
import { writeAddress } from "../../src/sheets/kit/address";
import type { Page } from "../../src/sheets/kit/definition";
import { FirstValues } from "../../src/trial/first-values";
import type { Content } from "../../src/trial/kept/changes";
import { typedKey } from "../../src/trial/sheet-values";
import { host, reference } from "./page-functions";

/** A workbook in the trial page's own reckoning, which is many times quicker than the grid's engine. */
export class PageEngine implements WorkbookEngine {
  private readonly values: FirstValues;
  private readonly typed = new Map<string, Content>();

  constructor(private readonly pages: readonly Page[]) {
    this.values = new FirstValues(pages, new Map(), reference, host);
  }

  value(place: Place): Value {
    const shown = this.values.read(this.onPage(place));
    if (shown.isPending === true) throw new Error(`${this.key(place)} is left to the grid`);
    return shown.value;
  }

  message(place: Place): string | undefined {
    return this.values.read(this.onPage(place)).error?.message;
  }

  put(contents: readonly NewContent[]): Promise<void> {
    for (const { place, content } of contents) {
      if (this.isReadyMade(place, content)) this.typed.delete(this.key(place));
      else if (content.formula !== undefined)
        this.typed.set(this.key(place), { formula: content.formula });
      else this.typed.set(this.key(place), content.value ?? null);
    }
    this.values.adopt(this.typed);
    return Promise.resolve();
  }

  close(): void {
    this.typed.clear();
  }

  private isReadyMade({ page, row, column }: Place, content: NewContent["content"]): boolean {
    const at = writeAddress({ row, column });
    const cell = this.pages[page].cells.find((one) => one.at === at);
    return cell?.formula === content.formula && cell?.value === content.value;
  }

  private onPage({ page, row, column }: Place) {
    return { page: this.pages[page].name, row, column };
  }

  private key({ page, row, column }: Place): string {
    return typedKey(this.pages[page].name, writeAddress({ row, column }));
  }
}
