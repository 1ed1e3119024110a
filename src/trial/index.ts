import "../screen/chart.css";
import "./styles.css";
import type { Reference } from "../reference";
import type { Page, ReadyMadeSheet, UnitSystem } from "../sheets/kit/definition";
import { readyMadeSheets } from "../sheets";
import { CatchCans } from "./catch-cans";
import { make, part } from "../screen/dom";
import { FirstValues } from "./first-values";
import { FunctionList } from "./function-list";
import type { Grid } from "./grid";
import { FunctionHost, type CellValue } from "../screen/host";
import { saveFlags } from "./save-flags";
import { SheetView } from "./sheet-view";

/** The page as a whole: which sheet, in which units, which of its pages; the grid when it is there. */
class TrialPage {
  private sheet: ReadyMadeSheet = readyMadeSheets[0];
  private system: UnitSystem = "US";
  private pages: readonly Page[] = [];
  private page = "";
  /** What was typed before the grid came, for each sheet in each system. */
  private readonly typed = new Map<string, Map<string, CellValue>>();
  private values: FirstValues | Grid | undefined;
  private grid: Grid | undefined;
  private view: SheetView | undefined;
  /** Counts openings, so that a grid that comes late for a sheet no longer open is dropped. */
  private openings = 0;
  private readonly tabs = make("div", {
    class: "tabs",
    role: "group",
    "aria-label": "Pages of the sheet",
  });
  private gridWanted: () => void = () => undefined;
  /** As in the style sheet: wide enough for the document and the grid side by side. */
  private readonly wide = window.matchMedia("(min-width: 64rem)");
  private readonly dark = window.matchMedia("(prefers-color-scheme: dark)");

  constructor(
    private readonly reference: Reference,
    private readonly host: FunctionHost,
  ) {}

  start(): void {
    this.chooser();
    this.wide.addEventListener("change", () => this.wantGrid());
    this.dark.addEventListener("change", () => this.grid?.setDark(this.dark.matches));
    this.navigation();
    this.open();
  }

  private chooser(): void {
    const sheets = make(
      "select",
      { id: "sheet-choice" },
      ...readyMadeSheets.map(({ id, title }) => make("option", { value: id }, title)),
    );
    sheets.addEventListener("change", () => {
      this.sheet = readyMadeSheets.find(({ id }) => id === sheets.value) ?? this.sheet;
      this.open();
    });
    const systems = (["US", "SI"] as const).map((system) => {
      const radio = make("input", {
        type: "radio",
        name: "system",
        value: system,
        checked: system === this.system,
      });
      radio.addEventListener("change", () => {
        this.system = system;
        this.open();
      });
      const units = system === "US" ? ": ft, psi, gpm" : ": m, kPa, m³/h";
      return make(
        "label",
        {},
        radio,
        make("span", {}, system, make("span", { class: "roomy" }, units)),
      );
    });
    part("choose").replaceChildren(
      make("div", { class: "choice" }, make("label", { for: "sheet-choice" }, "Sheet"), sheets),
      make("fieldset", { class: "systems" }, make("legend", {}, "Units"), ...systems),
      this.tabs,
      this.sides(),
    );
  }

  /** On a narrow screen the document and the grid take turns. */
  private sides(): HTMLElement {
    const sides = ["Answers", "Spreadsheet"].map((text) => {
      const isGrid = text === "Spreadsheet";
      const button = make("button", { type: "button", "aria-pressed": String(!isGrid) }, text);
      button.addEventListener("click", () => {
        part("sheet").classList.toggle("shows-grid", isGrid);
        this.wantGrid();
        for (const other of sides) other.setAttribute("aria-pressed", String(other === button));
      });
      return button;
    });
    return make(
      "div",
      { class: "tabs sides", role: "group", "aria-label": "What to show" },
      ...sides,
    );
  }

  /** Opens the sheet in the system: what can be read at once, then the grid. */
  private open(): void {
    this.openings += 1;
    this.pages = this.sheet.pages(this.system);
    const key = `${this.sheet.id} ${this.system}`;
    const typed = this.typed.get(key) ?? new Map<string, CellValue>();
    this.typed.set(key, typed);
    this.grid?.dispose();
    this.grid = undefined;
    const values = new FirstValues(this.pages, typed, this.reference, this.host);
    values.onSettled(() => this.view?.refresh());
    this.values = values;
    this.showPage(this.pages[0].name);
    performance.mark("sheet-readable");
    part("under-grid").replaceChildren();
    this.gridWanted = () => void this.loadGrid(this.openings, typed);
    part("sheet").classList.remove("needs-grid");
    this.wantGrid();
    // After the first paint: on a narrow screen too, the grid fills in what the first view cannot.
    const opening = this.openings;
    setTimeout(() => {
      if (opening !== this.openings || !values.leavesBlanks()) return;
      part("sheet").classList.add("needs-grid");
      this.wantGrid();
    }, 50);
  }

  /**
   * Starts the grid where it would be seen, once for each sheet opened: it needs a place with a
   * size, and on a narrow screen nobody pays for it unasked.
   */
  private wantGrid(): void {
    const sheet = part("sheet");
    const isDue =
      this.wide.matches ||
      sheet.classList.contains("shows-grid") ||
      sheet.classList.contains("needs-grid");
    if (sheet.hidden || !isDue) return;
    this.gridWanted();
    this.gridWanted = () => undefined;
  }

  private showPage(name: string): void {
    this.page = name;
    const page = this.pages.find((other) => other.name === name) ?? this.pages[0];
    if (this.values === undefined) return;
    const { values } = this;
    this.view = new SheetView(page, values);
    this.view.title(part("sheet-title"));
    part("purpose").textContent = this.sheet.purpose;
    part("reading").replaceChildren(
      this.view.build(),
      ...saveFlags(page, () => this.values ?? values),
    );
    this.tabs.replaceChildren(
      ...this.pages.map((other) => {
        const tab = make(
          "button",
          { type: "button", "aria-pressed": String(other.name === name) },
          other.name,
        );
        tab.addEventListener("click", () => {
          this.showPage(other.name);
          this.grid?.show(other.name);
        });
        return tab;
      }),
    );
  }

  private async loadGrid(opening: number, typed: Map<string, CellValue>): Promise<void> {
    const holder = part("grid");
    const waiting = make(
      "p",
      { class: "grid-waiting", role: "status" },
      "The spreadsheet is loading. What stands beside it works already.",
    );
    holder.replaceChildren(waiting);
    try {
      // What the reader came for is painted first.
      await new Promise((resolve) => setTimeout(resolve, 50));
      const [{ Grid }, { UnderGrid }] = await Promise.all([
        import("./grid"),
        import("./under-grid"),
      ]);
      if (opening !== this.openings) return;
      const container = make("div", { class: "grid-canvas" });
      holder.append(container);
      const grid = new Grid({
        container,
        pages: this.pages,
        typed,
        reference: this.reference,
        host: this.host,
        dark: this.dark.matches,
      });
      await grid.ready();
      if (opening !== this.openings) {
        grid.dispose();
        return;
      }
      waiting.remove();
      this.take(grid, typed);
      const under = new UnderGrid(grid);
      part("under-grid").replaceChildren(...under.build(this.page));
      grid.onPage((page) => {
        under.show(page);
        if (page !== this.page && this.pages.some(({ name }) => name === page)) this.showPage(page);
      });
      document.documentElement.dataset.grid = "ready";
    } catch (error) {
      if (opening !== this.openings) return;
      console.error(error);
      waiting.className = "grid-failed";
      waiting.setAttribute("role", "alert");
      waiting.textContent =
        "The spreadsheet could not be started in this browser. The form and the tables work without it.";
    }
  }

  private take(grid: Grid, typed: Map<string, CellValue>): void {
    this.grid = grid;
    this.values = grid;
    grid.onWritten((key, value) => typed.set(key, value));
    grid.onSettled(() => this.view?.refresh());
    if (this.page !== this.pages[0].name) grid.show(this.page);
    this.view?.follow(grid);
    // For tests and for the curious: the grid under its own interface.
    Object.assign(globalThis, { trialGrid: grid });
  }

  /** The cans and the list are made when someone first asks for them. */
  private navigation(): void {
    this.functionPanel();
    let hasCans = false;
    const follow = () => {
      const wantsCans = location.hash === "#cans";
      if (wantsCans && !hasCans)
        part("cans").replaceChildren(...new CatchCans(this.host, this.reference).build());
      hasCans ||= wantsCans;
      part("cans").hidden = !wantsCans;
      part("sheet").hidden = wantsCans;
      part(wantsCans ? "to-cans" : "to-sheet").setAttribute("aria-current", "page");
      part(wantsCans ? "to-sheet" : "to-cans").removeAttribute("aria-current");
      document.title = wantsCans ? "Fieldsum: catch cans" : "Fieldsum: try the functions";
      this.wantGrid();
    };
    window.addEventListener("hashchange", () => {
      follow();
      window.scrollTo(0, 0);
    });
    follow();
  }

  private functionPanel(): void {
    const panel = part("functions");
    const opener = part("to-functions");
    let list: FunctionList | undefined;
    const toggle = (open: boolean) => {
      if (list === undefined) {
        list = new FunctionList(this.reference);
        panel.replaceChildren(list.build(() => toggle(false)));
      }
      panel.hidden = !open;
      opener.setAttribute("aria-expanded", String(open));
      document.documentElement.classList.toggle("functions-open", open);
      (open ? list.search : opener).focus();
    };
    opener.addEventListener("click", () => toggle(panel.hidden !== false));
    panel.addEventListener("keydown", (event) => {
      if (event.key === "Escape") toggle(false);
    });
  }
}

async function main(): Promise<void> {
  const [host, reference] = await Promise.all([
    FunctionHost.load(new URL("functions.js", document.baseURI)),
    fetch(new URL("reference.json", document.baseURI)).then(
      (answer) => answer.json() as Promise<Reference>,
    ),
  ]);
  new TrialPage(reference, host).start();
}

main().catch((error: unknown) => {
  console.error(error);
  part("purpose").replaceChildren(
    make("strong", {}, "The page could not be started. "),
    error instanceof Error ? error.message : String(error),
  );
});
