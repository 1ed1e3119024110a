import type * as Evaluator from "../../build/sheet-evaluator";
import { bundled } from "./bundled";

/** The evaluator of ready-made sheets. */
export function loadEvaluator(): typeof Evaluator.evaluate {
  return bundled<typeof Evaluator>("sheet-evaluator").evaluate;
}
