import { cautions, type CautionSubject } from "../cautions";
import type { ArgumentHelp, FunctionHelp, Reference } from "../reference";
import { toScreen } from "../formula-text/dialect";
import { make } from "../screen/dom";
import { functionSearch, type FunctionSearch } from "../screen/search";
import { screenSaid } from "../words/spoken";
import { cautionText } from "../screen/cautions-text";

/** The whole list of functions with their arguments, to search and read while the sheet is open. */
export class FunctionList {
  private readonly entries: {
    readonly help: FunctionHelp;
    readonly element: HTMLElement;
  }[];
  private readonly find: FunctionSearch;
  private readonly families = new Map<string, HTMLElement>();
  private readonly count = make("p", { class: "count", role: "status" });
  readonly search = make("input", { type: "search", id: "function-search", autocomplete: "off" });

  constructor(private readonly reference: Reference) {
    this.entries = reference.functions.map((help) => ({
      help,
      element: this.entry(help),
    }));
    this.find = functionSearch(reference.functions);
  }

  build(close: () => void): HTMLElement {
    const shut = make("button", { type: "button", class: "close" }, "Close");
    shut.addEventListener("click", close);
    for (const { help, element } of this.entries) {
      let family = this.families.get(help.family);
      if (family === undefined) {
        family = make("section", { "aria-label": help.family }, make("h3", {}, help.family));
        this.families.set(help.family, family);
      }
      family.append(element);
    }
    this.search.addEventListener("input", () => this.filter());
    const view = make(
      "div",
      { class: "function-list" },
      make(
        "div",
        { class: "panel-head" },
        make("h2", { id: "functions-title" }, "Functions"),
        shut,
      ),
      make("label", { for: "function-search" }, "Search by name or by what you want to know"),
      this.search,
      this.count,
      ...this.families.values(),
    );
    this.filter();
    return view;
  }

  private filter(): void {
    // What every word finds; a word that finds nothing, such as "the", is passed over.
    const words = this.search.value.split(/\s+/).filter(Boolean);
    const found = words.map((word) => this.find(word)).filter(({ length }) => length > 0);
    const [first = [], ...others] = words.length === 0 ? [this.find("")] : found;
    const wanted = new Set(first.filter((help) => others.every((some) => some.includes(help))));
    let shown = 0;
    for (const { element, help } of this.entries) {
      const isWanted = wanted.has(help);
      element.hidden = !isWanted;
      if (isWanted) shown += 1;
    }
    for (const family of this.families.values())
      family.hidden = [...family.querySelectorAll("details.function")].every(
        (entry) => (entry as HTMLElement).hidden,
      );
    this.count.textContent = screenSaid(`${shown} of ${this.entries.length} functions`);
  }

  private entry(help: FunctionHelp): HTMLElement {
    const { namespace } = this.reference;
    const written = toScreen(help.example, namespace);
    const facts: [string, string][] = [
      ["Gives", help.returns],
      ["Method", help.remarks],
      ["Source", help.source],
      ["Errors", help.errors],
    ];
    return make(
      "details",
      { class: "function", id: `function-${help.id}` },
      make(
        "summary",
        {},
        make("code", {}, help.name),
        make("span", { class: "short" }, help.short),
      ),
      make(
        "p",
        { class: "signature" },
        make("code", {}, `=${namespace}.${help.name}(${signature(help)})`),
      ),
      make("dl", { class: "arguments" }, ...help.arguments.flatMap(argument)),
      make("p", {}, "For instance ", make("code", {}, written)),
      make(
        "dl",
        { class: "facts" },
        ...facts
          .filter(([, text]) => text !== "")
          .flatMap(([term, text]) => [make("dt", {}, term), make("dd", {}, text)]),
      ),
      ...help.cautions
        .filter((subject): subject is CautionSubject => subject in cautions)
        .map(cautionText),
    );
  }
}

function signature(help: FunctionHelp): string {
  return help.arguments.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ");
}

function argument({ name, help, optional, choices }: ArgumentHelp): HTMLElement[] {
  const entries = choices?.map(({ value }) => `"${value}"`).join(", ");
  const list =
    entries === undefined || choices === undefined || choices.length > 8
      ? ""
      : ` Choices: ${entries}.`;
  return [
    make(
      "dt",
      {},
      make("code", {}, name),
      ...(optional ? [make("span", { class: "optional" }, " optional")] : []),
    ),
    make("dd", {}, help + list),
  ];
}
