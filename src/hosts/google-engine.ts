import { guardedFunctions } from "../functions/guarded";
import type { FunctionId } from "../catalogue";
import { inGoogle } from "./google";

/** The entry of Engine.gs: what each declared function of Code.gs calls. */
export function call(id: FunctionId, cells: readonly unknown[]): unknown {
  const guarded = guardedFunctions.get(id);
  if (guarded === undefined) throw new Error(`there is no function ${id}`);
  return inGoogle(guarded)(...cells);
}
