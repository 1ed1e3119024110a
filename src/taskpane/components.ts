import "@fluentui/web-components/button/define.js";
import "@fluentui/web-components/tablist/define.js";
import "@fluentui/web-components/tab/define.js";
import "@fluentui/web-components/message-bar/define.js";
import { setTheme } from "@fluentui/web-components";
import { type BrandVariants, createDarkTheme, createLightTheme } from "@fluentui/tokens";
import { polyfillBodyAndObserve } from "@microsoft/focusgroup-polyfill/shadowless";
import { mossSteps } from "../palette";
import { freshId, make } from "../screen/dom";

type Child = Node | string;

/** The field's own color in place of the library's: its steps are 10, 20 … 160. */
const moss = Object.fromEntries(
  mossSteps.map((step, i) => [10 * (i + 1), step]),
) as unknown as BrandVariants;
const light = createLightTheme(moss);
const dark = createDarkTheme(moss);

/** Colors follow the host's, or the system's outside a host. Forced colors are the browser's own work. */
export function applyTheme(isDark: boolean): void {
  setTheme(isDark ? dark : light);
  document.documentElement.dataset.theme = isDark ? "dark" : "light";
}

/** The component library leaves a tab list's arrow keys to the browser; older ones need them added. */
export function supportArrowKeys(): void {
  polyfillBodyAndObserve();
}

/** An element of the component library. */
export function component(
  tag: string,
  attributes: Readonly<Record<string, string | boolean | undefined>> = {},
  ...children: readonly Child[]
): HTMLElement {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === true) made.setAttribute(name, "");
    else if (typeof value === "string") made.setAttribute(name, value);
  }
  made.append(...children);
  return made;
}

export function button(
  text: string,
  press: () => void,
  appearance: "primary" | "outline" | "subtle" = "outline",
  attributes: Readonly<Record<string, string>> = {},
): HTMLElement {
  // The component states its role where only assistive tools look; the attribute serves the rest.
  const made = component("fluent-button", { role: "button", appearance, ...attributes }, text);
  made.addEventListener("click", press);
  return made;
}

export type Intent = "info" | "success" | "warning" | "error";

/** A message that a screen reader reads out, with what can be done about it. */
export function message(
  intent: Intent,
  text: string,
  ...actions: readonly HTMLElement[]
): HTMLElement {
  const body = make("div", { class: "message-text" }, text);
  const bar = component("fluent-message-bar", { intent, layout: "multiline" }, body);
  if (actions.length > 0) bar.append(make("div", { class: "message-actions" }, ...actions));
  return bar;
}

/** A labelled text field. Native: every host's accessibility tools know it. */
export function textField(
  label: string,
  value: string,
  options: { readonly changed: (value: string) => void; readonly placeholder?: string },
): HTMLElement {
  const id = freshId("field");
  const input = make("input", {
    id,
    type: "text",
    value,
    placeholder: options.placeholder,
    spellcheck: "false",
    autocomplete: "off",
  });
  input.addEventListener("input", () => options.changed(input.value));
  return labelled(label, id, input);
}

export interface Option {
  readonly value: string;
  readonly text: string;
}

export function selectField(
  label: string,
  options: readonly Option[],
  chosen: string,
  changed: (value: string) => void,
): HTMLElement {
  const id = freshId("field");
  const select = make("select", { id });
  for (const { value, text } of options) {
    select.append(make("option", { value, selected: value === chosen }, text));
  }
  select.addEventListener("change", () => changed(select.value));
  return labelled(label, id, select);
}

function labelled(label: string, id: string, control: HTMLElement): HTMLElement {
  return make(
    "div",
    { class: "field" },
    make("label", { class: "field-label", for: id }, label),
    control,
  );
}
