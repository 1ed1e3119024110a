import { freshId, make } from "../../screen/dom";
import type { CellValue } from "../../screen/host";
import { writtenNumber } from "../../screen/number-format";
import { readTyped } from "../typed";

/** A number of the drawing that can be typed. */
export interface PanelNumber {
  readonly label: string;
  readonly value: CellValue;
  /** Whether it was taken; a number that was not is marked. */
  readonly typed: (value: number) => boolean;
}

export interface PanelButton {
  readonly label: string;
  readonly press: () => void;
}

/** A row of the drawing's controls: what it is about, its numbers, what can be done with it. */
export class PanelRow {
  readonly element = make("div", { class: "drawing-row", role: "group" });
  private made = "";
  private inputs: { readonly input: HTMLInputElement; number: PanelNumber }[] = [];
  private buttons: PanelButton[] = [];

  /** The controls stay where they are, and the hand on them, while they say the same. */
  show(title: string, numbers: readonly PanelNumber[], buttons: readonly PanelButton[]): void {
    const made = JSON.stringify([title, ...[...numbers, ...buttons].map(({ label }) => label)]);
    this.buttons = [...buttons];
    if (made !== this.made) this.make(title, numbers);
    this.made = made;
    numbers.forEach((number, i) => {
      this.inputs[i].number = number;
      const { input } = this.inputs[i];
      const text = typeof number.value === "number" ? writtenNumber(number.value) : "";
      if (document.activeElement === input && input.dataset.shown === text) return;
      input.value = text;
      input.dataset.shown = text;
      input.removeAttribute("aria-invalid");
    });
  }

  focus(): void {
    this.inputs[0]?.input.select();
    this.inputs[0]?.input.focus();
  }

  private make(title: string, numbers: readonly PanelNumber[]): void {
    const name = make("strong", { id: freshId("drawing") }, title);
    this.element.setAttribute("aria-labelledby", name.id);
    this.inputs = numbers.map((number) => ({ input: this.input(), number }));
    this.element.replaceChildren(
      name,
      ...this.inputs.map(({ input, number }) => make("label", {}, number.label, " ", input)),
      ...this.buttons.map(({ label }, i) => {
        const button = make("button", { type: "button" }, label);
        button.addEventListener("click", () => this.buttons[i].press());
        return button;
      }),
    );
  }

  private input(): HTMLInputElement {
    const input = make("input", { type: "text", autocomplete: "off", class: "number" });
    input.addEventListener("change", () => {
      const number = this.inputs.find((one) => one.input === input)?.number;
      const value = readTyped(input.value);
      const isTaken = typeof value === "number" && number?.typed(value) === true;
      if (isTaken) input.removeAttribute("aria-invalid");
      else input.setAttribute("aria-invalid", "true");
    });
    return input;
  }
}
