import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { buildSync } from "esbuild";
import type { evaluate as Evaluate } from "../../build/sheet-evaluator";

const root = join(__dirname, "../..");
const bundle = join(root, "node_modules", ".cache", "sheet-evaluator.cjs");

/**
 * The evaluator of ready-made sheets. The formula engine is made of ES modules, which jest cannot
 * load, so they are first put into one file.
 */
export function loadEvaluator(): typeof Evaluate {
  mkdirSync(join(root, "node_modules", ".cache"), { recursive: true });
  buildSync({
    entryPoints: [join(root, "build", "sheet-evaluator.ts")],
    outfile: bundle,
    bundle: true,
    platform: "node",
    format: "cjs",
    logLevel: "error",
  });
  // eslint-disable-next-line @typescript-eslint/no-require-imports
  return (require(bundle) as { evaluate: typeof Evaluate }).evaluate;
}
