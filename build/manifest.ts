import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { XMLParser } from "fast-xml-parser";
import { OfficeAddinManifest } from "office-addin-manifest";
import { DEFAULT_NAMESPACE } from "../src/formula-text/dialect";
import { BASE_URL, dist, NAMESPACE, root, VERSION } from "./settings";

const built = join(dist, "manifest.xml");

const source = join(root, "manifest.xml");

/** What the manifest at the root says, and so what a build puts something else in the place of. */
export const LOCAL_ADDRESS = "https://localhost:3443";

/** The manifest at the root, for this build's address, namespace and version. */
export function rewritten(manifest: string): string {
  return manifest
    .split(LOCAL_ADDRESS)
    .join(BASE_URL)
    .replace(/(<Version>)[^<]*(<)/, `$1${VERSION}.0$2`)
    .replace(/(id="Functions\.Namespace" DefaultValue=")[^"]*/, `$1${NAMESPACE}`)
    .replace(`Type =${DEFAULT_NAMESPACE}. in`, `Type =${NAMESPACE}. in`);
}

export function writeManifest(): void {
  writeFileSync(built, rewritten(readFileSync(source, "utf8")));
}

interface Element {
  readonly [name: string]: unknown;
}

const MOST_RESID = 32;
const MOST_SHORT = 125;
const MOST_LONG = 250;
const LEAST_NAMESPACE = 4;

/** What is wrong with a manifest, beyond its grammar; `exists` tells whether the build has a file. */
export function problemsOf(
  xml: string,
  baseUrl: string,
  exists: (file: string) => boolean,
): string[] {
  const problems: string[] = [];
  const resources = new Map<string, string>();
  const used = new Set<string>();
  const tree = new XMLParser({ ignoreAttributes: false, attributeNamePrefix: "" }).parse(
    xml,
  ) as Element;

  const checkAddress = (address: string) => {
    if (!address.startsWith("https://")) problems.push(`${address} is not https`);
    else if (!address.startsWith(`${baseUrl}/`))
      problems.push(`${address} is not under ${baseUrl}`);
    else if (!exists(address.slice(baseUrl.length + 1))) problems.push(`${address} is not built`);
  };

  walk(tree, (name, element) => {
    const { id, resid, DefaultValue: value } = element as Record<string, string | undefined>;
    if (resid !== undefined) used.add(resid);
    if (name.startsWith("bt:") && id !== undefined && value !== undefined) {
      if (id.length > MOST_RESID) problems.push(`the resid ${id} is longer than ${MOST_RESID}`);
      if (resources.has(id)) problems.push(`the resid ${id} stands twice`);
      resources.set(id, value);
    }
    if (value !== undefined && /^https?:/.test(value)) checkAddress(value);
  });

  for (const id of used) if (!resources.has(id)) problems.push(`nothing has the resid ${id}`);
  for (const id of resources.keys()) if (!used.has(id)) problems.push(`nothing uses ${id}`);
  for (const [group, most] of [
    ["ShortStrings", MOST_SHORT],
    ["LongStrings", MOST_LONG],
  ] as const) {
    walk(tree, (name, element) => {
      if (name !== `bt:${group}`) return;
      walk(element, (_, text) => {
        const length = String(text.DefaultValue ?? "").length;
        if (length > most)
          problems.push(`${String(text.id)} has ${length} characters, at most ${most}`);
      });
    });
  }
  const namespace = resources.get("Functions.Namespace") ?? "";
  if (!new RegExp(`^[A-Za-z]{${LEAST_NAMESPACE},}$`).test(namespace)) {
    problems.push(`the namespace "${namespace}" is not ${LEAST_NAMESPACE} or more letters`);
  }
  return problems;
}

/** Calls `visit` for every element below, with its name. */
function walk(element: Element, visit: (name: string, element: Element) => void): void {
  for (const [name, child] of Object.entries(element)) {
    for (const one of Array.isArray(child) ? child : [child]) {
      if (typeof one !== "object" || one === null) continue;
      visit(name, one as Element);
      walk(one as Element, visit);
    }
  }
}

/** The manifest's public schema is not ours to copy: MANIFEST_SCHEMA names its file, where there is one. */
const SCHEMA = process.env.MANIFEST_SCHEMA ?? "";

function schemaProblems(path: string): string[] {
  if (!existsSync(SCHEMA)) {
    console.log("not checked against the schema: MANIFEST_SCHEMA names no file");
    return [];
  }
  const run = spawnSync("xmllint", ["--noout", "--schema", SCHEMA, path], { encoding: "utf8" });
  if (run.error !== undefined) {
    console.log("not checked against the schema: xmllint is not installed");
    return [];
  }
  return run.status === 0 ? [] : run.stderr.trim().split("\n");
}

/** The reader of the platform's own tools must find what a deployment shows. */
async function readingProblems(path: string): Promise<string[]> {
  const problems: string[] = [];
  const info = await OfficeAddinManifest.readManifestFile(path);
  if (info.displayName !== "Fieldsum") problems.push("the platform's reader finds no name");
  if (info.version !== `${VERSION}.0`) {
    problems.push(
      `the platform's reader finds the version ${info.version ?? ""}, not ${VERSION}.0`,
    );
  }
  if (!(info.hosts ?? []).includes("Workbook")) {
    problems.push("the platform's reader does not find the host");
  }
  return problems;
}

/** Throws with the list of what is wrong with the manifest at the root or with dist/manifest.xml. */
export async function validateManifest(): Promise<void> {
  const isBuilt = (file: string) => existsSync(join(dist, file));
  for (const [name, path, address] of [
    ["manifest.xml", source, LOCAL_ADDRESS],
    ["dist/manifest.xml", built, BASE_URL],
  ] as const) {
    const problems = [
      ...problemsOf(readFileSync(path, "utf8"), address, isBuilt),
      ...schemaProblems(path),
      ...(await readingProblems(path)),
    ];
    if (problems.length > 0) throw new Error(`${name}:\n  ${problems.join("\n  ")}`);
    console.log(`${name}: valid, for ${address}`);
  }
}

if (require.main === module) {
  validateManifest().catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  });
}
