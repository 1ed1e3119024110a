import type { Page } from "../../sheets/kit/definition";
import type { CellValue } from "../../screen/host";
import { type Content, type Contents, isFormula } from "./changes";
import { inputsOf } from "./inputs";

export interface Carried {
  readonly contents: Contents;
  /** How many inputs both workbooks have. */
  readonly shared: number;
  /** Inputs in error; the other workbook's are blank, so that nothing is worked out from another field. */
  readonly left: readonly string[];
}

/**
 * The plan of one workbook in another: every input that both have holds the same there, so that the
 * same field is typed once. What the other workbook has beside them is left as it stands in it.
 */
export function carryPlan(
  from: {
    readonly pages: readonly Page[];
    readonly contents: Contents;
    /** What a cell shows; undefined for an error. */
    readonly shown: (key: string) => CellValue | undefined;
  },
  to: { readonly pages: readonly Page[]; readonly contents: Contents },
): Carried {
  const targets = new Map(inputsOf(to.pages).map((input) => [input.called, input]));
  const contents = new Map<string, Content>(to.contents);
  const left: string[] = [];
  let shared = 0;
  for (const { called, key, cell } of inputsOf(from.pages)) {
    const target = targets.get(called);
    if (target === undefined) continue;
    const given = from.contents.get(key);
    shared += 1;
    // A formula of the user's own names cells that the other workbook may not have: its value goes.
    const shown = isFormula(given) || cell.formula !== undefined ? from.shown(key) : undefined;
    if (isFormula(given) && shown === undefined) left.push(called);
    const value = isFormula(given)
      ? (shown ?? null)
      : given === undefined
        ? (shown ?? cell.value ?? null)
        : given;
    if (value === (target.cell.value ?? null)) contents.delete(target.key);
    else contents.set(target.key, value);
  }
  return { contents, shared, left };
}
