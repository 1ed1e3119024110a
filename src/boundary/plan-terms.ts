import type { FrictionLaw } from "../formulas/friction";
import { MOST_YEARS } from "../formulas/yearly-cost";
import { InvalidInput } from "../ground/domain-error";
import type { PlanTerms } from "../solver/plan-problem";
import { PRESSURE_VARIATION, SHARE_OF_RATING } from "../tables/practice-limits";
import { type Cell, describe, isBlank } from "./cell";
import { spelling } from "./choices";
import { anyBearing } from "./field";
import {
  above,
  admits,
  anyNumber,
  atLeast,
  between,
  fraction,
  type Limit,
  wholeNumber,
} from "./limits";
import { checked } from "./numbers";
import { readFriction } from "./pipe";
import { asSpacingWind } from "./sprinkler";
import { readTable } from "./table";
import { type BySystem, degrees, hourMeasure, type Measure, percent, type Measures } from "./units";

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
