import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../../settings";
import { readProgram } from "./program";
import { Translator } from "./translate";

export const RUNTIME_FILE = join(__dirname, "runtime.py");

/** The functions as one module of plain Python 3.8, the runtime in it. */
export function pythonFunctions(): string {
  const runtime = readFileSync(RUNTIME_FILE, "utf8");
  const names = [...runtime.matchAll(/^(?:def |class )?(_\w+)/gm)].map(([, name]) => name);
  const entry = "src/functions/guarded.ts";
  const translator = new Translator(readProgram(join(root, entry)), new Set(names));
  const functions = translator.translate();
  return [
    runtime.trimEnd(),
    functions,
    "",
    "",
    `FUNCTIONS = ${translator.exported(entry, "guardedFunctions")}`,
    `CELL_ERROR = ${translator.exported("src/boundary/guard.ts", "CellError")}`,
    "",
  ].join("\n");
}
