import { chartLaw, type DischargeLaw, orificeLaw } from "../formulas/discharge-law";
import type { PowerLaw } from "../formulas/power-law-fit";
import { InvalidInput } from "../ground/domain-error";
import { BETWEEN_POSITIONS } from "../tables/sprinkler-spacing";
import { type Cell, describe, isBlank, rows } from "./cell";
import { above, atLeast, checked, missing, readNumber, readOptionalNumber } from "./numbers";
import type { BySystem, Measures } from "./units";

/** Pressure a regulator takes when the sheet does not say: common practice, from memory. */
export const REGULATOR_LOSS: BySystem = { US: 5, SI: 34.5 };

/** A chart's rows, SI, by rising pressure. */
export interface Chart {
  readonly pressures: number[];
  readonly flows: number[];
}

/** One number is K in q = K·√p in the units of the call; two columns are the sprinkler's chart. */
export function readDischarge(u: Measures, cell: Cell, name = "discharge"): DischargeLaw {
  const grid = rows(cell);
  if (grid.length <= 1 && (grid[0]?.length ?? 0) <= 1) {
    const k = readNumber(
      name,
      grid[0]?.[0] ?? null,
      above(0),
      `${u.flow.unit} per √${u.pressure.unit}`,
    );
    return orificeLaw((k * u.flow.toSI(1)) / Math.sqrt(u.pressure.toSI(1)));
  }
  const chart = readChart(u, cell, name);
  return chartLaw(chart.pressures, chart.flows);
}

/**
 * Reads a chart *(pressure, flow)*. Rows may come in any order; blank rows at the end are dropped;
 * a pressure may stand once only, and the flow may not fall as the pressure rises.
 */
export function readChart(u: Measures, cell: Cell, name = "discharge"): Chart {
  const columns = `two columns, pressure (${u.pressure.unit}) and flow (${u.flow.unit})`;
  const grid = readPairs(name, cell, columns);
  const points = grid.map(([pressure, flow], i) => ({
    pressure: u.pressure.readAt(`${name} row ${i + 1} pressure`, pressure, above(0)),
    flow: u.flow.readAt(`${name} row ${i + 1} flow`, flow, above(0)),
  }));
  points.sort((a, b) => a.pressure - b.pressure);
  for (let i = 1; i < points.length; i++) {
    if (points[i].pressure === points[i - 1].pressure) {
      throw new InvalidInput(`${name} lists ${u.pressure.say(points[i].pressure)} twice`);
    }
    if (points[i].flow < points[i - 1].flow) {
      throw new InvalidInput(
        `${name} must not fall in flow as the pressure rises; at ${u.pressure.say(points[i].pressure)} ` +
          `it falls to ${u.flow.say(points[i].flow)}`,
      );
    }
  }
  return { pressures: points.map((p) => p.pressure), flows: points.map((p) => p.flow) };
}

/** Rows of a two-column range, blank rows (both cells blank, or 0) at the end dropped. */
export function readPairs(name: string, cell: Cell, columns: string): [Cell, Cell][] {
  const grid = rows(cell);
  const blank = (value: Cell) => isBlank(value) || value === 0;
  let count = grid.length;
  while (count > 0 && grid[count - 1].every(blank)) count--;
  if (count === 0) throw new InvalidInput(`${name} is missing: it must be ${columns}`);
  if (grid.some((row) => row.length !== 2)) {
    throw new InvalidInput(`${name} must be ${columns}; got ${describe(cell)}`);
  }
  return grid.slice(0, count) as [Cell, Cell][];
}

/** The unit of a K with any exponent, for a header. */
export function coefficientUnit(u: Measures): string {
  return `${u.flow.unit} per ${u.pressure.unit}^x`;
}

/** K in the units of the call: the law's flow at one unit of pressure. */
export function giveCoefficient(u: Measures, law: PowerLaw): number {
  return u.flow.give(law.coefficient * u.pressure.toSI(1) ** law.exponent);
}

/** The lowest and the highest pressure of a chart *(pressure, flow)*, in whatever unit it is in. */
export function readChartRange(cell: Cell): { lowest: number; highest: number } {
  const pressures = readPairs("chart", cell, "two columns, pressure and flow").map(
    ([pressure, flow], i) => {
      checked(`chart row ${i + 1} flow`, flow, above(0));
      return checked(`chart row ${i + 1} pressure`, pressure, above(0));
    },
  );
  if (pressures.length < 2) {
    throw new InvalidInput("chart must have at least 2 rows, so that it has a range; got 1");
  }
  return { lowest: Math.min(...pressures), highest: Math.max(...pressures) };
}

/** The pressures that a line's regulators work between, Pa. */
export interface RegulatorPressures {
  readonly low: number;
  readonly high: number;
  readonly set: number;
  readonly loss: number;
  /** What a regulator must have under it: set and loss. */
  readonly needed: number;
  /** What it may have under it; Infinity where the sheet gives no limit. */
  readonly most: number;
}

export function readRegulatorPressures(
  u: Measures,
  cells: {
    readonly lowest: Cell;
    readonly highest: Cell;
    readonly set: Cell;
    readonly loss?: Cell;
    readonly limit?: Cell;
  },
): RegulatorPressures {
  const low = u.pressure.read("lowest", cells.lowest, atLeast(0));
  const high = u.pressure.read("highest", cells.highest, atLeast(0));
  if (low > high) {
    throw new InvalidInput(
      `lowest must not be above highest; got ${u.pressure.say(low)} and ${u.pressure.say(high)}`,
    );
  }
  const set = u.pressure.read("set", cells.set, above(0));
  const loss = u.pressure.readOr("loss", cells.loss ?? null, atLeast(0), REGULATOR_LOSS);
  const most = u.pressure.readOptional("limit", cells.limit ?? null, above(0)) ?? Infinity;
  return { low, high, set, loss, needed: set + loss, most };
}

/**
 * Wind, m/s, for the classes of sprinkler spacing: one that shows as the limit of a class is that
 * limit, so that 5.004 mph does not count as more than the "5 mph" it reads as.
 */
export function asSpacingWind(u: Measures, wind: number): number {
  const limit = BETWEEN_POSITIONS.find((row) => u.wind.say(row.wind) === u.wind.say(wind));
  return limit?.wind ?? wind;
}

export function readSpacingWind(u: Measures, cell: Cell): number {
  return asSpacingWind(u, u.wind.read("wind", cell, atLeast(0)));
}

const CATCH = atLeast(0);

/**
 * Reads catches in a range of any shape, in no order: an empty cell is no can and is skipped, a 0 is
 * a can that caught nothing.
 */
export function readCatches(cell: Cell): number[] {
  const catches: number[] = [];
  rows(cell).forEach((row, r) => {
    row.forEach((value, c) => {
      if (!isBlank(value)) {
        catches.push(checked(`catch row ${r + 1} column ${c + 1}`, value, CATCH));
      }
    });
  });
  if (catches.length === 0) throw missing("catch", CATCH, "");
  return catches;
}

/**
 * Reads catches where the place of each can counts: one row or one column, with a number in every
 * cell. None is dropped, since a blank at an end would shift the middle.
 */
export function readCatchesInPlace(cell: Cell): number[] {
  const grid = rows(cell);
  if (grid.length > 1 && grid.some((row) => row.length > 1)) {
    throw new InvalidInput(`catch takes one row or one column; got ${describe(cell)}`);
  }
  const cells = grid.flat();
  if (cells.length === 0) throw missing("catch", CATCH, "");
  return cells.map((value, i) => checked(`catch value ${i + 1}`, value, CATCH));
}

/** An application efficiency, a fraction; blank (or 0, which no system has) is 1: nothing lost. */
export function readEfficiency(cell: Cell, name = "efficiency"): number {
  return readOptionalNumber(name, cell, above(0, 1)) ?? 1;
}
