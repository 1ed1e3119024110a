import type { ReadyMadeSheet } from "./kit/definition";
import { lineLayout } from "./books/line-layout";
import { quote } from "./books/quote";
import { season } from "./books/season";
import { spacingWhatIf } from "./books/spacing";
import { workshop } from "./books/workshop/index";

/** The ready-made sheets, in the order in which screens list them. */
export const readyMadeSheets: readonly ReadyMadeSheet[] = [
  lineLayout,
  quote,
  workshop,
  spacingWhatIf,
  season,
];
