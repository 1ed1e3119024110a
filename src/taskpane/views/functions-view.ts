import { make } from "../../screen/dom";
import type { FunctionHelp } from "../../reference";
import { button, message, textField } from "../components";
import type { Pane } from "../pane";
import { functionSearch } from "../../screen/search";
import { strings } from "../strings";
import { functionPage } from "./function-page";

/** Search, the list it finds, and behind each entry the function's page. */
export function functionsView(pane: Pane): HTMLElement {
  const view = make("div", { class: "view" });
  const search = functionSearch(pane.reference.functions);
  let query = "";

  const showList = (focus?: string) => {
    const list = make("ul", { class: "function-list" });
    const count = make("p", { class: "count", role: "status" });
    const fill = () => {
      const found = search(query);
      count.textContent =
        found.length === 0 ? strings.search.none : strings.search.count(found.length);
      list.replaceChildren(...found.map((help) => entry(help, () => showPage(help))));
    };
    const field = textField(strings.search.label, query, {
      placeholder: strings.search.placeholder,
      changed: (text) => {
        query = text;
        fill();
      },
    });
    fill();
    view.replaceChildren(field, count, list);
    const back =
      focus === undefined ? null : list.querySelector<HTMLElement>(`[data-id="${focus}"]`);
    back?.focus();
  };

  const showPage = (help: FunctionHelp) => {
    pane.quiet();
    const back = button(`‹ ${strings.page.back}`, () => showList(help.id), "subtle");
    const page = functionPage(pane, help);
    view.replaceChildren(back, page);
    page.querySelector<HTMLElement>("h2")?.focus();
    page.scrollIntoView({ block: "nearest" });
  };

  showList();
  return view;
}

function entry(help: FunctionHelp, open: () => void): HTMLElement {
  const press = make(
    "button",
    { type: "button", class: "function-entry", "data-id": help.id },
    make("span", { class: "function-name" }, help.name),
    make("span", { class: "function-short" }, help.short),
  );
  press.addEventListener("click", open);
  return make("li", {}, press);
}

/** Shown by the views that need a workbook when the pane is open elsewhere. */
export function outsideNote(): HTMLElement {
  return message("info", strings.outside);
}
