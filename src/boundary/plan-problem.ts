import { chartLaw } from "../formulas/discharge-law";
import { requireRuns } from "../formulas/field-runs";
import type { Point } from "../formulas/polygon";
import { InvalidInput } from "../ground/domain-error";
import { FieldLayouts } from "../solver/laid-field";
import type { PlanPipe, PlanProblem, PlanSprinkler } from "../solver/plan-problem";
import { readText } from "./bill";
import { type Cell, isBlank, rows } from "./cell";
import { readCorners, readObstacles, readOptionalGround } from "./field";
import { above } from "./limits";
import { checked } from "./numbers";
import { readTerms } from "./plan-terms";
import { readTable } from "./table";
import { type Measure, readUnits, type Measures } from "./units";

/** The cells of a plan, in the words of PLAN.SEARCH and PLAN.LIMITS. */
export interface PlanCells {
  readonly field: Cell;
  readonly spacings: Cell;
  readonly moves: Cell;
  readonly pressures: Cell;
  readonly sprinklers: Cell;
  readonly tubing: Cell;
  readonly feeders: Cell;
  readonly terms: Cell;
  readonly units: Cell;
  readonly obstacles: Cell;
  readonly spots: Cell;
}

/** The line of a rectangle lies along its length, east, and positions go north. */
const ALONG_RECTANGLE = 90;

export function readPlanProblem(cells: PlanCells): { u: Measures; problem: PlanProblem } {
  const u = readUnits(cells.units);
  const field = readPlanField(u, cells.field);
  const { terms, bearing, setback, slope } = readTerms(u, cells.terms);
  const heights = readOptionalGround(u.length, cells.spots);
  if (heights !== undefined && slope !== 0) {
    throw new InvalidInput("terms give a slope and spots give heights: leave one of them blank");
  }
  const problem: PlanProblem = {
    layouts: new FieldLayouts(
      { corners: field.corners, obstacles: readObstacles(u.length, cells.obstacles), setback },
      field.isRectangle ? ALONG_RECTANGLE : bearing,
      heights === undefined ? { slope } : { heights },
    ),
    spacings: readChoices("spacings", u.length, cells.spacings),
    moves: readChoices("moves", u.length, cells.moves),
    pressures: readChoices("pressures", u.pressure, cells.pressures),
    sprinklers: readSprinklers(u, cells.sprinklers),
    tubing: readPlanPipes(u, "tubing", cells.tubing),
    feeders: readPlanPipes(u, "feeders", cells.feeders),
    terms,
  };
  requireSomeRun(problem);
  return { u, problem };
}

function requireSomeRun({ layouts, spacings, moves }: PlanProblem): void {
  const isLaid = spacings.some((spacing) =>
    moves.some((move) => layouts.at(spacing, move) !== undefined),
  );
  if (!isLaid) requireRuns([]);
}

/** The most values of one choice. */
const MOST_VALUES = 25;
const MOST_CHART_ROWS = 250;

/** A row or column of values, each once, in the order given. */
export function readChoices(name: string, measure: Measure, cell: Cell): number[] {
  const values = [...new Set(measure.readValues(name, cell, above(0)))];
  requireFew(name, values.length, "values");
  return values;
}

function requireFew(name: string, count: number, what: string): void {
  if (count > MOST_VALUES) {
    throw new InvalidInput(`${name} must have at most ${MOST_VALUES} ${what}; got ${count}`);
  }
}

/** A rectangle lies along x, its positions go across it along y; corners lie as they are. */
export interface PlanField {
  readonly corners: readonly Point[];
  readonly isRectangle: boolean;
}

/** One row is length along the line and width across it; more are corners. */
export function readPlanField(u: Measures, cell: Cell): PlanField {
  const grid = rows(cell).filter((row) => !row.every(isBlank));
  if (grid.length === 1 && grid[0].length === 2) {
    const [length, width] = grid[0].map((value, i) =>
      u.length.readAt(i === 0 ? "field length" : "field width", value, above(0)),
    );
    return {
      corners: [
        { x: 0, y: 0 },
        { x: length, y: 0 },
        { x: length, y: width },
        { x: 0, y: width },
      ],
      isRectangle: true,
    };
  }
  if (grid.length < 2) {
    throw new InvalidInput(
      `field must be one row, length and width (${u.length.unit}), or corners, x and y, in 3 to 200 rows`,
    );
  }
  return { corners: named("field", () => readCorners(u.length, cell)), isRectangle: false };
}

/** What is wrong with a part of an argument, by the argument's name. */
function named<T>(name: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof InvalidInput) throw new InvalidInput(`${name}: ${error.message}`);
    throw error;
  }
}

/** Rows *(name, pressure, flow, wetted diameter)*, the rows of one sprinkler's chart by one name. */
export function readSprinklers(u: Measures, cell: Cell): PlanSprinkler[] {
  const table = readTable("sprinklers", cell, {
    columns: `four columns, name, pressure (${u.pressure.unit}), flow (${u.flow.unit}) and wetted diameter (${u.length.unit})`,
    widths: [4],
    least: 1,
    most: MOST_CHART_ROWS,
    zeroIsBlank: true,
  });
  const charts = new Map<string, { name: string; rows: ChartRow[] }>();
  table.forEach(([nameCell, pressure, flow, diameter], i) => {
    const place = `sprinklers row ${i + 1}`;
    const name = readText(`${place} name`, nameCell);
    const key = name.toLowerCase();
    const chart = charts.get(key) ?? { name, rows: [] };
    charts.set(key, chart);
    chart.rows.push({
      pressure: u.pressure.readAt(`${place} pressure`, pressure, above(0)),
      flow: u.flow.readAt(`${place} flow`, flow, above(0)),
      diameter: u.length.readAt(`${place} wetted diameter`, diameter, above(0)),
    });
  });
  requireFew("sprinklers", charts.size, "names");
  return [...charts.values()].map(({ name, rows: chart }) => sprinklerOf(u, name, chart));
}

interface ChartRow {
  readonly pressure: number;
  readonly flow: number;
  readonly diameter: number;
}

function sprinklerOf(u: Measures, name: string, chart: ChartRow[]): PlanSprinkler {
  chart.sort((a, b) => a.pressure - b.pressure);
  for (let i = 1; i < chart.length; i++) {
    const [before, row] = [chart[i - 1], chart[i]];
    if (row.pressure === before.pressure) {
      throw new InvalidInput(`sprinklers lists "${name}" at ${u.pressure.say(row.pressure)} twice`);
    }
    if (row.flow < before.flow) {
      throw new InvalidInput(
        `sprinklers: the flow of "${name}" must not fall as the pressure rises; at ` +
          `${u.pressure.say(row.pressure)} it falls to ${u.flow.say(row.flow)}`,
      );
    }
  }
  const pressures = chart.map(({ pressure }) => pressure);
  const law = named(`sprinklers, "${name}"`, () =>
    chartLaw(
      pressures,
      chart.map(({ flow }) => flow),
    ),
  );
  const isRange = chart.length > 1;
  return {
    name,
    law,
    lowest: isRange ? pressures[0] : 0,
    highest: isRange ? pressures[pressures.length - 1] : Infinity,
    wetted: chart,
  };
}

/** Rows *(size, inside diameter, price per length, rating)*, any order; gives them large to small. */
export function readPlanPipes(u: Measures, name: string, cell: Cell): PlanPipe[] {
  const table = readTable(name, cell, {
    columns: `four columns, size, inside diameter (${u.diameter.unit}), price per ${u.length.unit} and rating (${u.pressure.unit})`,
    widths: [4],
    least: 1,
    most: MOST_VALUES,
    zeroIsBlank: true,
  });
  const pipes = table.map(([size, inside, price, rating], i) => {
    const place = `${name} row ${i + 1}`;
    return {
      name: readText(`${place} size`, size),
      bore: u.diameter.readAt(`${place} inside diameter`, inside, above(0)),
      price: checked(`${place} price`, price, above(0)) / u.length.toSI(1),
      rating: u.pressure.readAt(`${place} rating`, rating, above(0)),
    };
  });
  pipes.sort((a, b) => b.bore - a.bore);
  const twice = pipes.find(({ bore }, i) => i > 0 && bore === pipes[i - 1].bore);
  if (twice !== undefined) {
    throw new InvalidInput(`${name} lists the inside diameter ${u.diameter.say(twice.bore)} twice`);
  }
  return pipes;
}
