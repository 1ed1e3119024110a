import { freshId, make } from "../../screen/dom";
import { writtenNumber } from "../../screen/number-format";
import { screenSaid } from "../../words/spoken";
import { readTyped } from "../typed";

export interface FieldWords {
  readonly label: string;
  readonly hint?: string;
}

/** A field of a form: its label, its control with the unit, its hint, and what is wrong with it. */
export class FormField {
  readonly element: HTMLElement;
  readonly control: HTMLInputElement | HTMLSelectElement;
  private readonly hint: HTMLElement;
  private readonly unit = make("span", { class: "unit" });

  constructor(
    private readonly words: FieldWords,
    kind: { readonly list: readonly string[] } | { readonly signed: boolean } | "words",
    changed: () => void,
  ) {
    const id = freshId("field");
    const about = freshId("about");
    this.hint = make("span", { id: about, class: "hint" }, words.hint ?? "");
    const attributes = { id, "aria-describedby": about };
    const signed = typeof kind === "object" && "signed" in kind && kind.signed;
    this.control =
      typeof kind === "object" && "list" in kind
        ? make(
            "select",
            attributes,
            make("option", { value: "" }, "Choose…"),
            ...kind.list.map((one) => make("option", { value: one }, one)),
          )
        : make("input", {
            ...attributes,
            type: "text",
            inputmode: kind === "words" ? undefined : "decimal",
            autocomplete: "off",
            spellcheck: "false",
            class: kind === "words" ? "words" : "number",
          });
    this.control.addEventListener("input", changed);
    const isWide = kind === "words" || this.control instanceof HTMLSelectElement;
    this.element = make(
      "div",
      { class: isWide ? "field wide" : "field" },
      make("label", { for: id }, words.label),
      make(
        "span",
        { class: signed ? "control signed" : "control" },
        ...(signed ? [this.signButton(changed)] : []),
        this.control,
        ...(isWide ? [] : [this.unit]),
      ),
      this.hint,
    );
  }

  get text(): string {
    return this.control.value;
  }

  set text(text: string) {
    this.control.value = text;
  }

  in(unit: string): void {
    this.unit.textContent = screenSaid(unit);
  }

  /** Says what is wrong, in the hint's place; undefined for nothing. */
  judge(fault: string | undefined): void {
    this.control.setAttribute("aria-invalid", String(fault !== undefined));
    this.hint.classList.toggle("fault", fault !== undefined);
    this.hint.textContent = fault ?? screenSaid(this.words.hint ?? "");
  }

  /** A phone's keypad of digits has no minus. */
  private signButton(changed: () => void): HTMLElement {
    const button = make("button", { type: "button", class: "sign" }, "±");
    button.setAttribute(
      "aria-label",
      screenSaid("Change the sign: {label}").replace("{label}", screenSaid(this.words.label)),
    );
    button.addEventListener("click", () => {
      const value = readTyped(this.text);
      if (typeof value === "number") this.text = writtenNumber(0 - value);
      else this.text = this.text.startsWith("-") ? this.text.slice(1) : `-${this.text}`;
      changed();
      this.control.focus();
    });
    return button;
  }
}
