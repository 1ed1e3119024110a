import type { FrictionLaw } from "../formulas/friction";
import { CLEAN_PLASTIC_C, GREATEST_C, LEAST_C } from "../formulas/hazen-williams";
import { POLYETHYLENE_MODULUS, type Stop } from "../formulas/surge";
import type { Tubing } from "../formulas/tubing-weight";
import { InvalidInput } from "../ground/domain-error";
import { ZERO_CELSIUS } from "../ground/unit-factors";
import type { PricedTubing } from "../solver/changeover";
import { GREATEST_DESIGN_STRESS, PIPE_MATERIALS } from "../tables/pipe-materials";
import type { PipeSeries } from "../tables/pipe-sizes";
import { type Cell, describe, isBlank, rows, single } from "./cell";
import { readChoice, spelling } from "./choices";
import { above, anyNumber, atLeast, readNumber, readOptionalNumber } from "./numbers";
import { readPairs } from "./sprinkler";
import { type BySystem, secondMeasure, type Measures } from "./units";

const DARCY: FrictionLaw = { law: "Darcy" };

/** A number is the Hazen–Williams C, "Darcy" is Darcy–Weisbach, blank (or 0) is clean plastic pipe. */
export function readFriction(cell: Cell): FrictionLaw {
  const value = single("friction", cell);
  if (isBlank(value) || value === 0) return { law: "Hazen–Williams", c: CLEAN_PLASTIC_C };
  if (
    typeof value === "string" &&
    ["darcy", "darcyweisbach", "darcy–weisbach"].includes(spelling(value))
  ) {
    return DARCY;
  }
  if (typeof value === "number" && value >= LEAST_C && value <= GREATEST_C) {
    return { law: "Hazen–Williams", c: value };
  }
  throw new InvalidInput(
    `friction must be a Hazen–Williams C from ${LEAST_C} to ${GREATEST_C}, or "Darcy"; got ${describe(value)}`,
  );
}

/** A length of pipe of one size, SI. */
export interface Section {
  readonly bore: number;
  readonly length: number;
}

/**
 * Reads pipe of one size or of several: `inside` and `length` are one value each, or a row or
 * column each with a value per section. A section of no length is allowed (a size that is listed
 * and not used), and the sizes give the count, since hosts hand blank lengths over as 0.
 */
export function readSections(u: Measures, inside: Cell, length: Cell): Section[] {
  const bores = u.diameter.readValues("inside", inside, above(0));
  const lengths = u.length.readValues("length", length, atLeast(0));
  while (lengths.length > bores.length && lengths[lengths.length - 1] === 0) lengths.pop();
  if (lengths.length !== bores.length) {
    throw new InvalidInput(
      `inside and length must have the same number of values; got ${bores.length} and ${lengths.length}`,
    );
  }
  return bores.map((bore, i) => ({ bore, length: lengths[i] }));
}

/** Reads tubing of one size or of several: outside, inside and length, a value of each per section. */
export function readTubing(u: Measures, outside: Cell, inside: Cell, length: Cell): Tubing[] {
  const outsides = u.diameter.readValues("outside", outside, above(0));
  const sections = readSections(u, inside, length);
  if (outsides.length !== sections.length) {
    throw new InvalidInput(
      `outside and inside must have the same number of values; got ${outsides.length} and ${sections.length}`,
    );
  }
  return sections.map(({ bore, length: part }, i) => {
    if (bore >= outsides[i]) {
      throw new InvalidInput(
        `inside must be below outside; got ${u.diameter.say(bore)} in tubing of ${u.diameter.say(outsides[i])}`,
      );
    }
    return { outside: outsides[i], inside: bore, length: part };
  });
}

/** Reads sizes of tubing *(inside diameter, price per length)*, any order; gives them large to small. */
export function readPricedTubing(u: Measures, cell: Cell): PricedTubing[] {
  const columns = `two columns, inside diameter (${u.diameter.unit}) and price per ${u.length.unit}`;
  const sizes = readPairs("tubing", cell, columns).map(([bore, price], i) => ({
    bore: u.diameter.readAt(`tubing row ${i + 1} inside diameter`, bore, above(0)),
    // A price per length of the call, as a price per meter.
    price: readNumber(`tubing row ${i + 1} price`, price, above(0)) / u.length.toSI(1),
  }));
  sizes.sort((a, b) => b.bore - a.bore);
  const twice = sizes.find(({ bore }, i) => i > 0 && bore === sizes[i - 1].bore);
  if (twice !== undefined) {
    throw new InvalidInput(`tubing lists the inside diameter ${u.diameter.say(twice.bore)} twice`);
  }
  return sizes;
}

/** The ground along a line, by points, SI. */
export interface GroundAlong {
  readonly distance: number[];
  readonly elevation: number[];
  /** How many straight runs lie between the points. */
  readonly runs: number;
}

/**
 * Reads the ground along a line. Distances rise, so a blank (or a 0, as hosts hand blanks over)
 * after the first point ends them, and they give the count; a height may be 0 anywhere.
 */
export function readGroundAlong(u: Measures, distance: Cell, elevation: Cell): GroundAlong {
  const blank = (value: Cell) => isBlank(value) || value === 0;
  const distanceCells = inOneLine("distance", distance);
  let count = distanceCells.length;
  while (count > 1 && blank(distanceCells[count - 1])) count--;
  const along = distanceCells
    .slice(0, count)
    .map((cell, i) => u.length.readAt(`distance value ${i + 1}`, cell, anyNumber));
  if (count < 2) throw new InvalidInput("distance must have two values or more; got one");
  for (let i = 1; i < count; i++) {
    if (along[i] <= along[i - 1]) {
      throw new InvalidInput(
        `distance must rise from point to point; value ${i + 1} is ${u.length.say(along[i])} after ${u.length.say(along[i - 1])}`,
      );
    }
  }

  const heightCells = inOneLine("elevation", elevation);
  let heights = heightCells.length;
  while (heights > count && blank(heightCells[heights - 1])) heights--;
  if (heights !== count) {
    throw new InvalidInput(
      `distance and elevation must have the same number of values; got ${count} and ${heights}`,
    );
  }
  return {
    distance: along,
    elevation: heightCells
      .slice(0, count)
      .map((cell, i) => u.length.readAt(`elevation value ${i + 1}`, cell, anyNumber)),
    runs: count - 1,
  };
}

/** The cells of one row or one column. */
function inOneLine(name: string, cell: Cell): Cell[] {
  const grid = rows(cell);
  if (grid.length === 0) throw new InvalidInput(`${name} is missing: it must be a row or a column`);
  if (grid.length === 1) return grid[0];
  if (grid.some((row) => row.length !== 1)) {
    throw new InvalidInput(`${name} takes one row or one column; got ${describe(cell)}`);
  }
  return grid.map((row) => row[0]);
}

/** Design stress, and the series that a blank one means. */
export interface Strength {
  readonly designStress: number;
  readonly usualSeries: PipeSeries;
}

/** A number is the design stress in psi or kPa; a text is a material. */
export function readStrength(u: Measures, cell: Cell): Strength {
  const value = single("strength", cell);
  const names = Object.keys(PIPE_MATERIALS) as (keyof typeof PIPE_MATERIALS)[];
  if (typeof value === "string" && !isBlank(value)) {
    const { designStress, metric } = PIPE_MATERIALS[readChoice("strength", value, names)];
    return { designStress, usualSeries: metric ? "ISO PE" : "IPS PE" };
  }
  if (isBlank(value)) {
    throw new InvalidInput(
      `strength is missing: it must be the design stress in ${u.pressure.unit}, or one of ${names.join(", ")}`,
    );
  }
  const greatest = GREATEST_DESIGN_STRESS[u.system];
  const designStress = u.pressure.read("strength", value, above(0));
  if (designStress > u.pressure.toSI(greatest)) {
    throw new InvalidInput(
      `strength must be the design stress, at most ${greatest} ${u.pressure.unit}; got ${String(value)}, ` +
        "which is a hydrostatic design basis or a minimum required strength: " +
        "halve a basis (a few materials take more), divide an MRS by 1.25, or name the material",
    );
  }
  return { designStress, usualSeries: u.system === "SI" ? "ISO PE" : "IPS PE" };
}

/**
 * Temperature of a pipe's wall, undefined when blank. The bounds only catch slips of unit: above its
 * table a factor has no answer, and at any cold, a blank handed over as 0 included, nothing is taken
 * off.
 */
export function readWallTemperature(u: Measures, cell: Cell): number | undefined {
  const limit = u.temperature.betweenSI(ZERO_CELSIUS - 50, ZERO_CELSIUS + 200);
  return u.temperature.readOptional("temperature", cell, limit);
}

/** The cells that describe a flow that is stopped. */
export interface SurgeCells {
  readonly flow: Cell;
  readonly outside: Cell;
  readonly inside: Cell;
  readonly length?: Cell;
  readonly closure?: Cell;
  readonly modulus?: Cell;
}

/** Reads a stopped flow; what outside is more than inside is twice the wall. */
export function readSurge(u: Measures, cells: SurgeCells): Stop {
  const flow = u.flow.read("flow", cells.flow, atLeast(0));
  const outside = u.diameter.read("outside", cells.outside, above(0));
  const bore = u.diameter.read("inside", cells.inside, above(0));
  if (outside <= bore) {
    throw new InvalidInput(
      `outside must be above inside; got ${u.diameter.say(outside)} and ${u.diameter.say(bore)}`,
    );
  }
  const length = readOptionalNumber("length", cells.length ?? null, above(0), u.length.unit);
  const closure = secondMeasure.readOr("closure", cells.closure ?? null, atLeast(0), 0);
  if (closure > 0 && length === undefined) {
    throw new InvalidInput(
      `length is missing: with a closure time it must be above 0 ${u.length.unit}`,
    );
  }
  return {
    flow,
    outside,
    bore,
    // Polyethylene is the same in both systems: no round number in each.
    modulus:
      u.pressure.readOptional("modulus", cells.modulus ?? null, above(0)) ?? POLYETHYLENE_MODULUS,
    length: u.length.toSI(length ?? 0),
    closure,
  };
}

/** Speed limit where surge is not analyzed: 5 ft/s in practice standard 430, rounded for SI. */
export const GREATEST_SPEED: BySystem = { US: 5, SI: 1.5 };
