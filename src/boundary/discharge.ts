import { chartLaw, type DischargeLaw, orificeLaw } from "../formulas/discharge-law";
import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, rows } from "./cell";
import { above } from "./limits";
import { readNumber } from "./numbers";
import type { PowerLaw } from "../formulas/power-law-fit";
import type { Units } from "./units";

/** A chart's rows, SI, by rising pressure. */
export interface Chart {
  readonly pressures: number[];
  readonly flows: number[];
}

/** One number is K in q = K·√p in the units of the call; two columns are the sprinkler's chart. */
export function readDischarge(u: Units, cell: Cell, name = "discharge"): DischargeLaw {
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
export function readChart(u: Units, cell: Cell, name = "discharge"): Chart {
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
export function coefficientUnit(u: Units): string {
  return `${u.flow.unit} per ${u.pressure.unit}^x`;
}

/** K in the units of the call: the law's flow at one unit of pressure. */
export function giveCoefficient(u: Units, law: PowerLaw): number {
  return u.flow.give(law.coefficient * u.pressure.toSI(1) ** law.exponent);
}
