import { ICommandService, LocaleType, LogLevel, Univer, UniverInstanceType } from "@univerjs/core";
import type { ICellData, IWorkbookData, IWorksheetData, Workbook } from "@univerjs/core";
import {
  CELL_INVERTED_INDEX_CACHE,
  FormulaDataModel,
  IFunctionService,
  SetFormulaCalculationNotificationMutation,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  UniverFormulaEnginePlugin,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation, UniverSheetsPlugin } from "@univerjs/sheets";
import { catalogue } from "../src/catalogue";
import { toScreen } from "../src/formula-text/dialect";
import { readAddress } from "../src/sheets/kit/address";
import type { Page, SheetCell } from "../src/sheets/kit/definition";
import { compareWithoutIndex } from "../src/trial/comparison-index";
import { sameSpills, type Spills } from "../src/trial/same-spills";
import { Messages, SheetFunction } from "./engine-functions";
import type { NewContent, Place, Value, WorkbookEngine } from "./workbook-engine";

const BOOLEAN = 3;
/** Room for spills that grow, as a real worksheet has. */
const FREE_ROWS = 200;
const FREE_COLUMNS = 20;
/** Results that fill cells may feed others that do so; more rounds than sheets have such stages. */
const MOST_ROUNDS = 20;

/** The engine keeps parsed formulas by the workbook's id, for as long as the process runs. */
let opened = 0;

/** The pages of a ready-made sheet in the formula engine of the trial page's grid, without a browser. */
export class SheetEngine implements WorkbookEngine {
  private readonly id = `workbook${++opened}.`;
  private readonly univer: Univer;
  private readonly book: Workbook;
  private readonly messages = new Messages();
  private readonly commands: ICommandService;
  private readonly spills: FormulaDataModel;
  /** What cells show while nothing is being computed. */
  private shown: (place: Place) => Value = () => null;

  private constructor(
    pages: readonly Page[],
    private readonly namespace: string,
  ) {
    compareWithoutIndex(CELL_INVERTED_INDEX_CACHE);
    this.univer = new Univer({
      locale: LocaleType.EN_US,
      locales: { [LocaleType.EN_US]: {} },
      logLevel: LogLevel.ERROR,
    });
    this.univer.registerPlugin(UniverFormulaEnginePlugin);
    this.univer.registerPlugin(UniverSheetsPlugin);
    this.book = this.univer.createUnit<IWorkbookData, Workbook>(
      UniverInstanceType.UNIVER_SHEET,
      workbook(this.id, pages, namespace),
    );
    const injector = this.univer.__getInjector();
    // In the same tick as the workbook, or its formulas are read before their functions are known.
    injector
      .get(IFunctionService)
      .registerExecutors(
        ...catalogue.map((functionId) => new SheetFunction(functionId, namespace, this.messages)),
      );
    this.commands = injector.get(ICommandService);
    this.spills = injector.get(FormulaDataModel);
  }

  static async open(pages: readonly Page[], namespace: string): Promise<SheetEngine> {
    const engine = new SheetEngine(pages, namespace);
    await engine.compute();
    return engine;
  }

  value(place: Place): Value {
    return this.shown(place);
  }

  message({ page, row, column }: Place): string | undefined {
    return this.messages.of(sheetId(page), row, column);
  }

  async put(contents: readonly NewContent[]): Promise<void> {
    for (const { place, content } of contents) {
      this.commands.syncExecuteCommand(
        SetRangeValuesMutation.id,
        {
          unitId: this.id,
          subUnitId: sheetId(place.page),
          cellValue: {
            [place.row]: { [place.column]: contentOf(content, this.namespace) },
          },
        },
        { onlyLocal: true },
      );
    }
    await this.compute();
  }

  close(): void {
    // The engine's caches outlive a workbook; only this empties them before the next one.
    this.univer.dispose();
  }

  /** Computes until no cell that a formula elsewhere fills changes any more. */
  private async compute(): Promise<void> {
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const before = this.spilled();
      await this.computeOnce();
      if (sameSpills(before, this.spilled())) {
        this.read();
        return;
      }
    }
    throw new Error("the workbook does not come to rest");
  }

  private async computeOnce(): Promise<void> {
    await new Promise<void>((resolve) => {
      const listening = this.commands.onCommandExecuted((command) => {
        if (command.id !== SetFormulaCalculationNotificationMutation.id) return;
        const { functionsExecutedState } =
          command.params as ISetFormulaCalculationNotificationMutation;
        if (functionsExecutedState === undefined) return;
        listening.dispose();
        resolve();
      });
      // All of it: what the engine itself takes for unchanged may hold an old value, behind INDEX.
      void this.commands.executeCommand(SetFormulaCalculationStartMutation.id, ALL_DIRTY, {
        onlyLocal: true,
      });
    });
  }

  private spilled(): Spills {
    return structuredClone(this.spills.getArrayFormulaCellData()[this.id] ?? {}) as Spills;
  }

  private read(): void {
    const spilled = this.spilled();
    const { sheets } = this.book.getSnapshot();
    this.shown = ({ page, row, column }) => {
      const sheet = sheetId(page);
      const cell = spilled[sheet]?.[row]?.[column] ?? sheets[sheet].cellData?.[row]?.[column];
      // Truth values are kept as 0 and 1, and marked by their type.
      return cell?.t === BOOLEAN ? cell.v === 1 : ((cell?.v ?? null) as Value);
    };
  }
}

const ALL_DIRTY = {
  forceCalculation: true,
  dirtyRanges: [],
  dirtyNameMap: {},
  dirtyDefinedNameMap: {},
  dirtySuperTableMap: {},
  dirtyUnitFeatureMap: {},
  dirtyUnitOtherFormulaMap: {},
  clearDependencyTreeCache: {},
};

function sheetId(page: number): string {
  return `page${page}`;
}

/** A cell of a definition as the engine takes it. */
function contentOf(
  { formula, value }: Pick<SheetCell, "formula" | "value">,
  namespace: string,
): ICellData {
  if (formula !== undefined) return { f: toScreen(formula, namespace), v: null };
  // A leading apostrophe marks text that looks like a formula; it is not part of it.
  if (typeof value === "string") return { v: value.replace(/^'/, ""), t: 1, f: null };
  return { v: value ?? null, f: null };
}

function workbook(id: string, pages: readonly Page[], namespace: string): Partial<IWorkbookData> {
  const sheets = Object.fromEntries(
    pages.map((page, i) => [sheetId(i), worksheet(i, page, namespace)]),
  );
  const names = pages.flatMap((page) => namesOf(page, namespace));
  return {
    id,
    name: id,
    locale: LocaleType.EN_US,
    sheetOrder: Object.keys(sheets),
    sheets,
    styles: {},
    resources: [
      {
        name: "SHEET_DEFINED_NAME_PLUGIN",
        data: JSON.stringify(
          Object.fromEntries(
            names.map(([name, meaning]) => [name, { id: name, name, formulaOrRefString: meaning }]),
          ),
        ),
      },
    ],
  };
}

/** Names of cells, of ranges and of functions, and what each stands for. */
function namesOf(page: Page, namespace: string): [string, string][] {
  const sheet = `'${page.name.replace(/'/g, "''")}'!`;
  const absolute = (range: string) => sheet + range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
  return [
    ...page.cells.flatMap(({ name, at }): [string, string][] =>
      name === undefined ? [] : [[name, absolute(at)]],
    ),
    ...(page.names ?? []).map(({ name, range }): [string, string] => [name, absolute(range)]),
    ...(page.functions ?? []).map(({ name, formula }): [string, string] => [
      name,
      toScreen(formula, namespace),
    ]),
  ];
}

function worksheet(index: number, page: Page, namespace: string): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  let rows = 0;
  for (const cell of page.cells) {
    const { row, column } = readAddress(cell.at);
    rows = Math.max(rows, row + (cell.spill?.reserved ?? 1));
    if (cell.formula === undefined && cell.value === undefined) continue;
    (cellData[row] ??= {})[column] = contentOf(cell, namespace);
  }
  return {
    id: sheetId(index),
    name: page.name,
    cellData,
    rowCount: rows + FREE_ROWS,
    columnCount: page.widths.length + FREE_COLUMNS,
  };
}
