import { guard, type GuardedFunction } from "../boundary/guard";
import type { FunctionId } from "../catalogue";
import { sheetFunctions } from "./index";

/** Every landed function by its id, as any host takes it: what each edition starts from. */
export const guardedFunctions: ReadonlyMap<FunctionId, GuardedFunction> = new Map(
  [...sheetFunctions].map(([id, sheetFunction]) => [id, guard(sheetFunction)]),
);
