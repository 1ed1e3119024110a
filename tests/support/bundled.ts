import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Script } from "node:vm";
import { buildSync } from "esbuild";

const root = join(__dirname, "../..");
const cache = join(root, "node_modules", ".cache");
const loaded = new Map<string, unknown>();

/**
 * A module of the build that evaluates workbooks. The formula engine is made of ES modules, which jest
 * cannot load, so they are first put into one file; each worker has its own.
 */
export function bundled<Module>(name: string, folder = "build"): Module {
  if (!loaded.has(name)) loaded.set(name, load(name, folder));
  return loaded.get(name) as Module;
}

function load(name: string, folder: string): unknown {
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
  const wrapped = `(function (module, exports, require) {${readFileSync(bundle, "utf8")}\n})`;
  const run = new Script(wrapped, { filename: bundle }).runInThisContext() as (
    ...given: unknown[]
  ) => void;
  run(module, module.exports, require);
  return module.exports;
}
