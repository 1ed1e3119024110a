import type { FunctionHelp } from "../reference";
import { DEFAULT_NAMESPACE, type LiteralArgument, literalArguments } from "../formula-text/dialect";
import type { Argument, CallError, CellValue, FunctionHost } from "../screen/host";
import { type Readable, readableCall } from "./sheet-check";

/** Reads a reference or a name; undefined where there is none. */
export type ReadReference = (text: string) => Promise<unknown[][] | undefined>;

export type Evaluated =
  | { readonly kind: "value"; readonly value: CellValue | CellValue[][] }
  | { readonly kind: "error"; readonly error: CallError }
  | { readonly kind: "unknown reference"; readonly text: string }
  | { readonly kind: "cannot" };

/**
 * Works one call out through the bundle, as the sheet would: literals as they stand, references and
 * names through the host. Anything that only a spreadsheet can work out is left to it.
 */
export async function evaluateCall(
  formula: string,
  functions: FunctionHost,
  read: ReadReference,
): Promise<Evaluated> {
  const call = readableCall(formula);
  if (call === undefined) return { kind: "cannot" };
  const cells: Argument[] = [];
  for (const part of call.arguments) {
    const cell = await argumentOf(part, read);
    if (cell === undefined)
      return { kind: "unknown reference", text: (part as { text: string }).text };
    cells.push(cell);
  }
  const outcome = functions.call(call.name.replace(/\./g, "_"), ...cells);
  return outcome.error === undefined
    ? { kind: "value", value: outcome.value }
    : { kind: "error", error: outcome.error };
}

async function argumentOf(part: Readable, read: ReadReference): Promise<Argument | undefined> {
  if (part.kind === "omitted") return null;
  if (part.kind === "literal") return oneLiteral(part.text) as Argument;
  const values = await read(part.text);
  return values as Argument | undefined;
}

function oneLiteral(text: string): LiteralArgument {
  return literalArguments(`=X(${text.replace(/^\+/, "")})`)[0];
}

/** A call of a function with these argument texts, empty ones at the end left out. */
export function callText(
  help: FunctionHelp,
  texts: readonly string[],
  namespace = DEFAULT_NAMESPACE,
): string {
  const given = texts.map((text) => text.trim());
  while (given[given.length - 1] === "") given.pop();
  return `=${namespace}.${help.name}(${given.join(",")})`;
}
