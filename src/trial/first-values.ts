import { readAddress, readRange, writeAddress, type Block } from "../sheets/kit/address";
import type { Page, SheetCell } from "../sheets/kit/definition";
import { DEFAULT_NAMESPACE, toScreen } from "../formula-text/dialect";
import { readFormula, type Term } from "../formula-text/formula";
import type { Callables } from "../reference";
import type { Argument, CellValue, FunctionHost } from "../screen/host";
import { Beyond, type Cell, Fault, isTable, sound, type Table, type Value } from "./cell-values";
import { evaluate, type Surroundings } from "./formula-values";
import { type Content, isFormula, sameContent } from "./kept/changes";
import { type CellStep, type Step, Steps } from "./kept/steps";
import { typedKey, type CellPlace, type SheetValues, type ShownCell } from "./sheet-values";

/** Stands for an outcome while it is worked out; made once, for the trace of an error takes time. */
const UNDER_WAY = new Beyond();

/**
 * The values of a ready-made sheet, worked out without the grid: each when it is asked for, and
 * after a change only what reads the changed cell. What the ready-made sheets hold is all within it;
 * of what someone adds in the grid, what is beyond it is told as not worked out.
 */
export class FirstValues implements SheetValues {
  private readonly cells = new Map<string, SheetCell>();
  /** Cells that a formula elsewhere fills. */
  private readonly spilled = new Map<string, SheetCell>();
  private readonly owners = new Map<SheetCell, string>();
  private readonly names = new Map<string, { readonly page: string; readonly block: Block }>();
  private readonly lambdas = new Map<string, Term>();
  private readonly functions: ReadonlyMap<string, Callables["functions"][number]>;
  private readonly pageNames: ReadonlySet<string>;
  /** Outcomes by the formula's own cell. */
  private readonly computed = new Map<string, Value | Fault | Beyond>();
  /** Ranges that formulas read, by page and range. */
  private readonly blocks = new Map<string, Table | Beyond>();
  /** By cell, formula or range: the formulas and ranges that read it. */
  private readonly readers = new Map<string, Set<string>>();
  private reader: string | undefined;
  private readonly terms = new Map<string, Term>();
  private readonly around = new Map<string, Surroundings>();
  private readonly listeners: (() => void)[] = [];
  /** Formulas of the user's own. */
  private readonly own = new Map<string, SheetCell>();
  readonly steps = new Steps();

  constructor(
    private readonly pages: readonly Page[],
    readonly typed: Map<string, Content>,
    private readonly callables: Callables,
    private readonly host: FunctionHost,
  ) {
    this.functions = new Map(callables.functions.map((help) => [help.name, help]));
    this.pageNames = new Set(pages.map(({ name }) => name));
    for (const page of pages) this.take(page);
    for (const [at, content] of typed) this.takeOwn(at, content);
  }

  read(place: CellPlace): ShownCell {
    try {
      return { value: this.value(place) };
    } catch (thrown) {
      if (thrown instanceof Fault) return { value: thrown.error.code, error: thrown.error };
      if (thrown instanceof Beyond) return { value: null, isPending: true };
      throw thrown;
    }
  }

  /** Whether a cell has to be left to the grid. */
  leavesBlanks(): boolean {
    const isBeyond = (page: string, cell: SheetCell) => {
      if (cell.formula === undefined) return false;
      return this.read({ page, ...readAddress(cell.at) }).isPending === true;
    };
    return (
      this.pages.some((page) => page.cells.some((cell) => isBeyond(page.name, cell))) ||
      [...this.own].some(([at, cell]) => isBeyond(at.slice(0, at.lastIndexOf("!")), cell))
    );
  }

  write(place: CellPlace, value: CellValue): void {
    this.writeBlock(place, [[value]]);
  }

  writeBlock(place: CellPlace, rows: readonly (readonly CellValue[])[]): void {
    const step = this.stepTo(place, rows);
    if (step.length === 0) return;
    this.steps.add(step);
    this.carryOut(step);
  }

  /** As `writeBlock`, where the grid has the steps. */
  writeAlong(place: CellPlace, rows: readonly (readonly CellValue[])[]): void {
    const step = this.stepTo(place, rows);
    if (step.length > 0) this.carryOut(step);
  }

  private carryOut(step: Step): void {
    for (const { key: at, after } of step) this.put(at, after);
    this.tell();
  }

  private stepTo({ page, row, column }: CellPlace, rows: readonly (readonly CellValue[])[]): Step {
    return rows.flatMap((values, down) =>
      values.flatMap((value, across): CellStep[] => {
        const at = key(page, row + down, column + across);
        const before = this.typed.get(at);
        // The ready-made content typed again is no change of it.
        const after = this.isReadyMade(at, value) ? undefined : value;
        const isSame = before === after || sameContent(before, after);
        return isSame ? [] : [{ key: at, before, after }];
      }),
    );
  }

  /** All that differs from the ready-made sheet, as the grid tells it. */
  adopt(contents: ReadonlyMap<string, Content>): void {
    const changed = [...new Set([...this.typed.keys(), ...contents.keys()])].filter(
      (at) => !sameContent(this.typed.get(at), contents.get(at)),
    );
    if (changed.length === 0) return;
    for (const at of changed) this.put(at, contents.get(at));
    this.tell();
  }

  undo(): void {
    const step = this.steps.undo();
    if (step === undefined) return;
    for (const { key: at, before } of step) this.put(at, before);
    this.tell();
  }

  redo(): void {
    const step = this.steps.redo();
    if (step === undefined) return;
    for (const { key: at, after } of step) this.put(at, after);
    this.tell();
  }

  private isReadyMade(at: string, value: CellValue): boolean {
    const cell = this.cells.get(at);
    return cell?.formula === undefined && value === (cell === undefined ? null : plainValue(cell));
  }

  private put(at: string, content: Content | undefined): void {
    if (content === undefined) this.typed.delete(at);
    else this.typed.set(at, content);
    this.takeOwn(at, content);
    this.forget(at);
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }

  private takeOwn(at: string, content: Content | undefined): void {
    if (isFormula(content))
      this.own.set(at, {
        at: at.slice(at.lastIndexOf("!") + 1),
        role: "result",
        formula: content.formula,
      });
    else this.own.delete(at);
  }

  onSettled(listener: () => void): void {
    this.listeners.push(listener);
  }

  private take(page: Page): void {
    for (const cell of page.cells) {
      const { row, column } = readAddress(cell.at);
      this.cells.set(key(page.name, row, column), cell);
      if (cell.name !== undefined) this.name(cell.name, page.name, cell.at);
      if (cell.spill === undefined) continue;
      this.owners.set(cell, key(page.name, row, column));
      const { reserved, columns, formats } = cell.spill;
      for (let down = 0; down < reserved; down++)
        for (let across = 0; across < Math.max(columns, formats.length); across++)
          this.spilled.set(key(page.name, row + down, column + across), cell);
    }
    for (const { name, range } of page.names ?? []) this.name(name, page.name, range);
    for (const { name, formula } of page.functions ?? [])
      this.lambdas.set(name.toUpperCase(), readFormula(formula));
    this.around.set(page.name, this.surroundings(page.name));
  }

  private name(name: string, page: string, range: string): void {
    this.names.set(name.toUpperCase(), { page, block: readRange(range) });
  }

  private surroundings(page: string): Surroundings {
    return {
      range: (other, range) => this.block(other ?? page, readRange(range)),
      named: (name) => {
        const found = this.names.get(name.toUpperCase());
        if (found === undefined) throw new Beyond();
        return this.block(found.page, found.block);
      },
      lambdaNamed: (name) => this.lambdas.get(name),
      own: (name, given) =>
        name.startsWith(`${DEFAULT_NAMESPACE}.`)
          ? this.callOwn(name.slice(DEFAULT_NAMESPACE.length + 1), given())
          : undefined,
      formulaText: (other, range) => {
        const formula = this.cells.get(typedKey(other ?? page, range))?.formula;
        if (formula === undefined) throw new Beyond();
        return toScreen(formula, this.callables.namespace);
      },
    };
  }

  private value(place: CellPlace): CellValue {
    return sound(this.cell(key(place.page, place.row, place.column), place));
  }

  private cell(at: string, { page, row, column }: CellPlace): Cell {
    this.note(at);
    const own = this.own.get(at);
    if (own !== undefined) return this.firstOf(page, own);
    const typed = this.typed.get(at);
    if (typed !== undefined && !isFormula(typed)) return typed;
    const cell = this.cells.get(at);
    if (cell?.formula !== undefined) return this.firstOf(page, cell);
    if (cell !== undefined) return plainValue(cell);
    const owner = this.spilled.get(at);
    if (owner === undefined) return null;
    // An error stands in the first cell alone; the others are blank then.
    const table = this.outcome(page, owner);
    if (table instanceof Fault || !isTable(table)) return null;
    const first = readAddress(owner.at);
    return table[row - first.row]?.[column - first.column] ?? null;
  }

  private firstOf(page: string, cell: SheetCell): Cell {
    const value = this.outcome(page, cell);
    if (value instanceof Fault) return value;
    return (isTable(value) ? value[0]?.[0] : value) ?? null;
  }

  /** Throws what is beyond; a fault is given, for it may be one of many cells. */
  private outcome(page: string, cell: SheetCell): Value | Fault {
    const at = typedKey(page, cell.at);
    this.note(at);
    const known = this.computed.get(at);
    if (known instanceof Beyond) throw known;
    if (known !== undefined) return known;
    // Stands while the cell is computed: a formula that comes back to it ends here.
    this.computed.set(at, UNDER_WAY);
    const found = this.readBy(at, () => this.evaluated(page, cell));
    this.computed.set(at, found);
    if (found instanceof Beyond) throw found;
    return found;
  }

  private evaluated(page: string, cell: SheetCell): Value {
    const around = this.around.get(page);
    if (around === undefined || cell.formula === undefined) throw new Beyond();
    let term = this.terms.get(cell.formula);
    if (term === undefined) this.terms.set(cell.formula, (term = readFormula(cell.formula)));
    const value = evaluate(term, around);
    // What a formula takes from a blank cell is 0.
    if (!isTable(value)) return value ?? 0;
    if (value.length === 1 && value[0].length === 1) return sound(value[0][0]) ?? 0;
    if (cell.spill === undefined) throw new Beyond();
    if (this.isInTheWay(page, cell, value)) throw Fault.of("#SPILL!");
    return value;
  }

  /** Something that stands where a result would spill. */
  private isInTheWay(page: string, { at }: SheetCell, table: Table): boolean {
    const first = readAddress(at);
    return table.some((line, down) =>
      line.some((_, across) => {
        if (down + across === 0) return false;
        const there = key(page, first.row + down, first.column + across);
        const typed = this.typed.get(there);
        if (typed !== undefined) return typed !== null && typed !== "";
        const cell = this.cells.get(there);
        return cell?.formula !== undefined || cell?.value !== undefined;
      }),
    );
  }

  /** Notes who reads what while something is worked out, so that a change reaches its readers alone. */
  private readBy<V>(reader: string, compute: () => V): V | Fault | Beyond {
    const before = this.reader;
    this.reader = reader;
    try {
      return compute();
    } catch (thrown) {
      // What cannot even be read is beyond too.
      return thrown instanceof Fault || thrown instanceof Beyond ? thrown : new Beyond();
    } finally {
      this.reader = before;
    }
  }

  private note(at: string): void {
    if (this.reader === undefined || this.reader === at) return;
    const readers = this.readers.get(at);
    if (readers === undefined) this.readers.set(at, new Set([this.reader]));
    else readers.add(this.reader);
  }

  /** What was worked out from a cell is worked out anew when it is next asked for. */
  private forget(changed: string): void {
    const waiting = [changed];
    // A cell in the way of a result, or out of its way again.
    const owner = this.owners.get(this.spilled.get(changed) as SheetCell);
    if (owner !== undefined) waiting.push(owner);
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      this.computed.delete(next);
      this.blocks.delete(next);
      const readers = this.readers.get(next);
      if (readers === undefined) continue;
      this.readers.delete(next);
      waiting.push(...readers);
    }
  }

  private block(page: string, { row, column, rows, columns }: Block): Value {
    // A page of the user's own.
    if (!this.pageNames.has(page)) throw new Beyond();
    if (rows === 1 && columns === 1) return this.value({ page, row, column });
    const at = `${key(page, row, column)}:${rows}:${columns}`;
    this.note(at);
    let known = this.blocks.get(at);
    if (known === undefined) {
      const table = this.readBy(at, () =>
        Array.from({ length: rows }, (_, down) =>
          Array.from({ length: columns }, (__, across) => {
            const place = { page, row: row + down, column: column + across };
            return this.cell(key(page, place.row, place.column), place);
          }),
        ),
      );
      known = table instanceof Fault ? new Beyond() : table;
      this.blocks.set(at, known);
    }
    if (known instanceof Beyond) throw known;
    return known;
  }

  private callOwn(name: string, given: readonly Value[]): Value {
    const help = this.functions.get(name);
    if (help === undefined)
      throw new Fault({ code: "#NAME?", message: `there is no function ${name}` });
    const cells = help.arguments.map((argument, at) => argumentOf(argument, given[at] ?? null));
    const outcome = this.host.call(help.id, ...cells);
    if (outcome.error !== undefined) throw new Fault(outcome.error);
    return outcome.value;
  }
}

/** As in the host, a function never sees an error value: it passes through. */
function argumentOf(argument: { name: string; range: boolean }, given: Value): Argument {
  if (!isTable(given)) return argument.range && given !== null ? [[given]] : given;
  const cells = given.map((line) => line.map(sound));
  if (argument.range) return cells;
  if (cells.length === 1 && cells[0].length === 1) return cells[0][0];
  throw new Fault({
    code: "#VALUE!",
    message: `${argument.name} takes one cell; got ${cells.length} × ${cells[0]?.length ?? 0} cells`,
  });
}

function key(page: string, row: number, column: number): string {
  return typedKey(page, writeAddress({ row, column }));
}

function plainValue({ value }: SheetCell): CellValue {
  if (value === undefined) return null;
  return typeof value === "string" ? value.replace(/^'/, "") : value;
}
