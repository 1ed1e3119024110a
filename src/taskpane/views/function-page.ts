import type { CautionSubject } from "../../cautions";
import type { ArgumentHelp, FunctionHelp } from "../../reference";
import { oneCall } from "../../formula-text/dialect";
import { freshId, make } from "../../screen/dom";
import { formatResult } from "../../screen/number-format";
import { resultTable } from "../../screen/result-table";
import { button, message, selectField, textField } from "../components";
import { callText, evaluateCall, type Evaluated } from "../evaluate";
import { insertFormula } from "../insert";
import type { Pane } from "../pane";
import { strings } from "../strings";
import { cautionOf } from "../../words/caution-texts";
import { errorSaid, textSaid } from "../../words/spoken";
import { valuesOf } from "../workbook";

/** Everything about one function: what it computes, a live example, arguments, source, cautions. */
export function functionPage(pane: Pane, help: FunctionHelp): HTMLElement {
  return make(
    "article",
    { class: "function-page" },
    make("h2", { tabindex: "-1" }, help.name),
    make("p", {}, help.short),
    tryIt(pane, help),
    ...cautionParts(help),
    argumentsPart(help),
    ...paragraph(strings.page.gives, help.returns),
    ...paragraph(strings.page.how, help.remarks),
    ...paragraph(strings.page.source, help.source),
    ...paragraph(strings.page.errors, help.errors),
  );
}

function paragraph(title: string, text: string): HTMLElement[] {
  return text === "" ? [] : [make("h3", {}, title), make("p", {}, text)];
}

/** The example with editable arguments, worked out as they change. */
function tryIt(pane: Pane, help: FunctionHelp): HTMLElement {
  const example = oneCall(help.example)?.arguments ?? [];
  const texts = help.arguments.map((_, i) => example[i] ?? "");
  const formula = make("code", { class: "formula" });
  const result = make("div", { class: "result", role: "status" });
  let turn = 0;
  const refresh = async () => {
    const mine = ++turn;
    formula.textContent = callText(help, texts, pane.reference.namespace);
    const read = pane.host.inExcel ? valuesOf : async () => undefined;
    const evaluated = await evaluateCall(callText(help, texts), pane.functions, read);
    // A slower answer to an older question is dropped.
    if (mine === turn) result.replaceChildren(showResult(evaluated));
  };
  const fields = help.arguments.map((argument, i) =>
    argumentField(argument, texts[i], (text) => {
      texts[i] = text;
      void refresh();
    }),
  );
  void refresh();
  const insert = button(
    strings.page.insert,
    () =>
      void pane.attempt(() =>
        insertFormula(pane, callText(help, texts, pane.reference.namespace), help.spills),
      ),
    "primary",
    pane.host.inExcel ? {} : { disabled: "" },
  );
  const heading = freshId("try");
  return make(
    "section",
    { class: "try", "aria-labelledby": heading },
    make("h3", { id: heading }, strings.page.example),
    make("p", { class: "hint" }, strings.page.exampleHint),
    ...fields,
    formula,
    make("p", { class: "result-label" }, strings.page.result),
    result,
    insert,
  );
}

function argumentField(
  argument: ArgumentHelp,
  text: string,
  changed: (text: string) => void,
): HTMLElement {
  const label = argument.optional ? `${argument.name} (${strings.page.optional})` : argument.name;
  if (argument.choices === undefined) return textField(label, text, { changed });
  const quoted = argument.choices.map(({ value }) => ({ value: `"${value}"`, text: value }));
  return selectField(label, [{ value: "", text: strings.page.leftOut }, ...quoted], text, changed);
}

function showResult(evaluated: Evaluated): HTMLElement {
  if (evaluated.kind === "cannot") return make("p", {}, strings.page.cannotCompute);
  if (evaluated.kind === "unknown reference") {
    return make("p", { class: "wrong" }, strings.page.unknownReference(evaluated.text));
  }
  if (evaluated.kind === "error") {
    const { code, message: text } = evaluated.error;
    return make("p", { class: "wrong" }, make("strong", {}, code), ` ${errorSaid(text)}`);
  }
  const { value } = evaluated;
  return Array.isArray(value)
    ? resultTable(value, { label: strings.page.result })
    : make("output", {}, typeof value === "string" ? textSaid(value) : formatResult(value));
}

function cautionParts(help: FunctionHelp): HTMLElement[] {
  if (help.cautions.length === 0) return [];
  return [
    make("h3", {}, strings.page.cautions),
    ...help.cautions.map((subject) => {
      const { title, points } = cautionOf(subject as CautionSubject);
      const list = make("ul", {}, ...points.map((point) => make("li", {}, point)));
      const bar = message("warning", title);
      bar.querySelector(".message-text")?.append(list);
      return bar;
    }),
  ];
}

function argumentsPart(help: FunctionHelp): HTMLElement {
  const list = make("dl", { class: "arguments" });
  for (const argument of help.arguments) {
    const need = argument.optional ? strings.page.optional : strings.page.required;
    list.append(
      make("dt", {}, argument.name, make("span", { class: "need" }, ` ${need}`)),
      make("dd", {}, argument.help),
    );
  }
  return make("section", {}, make("h3", {}, strings.page.arguments), list);
}
