import { make } from "../../screen/dom";
import { fromHost } from "../../formula-text/dialect";
import { button, message } from "../components";
import { evaluateCall } from "../evaluate";
import type { Pane } from "../pane";
import { checkSheet, type FoundError, type FoundWarning } from "../sheet-check";
import { strings } from "../strings";
import { formulasOfSheet, goTo, valuesOf } from "../workbook";
import { outsideNote } from "./functions-view";

/** Finds what is wrong on the active sheet and leads there. */
export function checkView(pane: Pane): HTMLElement {
  const findings = make("div");
  const run = () =>
    pane.attempt(async () => {
      pane.quiet();
      findings.replaceChildren(...(await find(pane)));
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

async function find(pane: Pane): Promise<HTMLElement[]> {
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
    ...group(strings.check.errors, explained),
    ...group(
      strings.check.warnings,
      warnings.map((found) => finding(pane, sheet, found, found.sentence)),
    ),
  ];
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
  if (evaluated.kind === "error") return evaluated.error.message;
  return evaluated.kind === "value" ? strings.check.differs : strings.check.ownMark;
}
