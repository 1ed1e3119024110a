import { meanSpeed } from "../formulas/mean-speed";
import { InvalidInput, NoAnswer } from "../ground/domain-error";
import type { PricedTubing } from "../solver/changeover";
import { dryHeads, firstInAir, requireAllRunning, waterAt } from "../solver/dry-heads";
import { inletFor } from "../solver/find-inlet";
import { firstHeads, type Line } from "../solver/line";
import { greatestSpeed } from "../solver/line-limits";
import { highestInLine, lowestUnderRegulator } from "../solver/line-pressures";
import { type SolvedLine, solveLine } from "../solver/solve-line";
import { spreadOf } from "../solver/spread";
import type { Cell } from "./cell";
import { type HeadsOfRun, readFieldHeads, runName } from "./field";
import {
  type HeadCells,
  lineCells,
  type LineInOrder,
  type LineWithoutTubing,
  readHeads,
  readLine,
  readLineOfRuns,
} from "./line";
import { Memory } from "./memory";
import { above, readNumber, wholeNumber } from "./numbers";
import { type Spill, spillPairs, spillTable } from "./table";
import { type Measures, readUnits } from "./units";

export interface Asked {
  readonly u: Measures;
  readonly solved: SolvedLine;
}

/** More lines than a sheet compares side by side; the longest takes some 45 kB. */
const LINES_KEPT = 100;

const memory = new Memory<Asked>(LINES_KEPT);

/** Reads and solves a line, once for all the cells that ask about it. */
export function askLine(inlet: Cell, line: LineInOrder): Asked {
  const [heads, spacing, inside, discharge, units, rise, regulator, friction, first, riser] = line;
  // One by one, since a host may hand over fewer arguments than there are, or more.
  const asked = [
    inlet,
    heads,
    spacing,
    inside,
    discharge,
    units,
    rise,
    regulator,
    friction,
    first,
    riser,
  ];
  return memory.recall(asked, () => {
    const u = readUnits(units);
    const pressure = u.pressure.read("inlet", inlet, above(0));
    return { u, solved: solveLine(readLine(u, readHeads(heads), pressure, lineCells(line))) };
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

/** One row a head: what the water does from the inlet to the far end. */
export function profileTable({ u, solved }: Asked): Spill {
  const { line } = solved;
  let distance = 0;
  return spillTable(
    [
      { header: "head" },
      { header: "distance", unit: u.length.unit },
      { header: "elevation", unit: u.length.unit },
      { header: "inside diameter", unit: u.diameter.unit },
      { header: "line pressure", unit: u.pressure.unit },
      { header: "nozzle pressure", unit: u.pressure.unit },
      { header: "head flow", unit: u.flow.unit },
      { header: "segment flow", unit: u.flow.unit },
      { header: "speed", unit: u.speed.unit },
      { header: "friction loss", unit: u.pressure.unit },
      { header: "water" },
    ],
    solved.headFlow.map((headFlow, i) => {
      distance += line.segmentLength[i];
      return [
        i + 1,
        u.length.give(distance),
        u.length.give(line.elevation[i]),
        u.diameter.give(line.bore[i]),
        u.pressure.give(solved.linePressure[i]),
        u.pressure.give(solved.nozzlePressure[i]),
        u.flow.give(headFlow),
        u.flow.give(solved.segmentFlow[i]),
        u.speed.give(meanSpeed(solved.segmentFlow[i], line.bore[i])),
        u.pressure.give(solved.segmentLoss[i]),
        waterAt(solved, i),
      ];
    }),
  );
}

/** Label and value: the line at a glance. */
export function summaryTable({ u, solved }: Asked): Spill {
  const { line, nozzlePressure } = solved;
  const pressure = spreadOf(nozzlePressure);
  const flow = spreadOf(solved.headFlow);
  const { lowest, highest } = line.discharge;
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const outside = nozzlePressure.filter((value) => value < lowest || value > highest);
  const inLine = highestInLine(solved);
  const underRegulator = lowestUnderRegulator(solved);
  return spillPairs([
    [{ header: "flow into the lateral", unit: u.flow.unit }, u.flow.give(solved.inflow)],
    [{ header: "lowest nozzle pressure", unit: u.pressure.unit }, u.pressure.give(pressure.lowest)],
    [{ header: "lowest at head" }, pressure.lowestAt + 1],
    [
      { header: "highest nozzle pressure", unit: u.pressure.unit },
      u.pressure.give(pressure.highest),
    ],
    [{ header: "highest at head" }, pressure.highestAt + 1],
    [
      { header: "average nozzle pressure", unit: u.pressure.unit },
      u.pressure.give(pressure.average),
    ],
    [{ header: "pressure variation" }, orNothing(pressure.variation)],
    [{ header: "flow variation" }, orNothing(flow.variation)],
    [{ header: "friction lost", unit: u.pressure.unit }, u.pressure.give(sum(solved.segmentLoss))],
    [{ header: "greatest speed", unit: u.speed.unit }, u.speed.give(greatestSpeed(solved))],
    [{ header: "length", unit: u.length.unit }, u.length.give(sum(line.segmentLength))],
    [{ header: "heads outside the chart's pressures" }, outside.length],
    [{ header: "heads without pressure" }, dryHeads(solved.headFlow)],
    [{ header: "highest line pressure", unit: u.pressure.unit }, u.pressure.give(inLine.pressure)],
    [
      { header: "highest line pressure at head" },
      inLine.head === undefined ? "inlet" : inLine.head + 1,
    ],
    [
      { header: "lowest pressure under a regulator", unit: u.pressure.unit },
      underRegulator === undefined ? "" : u.pressure.give(underRegulator),
    ],
    [{ header: "air in the line" }, airInWords(solved)],
  ]);
}

/** Where the line stops being a full pipe, and why. */
function airInWords(solved: SolvedLine): string {
  const head = firstInAir(solved);
  if (head < 0) return "none";
  return waterAt(solved, head) === "part full"
    ? `gets in at head ${head + 1}: beyond it the water runs down part full, not as in a siphon`
    : `from head ${head + 1} on: it stands above what is left of the pressure, and no water passes it`;
}

/** A line that is dry all along has no average to vary from. */
function orNothing(variation: number): number | string {
  return Number.isNaN(variation) ? "" : variation;
}

/** One row a size, large to small from the inlet, those not used too: how much of each to lay. */
export function layoutTable(
  u: Measures,
  line: LineWithoutTubing,
  sizes: readonly PricedTubing[],
  layout: readonly number[],
): Spill {
  let laid = 0;
  return spillTable(
    [
      { header: "inside diameter", unit: u.diameter.unit },
      { header: "segments" },
      { header: "length", unit: u.length.unit },
      { header: "cost" },
    ],
    sizes.map(({ bore, price }, i) => {
      const lengths = line.segmentLength.slice(laid, laid + layout[i]);
      laid += layout[i];
      const length = lengths.reduce((total, part) => total + part, 0);
      return [u.diameter.give(bore), layout[i], u.length.give(length), length * price];
    }),
  );
}

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
