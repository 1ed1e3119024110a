import { requireAllRunning } from "../solver/dry-heads";
import { type SolvedLine, solveLine } from "../solver/solve-line";
import type { Cell } from "./cell";
import { above, wholeNumber } from "./limits";
import { readHeads, readLine } from "./line";
import { readNumber } from "./numbers";
import { Memory } from "./memory";
import { readUnits, type Measures } from "./units";

/** The cells of a line with a known inlet pressure, in the order of the sheet functions. */
export type SolvedLineCells = readonly [
  inlet: Cell,
  heads: Cell,
  spacing: Cell,
  inside: Cell,
  discharge: Cell,
  units: Cell,
  rise: Cell,
  regulator: Cell,
  friction: Cell,
  first: Cell,
  riser: Cell,
];

export interface Asked {
  readonly u: Measures;
  readonly solved: SolvedLine;
}

/** More lines than a sheet compares side by side; the longest takes some 45 kB. */
const LINES_KEPT = 100;

const memory = new Memory<Asked>(LINES_KEPT);

/** Reads and solves a line, once for all the cells that ask about it. */
export function askLine(cells: SolvedLineCells): Asked {
  return memory.recall(cells, () => {
    const [inlet, heads, spacing, inside, discharge, units, ...tail] = cells;
    const [rise, regulator, friction, first, riser] = tail;
    const u = readUnits(units);
    const line = readLine(u, readHeads(heads), u.pressure.read("inlet", inlet, above(0)), {
      spacing,
      inside,
      discharge,
      rise,
      regulator,
      friction,
      first,
      riser,
    });
    return { u, solved: solveLine(line) };
  });
}

/** As askLine, for a function with one value: #N/A where a head runs dry. */
export function askRunningLine(cells: SolvedLineCells): Asked {
  const asked = askLine(cells);
  requireAllRunning(asked.solved);
  return asked;
}

/** Index of the nth head of a line. */
export function readHeadIndex(n: Cell, solved: SolvedLine): number {
  return readNumber("n", n, wholeNumber(1, solved.headFlow.length)) - 1;
}
