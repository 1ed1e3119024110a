import { screenSaid } from "../words/spoken";
import type { IWorkbookData } from "@univerjs/core";
import enUS from "@univerjs/preset-sheets-core/locales/en-US";
import "@univerjs/preset-sheets-core/lib/index.css";
import type { Page } from "../sheets/kit/definition";
import type { Reference } from "../reference";
import { CellErrors, isErrorCode, registerFunctions } from "./grid-functions";
import { compareWithoutIndex } from "./comparison-index";
import { readTyped } from "./typed";
import { freshWorkbookId, workbookOf } from "./grid-workbook";
import { wordsOfError } from "../screen/error-words";
import type { CallError, CellValue, FunctionHost } from "../screen/host";
import { type SpillRanges, withoutLeftOvers } from "./left-over-spills";
import { sameSpills, type Spills } from "./same-spills";
import { type Changes, type Content, plainChanges } from "./kept/changes";
import { cellOf, changesIn, contentOf, withChanges } from "./kept/grid-changes";
import { placeOf } from "./kept/inputs";
import type { CellStep, Steps } from "./kept/steps";
import { typedKey, type CellPlace, type SheetValues, type ShownCell } from "./sheet-values";
import {
  CELL_INVERTED_INDEX_CACHE,
  CalculationMode,
  CellValueType,
  FormulaDataModel,
  FUniver,
  IActiveDirtyManagerService,
  ICommandService,
  IUndoRedoService,
  LocaleType,
  LogLevel,
  SetFormulaCalculationStartMutation,
  SetRangeValuesMutation,
  Univer,
  UniverInstanceType,
  UniverSheetsCorePreset,
} from "./univer";

/** Pixels of height and width from which the first rows may stay in view. */
const ROOM_TO_FREEZE = 500;

/** Milliseconds after a change before it is told: what is done in one go is told together. */
const TELLING_PAUSE = 20;

/** What would move a ready-made page's cells away from where the document beside it reads them. */
const MOVES_CELLS =
  /^sheet\.command\.((insert|remove|delete|move)-(multi-)?(row|col|range)|(remove|hide)-sheet|set-worksheet-(name|hidden))/;

const UNITS_STAY =
  "The units are chosen at the top of the page: there you say whether the plan is to be converted. A change in the cell would call 40 ft 40 m.";

const STAYS_WHERE_IT_IS =
  "The cells of a ready-made page stay where they are, and so does its name: the answers read them there. Add a page of your own for more.";

/** Results that fill cells may feed others that do so; more rounds than sheets have such stages. */
const MOST_ROUNDS = 20;

export interface GridOptions {
  readonly container: HTMLElement;
  readonly pages: readonly Page[];
  readonly changes: Changes;
  /** What was done, and taken back, before the grid was there. */
  readonly steps: Steps;
  readonly reference: Reference;
  readonly host: FunctionHost;
  readonly dark: boolean;
  /** The grid's own words in Spanish, where the page speaks it. */
  readonly spanish?: typeof enUS;
}

export interface SelectedCell extends CellPlace {
  readonly formula: string;
}

/** The spreadsheet: the pages of one ready-made sheet as a workbook that computes itself. */
export class Grid implements SheetValues {
  private readonly errors = new CellErrors();
  private readonly api: FUniver;
  private readonly univer: Univer;
  private readonly settled: (() => void)[] = [];
  private readonly selected: ((cell: SelectedCell) => void)[] = [];
  private readonly pageListeners: ((page: string) => void)[] = [];
  private readonly changedListeners: ((changes: Changes) => void)[] = [];
  private readonly refusedListeners: ((why: string) => void)[] = [];
  private readonly undoListeners: ((undos: number, redos: number) => void)[] = [];
  private readonly readyMade: Partial<IWorkbookData>;
  private readonly pageNames: ReadonlySet<string>;
  private readonly namespace: string;
  /** Where the workbook says in which units it is. */
  private readonly unitsKey: string | undefined;
  private isComputing = true;
  private keeping: number | undefined;
  private lastChanges: string;
  private pending: number | undefined;
  private spills: Spills = {};
  private rounds = 0;
  private readonly atRest = new Promise<void>((resolve) => this.settled.push(resolve));
  private disposed = false;

  private readonly container: HTMLElement;
  private readonly id = freshWorkbookId();

  constructor(options: GridOptions) {
    const { container, dark } = options;
    this.container = container;
    this.namespace = options.reference.namespace;
    this.pageNames = new Set(options.pages.map(({ name }) => name));
    const ready = () =>
      workbookOf(options.pages, {
        namespace: this.namespace,
        id: this.id,
        freezes: container.clientHeight > ROOM_TO_FREEZE && container.clientWidth > ROOM_TO_FREEZE,
      });
    this.readyMade = ready();
    this.unitsKey = options.pages
      .flatMap((page) => page.cells.map((cell) => ({ page: page.name, cell })))
      .filter(({ cell }) => cell.name === "Units" && cell.role === "input")
      .map(({ page, cell }) => typedKey(page, cell.at))[0];
    this.lastChanges = told(options.changes);
    compareWithoutIndex(CELL_INVERTED_INDEX_CACHE);
    this.univer = new Univer({
      locale: options.spanish === undefined ? LocaleType.EN_US : LocaleType.ES_ES,
      locales: { [LocaleType.EN_US]: enUS, [LocaleType.ES_ES]: options.spanish ?? enUS },
      logLevel: LogLevel.ERROR,
      darkMode: dark,
    });
    const preset = UniverSheetsCorePreset({
      container,
      header: true,
      toolbar: false,
      ribbonType: "simple",
      formulaBar: true,
      contextMenu: true,
      disableAutoFocus: true,
      formula: { initialFormulaComputing: CalculationMode.FORCED },
      footer: { sheetBar: true, statisticBar: false, menus: false, zoomSlider: false },
    });
    for (const plugin of preset.plugins) {
      if (Array.isArray(plugin)) this.univer.registerPlugin(plugin[0], plugin[1] as never);
      else this.univer.registerPlugin(plugin as never);
    }
    this.api = FUniver.newAPI(this.univer);
    this.univer.createUnit<IWorkbookData, never>(
      UniverInstanceType.UNIVER_SHEET,
      withChanges(ready(), withAllSteps(options), this.namespace),
    );
    registerFunctions(
      this.univer.__getInjector(),
      options.reference,
      options.host,
      this.errors,
      // A calculation may outlive the workbook.
      (sheetId) =>
        this.api.getWorkbook(this.id)?.getSheetBySheetId(sheetId)?.getSheetName() ?? sheetId,
    );
    this.computeAll();
    this.listen();
    this.takeOver(options.steps);
  }

  /** Resolves when every formula has its first value. */
  async ready(): Promise<void> {
    await this.atRest;
    mendMarkup(this.container);
  }

  read({ page, row, column }: CellPlace): ShownCell {
    const value = this.value({ page, row, column });
    if (!isErrorCode(value)) return { value };
    const error = this.errors.read({ page, row, column });
    const code = String(value);
    if (error !== undefined && error.code === code) return { value, error };
    return { value, error: { code, message: wordsOfError(code) } };
  }

  /**
   * The value behind the format. What the public face gives is rounded to the cell's number format;
   * spilled cells are kept apart from the typed ones.
   */
  private value({ page, row, column }: CellPlace): CellValue {
    const sheet = this.sheet(page);
    const spilled = this.univer.__getInjector().get(FormulaDataModel).getArrayFormulaCellData()?.[
      this.id
    ]?.[sheet.getSheetId()]?.[row]?.[column];
    const range = sheet.getRange(row, column);
    const value = (spilled?.v ?? range.getRawValue() ?? null) as CellValue;
    // Truth values are kept as 0 and 1, and marked by their type.
    const type = (spilled ?? range.getCellData())?.t;
    return type === CellValueType.BOOLEAN ? value === 1 || value === true : value;
  }

  get isBehind(): boolean {
    return this.isComputing;
  }

  formula({ page, row, column }: CellPlace): string {
    return this.sheet(page).getRange(row, column).getFormula();
  }

  write({ page, row, column }: CellPlace, value: CellValue): void {
    this.sheet(page)
      .getRange(row, column)
      .setValue(value ?? "");
  }

  writeBlock({ page, row, column }: CellPlace, rows: readonly (readonly CellValue[])[]): void {
    this.sheet(page)
      .getRange(row, column, rows.length, rows[0].length)
      .setValues(rows.map((values) => values.map((value) => value ?? "")));
  }

  /** As typed: a formula where it begins with an equals sign. */
  enter({ page, row, column }: CellPlace, typed: string): void {
    const range = this.sheet(page).getRange(row, column);
    if (typed.startsWith("=")) range.setFormula(typed);
    else range.setValue(readTyped(typed) ?? "");
  }

  /** What the cell shows, in its number format. */
  text({ page, row, column }: CellPlace): string {
    return this.sheet(page).getRange(row, column).getDisplayValue();
  }

  /** Every cell of the page that shows an error. */
  wrong(page: string): { readonly place: CellPlace; readonly error: CallError }[] {
    const sheet = this.sheet(page);
    const used = sheet.getDataRange();
    const found = [];
    for (let row = 0; row <= used.getLastRow(); row++) {
      for (let column = 0; column <= used.getLastColumn(); column++) {
        const place = { page, row, column };
        const { error } = this.read(place);
        if (error !== undefined) found.push({ place, error });
      }
    }
    return found;
  }

  /** Rows and columns in use. */
  extent(page: string): { readonly rows: number; readonly columns: number } {
    const used = this.sheet(page).getDataRange();
    return { rows: used.getLastRow() + 1, columns: used.getLastColumn() + 1 };
  }

  select({ page, row, column }: CellPlace): void {
    const sheet = this.sheet(page);
    this.book().setActiveSheet(sheet);
    sheet.getRange(row, column).activate();
    sheet.scrollToCell(Math.max(0, row - 3), 0);
    // The library says nothing when the cell was chosen before.
    this.tellSelected({ page, row, column });
  }

  /** The cell that is chosen, on the page in front. */
  chosen(): CellPlace | undefined {
    const range = this.book().getActiveRange();
    if (range === null) return undefined;
    return { page: range.getSheetName(), row: range.getRow(), column: range.getColumn() };
  }

  show(page: string): void {
    this.book().setActiveSheet(this.sheet(page));
  }

  onSettled(listener: () => void): void {
    this.settled.push(listener);
  }

  onSelected(listener: (cell: SelectedCell) => void): void {
    this.selected.push(listener);
  }

  /** Called when another page comes to the front. */
  onPage(listener: (page: string) => void): void {
    this.pageListeners.push(listener);
  }

  /** Called with all that differs from the ready-made workbook, after each change of it. */
  onChanged(listener: (changes: Changes) => void): void {
    this.changedListeners.push(listener);
  }

  /** Called with a sentence when something was asked for that is not done here. */
  onRefused(listener: (why: string) => void): void {
    this.refusedListeners.push(listener);
  }

  /** Called with the number of steps that can be taken back and taken again. */
  onUndo(listener: (undos: number, redos: number) => void): void {
    this.undoListeners.push(listener);
  }

  undo(): void {
    this.book().undo();
  }

  redo(): void {
    this.book().redo();
  }

  /** Resolves when nothing is being worked out any more. */
  async quiet(): Promise<void> {
    // An edit is taken up a moment after it was made.
    await new Promise((resolve) => setTimeout(resolve, 200));
    if (this.isComputing) await new Promise<void>((resolve) => this.settled.push(resolve));
  }

  /** Tells of changes at once: the page is about to go. */
  keepNow(): void {
    window.clearTimeout(this.keeping);
    if (this.disposed) return;
    const book = this.book().getWorkbook();
    const changes = changesIn(
      book.getSnapshot(),
      this.readyMade,
      this.namespace,
      (page, row, column) => this.formula({ page, row, column }),
    );
    if (this.unitsKey !== undefined && changes.contents.has(this.unitsKey)) {
      this.restore(this.unitsKey);
      return;
    }
    const says = told(changes);
    if (says === this.lastChanges) return;
    this.lastChanges = says;
    for (const listener of this.changedListeners) listener(changes);
  }

  setDark(dark: boolean): void {
    this.api.toggleDarkMode(dark);
  }

  /** What the library still had under way may report later; then nobody listens. */
  dispose(): void {
    window.clearTimeout(this.keeping);
    window.clearTimeout(this.pending);
    for (const listeners of [
      this.settled,
      this.selected,
      this.pageListeners,
      this.changedListeners,
      this.refusedListeners,
      this.undoListeners,
    ])
      listeners.length = 0;
    this.disposed = true;
    this.univer.dispose();
  }

  private book() {
    const book = this.api.getWorkbook(this.id);
    if (book === null) throw new Error("the workbook is gone");
    return book;
  }

  private sheet(page: string) {
    const sheet = this.book().getSheetByName(page);
    if (sheet === null) throw new Error(`no page "${page}"`);
    return sheet;
  }

  private listen(): void {
    this.api.getFormula().calculationStart(() => (this.isComputing = true));
    this.api.getFormula().calculationResultApplied(() => this.rest());
    const injector = this.univer.__getInjector();
    injector.get(ICommandService).onCommandExecuted(({ id }, options) => {
      // What formulas gave is no change of the work.
      if (!id.startsWith("sheet.mutation.") || options?.fromFormula === true || this.disposed)
        return;
      window.clearTimeout(this.keeping);
      this.keeping = window.setTimeout(() => this.keepNow(), TELLING_PAUSE);
    });
    injector.get(IUndoRedoService).undoRedoStatus$.subscribe(({ undos, redos }) => {
      for (const listener of this.undoListeners) listener(undos, redos);
    });
    this.api.addEvent(this.api.Event.BeforeCommandExecute, (event) => {
      if (!MOVES_CELLS.test(event.id)) return;
      const { subUnitId } = (event.params ?? {}) as { subUnitId?: string };
      const sheet =
        subUnitId === undefined
          ? this.book().getActiveSheet()
          : this.book().getSheetBySheetId(subUnitId);
      if (sheet === null || !this.pageNames.has(sheet.getSheetName())) return;
      event.cancel = true;
      for (const listener of this.refusedListeners) listener(STAYS_WHERE_IT_IS);
    });
    this.api.addEvent(this.api.Event.ActiveSheetChanged, ({ activeSheet }) => {
      for (const listener of this.pageListeners) listener(activeSheet.getSheetName());
    });
    this.api.addEvent(this.api.Event.SelectionChanged, ({ worksheet, selections }) => {
      const range = selections[0];
      if (range === undefined) return;
      this.tellSelected({
        page: worksheet.getSheetName(),
        row: range.startRow,
        column: range.startColumn,
      });
    });
  }

  private tellSelected(place: CellPlace): void {
    if (this.disposed) return;
    for (const listener of this.selected) listener({ ...place, formula: this.formula(place) });
  }

  /** Puts back what the ready-made workbook holds, and says why; the change can be asked for elsewhere. */
  private restore(key: string): void {
    const { id, params } = this.mutation({ key, before: undefined, after: undefined }, undefined);
    for (const listener of this.refusedListeners) listener(UNITS_STAY);
    void this.univer.__getInjector().get(ICommandService).executeCommand(id, params);
  }

  /** Steps from before the grid become the grid's own, so that one Undo goes through all of them. */
  private takeOver(steps: Steps): void {
    const undoing = this.univer.__getInjector().get(IUndoRedoService);
    for (const step of steps.all())
      undoing.pushUndoRedo({
        unitID: this.id,
        undoMutations: step.map((cell) => this.mutation(cell, cell.before)),
        redoMutations: step.map((cell) => this.mutation(cell, cell.after)),
      });
    for (let i = 0; i < steps.redos; i++) this.undo();
  }

  private mutation({ key }: CellStep, content: Content | undefined) {
    const { page, row, column } = placeOf(key);
    const subUnitId = this.sheet(page).getSheetId();
    const ready = contentOf(
      this.readyMade.sheets?.[subUnitId]?.cellData?.[row]?.[column],
      this.namespace,
      () => "",
    );
    return {
      id: SetRangeValuesMutation.id,
      params: {
        unitId: this.id,
        subUnitId,
        cellValue: {
          [row]: { [column]: cellOf(content === undefined ? ready : content, this.namespace) },
        },
      },
    };
  }

  /**
   * Every edit computes all of the workbook. Left to itself the library computes what it takes for
   * touched, and misses what reads a changed cell through INDEX: an old total beside a new error.
   */
  private computeAll(): void {
    const dirty = this.univer.__getInjector().get(IActiveDirtyManagerService);
    const usual = dirty.get(SetRangeValuesMutation.id);
    if (usual === undefined || usual === null) throw new Error("the grid does not follow edits");
    dirty.remove(SetRangeValuesMutation.id);
    dirty.register(SetRangeValuesMutation.id, {
      commandId: usual.commandId,
      getDirtyData: (command) => {
        const found = usual.getDirtyData(command);
        // A change of look alone touches nothing.
        if (Object.keys(found).length === 0) return found;
        this.isComputing = true;
        return { ...found, forceCalculation: true };
      },
    });
  }

  /** Computes again until no cell that a formula elsewhere fills changes; then tells. */
  private rest(): void {
    if (this.disposed) return;
    const injector = this.univer.__getInjector();
    const model = injector.get(FormulaDataModel);
    const filled = model.getArrayFormulaCellData();
    const lies = (model.getArrayFormulaRange()[this.id] ?? {}) as SpillRanges;
    const spills = withoutLeftOvers(structuredClone(filled[this.id] ?? {}) as Spills, lies);
    model.setArrayFormulaCellData({
      ...filled,
      [this.id]: structuredClone(spills) as (typeof filled)[string],
    });
    const isAtRest = sameSpills(this.spills, spills) || this.rounds >= MOST_ROUNDS;
    this.spills = spills;
    this.rounds = isAtRest ? 0 : this.rounds + 1;
    if (isAtRest) this.announce();
    else
      void injector.get(ICommandService).executeCommand(
        SetFormulaCalculationStartMutation.id,
        {
          forceCalculation: true,
          dirtyRanges: [],
          dirtyNameMap: {},
          dirtyDefinedNameMap: {},
          dirtySuperTableMap: {},
          dirtyUnitFeatureMap: {},
          dirtyUnitOtherFormulaMap: {},
          clearDependencyTreeCache: {},
        },
        { onlyLocal: true },
      );
  }

  /** Several results may come close together; listeners hear once. */
  private announce(): void {
    window.clearTimeout(this.pending);
    this.pending = window.setTimeout(() => {
      this.isComputing = false;
      this.settled.forEach((listener) => listener());
    }, 20);
  }
}

/** As if nothing had been taken back; the grid then takes it back itself, and can do it again. */
function withAllSteps({ changes, steps }: GridOptions): Changes {
  const contents = new Map(changes.contents);
  for (const { key, after } of steps.all().slice(steps.undos).flat()) {
    if (after === undefined) contents.delete(key);
    else contents.set(key, after);
  }
  return { ...changes, contents };
}

function told(changes: Changes): string {
  return JSON.stringify(plainChanges(changes));
}

/**
 * The library's canvases jump the queue of the Tab key, and some of its controls have no name. Put
 * right what can be from outside.
 */
function mendMarkup(container: HTMLElement): void {
  for (const canvas of container.querySelectorAll("canvas"))
    canvas.tabIndex = canvas.width > 0 ? 0 : -1;
  container
    .querySelector('input[type="text"]')
    ?.setAttribute("aria-label", screenSaid("Address of the cell"));
  const [add, list] = container.querySelectorAll('[data-u-comp="sheet-bar-append-button"]');
  add?.setAttribute("aria-label", screenSaid("Add a page"));
  list?.setAttribute("aria-label", screenSaid("All pages"));
}
