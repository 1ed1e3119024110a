import type { Point } from "./polygon";

/** The near end of the line in one position. */
export interface NearEnd extends Point {
  readonly position: number;
  /** Which run of its row. */
  readonly run: number;
}

/** An outlet of the main and the near ends that it serves. */
export interface Hydrant extends Point {
  readonly firstPosition: number;
  readonly lastPosition: number;
  /** Straight distance to the farthest near end that it serves. */
  readonly farthest: number;
  readonly run: number;
}

/**
 * The fewest hydrants that reach every near end, each serving near ends that follow each other. A
 * hydrant stands somewhere on the straight pieces that join the near ends, where it makes its
 * longest feeder shortest. Runs that lie apart on their rows are rows of near ends of their own:
 * the first runs, the second runs, and so on.
 *
 * Taking as many near ends as one hydrant can reach, again and again, gives the fewest: what one
 * hydrant reaches it reaches without its first or last near end too.
 *
 * Any one length unit. Example: 7 near ends in a row 50 apart and a reach of 100 are 2 hydrants,
 * the first in the middle of five, 100 from the first and the fifth.
 */
export function fewestHydrants(ends: readonly NearEnd[], reach: number): Hydrant[] {
  const runs = [...new Set(ends.map(({ run }) => run))].sort((a, b) => a - b);
  return runs.flatMap((run) => {
    const row = ends.filter((end) => end.run === run);
    const hydrants: Hydrant[] = [];
    for (let from = 0; from < row.length;) {
      const served = servedFrom(row, from, reach);
      const group = row.slice(from, from + served.count);
      hydrants.push({
        ...bestPlace(row, served.pieces, group),
        firstPosition: group[0].position,
        lastPosition: group[group.length - 1].position,
        run,
      });
      from += served.count;
    }
    return hydrants;
  });
}

/** Part of the straight piece from near end `piece` to the next, by shares of its length. */
interface Part {
  readonly piece: number;
  readonly from: number;
  readonly to: number;
}

/** How many near ends from one on a single hydrant can reach, and where it may stand for them. */
function servedFrom(row: readonly Point[], from: number, reach: number) {
  let pieces: Part[] = row.length === 1 ? [{ piece: 0, from: 0, to: 0 }] : allPieces(row);
  pieces = within(row, pieces, row[from], reach);
  let count = 1;
  while (from + count < row.length) {
    const left = within(row, pieces, row[from + count], reach);
    if (left.length === 0) break;
    pieces = left;
    count++;
  }
  return { count, pieces };
}

function allPieces(row: readonly Point[]): Part[] {
  return row.slice(1).map((_, piece) => ({ piece, from: 0, to: 1 }));
}

/** Share of the reach by which rounding may keep a hydrant off a near end exactly at its reach. */
const ROUNDING = 1e-9;

/** What of the parts lies within the reach of a near end. */
function within(row: readonly Point[], parts: readonly Part[], end: Point, reach: number): Part[] {
  const left: Part[] = [];
  const radius = reach * (1 + ROUNDING);
  for (const { piece, from, to } of parts) {
    const { start, dx, dy, square } = straight(row, piece);
    const [ex, ey] = [end.x - start.x, end.y - start.y];
    if (square === 0) {
      if (Math.hypot(ex, ey) <= radius) left.push({ piece, from, to });
      continue;
    }
    const foot = (ex * dx + ey * dy) / square;
    const off = (ex * dy - ey * dx) / Math.sqrt(square);
    const half = Math.sqrt(((radius - off) * (radius + off)) / square);
    // Not a number where the straight line never comes so near.
    const kept = { piece, from: Math.max(from, foot - half), to: Math.min(to, foot + half) };
    if (kept.from <= kept.to) left.push(kept);
  }
  return left;
}

function straight(row: readonly Point[], piece: number) {
  const start = row[piece];
  const end = row[Math.min(piece + 1, row.length - 1)];
  const [dx, dy] = [end.x - start.x, end.y - start.y];
  return { start, dx, dy, square: dx * dx + dy * dy };
}

/** Halvings of a share after which its last digit is sure. */
const HALVINGS = 60;

/**
 * Of all places in the parts the one whose farthest near end of the group is nearest. From no place
 * of a part is it nearer than from its middle less half the part; the parts are taken by that least,
 * and once it is more than the best found, the rest cannot do better.
 */
function bestPlace(row: readonly Point[], parts: readonly Part[], group: readonly Point[]) {
  const farthestFrom = (place: Point) =>
    Math.max(...group.map((end) => Math.hypot(end.x - place.x, end.y - place.y)));
  const byLeast = parts.map((part) => {
    const half = (Math.sqrt(straight(row, part.piece).square) * (part.to - part.from)) / 2;
    const middle = placeAt(row, part.piece, (part.from + part.to) / 2);
    return { part, least: farthestFrom(middle) - half };
  });
  byLeast.sort((a, b) => a.least - b.least);
  let best = { x: group[0].x, y: group[0].y, farthest: Infinity };
  for (const { part, least } of byLeast) {
    if (least >= best.farthest) break;
    const place = placeAt(row, part.piece, bestShare(row, part, group));
    const farthest = farthestFrom(place);
    if (farthest < best.farthest) best = { ...place, farthest };
  }
  return best;
}

function placeAt(row: readonly Point[], piece: number, share: number): Point {
  const { start, dx, dy } = straight(row, piece);
  return { x: start.x + share * dx, y: start.y + share * dy };
}

/** Along a straight piece the distance to the farthest near end first falls, then rises. */
function bestShare(row: readonly Point[], part: Part, group: readonly Point[]): number {
  const { dx, dy } = straight(row, part.piece);
  let { from, to } = part;
  for (let turn = 0; turn < HALVINGS; turn++) {
    const middle = (from + to) / 2;
    const { x, y } = placeAt(row, part.piece, middle);
    let [farthest, rising] = [-1, 0];
    for (const end of group) {
      const square = (x - end.x) ** 2 + (y - end.y) ** 2;
      if (square > farthest) {
        farthest = square;
        rising = (x - end.x) * dx + (y - end.y) * dy;
      }
    }
    if (rising > 0) to = middle;
    else from = middle;
  }
  return (from + to) / 2;
}
