import type { CellValue } from "../screen/host";
import type { Term } from "../formula-text/formula";
import {
  Beyond,
  caught,
  type Cell,
  compare,
  Fault,
  isTable,
  number,
  single,
  sound,
  text,
  truth,
  type Value,
} from "./cell-values";
import { liftedFunctions, wholeFunctions } from "./native-functions";

/** What a formula finds around it. */
export interface Surroundings {
  range(page: string | undefined, range: string): Value;
  named(name: string): Value;
  /** A LAMBDA that the workbook has a name for. */
  lambdaNamed(name: string): Term | undefined;
  /** One of our functions, by its name with the namespace; undefined where it is none. */
  own(name: string, given: () => Value[]): Value | undefined;
  formulaText(page: string | undefined, range: string): string;
}

interface Closure {
  readonly lambda: Term;
  readonly locals: Locals;
}
type Locals = ReadonlyMap<string, Value | Closure>;

const NO_LOCALS: Locals = new Map();
/** Deeper than sheets nest their names; a name that calls itself for ever ends here. */
const DEEPEST = 60;

export function evaluate(term: Term, around: Surroundings): Value {
  return new Evaluation(around).value(term, NO_LOCALS);
}

class Evaluation {
  private depth = 0;

  constructor(private readonly around: Surroundings) {}

  value(term: Term, locals: Locals): Value {
    switch (term.kind) {
      case "value":
        return term.value;
      case "table":
        return term.rows.map((row) => row.map((part) => caught(() => this.single(part, locals))));
      case "range":
        return this.around.range(term.page, term.range);
      case "name":
        return this.named(term.name, locals);
      case "negative":
        return lift(([of]) => -number(of), [this.value(term.of, locals)]);
      case "percent":
        return lift(([of]) => number(of) / 100, [this.value(term.of, locals)]);
      case "operation": {
        const { operator, left, right } = term;
        return lift(
          ([one, two]) => operate(operator, one, two),
          [this.value(left, locals), this.value(right, locals)],
        );
      }
      case "call":
        return this.call(term.name.toUpperCase(), term.arguments, locals);
    }
  }

  private single(term: Term, locals: Locals): CellValue {
    return single(this.value(term, locals));
  }

  private named(name: string, locals: Locals): Value {
    const local = locals.get(name.toUpperCase());
    if (local === undefined) return this.around.named(name);
    if (isClosure(local)) throw new Beyond();
    return local;
  }

  private call(name: string, given: readonly (Term | undefined)[], locals: Locals): Value {
    const compute = (part: Term | undefined): Value =>
      part === undefined ? null : this.value(part, locals);
    const own = this.around.own(name, () => given.map(compute));
    if (own !== undefined) return own;
    const lambda = this.closureOf(name, locals);
    if (lambda !== undefined) return this.apply(lambda, given.map(compute));
    switch (name) {
      case "IF":
        return choose(
          compute(given[0]),
          () => (given.length < 2 ? true : compute(given[1])),
          () => (given.length < 3 ? false : compute(given[2])),
        );
      case "IFERROR":
        return this.instead(given, locals, () => true);
      case "IFNA":
        return this.instead(given, locals, ({ error }) => error.code === "#N/A");
      case "ISERROR":
        return this.judged(given[0], locals, (cell) => cell instanceof Fault);
      case "ISNA":
        return this.judged(
          given[0],
          locals,
          (cell) => cell instanceof Fault && cell.error.code === "#N/A",
        );
      case "ISNUMBER":
        return this.judged(given[0], locals, (cell) => typeof cell === "number");
      case "LET":
        return this.let(given, locals);
      case "FORMULATEXT": {
        const [of] = given;
        if (of?.kind !== "range") throw new Beyond();
        return this.around.formulaText(of.page, of.range);
      }
    }
    const lifted = liftedFunctions[name];
    if (lifted !== undefined) return lift((cells) => inBounds(lifted(cells)), given.map(compute));
    const whole = wholeFunctions[name];
    if (whole === undefined) throw new Beyond();
    return inBounds(whole(given.map(compute)));
  }

  /** Only the part that is taken may fail. */
  private instead(
    [of, otherwise]: readonly (Term | undefined)[],
    locals: Locals,
    isCaught: (fault: Fault) => boolean,
  ): Value {
    const fallback = () => (otherwise === undefined ? null : this.value(otherwise, locals));
    const value = this.attempt(of, locals);
    if (value instanceof Fault) {
      if (isCaught(value)) return fallback();
      throw value;
    }
    if (!isTable(value)) return value;
    return value.map((row) =>
      row.map((cell) =>
        cell instanceof Fault && isCaught(cell) ? caught(() => single(fallback())) : cell,
      ),
    );
  }

  /** An error is judged as any other cell. */
  private judged(of: Term | undefined, locals: Locals, isSo: (cell: Cell) => boolean): Value {
    const value = this.attempt(of, locals);
    if (value instanceof Fault || !isTable(value)) return isSo(value);
    return value.map((row) => row.map(isSo));
  }

  private attempt(term: Term | undefined, locals: Locals): Value | Fault {
    return caught(() => (term === undefined ? null : this.value(term, locals)));
  }

  private let(given: readonly (Term | undefined)[], locals: Locals): Value {
    const inside = new Map(locals);
    for (let at = 0; at + 2 < given.length; at += 2) {
      const name = given[at];
      const term = given[at + 1];
      if (name?.kind !== "name" || term === undefined) throw new Beyond();
      inside.set(
        name.name.toUpperCase(),
        isLambda(term) ? { lambda: term, locals: new Map(inside) } : this.value(term, inside),
      );
    }
    const last = given.at(-1);
    return last === undefined ? null : this.value(last, inside);
  }

  private closureOf(name: string, locals: Locals): Closure | undefined {
    const local = locals.get(name);
    if (local !== undefined) return isClosure(local) ? local : undefined;
    const lambda = this.around.lambdaNamed(name);
    return lambda === undefined ? undefined : { lambda, locals: NO_LOCALS };
  }

  private apply({ lambda, locals }: Closure, given: readonly Value[]): Value {
    if (!isLambda(lambda) || this.depth > DEEPEST) throw new Beyond();
    const names = lambda.arguments.slice(0, -1);
    const body = lambda.arguments.at(-1);
    if (body === undefined || names.length !== given.length) throw new Beyond();
    const inside = new Map(locals);
    names.forEach((name, index) => {
      if (name?.kind !== "name") throw new Beyond();
      inside.set(name.name.toUpperCase(), given[index]);
    });
    this.depth += 1;
    const value = this.value(body, inside);
    this.depth -= 1;
    return value;
  }
}

function isLambda(term: Term): term is Extract<Term, { kind: "call" }> {
  return term.kind === "call" && term.name.toUpperCase() === "LAMBDA";
}

function isClosure(value: Value | Closure): value is Closure {
  return typeof value === "object" && value !== null && "lambda" in value;
}

/** What could not be said is the grid's to say. */
function inBounds<V extends Value>(value: V | undefined): V {
  if (value === undefined || Number.isNaN(value)) throw new Beyond();
  return value;
}

/** A function of single cells over whole tables, cell by cell, as sheets do. */
function lift(of: (cells: CellValue[]) => CellValue, given: readonly Value[]): Value {
  if (!given.some(isTable)) return of(given as CellValue[]);
  const tables = given.filter(isTable);
  const rows = Math.max(...tables.map((table) => table.length));
  const columns = Math.max(...tables.map((table) => table[0]?.length ?? 0));
  const at = (row: number, column: number): Cell =>
    caught(() => of(given.map((value) => cellOf(value, row, column))));
  if (rows === 1 && columns === 1) return sound(at(0, 0));
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => at(row, column)),
  );
}

/** One row or one column counts for all of them. */
function cellOf(value: Value, row: number, column: number): CellValue {
  if (!isTable(value)) return value;
  const line = value.length === 1 ? value[0] : value[row];
  const cell = line?.length === 1 ? line[0] : line?.[column];
  if (cell === undefined) throw Fault.of("#N/A");
  return sound(cell);
}

/** The branch of each cell; a single condition takes its branch whole. */
function choose(condition: Value, one: () => Value, other: () => Value): Value {
  if (!isTable(condition)) return truth(condition) ? one() : other();
  if (condition.length === 1 && condition[0].length === 1)
    return truth(sound(condition[0][0])) ? one() : other();
  const branches = [caught(one), caught(other)];
  const [yes, no] = branches.map((branch) =>
    branch instanceof Fault ? [[branch]] : branch,
  ) as Value[];
  const rows = Math.max(...[condition, yes, no].map((part) => (isTable(part) ? part.length : 1)));
  const columns = Math.max(
    ...[condition, yes, no].map((part) => (isTable(part) ? part[0].length : 1)),
  );
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) =>
      caught(() => cellOf(truth(cellOf(condition, row, column)) ? yes : no, row, column)),
    ),
  );
}

function operate(operator: string, left: CellValue, right: CellValue): CellValue {
  switch (operator) {
    case "&":
      return text(left) + text(right);
    case "+":
      return finite(number(left) + number(right));
    case "-":
      return finite(number(left) - number(right));
    case "*":
      return finite(number(left) * number(right));
    case "/": {
      const divisor = number(right);
      const divided = number(left);
      if (divisor === 0) throw Fault.of("#DIV/0!");
      return finite(divided / divisor);
    }
    case "^":
      return finite(number(left) ** number(right));
    default:
      return compare(operator, left, right);
  }
}

/** A root of a negative number, or more than a number holds. */
function finite(result: number): number {
  if (!Number.isFinite(result)) throw Fault.of("#NUM!");
  return result;
}
