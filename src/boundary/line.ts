import { InvalidInput } from "../ground/domain-error";
import { alike, zeros } from "../ground/doubles";
import type { Line } from "../solver/line";
import type { LineLimits } from "../solver/line-limits";
import { type Cell, describe, isBlank, rows, single } from "./cell";
import {
  above,
  anyNumber,
  atLeast,
  headCount,
  MOST_HEADS,
  readNumber,
  wholeNumber,
} from "./numbers";
import { readFriction } from "./pipe";
import { readDischarge, readPairs, REGULATOR_LOSS } from "./sprinkler";
import { percent, type Measures } from "./units";

/** The cells that describe a line, whatever its tubing and its ground. */
export interface HeadCells {
  readonly spacing: Cell;
  readonly discharge: Cell;
  readonly regulator?: Cell;
  readonly friction?: Cell;
  readonly first?: Cell;
  readonly riser?: Cell;
}

/** The cells that describe a line, as most LATERAL functions, PUMP.LINES and FLUSH take them. */
export interface LineCells extends HeadCells {
  readonly inside: Cell;
  readonly rise?: Cell;
}

/** The same in the order of the arguments, with what stands among them. */
export type LineInOrder = readonly [
  heads: Cell,
  spacing: Cell,
  inside: Cell,
  discharge: Cell,
  units?: Cell,
  rise?: Cell,
  regulator?: Cell,
  friction?: Cell,
  first?: Cell,
  riser?: Cell,
];

/** The arguments of a line by their names. */
export function lineCells(
  line: LineInOrder,
): LineCells & { readonly heads: Cell; readonly units: Cell } {
  const [heads, spacing, inside, discharge, units, rise, regulator, friction, first, riser] = line;
  return { heads, spacing, inside, discharge, units, rise, regulator, friction, first, riser };
}

/** A line whose tubing is still to be chosen. */
export type LineWithoutTubing = Omit<Line, "bore">;

export function readHeads(cell: Cell): number {
  return readNumber("heads", cell, headCount);
}

/** Reads a line of a known number of heads; the inlet pressure is the caller's (read or sought). */
export function readLine(
  u: Measures,
  heads: number,
  inletPressure: number,
  cells: LineCells,
): Line {
  const line = readLineWithoutTubing(u, heads, inletPressure, cells);
  // Name by name: to spread it out would take a seventh of the time of a whole cell.
  return {
    inletPressure: line.inletPressure,
    segmentLength: line.segmentLength,
    bore: forHeads(readBores(u, cells.inside), heads),
    elevation: line.elevation,
    riser: line.riser,
    discharge: line.discharge,
    regulatorSet: line.regulatorSet,
    regulatorLoss: line.regulatorLoss,
    friction: line.friction,
  };
}

export function readLineWithoutTubing(
  u: Measures,
  heads: number,
  inletPressure: number,
  cells: Omit<LineCells, "inside">,
): LineWithoutTubing {
  const segmentLength = withFirst(u, forHeads(readSpacing(u, cells.spacing), heads), cells);
  const regulators = readRegulators(u, cells.regulator, heads);
  return {
    inletPressure,
    segmentLength,
    elevation: readElevations(u, segmentLength, cells.rise),
    regulatorSet: forHeads(regulators.set, heads),
    regulatorLoss: forHeads(regulators.loss, heads),
    ...readAlike(u, cells),
  };
}

/**
 * Reads a line of as many heads as its arguments cover, 500 at most: ranges for spacing, inside and
 * regulator end it earlier. `slope` is the ground's, in percent along the line.
 */
export function readLongestLine(
  u: Measures,
  inletPressure: number,
  cells: HeadCells & { readonly inside: Cell; readonly slope?: Cell },
): Line {
  const spacing = readSpacing(u, cells.spacing);
  const bores = readBores(u, cells.inside);
  const regulators = readRegulators(u, cells.regulator, MOST_HEADS);
  const heads = Math.min(
    MOST_HEADS,
    ...[spacing, bores, regulators.set].map(({ count }) => count ?? MOST_HEADS),
  );
  const segmentLength = withFirst(u, firstOf(spacing, heads), cells);
  const slope = percent.readOr("slope", cells.slope, anyNumber, 0);
  return {
    inletPressure,
    segmentLength,
    bore: firstOf(bores, heads),
    elevation: distances(segmentLength).map((distance) => slope * distance),
    regulatorSet: firstOf(regulators.set, heads),
    regulatorLoss: firstOf(regulators.loss, heads),
    ...readAlike(u, cells),
  };
}

/** A line as long as the longest of its runs. */
export interface LineOfRuns {
  /** On level ground: each run has its own. */
  readonly line: Line;
  /** Whether the distance from inlet to head 1 was left to each run. */
  readonly firstFromTable: boolean;
}

/**
 * Reads a line that moves over a field. What is given head by head must reach to the end of the
 * longest run; a line may be longer than that, and shorter runs use its first heads.
 */
export function readLineOfRuns(
  u: Measures,
  inletPressure: number,
  longest: number,
  cells: HeadCells & { readonly inside: Cell },
): LineOfRuns {
  const spacing = readSpacing(u, cells.spacing);
  const bores = readBores(u, cells.inside);
  const regulators = readRegulators(u, cells.regulator, MOST_HEADS);
  const atLeastLongest = (along: Along): number[] => {
    if (along.count !== undefined && along.count < longest) {
      throw new InvalidInput(
        `${along.name} has ${along.count} ${along.counted} for the ${longest} heads of the longest run`,
      );
    }
    return firstOf(along, longest);
  };
  const segmentLength = withFirst(u, atLeastLongest(spacing), cells);
  const first = u.length.readOptional("first", cells.first, above(0));
  return {
    line: {
      inletPressure,
      segmentLength,
      bore: atLeastLongest(bores),
      elevation: new Array<number>(longest).fill(0),
      regulatorSet: atLeastLongest(regulators.set),
      regulatorLoss: atLeastLongest(regulators.loss),
      ...readAlike(u, cells),
    },
    firstFromTable: first === undefined && spacing.count === undefined,
  };
}

/** Length of each segment of a line whose heads alone matter: to count, to stake. */
export function readSegmentLengths(
  u: Measures,
  heads: number,
  cells: Pick<HeadCells, "spacing" | "first">,
): number[] {
  return withFirst(u, forHeads(readSpacing(u, cells.spacing), heads), cells);
}

/** Bore of each run of a line that is given by points along it. */
export function readRunBores(u: Measures, runs: number, inside: Cell): number[] {
  return forHeads(readBores(u, inside), runs, "run");
}

/** What is the same for every head. */
function readAlike(u: Measures, cells: HeadCells): Pick<Line, "riser" | "discharge" | "friction"> {
  return {
    riser: u.length.readOr("riser", cells.riser, atLeast(0), 0),
    discharge: readDischarge(u, cells.discharge),
    friction: readFriction(cells.friction),
  };
}

/** What an argument says along the line: one value for all, or one for each of a count. */
interface Along {
  readonly name: string;
  /** What it counts, for a message: "values", "segments", "rows". */
  readonly counted: string;
  readonly values: readonly number[];
  /** How many heads the values are for; undefined where one value is for any number. */
  readonly count?: number;
}

function forHeads(along: Along, heads: number, unit = "head"): number[] {
  if (along.count !== undefined && along.count !== heads) {
    throw new InvalidInput(
      `${along.name} has ${along.count} ${along.counted} for ${heads} ${heads === 1 ? unit : `${unit}s`}`,
    );
  }
  return firstOf(along, heads);
}

function firstOf(along: Along, heads: number): number[] {
  return along.count === undefined ? alike(along.values[0], heads) : along.values.slice(0, heads);
}

/** One spacing for all, or a value per segment from the inlet on. */
function readSpacing(u: Measures, spacing: Cell): Along {
  const values = u.length.readValues("spacing", spacing, above(0));
  return { name: "spacing", counted: "values", values, count: countOf(values) };
}

function countOf(values: readonly number[]): number | undefined {
  return values.length === 1 ? undefined : values.length;
}

/** `first` replaces the distance from inlet to head 1 where one spacing is given for all. */
function withFirst(
  u: Measures,
  lengths: number[],
  cells: Pick<HeadCells, "spacing" | "first">,
): number[] {
  const first = u.length.readOptional("first", cells.first, above(0));
  if (first === undefined) return lengths;
  if (
    rows(cells.spacing)
      .flat()
      .filter((cell) => !isBlank(cell) && cell !== 0).length > 1
  ) {
    throw new InvalidInput(
      "first goes with one spacing for all heads; a range of spacings already holds the distance from inlet to head 1",
    );
  }
  return [first, ...lengths.slice(1)];
}

/** One bore, a column with one per segment, or two columns *(inside diameter, number of segments)*. */
function readBores(u: Measures, inside: Cell): Along {
  const width = rows(inside)[0]?.length ?? 0;
  if (width > 2) {
    throw new InvalidInput(
      `inside takes one value, one column with a value per segment, or two columns (inside diameter, number of segments); got ${describe(inside)}`,
    );
  }
  if (width < 2) {
    const values = u.diameter.readValues("inside", inside, above(0));
    return { name: "inside", counted: "values", values, count: countOf(values) };
  }
  const columns = `two columns, inside diameter (${u.diameter.unit}) and number of segments`;
  const values: number[] = [];
  readPairs("inside", inside, columns).forEach(([bore, count], i) => {
    const size = u.diameter.readAt(`inside row ${i + 1}`, bore, above(0));
    // A size may be listed and not laid, as in what LATERAL.CHANGEOVER gives.
    const place = `inside row ${i + 1} number of segments`;
    const segments = readNumber(place, count, wholeNumber(0, MOST_HEADS));
    for (let segment = 0; segment < segments; segment++) values.push(size);
  });
  return { name: "inside", counted: "segments", values, count: values.length };
}

/** Distance of each head from the inlet, along the tubing. */
function distances(segmentLength: readonly number[]): number[] {
  const along = zeros(segmentLength.length);
  let distance = 0;
  for (let i = 0; i < along.length; i++) {
    distance += segmentLength[i];
    along[i] = distance;
  }
  return along;
}

/** Blank: level. One number: the last head, spread evenly with distance. A range: each head's own. */
function readElevations(u: Measures, segmentLength: readonly number[], rise: Cell): number[] {
  const heads = segmentLength.length;
  const grid = rows(rise);
  if (grid.length <= 1 && (grid[0]?.length ?? 0) <= 1) {
    const last = u.length.readOr("rise", grid[0]?.[0] ?? null, anyNumber, 0);
    const elevation = distances(segmentLength);
    const length = elevation[heads - 1];
    for (let i = 0; i < heads; i++) elevation[i] = last * (elevation[i] / length);
    return elevation;
  }
  if (grid.length > 1 && grid.some((row) => row.length > 1)) {
    throw new InvalidInput(`rise takes one value, one row or one column; got ${describe(rise)}`);
  }
  const cells = grid.length === 1 ? grid[0] : grid.map((row) => row[0]);
  // Where `heads` gives the count, the count decides: 0 is a height, so only blanks are dropped.
  let count = cells.length;
  while (count > heads && isNone(cells[count - 1])) count--;
  const values = cells
    .slice(0, count)
    .map((cell, i) => u.length.readAt(`rise of head ${i + 1}`, cell, anyNumber));
  return forHeads({ name: "rise", counted: "values", values, count }, heads);
}

interface Regulators {
  readonly set: Along;
  readonly loss: Along;
}

const NO_REGULATORS: Regulators = {
  set: { name: "regulator", counted: "rows", values: [Infinity] },
  loss: { name: "regulator", counted: "rows", values: [0] },
};

/**
 * Blank: none. One value or one row of two: for every head. A column or two: one row per head, and
 * rows without a set pressure beyond `most` heads are left out.
 */
function readRegulators(u: Measures, regulator: Cell, most: number): Regulators {
  const grid = rows(regulator);
  if (grid.length === 0) return NO_REGULATORS;
  const width = grid[0].length;
  if (width > 2 || grid.some((row) => row.length !== width)) {
    throw new InvalidInput(
      `regulator takes one set pressure, one per head, or two columns (set, loss); got ${describe(regulator)}`,
    );
  }
  let count = grid.length;
  while (count > most && grid[count - 1].every(isNone)) count--;
  const forAll = count <= 1;
  const set: number[] = [];
  const loss: number[] = [];
  for (let i = 0; i < count; i++) {
    const [setCell, lossCell] = grid[i] as [Cell, Cell?];
    const place = forAll ? "regulator" : `regulator of head ${i + 1}`;
    const none = isNone(setCell);
    set.push(none ? Infinity : u.pressure.readAt(place, setCell, above(0)));
    loss.push(
      none ? 0 : u.pressure.readOr(`${place} loss`, lossCell ?? null, atLeast(0), REGULATOR_LOSS),
    );
  }
  const along = { name: "regulator", counted: "rows", count: forAll ? undefined : count };
  return { set: { ...along, values: set }, loss: { ...along, values: loss } };
}

/** A blank, or a 0 as hosts hand blanks over. */
function isNone(cell: Cell): boolean {
  return isBlank(cell) || single("regulator", cell) === 0;
}

/** Reads what a layout must keep to; a blank lowest pressure or speed is no such limit. */
export function readLineLimits(
  u: Measures,
  limit: Cell,
  lowest: Cell,
  maxvelocity: Cell,
): LineLimits {
  return {
    variation: readNumber("limit", limit, above(0)),
    lowest: u.pressure.readOptional("lowest", lowest, above(0)) ?? 0,
    speed: u.speed.readOptional("maxvelocity", maxvelocity, above(0)) ?? Infinity,
  };
}
