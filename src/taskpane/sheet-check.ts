import { functionsIn, oneCall } from "../formula-text/dialect";

/** A cell of the sheet that uses our functions. */
export interface UsingCell {
  readonly address: string;
  readonly formula: string;
  readonly value: unknown;
}

export interface FoundError extends UsingCell {
  readonly kind: "error";
}

export interface FoundWarning extends UsingCell {
  readonly kind: "warning";
  /** The CHECK function's sentence. */
  readonly sentence: string;
}

export interface SheetFindings {
  /** How many cells use the functions at all. */
  readonly using: number;
  readonly errors: readonly FoundError[];
  readonly warnings: readonly FoundWarning[];
}

/** The host's error values, as its cells show them. */
const ERROR =
  /^#(VALUE!|N\/A|NAME\?|NUM!|REF!|DIV\/0!|NULL!|CALC!|SPILL!|BUSY!|FIELD!|CONNECT!|BLOCKED!|UNKNOWN!)$/;

export function isErrorValue(value: unknown): value is string {
  return typeof value === "string" && ERROR.test(value);
}

/**
 * Of a sheet's cells: those that use our functions and show an error, and those that hold a CHECK
 * which is not OK. `spell` turns a formula into the default namespace's spelling.
 */
export function checkSheet(
  cells: readonly UsingCell[],
  spell: (formula: string) => string,
): SheetFindings {
  const using = cells.filter((cell) => functionsIn(spell(cell.formula)).length > 0);
  const errors = using
    .filter((cell) => isErrorValue(cell.value))
    .map((cell): FoundError => ({ ...cell, kind: "error" }));
  const warnings = using.flatMap((cell): FoundWarning[] => {
    const checks = functionsIn(spell(cell.formula)).some((name) => name.startsWith("CHECK."));
    const { value } = cell;
    if (!checks || typeof value !== "string" || value === "OK" || isErrorValue(value)) return [];
    return [{ ...cell, kind: "warning", sentence: value }];
  });
  return { using: using.length, errors, warnings };
}

/** An argument that can be worked out outside the sheet. */
export type Readable =
  | { readonly kind: "omitted" }
  | { readonly kind: "literal"; readonly text: string }
  | { readonly kind: "reference"; readonly text: string };

export interface ReadableCall {
  /** "PIPE.FRICTION" */
  readonly name: string;
  readonly arguments: readonly Readable[];
}

const REFERENCE =
  /^(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+|#)?$/iu;
const NAME = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u;
const LITERAL = /^(?:[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?|"(?:[^"]|"")*"|true|false|\{.*\})$/is;

/**
 * Takes a formula that is one call of ours apart, where every argument is a literal, a reference or
 * a name: only then can its message be worked out again outside the host.
 */
export function readableCall(formula: string): ReadableCall | undefined {
  const call = oneCall(formula);
  const name = call && functionsIn(`=${call.name}()`)[0];
  if (call === undefined || name === undefined) return undefined;
  const parts: Readable[] = [];
  for (const text of call.arguments) {
    if (text === "") parts.push({ kind: "omitted" });
    else if (LITERAL.test(text)) parts.push({ kind: "literal", text });
    else if (REFERENCE.test(text) || NAME.test(text)) parts.push({ kind: "reference", text });
    else return undefined;
  }
  return { name, arguments: parts };
}
