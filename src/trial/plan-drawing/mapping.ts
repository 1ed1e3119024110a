import type { Point } from "../../screen/chart";

/** How a field lies in its drawing: scaled alike both ways and shifted, north up, never turned. */
export interface Mapping {
  /** Units of the drawing's square for one of the field. */
  readonly scale: number;
  /** What of the field lies on the square's first corner. */
  readonly left: number;
  readonly low: number;
}

export function toDrawing({ scale, left, low }: Mapping, { x, y }: Point): Point {
  return { x: scale * (x - left), y: scale * (y - low) };
}

export function toField({ scale, left, low }: Mapping, { x, y }: Point): Point {
  return { x: x / scale + left, y: y / scale + low };
}

/** Corners that were typed and the edge that is drawn from them may be of two moments: this far apart. */
const AS_ONE = 1e-3;

/**
 * The mapping by which these corners were drawn as that edge, which begins where they do, repeats
 * its first point and fills up with its last; undefined where the edge is not theirs.
 */
export function fitted(corners: readonly Point[], edge: readonly Point[]): Mapping | undefined {
  if (corners.length < 3 || edge.length < corners.length) return undefined;
  const [real, drawn] = [boxOf(corners), boxOf(edge)];
  const isWide = real.width >= real.height;
  const scale = isWide ? drawn.width / real.width : drawn.height / real.height;
  if (!(scale > 0) || !Number.isFinite(scale)) return undefined;
  const mapping = {
    scale,
    left: real.left - drawn.left / scale,
    low: real.low - drawn.low / scale,
  };
  const isTheirs = corners.every((corner) => {
    const at = toDrawing(mapping, corner);
    return edge.some(({ x, y }) => Math.hypot(x - at.x, y - at.y) < AS_ONE);
  });
  return isTheirs ? mapping : undefined;
}

/** The mapping that shows all these points in the middle of the square. */
export function around(points: readonly Point[]): Mapping {
  const { left, low, width, height } = boxOf(points);
  const side = Math.max(width, height) || 1;
  return {
    scale: 1 / side,
    left: left - (side - width) / 2,
    low: low - (side - height) / 2,
  };
}

/** The largest power of ten that is no longer than a dot of the screen: nobody points finer. */
export function stepOf(dot: number): number {
  return 10 ** Math.floor(Math.log10(dot) + 1e-9);
}

/** In whole steps, without the digits that a division leaves. */
export function inSteps({ x, y }: Point, step: number): Point {
  const digits = Math.max(0, -Math.round(Math.log10(step)));
  // Adding 0 makes a plain zero of one below it.
  const whole = (value: number) => Number((Math.round(value / step) * step).toFixed(digits)) + 0;
  return { x: whole(x), y: whole(y) };
}

function boxOf(points: readonly Point[]) {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  return { left, low, width: Math.max(...xs) - left, height: Math.max(...ys) - low };
}
