import { heads } from "./books/heads";
import { lineLayout } from "./books/line-layout";
import type { ReadyMadeSheet, SheetHead } from "./kit/definition";

/** Heads of the ready-made sheets, in the order in which screens list them. */
export const shelf: readonly SheetHead[] = Object.values(heads);

/** For a page that opens with the first of them: the others are fetched when it stands. */
export const firstSheet: ReadyMadeSheet = lineLayout;

export async function allSheets(): Promise<readonly ReadyMadeSheet[]> {
  return (await import("./index")).readyMadeSheets;
}
