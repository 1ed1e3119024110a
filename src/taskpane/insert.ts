import { button, message } from "./components";
import type { Pane } from "./pane";
import { strings } from "./strings";
import { contentOf, selectedCell, type Selection, writeCell } from "./workbook";

/**
 * Puts a formula into the selected cell. A filled cell is only replaced when the user says so, and
 * the pane can put back what stood there, unless the cell has been changed since.
 */
export async function insertFormula(pane: Pane, formula: string, spills: boolean): Promise<void> {
  const at = await selectedCell();
  if (at.content === "") {
    await put(pane, at, formula, spills);
    return;
  }
  const answer = (agreed: boolean) =>
    void pane.attempt(async () => {
      pane.quiet();
      if (!agreed) return;
      // The cell that was asked about, even if the selection has moved since.
      await put(pane, { ...at, content: await contentOf(at) }, formula, spills);
    });
  pane.say(
    message(
      "warning",
      strings.insert.filled(at.address, at.content),
      button(strings.insert.replace, () => answer(true), "primary"),
      button(strings.insert.keep, () => answer(false)),
    ),
  );
}

async function put(pane: Pane, at: Selection, formula: string, spills: boolean): Promise<void> {
  await writeCell(at, formula);
  const written = await contentOf(at);
  const undo = () =>
    void pane.attempt(async () => {
      if ((await contentOf(at)) !== written) {
        pane.say(message("info", strings.insert.changedSince(at.address)));
        return;
      }
      await writeCell(at, at.content);
      pane.say(message("success", strings.insert.undone(at.address)));
    });
  const text = spills
    ? `${strings.insert.done(at.address)} ${strings.insert.spills}`
    : strings.insert.done(at.address);
  pane.say(message("success", text, button(strings.insert.undo, undo)));
}
