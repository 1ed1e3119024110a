import { chartLaw } from "../formulas/discharge-law";
import { requireRuns } from "../formulas/field-runs";
import type { FrictionLaw } from "../formulas/friction";
import type { Point } from "../formulas/polygon";
import { MOST_YEARS } from "../formulas/yearly-cost";
import { InvalidInput } from "../ground/domain-error";
import { FieldLayouts } from "../solver/laid-field";
import type { PlanPipe, PlanProblem, PlanSprinkler, PlanTerms } from "../solver/plan-problem";
import { PRESSURE_VARIATION, SHARE_OF_RATING } from "../tables/practice-limits";
import { readText } from "./bill";
import { type Cell, describe, isBlank, rows } from "./cell";
import { spelling } from "./choices";
import { anyBearing, readCorners, readObstacles, readOptionalGround } from "./field";
import {
  above,
  admits,
  anyNumber,
  atLeast,
  between,
  checked,
  fraction,
  type Limit,
  wholeNumber,
} from "./numbers";
import { readFriction } from "./pipe";
import { asSpacingWind } from "./sprinkler";
import { readTable } from "./table";
import {
  type BySystem,
  degrees,
  hourMeasure,
  type Measure,
  type Measures,
  percent,
  readUnits,
} from "./units";

/** What may be said of one term. */
interface Term {
  readonly limit: Limit;
  /** Its unit; a plain number without one. */
  readonly measure?: (u: Measures) => Measure;
  /** Its value where it is blank, in the units of the call; without it the term must be given. */
  readonly blank?: number | BySystem | "none";
}

/** A share of 1 above 0, so that a blank handed over as 0 is a blank. */
const share = above(0, 1);
const MOST_SPEED = { US: 5, SI: 1.5 };

/** In the order of the help. */
const TERMS = {
  bearing: { limit: anyBearing, measure: () => degrees, blank: 0 },
  setback: { limit: atLeast(0), measure: (u) => u.length, blank: 0 },
  slope: { limit: between(-100, 100), measure: () => percent, blank: 0 },
  coverage: { limit: share, blank: 0.9 },
  wind: { limit: atLeast(0), measure: (u) => u.wind, blank: 0 },
  riser: { limit: atLeast(0), measure: (u) => u.length, blank: 0 },
  variation: { limit: above(0), blank: PRESSURE_VARIATION },
  speed: { limit: above(0), measure: (u) => u.speed, blank: MOST_SPEED },
  intake: { limit: above(0), measure: (u) => u.rate },
  "net depth": { limit: above(0), measure: (u) => u.depth },
  efficiency: { limit: share },
  uniformity: { limit: share, blank: 1 },
  days: { limit: above(0) },
  "day hours": { limit: above(0, 24), measure: () => hourMeasure, blank: 24 },
  "move hours": { limit: atLeast(0), measure: () => hourMeasure },
  "set hours": { limit: above(0), measure: () => hourMeasure, blank: "none" },
  "season depth": { limit: above(0), measure: (u) => u.depth },
  lift: { limit: anyNumber, measure: (u) => u.length },
  "main loss": { limit: atLeast(0), measure: (u) => u.pressure },
  "pump flow": { limit: above(0), measure: (u) => u.flow, blank: "none" },
  "pump head": { limit: above(0), measure: (u) => u.length, blank: "none" },
  "share of rating": { limit: share, blank: SHARE_OF_RATING },
  "head price": { limit: atLeast(0) },
  "line price": { limit: atLeast(0) },
  years: { limit: wholeNumber(1, MOST_YEARS) },
  interest: { limit: fraction },
  escalation: { limit: fraction, blank: 0 },
  upkeep: { limit: fraction, blank: 0 },
  "energy price": { limit: atLeast(0) },
  performance: { limit: above(0), blank: 1 },
  wage: { limit: atLeast(0) },
} as const satisfies Record<string, Term>;

type TermName = keyof typeof TERMS;

/** The one that is no number: a Hazen–Williams C, or "Darcy". */
const FRICTION = "friction";

const NAMES: readonly string[] = [...Object.keys(TERMS), FRICTION];

/** The terms of a plan, and how the field lies. */
export interface ReadTerms {
  readonly terms: PlanTerms;
  /** Degrees. */
  readonly bearing: number;
  readonly setback: number;
  /** Rise over run along the line. */
  readonly slope: number;
}

/**
 * Reads rows *(name, value)*: any order, any case; a unit in parentheses behind a name is passed
 * over, and so are blank rows and a row of headers. A term that is unknown or stands twice is
 * refused, and so is one that must be given and is not; all of these are named.
 */
export function readTerms(u: Measures, cell: Cell): ReadTerms {
  const cells = cellsByName(cell);
  const lacking = NAMES.filter(
    (name) =>
      name !== FRICTION &&
      TERMS_OF[name].blank === undefined &&
      isUngiven(cells.get(name) ?? null, TERMS_OF[name].limit),
  );
  if (lacking.length > 0) {
    throw new InvalidInput(`terms must give a value for ${quoted(lacking)}`);
  }
  const si = (name: TermName): number => {
    const value = readTerm(u, name, cells.get(name) ?? null);
    if (value === undefined) throw new Error(`${name} has no value when blank`);
    return value;
  };
  const limit = (name: TermName) => readTerm(u, name, cells.get(name) ?? null) ?? Infinity;
  const setTime = readTerm(u, "set hours", cells.get("set hours") ?? null);
  return {
    bearing: si("bearing") / degrees.toSI(1),
    setback: si("setback"),
    slope: si("slope"),
    terms: {
      coverage: si("coverage"),
      riser: si("riser"),
      friction: readFrictionTerm(cells.get(FRICTION) ?? null),
      variation: si("variation"),
      speed: si("speed"),
      wind: asSpacingWind(u, si("wind")),
      intake: si("intake"),
      netDepth: si("net depth"),
      efficiency: si("efficiency"),
      uniformity: si("uniformity"),
      days: si("days"),
      dayTime: si("day hours"),
      moveTime: si("move hours"),
      setTime,
      seasonDepth: si("season depth"),
      lift: si("lift"),
      mainLoss: si("main loss"),
      pumpFlow: limit("pump flow"),
      pumpHead: limit("pump head"),
      shareOfRating: si("share of rating"),
      headPrice: si("head price"),
      linePrice: si("line price"),
      years: si("years"),
      interest: si("interest"),
      escalation: si("escalation"),
      upkeep: si("upkeep"),
      energyPrice: si("energy price"),
      performance: si("performance"),
      wage: si("wage"),
    },
  };
}

const TERMS_OF: Readonly<Record<string, Term>> = TERMS;

function cellsByName(cell: Cell): ReadonlyMap<string, Cell> {
  const table = readTable("terms", cell, {
    columns: `two columns, name and value; the names are ${quoted(NAMES)}`,
    widths: [2],
    least: 1,
    most: 200,
    zeroIsBlank: true,
  });
  const cells = new Map<string, Cell>();
  table.forEach(([name, value], i) => {
    if (isBlank(name) && (isBlank(value) || value === 0)) return;
    const known = termNamed(name);
    if (known === undefined) {
      throw new InvalidInput(
        `terms row ${i + 1} must name a term, one of ${quoted(NAMES)}; got ${describe(name)}`,
      );
    }
    if (cells.has(known)) throw new InvalidInput(`terms gives "${known}" twice`);
    cells.set(known, value);
  });
  return cells;
}

function termNamed(name: Cell): string | undefined {
  if (typeof name !== "string") return undefined;
  const plain = spelling(name.replace(/\([^()]*\)\s*$/, ""));
  return NAMES.find((known) => spelling(known) === plain);
}

/** Left out, or blank; 0 too where it is not possible, since hosts hand blanks over as 0. */
function isUngiven(cell: Cell, limit: Limit): boolean {
  return isBlank(cell) || (cell === 0 && !admits(limit, 0));
}

/** SI; undefined where the term is blank and has no default. */
function readTerm(u: Measures, name: TermName, cell: Cell): number | undefined {
  const { limit, measure, blank } = TERMS_OF[name];
  const unit = measure?.(u);
  const given = isUngiven(cell, limit)
    ? whenBlank(u, blank)
    : checked(`terms: ${name}`, cell, limit, unit?.unit);
  return given === undefined ? undefined : (unit?.toSI(given) ?? given);
}

function whenBlank(u: Measures, blank: Term["blank"]): number | undefined {
  if (typeof blank === "object") return blank[u.system];
  return blank === "none" ? undefined : blank;
}

function readFrictionTerm(cell: Cell): FrictionLaw {
  try {
    return readFriction(cell);
  } catch (error) {
    if (error instanceof InvalidInput) throw new InvalidInput(`terms: ${error.message}`);
    throw error;
  }
}

function quoted(names: readonly string[]): string {
  return names.map((name) => `"${name}"`).join(", ");
}

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
