import { spawnSync } from "node:child_process";
import { root } from "./settings";

/**
 * Mutation testing of the lines that changed since another commit (BASE, or the one before): what
 * can be afforded with every change. `npm run mutate` does all of it, by hand.
 */
const ROOMS = /^src\/(formulas|solver|tables|boundary)\/.+\.ts$/;
const MOST_LINES = 150;
const base = process.env.BASE ?? "HEAD~1";

interface Lines {
  readonly file: string;
  readonly from: number;
  readonly count: number;
}

/** The changed lines of the rooms; undefined when there is no such commit, as in a shallow clone. */
function changedLines(): Lines[] | undefined {
  const run = spawnSync("git", ["diff", "--unified=0", "--diff-filter=d", base], {
    cwd: root,
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  if (run.status !== 0) return undefined;
  return linesOf(run.stdout).filter(({ file }) => ROOMS.test(file));
}

/** Reads a difference without context: where each changed piece stands in the new file. */
export function linesOf(difference: string): Lines[] {
  const found: Lines[] = [];
  let file = "";
  for (const line of difference.split("\n")) {
    if (line.startsWith("+++ ")) file = line.slice("+++ b/".length);
    const piece = /^@@ -\S+ \+(\d+)(?:,(\d+))? @@/.exec(line);
    if (piece === null) continue;
    const count = Number(piece[2] ?? 1);
    if (count > 0) found.push({ file, from: Number(piece[1]), count });
  }
  return found;
}

function main(): void {
  const lines = changedLines();
  if (lines === undefined) {
    console.log(`there is no ${base} to compare with: no mutants`);
    return;
  }
  const total = lines.reduce((sum, { count }) => sum + count, 0);
  if (total === 0) {
    console.log("no formula, table, solver or boundary changed: no mutants");
    return;
  }
  if (total > MOST_LINES) {
    console.log(`${total} lines changed, more than ${MOST_LINES}: run npm run mutate by hand`);
    return;
  }
  const pieces = lines.map(({ file, from, count }) => `${file}:${from}-${from + count - 1}`);
  console.log(`mutants in ${pieces.join(", ")}`);
  const run = spawnSync("npx", ["stryker", "run", "--mutate", pieces.join(",")], {
    cwd: root,
    stdio: "inherit",
  });
  process.exitCode = run.status ?? 1;
}

if (require.main === module) main();
