import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { runInContext } from "node:vm";
import type { HostMetadata } from "../../build/metadata";
import type { Reference } from "../../src/reference";
import { type Hosted, standInHost } from "../../src/screen/stand-in-host";
import { bareContext } from "./bare-context";

const dist = join(__dirname, "..", "..", "dist");

function builtFile(name: string): string {
  const path = join(dist, name);
  if (!existsSync(path)) throw new Error(`dist/${name} is not there: npm run build:functions`);
  return readFileSync(path, "utf8");
}

export function builtReference(): Reference {
  return JSON.parse(builtFile("reference.json")) as Reference;
}

export function builtMetadata(): HostMetadata {
  return JSON.parse(builtFile("functions.json")) as HostMetadata;
}

/**
 * Runs the built functions.js as a host does, in a runtime of its own that has nothing but the
 * language and CustomFunctions: no window, no process, no require, and no code from text.
 */
export function runBuiltFunctions(): ReadonlyMap<string, Hosted> {
  const host = standInHost();
  const runtime = bareContext({ CustomFunctions: host.CustomFunctions });
  runInContext(builtFile("functions.js"), runtime, { filename: "functions.js" });
  return host.functions;
}
