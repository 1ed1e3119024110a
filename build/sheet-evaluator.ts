import { ICommandService, LocaleType, LogLevel, Univer, UniverInstanceType } from "@univerjs/core";
import type { ICellData, IWorkbookData, IWorksheetData, Workbook } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  IFunctionService,
  NullValueObject,
  NumberValueObject,
  SetFormulaCalculationResultMutation,
  StringValueObject,
  UniverFormulaEnginePlugin,
} from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { catalogue } from "../src/catalogue";
import { readAddress } from "../src/sheets/kit/address";
import type { Page } from "../src/sheets/kit/definition";
import { toScreen } from "../src/formula-text/dialect";
import { type Hosted, loadedHost } from "./stand-in-host";

export type Value = string | number | boolean | null;

/** What every cell of a ready-made sheet shows, computed without a browser. */
export interface EvaluatedSheet {
  /** Value of a cell, spilled cells included; null for an empty one. */
  value(page: string, row: number, column: number): Value;
  /** Cells that show an error, with the message of our own functions where there is one. */
  readonly errors: readonly string[];
}

/** The engine keeps parsed formulas by the workbook's id, for as long as the process runs. */
let evaluations = 0;
/** Room for spills that grow, as a real worksheet has. */
const FREE_ROWS = 200;

const errorCodes: ReadonlySet<unknown> = new Set(Object.values(ErrorType));
const hosted = loadedHost();

/** Evaluates with the formula engine of the trial page's grid, so that both show the same numbers. */
export async function evaluate(pages: readonly Page[], namespace: string): Promise<EvaluatedSheet> {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.ERROR,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    initialFormulaComputing: CalculationMode.FORCED,
  });
  const messages = new Map<string, string>();
  const id = `workbook${++evaluations}`;
  const book = univer.createUnit<IWorkbookData, Workbook>(
    UniverInstanceType.UNIVER_SHEET,
    workbook(id, pages, namespace),
  );
  const injector = univer.__getInjector();
  // In the same tick as the workbook, or its formulas are read before their functions are known.
  injector
    .get(IFunctionService)
    .registerExecutors(
      ...catalogue.map((functionId) => new SheetFunction(functionId, namespace, messages)),
    );
  await new Promise<void>((resolve) => {
    injector.get(ICommandService).onCommandExecuted((command) => {
      if (command.id === SetFormulaCalculationResultMutation.id) resolve();
    });
  });
  const spilled = structuredClone(
    injector.get(FormulaDataModel).getArrayFormulaCellData()?.[id] ?? {},
  );
  const { sheets } = structuredClone(book.getSnapshot());
  // The engine's caches outlive a workbook; only this empties them before the next one.
  univer.dispose();
  const read = (index: number, row: number, column: number): Value => {
    const sheet = sheetId(index);
    const cell = spilled[sheet]?.[row]?.[column] ?? sheets[sheet].cellData?.[row]?.[column];
    // Truth values are kept as 0 and 1, and marked by their type.
    return cell?.t === BOOLEAN ? cell.v === 1 : ((cell?.v ?? null) as Value);
  };
  return { value: reader(pages, read), errors: errorsOf(pages, read, messages) };
}

const BOOLEAN = 3;

type Read = (index: number, row: number, column: number) => Value;

function reader(pages: readonly Page[], read: Read): EvaluatedSheet["value"] {
  const index = new Map(pages.map((page, i) => [page.name, i]));
  return (page, row, column) => {
    const i = index.get(page);
    if (i === undefined) throw new Error(`there is no page ${page}`);
    return read(i, row, column);
  };
}

function errorsOf(pages: readonly Page[], read: Read, messages: Map<string, string>): string[] {
  return pages.flatMap((page, i) =>
    page.cells.flatMap(({ at, formula, spill }) => {
      if (formula === undefined) return [];
      const { row, column } = readAddress(at);
      const value = read(i, row, column);
      const place = `${page.name}!${at}`;
      if (value === null || errorCodes.has(value)) {
        const message = messages.get(key(sheetId(i), row, column)) ?? "";
        return [`${place} shows ${String(value)}: ${formula} ${message}`.trim()];
      }
      if (spill === undefined) return [];
      const { rows, columns } = spill;
      const fills =
        read(i, row + rows - 1, column + columns - 1) !== null &&
        read(i, row + rows, column) === null &&
        read(i, row, column + columns) === null;
      return fills
        ? []
        : [`${place} does not fill ${rows} rows and ${columns} columns: ${formula}`];
    }),
  );
}

function sheetId(index: number): string {
  return `page${index}`;
}

function key(sheet: string, row: number, column: number): string {
  return `${sheet}!${row},${column}`;
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
  for (const { at, formula, value, spill } of page.cells) {
    const { row, column } = readAddress(at);
    rows = Math.max(rows, row + (spill?.reserved ?? 1));
    const cells = (cellData[row] ??= {});
    if (formula !== undefined) cells[column] = { f: toScreen(formula, namespace) };
    else if (value !== undefined) cells[column] = { v: value };
  }
  return {
    id: sheetId(index),
    name: page.name,
    cellData,
    rowCount: rows + FREE_ROWS,
    columnCount: page.widths.length + 20,
  };
}

/** One of our functions as the formula engine calls it. */
class SheetFunction extends BaseFunction {
  override minParams = 0;
  override maxParams = 30;
  private readonly run: Hosted;

  constructor(
    id: string,
    namespace: string,
    private readonly messages: Map<string, string>,
  ) {
    super(`${namespace}.${id.replace(/_/g, ".")}`);
    const run = hosted.functions.get(id);
    if (run === undefined) throw new Error(`${id} is not associated`);
    this.run = run;
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const cells = given.map(readArgument);
    // As in the host, a function never sees an error value: it passes through.
    const wrong = cells.flat(2).find((cell) => errorCodes.has(cell));
    if (wrong !== undefined) return ErrorValueObject.create(wrong as ErrorType);
    try {
      return writeResult(this.run(...cells));
    } catch (error) {
      const { code, message } = error as { code: ErrorType; message: string };
      this.messages.set(key(this.subUnitId ?? "", this.row, this.column), message);
      return ErrorValueObject.create(code);
    }
  }
}

function readArgument(given: BaseValueObject): Value | Value[][] {
  if (given.isArray()) return (given as ArrayValueObject).toValue() as Value[][];
  return given.isNull() ? null : (given.getValue() as Value);
}

function writeResult(value: unknown): BaseValueObject {
  if (!Array.isArray(value)) return writeValue(value);
  const rows = value as unknown[][];
  return ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map(writeValue)),
    rowCount: rows.length,
    columnCount: rows[0].length,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function writeValue(value: unknown): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "string") return StringValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  return NullValueObject.create();
}
