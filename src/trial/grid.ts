import type { IWorkbookData } from "@univerjs/core";
import enUS from "@univerjs/preset-sheets-core/locales/en-US";
import "@univerjs/preset-sheets-core/lib/index.css";
import { writeAddress } from "../sheets/kit/address";
import type { Page } from "../sheets/kit/definition";
import type { Reference } from "../reference";
import { CellErrors, isErrorCode, registerFunctions } from "./grid-functions";
import { compareWithoutIndex } from "./comparison-index";
import { readTyped } from "./typed";
import { freshWorkbookId, workbookOf } from "./grid-workbook";
import { wordsOfError } from "../screen/error-words";
import type { CallError, CellValue, FunctionHost } from "../screen/host";
import { sameSpills, type Spills } from "./same-spills";
import { typedKey, type CellPlace, type SheetValues, type ShownCell } from "./sheet-values";
import type { FRange } from "@univerjs/preset-sheets-core";
import {
  CELL_INVERTED_INDEX_CACHE,
  CalculationMode,
  CellValueType,
  FormulaDataModel,
  FUniver,
  IActiveDirtyManagerService,
  ICommandService,
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

/** Results that fill cells may feed others that do so; more rounds than sheets have such stages. */
const MOST_ROUNDS = 20;

export interface GridOptions {
  readonly container: HTMLElement;
  readonly pages: readonly Page[];
  /** Values typed before the grid was there. */
  readonly typed: ReadonlyMap<string, CellValue>;
  readonly reference: Reference;
  readonly host: FunctionHost;
  readonly dark: boolean;
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
  private readonly writtenListeners: ((key: string, value: CellValue) => void)[] = [];
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
    compareWithoutIndex(CELL_INVERTED_INDEX_CACHE);
    this.univer = new Univer({
      locale: LocaleType.EN_US,
      locales: { [LocaleType.EN_US]: enUS },
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
      workbookOf(options.pages, {
        typed: options.typed,
        namespace: options.reference.namespace,
        id: this.id,
        freezes: container.clientHeight > ROOM_TO_FREEZE && container.clientWidth > ROOM_TO_FREEZE,
      }),
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

  formula({ page, row, column }: CellPlace): string {
    return this.sheet(page).getRange(row, column).getFormula();
  }

  write({ page, row, column }: CellPlace, value: CellValue): void {
    this.sheet(page)
      .getRange(row, column)
      .setValue(value ?? "");
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

  /** Called for every value typed, in the grid or beside it. */
  onWritten(listener: (key: string, value: CellValue) => void): void {
    this.writtenListeners.push(listener);
  }

  setDark(dark: boolean): void {
    this.api.toggleDarkMode(dark);
  }

  /** What the library still had under way may report later; then nobody listens. */
  dispose(): void {
    window.clearTimeout(this.pending);
    for (const listeners of [
      this.settled,
      this.selected,
      this.pageListeners,
      this.writtenListeners,
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
    this.api.getFormula().calculationResultApplied(() => this.rest());
    this.api.addEvent(this.api.Event.SheetValueChanged, ({ effectedRanges }) =>
      this.tellWritten(effectedRanges),
    );
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

  private tellWritten(ranges: readonly FRange[]): void {
    if (this.disposed) return;
    for (const range of ranges) {
      const page = range.getSheetName();
      for (let row = range.getRow(); row <= range.getLastRow(); row++) {
        for (let column = range.getColumn(); column <= range.getLastColumn(); column++) {
          const place = { page, row, column };
          if (this.formula(place) !== "") continue;
          const key = typedKey(page, writeAddress(place));
          for (const listener of this.writtenListeners) listener(key, this.value(place));
        }
      }
    }
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
        return Object.keys(found).length === 0 ? found : { ...found, forceCalculation: true };
      },
    });
  }

  /** Computes again until no cell that a formula elsewhere fills changes; then tells. */
  private rest(): void {
    if (this.disposed) return;
    const injector = this.univer.__getInjector();
    const spills = structuredClone(
      injector.get(FormulaDataModel).getArrayFormulaCellData()[this.id] ?? {},
    ) as Spills;
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
    this.pending = window.setTimeout(() => this.settled.forEach((listener) => listener()), 20);
  }
}

/**
 * The library's canvases jump the queue of the Tab key, and some of its controls have no name. Put
 * right what can be from outside.
 */
function mendMarkup(container: HTMLElement): void {
  for (const canvas of container.querySelectorAll("canvas"))
    canvas.tabIndex = canvas.width > 0 ? 0 : -1;
  container.querySelector('input[type="text"]')?.setAttribute("aria-label", "Address of the cell");
  const [add, list] = container.querySelectorAll('[data-u-comp="sheet-bar-append-button"]');
  add?.setAttribute("aria-label", "Add a page");
  list?.setAttribute("aria-label", "All pages");
}
