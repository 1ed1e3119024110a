import type { FunctionHelp } from "../reference";
import { DEFAULT_NAMESPACE, fromHost, oneCall } from "../formula-text/dialect";

/**
 * A function name of the user's own: one of ours with some arguments fixed, stored in the workbook
 * as =LAMBDA(flow, IRRIG.PIPE.FRICTION(flow, 2.067, 100, "US", 140)).
 */
export interface OwnFunction {
  readonly name: string;
  readonly description: string;
  /** Which of ours it calls, "PIPE.FRICTION". */
  readonly calls: string;
  /** For each argument of it: the fixed text of a formula, or undefined where the caller gives it. */
  readonly fixed: readonly (string | undefined)[];
}

/** The formula of a name, as a user would type it. Optional arguments left open come last, in brackets. */
export function ownFormula(own: OwnFunction, help: FunctionHelp, namespace: string): string {
  const open = help.arguments.filter((_, i) => own.fixed[i] === undefined);
  const passed = help.arguments.map((argument, i) => own.fixed[i] ?? argument.name);
  // Trailing arguments that are fixed as nothing are left out of the call.
  while (passed[passed.length - 1] === "") passed.pop();
  const call = `${namespace}.${help.name}(${passed.join(",")})`;
  return `=LAMBDA(${[...open.map((argument) => argument.name), call].join(",")})`;
}

/** What a call of the name looks like: MYLOSS(flow, length). */
export function ownUse(own: OwnFunction, help: FunctionHelp): string {
  const open = help.arguments.filter((_, i) => own.fixed[i] === undefined);
  return `${own.name}(${open.map((argument) => argument.name).join(", ")})`;
}

/** Reads a name's formula back; undefined where it is not a LAMBDA around one call of ours. */
export function readOwnFunction(
  name: string,
  description: string,
  formula: string,
  functions: readonly FunctionHelp[],
  namespace: string,
): OwnFunction | undefined {
  const lambda = oneCall(fromHost(formula, namespace));
  if (lambda === undefined || lambda.name.toUpperCase() !== "LAMBDA") return undefined;
  const parameters = lambda.arguments.slice(0, -1);
  const inner = oneCall(lambda.arguments[lambda.arguments.length - 1] ?? "");
  if (inner === undefined) return undefined;
  const called = inner.name.toUpperCase();
  const help = functions.find((candidate) => called === `${DEFAULT_NAMESPACE}.${candidate.name}`);
  if (help === undefined) return undefined;
  const fixed = help.arguments.map((_, i) => {
    const text = inner.arguments[i] ?? "";
    return parameters.includes(text) ? undefined : text;
  });
  return { name, description, calls: help.name, fixed };
}
