import type { Page, SheetCell } from "../sheets/kit/definition";
import { readAddress } from "../sheets/kit/address";
import { faultOf } from "../sheets/kit/limits";
import { screenSaid, workbookSaid } from "../words/spoken";
import type { SheetValues } from "./sheet-values";
import { commaFault } from "./typed";

/** What is wrong with the inputs of a workbook, in the page's language. */
export class InputFaults {
  private readonly inputs: readonly { readonly page: string; readonly cell: SheetCell }[];
  private readonly named = new Map<string, { readonly page: string; readonly cell: SheetCell }>();

  constructor(
    pages: readonly Page[],
    private readonly values: SheetValues,
  ) {
    const all = pages.flatMap((page) => page.cells.map((cell) => ({ page: page.name, cell })));
    this.inputs = all.filter(({ cell }) => cell.role === "input");
    for (const one of all) if (one.cell.name !== undefined) this.named.set(one.cell.name, one);
  }

  of(page: string, cell: SheetCell): string | undefined {
    const { allowed, label = "It" } = cell;
    if (allowed === undefined) return undefined;
    const value = this.valueOf(page, cell);
    const inDoubt = "low" in allowed ? commaFault(value) : undefined;
    if (inDoubt !== undefined) return screenSaid(inDoubt);
    const wrong = faultOf(label, allowed, value, (name) => {
      const other = this.named.get(name);
      return other === undefined ? null : this.valueOf(other.page, other.cell);
    });
    return wrong && workbookSaid(wrong);
  }

  any(): boolean {
    return this.inputs.some(({ page, cell }) => this.of(page, cell) !== undefined);
  }

  private valueOf(page: string, { at }: SheetCell) {
    return this.values.read({ page, ...readAddress(at) }).value;
  }
}
