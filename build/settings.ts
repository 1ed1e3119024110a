import { readFileSync } from "node:fs";
import { join } from "node:path";
import { DEFAULT_NAMESPACE } from "../src/formula-text/dialect";

export const root = join(__dirname, "..");
export const dist = join(root, "dist");

/** What stands before every function's name in a formula; four letters or more, so that it is no column. */
export const NAMESPACE = process.env.NAMESPACE ?? DEFAULT_NAMESPACE;

/** Ports of the development server: pages over http, the add-in over https. */
export const PAGES_PORT = Number(process.env.PAGES_PORT ?? 3000);
export const EXCEL_PORT = Number(process.env.EXCEL_PORT ?? 3443);

/** Where the built folder will be served from: every address in the manifest begins with it. */
export const BASE_URL = (process.env.BASE_URL ?? `https://localhost:${EXCEL_PORT}`).replace(
  /\/+$/,
  "",
);

interface Package {
  readonly version: string;
}

export const VERSION = (JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as Package)
  .version;
