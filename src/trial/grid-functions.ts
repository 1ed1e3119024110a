import {
  ArrayValueObject,
  BaseFunction,
  BooleanNumber,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  FunctionType,
  IDescriptionService,
  IFunctionService,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type IFunctionInfo,
} from "./univer";
import type { Injector } from "@univerjs/core";
import type { ArgumentHelp, FunctionHelp, Reference } from "../reference";
import type { Argument, CallError, CellValue, FunctionHost } from "../screen/host";
import type { CellPlace } from "./sheet-values";

/** The last error of each cell, for the grid itself shows the code alone. */
export class CellErrors {
  private readonly errors = new Map<string, { readonly of: string; readonly error: CallError }>();

  note(place: CellPlace, of: string, error: CallError): void {
    this.errors.set(key(place), { of, error });
  }

  /** A function that succeeds takes back its own error, not that of another one in the cell. */
  clear(place: CellPlace, of: string): void {
    if (this.errors.get(key(place))?.of === of) this.errors.delete(key(place));
  }

  forget(place: CellPlace): void {
    this.errors.delete(key(place));
  }

  read(place: CellPlace): CallError | undefined {
    return this.errors.get(key(place))?.error;
  }
}

function key({ page, row, column }: CellPlace): string {
  return `${page}!${row},${column}`;
}

/**
 * Registers every function below the grid's public face, which would turn an omitted argument into
 * a 0. To be called after the workbook exists and in the same tick, or its formulas are read before
 * their functions are known.
 */
export function registerFunctions(
  injector: Injector,
  reference: Reference,
  host: FunctionHost,
  errors: CellErrors,
  pageName: (sheetId: string) => string,
): void {
  const functions = injector.get(IFunctionService);
  const descriptions = injector.get(IDescriptionService);
  functions.registerExecutors(
    ...reference.functions.map(
      (help) =>
        new SheetFunction(`${reference.namespace}.${help.name}`, help, host, errors, pageName),
    ),
  );
  descriptions.registerDescriptions(
    reference.functions.map((help) => describe(reference.namespace, help)),
  );
}

function describe(namespace: string, help: FunctionHelp): IFunctionInfo {
  return {
    functionName: `${namespace}.${help.name}`,
    functionType: FunctionType.User,
    description: [help.short, help.remarks].filter((text) => text !== "").join(" "),
    abstract: help.short,
    functionParameter: help.arguments.map((argument) => ({
      name: argument.name,
      detail: argument.help,
      example: argument.choices?.[0] === undefined ? "" : `"${argument.choices[0].value}"`,
      require: argument.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  };
}

class SheetFunction extends BaseFunction {
  override minParams: number;
  override maxParams: number;

  constructor(
    name: string,
    private readonly help: FunctionHelp,
    private readonly host: FunctionHost,
    private readonly errors: CellErrors,
    private readonly pageName: (sheetId: string) => string,
  ) {
    super(name);
    this.minParams = help.arguments.filter((argument) => !argument.optional).length;
    this.maxParams = help.arguments.length;
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const cells: Argument[] = [];
    for (const [index, argument] of this.help.arguments.entries()) {
      const read = readArgument(argument, given[index]);
      if ("error" in read) return this.fail(read.error);
      cells.push(read.cells);
    }
    const outcome = this.host.call(this.help.id, ...cells);
    if (outcome.error !== undefined) return this.fail(outcome.error);
    const place = this.place();
    if (place !== undefined) this.errors.clear(place, this.help.name);
    return writeResult(outcome.value);
  }

  private fail(error: CallError): BaseValueObject {
    const place = this.place();
    if (place !== undefined) this.errors.note(place, this.help.name, error);
    return ErrorValueObject.create(error.code as ErrorType);
  }

  private place(): CellPlace | undefined {
    if (this.subUnitId === null || this.subUnitId === undefined) return undefined;
    return { page: this.pageName(this.subUnitId), row: this.row, column: this.column };
  }
}

type ReadArgument = { readonly cells: Argument } | { readonly error: CallError };

/**
 * A reference to one cell arrives as a table of one. As in the host, a function never sees an error
 * value: it passes through.
 */
function readArgument(argument: ArgumentHelp, given: BaseValueObject | undefined): ReadArgument {
  if (given === undefined || given.isNull()) return { cells: null };
  if (given.isError()) return passedOn(argument, String(given.getValue()));
  if (!given.isArray()) {
    const value = given.getValue() as CellValue;
    return { cells: argument.range ? [[value]] : value };
  }
  const table = (given as ArrayValueObject).toValue() as CellValue[][];
  const wrong = table.flat().find(isErrorCode);
  if (wrong !== undefined) return passedOn(argument, String(wrong));
  if (argument.range) return { cells: table };
  if (table.length === 1 && table[0].length === 1) return { cells: table[0][0] };
  return {
    error: {
      code: ErrorType.VALUE,
      message: `${argument.name} takes one cell; got ${table.length} × ${table[0]?.length ?? 0} cells`,
    },
  };
}

function passedOn(argument: ArgumentHelp, code: string): ReadArgument {
  return {
    error: {
      code,
      message: `${argument.name} comes from a cell that shows ${code}: fix that one first`,
    },
  };
}

const errorCodes: ReadonlySet<unknown> = new Set(Object.values(ErrorType));

export function isErrorCode(value: unknown): boolean {
  return typeof value === "string" && errorCodes.has(value);
}

function writeResult(value: CellValue | CellValue[][]): BaseValueObject {
  if (!Array.isArray(value)) return writeValue(value);
  return ArrayValueObject.create({
    calculateValueList: value.map((row) => row.map(writeValue)),
    rowCount: value.length,
    columnCount: value[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function writeValue(value: CellValue): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "string") return StringValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  return NullValueObject.create();
}
