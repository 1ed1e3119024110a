import { make } from "../screen/dom";

/**
 * A field shows as much text as it is wide, and paper cannot be scrolled: while the page is printed,
 * the words stand in the fields' place.
 */
export function printInputsAsWords(): void {
  let printed: HTMLElement[] = [];
  const begin = () => {
    end();
    for (const field of document.querySelectorAll<
      HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement
    >("#sheet .reading :is(input, textarea, select), #cans :is(input, select)")) {
      if (field instanceof HTMLInputElement && ["radio", "checkbox"].includes(field.type)) continue;
      const words =
        field instanceof HTMLSelectElement
          ? (field.selectedOptions[0]?.textContent ?? "")
          : field.value;
      const standIn = make("span", { class: "printed", "aria-hidden": "true" }, words || "–");
      field.after(standIn);
      printed.push(standIn);
    }
  };
  const end = () => {
    for (const element of printed) element.remove();
    printed = [];
  };
  window.addEventListener("beforeprint", begin);
  window.addEventListener("afterprint", end);
}
