import { curveMeetings, type Meeting, type Meetings } from "../formulas/curve-meeting";
import { curveValue, type MonotoneCurve, monotoneCurve } from "../formulas/monotone-curve";
import { InvalidInput, NoAnswer } from "../ground/domain-error";
import * as factor from "../ground/unit-factors";
import { linesOnPump, type LinesRunning, type PipeSection } from "../solver/lines-on-pump";
import { type EnergySource, pumpingPlantCriteria } from "../tables/pumping-plant-criteria";
import { type Cell, describe, isBlank, rows } from "./cell";
import { readChoice } from "./choices";
import { above, anyNumber, atLeast, type Limit, readNumber, wholeNumber } from "./numbers";
import { type LineCells, readHeads, readLine } from "./line";
import { Memory } from "./memory";
import { readPairs } from "./sprinkler";
import { type Spill, spillPairs } from "./table";
import { Measure, readUnits, type Measures } from "./units";

/** How the two columns of a curve are read, and how a flow is said. */
interface Columns {
  readonly words: string;
  readonly heightName: string;
  flow(name: string, cell: Cell): number;
  height(name: string, cell: Cell): number;
  say(flow: number): string;
}

/**
 * Reads a curve *(flow, head)* of two points or more. Rows may come in any order, and a flow may
 * stand once only. Both 0 is a blank row at the end, as hosts hand blanks over.
 */
export function readCurve(u: Measures, name: string, cell: Cell, headLimit: Limit): MonotoneCurve {
  return readPoints(name, cell, {
    words: `two columns, flow (${u.flow.unit}) and head (${u.length.unit})`,
    heightName: "head",
    flow: (at, value) => u.flow.readAt(at, value, atLeast(0)),
    height: (at, value) => u.length.readAt(at, value, headLimit),
    say: (flow) => u.flow.say(flow),
  });
}

/** Reads a curve of any column of a pump's sheet against flow, in whatever units it has. */
export function readPlainCurve(name: string, cell: Cell): MonotoneCurve {
  return readPoints(name, cell, {
    words: "two columns, flow and what the pump's sheet gives at it",
    heightName: "value",
    flow: (at, value) => readNumber(at, value, atLeast(0)),
    height: (at, value) => readNumber(at, value, atLeast(0)),
    say: String,
  });
}

function readPoints(name: string, cell: Cell, columns: Columns): MonotoneCurve {
  const grid = rows(cell);
  const blank = (value: Cell) => isBlank(value) || value === 0;
  let count = grid.length;
  while (count > 0 && grid[count - 1].every(blank)) count--;
  if (count === 0) throw new InvalidInput(`${name} is missing: it must be ${columns.words}`);
  if (grid.some((row) => row.length !== 2)) {
    throw new InvalidInput(`${name} must be ${columns.words}; got ${describe(cell)}`);
  }
  if (count === 1) throw new InvalidInput(`${name} must have two points or more; got one`);
  const points = grid.slice(0, count).map(([flow, height], i) => ({
    flow: columns.flow(`${name} row ${i + 1} flow`, flow),
    height: columns.height(`${name} row ${i + 1} ${columns.heightName}`, height),
  }));
  points.sort((a, b) => a.flow - b.flow);
  for (let i = 1; i < points.length; i++) {
    if (points[i].flow === points[i - 1].flow) {
      throw new InvalidInput(`${name} lists ${columns.say(points[i].flow)} twice`);
    }
  }
  return monotoneCurve(
    points.map((point) => point.flow),
    points.map((point) => point.height),
  );
}

/** A flow (m³/s) and a head (m). */
export interface Duty {
  readonly flow: number;
  readonly head: number;
}

/** The one flow at which a pump runs steadily against a demand, or a message that says why none. */
export function steadyDuty(u: Measures, pump: MonotoneCurve, demand: MonotoneCurve): Duty {
  const found = curveMeetings(pump, demand);
  if (found.to < found.from) {
    throw new NoAnswer(
      `the curves have no flow in common: one ends at ${u.flow.say(found.to)}, the other begins at ${u.flow.say(found.from)}`,
    );
  }
  if (found.together) throw new NoAnswer("the curves lie on each other, so there is no one duty");
  if (found.meetings.length === 0) throw noCrossing(u, found);
  if (found.meetings.length > 1) {
    const flows = found.meetings.map(({ x }) => u.flow.say(x)).join(", ");
    throw new NoAnswer(`the curves cross ${found.meetings.length} times, at ${flows}`);
  }
  const [meeting] = found.meetings;
  if (!isSteady(meeting)) {
    throw new NoAnswer(
      `the curves meet at ${u.flow.say(meeting.x)} only, and the pump does not settle there: ` +
        `it must be above the demand at less flow and below it at more`,
    );
  }
  return { flow: meeting.x, head: meeting.y };
}

/** With less flow the pump gives more head than the demand asks, with more flow less. */
function isSteady({ before, after }: Meeting): boolean {
  return before >= 0 && after <= 0;
}

function noCrossing(u: Measures, { from, to, above }: Meetings): NoAnswer {
  const range = `from ${u.flow.say(from)} to ${u.flow.say(to)}`;
  return new NoAnswer(
    above > 0
      ? `the curves do not cross ${range}: the pump is above the demand throughout; carry both curves to more flow`
      : `the curves do not cross ${range}: the pump is below the demand throughout; it cannot deliver this demand`,
  );
}

/** Height of a curve at a flow that its points cover. */
export function curveAt(curve: MonotoneCurve, flow: number): number {
  const first = curve.x[0];
  const last = curve.x[curve.x.length - 1];
  if (flow < first || flow > last) {
    throw new NoAnswer(`the points cover flows from ${first} to ${last}; got ${flow}`);
  }
  return curveValue(curve, flow);
}

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
  readonly u: Measures;
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
function readSeries(u: Measures, name: string, cell: Cell): PipeSection[] {
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

const kilowattHours = new Measure("kWh", factor.KILOWATT * factor.HOUR, "SI");
const thousandCubicFeet = new Measure("1000 ft³", 1000 * factor.FOOT ** 3, "US");
const cubicMeters = new Measure("m³", 1, "SI");

const SOURCES = Object.keys(pumpingPlantCriteria) as EnergySource[];

export function readEnergySource(cell: Cell): EnergySource {
  return readChoice("source", cell, SOURCES);
}

/** What a source of energy is bought in: kWh of electricity, gallons or liters, gas by volume. */
export function energyMeasure(u: Measures, source: EnergySource): Measure {
  if (source === "electric") return kilowattHours;
  if (source !== "natural gas") return u.pipeVolume;
  return u.system === "US" ? thousandCubicFeet : cubicMeters;
}
