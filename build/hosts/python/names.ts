import ts from "typescript";

/** Words of Python, and its built-ins that the written code itself calls. */
const TAKEN = new Set(
  (
    "False None True and as assert async await break class continue def del elif else except " +
    "finally for from global if import in is lambda nonlocal not or pass raise return try while " +
    "with yield print len list str int float bool dict set tuple range type isinstance enumerate " +
    "zip any all min max sum sorted reversed super property object math self Exception"
  ).split(" "),
);

const KEYWORDS = new Set(
  (
    "False None True and as assert async await break class continue def del elif else except " +
    "finally for from global if import in is lambda nonlocal not or pass raise return try while " +
    "with yield"
  ).split(" "),
);

/** A property's name as an attribute. The runtime spells names that come as text in the same way. */
export function attribute(name: string): string {
  return KEYWORDS.has(name) ? `${name}_` : name;
}

/** A name that is none of Python's and none of the runtime's, which all begin with "_". */
export function plainName(name: string): string {
  const letters = name.replace(/\$/g, "S");
  if (letters === "_") return "unused";
  const own = letters.startsWith("_") ? `u${letters}` : letters;
  return TAKEN.has(own) ? `${own}_` : own;
}

/**
 * The names of one function, or of the module. A name stands for one variable in all functions
 * inside, so that none is ever hidden: Python has no scopes of blocks.
 */
export class Scope {
  private readonly taken = new Set<string>();
  /** Variables of outer functions that this one writes to. */
  readonly writesOutside = new Set<string>();

  constructor(
    readonly outer: Scope | undefined,
    /** The loops that were open where this function is written, outermost first. */
    readonly node: ts.Node,
  ) {}

  private isTaken(name: string): boolean {
    return this.taken.has(name) || (this.outer?.isTaken(name) ?? false);
  }

  take(wanted: string): string {
    let name = wanted;
    for (let i = 2; this.isTaken(name); i++) name = `${wanted}_${i}`;
    this.taken.add(name);
    return name;
  }

  get isModule(): boolean {
    return this.outer === undefined;
  }
}
