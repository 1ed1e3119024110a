import { InvalidInput } from "../ground/domain-error";
import type { Point } from "../formulas/polygon";
import { type Cell, describe, isBlank } from "./cell";
import { MOST_POINTS, readPoint } from "./field";
import { readTable } from "./rows-of-table";
import type { Units } from "./units";

export interface NamedPoint extends Point {
  readonly name: string;
}

/** Longer than any receiver shows, short enough that every line stays within a cell. */
const LONGEST_NAME = 200;

/** Places with a name each: name, x and y. */
export function readNamedPoints(u: Units, cell: Cell): NamedPoint[] {
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
