import type { ReadyMadeSheet, UnitSystem } from "../../sheets/kit/definition";
import type { Contents } from "../kept/changes";

/** Opens a workbook filled in, as a piece of work of its own with this name. */
export type Opening = (
  sheet: ReadyMadeSheet,
  system: UnitSystem,
  name: string,
  contents: Contents,
) => void;
