import { MOST_RUNS } from "../formulas/field-rows";
import type { Heading, Place } from "../formulas/geodesic";
import type { NearEnd } from "../formulas/hydrants";
import type { Point } from "../formulas/polygon";
import { InvalidInput } from "../ground/domain-error";
import { type Cell, describe, isBlank, rows, single } from "./cell";
import { MOST_POINTS, readPoint } from "./field";
import { between, checked, MOST_POSITIONS, readNumber, wholeNumber } from "./numbers";
import { isAllBlank, readTable } from "./table";
import { anyLength, type Measures } from "./units";

const LATITUDE = between(-90, 90);
const LONGITUDE = between(-180, 180);

/** Where x and y are counted from, on the map. */
export function readOrigin(latitude: Cell, longitude: Cell): Place {
  return {
    latitude: readNumber("latitude", latitude, LATITUDE, "degrees"),
    longitude: readNumber("longitude", longitude, LONGITUDE, "degrees"),
  };
}

/** Places on the map. */
export function readPlaces(cell: Cell): Place[] {
  return readTable("points", cell, {
    columns: "two columns, latitude (degrees) and longitude (degrees)",
    widths: [2],
    least: 1,
    most: MOST_POINTS,
  }).map(([latitude, longitude], i) => ({
    latitude: checked(`points row ${i + 1} latitude`, latitude, LATITUDE, "degrees"),
    longitude: checked(`points row ${i + 1} longitude`, longitude, LONGITUDE, "degrees"),
  }));
}

/**
 * Where a layout starts on the map and which way it runs. Latitude and longitude both blank (or 0,
 * as hosts hand blanks over) are no start: then only distances are asked for.
 */
export function readStart(latitude: Cell, longitude: Cell, bearing: Cell): Heading | undefined {
  if (isNone("latitude", latitude) && isNone("longitude", longitude)) return undefined;
  return {
    latitude: readNumber("latitude", latitude, between(-90, 90), "degrees"),
    longitude: readNumber("longitude", longitude, between(-180, 180), "degrees"),
    bearing: readNumber("bearing", bearing, between(-360, 360), "degrees"),
  };
}

function isNone(name: string, cell: Cell): boolean {
  const value = single(name, cell);
  return isBlank(value) || value === 0;
}

export interface NamedPoint extends Point {
  readonly name: string;
}

/** Longer than any receiver shows, short enough that every line stays within a cell. */
const LONGEST_NAME = 200;

/** Places with a name each: name, x and y. */
export function readNamedPoints(u: Measures, cell: Cell): NamedPoint[] {
  return readTable("points", cell, {
    columns: `three columns, name, x (${u.length.unit}) and y (${u.length.unit})`,
    widths: [3],
    least: 1,
    most: MOST_POINTS,
    zeroIsBlank: true,
  }).map(([name, x, y], i) => ({
    name: readName(`points row ${i + 1} name`, name),
    ...readPoint(u.length, `points row ${i + 1}`, [x, y]),
  }));
}

/** Text, or a number as its text. Signs that no map file can hold are refused. */
function readName(place: string, cell: Cell): string {
  if (isBlank(cell)) throw new InvalidInput(`${place} is missing: it must be text or a number`);
  if (typeof cell === "number" && Number.isFinite(cell)) return String(cell);
  if (typeof cell !== "string") {
    throw new InvalidInput(`${place} must be text or a number; got ${describe(cell)}`);
  }
  const name = cell.trim();
  if (name.length > LONGEST_NAME) {
    throw new InvalidInput(
      `${place} must have at most ${LONGEST_NAME} letters; got ${name.length}`,
    );
  }
  if (!isXmlText(name)) {
    throw new InvalidInput(
      `${place} holds a sign that a map file cannot hold, such as a line break`,
    );
  }
  return name;
}

/** XML 1.0 takes no control signs and no half of a pair; a line of the file takes no break. */
function isXmlText(text: string): boolean {
  for (const sign of text) {
    const code = sign.codePointAt(0) as number;
    if (code < 0x20 || (code >= 0x7f && code <= 0x9f)) return false;
    if (code >= 0xd800 && code <= 0xdfff) return false;
    if (code === 0x2028 || code === 0x2029 || code === 0xfffe || code === 0xffff) return false;
  }
  return true;
}

/**
 * Near ends of a line: x and y, a row a position; or FIELD.RUNS' table, whose columns begin with
 * position, run, x and y. Any one length unit.
 */
export function readNearEnds(cell: Cell): NearEnd[] {
  const bare = rows(cell)[0]?.length === 2;
  return readTable("ends", cell, {
    columns: "two columns, x and y, or four or more, position, run, x and y",
    widths: [2, 4],
    more: true,
    least: 1,
    most: MOST_RUNS,
    zeroIsBlank: !bare,
  }).map((row, i) => {
    const place = `ends row ${i + 1}`;
    if (bare) return { position: i + 1, run: 1, ...readPoint(anyLength, place, row) };
    return {
      position: checked(`${place} position`, row[0], wholeNumber(1, MOST_POSITIONS)),
      run: checked(`${place} run`, row[1], wholeNumber(1, MOST_RUNS)),
      ...readPoint(anyLength, place, row.slice(2)),
    };
  });
}

/** Hydrants: x and y; or FEEDER.HYDRANTS' table, whose columns begin with hydrant, x and y. */
export function readHydrants(cell: Cell): Point[] {
  const bare = rows(cell)[0]?.length === 2;
  return readTable("hydrants", cell, {
    columns: "two columns, x and y, or three or more, hydrant, x and y",
    widths: [2, 3],
    more: true,
    least: 1,
    most: MOST_RUNS,
    zeroIsBlank: !bare,
  }).map((row, i) => readPoint(anyLength, `hydrants row ${i + 1}`, bare ? row : row.slice(1)));
}

export function readOptionalHydrants(cell: Cell): Point[] {
  return isAllBlank(cell) ? [] : readHydrants(cell);
}
