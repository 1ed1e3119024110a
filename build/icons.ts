import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { PNG } from "pngjs";
import { dist } from "./settings";

/** Sizes that the manifest names, for the ribbon and the lists of add-ins. */
export const ICON_SIZES = [16, 32, 64, 80, 128] as const;

export function iconFile(size: number): string {
  return `icons/icon-${size}.png`;
}

type Colour = readonly [red: number, green: number, blue: number];
type Point = readonly [x: number, y: number];

const FIELD: Colour = [76, 93, 56];
const WATER: Colour = [243, 245, 238];

/** Our motif, in a square of side 1: a line across a field, a drop over each of its heads. */
const LINE = { y: 0.77, halfThickness: 0.055, from: 0.15, to: 0.85 };
const DROPS: readonly Point[] = [
  [0.24, 0.53],
  [0.5, 0.4],
  [0.76, 0.53],
];
const DROP_RADIUS = 0.125;
/** Height of a drop's tip above its round part's middle, in radii. */
const TIP = 2;
const CORNER = 0.18;

function inField([x, y]: Point): boolean {
  const dx = Math.max(CORNER - x, x - (1 - CORNER), 0);
  const dy = Math.max(CORNER - y, y - (1 - CORNER), 0);
  return dx * dx + dy * dy <= CORNER * CORNER;
}

function inLine([x, y]: Point): boolean {
  const beyond = Math.max(LINE.from - x, x - LINE.to, 0);
  return Math.hypot(beyond, y - LINE.y) <= LINE.halfThickness;
}

/** A disc, and above it the wedge between the two tangents from the tip. */
function inDrop([x, y]: Point, [middleX, middleY]: Point): boolean {
  const across = Math.abs(x - middleX) / DROP_RADIUS;
  const up = (middleY - y) / DROP_RADIUS;
  if (across * across + up * up <= 1) return true;
  // The tangents touch the disc at height 1 / TIP and meet at the tip.
  return up >= 1 / TIP && up <= TIP && across <= (TIP - up) / Math.sqrt(TIP * TIP - 1);
}

function colourAt(point: Point): Colour | undefined {
  if (!inField(point)) return undefined;
  if (inLine(point) || DROPS.some((drop) => inDrop(point, drop))) return WATER;
  return FIELD;
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
        const colour = colourAt([x, y]);
        if (colour === undefined) continue;
        covered++;
        colour.forEach((part, place) => (sum[place] += part));
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
}
