import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import webpack, { type Configuration, type Stats } from "webpack";
import { spanishEdition, writeEditionReference } from "./editions";
import { writeHeaders } from "./headers";
import { writeIcons } from "./icons";
import { writeLicences } from "./licences";
import { validateManifest, writeManifest } from "./manifest";
import { readMetadata, writeMetadata } from "./metadata";
import { type KeptFile, keptFiles } from "./offline";
import { writePlainPages } from "./plain-pages";
import { writeReferencePages } from "./reference-pages";
import { writeSourcesPage } from "./sources";
import { DEFAULT_HOST_SCRIPTS, dist, HOST_SCRIPTS } from "./settings";

// Where people look for it, and so plain JavaScript, without types.
// eslint-disable-next-line @typescript-eslint/no-require-imports
const { bundles, offline } = require("../webpack.config.js") as {
  readonly bundles: Configuration[];
  offline(files: readonly KeptFile[]): Configuration;
};

/** The pages that work without a network once they were visited. */
const KEPT_PAGES = ["trial", "workshop"];

/** Everything that dist/ holds, from nothing. */
export async function build(): Promise<void> {
  const generated = readMetadata();
  rmSync(dist, { recursive: true, force: true });
  mkdirSync(dist);
  writeMetadata(generated);
  writeIcons();
  writePlainPages();
  writeReferencePages(generated.functions);
  writeSourcesPage(generated.functions);
  writeManifest();
  const pages = await bundle(bundles);
  const kept = pages.filter(({ compilation }) => KEPT_PAGES.includes(compilation.name ?? ""));
  writeLicences([...pages, ...(await bundle([offline(keptFiles(kept))]))]);
  // The formula engine is large; it is loaded where workbooks are made, and not by the server.
  const { writeReadyMade } = await import("./sheets");
  await writeReadyMade(join(dist, "sheets"));
  writeHeaders();
}

/** The metadata and some of the bundles, by name; what else dist/ holds stays. */
export async function buildOnly(names: readonly string[]): Promise<void> {
  const unknown = names.filter((wanted) => !bundles.some(({ name }) => name === wanted));
  if (unknown.length > 0) throw new Error(`there is nothing named ${unknown.join(", ")} to build`);
  mkdirSync(dist, { recursive: true });
  const generated = readMetadata();
  writeMetadata(generated);
  writeEditionReference(spanishEdition(generated.functions));
  await bundle(bundles.filter(({ name = "" }) => names.includes(name)));
}

function bundle(chosen: Configuration[]): Promise<readonly Stats[]> {
  return new Promise((resolve, reject) => {
    const compiler = webpack(chosen);
    compiler.run((error, result) => {
      compiler.close(() => {
        if (error !== null) reject(error);
        else if (result === undefined) reject(new Error("the bundler gave no result"));
        else if (result.hasErrors()) {
          reject(new Error(result.toString({ preset: "errors-only", colors: false })));
        } else {
          setHostScripts();
          resolve(result.stats);
        }
      });
    });
  });
}

/** The pane's page names the usual address of the host's scripts; a build may have another. */
function setHostScripts(): void {
  const page = join(dist, "taskpane.html");
  if (HOST_SCRIPTS === DEFAULT_HOST_SCRIPTS || !existsSync(page)) return;
  writeFileSync(page, readFileSync(page, "utf8").split(DEFAULT_HOST_SCRIPTS).join(HOST_SCRIPTS));
}

async function main(names: readonly string[]): Promise<void> {
  const started = Date.now();
  if (names.length > 0) {
    await buildOnly(names);
  } else {
    await build();
    await validateManifest();
  }
  console.log(`dist/ is ready after ${((Date.now() - started) / 1000).toFixed(1)} s`);
}

if (require.main === module) {
  main(process.argv.slice(2)).catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  });
}
