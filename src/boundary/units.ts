import { InvalidInput } from "../ground/domain-error";
import * as factor from "../ground/unit-factors";
import { type ConversionUnit, QUANTITIES, type Quantity } from "../tables/conversion-units";
import { type Cell, describe, isBlank, single } from "./cell";
import { readOptionalChoice } from "./choices";
import {
  between,
  checked,
  inUnit,
  type Limit,
  readNumber,
  readNumbers,
  readOptionalNumber,
} from "./numbers";

export type System = "US" | "SI";

/** A default is a round number in each system. */
export type BySystem = Readonly<Record<System, number>>;

/** One quantity in the units of the call: reads cells into SI base units and gives SI back. */
export class Measure {
  /** `offset` is in the trade unit: SI = (value + offset) × scale (only temperature has one). */
  constructor(
    readonly unit: string,
    private readonly scale: number,
    private readonly system: System,
    private readonly offset = 0,
  ) {}

  toSI(value: number): number {
    return (value + this.offset) * this.scale;
  }

  give(si: number): number {
    return si / this.scale - this.offset;
  }

  read(name: string, cell: Cell, limit: Limit): number {
    return this.toSI(readNumber(name, cell, limit, this.unit));
  }

  /** An optional argument with a default in the units of the call. */
  readOr(name: string, cell: Cell, limit: Limit, fallback: number | BySystem): number {
    const whenBlank = typeof fallback === "number" ? fallback : fallback[this.system];
    return this.toSI(readOptionalNumber(name, cell, limit, this.unit) ?? whenBlank);
  }

  readOptional(name: string, cell: Cell, limit: Limit): number | undefined {
    const value = readOptionalNumber(name, cell, limit, this.unit);
    return value === undefined ? undefined : this.toSI(value);
  }

  /** A row or column of values. */
  readValues(name: string, cell: Cell, limit: Limit): number[] {
    return readNumbers(name, cell, limit, this.unit).map((value) => this.toSI(value));
  }

  /** One value taken from a range already split up; `place` names the argument and the row. */
  readAt(place: string, value: Cell, limit: Limit): number {
    return this.toSI(checked(place, value, limit, this.unit));
  }

  /** A limit that a source states in SI, in the units of the call (for the message too). */
  betweenSI(low: number, high: number): Limit {
    const round = (value: number) => Number(value.toPrecision(12));
    return between(round(this.give(low)), round(this.give(high)));
  }

  /** "48.4 psi": for messages, three or four digits. */
  say(si: number): string {
    return inUnit(rounded(this.give(si)), this.unit);
  }
}

/** Enough digits to act on, none to distract. */
export function rounded(value: number): string {
  return String(Number(value.toPrecision(Math.abs(value) >= 1000 ? 4 : 3)));
}

/** Every quantity of the catalogue's unit table. */
export interface Measures {
  readonly system: System;
  readonly length: Measure;
  /** Pipe and nozzle diameter, pipe wall. */
  readonly diameter: Measure;
  /** Depth of water. */
  readonly depth: Measure;
  readonly pressure: Measure;
  readonly flow: Measure;
  /** Application or intake rate. */
  readonly rate: Measure;
  readonly area: Measure;
  /** Volume in a pipe. */
  readonly pipeVolume: Measure;
  /** Volume on a field or in a pond. */
  readonly fieldVolume: Measure;
  readonly speed: Measure;
  readonly temperature: Measure;
  /** A difference of two temperatures. */
  readonly temperatureChange: Measure;
  readonly power: Measure;
  readonly weight: Measure;
  readonly pull: Measure;
  readonly wind: Measure;
  /** Depth of water held per depth of soil. */
  readonly waterCapacity: Measure;
  /** Kinematic viscosity. */
  readonly viscosity: Measure;
  readonly density: Measure;
  /** Depth of water per day. */
  readonly dailyDepth: Measure;
}

function build(system: System): Measures {
  const us = system === "US";
  const choose = (
    usUnit: string,
    usScale: number,
    siUnit: string,
    siScale: number,
    offset = [0, 0],
  ) =>
    us
      ? new Measure(usUnit, usScale, system, offset[0])
      : new Measure(siUnit, siScale, system, offset[1]);
  return {
    system,
    length: choose("ft", factor.FOOT, "m", 1),
    diameter: choose("in", factor.INCH, "mm", factor.MILLIMETER),
    depth: choose("in", factor.INCH, "mm", factor.MILLIMETER),
    pressure: choose("psi", factor.PSI, "kPa", factor.KILOPASCAL),
    flow: choose("gpm", factor.US_GALLON / factor.MINUTE, "m³/h", 1 / factor.HOUR),
    rate: choose("in/h", factor.INCH / factor.HOUR, "mm/h", factor.MILLIMETER / factor.HOUR),
    area: choose("acre", factor.ACRE, "ha", factor.HECTARE),
    pipeVolume: choose("gal", factor.US_GALLON, "L", factor.LITER),
    fieldVolume: choose("gal", factor.US_GALLON, "m³", 1),
    speed: choose("ft/s", factor.FOOT, "m/s", 1),
    // °F + 459.67 and °C + 273.15 are the absolute temperatures, in Rankine and kelvin.
    temperature: choose("°F", 5 / 9, "°C", 1, [459.67, factor.ZERO_CELSIUS]),
    temperatureChange: choose("°F", 5 / 9, "°C", 1),
    power: choose("hp", factor.HORSEPOWER, "kW", factor.KILOWATT),
    weight: choose("lb", factor.POUND, "kg", 1),
    pull: choose("lbf", factor.POUND_FORCE, "N", 1),
    wind: choose("mph", factor.MILE / factor.HOUR, "km/h", factor.KILOMETER / factor.HOUR),
    waterCapacity: choose("in/ft", factor.INCH / factor.FOOT, "mm/m", factor.MILLIMETER),
    viscosity: choose("ft²/s", factor.FOOT ** 2, "m²/s", 1),
    density: choose("lb/ft³", factor.POUND / factor.FOOT ** 3, "kg/m³", 1),
    dailyDepth: choose(
      "in/day",
      factor.INCH / factor.DAY,
      "mm/day",
      factor.MILLIMETER / factor.DAY,
    ),
  };
}

const SYSTEMS: Readonly<Record<System, Measures>> = { US: build("US"), SI: build("SI") };

/** "US" when blank; "metric" means SI; any case. */
export function readUnits(units: Cell): Measures {
  // The usual spellings first: this runs once for every cell of a column.
  if (units === null || units === undefined || units === "US") return SYSTEMS.US;
  if (units === "SI") return SYSTEMS.SI;
  return SYSTEMS[readOptionalChoice("units", units, ["US", "SI"], { metric: "SI" }) ?? "US"];
}

/** Quantities that read the same in both systems. */
export const percent = new Measure("%", 0.01, "SI");
export const hourMeasure = new Measure("h", factor.HOUR, "SI");
export const dayMeasure = new Measure("days", factor.DAY, "SI");
export const minuteMeasure = new Measure("min", factor.MINUTE, "SI");
export const secondMeasure = new Measure("s", 1, "SI");
export const degrees = new Measure("degrees", Math.PI / 180, "SI");
/** MJ/m² a day, as W/m² inside. */
export const radiationMeasure = new Measure("MJ/m²/day", factor.MEGAJOULE / factor.DAY, "SI");
/** What a catch can's cylinder reads, in both systems. */
export const milliliters = new Measure("mL", factor.LITER / 1000, "SI");

/** A length whose unit does not matter, because only lengths of the same one come back. */
export const anyLength = new Measure("", 1, "SI");

/** Two units of one quantity. */
export interface Conversion {
  readonly from: ConversionUnit;
  readonly to: ConversionUnit;
}

interface NamedUnit {
  readonly quantity: Quantity;
  readonly unit: ConversionUnit;
}

/** Reads the two units of a conversion; units of two quantities are refused, both named. */
export function readConversion(from: Cell, to: Cell): Conversion {
  const source = readUnit("from", from);
  const target = readUnit("to", to);
  if (source.quantity !== target.quantity) {
    throw new InvalidInput(
      `from and to must be of one quantity; ${source.unit.symbol} is ${source.quantity.name}, ` +
        `${target.unit.symbol} is ${target.quantity.name}`,
    );
  }
  return { from: source.unit, to: target.unit };
}

/** "ft²", "ft2", "ft^2"; "acre-in", "acre in"; "° F", "F". Case is kept. */
function plain(text: string): string {
  return text
    .replace(/²/g, "2")
    .replace(/³/g, "3")
    .replace(/[\s\-_.^°·]+/g, "");
}

const exact = new Map<string, NamedUnit>();
const anyCase = new Map<string, Set<NamedUnit>>();
for (const quantity of QUANTITIES) {
  for (const unit of quantity.units) {
    const named = { quantity, unit };
    for (const spelling of [unit.symbol, ...unit.aliases].map(plain)) {
      exact.set(spelling, named);
      const lower = spelling.toLowerCase();
      anyCase.set(lower, (anyCase.get(lower) ?? new Set()).add(named));
    }
  }
}

/** "mPa" and "mW" are spelt with care, and mean a thousandth: they are not MPa and MW. */
function isMilliForMega(spelling: string, { unit }: NamedUnit): boolean {
  return (
    spelling.startsWith("m") && unit.symbol.startsWith("M") && spelling !== spelling.toLowerCase()
  );
}

/**
 * The unit as spelt; failing that, in any case, where that leaves one unit only: mL and ML are told
 * apart, and GPM is gpm.
 */
function readUnit(name: string, cell: Cell): NamedUnit {
  const value = single(name, cell);
  if (isBlank(value) || value === 0) {
    throw new InvalidInput(`${name} is missing: it must be one of ${everyUnit()}`);
  }
  const spelling = typeof value === "string" ? plain(value) : "";
  const same = exact.get(spelling);
  if (same !== undefined) return same;
  const similar = [...(anyCase.get(spelling.toLowerCase()) ?? [])].filter(
    (candidate) => !isMilliForMega(spelling, candidate),
  );
  if (similar.length === 1) return similar[0];
  if (similar.length > 1) {
    const symbols = similar.map(({ unit }) => unit.symbol).join(" or ");
    throw new InvalidInput(`${name} could be ${symbols}; got ${describe(value)}`);
  }
  throw new InvalidInput(
    `${name} has the unknown unit ${describe(value)}. It must be one of ${everyUnit()}`,
  );
}

/** "length or depth: ft, in, …; area: acre, …" */
export function everyUnit(): string {
  return QUANTITIES.map(
    ({ name, units }) => `${name}: ${units.map(({ symbol }) => symbol).join(", ")}`,
  ).join("; ");
}
