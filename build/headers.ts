import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { dist, HOST_SCRIPTS } from "./settings";

/**
 * The headers that every server of the built folder should send: the development server sends them,
 * and the build writes them to dist/_headers for static hosts that read such a file.
 */
export interface HeaderRule {
  /** Addresses that it holds for, as static hosts write them: "*" at the end stands for any text. */
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
}

/**
 * Nothing leaves the page and nothing foreign comes in. The grid of the trial page sets styles from
 * code, which needs 'unsafe-inline' for styles; scripts need neither inline code nor eval.
 */
const CONTENT: Readonly<Record<string, string>> = {
  "default-src": "'none'",
  "script-src": "'self'",
  "style-src": "'self' 'unsafe-inline'",
  "img-src": "'self' data: blob:",
  "font-src": "'self' data:",
  "connect-src": "'self'",
  "worker-src": "'self' blob:",
  "base-uri": "'none'",
  "form-action": "'none'",
};

function policy(directives: Readonly<Record<string, string>>): string {
  return Object.entries(directives)
    .map(([name, value]) => `${name} ${value}`)
    .join("; ");
}

const OWN_PAGES = policy({ ...CONTENT, "frame-ancestors": "'none'" });

/**
 * Pages inside Excel load the host's own script, as its rules ask; that script opens a hidden frame
 * from its own address where it doesn't know who shows the page. Excel on the web shows them in a
 * frame under addresses that change, so there is no frame-ancestors here.
 */
const EXCEL_PAGES = policy({
  ...CONTENT,
  "script-src": `'self' ${HOST_SCRIPTS}`,
  "connect-src": `'self' ${HOST_SCRIPTS}`,
  "frame-src": HOST_SCRIPTS,
});
/** The host's script for a page of functions without a pane. */
export const HOST_RUNTIME = `${HOST_SCRIPTS}/lib/1/hosted/custom-functions-runtime.js`;

export const EXCEL_PAGE_FILES = ["functions.html", "taskpane.html"] as const;

const ALWAYS = "no-cache";
const A_YEAR = "public, max-age=31536000, immutable";

function headersWith(contentPolicy: string, cacheControl: string): Record<string, string> {
  return {
    "Content-Security-Policy": contentPolicy,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
    // Excel on the web fetches the metadata and the script from its own address; all of it is public.
    "Access-Control-Allow-Origin": "*",
    "Cache-Control": cacheControl,
  };
}

/** What belongs to an address. */
export function headersFor(path: string): Record<string, string> {
  // Files with a hash in the name never change under that name.
  if (path.startsWith("/assets/")) return headersWith(OWN_PAGES, A_YEAR);
  // Everything else is checked at each visit, and answered with "not modified" while it is the same.
  const forExcel = EXCEL_PAGE_FILES.some((file) => addressesOf(file).includes(path));
  return headersWith(forExcel ? EXCEL_PAGES : OWN_PAGES, ALWAYS);
}

/** Some hosts show a page without its extension. */
function addressesOf(file: string): string[] {
  if (file === "index.html") return ["/", "/index.html", "/index"];
  return file.endsWith(".html") ? [`/${file}`, `/${file.slice(0, -".html".length)}`] : [`/${file}`];
}

/**
 * One rule for each file at the top of the built folder and one for each folder in it. No address
 * falls under two of them: hosts differ in whether a second rule adds to the first, replaces it or
 * is joined to it with a comma, and two policies joined forbid what either forbids.
 */
export function headerRules(
  top: readonly { readonly name: string; readonly folder: boolean }[],
): HeaderRule[] {
  const paths = top.flatMap(({ name, folder }) => (folder ? [`/${name}/*`] : addressesOf(name)));
  return paths.sort().map((path) => ({ path, headers: headersFor(path) }));
}

/** As static hosts read it: the address on a line, its headers indented below. */
export function headersFile(rules: readonly HeaderRule[]): string {
  return rules
    .map(({ path, headers }) =>
      [path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`)].join("\n"),
    )
    .join("\n\n")
    .concat("\n");
}

/** Written last: its rules name what the folder holds. */
export function writeHeaders(folder = dist): void {
  const top = readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => name !== HEADERS)
    .map((entry) => ({ name: entry.name, folder: entry.isDirectory() }));
  writeFileSync(join(folder, HEADERS), headersFile(headerRules(top)));
}

const HEADERS = "_headers";
