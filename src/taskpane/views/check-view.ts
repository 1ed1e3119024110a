import { make } from "../../screen/dom";
import { fromHost, toScreen } from "../../formula-text/dialect";
import { button, message } from "../components";
import { evaluateCall } from "../evaluate";
import type { Pane } from "../pane";
import { checkSheet, type FoundError, type FoundWarning } from "../sheet-check";
import { strings } from "../strings";
import { formulasOfSheet, goTo, reenter, valuesOf } from "../workbook";
import { errorSaid, textSaid } from "../../words/spoken";
import { outsideNote } from "./functions-view";

/** Finds what is wrong on the active sheet and leads there. */
export function checkView(pane: Pane): HTMLElement {
  const findings = make("div");
  const run = () =>
    pane.attempt(async () => {
      pane.quiet();
      findings.replaceChildren(...(await find(pane, () => void run())));
    });
  return make(
    "div",
    { class: "view" },
    ...(pane.host.inExcel ? [] : [outsideNote()]),
    make("p", {}, strings.check.intro),
    button(
      strings.check.run,
      () => void run(),
      "primary",
      pane.host.inExcel ? {} : { disabled: "" },
    ),
    findings,
  );
}

async function find(pane: Pane, again: () => void): Promise<HTMLElement[]> {
  const { sheet, cells } = await formulasOfSheet();
  const spell = (formula: string) => fromHost(formula, pane.reference.namespace);
  const { using, errors, warnings } = checkSheet(cells, spell);
  if (using === 0) return [message("info", strings.check.none(sheet))];
  if (errors.length + warnings.length === 0) {
    return [message("success", strings.check.clean(sheet, using))];
  }
  const explained = await Promise.all(
    errors.map(async (found) => finding(pane, sheet, found, await explain(pane, found, spell))),
  );
  return [
    message("warning", strings.check.found(sheet, using, errors.length, warnings.length)),
    ...reenterButton(pane, sheet, errors, spell, again),
    ...group(strings.check.errors, explained),
    ...group(
      strings.check.warnings,
      warnings.map((found) => finding(pane, sheet, found, textSaid(found.sentence))),
    ),
  ];
}

/**
 * Cells of a workbook that was opened before the add-in was there may keep showing #NAME? until they
 * are entered again, spelt as the host shows them and not as a file stores them.
 */
function reenterButton(
  pane: Pane,
  sheet: string,
  errors: readonly FoundError[],
  spell: (formula: string) => string,
  again: () => void,
): HTMLElement[] {
  const stuck = errors
    .filter(({ value }) => value === "#NAME?")
    .map(({ address, formula }) => ({
      address,
      formula: toScreen(spell(formula), pane.reference.namespace),
    }));
  if (stuck.length === 0) return [];
  const enter = () =>
    pane.attempt(async () => {
      const left = await reenter(sheet, stuck);
      again();
      pane.say(
        left === 0
          ? message("success", strings.check.reentered(stuck.length))
          : message("warning", strings.check.stillUnknown(left)),
      );
    });
  return [button(strings.check.reenter(stuck.length), () => void enter(), "primary")];
}

function group(title: string, items: readonly HTMLElement[]): HTMLElement[] {
  if (items.length === 0) return [];
  return [make("h2", {}, title), make("ul", { class: "findings" }, ...items)];
}

function finding(
  pane: Pane,
  sheet: string,
  found: FoundError | FoundWarning,
  text: string,
): HTMLElement {
  const jump = button(
    strings.check.goTo(found.address),
    () => void pane.attempt(() => goTo({ sheet, address: found.address })),
  );
  const mark = found.kind === "error" ? `${String(found.value)} ` : "";
  return make(
    "li",
    { class: found.kind },
    make("p", {}, make("strong", {}, mark), text),
    make("code", { class: "formula" }, found.formula),
    jump,
  );
}

/** The message behind an error: worked out again where the arguments can be read. */
async function explain(
  pane: Pane,
  found: FoundError,
  spell: (formula: string) => string,
): Promise<string> {
  if (found.value === "#SPILL!") return strings.check.spill;
  if (found.value === "#NAME?") return strings.check.name;
  const evaluated = await evaluateCall(spell(found.formula), pane.functions, valuesOf);
  if (evaluated.kind === "error") return errorSaid(evaluated.error.message);
  return evaluated.kind === "value" ? strings.check.differs : strings.check.ownMark;
}
