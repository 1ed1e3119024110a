import { readAddress, readRange, writeAddress, type Block } from "../sheets/kit/address";
import type { Page, SheetCell } from "../sheets/kit/definition";
import { DEFAULT_NAMESPACE, toScreen } from "../formula-text/dialect";
import type { Reference } from "../reference";
import { readFormula, type Term } from "../formula-text/formula";
import type { CallError, CellValue, FunctionHost } from "../screen/host";
import { type Content, isFormula, sameContent } from "./kept/changes";
import { Steps } from "./kept/steps";
import { nativeFunctions } from "./native-functions";
import { typedKey, type CellPlace, type SheetValues, type ShownCell } from "./sheet-values";

/** A cell's error on its way through the cells that depend on it. */
class Fault extends Error {
  constructor(readonly error: CallError) {
    super(error.message);
  }
}

/** A formula beyond this first reckoning; the grid computes it when it is there. */
class Beyond extends Error {}

type Table = CellValue[][];
type Value = CellValue | Table;

/**
 * The values of a ready-made sheet until the grid has loaded. It reads the plain formulas that such
 * sheets consist of, and leaves a cell blank where a formula goes beyond them.
 */
export class FirstValues implements SheetValues {
  private readonly cells = new Map<string, SheetCell>();
  /** Cells that a formula elsewhere fills. */
  private readonly spilled = new Map<string, SheetCell>();
  private readonly names = new Map<string, { readonly page: string; readonly block: Block }>();
  private readonly functions: ReadonlyMap<string, Reference["functions"][number]>;
  private computed = new Map<string, Value | Fault | Beyond>();
  private readonly listeners: (() => void)[] = [];
  /** Formulas of the user's own. */
  private readonly own = new Map<string, SheetCell>();
  readonly steps = new Steps();

  constructor(
    private readonly pages: readonly Page[],
    readonly typed: Map<string, Content>,
    private readonly reference: Reference,
    private readonly host: FunctionHost,
  ) {
    this.functions = new Map(reference.functions.map((help) => [help.name, help]));
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

  /** Whether a cell had to be left blank for the grid. */
  leavesBlanks(): boolean {
    const isBeyond = (page: string, cell: SheetCell) => {
      if (cell.formula === undefined) return false;
      try {
        this.formulaValue(page, cell);
        return false;
      } catch (thrown) {
        return thrown instanceof Beyond;
      }
    };
    return (
      this.pages
        // Names of the user's own are always beyond, and nothing depends on them.
        .filter((page) => page.functions === undefined)
        .some((page) => page.cells.some((cell) => isBeyond(page.name, cell))) ||
      [...this.own].some(([at, cell]) => isBeyond(at.slice(0, at.lastIndexOf("!")), cell))
    );
  }

  write({ page, row, column }: CellPlace, value: CellValue): void {
    const at = key(page, row, column);
    const before = this.typed.get(at);
    // The ready-made content typed again is no change of it.
    const after = this.isReadyMade(at, value) ? undefined : value;
    if (before === after || sameContent(before, after)) return;
    this.steps.add({ key: at, before, after });
    this.put(at, after);
  }

  undo(): void {
    const step = this.steps.undo();
    if (step !== undefined) this.put(step.key, step.before);
  }

  redo(): void {
    const step = this.steps.redo();
    if (step !== undefined) this.put(step.key, step.after);
  }

  private isReadyMade(at: string, value: CellValue): boolean {
    const cell = this.cells.get(at);
    return cell?.formula === undefined && value === (cell === undefined ? null : plainValue(cell));
  }

  private put(at: string, content: Content | undefined): void {
    if (content === undefined) this.typed.delete(at);
    else this.typed.set(at, content);
    this.takeOwn(at, content);
    this.computed = new Map();
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
      const { reserved = 0, columns = 0 } = cell.spill ?? {};
      for (let down = 0; down < reserved; down++)
        for (let across = 0; across < columns; across++)
          this.spilled.set(key(page.name, row + down, column + across), cell);
    }
    for (const { name, range } of page.names ?? []) this.name(name, page.name, range);
  }

  private name(name: string, page: string, range: string): void {
    this.names.set(name.toUpperCase(), { page, block: readRange(range) });
  }

  private value({ page, row, column }: CellPlace): CellValue {
    const at = key(page, row, column);
    const own = this.own.get(at);
    if (own !== undefined) return single(this.formulaValue(page, own));
    const typed = this.typed.get(at);
    if (typed !== undefined && !isFormula(typed)) return typed;
    const owner = this.spilled.get(at);
    if (owner !== undefined) {
      const first = readAddress(owner.at);
      const isFirst = row === first.row && column === first.column;
      const table = isFirst ? this.formulaValue(page, owner) : this.spilledTable(page, owner);
      const value = Array.isArray(table) ? table[row - first.row]?.[column - first.column] : table;
      return value ?? null;
    }
    const cell = this.cells.get(at);
    if (cell === undefined) return null;
    if (cell.formula === undefined) return plainValue(cell);
    return single(this.formulaValue(page, cell));
  }

  /** An error stands in the first cell alone; the others are blank then. */
  private spilledTable(page: string, owner: SheetCell): Value {
    try {
      return this.formulaValue(page, owner);
    } catch (thrown) {
      if (thrown instanceof Fault) return [];
      throw thrown;
    }
  }

  private formulaValue(page: string, cell: SheetCell): Value {
    const at = typedKey(page, cell.at);
    let known = this.computed.get(at);
    if (known === undefined && this.isInTheWay(page, cell)) known = new Beyond();
    if (known === undefined) {
      // Stands while the cell is computed: a formula that comes back to it ends here.
      this.computed.set(at, new Beyond());
      known = this.attempt(() => this.evaluate(readFormula(cell.formula ?? ""), page));
      this.computed.set(at, known);
    }
    if (known instanceof Fault || known instanceof Beyond) throw known;
    return known;
  }

  /** Something typed where a result would spill: what then shows is the grid's to say. */
  private isInTheWay(page: string, { at, spill }: SheetCell): boolean {
    if (spill === undefined || this.typed.size === 0) return false;
    const first = readAddress(at);
    for (let down = 0; down < spill.reserved; down++)
      for (let across = 0; across < spill.columns; across++) {
        const typed = this.typed.get(key(page, first.row + down, first.column + across));
        if (down + across > 0 && typed !== undefined && typed !== null) return true;
      }
    return false;
  }

  private attempt(compute: () => Value): Value | Fault | Beyond {
    try {
      return compute();
    } catch (thrown) {
      if (thrown instanceof Fault || thrown instanceof Beyond) return thrown;
      return new Beyond();
    }
  }

  private evaluate(term: Term, page: string): Value {
    switch (term.kind) {
      case "value":
        return term.value;
      case "table":
        return term.rows.map((row) => row.map((part) => single(this.evaluate(part, page))));
      case "range":
        return this.block(term.page ?? page, readRange(term.range));
      case "name":
        return this.named(term.name);
      case "negative":
        return -number(this.evaluate(term.of, page));
      case "percent":
        return number(this.evaluate(term.of, page)) / 100;
      case "operation":
        return operate(term.operator, single(this.evaluate(term.left, page)), () =>
          single(this.evaluate(term.right, page)),
        );
      case "call":
        return this.call(term.name.toUpperCase(), term.arguments, page);
    }
  }

  private named(name: string): Value {
    const found = this.names.get(name.toUpperCase());
    if (found === undefined) throw new Beyond();
    return this.block(found.page, found.block);
  }

  private block(page: string, { row, column, rows, columns }: Block): Value {
    // A page of the user's own.
    if (this.pages.every(({ name }) => name !== page)) throw new Beyond();
    if (rows === 1 && columns === 1) return this.value({ page, row, column });
    return Array.from({ length: rows }, (_, down) =>
      Array.from({ length: columns }, (__, across) =>
        this.value({ page, row: row + down, column: column + across }),
      ),
    );
  }

  private call(name: string, given: readonly (Term | undefined)[], page: string): Value {
    const compute = (part: Term | undefined) =>
      part === undefined ? null : this.evaluate(part, page);
    if (name.startsWith(`${DEFAULT_NAMESPACE}.`))
      return this.callOwn(name.slice(DEFAULT_NAMESPACE.length + 1), given.map(compute));
    // Only the branch that is taken may fail.
    if (name === "IF") return compute(truth(single(compute(given[0]))) ? given[1] : given[2]);
    if (name === "IFERROR" || name === "IFNA") {
      const isCaught = ({ error }: Fault) => name === "IFERROR" || error.code === "#N/A";
      try {
        return compute(given[0]);
      } catch (thrown) {
        if (thrown instanceof Fault && isCaught(thrown)) return compute(given[1]);
        throw thrown;
      }
    }
    if (name === "ISERROR") {
      try {
        compute(given[0]);
        return false;
      } catch (thrown) {
        if (thrown instanceof Fault) return true;
        throw thrown;
      }
    }
    if (name === "FORMULATEXT") return this.formulaText(given[0], page);
    const native = nativeFunctions[name];
    if (native === undefined) throw new Beyond();
    const value = native(given.map(compute));
    if (value === undefined || Number.isNaN(value)) throw new Beyond();
    return value;
  }

  private formulaText(of: Term | undefined, page: string): string {
    if (of?.kind !== "range") throw new Beyond();
    const formula = this.cells.get(typedKey(of.page ?? page, of.range))?.formula;
    if (formula === undefined) throw new Beyond();
    return toScreen(formula, this.reference.namespace);
  }

  private callOwn(name: string, given: readonly Value[]): Value {
    const help = this.functions.get(name);
    if (help === undefined)
      throw new Fault({ code: "#NAME?", message: `there is no function ${name}` });
    const cells = given.map((value, index) =>
      help.arguments[index]?.range === true && !Array.isArray(value) && value !== null
        ? [[value]]
        : value,
    );
    const padded = [
      ...cells,
      ...new Array<null>(Math.max(0, help.arguments.length - cells.length)).fill(null),
    ];
    const outcome = this.host.call(help.id, ...padded);
    if (outcome.error !== undefined) throw new Fault(outcome.error);
    return outcome.value;
  }
}

function key(page: string, row: number, column: number): string {
  return typedKey(page, writeAddress({ row, column }));
}

function plainValue({ value }: SheetCell): CellValue {
  if (value === undefined) return null;
  return typeof value === "string" ? value.replace(/^'/, "") : value;
}

function single(value: Value): CellValue {
  if (!Array.isArray(value)) return value;
  // Reckoning with whole tables is the grid's.
  if (value.length !== 1 || value[0].length !== 1) throw new Beyond();
  return value[0][0];
}

function number(value: Value): number {
  const cell = single(value);
  const read = cell === null || cell === "" ? 0 : Number(cell);
  if (cell === "" || !Number.isFinite(read))
    throw new Fault({ code: "#VALUE!", message: `a number is due where "${String(cell)}" stands` });
  return read;
}

function truth(value: CellValue): boolean {
  return value === true || (typeof value === "number" && value !== 0);
}

function text(value: CellValue): string {
  if (value === null) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "number" ? String(Number(value.toPrecision(15))) : value;
}

function operate(operator: string, left: CellValue, rightOf: () => CellValue): CellValue {
  const right = rightOf();
  switch (operator) {
    case "&":
      return text(left) + text(right);
    case "+":
      return number(left) + number(right);
    case "-":
      return number(left) - number(right);
    case "*":
      return number(left) * number(right);
    case "/": {
      const divisor = number(right);
      if (divisor === 0)
        throw new Fault({
          code: "#DIV/0!",
          message: "the formula divides by 0 or by a blank cell",
        });
      return number(left) / divisor;
    }
    case "^":
      return number(left) ** number(right);
    default:
      return compare(operator, left, right);
  }
}

function compare(operator: string, left: CellValue, right: CellValue): boolean {
  const order = orderOf(left, right);
  switch (operator) {
    case "=":
      return order === 0;
    case "<>":
      return order !== 0;
    case "<":
      return order < 0;
    case ">":
      return order > 0;
    case "<=":
      return order <= 0;
    case ">=":
      return order >= 0;
    default:
      throw new Beyond();
  }
}

/** As sheets order values: numbers before text before truth; a blank is like the other's nothing. */
function orderOf(left: CellValue, right: CellValue): number {
  const blankFor = (other: CellValue) =>
    typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;
  const one = left ?? blankFor(right);
  const two = right ?? blankFor(left);
  const rank = (value: CellValue) => ["number", "string", "boolean"].indexOf(typeof value);
  if (rank(one) !== rank(two)) return rank(one) - rank(two);
  const [a, b] =
    typeof one === "string"
      ? [one.toLowerCase(), String(two).toLowerCase()]
      : [Number(one), Number(two)];
  return a < b ? -1 : a > b ? 1 : 0;
}
