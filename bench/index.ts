import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { format } from "prettier";
import { root } from "../build/settings";
import { boundaryRows } from "./boundary";
import { bundleRows } from "./bundles";
import { calcRows } from "./calc";
import { cellRows } from "./cell";
import { etRows } from "./et";
import { fieldRows } from "./field";
import { keepsTarget, type RowGroup } from "./measure";
import { memoryRows } from "./memory";
import { pageRows } from "./page";
import { planRows } from "./plan";
import { line, type Measured, page } from "./report";
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

async function main(): Promise<void> {
  let missed = 0;
  const measured = new Map<string, Measured>();
  const chosen = process.argv.slice(2).filter((name) => name in groups);
  for (const name of chosen.length > 0 ? chosen : Object.keys(groups)) {
    const rows = await groups[name]();
    for (const row of rows) {
      if (!keepsTarget(row)) missed++;
      console.log(line(row));
    }
    const date = new Date().toISOString().slice(0, 10);
    // What could not be measured here stays as it was measured elsewhere.
    if (rows.length > 0) measured.set(name, { date, node: process.versions.node, rows });
  }
  if (process.argv.includes("--write")) {
    const file = join(root, "BENCH.md");
    const text = page(readFileSync(file, "utf8"), Object.keys(groups), measured);
    writeFileSync(file, await format(text, { parser: "markdown" }));
  }
  if (missed > 0) {
    console.log(`${missed} beside the target`);
    process.exitCode = 1;
  }
}

void main();
