import type * as Books from "../../build/open-workbook";
import { bundled } from "./bundled";

/** Opens ready-made sheets to ask them what they answer to other inputs. */
export function loadWorkbooks(): typeof Books {
  return bundled<typeof Books>("open-workbook");
}
