import { cpSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const TEXTS = /\.(html|js|css|json|svg|txt|xml)$/;

/** Less than this fits into one packet as it is. */
const SMALLEST = 1024;

/** The best takes minutes over the grid, and saves a twentieth. */
const EFFORT = { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } };

const WAYS = {
  gz: (bytes: Buffer) => gzipSync(bytes, { level: 9 }),
  br: (bytes: Buffer) => brotliCompressSync(bytes, EFFORT),
} as const;

export type Way = keyof typeof WAYS;

/**
 * A copy of the built folder, elsewhere, with every text compressed beside it as file servers look
 * for it. Whoever asked for the copy removes it.
 */
export function packedCopy(folder: string, ways: readonly Way[] = ["gz", "br"]): string {
  const copy = mkdtempSync(join(tmpdir(), "fieldsum-pages-"));
  cpSync(folder, copy, { recursive: true });
  for (const name of readdirSync(copy, { recursive: true, encoding: "utf8" })) {
    if (!TEXTS.test(name)) continue;
    const bytes = readFileSync(join(copy, name));
    if (bytes.length < SMALLEST) continue;
    for (const way of ways) writeFileSync(join(copy, `${name}.${way}`), WAYS[way](bytes));
  }
  return copy;
}
