import type { CellValue } from "./cell-value";

/** A formula, read. */
export type Term =
  | { readonly kind: "value"; readonly value: CellValue }
  | { readonly kind: "table"; readonly rows: readonly (readonly Term[])[] }
  | { readonly kind: "range"; readonly page?: string; readonly range: string }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "negative"; readonly of: Term }
  | { readonly kind: "percent"; readonly of: Term }
  | {
      readonly kind: "operation";
      readonly operator: string;
      readonly left: Term;
      readonly right: Term;
    }
  | {
      readonly kind: "call";
      readonly name: string;
      readonly arguments: readonly (Term | undefined)[];
    };

/** The higher, the tighter it binds. */
const STRENGTH: Readonly<Record<string, number>> = {
  "=": 1,
  "<>": 1,
  "<": 1,
  ">": 1,
  "<=": 1,
  ">=": 1,
  "&": 2,
  "+": 3,
  "-": 3,
  "*": 4,
  "/": 4,
  "^": 5,
};

const TOKEN =
  /\s*(?:("(?:[^"]|"")*")|((?:'(?:[^']|'')*'|[A-Za-z_][\w.]*)!)?(\$?[A-Z]{1,3}\$?[1-9]\d*(?::\$?[A-Z]{1,3}\$?[1-9]\d*)?)(?![\w.(])|((?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)|([\p{L}_][\p{L}\p{N}_.]*)|(<=|>=|<>|[-+*/^&=<>%(){},;]))/uy;

interface Token {
  readonly kind: "text" | "range" | "number" | "name" | "sign" | "end";
  readonly text: string;
  readonly page?: string;
}

/** Reads a formula as a user types it; throws on what it does not know. */
export function readFormula(formula: string): Term {
  const reader = new Reader(tokens(formula.replace(/^=/, "")));
  const term = reader.expression(0);
  reader.expect("");
  return term;
}

function tokens(written: string): Token[] {
  const formula = written.trimEnd();
  const found: Token[] = [];
  let at = 0;
  while (at < formula.length) {
    TOKEN.lastIndex = at;
    const match = TOKEN.exec(formula);
    if (match === null) throw new Error(`cannot read the formula at "${formula.slice(at)}"`);
    const [whole, quoted, page, range, number, name, sign] = match;
    at += whole.length;
    if (quoted !== undefined)
      found.push({ kind: "text", text: quoted.slice(1, -1).replace(/""/g, '"') });
    else if (range !== undefined)
      found.push({ kind: "range", text: range, ...(page && { page: pageName(page) }) });
    else if (number !== undefined) found.push({ kind: "number", text: number });
    else if (name !== undefined) found.push({ kind: "name", text: name });
    else found.push({ kind: "sign", text: sign });
  }
  return [...found, { kind: "end", text: "" }];
}

function pageName(prefix: string): string {
  const name = prefix.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replace(/''/g, "'") : name;
}

class Reader {
  private at = 0;

  constructor(private readonly all: readonly Token[]) {}

  expression(least: number): Term {
    let left = this.operand();
    for (;;) {
      const operator = this.all[this.at].text;
      const strength = this.all[this.at].kind === "sign" ? STRENGTH[operator] : undefined;
      if (strength === undefined || strength <= least) return left;
      this.at += 1;
      left = { kind: "operation", operator, left, right: this.expression(strength) };
    }
  }

  expect(text: string): void {
    const token = this.all[this.at];
    if (token.text !== text) throw new Error(`"${text}" is due where "${token.text}" stands`);
    this.at += 1;
  }

  private operand(): Term {
    const token = this.all[this.at];
    this.at += 1;
    let term = this.start(token);
    while (this.all[this.at].kind === "sign" && this.all[this.at].text === "%") {
      this.at += 1;
      term = { kind: "percent", of: term };
    }
    return term;
  }

  private start(token: Token): Term {
    if (token.kind === "text") return { kind: "value", value: token.text };
    if (token.kind === "number") return { kind: "value", value: Number(token.text) };
    if (token.kind === "range")
      return {
        kind: "range",
        range: token.text.replace(/\$/g, ""),
        ...(token.page && { page: token.page }),
      };
    if (token.kind === "name") return this.named(token.text);
    if (token.text === "(") {
      const inside = this.expression(0);
      this.expect(")");
      return inside;
    }
    // A sign binds tighter than any operation, as in sheets: -2^2 is 4.
    if (token.text === "-") return { kind: "negative", of: this.operand() };
    if (token.text === "+") return this.operand();
    if (token.text === "{") return this.table();
    throw new Error(`"${token.text}" cannot stand there`);
  }

  private named(name: string): Term {
    if (this.all[this.at].text === "(") {
      this.at += 1;
      return { kind: "call", name, arguments: this.arguments() };
    }
    const upper = name.toUpperCase();
    if (upper === "TRUE" || upper === "FALSE") return { kind: "value", value: upper === "TRUE" };
    return { kind: "name", name };
  }

  private arguments(): (Term | undefined)[] {
    const given: (Term | undefined)[] = [];
    if (this.take(")")) return given;
    for (;;) {
      const next = this.all[this.at];
      const isOmitted = next.kind === "sign" && (next.text === "," || next.text === ")");
      given.push(isOmitted ? undefined : this.expression(0));
      if (this.take(")")) return given;
      this.expect(",");
    }
  }

  private table(): Term {
    const rows: Term[][] = [[]];
    for (;;) {
      rows[rows.length - 1].push(this.expression(0));
      if (this.take("}")) return { kind: "table", rows };
      if (this.take(";")) rows.push([]);
      else this.expect(",");
    }
  }

  private take(text: string): boolean {
    if (this.all[this.at].kind !== "sign" || this.all[this.at].text !== text) return false;
    this.at += 1;
    return true;
  }
}
