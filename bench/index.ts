import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../build/settings";
import { boundaryRows } from "./boundary";
import { bundleRows } from "./bundles";
import { calcRows } from "./calc";
import { cellRows } from "./cell";
import { etRows } from "./et";
import { fieldRows } from "./field";
import { keepsTarget, type Row, type RowGroup } from "./measure";
import { memoryRows } from "./memory";
import { pageRows } from "./page";
import { planRows } from "./plan";
import { sheetRows } from "./sheet";
import { solverRows } from "./solver";

/** Each group is a file of its own; a new one is added here. */
const groups: Readonly<Record<string, RowGroup>> = {
  solver: solverRows,
  cell: cellRows,
  boundary: boundaryRows,
  et: etRows,
  field: fieldRows,
  plan: planRows,
  bundle: bundleRows,
  memory: memoryRows,
  page: pageRows,
  sheet: sheetRows,
  calc: calcRows,
};

const BENCH = join(root, "BENCH.md");

async function main(): Promise<void> {
  let missed = 0;
  const measured = new Map<string, readonly Row[]>();
  const chosen = process.argv.slice(2).filter((name) => name in groups);
  for (const name of chosen.length > 0 ? chosen : Object.keys(groups)) {
    const rows = await groups[name]();
    for (const row of rows) {
      if (!keepsTarget(row)) missed++;
      console.log(report(row));
    }
    // What could not be measured here stays as it was measured elsewhere.
    if (rows.length > 0) measured.set(name, rows);
  }
  if (process.argv.includes("--write")) writeFileSync(BENCH, page(measured));
  if (missed > 0) {
    console.log(`${missed} beside the target`);
    process.exitCode = 1;
  }
}

function report(row: Row): string {
  const { target } = row;
  const wanted = target === undefined ? "" : `, ${target.bound} ${target.value}`;
  const verdict = keepsTarget(row) ? "" : "  MISSED";
  return `${row.ratio.toFixed(2).padStart(8)}  ${row.what}${wanted} (${row.times})${verdict}`;
}

/** The report as a page: a part for each group, of which those not measured now stay as they are. */
function page(measured: ReadonlyMap<string, readonly Row[]>): string {
  const before = existsSync(BENCH) ? readFileSync(BENCH, "utf8") : "";
  const date = new Date().toISOString().slice(0, 10);
  const parts = Object.keys(groups).flatMap((name) => {
    const rows = measured.get(name);
    if (rows !== undefined) return [`## ${name}\n\n${date}\n\n${table(rows)}\n`];
    const [, kept] = before.split(`## ${name}\n`);
    return kept === undefined ? [] : [`## ${name}\n${kept.split("\n## ")[0].trimEnd()}\n`];
  });
  return [
    "# Bench",
    "",
    `Measured with Node ${process.versions.node} on a machine with two cores, each part on the day that stands`,
    "under its name. Each row is a ratio of two things measured in the same run: the times differ from",
    "machine to machine, the ratios much less. To repeat: `npm run build && npm run bench`; with",
    "`-- --write` it writes this page, with `-- calc --write` that part of it.",
    "",
    parts.join("\n"),
  ].join("\n");
}

function table(rows: readonly Row[]): string {
  return [
    "| ratio | wanted | what | measured |",
    "|---:|---|---|---|",
    ...rows.map(({ what, ratio, target, times }) => {
      const wanted = target === undefined ? "" : `${target.bound} ${target.value}`;
      return `| ${ratio.toFixed(2)} | ${wanted} | ${what} | ${times} |`;
    }),
  ].join("\n");
}

void main();
