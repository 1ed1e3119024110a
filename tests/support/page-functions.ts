import { functionFiles, generate } from "../../build/metadata";
import { catalogue } from "../../src/catalogue";
import type { Reference } from "../../src/reference";
import { FunctionHost } from "../../src/screen/host";

/** The functions from their sources, as a page has them. */
export const host = FunctionHost.standIn();
// Loaded after the stand-in stands, as a host loads the script into its runtime.
// eslint-disable-next-line @typescript-eslint/no-require-imports
require("../../src/hosts/excel-functions");

export const reference: Reference = {
  namespace: "IRRIG",
  version: "test",
  functions: generate(functionFiles(), catalogue).functions,
};
