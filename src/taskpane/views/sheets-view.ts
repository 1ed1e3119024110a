import { make } from "../../screen/dom";
import { readyMadeSheets } from "../../sheets";
import type { ReadyMadeSheet, UnitSystem } from "../../sheets/kit/definition";
import { prepareSheets } from "../open-workbook";
import { button, message, selectField } from "../components";
import type { Pane } from "../pane";
import { strings } from "../strings";
import { addName, addSheets, names, sheetNames } from "../workbook";
import { outsideNote } from "./functions-view";

/** The ready-made sheets, each added to the open workbook as new worksheets. */
export function sheetsView(pane: Pane): HTMLElement {
  let system: UnitSystem = "US";
  const choose = selectField(
    strings.sheets.system,
    [
      { value: "US", text: strings.sheets.us },
      { value: "SI", text: strings.sheets.si },
    ],
    system,
    (chosen) => (system = chosen as UnitSystem),
  );
  const add = (sheet: ReadyMadeSheet) => pane.attempt(() => addReadyMade(pane, sheet, system));
  return make(
    "div",
    { class: "view" },
    ...(pane.host.inExcel ? [] : [outsideNote()]),
    make("p", {}, strings.sheets.intro),
    choose,
    ...readyMadeSheets.map((sheet) =>
      make(
        "section",
        { class: "sheet-card" },
        make("h2", {}, sheet.title),
        make("p", {}, sheet.purpose),
        button(strings.sheets.add, () => void add(sheet), "outline", {
          "aria-label": `${strings.sheets.add}: ${sheet.title}`,
          ...(pane.host.inExcel ? {} : { disabled: "" }),
        }),
      ),
    ),
  );
}

async function addReadyMade(pane: Pane, sheet: ReadyMadeSheet, system: UnitSystem): Promise<void> {
  const taken = {
    sheets: await sheetNames(),
    names: (await names()).map(({ name }) => name),
  };
  const prepared = prepareSheets(sheet.pages(system), taken, pane.reference.namespace);
  await addSheets(prepared, pane.host.has);
  const added = strings.sheets.added(prepared.map(({ name }) => name));
  const refused = await addFunctions(prepared.flatMap(({ functions }) => functions));
  pane.say(
    refused.length === 0
      ? message("success", added)
      : message("warning", `${added} ${strings.sheets.refused(refused)}`),
  );
}

/** The function names of a page of its own; no other cell depends on them, so a refusal is only said. */
async function addFunctions(
  functions: readonly { readonly name: string; readonly formula: string }[],
): Promise<string[]> {
  const refused: string[] = [];
  for (const { name, formula } of functions) {
    try {
      if ((await addName({ name, formula, comment: "" })) === "no LAMBDA") refused.push(name);
    } catch {
      refused.push(name);
    }
  }
  return refused;
}
