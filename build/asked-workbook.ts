import { isErrorCode, wordsOfError } from "../src/screen/error-words";
import { readRange, writeAddress } from "../src/sheets/kit/address";
import { causesFirst } from "../src/sheets/kit/causes";
import type { Page, SheetCell } from "../src/sheets/kit/definition";
import { faultOf } from "../src/sheets/kit/limits";
import { type LinkedCell, linkedCells } from "../src/sheets/kit/precedents";
import type { Value, WorkbookEngine } from "./workbook-engine";

/** What an input is set to: null for a blank; rows for a range, of which the first ones may be given. */
export type Setting = Value | readonly (readonly Value[])[];

export interface Check {
  readonly name: string;
  readonly ok: boolean;
  readonly text: string;
}

export interface CellError {
  readonly cell: string;
  /** As the cell shows it; "limits" for an input outside what it allows. */
  readonly code: string;
  readonly message: string;
  /** The cell that this error comes from, where it is not the cause itself. */
  readonly follows?: string;
}

export interface Input {
  /** Name of the cell or range; its place where it has none. */
  readonly name: string;
  readonly place: string;
  readonly label: string;
  readonly value: Value | Value[][];
}

/** What the user asked for cannot be: no such workbook, input or value. */
export class Misuse extends Error {}

/** A ready-made sheet, open to be asked what it answers to other inputs. */
export interface OpenWorkbook {
  readonly inputs: readonly Input[];
  /** The definition's own inputs with these in place of theirs; what was set before is forgotten. */
  set(settings: Readonly<Record<string, Setting>>): Promise<void>;
  /** The sentences at the top, in order. */
  answers(): string[];
  checks(): Check[];
  /** Of every defined name: a value, or rows of values. An error is its code. */
  values(): Record<string, Value | Value[][]>;
  /** Causes before what follows from them. */
  errors(): CellError[];
  close(): void;
}

function isRows(setting: Setting): setting is readonly (readonly Value[])[] {
  return Array.isArray(setting);
}

interface Named {
  readonly name: string;
  readonly page: number;
  readonly rows: readonly (readonly { readonly row: number; readonly column: number }[])[];
}

/** The grid's engine keeps what it has read of a formula for one workbook alone: one is live. */
let live: AskedWorkbook | undefined;

export class AskedWorkbook implements OpenWorkbook {
  readonly inputs: readonly Input[];
  private readonly cells: readonly LinkedCell[];
  private readonly at: ReadonlyMap<string, LinkedCell>;
  private readonly names: readonly Named[];
  private engine: WorkbookEngine | undefined;
  private typed: ReadonlyMap<LinkedCell, Value> = new Map();

  constructor(
    private readonly pages: readonly Page[],
    private readonly openEngine: (pages: readonly Page[]) => Promise<WorkbookEngine>,
  ) {
    this.cells = linkedCells(pages);
    this.at = new Map(this.cells.map((linked) => [linked.place, linked]));
    this.names = namesOf(pages);
    this.inputs = this.findInputs();
  }

  async set(settings: Readonly<Record<string, Setting>>): Promise<void> {
    if (live !== this || this.engine === undefined) {
      live?.rest();
      // The one that is live is known by itself.
      // eslint-disable-next-line @typescript-eslint/no-this-alias
      live = this;
      this.engine = await this.openEngine(this.pages);
      this.typed = new Map();
    }
    const typed = new Map(
      Object.entries(settings).flatMap(([name, setting]) => this.readSetting(name, setting)),
    );
    const restored = [...this.typed.keys()].filter((linked) => !typed.has(linked));
    this.typed = typed;
    const contents = [
      ...restored.map((linked) => ({ place: linked, content: linked.cell })),
      ...[...typed].map(([linked, value]) => ({
        place: linked,
        content: value === null ? {} : { value },
      })),
    ];
    if (contents.length > 0) await this.engine.put(contents);
  }

  answers(): string[] {
    return this.cells
      .filter(({ cell }) => cell.role === "answer")
      .map((linked) => String(this.read(linked) ?? ""));
  }

  checks(): Check[] {
    return this.cells
      .filter(({ cell }) => cell.role === "check")
      .map((linked) => {
        const value = this.read(linked);
        const message = isErrorCode(value) ? ` ${this.messageOf(linked, value)}` : "";
        return {
          name: linked.cell.label ?? this.wordsBeside(linked),
          ok: value === "OK",
          text: String(value ?? "") + message,
        };
      });
  }

  values(): Record<string, Value | Value[][]> {
    return Object.fromEntries(
      this.names.map(({ name, page, rows }) => {
        const values = rows.map((row) => row.map((place) => this.read({ page, ...place })));
        return [name, values.length === 1 && values[0].length === 1 ? values[0][0] : values];
      }),
    );
  }

  errors(): CellError[] {
    const faults = this.faults();
    const wrong = new Map<LinkedCell, string>();
    for (const linked of this.cells) {
      if (linked.cell.formula === undefined || this.typed.has(linked)) continue;
      const code = this.firstError(linked);
      if (code !== undefined) wrong.set(linked, code);
    }
    const all = new Set([...faults.keys(), ...wrong.keys()]);
    return causesFirst([...all]).map(({ linked, follows }) => {
      const cell = linked.place;
      const code = wrong.get(linked);
      const fault = faults.get(linked);
      if (fault !== undefined || code === undefined)
        return { cell, code: "limits", message: fault ?? "" };
      if (follows === undefined) return { cell, code, message: this.messageOf(linked, code) };
      const message = this.engine?.message(linked) ?? `comes from ${follows.place}`;
      return { cell, code, message, follows: follows.place };
    });
  }

  close(): void {
    if (live === this) live = undefined;
    this.rest();
  }

  private rest(): void {
    this.engine?.close();
    this.engine = undefined;
  }

  private read(place: { page: number; row: number; column: number }): Value {
    if (this.engine === undefined) throw new Error("set inputs before the workbook is read");
    return this.engine.value(place);
  }

  private messageOf(linked: LinkedCell, code: string): string {
    return this.engine?.message(linked) ?? wordsOfError(code);
  }

  /** In the cell or in what its formula fills. */
  private firstError({ page, row, column, cell }: LinkedCell): string | undefined {
    const { reserved = 1, columns = 1 } = cell.spill ?? {};
    for (let down = 0; down < reserved; down++) {
      for (let across = 0; across < columns; across++) {
        const value = this.read({ page, row: row + down, column: column + across });
        if (isErrorCode(value)) return value;
      }
    }
    return undefined;
  }

  /** Inputs outside what they allow, with the sentence that says so. */
  private faults(): Map<LinkedCell, string> {
    const found = new Map<LinkedCell, string>();
    for (const linked of this.cells) {
      const { cell } = linked;
      if (cell.role !== "input" || cell.allowed === undefined) continue;
      const label = cell.label ?? this.wordsBeside(linked);
      const fault = faultOf(label, cell.allowed, this.read(linked), (name) => {
        const other = this.cells.find((one) => one.cell.name === name);
        return other === undefined ? null : this.read(other);
      });
      if (fault !== undefined) found.set(linked, fault);
    }
    return found;
  }

  private readSetting(name: string, setting: Setting): [LinkedCell, Value][] {
    const target = this.target(name);
    const rows = isRows(setting) ? setting : [[setting]];
    const [first] = target.rows;
    const isRange = target.rows.length > 1 || first.length > 1;
    const size = `${target.rows.length} by ${first.length} cells`;
    if (isRange && !isRows(setting))
      throw new Misuse(`${target.name} is ${size}: give rows, such as ${target.name}=[[1],[2]]`);
    if (rows.length > target.rows.length || rows.some((row) => row.length > first.length))
      throw new Misuse(`${target.name} is ${size}; got ${rows.length} by ${rows[0].length}`);
    // Of a table of names and prices the prices alone may be given.
    const toFill = first.flatMap((_, i) =>
      target.rows.every((row) => this.isInput(target.page, row[i])) ? [i] : [],
    );
    return rows.flatMap((row, down) =>
      row.flatMap((value, across): [LinkedCell, Value][] => {
        const column = row.length === toFill.length ? toFill[across] : across;
        const place = this.placeOf(target.page, target.rows[down][column]);
        const linked = this.at.get(place);
        if (linked?.cell.role === "input") return [[linked, value]];
        // A name in front of a price may be given with it, as it stands.
        const stands = linked !== undefined && this.stands(linked, value);
        if (isRange && stands) return [];
        throw new Misuse(
          `${target.name} is no input: ${place} is worked out by the workbook. ${this.inputWords()}`,
        );
      }),
    );
  }

  private stands(linked: LinkedCell, value: Value): boolean {
    return this.engine !== undefined && this.read(linked) === value;
  }

  private isInput(page: number, place: { row: number; column: number }): boolean {
    return this.at.get(this.placeOf(page, place))?.cell.role === "input";
  }

  private target(name: string): Named {
    const found = this.names.find((one) => one.name.toUpperCase() === name.toUpperCase());
    if (found !== undefined) return found;
    const linked = this.at.get(name);
    if (linked === undefined) throw new Misuse(`there is no name "${name}". ${this.inputWords()}`);
    return { name, page: linked.page, rows: [[linked]] };
  }

  private inputWords(): string {
    return `Inputs are ${this.inputs.map(({ name }) => name).join(", ")}`;
  }

  private placeOf(page: number, place: { row: number; column: number }): string {
    return `${this.pages[page].name}!${writeAddress(place)}`;
  }

  private findInputs(): Input[] {
    const valueAt = (page: number, place: { row: number; column: number }): Value => {
      const cell = this.at.get(this.placeOf(page, place))?.cell;
      return cell?.value ?? cell?.formula ?? null;
    };
    const named = this.names.filter(({ page, rows }) =>
      rows.some((row) => row.some((place) => this.isInput(page, place))),
    );
    const covered = new Set(
      named.flatMap(({ page, rows }) => rows.flat().map((place) => this.placeOf(page, place))),
    );
    return [
      ...named.map(({ name, page, rows }) => {
        const values = rows.map((row) => row.map((place) => valueAt(page, place)));
        const first = this.at.get(this.placeOf(page, rows[0][0])) as LinkedCell;
        const single = rows.length === 1 && rows[0].length === 1;
        return {
          name,
          place: first.place,
          label: first.cell.label ?? this.wordsBeside(first),
          value: single ? values[0][0] : values,
        };
      }),
      ...this.cells
        .filter(({ cell, place }) => cell.role === "input" && !covered.has(place))
        .map((linked) => ({
          name: linked.place,
          place: linked.place,
          label: linked.cell.label ?? this.wordsBeside(linked),
          value: linked.cell.value ?? linked.cell.formula ?? null,
        })),
    ];
  }

  /** The words to the left of a cell, where it has no label of its own. */
  private wordsBeside({ page, row, column, place }: LinkedCell): string {
    const left = this.cells.filter(
      (other) =>
        other.page === page &&
        other.row === row &&
        other.column < column &&
        (other.cell.role === "label" || other.cell.role === "header"),
    );
    const words = left.at(-1)?.cell as SheetCell | undefined;
    return typeof words?.value === "string" ? words.value : place;
  }
}

function namesOf(pages: readonly Page[]): Named[] {
  return pages.flatMap((page, index) =>
    [
      ...page.cells.flatMap(({ name, at }) => (name === undefined ? [] : [{ name, range: at }])),
      ...(page.names ?? []),
    ].map(({ name, range }) => {
      const block = readRange(range);
      return {
        name,
        page: index,
        rows: Array.from({ length: block.rows }, (_, down) =>
          Array.from({ length: block.columns }, (__, across) => ({
            row: block.row + down,
            column: block.column + across,
          })),
        ),
      };
    }),
  );
}
