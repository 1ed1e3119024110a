import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { runInThisContext } from "node:vm";
import { buildSync } from "esbuild";

const root = join(__dirname, "../..");
const cache = join(root, "node_modules", ".cache");

/**
 * A module of the build that evaluates workbooks. The formula engine is made of ES modules, which jest
 * cannot load, so they are first put into one file; each worker has its own. It runs outside the
 * test's sandbox, with the language's own objects and a host of its own: in there it takes three times
 * as long.
 */
export function bundled<Module>(name: string, folder = "build"): Module {
  mkdirSync(cache, { recursive: true });
  const bundle = join(cache, `${name}-${process.env.JEST_WORKER_ID ?? "1"}.cjs`);
  buildSync({
    entryPoints: [join(root, folder, `${name}.ts`)],
    outfile: bundle,
    bundle: true,
    platform: "node",
    format: "cjs",
    logLevel: "error",
    // Paths of the project, for the place of the bundle is another.
    define: { __dirname: JSON.stringify(join(root, "build")) },
  });
  const module = { exports: {} };
  const load = runInThisContext(
    `(function (module, exports, require) {${readFileSync(bundle, "utf8")}\n})`,
    { filename: bundle },
  ) as (...given: unknown[]) => void;
  load(module, module.exports, require);
  return module.exports as Module;
}
