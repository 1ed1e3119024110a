import { loadedHost } from "../../build/loaded-host";
import { HostError } from "../../src/screen/stand-in-host";
import { catalogue } from "../../src/catalogue";

export { HostError, standInHost } from "../../src/screen/stand-in-host";

const host = loadedHost();

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
