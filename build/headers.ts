/**
 * The headers that every server of the built folder should send: the development server sends them,
 * and the build writes them to dist/_headers for static hosts that read such a file.
 */
export interface HeaderRule {
  /** Addresses that it holds for, as static hosts write them: "*" stands for any text. */
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
 * Pages inside Excel load the host's own script, as its rules ask. Excel on the web shows them in a
 * frame under addresses that change, so there is no frame-ancestors here.
 */
const HOST_SCRIPT = "https://appsforoffice.microsoft.com";
/** The host's script for a page of functions without a pane. */
export const HOST_RUNTIME = `${HOST_SCRIPT}/lib/1/hosted/custom-functions-runtime.js`;
const EXCEL_PAGES = policy({
  ...CONTENT,
  "script-src": `'self' ${HOST_SCRIPT}`,
  "connect-src": `'self' ${HOST_SCRIPT}`,
});

export const EXCEL_PAGE_FILES = ["functions.html", "taskpane.html"] as const;

const ALWAYS = "no-cache";
const A_YEAR = "public, max-age=31536000, immutable";

/** The most general first: a later rule overrides an earlier one's header of the same name. */
export const headerRules: readonly HeaderRule[] = [
  {
    path: "/*",
    headers: {
      "Content-Security-Policy": OWN_PAGES,
      "X-Content-Type-Options": "nosniff",
      "Referrer-Policy": "no-referrer",
      "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
      // Excel on the web fetches the metadata and the script from its own address; all of it is public.
      "Access-Control-Allow-Origin": "*",
      // Checked at each visit, and answered with "not modified" while it is the same.
      "Cache-Control": ALWAYS,
    },
  },
  ...EXCEL_PAGE_FILES.map((file) => ({
    path: `/${file}`,
    headers: { "Content-Security-Policy": EXCEL_PAGES },
  })),
  // Files with a hash in the name never change under that name.
  { path: "/assets/*", headers: { "Cache-Control": A_YEAR } },
];

export function headersFor(path: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const rule of headerRules) {
    if (matches(rule.path, path)) Object.assign(found, rule.headers);
  }
  return found;
}

function matches(pattern: string, path: string): boolean {
  return pattern.endsWith("*") ? path.startsWith(pattern.slice(0, -1)) : path === pattern;
}

/** As static hosts read it: the address on a line, its headers indented below. */
export function headersFile(): string {
  return headerRules
    .map(({ path, headers }) =>
      [path, ...Object.entries(headers).map(([name, value]) => `  ${name}: ${value}`)].join("\n"),
    )
    .join("\n\n")
    .concat("\n");
}
