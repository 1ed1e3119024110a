/**
 * A stand-in for the host's custom-functions runtime: takes every function under its id. Pages, the
 * build and the tests run functions.js in this one.
 */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

export const errorCodes = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const;

export type Hosted = (...cells: unknown[]) => unknown;

export interface StandInHost {
  readonly functions: ReadonlyMap<string, Hosted>;
  /** What a script finds under this name when it is loaded. */
  readonly CustomFunctions: unknown;
}

export function standInHost(): StandInHost {
  const functions = new Map<string, Hosted>();
  return {
    functions,
    CustomFunctions: {
      Error: HostError,
      ErrorCode: errorCodes,
      associate: (id: string, hosted: Hosted) => functions.set(id, hosted),
    },
  };
}
