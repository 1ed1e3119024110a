import "@fluentui/web-components/button/define.js";
import "@fluentui/web-components/tablist/define.js";
import "@fluentui/web-components/tab/define.js";
import "@fluentui/web-components/message-bar/define.js";
import { setTheme } from "@fluentui/web-components";
import { webDarkTheme, webLightTheme } from "@fluentui/tokens";
import { make } from "../trial/dom";

type Child = Node | string;

/** Colours follow the host's, or the system's outside a host. Forced colours are the browser's own work. */
export function applyTheme(dark: boolean): void {
  setTheme(dark ? webDarkTheme : webLightTheme);
  document.documentElement.dataset.theme = dark ? "dark" : "light";
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
  const made = component("fluent-button", { appearance, ...attributes }, text);
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
  options: {
    readonly hint?: string;
    readonly changed: (value: string) => void;
    readonly placeholder?: string;
  },
): HTMLElement {
  const input = make("input", {
    type: "text",
    value,
    placeholder: options.placeholder,
    spellcheck: "false",
    autocomplete: "off",
  });
  input.addEventListener("input", () => options.changed(input.value));
  return make(
    "label",
    { class: "field" },
    make("span", { class: "field-label" }, label),
    ...(options.hint === undefined ? [] : [make("span", { class: "field-hint" }, options.hint)]),
    input,
  );
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
  hint?: string,
): HTMLElement {
  const select = make("select");
  for (const { value, text } of options) {
    select.append(make("option", { value, selected: value === chosen }, text));
  }
  select.addEventListener("change", () => changed(select.value));
  return make(
    "label",
    { class: "field" },
    make("span", { class: "field-label" }, label),
    ...(hint === undefined ? [] : [make("span", { class: "field-hint" }, hint)]),
    select,
  );
}
