/** A stand-in for the host's custom-functions runtime: takes every function under its id. */
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
  readonly functions: ReadonlyMap<string, Hosted>;
  /** What a script finds under this name when it is loaded. */
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

let loaded: Host | undefined;

/** The functions from their sources, in one host: a module associates only when it is first loaded. */
export function loadedHost(): Host {
  if (loaded === undefined) {
    loaded = standInHost();
    Object.assign(globalThis, { CustomFunctions: loaded.CustomFunctions });
    // Loaded after the stand-in stands, as a host loads the script into its runtime.
    // eslint-disable-next-line @typescript-eslint/no-require-imports
    require("../src/functions/associate");
  }
  return loaded;
}
