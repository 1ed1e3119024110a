import { InvalidInput, NoAnswer } from "../ground/domain-error";
import { inletFor } from "../solver/find-inlet";
import { firstHeads, type Line } from "../solver/line";
import { greatestSpeed } from "../solver/line-limits";
import { solveLine } from "../solver/solve-line";
import { spreadOf } from "../solver/spread";
import type { Cell } from "./cell";
import { type HeadsOfRun, readFieldHeads, runName } from "./field";
import { above } from "./limits";
import { type HeadCells, readLineOfRuns } from "./line";
import { type Spill, spillTable } from "./table";
import { readUnits, type Measures } from "./units";

/** The cells of a line that moves over a field, in the words of LATERAL.RUNS. */
export interface RunsCells extends HeadCells {
  readonly inlet: Cell;
  readonly heads: Cell;
  readonly inside: Cell;
  readonly units: Cell;
  readonly lowest: Cell;
}

/** Solves every run of a line on its own ground, the heads behind it shut off: one row a run. */
export function solvedRuns(cells: RunsCells): Spill {
  const u = readUnits(cells.units);
  const runs = readFieldHeads(u.length, cells.heads);
  const inlet = u.pressure.read("inlet", cells.inlet, above(0));
  const target = u.pressure.readOptional("lowest", cells.lowest, above(0));
  const longest = Math.max(...runs.map(({ along }) => along.length));
  const { line, firstFromTable } = readLineOfRuns(u, inlet, longest, cells);
  const pressure = u.pressure.unit;
  const columns = [
    { header: "position" },
    { header: "run" },
    { header: "heads" },
    { header: "flow", unit: u.flow.unit },
    { header: "lowest nozzle pressure", unit: pressure },
    { header: "highest nozzle pressure", unit: pressure },
    { header: "highest line pressure", unit: pressure },
    { header: "pressure variation" },
    { header: "greatest speed", unit: u.speed.unit },
  ];
  const body = runs.map((run) => {
    const laid = onItsGround(u, line, run, firstFromTable);
    const solved = solveLine(laid);
    const nozzle = spreadOf(solved.nozzlePressure);
    const row = [
      run.position,
      run.run,
      run.along.length,
      u.flow.give(solved.inflow),
      u.pressure.give(nozzle.lowest),
      u.pressure.give(nozzle.highest),
      // Uphill the inlet itself has the most.
      u.pressure.give(Math.max(inlet, ...solved.linePressure)),
      // A run that is dry all along has no average to vary from.
      Number.isNaN(nozzle.variation) ? "" : nozzle.variation,
      u.speed.give(greatestSpeed(solved)),
    ];
    return target === undefined ? row : [...row, u.pressure.give(inletOf(laid, target, run))];
  });
  return spillTable(
    target === undefined
      ? columns
      : [...columns, { header: "inlet for the lowest", unit: pressure }],
    body,
  );
}

/** What a spacing and a table of heads may differ by: the table may have been rounded. */
const SAME_SPACING = 0.01;

function onItsGround(u: Measures, line: Line, run: HeadsOfRun, firstFromTable: boolean): Line {
  const { along } = run;
  const laid = firstHeads(line, along.length);
  let behind = 0;
  for (let i = 1; i < along.length; i++) {
    behind += laid.segmentLength[i];
    const inTable = along[i] - along[0];
    if (Math.abs(behind - inTable) > SAME_SPACING * inTable) {
      throw new InvalidInput(
        `spacing puts head ${i + 1} of ${runName(run)} ${u.length.say(behind)} behind head 1, ` +
          `the heads table ${u.length.say(inTable)}: give the spacing of the layout`,
      );
    }
  }
  const [first, ...others] = laid.segmentLength;
  return {
    ...laid,
    segmentLength: [firstFromTable ? along[0] : first, ...others],
    elevation: run.heights,
  };
}

function inletOf(line: Line, target: number, run: HeadsOfRun): number {
  try {
    return inletFor(line, target, "lowest");
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error;
    throw new NoAnswer(`lowest, as a target, in ${runName(run)}: ${error.message}`);
  }
}
