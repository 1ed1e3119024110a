import { boundaryRows } from "./boundary";
import { etRows } from "./et";
import { keepsTarget, type Row, type RowGroup } from "./measure";
import { solverRows } from "./solver";

/** Each group is a file of its own; a new one is added here. */
const groups: readonly RowGroup[] = [solverRows, boundaryRows, etRows];

async function main(): Promise<void> {
  let missed = 0;
  for (const group of groups) {
    for (const row of await group()) {
      if (!keepsTarget(row)) missed++;
      console.log(report(row));
    }
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

void main();
