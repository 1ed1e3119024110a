import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Stats } from "webpack";
import { dist } from "./settings";

/** Where the worker stands decides what it answers for: all of the folder. */
export const WORKER = "offline.js";

/** What the trial page and the workshop load besides their bundles. */
const BESIDES = [
  "functions.js",
  "callables.json",
  "reference.json",
  "es/callables.json",
  "es/reference.json",
  "icons/icon-32.png",
  "icons/mark.svg",
];

const WITH_HASH = /^assets\//;

export interface KeptFile {
  readonly url: string;
  readonly revision: string | null;
}

/**
 * What makes the trial page and the workshop work without a network. Nothing of the pages inside
 * Excel: these always come from the server.
 */
export function keptFiles(stats: readonly Stats[]): KeptFile[] {
  const bundled = stats.flatMap((one) => Object.keys(one.compilation.assets));
  return [...new Set([...bundled, ...BESIDES])].sort().map((url) => ({
    url,
    revision: WITH_HASH.test(url) ? null : revisionOf(url),
  }));
}

function revisionOf(url: string): string {
  return createHash("sha256")
    .update(readFileSync(join(dist, url)))
    .digest("hex")
    .slice(0, 16);
}
