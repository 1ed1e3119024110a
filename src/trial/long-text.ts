import { make } from "../screen/dom";

/** A field for a sentence or more: as high as its text. Enter ends it, as in a cell. */
export function longText(
  attributes: Readonly<Record<string, string | undefined>>,
): HTMLTextAreaElement {
  const field = make("textarea", { ...attributes, rows: 1, autocomplete: "off", class: "words" });
  field.addEventListener("input", () => grow(field));
  field.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || event.shiftKey || event.isComposing) return;
    event.preventDefault();
    field.dispatchEvent(new Event("change"));
  });
  // Its width is known once it is in sight, and changes with the window.
  new ResizeObserver(() => grow(field)).observe(field);
  return field;
}

export function grow(field: HTMLInputElement | HTMLTextAreaElement): void {
  if (!(field instanceof HTMLTextAreaElement) || field.clientWidth === 0) return;
  const border = field.offsetHeight - field.clientHeight;
  field.style.height = "auto";
  field.style.height = `${field.scrollHeight + border}px`;
}
