import { make } from "../../screen/dom";
import { readyMadeSheets as englishSheets } from "../../sheets";
import { spokenLanguage, workbookSaid } from "../../words/spoken";
import { workbookIn } from "../../words/workbook-reader";
import type { ReadyMadeSheet, UnitSystem } from "../../sheets/kit/definition";
import { prepareSheets } from "../open-workbook";
import { button, message, selectField } from "../components";
import type { Pane } from "../pane";
import { strings } from "../strings";
import { addSheets } from "../add-sheets";
import { names, sheetNames } from "../workbook";
import { outsideNote } from "./functions-view";

/** The ready-made sheets, each added to the open workbook as new worksheets. */
export function sheetsView(pane: Pane): HTMLElement {
  const readyMadeSheets =
    spokenLanguage() === "en"
      ? englishSheets
      : englishSheets.map((sheet) => workbookIn(sheet, workbookSaid));
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
  const book = prepareSheets(sheet.pages(system), taken, pane.reference.namespace, system);
  const { extras, functions } = await addSheets(book, pane.host);
  const texts = [
    strings.sheets.added(book.sheets.map(({ name }) => name)),
    ...(extras.length === 0
      ? []
      : [
          strings.sheets.refusedParts(
            extras.map(({ sheet, what }) => `${sheet}: ${strings.sheets.parts[what]}`),
          ),
        ]),
    ...(functions.length === 0 ? [] : [strings.sheets.refused(functions)]),
  ];
  pane.say(message(texts.length === 1 ? "success" : "warning", texts.join(" ")));
}
