import { errorSaid, screenSaid, textSaid } from "../words/spoken";
import { readAddress, writeAddress } from "../sheets/kit/address";
import type { Page } from "../sheets/kit/definition";
import { make } from "../screen/dom";
import type { Grid, SelectedCell } from "./grid";
import { formatValue } from "../screen/number-format";
import { InputFaults } from "./input-faults";
import { commaFault } from "./typed";
import { WrongView } from "./wrong-view";

/**
 * What the grid's canvas cannot say: the sentence behind an error, the list of the cells in error,
 * and all cells of the page as a table that a screen reader can walk through.
 */
export class UnderGrid {
  private readonly keys = make(
    "p",
    { class: "keys" },
    "In the spreadsheet, Tab goes to the next cell. Esc and then Tab leaves it.",
  );
  private readonly chosen = make("p", { class: "chosen", "aria-live": "polite" });
  private readonly wrong = make("div", { class: "wrong" });
  private readonly table = make("div", {
    class: "scrolled",
    tabindex: 0,
    role: "group",
    "aria-label": "Cells of the page",
  });
  private readonly details: HTMLDetailsElement;
  private readonly go: HTMLFormElement;
  private selected: SelectedCell | undefined;
  private page = "";
  private wrongSaid = "";

  private readonly causes: WrongView;

  constructor(
    private readonly grid: Grid,
    pages: readonly Page[],
  ) {
    this.causes = new WrongView(pages, grid, new InputFaults(pages, grid), () => undefined);
    this.details = make(
      "details",
      { class: "cell-table" },
      make("summary", {}, "All cells of this page as a table"),
      this.table,
    );
    this.details.addEventListener("toggle", () => this.fillTable());
    this.go = this.typeIntoCell();
    grid.onSelected((cell) => {
      this.selected = cell;
      this.page = cell.page;
      this.sayChosen();
    });
    grid.onSettled(() => this.refresh());
  }

  build(page: string): HTMLElement[] {
    this.page = page;
    this.refresh();
    return [this.keys, this.chosen, this.wrong, this.go, this.details];
  }

  show(page: string): void {
    this.page = page;
    // A jump to a cell may tell of the cell before it tells of its page.
    if (this.selected?.page !== page) this.selected = undefined;
    this.refresh();
  }

  private refresh(): void {
    this.sayChosen();
    this.listWrong();
    if (this.details.open) this.fillTable();
  }

  private sayChosen(): void {
    if (this.selected === undefined) {
      this.chosen.textContent = screenSaid("Choose a cell to read it here.");
      return;
    }
    const { formula } = this.selected;
    const { value, error } = this.grid.read(this.selected);
    this.chosen.replaceChildren(
      make("strong", {}, writeAddress(this.selected)),
      " ",
      ...(formula === "" ? [] : [make("code", {}, formula), " "]),
      error === undefined
        ? [formatValue(value), commaFault(value)].filter(Boolean).join(": ")
        : make(
            "span",
            { class: "error" },
            make("strong", {}, error.code),
            ` ${errorSaid(error.message)}`,
          ),
    );
  }

  private listWrong(): void {
    const wrong = this.causesFirst();
    // A list that says the same stays: a button replaced between press and release loses the click.
    const says = JSON.stringify(wrong);
    if (says === this.wrongSaid) return;
    this.wrongSaid = says;
    if (wrong.length === 0) {
      this.wrong.replaceChildren(
        make("p", { class: "none-wrong" }, "No cell of this page shows an error."),
      );
      return;
    }
    this.wrong.replaceChildren(
      make(
        "h3",
        {},
        wrong.length === 1 ? "One cell shows an error" : `${wrong.length} cells show an error`,
      ),
      make(
        "ul",
        {},
        ...wrong.map(({ place, error, follows }) => {
          const jump = make("button", { type: "button" }, `Go to ${writeAddress(place)}`);
          jump.addEventListener("click", () => this.grid.select(place));
          return make(
            "li",
            {},
            jump,
            make(
              "span",
              { class: "error" },
              make("strong", {}, error.code),
              ` ${errorSaid(error.message)}`,
              ...(follows === undefined
                ? []
                : [" (", make("span", {}, `follows from ${follows}`), ")"]),
            ),
          );
        }),
      ),
    );
  }

  /** What comes from another cell stands behind it, and says so. */
  private causesFirst() {
    const wrong = this.grid.wrong(this.page);
    if (wrong.length === 0) return [];
    const ranks = this.causes.rank(this.page);
    return wrong
      .map((one) => ({ ...one, ...(ranks.get(writeAddress(one.place)) ?? { rank: -1 }) }))
      .map((one) => ({ ...one, follows: "follows" in one ? one.follows : undefined }))
      .sort((one, other) => one.rank - other.rank);
  }

  /** A way to write into any cell without the canvas. */
  private typeIntoCell(): HTMLFormElement {
    const at = make("input", {
      id: "type-at",
      size: 6,
      autocomplete: "off",
      spellcheck: "false",
      placeholder: "B4",
    });
    const content = make("input", { id: "type-content", autocomplete: "off", spellcheck: "false" });
    const said = make("p", { class: "said", role: "status" });
    const form = make(
      "form",
      { class: "type-into", "aria-label": "Type into a cell" },
      make("label", { for: "type-at" }, "Cell"),
      at,
      make("label", { for: "type-content" }, "Value or formula"),
      content,
      make("button", { type: "submit" }, "Enter"),
      said,
    );
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      try {
        const place = { page: this.page, ...readAddress(at.value.trim()) };
        this.grid.enter(place, content.value);
        this.grid.select(place);
        said.textContent = "";
      } catch {
        said.textContent = screenSaid(
          `"${at.value}" is no cell: type a column letter and a row number, as in B4`,
        );
      }
    });
    return form;
  }

  private fillTable(): void {
    if (!this.details.open) return;
    const { rows, columns } = this.grid.extent(this.page);
    const across = Array.from({ length: columns }, (_, column) => column);
    const body = [];
    for (let row = 0; row < rows; row++) {
      const shown = across.map((column) => this.grid.text({ page: this.page, row, column }));
      if (shown.every((text) => text === "")) continue;
      body.push(
        make(
          "tr",
          {},
          make("th", { scope: "row" }, String(row + 1)),
          ...shown.map((text) => make("td", {}, textSaid(text))),
        ),
      );
    }
    const letters = across.map((column) => writeAddress({ row: 0, column }).slice(0, -1));
    this.table.replaceChildren(
      make(
        "table",
        {},
        make(
          "thead",
          {},
          make(
            "tr",
            {},
            make("td"),
            ...letters.map((letter) => make("th", { scope: "col" }, letter)),
          ),
        ),
        make("tbody", {}, ...body),
      ),
    );
  }
}
