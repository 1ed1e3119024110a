import type { Reference } from "../reference";
import { make, part } from "../screen/dom";
import { FunctionHost } from "../screen/host";
import { languageChoice } from "../screen/language-choice";
import { applyTheme, component, message, supportArrowKeys } from "./components";
import { plainWords } from "./host-errors";
import type { Pane } from "./pane";
import { strings } from "./strings";
import { checkView } from "./views/check-view";
import { functionsView } from "./views/functions-view";
import { ownView } from "./views/own-view";
import { pictureView } from "./views/picture-view";
import { sheetsView } from "./views/sheets-view";
import { takeCautions } from "../words/caution-texts";
import { referenceAddress, speak } from "../words/spoken";
import { type HostState, hostState, type RequirementSet } from "./workbook";
import "../screen/palette.css";
import "../screen/chart.css";
import "../screen/result-table.css";
import "./taskpane.css";

const VIEWS = {
  functions: functionsView,
  sheets: sheetsView,
  own: ownView,
  check: checkView,
  picture: pictureView,
} as const;
type ViewName = keyof typeof VIEWS;

async function start(): Promise<void> {
  const language = await speak();
  const systemDark = matchMedia("(prefers-color-scheme: dark)");
  applyTheme(systemDark.matches);
  supportArrowKeys();
  document.title = strings.title;
  const main = part("main");
  document.querySelector("header.top")?.append(languageChoice(strings.language, language));
  main.append(make("p", {}, strings.loading));
  const base = new URL(".", document.baseURI);
  let pane: Pane;
  try {
    const [host, reference, functions] = await Promise.all([
      hostState(),
      fetch(new URL(referenceAddress(language), base)).then(
        (answer) => answer.json() as Promise<Reference>,
      ),
      FunctionHost.load(new URL("functions.js", base)),
    ]);
    takeCautions(reference);
    pane = makePane(host, reference, functions);
  } catch (error) {
    console.error(error);
    main.replaceChildren(message("error", strings.loadFailed));
    return;
  }
  if (pane.host.inExcel) applyTheme(pane.host.dark);
  else systemDark.addEventListener("change", () => applyTheme(systemDark.matches));
  main.replaceChildren(...notice(), ...lacks(pane.host), tabs(pane));
}

function makePane(host: HostState, reference: Reference, functions: FunctionHost): Pane {
  const messages = part("messages");
  const pane: Pane = {
    reference,
    functions,
    host,
    say: (bar) => {
      messages.replaceChildren(bar);
      // A question is answered by its buttons: the keyboard goes there.
      bar.querySelector<HTMLElement>("fluent-button")?.focus();
    },
    quiet: () => messages.replaceChildren(),
    attempt: async (step) => {
      try {
        await step();
      } catch (error) {
        pane.say(message("error", plainWords(error)));
      }
    },
  };
  return pane;
}

/** What a translation has to say of itself. */
function notice(): HTMLElement[] {
  return strings.notice === "" ? [] : [make("p", { class: "notice" }, strings.notice)];
}

/** What this host can't do, said once at the top. */
function lacks(host: HostState): HTMLElement[] {
  if (!host.inExcel) return [];
  const missing = (Object.keys(strings.lacking) as RequirementSet[])
    .filter((set) => !host.has(set))
    .map((set) => strings.lacking[set]);
  return missing.length === 0 ? [] : [message("warning", strings.lacks(missing))];
}

/** A view is made when its tab is first opened, and keeps its state after that. */
function tabs(pane: Pane): HTMLElement {
  const made = new Map<ViewName, HTMLElement>();
  const list = component("fluent-tablist", { "aria-label": strings.title, size: "small" });
  const panels = make("div", { class: "panels" });
  const open = (name: ViewName) => {
    pane.quiet();
    for (const panel of panels.children)
      (panel as HTMLElement).hidden = panel.id !== `panel-${name}`;
    const panel = panels.querySelector<HTMLElement>(`#panel-${name}`);
    if (panel === null || made.has(name)) return;
    const view = VIEWS[name](pane);
    made.set(name, view);
    panel.append(view);
  };
  for (const name of Object.keys(VIEWS) as ViewName[]) {
    list.append(
      component(
        "fluent-tab",
        { slot: "tab", id: `tab-${name}`, "aria-controls": `panel-${name}` },
        strings.tabs[name],
      ),
    );
    panels.append(
      make("div", {
        id: `panel-${name}`,
        role: "tabpanel",
        "aria-labelledby": `tab-${name}`,
        hidden: true,
      }),
    );
  }
  list.addEventListener("change", () => {
    // The property: its attribute follows a moment later.
    const active = (list as { activeid?: string }).activeid;
    open((active ?? "tab-functions").replace("tab-", "") as ViewName);
  });
  open("functions");
  return make("div", { class: "pane" }, list, panels);
}

void start();
