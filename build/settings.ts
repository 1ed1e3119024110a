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

/** Where the host's own scripts come from; clouds of their own (governments, some countries) have another. */
export const DEFAULT_HOST_SCRIPTS = "https://appsforoffice.microsoft.com";
export const HOST_SCRIPTS = (process.env.HOST_SCRIPTS ?? DEFAULT_HOST_SCRIPTS).replace(/\/+$/, "");

/** Whom the support page sends people to: a mail address, or the https address of a page. */
export const SUPPORT_CONTACT = process.env.SUPPORT_CONTACT ?? "";

/**
 * The day that the workbooks' values were computed on, and the date of the files: today, or what
 * SOURCE_DATE_EPOCH (seconds, as reproducible builds have it) says, so that a build can be repeated.
 */
export const BUILD_DATE = dayOf(
  process.env.SOURCE_DATE_EPOCH === undefined
    ? Date.now()
    : Number(process.env.SOURCE_DATE_EPOCH) * 1000,
);

function dayOf(milliseconds: number): Date {
  const date = new Date(milliseconds);
  if (Number.isNaN(date.getTime())) throw new Error("SOURCE_DATE_EPOCH is no number of seconds");
  // Noon, so that no time zone shows another day.
  return new Date(Date.UTC(date.getUTCFullYear(), date.getUTCMonth(), date.getUTCDate(), 12));
}

interface Package {
  readonly version: string;
}

export const VERSION = (JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as Package)
  .version;
