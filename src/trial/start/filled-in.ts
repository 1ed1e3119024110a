import type { ReadyMadeSheet, UnitSystem } from "../../sheets/kit/definition";
import { carryPlan } from "../kept/carry";
import type { Contents } from "../kept/changes";
import { inputsOf } from "../kept/inputs";
import type { AskedBook } from "./asked-book";
import type { Plan } from "./propose";

/** What a workbook holds for the plan: as the line layout has it, carried over where it is another. */
export function filledIn(
  plan: Pick<Plan, "inputs" | "beside">,
  {
    system,
    from,
    to,
    book,
  }: {
    readonly system: UnitSystem;
    readonly from: ReadyMadeSheet;
    readonly to: ReadyMadeSheet;
    readonly book: AskedBook;
  },
): Contents {
  const own = book.contents(plan.inputs);
  if (to.id === from.id) return own;
  const pages = to.pages(system);
  const carried = carryPlan(
    { pages: from.pages(system), contents: own, shown: () => undefined },
    { pages, contents: new Map() },
  );
  const contents = new Map(carried.contents);
  for (const { called, key, cell } of inputsOf(pages)) {
    const value = plan.beside.get(called);
    if (value !== undefined && value !== cell.value) contents.set(key, value);
  }
  return contents;
}
