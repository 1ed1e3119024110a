import { make } from "../../screen/dom";
import type { FunctionHelp } from "../../reference";
import { isOlderThanLambdas } from "../builds";
import { button, message, selectField, textField } from "../components";
import { nameFault } from "../name-rules";
import { ownFormula, type OwnFunction, ownUse, readOwnFunction } from "../own-function";
import type { Pane } from "../pane";
import { readableCall } from "../sheet-check";
import { strings } from "../strings";
import { addName, deleteName, names, type WorkbookName } from "../workbook";
import { outsideNote } from "./functions-view";

/** Function names of the user's own: list, make, change, delete. */
export function ownView(pane: Pane): HTMLElement {
  const view = make("div", { class: "view" });
  const { platform, version, inExcel } = pane.host;
  const old = isOlderThanLambdas(platform, version);
  const notes = [
    make("p", {}, strings.own.intro),
    make("p", { class: "hint" }, strings.own.untried),
    ...(old ? [message("warning", strings.own.oldBuild(version))] : []),
    ...(inExcel ? [] : [outsideNote()]),
  ];
  const list = make("div", { class: "own-list" });
  const form = make("div");
  view.append(...notes, form, make("h2", {}, strings.own.list), list);

  const refresh = async () => {
    if (!inExcel) return;
    const all = await names();
    list.replaceChildren(...listed(all));
    if (list.childElementCount === 0) list.append(make("p", {}, strings.own.empty));
  };
  const listed = (all: readonly WorkbookName[]) =>
    all.flatMap(({ name, formula, comment }) => {
      const { functions, namespace } = pane.reference;
      const own = readOwnFunction(name, comment, formula, functions, namespace);
      return own === undefined ? [] : [card(own)];
    });
  const card = (own: OwnFunction) => {
    const help = helpOf(pane, own.calls);
    return make(
      "section",
      { class: "own-card" },
      make("h3", {}, ownUse(own, help)),
      make("p", {}, own.description),
      make("code", { class: "formula" }, ownFormula(own, help, pane.reference.namespace)),
      make(
        "div",
        { class: "actions" },
        button(strings.own.change, () => edit(own), "outline", {
          "aria-label": `${strings.own.change} ${own.name}`,
        }),
        button(strings.own.remove, () => askToRemove(own), "outline", {
          "aria-label": `${strings.own.remove} ${own.name}`,
        }),
      ),
    );
  };
  const askToRemove = (own: OwnFunction) =>
    pane.say(
      message(
        "warning",
        strings.own.removeSure(own.name),
        button(strings.own.remove, () => void remove(own), "primary"),
        button(strings.own.cancel, () => pane.quiet()),
      ),
    );
  const remove = (own: OwnFunction) =>
    pane.attempt(async () => {
      await deleteName(own.name);
      pane.say(message("success", strings.own.removed(own.name)));
      await refresh();
    });
  const edit = (own?: OwnFunction) => {
    const saved = async () => {
      edit();
      await refresh();
    };
    form.replaceChildren(editor(pane, own, saved, () => edit()));
    if (own !== undefined) form.querySelector<HTMLElement>("input, select")?.focus();
  };

  edit();
  void pane.attempt(refresh);
  return view;
}

function helpOf(pane: Pane, name: string): FunctionHelp {
  const help = pane.reference.functions.find((candidate) => candidate.name === name);
  if (help === undefined) throw new Error(`there is no function ${name}`);
  return help;
}

/** The form for one name; `before` is the name as it stands when it is being changed. */
function editor(
  pane: Pane,
  before: OwnFunction | undefined,
  saved: () => Promise<void>,
  cancel: () => void,
): HTMLElement {
  const form = make("form", { class: "own-form" });
  let help = helpOf(pane, before?.calls ?? pane.reference.functions[0].name);
  let fixed: string[] = help.arguments.map((_, i) => before?.fixed[i] ?? "");
  let name = before?.name ?? "";
  let description = before?.description ?? "";

  const own = (): OwnFunction => ({
    name,
    description,
    calls: help.name,
    fixed: help.arguments.map((argument, i) => {
      const text = fixed[i].trim();
      // An optional argument left empty stays out of the call; a required one is the caller's.
      return text === "" && !argument.optional ? undefined : text;
    }),
  });
  const formula = make("code", { class: "formula" });
  const showFormula = () =>
    (formula.textContent = ownFormula(own(), help, pane.reference.namespace));

  const draw = () => {
    const chooser = selectField(
      strings.own.choose,
      pane.reference.functions.map((candidate) => ({
        value: candidate.name,
        text: candidate.name,
      })),
      help.name,
      (chosen) => {
        help = helpOf(pane, chosen);
        fixed = help.arguments.map(() => "");
        draw();
        form.querySelector("select")?.focus();
      },
    );
    form.replaceChildren(
      chooser,
      make("p", { class: "hint" }, help.short),
      make(
        "fieldset",
        {},
        make("legend", {}, strings.own.fix),
        make("p", { class: "hint" }, strings.own.fixHint),
        ...help.arguments.map((argument, i) =>
          textField(argument.name, fixed[i], {
            changed: (text) => {
              fixed[i] = text;
              showFormula();
            },
          }),
        ),
      ),
      textField(strings.own.name, name, {
        changed: (text) => {
          name = text;
          showFormula();
        },
      }),
      textField(strings.own.description, description, { changed: (text) => (description = text) }),
      make("p", { class: "result-label" }, strings.own.formula),
      formula,
      make(
        "div",
        { class: "actions" },
        button(
          strings.own.save,
          () => void save(),
          "primary",
          pane.host.inExcel ? {} : { disabled: "" },
        ),
        ...(before === undefined ? [] : [button(strings.own.cancel, cancel)]),
      ),
    );
    showFormula();
  };

  const save = () =>
    pane.attempt(async () => {
      const wanted = { ...own(), name: name.trim() };
      const taken = (await names())
        .map((other) => other.name)
        .filter((other) => other.toUpperCase() !== before?.name.toUpperCase());
      const fault = faultOf(wanted, help, taken, pane.reference.namespace);
      if (fault !== undefined) {
        pane.say(message("error", fault));
        return;
      }
      await store(pane, wanted, help, before);
      await saved();
    });

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void save();
  });
  draw();
  return form;
}

function faultOf(
  own: OwnFunction,
  help: FunctionHelp,
  taken: readonly string[],
  namespace: string,
): string | undefined {
  const fault = nameFault(own.name, taken, namespace);
  if (fault !== undefined) return strings.own.faults[fault];
  const bad = help.arguments.find((_, i) => !isFixable(own.fixed[i] ?? "", help));
  if (bad !== undefined) return strings.own.badFixed(bad.name);
  return own.fixed.every((text) => text !== undefined) ? strings.own.allFixed : undefined;
}

/** A literal, a reference or a name: what a formula's argument can hold without working anything out. */
function isFixable(text: string, help: FunctionHelp): boolean {
  return text === "" || readableCall(`=IRRIG.${help.name}(${text})`)?.arguments.length === 1;
}

/** A change deletes the old name only once the new one stands, so nothing is lost on a refusal. */
async function store(
  pane: Pane,
  own: OwnFunction,
  help: FunctionHelp,
  before: OwnFunction | undefined,
): Promise<void> {
  const formula = ownFormula(own, help, pane.reference.namespace);
  const entry = { name: own.name, formula, comment: own.description };
  const sameName = before?.name.toUpperCase() === own.name.toUpperCase();
  if (before !== undefined && sameName) await deleteName(before.name);
  let outcome: "stored" | "no LAMBDA";
  try {
    outcome = await addName(entry);
  } catch (error) {
    if (before !== undefined && sameName) {
      const old = ownFormula(before, helpOf(pane, before.calls), pane.reference.namespace);
      await addName({ name: before.name, formula: old, comment: before.description });
    }
    throw error;
  }
  if (outcome === "no LAMBDA") {
    pane.say(message("error", strings.own.noLambda));
    return;
  }
  if (before !== undefined && !sameName) await deleteName(before.name);
  pane.say(message("success", strings.own.stored(own.name)));
}
