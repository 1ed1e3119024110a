import "../screen/palette.css";
import "../screen/page.css";
import "../screen/chart.css";
import "../screen/plot.css";
import "../screen/result-table.css";
import "./styles.css";
import "./kept/kept.css";
import "./start/start.css";
import "./print.css";
import type { Callables, Reference } from "../reference";
import type { Page, ReadyMadeSheet, UnitSystem } from "../sheets/kit/definition";
import { writeAddress } from "../sheets/kit/address";
import { firstSheet } from "../sheets/shelf";
import { allBooksAreHere, books, fetchAllBooks } from "./books";
import { make, part } from "../screen/dom";
import { idle } from "../screen/idle";
import { FirstValues } from "./first-values";
import type { FunctionList } from "./function-list";
import type { Grid } from "./grid";
import { keepFocusWhereItIs, leaveByEscape } from "./grid-focus";
import { LiveValues } from "./live-values";
import { FunctionHost, type CellValue } from "../screen/host";
import { filing, readLink } from "./files/actions";
import { ask } from "./kept/ask";
import { isUnchanged, noChanges } from "./kept/changes";
import { convertPlan } from "./kept/convert-units";
import { Desk, usualName } from "./kept/desk";
import { placeOf } from "./kept/inputs";
import { readRoute, type Route, type StartPart, writeRoute } from "./kept/route";
import { printInputsAsWords } from "./print";
import { browserBox, Store } from "./kept/store";
import { WorkBar } from "./kept/work-bar";
import { keepThisPage } from "../screen/newer-pages";
import { languageChoice } from "../screen/language-choice";
import { takeCautions } from "../words/caution-texts";
import { chosenLanguage } from "../words/chosen";
import { referenceAddress, screenSaid, speak, spokenLanguage, workbookSaid } from "../words/spoken";
import { sayPage } from "../screen/say-page";
import type { SheetValues } from "./sheet-values";
import { saveFlags } from "./save-flags";
import { SheetView } from "./sheet-view";
import type { Start } from "./start/start";

const FRONTS = ["sheet", "start", "cans"] as const;
type Front = (typeof FRONTS)[number];

const TITLES: Readonly<Record<Front, string>> = {
  sheet: "Fieldsum: try the functions",
  start: "Fieldsum: start from the field",
  cans: "Fieldsum: catch cans",
};

/** How long a slow phone may take to start the grid. */
const GRID_PATIENCE = 120000;

/** How long a grid that was given up may hold up the next one. */
const LONGEST_WAIT = 15000;

/** The page as a whole: which piece of work, which of its pages; the grid when it is there. */
class TrialPage {
  private page = "";
  private values: LiveValues | undefined;
  private first: FirstValues | undefined;
  private grid: Grid | undefined;
  private view: SheetView | undefined;
  private readonly bar: WorkBar;
  /** The page to show of what is opened next. */
  private wantedPage = "";
  private isFollowing = false;
  private hasCans = false;
  private startPage: Promise<Start> | undefined;
  /** What of the page is in front. */
  private front: Front = "sheet";
  /** Counts openings, so that a grid that comes late for a sheet no longer open is dropped. */
  private openings = 0;
  private readonly sheets = make("select", { id: "sheet-choice" });
  private readonly systems = new Map<UnitSystem, HTMLInputElement>();
  private readonly tabs = make("div", {
    class: "tabs",
    role: "group",
    "aria-label": "Pages of the sheet",
  });
  private loading: Promise<unknown> = Promise.resolve();
  private gridWanted: () => void = () => undefined;
  /** As in the style sheet: wide enough for the document and the grid side by side. */
  private readonly wide = window.matchMedia("(min-width: 64rem)");
  private readonly dark = window.matchMedia("(prefers-color-scheme: dark)");

  constructor(
    private readonly desk: Desk,
    private readonly callables: Callables,
    private readonly host: FunctionHost,
    /** All that is known of the functions; loaded when first asked for. */
    private readonly reference: () => Promise<Reference>,
  ) {
    const files = filing({
      desk,
      namespace: callables.namespace,
      page: () => this.page,
      settled: () => this.settled(),
      tell: (text) => this.bar.tell(text),
    });
    this.bar = new WorkBar(desk, { undo: () => this.undo(), redo: () => this.redo() }, files);
  }

  private get pages(): readonly Page[] {
    return this.desk.open.pages;
  }

  start(): void {
    this.chooser();
    this.wide.addEventListener("change", () => this.wantGrid());
    this.dark.addEventListener("change", () => this.grid?.setDark(this.dark.matches));
    this.desk.beforeLeaving(() => this.handOver());
    this.desk.onOpened(() => this.open());
    this.desk.onKept(() => this.showAddress("replace"));
    // The last moment that the browser grants, on a phone too.
    window.addEventListener("pagehide", () => this.handOver());
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "hidden") this.handOver();
    });
    document.addEventListener("keydown", (event) => this.undoByKey(event));
    printInputsAsWords();
    keepFocusWhereItIs();
    leaveByEscape(part("grid"));
    this.navigation();
  }

  private chooser(): void {
    this.sheets.replaceChildren(
      ...books().map(({ id, title }) => make("option", { value: id }, title)),
    );
    this.sheets.addEventListener("change", () => {
      const sheet = books().find(({ id }) => id === this.sheets.value);
      if (sheet === undefined) return;
      void this.withAllBooks(() => this.desk.openLast(sheet, this.desk.open.system));
    });
    const systems = (["US", "SI"] as const).map((system) => {
      const radio = make("input", { type: "radio", name: "system", value: system });
      radio.addEventListener("change", () => void this.otherUnits(system));
      this.systems.set(system, radio);
      const units = system === "US" ? ": ft, psi, gpm" : ": m, kPa, m³/h";
      return make(
        "label",
        {},
        radio,
        make("span", {}, system, make("span", { class: "roomy" }, units)),
      );
    });
    part("choose").replaceChildren(
      make(
        "div",
        { class: "choice" },
        make("label", { for: "sheet-choice" }, "Sheet"),
        this.sheets,
      ),
      make("fieldset", { class: "systems" }, make("legend", {}, "Units"), ...systems),
      this.bar.build(),
      this.tabs,
      this.sides(),
    );
  }

  /** Does what needs any of the workbooks; at once where they are all here. */
  private async withAllBooks(act: () => void): Promise<void> {
    if (!allBooksAreHere()) {
      try {
        await fetchAllBooks();
      } catch (error) {
        console.error(error);
        this.sheets.value = this.desk.open.sheet.id;
        this.bar.tell("The other workbooks could not be fetched. With a network, try again.");
        return;
      }
    }
    act();
  }

  /** Nothing is relabeled: the plan is converted, or the other sample is opened beside it. */
  private async otherUnits(system: UnitSystem): Promise<void> {
    this.desk.handOver();
    const { sheet, piece, changes, pages, system: before } = this.desk.open;
    if (piece === undefined && isUnchanged(changes)) {
      this.desk.openSample(sheet, system);
      return;
    }
    const radio = this.systems.get(before);
    if (radio !== undefined) radio.checked = true;
    const to = sheet.pages(system);
    const { contents, left } = convertPlan(
      { pages, contents: changes.contents },
      { pages: to, system },
      (value, from, unit) => {
        const given = this.host.call("UNIT_CONVERT", value, from, unit);
        return given.error === undefined && typeof given.value === "number"
          ? given.value
          : undefined;
      },
    );
    const answer = await ask({
      title: `From ${before} to ${system} units`,
      text: [
        `"Convert" makes a new piece of work: the same plan with every length, pressure, flow, price per length and the like in ${system} units. "${piece?.name ?? "This one"}" stays as it is.`,
        ...(left.length + changes.ownSheets.length === 0
          ? []
          : [
              `Not converted, because what their numbers mean is not known: ${[...left, ...changes.ownSheets.map(({ name }) => `page ${name}`)].join(", ")}.`,
            ]),
      ],
      choices: [
        { choice: "convert", label: `Convert to ${system}` },
        { choice: "sample", label: `Open the ${system} sample` },
      ],
      otherwise: `Stay in ${before}`,
    });
    if (answer?.choice === "sample") this.desk.openSample(sheet, system);
    if (answer?.choice === "convert")
      this.desk.begin(sheet, system, `${piece?.name ?? usualName(sheet)}, ${system}`, {
        ...noChanges,
        contents,
      });
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

  /** Shows what the desk has opened: what can be read at once, then the grid. */
  private open(): void {
    const { sheet, system, pages, changes } = this.desk.open;
    this.openings += 1;
    this.sheets.value = sheet.id;
    for (const [name, radio] of this.systems) radio.checked = name === system;
    this.grid?.dispose();
    this.grid = undefined;
    const typed = new Map(changes.contents);
    const first = new FirstValues(pages, typed, this.callables, this.host);
    this.bar.canUndo(0, 0);
    first.onSettled(() => {
      this.view?.refresh();
      // The grid tells of changes and of steps itself.
      if (this.grid !== undefined) return;
      this.bar.canUndo(first.steps.undos, first.steps.redos);
      this.desk.change({ ...this.desk.open.changes, contents: new Map(typed) });
    });
    this.values = new LiveValues(first);
    this.first = first;
    const isKnown = pages.some(({ name }) => name === this.wantedPage);
    this.showPage(isKnown ? this.wantedPage : pages[0].name, "push");
    this.wantedPage = "";
    performance.mark("sheet-readable");
    part("under-grid").replaceChildren();
    const opened = this.openings;
    this.gridWanted = () => {
      // One after the other: the library keeps what it has read in one place for all its workbooks,
      // and one that is given up while the next computes would empty it under that one.
      const before = Promise.race([
        this.loading,
        new Promise((go) => setTimeout(go, LONGEST_WAIT)),
      ]);
      this.loading = before.then(() => this.loadGrid(opened, first));
    };
    part("sheet").classList.remove("needs-grid");
    this.wantGrid();
    // On a narrow screen too, the grid fills in what the first view cannot.
    const opening = this.openings;
    void idle().then(() => {
      if (opening !== this.openings || !first.leavesBlanks()) return;
      part("sheet").classList.add("needs-grid");
      this.wantGrid();
    });
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

  private showPage(name: string, address: "push" | "replace"): void {
    this.page = name;
    this.showAddress(address);
    const page = this.pages.find((other) => other.name === name) ?? this.pages[0];
    if (this.values === undefined) return;
    const { values } = this;
    const isFirst = this.view === undefined;
    const view = new SheetView(page, values, this.pages, {
      call: (id, ...cells) => this.host.call(id, ...cells),
      lead: (place) => {
        if (place.page !== this.page) {
          this.showPage(place.page, "push");
          this.grid?.show(place.page);
        }
        this.view?.show(place.at);
      },
    });
    this.view = view;
    view.title(part("sheet-title"));
    view.purpose(part("purpose"), this.desk.open.sheet.purpose);
    const reading = part("reading");
    reading.replaceChildren(view.begin());
    reading.classList.toggle("unfinished", isFirst);
    const finish = () => {
      if (view !== this.view) return;
      view.finish();
      reading.append(...saveFlags(page, () => values));
      reading.classList.remove("unfinished");
    };
    // Whoever comes to the page reads the answers while the rest is made.
    if (isFirst) void idle().then(finish);
    else finish();
    this.tabs.replaceChildren(
      ...this.pages.map((other) => {
        const tab = make(
          "button",
          { type: "button", "aria-pressed": String(other.name === name) },
          workbookSaid(other.name),
        );
        tab.addEventListener("click", () => {
          this.showPage(other.name, "push");
          this.grid?.show(other.name);
        });
        return tab;
      }),
    );
  }

  private async loadGrid(opening: number, first: FirstValues): Promise<void> {
    if (opening !== this.openings) return;
    const holder = part("grid");
    const waiting = make(
      "p",
      { class: "grid-waiting", role: "status" },
      "The spreadsheet is loading. What stands beside it works already.",
    );
    holder.replaceChildren(waiting);
    try {
      // What the reader came for is painted first, and what is typed meanwhile goes before.
      await idle();
      const [{ Grid }, { UnderGrid }, reference, spanish] = await Promise.all([
        import("./grid"),
        import("./under-grid"),
        this.reference(),
        spokenLanguage() === "es"
          ? import("@univerjs/preset-sheets-core/locales/es-ES").then((words) => words.default)
          : undefined,
      ]);
      if (opening !== this.openings) return;
      const container = make("div", { class: "grid-canvas" });
      holder.append(container);
      const grid = new Grid({
        container,
        pages: this.pages,
        changes: this.desk.open.changes,
        steps: first.steps,
        reference,
        host: this.host,
        dark: this.dark.matches,
        ...(spanish && { spanish }),
      });
      // What is typed while it starts goes into it too.
      const late = first.steps.all().length;
      await grid.ready();
      if (opening !== this.openings) {
        grid.dispose();
        return;
      }
      waiting.remove();
      this.take(grid, first);
      for (const { key, after } of first.steps.all().slice(late).flat())
        grid.write(placeOf(key), (after ?? null) as CellValue);
      const under = new UnderGrid(grid, this.pages);
      part("under-grid").replaceChildren(...under.build(this.page));
      grid.onPage((page) => {
        under.show(page);
        if (page !== this.page && this.pages.some(({ name }) => name === page))
          this.showPage(page, "push");
      });
      document.documentElement.dataset.grid = "ready";
    } catch (error) {
      if (opening !== this.openings) return;
      console.error(error);
      waiting.className = "grid-failed";
      waiting.setAttribute("role", "alert");
      waiting.textContent = screenSaid(
        "The spreadsheet could not be started in this browser. The form and the tables work without it.",
      );
    }
  }

  private take(grid: Grid, first: FirstValues): void {
    this.grid = grid;
    const { values } = this;
    values?.with(grid);
    grid.onChanged((changes) => {
      first.adopt(changes.contents);
      this.desk.change(changes);
      if (values?.asksGrid() === true) this.view?.refresh();
    });
    grid.onRefused((why) => this.bar.tell(why));
    grid.onUndo((undos, redos) => this.bar.canUndo(undos, redos));
    grid.onSettled(() => {
      if (values?.asksGrid() === true) this.view?.refresh();
    });
    if (this.page !== this.pages[0].name) grid.show(this.page);
    this.view?.refresh();
    // For tests and for the curious: the grid under its own interface.
    Object.assign(globalThis, { trialGrid: grid });
  }

  /** The values, all of them worked out: where the first view leaves blanks, by the grid. */
  private async settled(): Promise<SheetValues> {
    if (this.grid === undefined && this.first?.leavesBlanks() === false) return this.first;
    part("sheet").classList.add("needs-grid");
    this.wantGrid();
    const end = Date.now() + GRID_PATIENCE;
    while (this.grid === undefined) {
      if (Date.now() > end) throw new Error("The spreadsheet behind this page has not started.");
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    await this.grid.quiet();
    return this.grid;
  }

  private undo(): void {
    if (this.grid === undefined) this.first?.undo();
    else this.grid.undo();
  }

  private redo(): void {
    if (this.grid === undefined) this.first?.redo();
    else this.grid.redo();
  }

  /** In a field the browser takes back letters itself; the grid listens for itself. */
  private undoByKey(event: KeyboardEvent): void {
    const key = event.key.toLowerCase();
    if (!(event.ctrlKey || event.metaKey) || event.altKey || (key !== "z" && key !== "y")) return;
    const { target } = event;
    if (!(target instanceof Element) || target.closest("input, textarea, .grid, dialog")) return;
    event.preventDefault();
    if (key === "y" || event.shiftKey) this.redo();
    else this.undo();
  }

  /** What has been typed and not yet handed to the sheet, and what the sheet has not yet told. */
  private handOver(): void {
    const typing = document.activeElement;
    if (typing?.matches("input, textarea") === true && part("reading").contains(typing))
      typing.dispatchEvent(new Event("change"));
    this.grid?.keepNow();
  }

  /** The address says what lies open, so that a reload, Back and a bookmark lead there. */
  private showAddress(how: "push" | "replace"): void {
    const { sheet, system, piece, given } = this.desk.open;
    const { page } = this;
    const route = { cans: false, sheet: sheet.id, system, page, piece: piece?.id, given };
    const address = writeRoute(route);
    if (location.hash === address || this.front !== "sheet") return;
    const replaces = how === "replace" || this.isFollowing;
    history[replaces ? "replaceState" : "pushState"](null, "", address);
  }

  /** Opens what the address leads to. */
  private follow(): void {
    const route = readRoute(location.hash);
    this.isFollowing = true;
    this.bring(route.cans ? "cans" : route.start === undefined ? "sheet" : "start");
    if (this.front === "sheet") this.openRoute(route);
    if (route.start !== undefined) void this.showStart(route.start);
    this.isFollowing = false;
  }

  private openRoute(route: Route): void {
    const sheet = books().find(({ id }) => id === route.sheet);
    const { open } = this.desk;
    this.wantedPage = route.page ?? "";
    if (sheet === undefined) {
      // An address that names nothing: what was left open, or the first sample.
      if (this.view !== undefined) this.showAddress("replace");
      else if (!this.desk.openWhereLeft()) this.desk.openSample(books()[0], "US");
      return;
    }
    const system = route.system ?? "US";
    const isOpen =
      this.view !== undefined &&
      open.sheet === sheet &&
      open.system === system &&
      open.piece?.id === route.piece &&
      open.given === route.given;
    if (isOpen) {
      const page = this.pages.find(({ name }) => name === route.page) ?? this.pages[0];
      if (page.name === this.page) return;
      this.showPage(page.name, "replace");
      this.grid?.show(page.name);
      return;
    }
    if (route.given !== undefined) {
      void this.openLink(sheet, system, route.given);
      return;
    }
    if (route.piece !== undefined && this.desk.openPiece(route.piece)) return;
    // What was kept in the last moment before a reload has an id that the address does not know yet.
    if (this.view === undefined && isReload() && route.piece === undefined) {
      this.desk.openLast(sheet, system);
      return;
    }
    this.desk.openSample(sheet, system);
    if (route.piece !== undefined)
      this.bar.tell(
        "The piece of work that this address names is not in this browser. This is the sample.",
      );
  }

  private async openLink(sheet: ReadyMadeSheet, system: UnitSystem, given: string): Promise<void> {
    const contents = await readLink(given);
    this.isFollowing = true;
    if (contents !== undefined) this.desk.look(sheet, system, { ...noChanges, contents }, given);
    else {
      this.desk.openSample(sheet, system);
      this.bar.tell(
        "The link is damaged or was cut on its way: it cannot be read. This is the sample.",
      );
    }
    this.isFollowing = false;
  }

  /** The cans and the list are made when someone first asks for them. */
  private navigation(): void {
    this.functionPanel();
    window.addEventListener("popstate", () => {
      void this.withAllBooks(() => {
        this.follow();
        window.scrollTo(0, 0);
      });
    });
    this.follow();
  }

  private bring(front: Front): void {
    this.front = front;
    if (front === "cans" && !this.hasCans) {
      this.hasCans = true;
      void import("./catch-cans").then(({ CatchCans }) =>
        part("cans").replaceChildren(...new CatchCans(this.host, this.callables.namespace).build()),
      );
    }
    for (const other of FRONTS) {
      part(other).hidden = other !== front;
      if (other === front) part(`to-${other}`).setAttribute("aria-current", "page");
      else part(`to-${other}`).removeAttribute("aria-current");
    }
    document.title = screenSaid(TITLES[front]);
    this.wantGrid();
  }

  /** Loaded when someone first starts there. */
  private async showStart(which: StartPart): Promise<void> {
    this.startPage ??= Promise.all([import("./start/start"), fetchAllBooks()]).then(
      ([{ Start }]) =>
        new Start(this.host, this.callables, this.desk, () => {
          this.isFollowing = false;
          this.bring("sheet");
        }),
    );
    const start = await this.startPage;
    if (readRoute(location.hash).start === which)
      part("start").replaceChildren(...start.build(which));
  }

  /** Into the chosen cell; one that holds something is asked about. */
  private async insertFormula(formula: string): Promise<string> {
    const place = this.grid?.chosen();
    if (this.grid === undefined || place === undefined)
      return "Open the spreadsheet and choose a cell in it first.";
    const at = writeAddress(place);
    const holds = this.grid.text(place);
    if (holds !== "") {
      const answer = await ask({
        title: `Put it into ${at}?`,
        text: [`${at} of page ${workbookSaid(place.page)} holds "${holds}".`],
        choices: [{ choice: "put", label: "Put it there" }],
        otherwise: "Leave the cell",
      });
      if (answer === undefined) return "";
    }
    this.grid.enter(place, formula);
    return `Stands in ${at} of page ${workbookSaid(place.page)} now.`;
  }

  private functionPanel(): void {
    const panel = part("functions");
    const opener = part("to-functions");
    let list: FunctionList | undefined;
    const toggle = async (open: boolean) => {
      if (list === undefined && open) {
        const [{ FunctionList }, reference] = await Promise.all([
          import("./function-list"),
          this.reference(),
        ]);
        list ??= new FunctionList(reference, (formula) => this.insertFormula(formula));
        panel.replaceChildren(list.build(() => void toggle(false)));
      }
      panel.hidden = !open;
      opener.setAttribute("aria-expanded", String(open));
      document.documentElement.classList.toggle("functions-open", open);
      (open ? (list?.search ?? panel) : opener).focus();
    };
    opener.addEventListener("click", () => void toggle(panel.hidden !== false));
    panel.addEventListener("keydown", (event) => {
      if (event.key === "Escape") void toggle(false);
    });
  }
}

function isReload(): boolean {
  const [entry] = performance.getEntriesByType("navigation");
  return entry instanceof PerformanceNavigationTiming && entry.type === "reload";
}

/** Whether the page begins with the first workbook, and needs the others only later. */
function beginsWithFirst(store: Store): boolean {
  const { id } = firstSheet;
  const { sheet = id } = readRoute(location.hash);
  return sheet === id && store.list().pieces.every((piece) => piece.sheet === id);
}

async function main(): Promise<void> {
  const store = new Store(browserBox());
  const language = chosenLanguage();
  // All at once: on a slow network each wait for an answer counts.
  const needed = Promise.all([
    FunctionHost.load(new URL("functions.js", document.baseURI)),
    fetched<Callables>(referenceAddress(language, "callables.json")),
    beginsWithFirst(store) ? undefined : fetchAllBooks(),
  ]);
  await speak(language);
  sayPage(document.body);
  part("language").replaceChildren(languageChoice("Language", language));
  part("notice").hidden = language === "en";
  const [host, callables] = await needed;
  takeCautions(callables);
  let reference: Promise<Reference> | undefined;
  const page = new TrialPage(
    new Desk(books(), store),
    callables,
    host,
    () => (reference ??= fetched<Reference>(referenceAddress(language))),
  );
  document.body.classList.remove("starting");
  page.start();
  keepThisPage();
  await idle();
  // What fails here is tried again, and told, when one of them is asked for.
  void fetchAllBooks().catch((error: unknown) => console.error(error));
}

async function fetched<T>(address: string): Promise<T> {
  const answer = await fetch(new URL(address, document.baseURI));
  return (await answer.json()) as T;
}

main().catch((error: unknown) => {
  console.error(error);
  document.body.classList.remove("starting");
  part("purpose").replaceChildren(
    make("strong", {}, "The page could not be started. "),
    error instanceof Error ? error.message : String(error),
  );
});
