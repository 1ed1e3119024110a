import { freshId, make } from "../screen/dom";
import { causesFirst } from "../sheets/kit/causes";
import type { Page, Role } from "../sheets/kit/definition";
import { type LinkedCell, linkedCells } from "../sheets/kit/precedents";
import { errorSaid, workbookSaid } from "../words/spoken";
import type { InputFaults } from "./input-faults";
import type { SheetValues, ShownCell } from "./sheet-values";

export interface Place {
  readonly page: string;
  readonly at: string;
}

/** Beyond so many, a list is counted and no longer read. */
const MOST_CAUSES = 8;
const MOST_NAMED = 12;

/** What a reader looks for; a header may be worked out too. */
const RESULTS: ReadonlySet<Role> = new Set(["result", "sentence", "answer", "check", "mark"]);

interface Cause {
  readonly place: Place;
  /** What they are called on the screen. */
  readonly page: string;
  readonly name: string;
  readonly code?: string;
  readonly message: string;
  readonly follow: readonly string[];
}

/** What is wrong in a workbook: the causes, and under each what follows from it. */
export class WrongView {
  private readonly cells: readonly LinkedCell[];
  private said = "";
  private built: HTMLElement[] = [];

  constructor(
    private readonly pages: readonly Page[],
    private readonly values: SheetValues,
    private readonly faults: InputFaults,
    private readonly lead: (place: Place) => void,
  ) {
    this.cells = linkedCells(pages);
  }

  /** What follows is named from the page in front on. */
  build(front: string): HTMLElement[] {
    const causes = this.causes(front);
    // A list that says the same stays: a button replaced between press and release loses the click.
    const says = JSON.stringify(causes);
    if (says !== this.said) {
      this.said = says;
      this.built = causes.length === 0 ? [] : [this.section(causes)];
    }
    return this.built;
  }

  /** Of the cells of one page that are in error, the causes before what follows from them. */
  rank(page: string): ReadonlyMap<string, { readonly rank: number; readonly follows?: string }> {
    const found = causesFirst([...this.wrong().keys()]);
    return new Map(
      found.flatMap(({ linked, follows }, rank) =>
        this.pages[linked.page].name === page
          ? [[linked.cell.at, { rank, ...(follows && { follows: this.where(follows) }) }]]
          : [],
      ),
    );
  }

  private causes(front: string): Cause[] {
    const isInFront = ({ page }: LinkedCell) => Number(this.pages[page].name === front);
    const wrong = this.wrong();
    const found = causesFirst([...wrong.keys()]);
    return found
      .filter(({ follows }) => follows === undefined)
      .map(({ linked }) => {
        const error = wrong.get(linked);
        return {
          place: { page: this.pages[linked.page].name, at: linked.cell.at },
          page: workbookSaid(this.pages[linked.page].name),
          name: this.nameOf(linked),
          ...(error !== undefined && { code: error.code }),
          message:
            error === undefined
              ? (this.faults.of(this.pages[linked.page].name, linked.cell) ?? "")
              : errorSaid(error.message),
          follow: found
            .filter((one) => one.follows === linked && RESULTS.has(one.linked.cell.role))
            .map((one) => one.linked)
            .sort((one, other) => isInFront(other) - isInFront(one))
            .map((one) => (isInFront(one) === 1 ? this.nameOf(one) : this.where(one))),
        };
      });
  }

  /** Inputs outside what they allow, and the formulas in error with their errors. */
  private wrong(): Map<LinkedCell, ShownCell["error"]> {
    const found = new Map<LinkedCell, ShownCell["error"]>();
    for (const linked of this.cells) {
      const { cell, page } = linked;
      if (cell.role === "input" && this.faults.of(this.pages[page].name, cell) !== undefined)
        found.set(linked, undefined);
    }
    for (const linked of this.cells) {
      const error = linked.cell.formula === undefined ? undefined : this.firstError(linked);
      if (error !== undefined && !found.has(linked)) found.set(linked, error);
    }
    return found;
  }

  /** In the cell or in what its formula fills. */
  private firstError({ page, row, column, cell }: LinkedCell): ShownCell["error"] {
    const { reserved = 1, columns = 1 } = cell.spill ?? {};
    for (let down = 0; down < reserved; down++)
      for (let across = 0; across < columns; across++) {
        const place = { page: this.pages[page].name, row: row + down, column: column + across };
        const { error } = this.values.read(place);
        if (error !== undefined) return error;
      }
    return undefined;
  }

  private section(causes: readonly Cause[]): HTMLElement {
    const more = causes.length - MOST_CAUSES;
    return make(
      "section",
      { class: "causes", "aria-labelledby": "wrong-title" },
      make("h2", { id: "wrong-title" }, "What is wrong, the cause first"),
      make("ul", {}, ...causes.slice(0, MOST_CAUSES).map((cause) => this.entry(cause))),
      ...(more > 0
        ? [make("p", { class: "note" }, more === 1 ? "And one more." : `And ${more} more.`)]
        : []),
    );
  }

  private entry({ place, page, name, code, message, follow }: Cause): HTMLElement {
    const id = freshId("cause");
    const jump = make("button", { type: "button", "aria-describedby": id }, "Go there");
    jump.addEventListener("click", () => this.lead(place));
    const named = follow.slice(0, MOST_NAMED).join("; ");
    return make(
      "li",
      {},
      make(
        "p",
        { id },
        // A sentence that begins with what the input is called need not be told it twice.
        make("strong", {}, message.startsWith(name) ? `${page}:` : `${page}: ${name}`),
        " ",
        make(
          "span",
          { class: "error" },
          ...(code === undefined ? [] : [make("strong", {}, code), " "]),
          message,
        ),
      ),
      jump,
      ...(follow.length === 0
        ? []
        : [
            make(
              "details",
              {},
              make(
                "summary",
                {},
                follow.length === 1
                  ? "One result follows from it"
                  : `${follow.length} results follow from it`,
              ),
              make("p", { class: "note" }, follow.length > MOST_NAMED ? `${named}; …` : named),
            ),
          ]),
    );
  }

  /** "Layout: Sprinkler spacing": its page, and what it is called there. */
  private where(linked: LinkedCell): string {
    return `${workbookSaid(this.pages[linked.page].name)}: ${this.nameOf(linked)}`;
  }

  private nameOf({ cell, page, row, column }: LinkedCell): string {
    if (cell.label !== undefined) return workbookSaid(cell.label);
    const words = (other: LinkedCell) => {
      if (other.page !== page) return undefined;
      const place = { page: this.pages[page].name, row: other.row, column: other.column };
      const { value } = this.values.read(place);
      return typeof value === "string" ? value : undefined;
    };
    const beside = this.cells.filter(
      (other) =>
        other.row === row &&
        other.column < column &&
        ["label", "question"].includes(other.cell.role),
    );
    const above = this.cells.filter(
      (other) =>
        other.row < row &&
        other.column <= column &&
        ["heading", "header", "question"].includes(other.cell.role),
    );
    const found = [beside, above].map((all) => all.map(words).filter(Boolean).at(-1));
    return found[0] ?? found[1] ?? cell.at;
  }
}
