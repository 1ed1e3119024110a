import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PNG } from "pngjs";
import { dist } from "./settings";

/** Sizes that the manifest names, for the ribbon and the lists of add-ins. */
export const ICON_SIZES = [16, 32, 64, 80, 128] as const;

export function iconFile(size: number): string {
  return `icons/icon-${size}.png`;
}

/** The same drawing for pages, in any size. */
export const MARK_FILE = "icons/mark.svg";

type Color = readonly [red: number, green: number, blue: number];
type Point = readonly [x: number, y: number];

const FIELD: Color = [76, 93, 56];

interface Line {
  readonly from: Point;
  readonly to: Point;
  /** Where its sprinklers stand, as shares of the way along it. */
  readonly sprinklers: readonly number[];
  readonly color: Color;
}

/**
 * Our mark, in a square of side 1: a line seen from above with its sprinklers on a field, and a paler
 * copy of it one move on. The paler one comes first, for the line lies over it.
 */
const SPRINKLERS = [0, 0.5, 1];
const LINES: readonly Line[] = [
  { from: [0.46, 0.85], to: [0.84, 0.31], sprinklers: SPRINKLERS, color: [146, 161, 124] },
  { from: [0.16, 0.69], to: [0.54, 0.15], sprinklers: SPRINKLERS, color: [248, 249, 244] },
];
const HALF_THICKNESS = 0.03;
const SPRINKLER_RADIUS = 0.09;
const CORNER = 0.18;

function along({ from, to }: Line, share: number): Point {
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

function inField([x, y]: Point): boolean {
  const dx = Math.max(CORNER - x, x - (1 - CORNER), 0);
  const dy = Math.max(CORNER - y, y - (1 - CORNER), 0);
  return dx * dx + dy * dy <= CORNER * CORNER;
}

function inLine(point: Point, line: Line): boolean {
  const [dx, dy] = [line.to[0] - line.from[0], line.to[1] - line.from[1]];
  const [px, py] = [point[0] - line.from[0], point[1] - line.from[1]];
  const share = Math.min(1, Math.max(0, (px * dx + py * dy) / (dx * dx + dy * dy)));
  return (
    distance(point, along(line, share)) <= HALF_THICKNESS ||
    line.sprinklers.some((place) => distance(point, along(line, place)) <= SPRINKLER_RADIUS)
  );
}

function distance(one: Point, other: Point): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1]);
}

function colorAt(point: Point): Color | undefined {
  if (!inField(point)) return undefined;
  return LINES.reduce((below, line) => (inLine(point, line) ? line.color : below), FIELD);
}

export function drawMark(): string {
  const paint = (color: Color) =>
    `#${color.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
  const places = (values: readonly number[]) =>
    values.map((value) => Number((100 * value).toFixed(1)));
  const lines = LINES.map((line) => {
    const [x1, y1, x2, y2] = places([...line.from, ...line.to]);
    const dots = line.sprinklers.map((share) => {
      const [x, y] = places(along(line, share));
      return `<circle cx="${x}" cy="${y}" r="${100 * SPRINKLER_RADIUS}"/>`;
    });
    const color = paint(line.color);
    return `<g fill="${color}"><path stroke="${color}" stroke-width="${200 * HALF_THICKNESS}" stroke-linecap="round" d="M${x1} ${y1}L${x2} ${y2}"/>${dots.join("")}</g>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" rx="${100 * CORNER}" fill="${paint(FIELD)}"/>${lines.join("")}</svg>\n`;
}

/** Samples a side in each pixel, for smooth edges. */
const SAMPLES = 8;

export function drawIcon(size: number): Buffer {
  const picture = new PNG({ width: size, height: size });
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      const sum = [0, 0, 0];
      let covered = 0;
      for (let i = 0; i < SAMPLES * SAMPLES; i++) {
        const x = (column + ((i % SAMPLES) + 0.5) / SAMPLES) / size;
        const y = (row + (Math.floor(i / SAMPLES) + 0.5) / SAMPLES) / size;
        const color = colorAt([x, y]);
        if (color === undefined) continue;
        covered++;
        color.forEach((part, place) => (sum[place] += part));
      }
      const at = 4 * (row * size + column);
      sum.forEach((part, place) => (picture.data[at + place] = part / Math.max(covered, 1)));
      picture.data[at + 3] = (255 * covered) / (SAMPLES * SAMPLES);
    }
  }
  return PNG.sync.write(picture);
}

export function writeIcons(): void {
  mkdirSync(join(dist, "icons"), { recursive: true });
  for (const size of ICON_SIZES) writeFileSync(join(dist, iconFile(size)), drawIcon(size));
  writeFileSync(join(dist, MARK_FILE), drawMark());
}
