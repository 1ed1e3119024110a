import "@fluentui/web-components/button/define.js";
import "@fluentui/web-components/tablist/define.js";
import "@fluentui/web-components/tab/define.js";
import "@fluentui/web-components/message-bar/define.js";
import { setTheme } from "@fluentui/web-components";
import { type BrandVariants, createDarkTheme, createLightTheme } from "@fluentui/tokens";
import { polyfillBodyAndObserve } from "@microsoft/focusgroup-polyfill/shadowless";
import { freshId, make } from "../screen/dom";

type Child = Node | string;

/** Moss, from dark to light: the field's own colour in place of the library's. */
const moss: BrandVariants = {
  10: "#060803",
  20: "#131a0c",
  30: "#1d2913",
  40: "#263518",
  50: "#2f421e",
  60: "#384e24",
  70: "#425b2b",
  80: "#4c6833",
  90: "#5a763f",
  100: "#69844d",
  110: "#79935c",
  120: "#8aa26d",
  130: "#9cb180",
  140: "#afc195",
  150: "#c3d1ac",
  160: "#d8e2c7",
};
const light = createLightTheme(moss);
const dark = createDarkTheme(moss);

/** Colours follow the host's, or the system's outside a host. Forced colours are the browser's own work. */
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
