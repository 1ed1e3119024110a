import { catalogue } from "../../src/catalogue";

/** A stand-in for the host's custom-functions runtime. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

export type Hosted = (...cells: unknown[]) => unknown;

export interface Host {
  readonly functions: Map<string, Hosted>;
  readonly CustomFunctions: unknown;
}

export function standInHost(): Host {
  const functions = new Map<string, Hosted>();
  return {
    functions,
    CustomFunctions: {
      Error: HostError,
      ErrorCode: {
        invalidValue: "#VALUE!",
        notAvailable: "#N/A",
        divisionByZero: "#DIV/0!",
        invalidNumber: "#NUM!",
        nullReference: "#NULL!",
        invalidName: "#NAME?",
        invalidReference: "#REF!",
      },
      associate: (id: string, hosted: Hosted) => functions.set(id, hosted),
    },
  };
}

const host = standInHost();
(globalThis as { CustomFunctions?: unknown }).CustomFunctions = host.CustomFunctions;
// Loaded after the stand-in stands, as a host loads the script into its runtime.
// eslint-disable-next-line @typescript-eslint/no-require-imports
require("../../src/functions/associate");

/** Calls a function by its sheet name, as a cell does: through the guard. */
export function call(name: string, ...cells: unknown[]): unknown {
  const hosted = host.functions.get(name.replace(/\./g, "_"));
  if (hosted === undefined) throw new Error(`no function ${name}`);
  return hosted(...cells);
}

/** As call, for a function that gives one number. */
export function callNumber(name: string, ...cells: unknown[]): number {
  const result = call(name, ...cells);
  if (typeof result !== "number") throw new Error(`${name} gave ${String(result)}, not a number`);
  return result;
}

/** As call, for a function that spills. */
export function callTable(name: string, ...cells: unknown[]): (string | number)[][] {
  const result = call(name, ...cells);
  if (!Array.isArray(result)) throw new Error(`${name} gave ${String(result)}, not a table`);
  return result as (string | number)[][];
}

/** The error a call gives: code and message. */
export function callError(name: string, ...cells: unknown[]): HostError {
  try {
    call(name, ...cells);
  } catch (error) {
    if (error instanceof HostError) return error;
    throw error;
  }
  throw new Error(`${name} gave no error`);
}

export const ids: readonly string[] = catalogue;
