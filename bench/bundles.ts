import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, Script } from "node:vm";
import { gzipSync } from "node:zlib";
import { catalogue } from "../src/catalogue";
import { dist } from "../build/settings";
import { standInHost } from "../tests/support/host";
import { microseconds, type Row, say } from "./measure";

const KILOBYTE = 1000;

/**
 * For functions.js, which hosts keep. Fields, plans and map files brought it from some 45 kB to 72:
 * geodesics and the triangles of heights, both from libraries, are a sixth of it, and the rest is
 * spread over many small files.
 */
const MOST_FOR_FUNCTIONS = 75;

/** What a browser or a host fetches, as static hosts send it. */
function gzipped(...files: string[]): number {
  return files.reduce((sum, file) => sum + gzipSync(readFileSync(join(dist, file))).length, 0);
}

function sizeRow(what: string, bytes: number, most: number): Row {
  return {
    what: `of its limit of ${most} kB: ${what}, gzip`,
    ratio: bytes / (most * KILOBYTE),
    target: { bound: "at most", value: 1 },
    times: `${(bytes / KILOBYTE).toFixed(1)} kB`,
  };
}

/** Sizes of what is shipped, and how long the functions take to load and associate. */
export function bundleRows(): Row[] {
  if (!existsSync(join(dist, "taskpane.html"))) {
    throw new Error('the bench measures what is built: run "npm run build" first');
  }
  const pane = readdirSync(join(dist, "assets"))
    .filter((file) => /^taskpane\.[^.]+\.js$/.test(file))
    .map((file) => `assets/${file}`);
  const source = readFileSync(join(dist, "functions.js"), "utf8");
  const associate = () => {
    const host = standInHost();
    // A context of its own, as a host gives the script; nothing is kept from the run before.
    new Script(source).runInContext(createContext({ CustomFunctions: host.CustomFunctions }));
    if (host.functions.size !== catalogue.length) throw new Error("not every function associated");
  };
  const load = microseconds(associate, 1500);
  const empty = microseconds(() => new Script("0").runInContext(createContext({})), 500);
  return [
    sizeRow("functions.js", gzipped("functions.js"), MOST_FOR_FUNCTIONS),
    sizeRow("script of the pane, functions included", gzipped("functions.js", ...pane), 300),
    {
      what: "times an empty script: loading functions.js and associating every function",
      ratio: load / empty,
      times: `functions ${say(load)}, empty ${say(empty)}`,
    },
  ];
}
