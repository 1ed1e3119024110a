import { InvalidInput } from "../formulas/domain-error";
import type { Line } from "../solver/line";
import { type Cell, describe, isBlank, rows, single } from "./cell";
import { readDischarge, readPairs } from "./discharge";
import { readFriction } from "./friction";
import { above, anyNumber, atLeast, headCount, MOST_HEADS, wholeNumber } from "./limits";
import { readNumber } from "./numbers";
import type { BySystem, Units } from "./units";

/** Pressure a regulator takes when the sheet does not say: common practice, from memory. */
const REGULATOR_LOSS: BySystem = { US: 5, SI: 34.5 };

/** The cells that describe a line, as every LATERAL, PUMP.LINES and FLUSH function takes them. */
export interface LineCells {
  readonly spacing: Cell;
  readonly inside: Cell;
  readonly discharge: Cell;
  readonly rise?: Cell;
  readonly regulator?: Cell;
  readonly friction?: Cell;
  readonly first?: Cell;
  readonly riser?: Cell;
}

/** Reads a line of a known number of heads; the inlet pressure is the caller's (read or sought). */
export function readLine(u: Units, heads: number, inletPressure: number, cells: LineCells): Line {
  const segmentLength = readSegmentLengths(u, heads, cells.spacing, cells.first);
  const regulator = readRegulators(u, heads, cells.regulator);
  return {
    inletPressure,
    segmentLength,
    bore: readBores(u, heads, cells.inside),
    elevation: readElevations(u, segmentLength, cells.rise),
    riser: u.length.readOr("riser", cells.riser, atLeast(0), 0),
    discharge: readDischarge(u, cells.discharge),
    regulatorSet: regulator.set,
    regulatorLoss: regulator.loss,
    friction: readFriction(cells.friction),
  };
}

export function readHeads(cell: Cell): number {
  return readNumber("heads", cell, headCount);
}

/** One spacing for all (with `first` from the inlet to head 1), or a value per segment. */
function readSegmentLengths(u: Units, heads: number, spacing: Cell, first: Cell): Float64Array {
  const values = perSegment(u, "spacing", heads, spacing);
  const firstLength = u.length.readOptional("first", first, above(0));
  if (values.length > 1) {
    if (firstLength !== undefined) {
      throw new InvalidInput(
        "first goes with one spacing for all heads; a range of spacings already holds the distance from inlet to head 1",
      );
    }
    return Float64Array.from(values);
  }
  const lengths = new Float64Array(heads).fill(values[0]);
  if (firstLength !== undefined) lengths[0] = firstLength;
  return lengths;
}

/** One value, or exactly one per head. Cells past the last head may be blank, or 0 as hosts hand blanks over. */
function perSegment(u: Units, name: string, heads: number, cell: Cell): number[] {
  const values = (name === "inside" ? u.diameter : u.length).readValues(name, cell, above(0));
  if (values.length !== 1 && values.length !== heads) {
    throw new InvalidInput(`${name} has ${values.length} values for ${heads} heads`);
  }
  return values;
}

/** One bore, a column with one per segment, or two columns *(inside diameter, number of segments)*. */
function readBores(u: Units, heads: number, inside: Cell): Float64Array {
  if (!isTwoColumns(inside)) {
    if ((rows(inside)[0]?.length ?? 0) > 2) {
      throw new InvalidInput(
        `inside takes one value, one column with a value per segment, or two columns (inside diameter, number of segments); got ${describe(inside)}`,
      );
    }
    const values = perSegment(u, "inside", heads, inside);
    return values.length === 1
      ? new Float64Array(heads).fill(values[0])
      : Float64Array.from(values);
  }
  const columns = `two columns, inside diameter (${u.diameter.unit}) and number of segments`;
  const sizes = readPairs("inside", inside, columns).map(([bore, count], i) => ({
    bore: u.diameter.readAt(`inside row ${i + 1}`, bore, above(0)),
    count: readNumber(`inside row ${i + 1} number of segments`, count, wholeNumber(1, MOST_HEADS)),
  }));
  const total = sizes.reduce((sum, size) => sum + size.count, 0);
  if (total !== heads) {
    throw new InvalidInput(`inside lists ${total} segments for ${heads} heads`);
  }
  return Float64Array.from(sizes.flatMap(({ bore, count }) => new Array<number>(count).fill(bore)));
}

function isTwoColumns(cell: Cell): boolean {
  const grid = rows(cell);
  return grid.length > 0 && grid[0].length === 2;
}

/** Blank: level. One number: the last head, spread evenly with distance. A range: each head's own. */
function readElevations(u: Units, segmentLength: Float64Array, rise: Cell): Float64Array {
  const heads = segmentLength.length;
  const grid = rows(rise);
  const elevation = new Float64Array(heads);
  if (grid.length <= 1 && (grid[0]?.length ?? 0) <= 1) {
    const last = u.length.readOr("rise", grid[0]?.[0] ?? null, anyNumber, 0);
    let distance = 0;
    const length = segmentLength.reduce((sum, part) => sum + part, 0);
    for (let i = 0; i < heads; i++) {
      distance += segmentLength[i];
      elevation[i] = (last * distance) / length;
    }
    return elevation;
  }
  if (grid.length > 1 && grid.some((row) => row.length > 1)) {
    throw new InvalidInput(`rise takes one value, one row or one column; got ${describe(rise)}`);
  }
  const cells = grid.length === 1 ? grid[0] : grid.map((row) => row[0]);
  // Where `heads` gives the count, the count decides: 0 is a height, so only blanks are dropped.
  let count = cells.length;
  while (count > heads && (isBlank(cells[count - 1]) || cells[count - 1] === 0)) count--;
  if (count !== heads) throw new InvalidInput(`rise has ${count} values for ${heads} heads`);
  for (let i = 0; i < heads; i++) {
    elevation[i] = u.length.readAt(`rise of head ${i + 1}`, cells[i], anyNumber);
  }
  return elevation;
}

interface Regulators {
  readonly set: Float64Array;
  readonly loss: Float64Array;
}

/** Blank: none. One value or one row of two: for every head. A column or two: one row per head. */
function readRegulators(u: Units, heads: number, regulator: Cell): Regulators {
  const set = new Float64Array(heads).fill(Infinity);
  const loss = new Float64Array(heads);
  const grid = rows(regulator);
  const width = grid[0]?.length ?? 0;
  if (grid.length === 0 || (grid.length === 1 && width === 1 && isNone(grid[0][0])))
    return { set, loss };
  if (width > 2 || grid.some((row) => row.length !== width)) {
    throw new InvalidInput(
      `regulator takes one set pressure, one per head, or two columns (set, loss); got ${describe(regulator)}`,
    );
  }
  let count = grid.length;
  while (count > heads && grid[count - 1].every(isNone)) count--;
  if (count !== 1 && count !== heads) {
    throw new InvalidInput(`regulator has ${count} rows for ${heads} heads`);
  }
  for (let i = 0; i < heads; i++) {
    const [setCell, lossCell] = grid[count === 1 ? 0 : i] as [Cell, Cell?];
    if (isNone(setCell)) continue;
    const place = count === 1 ? "regulator" : `regulator of head ${i + 1}`;
    set[i] = u.pressure.readAt(place, setCell, above(0));
    loss[i] = u.pressure.readOr(`${place} loss`, lossCell ?? null, atLeast(0), REGULATOR_LOSS);
  }
  return { set, loss };
}

function isNone(cell: Cell): boolean {
  return isBlank(cell) || single("regulator", cell) === 0;
}
