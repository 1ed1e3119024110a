import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { Hosted } from "../src/screen/stand-in-host";
import { loadedHost } from "./loaded-host";

type Cell = string | number | boolean | null;

const hosted = loadedHost();
const errorCodes: ReadonlySet<unknown> = new Set(Object.values(ErrorType));

/** The sentences of our functions' errors, by the cell whose formula called them. */
export class Messages {
  private readonly messages = new Map<string, { readonly of: string; readonly message: string }>();

  note(cell: string, of: string, message: string): void {
    this.messages.set(cell, { of, message });
  }

  /** A function that succeeds takes back its own error, not that of another one in the cell. */
  clear(cell: string, of: string): void {
    if (this.messages.get(cell)?.of === of) this.messages.delete(cell);
  }

  of(sheet: string, row: number, column: number): string | undefined {
    return this.messages.get(key(sheet, row, column))?.message;
  }
}

function key(sheet: string, row: number, column: number): string {
  return `${sheet}!${row},${column}`;
}

/** One of our functions as the formula engine calls it. */
export class SheetFunction extends BaseFunction {
  override minParams = 0;
  override maxParams = 30;
  private readonly run: Hosted;

  constructor(
    private readonly id: string,
    namespace: string,
    private readonly messages: Messages,
  ) {
    super(`${namespace}.${id.replace(/_/g, ".")}`);
    const run = hosted.functions.get(id);
    if (run === undefined) throw new Error(`${id} is not associated`);
    this.run = run;
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const cell = key(this.subUnitId ?? "", this.row, this.column);
    const cells = given.map(readArgument);
    // As in the host, a function never sees an error value: it passes through.
    const wrong = cells.flat(2).find((part) => errorCodes.has(part));
    this.messages.clear(cell, this.id);
    if (wrong !== undefined) return ErrorValueObject.create(wrong as ErrorType);
    try {
      return writeResult(this.run(...cells));
    } catch (error) {
      const { code, message } = error as { code: ErrorType; message: string };
      this.messages.note(cell, this.id, message);
      return ErrorValueObject.create(code);
    }
  }
}

function readArgument(given: BaseValueObject): Cell | Cell[][] {
  if (given.isArray()) return (given as ArrayValueObject).toValue() as Cell[][];
  return given.isNull() ? null : (given.getValue() as Cell);
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
