import type { ReadyMadeSheet } from "./definition";
import { lineLayout } from "./line-layout";
import { quote } from "./quote";
import { season } from "./season";
import { spacingWhatIf } from "./spacing";
import { workshop } from "./workshop";

/** The ready-made sheets, in the order in which screens list them. */
export const readyMadeSheets: readonly ReadyMadeSheet[] = [
  lineLayout,
  quote,
  workshop,
  spacingWhatIf,
  season,
];
