import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Reference } from "../../src/reference";
import { buildOnly } from "../build";
import { dist } from "../settings";

/** Builds the functions and writes an edition from their reference; for the command line. */
export function writeEdition(write: (reference: Reference) => void | Promise<void>): void {
  buildOnly(["functions"])
    .then(() => write(JSON.parse(readFileSync(join(dist, "reference.json"), "utf8")) as Reference))
    // The engine of the sheets keeps a timer: without an exit the process would wait for it.
    .then(
      () => process.exit(0),
      (error: unknown) => {
        console.error(error instanceof Error ? error.message : error);
        process.exit(1);
      },
    );
}

/** A folder of its own with these files, and nothing of an earlier one. */
export function writeFolder(folder: string, files: ReadonlyMap<string, string>): void {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of files) writeFileSync(join(folder, name), text);
}
