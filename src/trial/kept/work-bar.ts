import { screenSaid } from "../../words/spoken";
import { make } from "../../screen/dom";
import { ask } from "./ask";
import type { Desk } from "./desk";
import { blankContents } from "./inputs";
import { noChanges } from "./changes";
import { usualName } from "./desk";

export interface Undoing {
  undo(): void;
  redo(): void;
}

export interface Entry {
  readonly label: string;
  readonly act: () => void | Promise<void>;
  /** Whether it makes sense for what lies open. */
  readonly suits?: () => boolean;
}

/** Which piece of work lies open, whether it is kept, what can be taken back, and what to do with it. */
export class WorkBar {
  private readonly choice = make("select", { id: "work-choice" });
  private readonly undoButton = make("button", { type: "button", disabled: true }, "Undo");
  private readonly redoButton = make("button", { type: "button", disabled: true }, "Redo");
  private readonly said = make("p", { class: "work-said", role: "status" });
  private readonly menu = make("div", { class: "menu-entries" });
  private readonly opener = make("details", { class: "menu" }, make("summary", {}, "Work"));

  constructor(
    private readonly desk: Desk,
    undoing: Undoing,
    private readonly more: readonly Entry[] = [],
  ) {
    this.undoButton.addEventListener("click", () => undoing.undo());
    this.redoButton.addEventListener("click", () => undoing.redo());
    this.opener.append(this.menu);
    this.opener.addEventListener("toggle", () => {
      if (this.opener.open) this.fillMenu();
    });
    document.addEventListener("click", ({ target }) => {
      if (!(target instanceof Node) || !this.opener.contains(target)) this.opener.open = false;
    });
    this.opener.addEventListener("keydown", (event) => {
      if (event.key !== "Escape" || !this.opener.open) return;
      this.opener.open = false;
      this.opener.querySelector("summary")?.focus();
    });
    this.choice.addEventListener("change", () => this.choose());
    desk.onOpened(() => this.refresh());
    desk.onKept(() => this.refresh());
    // Another window's work is on the list too.
    window.addEventListener("storage", () => this.refresh());
  }

  build(): HTMLElement {
    this.refresh();
    return make(
      "div",
      { class: "work-bar" },
      make(
        "div",
        { class: "choice" },
        make("label", { for: "work-choice" }, "Piece of work"),
        this.choice,
      ),
      make("div", { class: "work-buttons" }, this.undoButton, this.redoButton, this.opener),
      this.said,
    );
  }

  canUndo(undos: number, redos: number): void {
    this.undoButton.disabled = undos === 0;
    this.redoButton.disabled = redos === 0;
  }

  /** Says something that has been done. */
  tell(text: string): void {
    this.said.textContent = screenSaid(text);
  }

  refresh(): void {
    const { piece, sheet, system, lost, given } = this.desk.open;
    const { pieces, unreadable } = this.desk.store.list();
    const known = piece === undefined || pieces.some(({ id }) => id === piece.id);
    const all = known || piece === undefined ? pieces : [piece, ...pieces];
    const option = (one: (typeof all)[number]) =>
      make("option", { value: one.id }, `${one.name} (${one.system})`);
    const here = all.filter((one) => one.sheet === sheet.id);
    const elsewhere = all.filter((one) => one.sheet !== sheet.id);
    this.choice.replaceChildren(
      ...(given === undefined
        ? []
        : [make("option", { value: "given" }, `From a link (${system})`)]),
      make("option", { value: "" }, `Sample: Bluestem Flat (${system})`),
      ...here.map(option),
      ...(elsewhere.length === 0
        ? []
        : [make("optgroup", { label: "Other workbooks" }, ...elsewhere.map(option))]),
    );
    this.choice.value = piece?.id ?? (given === undefined ? "" : "given");
    const { notKept } = this.desk;
    const state =
      notKept !== ""
        ? `Not kept: ${notKept} Save it as a file.`
        : given !== undefined
          ? "From a link, and not kept yet: what you change, or copy, becomes a piece of work of your own."
          : piece === undefined
            ? "The sample. What you change becomes a piece of work of your own, kept in this browser."
            : `Kept in this browser as "${piece.name}".`;
    const gone =
      lost.length === 0
        ? ""
        : ` It was made with an earlier edition of the workbook; these had no place in this one: ${lost.join(", ")}.`;
    const others =
      unreadable === 0
        ? ""
        : ` ${unreadable === 1 ? "One piece of work here" : `${unreadable} pieces of work here`} cannot be read by this edition of the page; nothing of it was removed.`;
    this.said.textContent = [state, gone, others].map(screenSaid).join("");
    this.said.classList.toggle("trouble", notKept !== "" || lost.length > 0);
    if (this.opener.open) this.fillMenu();
  }

  private choose(): void {
    const { sheet, system } = this.desk.open;
    const id = this.choice.value;
    if (id === "") this.desk.openSample(sheet, system);
    else if (!this.desk.openPiece(id)) this.refresh();
  }

  private fillMenu(): void {
    const isOwn = () => this.desk.open.piece !== undefined;
    const isOwnOrGiven = () => isOwn() || this.desk.open.given !== undefined;
    const own: Entry[] = [
      { label: "Rename…", act: () => this.rename(), suits: isOwn },
      { label: "Make a copy", act: () => this.copy(), suits: isOwnOrGiven },
      { label: "Start blank", act: () => this.startBlank() },
      { label: "Back to the sample", act: () => this.sample(), suits: isOwn },
      { label: "Delete…", act: () => this.remove(), suits: isOwn },
    ];
    this.menu.replaceChildren(
      ...[...own, ...this.more]
        .filter(({ suits }) => suits === undefined || suits())
        .map(({ label, act }) => {
          const button = make("button", { type: "button" }, label);
          button.addEventListener("click", () => {
            this.opener.open = false;
            // Where the keyboard comes back to from a question: the entry is out of sight then.
            this.opener.querySelector("summary")?.focus();
            void act();
          });
          return button;
        }),
    );
  }

  private async rename(): Promise<void> {
    const answer = await ask({
      title: "Name of this piece of work",
      text: [],
      line: { label: "Name", value: this.desk.open.piece?.name ?? "" },
      choices: [{ choice: "rename", label: "Rename" }],
      otherwise: "Leave it",
    });
    if (answer !== undefined) this.desk.rename(answer.line);
  }

  private copy(): void {
    this.desk.handOver();
    const { sheet, system, piece, changes } = this.desk.open;
    const name = piece === undefined ? usualName(sheet) : screenSaid(`${piece.name}, copy`);
    this.desk.begin(sheet, system, name, changes);
  }

  private startBlank(): void {
    const { sheet, system, pages } = this.desk.open;
    const contents = blankContents(pages);
    this.desk.begin(sheet, system, usualName(sheet), { ...noChanges, contents });
    this.tell(
      "A blank workbook of your own: figures and texts are empty; choices from lists, the friction coefficient, the efficiency and the limits of the design stand as in the sample.",
    );
  }

  private sample(): void {
    const { sheet, system, piece } = this.desk.open;
    this.desk.openSample(sheet, system);
    this.tell(`The sample. "${piece?.name ?? ""}" stays in this browser, in the list above.`);
  }

  private async remove(): Promise<void> {
    const { piece } = this.desk.open;
    if (piece === undefined) return;
    const answer = await ask({
      title: `Delete "${piece.name}"?`,
      text: ["It is removed from this browser for good. A file or a link that you saved stays."],
      choices: [{ choice: "delete", label: "Delete it" }],
      otherwise: "Keep it",
      isCareful: true,
    });
    if (answer !== undefined) this.desk.remove();
  }
}
