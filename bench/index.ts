import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../build/settings";
import { boundaryRows } from "./boundary";
import { bundleRows } from "./bundles";
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
};

async function main(): Promise<void> {
  let missed = 0;
  const rows: Row[] = [];
  const chosen = process.argv.slice(2).filter((name) => name in groups);
  for (const name of chosen.length > 0 ? chosen : Object.keys(groups)) {
    for (const row of await groups[name]()) {
      if (!keepsTarget(row)) missed++;
      rows.push(row);
      console.log(report(row));
    }
  }
  if (process.argv.includes("--write") && chosen.length === 0) {
    writeFileSync(join(root, "BENCH.md"), table(rows, new Date().toISOString().slice(0, 10)));
  }
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

/** The report as a page: measured by hand, so the date says how old it is. */
function table(rows: readonly Row[], date: string): string {
  const cells = rows.map(({ what, ratio, target, times }) => {
    const wanted = target === undefined ? "" : `${target.bound} ${target.value}`;
    return `| ${ratio.toFixed(2)} | ${wanted} | ${what} | ${times} |`;
  });
  return [
    "# Bench",
    "",
    `Measured on ${date} with Node ${process.versions.node} on a machine with two cores. Each row is a`,
    "ratio of two things measured in the same run: the times differ from machine to machine, the ratios",
    "much less. To repeat: `npm run build && npm run bench`; with `-- --write` it writes this page.",
    "",
    "| ratio | wanted | what | measured |",
    "|---:|---|---|---|",
    ...cells,
    "",
  ].join("\n");
}

void main();
