import { type StandInHost, standInHost } from "../src/screen/stand-in-host";

let loaded: StandInHost | undefined;

/** The functions from their sources, in one host: a module associates only when it is first loaded. */
export function loadedHost(): StandInHost {
  if (loaded === undefined) {
    loaded = standInHost();
    Object.assign(globalThis, { CustomFunctions: loaded.CustomFunctions });
    // Loaded after the stand-in stands, as a host loads the script into its runtime.
    // eslint-disable-next-line @typescript-eslint/no-require-imports
    require("../src/hosts/excel-functions");
  }
  return loaded;
}
