import type { CellValue } from "../formula-text/cell-value";
import { errorCodes, HostError, type Hosted, standInHost } from "./stand-in-host";

export type { CellValue } from "../formula-text/cell-value";

/**
 * Runs the built functions.js as a spreadsheet host does: a stand-in for the host's runtime takes
 * every function under its id, and a call gives a value or an error with its code and message.
 */
export type Argument = CellValue | readonly (readonly CellValue[])[];

export interface CallError {
  readonly code: string;
  readonly message: string;
}

export type Outcome =
  | { readonly value: CellValue | CellValue[][]; readonly error?: undefined }
  | { readonly error: CallError };

export class FunctionHost {
  private constructor(private readonly hosted: ReadonlyMap<string, Hosted>) {}

  /** Stands in for the host's runtime: what is associated from now on goes to this one. */
  static standIn(): FunctionHost {
    const { functions, CustomFunctions } = standInHost();
    Object.assign(globalThis, { CustomFunctions });
    return new FunctionHost(functions);
  }

  /** Loads the script and resolves when its functions have been handed over. */
  static load(url: URL): Promise<FunctionHost> {
    const host = FunctionHost.standIn();
    return new Promise((resolve, reject) => {
      const script = document.createElement("script");
      script.src = url.href;
      script.onload = () => resolve(host);
      script.onerror = () => reject(new Error(`The functions could not be loaded (${url.href}).`));
      document.head.append(script);
    });
  }

  /** Calls a function by its id. */
  call(id: string, ...cells: readonly Argument[]): Outcome {
    const hosted = this.hosted.get(id);
    if (hosted === undefined)
      return { error: { code: errorCodes.invalidName, message: `there is no function ${id}` } };
    try {
      return { value: hosted(...cells) as CellValue | CellValue[][] };
    } catch (error) {
      if (error instanceof HostError)
        return { error: { code: error.code, message: error.message } };
      throw error;
    }
  }
}
