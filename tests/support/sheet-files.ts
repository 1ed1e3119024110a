import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const script = join(__dirname, "../../build/sheets.ts");

/** Builds the workbooks of these ready-made sheets (all unless given) into a folder of their own. */
export function builtSheets(only: readonly string[] = []): { folder: string; names: string[] } {
  const folder = mkdtempSync(join(tmpdir(), "fieldsum-sheets-"));
  const choice = only.flatMap((id) => ["--only", id]);
  execFileSync(process.execPath, ["--import", "tsx", script, "--to", folder, ...choice], {
    stdio: "pipe",
  });
  return { folder, names: readdirSync(folder).sort() };
}

/** Whether a command is there to run. */
export function hasCommand(command: string, ...words: readonly string[]): boolean {
  try {
    execFileSync(command, [...words], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
