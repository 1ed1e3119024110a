import { type LinesRunning, linesOnPump, type PipeSection } from "../solver/lines-on-pump";
import type { Cell } from "./cell";
import { readCurve } from "./curve";
import { readPairs } from "./discharge";
import { above, anyNumber, atLeast, wholeNumber } from "./limits";
import { type LineCells, readHeads, readLine } from "./line";
import { Memory } from "./memory";
import { readNumber } from "./numbers";
import { type Spill, spillPairs } from "./table";
import { readUnits, type Units } from "./units";

/** More lines on one pump than any field has. */
const MOST_RUNNING = 100;

/** The cells of PUMP.LINES. */
export interface LinesOnPumpCells extends LineCells {
  readonly curve: Cell;
  readonly lift: Cell;
  readonly running: Cell;
  readonly main: Cell;
  readonly feeder: Cell;
  readonly heads: Cell;
  readonly units: Cell;
}

export interface AskedLines {
  readonly u: Units;
  readonly running: LinesRunning;
}

/** A sheet compares a few numbers of lines, with a cell for each value of each. */
const memory = new Memory<AskedLines>(50);

/** Reads pump, pipes and lines and solves them, once for all the cells that ask about them. */
export function askLinesOnPump(cells: LinesOnPumpCells): AskedLines {
  const given = [cells.curve, cells.lift, cells.running, cells.main, cells.feeder, cells.heads];
  const line = [cells.spacing, cells.inside, cells.discharge, cells.units, cells.rise];
  const tail = [cells.regulator, cells.friction, cells.first, cells.riser];
  return memory.recall([...given, ...line, ...tail], () => {
    const u = readUnits(cells.units);
    const system = {
      curve: readCurve(u, "curve", cells.curve, atLeast(0)),
      lift: u.length.read("lift", cells.lift, anyNumber),
      running: readNumber("running", cells.running, wholeNumber(1, MOST_RUNNING)),
      main: readSeries(u, "main", cells.main),
      feeder: readSeries(u, "feeder", cells.feeder),
      // The pump sets the inlet pressure.
      line: readLine(u, readHeads(cells.heads), 0, cells),
    };
    return { u, running: linesOnPump(system) };
  });
}

/** Pipe in series, a row a size; a size that is listed and not used has no length. */
function readSeries(u: Units, name: string, cell: Cell): PipeSection[] {
  const columns = `two columns, inside diameter (${u.diameter.unit}) and length (${u.length.unit})`;
  return readPairs(name, cell, columns).map(([bore, length], i) => ({
    bore: u.diameter.readAt(`${name} row ${i + 1} inside diameter`, bore, above(0)),
    length: u.length.readAt(`${name} row ${i + 1} length`, length, atLeast(0)),
  }));
}

/** Label and value: what happens when the lines run. */
export function linesRunningTable({ u, running }: AskedLines): Spill {
  return spillPairs([
    [{ header: "flow of all lines", unit: u.flow.unit }, u.flow.give(running.flow)],
    [{ header: "pump head", unit: u.length.unit }, u.length.give(running.pumpHead)],
    [
      { header: "hydrant pressure", unit: u.pressure.unit },
      u.pressure.give(running.hydrantPressure),
    ],
    [
      { header: "lateral inlet pressure", unit: u.pressure.unit },
      u.pressure.give(running.inletPressure),
    ],
    [
      { header: "lowest nozzle pressure", unit: u.pressure.unit },
      u.pressure.give(running.lowestPressure),
    ],
    [
      { header: "average flow per sprinkler", unit: u.flow.unit },
      u.flow.give(running.averageHeadFlow),
    ],
  ]);
}
