/** How tightly a piece of Python binds; a piece that binds less than its place asks for parentheses. */
export const enum Binds {
  Atom,
  Sign,
  Product,
  Sum,
  Compare,
  Not,
  And,
  Or,
  Choice,
  Lambda,
}

/** A piece of Python. */
export interface Code {
  readonly text: string;
  readonly binds: Binds;
}

export function code(text: string, binds: Binds = Binds.Atom): Code {
  return { text, binds };
}

export function within(piece: Code, loosest: Binds): string {
  return piece.binds > loosest ? `(${piece.text})` : piece.text;
}

/** Text as Python writes it: JSON's escapes mean the same there. */
export function quoted(text: string): string {
  return JSON.stringify(text);
}

/** Lines of Python at a depth. */
export class Lines {
  readonly lines: string[] = [];

  constructor(public depth = 0) {}

  add(line: string): void {
    this.lines.push(`${"    ".repeat(this.depth)}${line}`);
  }

  take(other: Lines): void {
    this.lines.push(...other.lines);
  }

  get isEmpty(): boolean {
    return this.lines.length === 0;
  }
}
