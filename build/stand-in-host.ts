/** A stand-in for the host's custom-functions runtime: takes every function under its id. */
export type Hosted = (...cells: unknown[]) => unknown;

/** What the host's error carries. */
class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

export function standInHost(): { readonly functions: ReadonlyMap<string, Hosted> } {
  const functions = new Map<string, Hosted>();
  Object.assign(globalThis, {
    CustomFunctions: {
      Error: HostError,
      ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
      associate: (id: string, hosted: Hosted) => functions.set(id, hosted),
    },
  });
  // Loaded after the stand-in stands, as a host loads the script into its runtime.
  // eslint-disable-next-line @typescript-eslint/no-require-imports
  require("../src/functions/associate");
  return { functions };
}
