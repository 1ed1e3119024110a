import { requireAllRunning } from "../solver/dry-heads";
import { type SolvedLine, solveLine } from "../solver/solve-line";
import type { Cell } from "./cell";
import { above, wholeNumber } from "./limits";
import { lineCells, type LineInOrder, readHeads, readLine } from "./line";
import { readNumber } from "./numbers";
import { Memory } from "./memory";
import { readUnits, type Measures } from "./units";

export interface Asked {
  readonly u: Measures;
  readonly solved: SolvedLine;
}

/** More lines than a sheet compares side by side; the longest takes some 45 kB. */
const LINES_KEPT = 100;

const memory = new Memory<Asked>(LINES_KEPT);

/** Reads and solves a line, once for all the cells that ask about it. */
export function askLine(inlet: Cell, inOrder: LineInOrder): Asked {
  const cells = lineCells(inOrder);
  const { heads, spacing, inside, discharge, units, ...others } = cells;
  const { rise, regulator, friction, first, riser } = others;
  // One by one, since a host may hand over fewer arguments than there are, or more.
  const along = [heads, spacing, inside, discharge, units, rise, regulator];
  return memory.recall([inlet, ...along, friction, first, riser], () => {
    const u = readUnits(units);
    const pressure = u.pressure.read("inlet", inlet, above(0));
    return { u, solved: solveLine(readLine(u, readHeads(heads), pressure, cells)) };
  });
}

/** As askLine, for a function with one value: #N/A where a head runs dry. */
export function askRunningLine(inlet: Cell, line: LineInOrder): Asked {
  const asked = askLine(inlet, line);
  requireAllRunning(asked.solved);
  return asked;
}

/** Index of the nth head of a line. */
export function readHeadIndex(n: Cell, solved: SolvedLine): number {
  return readNumber("n", n, wholeNumber(1, solved.headFlow.length)) - 1;
}
