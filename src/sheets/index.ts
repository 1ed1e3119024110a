import type { ReadyMadeSheet } from "./definition";
import { lineLayout } from "./line-layout";
import { season } from "./season";

/** The ready-made sheets, in the order in which screens list them. */
export const readyMadeSheets: readonly ReadyMadeSheet[] = [lineLayout, season];
