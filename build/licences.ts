import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, sep } from "node:path";
import type { Module, Stats } from "webpack";
import { dist } from "./settings";

/** Terms that let anybody use, change and pass on what we ship, and ask only to be named. */
export const PERMISSIVE: ReadonlySet<string> = new Set([
  "0BSD",
  "Apache-2.0",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "BlueOak-1.0.0",
  "CC0-1.0",
  "ISC",
  "MIT",
  "Unlicense",
  "Zlib",
]);

export interface Shipped {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** The licence as the package carries it; "" where it only names it. */
  readonly text: string;
}

interface PackageFile {
  readonly name?: string;
  readonly version?: string;
  readonly license?: string | { readonly type?: string };
  readonly licenses?: readonly { readonly type?: string }[];
}

/** Every package of which a part stands in the bundles. */
export function shippedPackages(stats: readonly Stats[]): Shipped[] {
  const folders = new Set<string>();
  for (const { compilation } of stats) {
    for (const module of compilation.modules) {
      for (const part of partsOf(module)) {
        const path = part.nameForCondition();
        const folder = path === null || path === undefined ? undefined : packageFolder(path);
        if (folder !== undefined) folders.add(folder);
      }
    }
  }
  return [...folders].map(readPackage).sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** The bundler joins modules into one; each may come from another package. */
function partsOf(module: Module): Module[] {
  const { modules } = module as Module & { readonly modules?: readonly Module[] };
  return modules === undefined ? [module] : [...modules];
}

/** The nearest folder above a file of node_modules that names a package. */
function packageFolder(path: string): string | undefined {
  if (!path.includes(`${sep}node_modules${sep}`)) return undefined;
  let folder = dirname(path);
  while (!existsSync(join(folder, "package.json")) || readPackageFile(folder).name === undefined) {
    folder = dirname(folder);
  }
  return folder;
}

function readPackageFile(folder: string): PackageFile {
  return JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as PackageFile;
}

export function readPackage(folder: string): Shipped {
  const { name = "", version = "", license, licenses = [] } = readPackageFile(folder);
  const file = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)(\.\w+)?$/i.test(entry));
  const text = file === undefined ? "" : readFileSync(join(folder, file), "utf8").trim();
  const stated =
    (typeof license === "string" ? license : license?.type) ??
    licenses.map(({ type = "" }) => type).join(" OR ");
  return { name, version, licence: stated === "" ? licenceOfText(text) : stated, text };
}

/** A package may carry the licence's text and leave the field out; only the plainest case is read. */
function licenceOfText(text: string): string {
  return /^\s*Apache License\s+Version 2\.0,/.test(text) ? "Apache-2.0" : "";
}

/** One of several licences joined by OR is enough. */
export function isPermissive(licence: string): boolean {
  return licence
    .replace(/[()]/g, "")
    .split(/\s+OR\s+/)
    .some((choice) => choice.split(/\s+AND\s+/).every((part) => PERMISSIVE.has(part.trim())));
}

/** The list of what is shipped and the texts; throws when something may not be shipped. */
export function licencesText(shipped: readonly Shipped[]): string {
  const refused = shipped.filter(({ licence }) => !isPermissive(licence));
  if (refused.length > 0) {
    throw new Error(
      `not under permissive terms:\n${refused.map((one) => `  ${one.name} ${one.version}: ${one.licence || "no licence"}`).join("\n")}`,
    );
  }
  const list = shipped.map(({ name, version, licence }) => `${name} ${version}: ${licence}`);
  const texts = shipped
    .filter(({ text }) => text !== "")
    .map(({ name, text }) => `${"-".repeat(72)}\n${name}\n\n${text}`);
  return `Fieldsum is under the MIT licence. It ships these packages:\n\n${list.join("\n")}\n\n${texts.join("\n\n")}\n`;
}

/** Writes dist/licences.txt, or throws when something may not be shipped. */
export function writeLicences(stats: readonly Stats[]): void {
  const shipped = shippedPackages(stats);
  writeFileSync(join(dist, "licences.txt"), licencesText(shipped));
  console.log(`licences.txt: ${shipped.length} packages shipped, all under permissive terms`);
}
