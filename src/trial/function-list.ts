import { cautions, type CautionSubject } from "../cautions";
import type { ArgumentHelp, FunctionHelp, Reference } from "../reference";
import { toScreen } from "../formula-text/dialect";
import { make } from "../screen/dom";
import { screenSaid } from "../words/spoken";
import { cautionText } from "../screen/cautions-text";
import { functionSearch, type FunctionSearch } from "../screen/search";

/** The whole list of functions with their arguments, to search and read while the sheet is open. */
export class FunctionList {
  private readonly entries: {
    readonly help: FunctionHelp;
    readonly element: HTMLElement;
  }[];
  private readonly families = new Map<string, HTMLElement>();
  /** What a search found, the best match first. */
  private readonly found = make("section", { "aria-label": "Found", hidden: true });
  private readonly find: FunctionSearch;
  private readonly count = make("p", { class: "count", role: "status" });
  readonly search = make("input", { type: "search", id: "function-search", autocomplete: "off" });

  constructor(
    private readonly reference: Reference,
    /** Puts a formula into the spreadsheet; says what came of it. */
    private readonly insert: (formula: string) => Promise<string>,
  ) {
    this.entries = reference.functions.map((help) => ({
      help,
      element: this.entry(help),
    }));
    this.find = functionSearch(reference.functions);
  }

  build(close: () => void): HTMLElement {
    const shut = make("button", { type: "button", class: "close" }, "Close");
    shut.addEventListener("click", close);
    for (const { help } of this.entries)
      if (!this.families.has(help.family))
        this.families.set(
          help.family,
          make("section", { "aria-label": help.family }, make("h3", {}, help.family)),
        );
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
      this.found,
      ...this.families.values(),
      make(
        "p",
        { class: "list-links" },
        make("a", { href: "functions.html" }, "Reference"),
        make("a", { href: "sources.html" }, "Sources"),
        make("a", { href: "support.html" }, "Support"),
      ),
    );
    this.filter();
    return view;
  }

  /** Without words all of them by family; with words what is found, the best match first. */
  private filter(): void {
    const isSearching = this.search.value.trim() !== "";
    const wanted = this.find(this.search.value);
    const byId = new Map(this.entries.map(({ help, element }) => [help.id, element]));
    this.found.hidden = !isSearching;
    for (const family of this.families.values()) family.hidden = isSearching;
    if (isSearching) this.found.replaceChildren(...wanted.flatMap(({ id }) => byId.get(id) ?? []));
    else
      for (const { help, element } of this.entries) this.families.get(help.family)?.append(element);
    this.count.textContent = screenSaid(
      !isSearching
        ? `${this.entries.length} functions`
        : wanted.length === 0
          ? "No function is found by these words. Try a unit, or what you want to know."
          : `${wanted.length} of ${this.entries.length} functions, the best match first`,
    );
  }

  /** The example as a start, by hand or in the chosen cell. */
  private uses(formula: string): HTMLElement {
    const said = make("span", { role: "status" });
    const button = (label: string, act: () => Promise<string>) => {
      const element = make("button", { type: "button" }, label);
      element.addEventListener(
        "click",
        () => void act().then((text) => (said.textContent = screenSaid(text))),
      );
      return element;
    };
    return make(
      "p",
      { class: "uses" },
      button("Copy", async () => {
        try {
          await navigator.clipboard.writeText(formula);
          return "Copied.";
        } catch {
          return "The browser does not let the page copy; mark the formula and copy it.";
        }
      }),
      button("Insert", () => this.insert(formula)),
      said,
    );
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
      this.uses(written),
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
      make(
        "p",
        { class: "list-links" },
        make("a", { href: help.page }, "Its page, with a live example"),
        make("a", { href: "sources.html" }, "What it is held against"),
      ),
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
