import { curveSlope, curveValue, type MonotoneCurve, pieceCubic, pieceOf } from "./monotone-curve";

/** Where two curves have the same height. */
export interface Meeting {
  readonly x: number;
  readonly y: number;
  /** Which curve is above on either side: 1 the first, −1 the second, 0 where there is no side. */
  readonly before: number;
  readonly after: number;
}

export interface Meetings {
  /** The range of x that both curves cover; `to` is below `from` when there is none. */
  readonly from: number;
  readonly to: number;
  /** In order of x. */
  readonly meetings: readonly Meeting[];
  /** True where the curves lie on each other over some length. */
  readonly together: boolean;
  /** Which curve is above at `from`. */
  readonly above: number;
}

/** Heights closer than this share of the largest are the same height: rounding, not a gap. */
const SAME = 1e-12;

/**
 * Every place where two piecewise cubic curves meet. On each stretch between neighboring points of
 * either curve their gap is one cubic; split at its turning points it rises or falls throughout, so
 * the signs at the two ends tell whether there is a root, and bisection finds it. None is missed.
 */
export function curveMeetings(first: MonotoneCurve, second: MonotoneCurve): Meetings {
  const from = Math.max(first.x[0], second.x[0]);
  const to = Math.min(first.x[first.x.length - 1], second.x[second.x.length - 1]);
  if (to < from) return { from, to, meetings: [], together: false, above: 0 };

  const gap = (x: number) => curveValue(first, x) - curveValue(second, x);
  const tallest = Math.max(...first.y.map(Math.abs), ...second.y.map(Math.abs));
  const sideAt = (x: number) => {
    const height = gap(x);
    return Math.abs(height) <= SAME * tallest ? 0 : Math.sign(height);
  };

  const stations = stationsBetween(first, second, from, to);
  const sides = stations.map(sideAt);
  const meetings: Meeting[] = [];
  let together = false;
  const meet = (x: number, before: number, after: number) =>
    meetings.push({ x, y: curveValue(first, x), before, after });

  stations.forEach((x, i) => {
    const previous = i === 0 ? 0 : sides[i - 1];
    if (sides[i] === 0) {
      if (i > 0 && previous === 0) together = true;
      else meet(x, previous, i + 1 < sides.length ? sides[i + 1] : 0);
    } else if (previous === -sides[i]) {
      meet(bisect(gap, stations[i - 1], x), previous, sides[i]);
    }
  });
  return { from, to, meetings, together, above: sides[0] };
}

/** Both curves' points within the range, its ends, and the turning points of the gap between them. */
function stationsBetween(
  first: MonotoneCurve,
  second: MonotoneCurve,
  from: number,
  to: number,
): number[] {
  const inside = [...first.x, ...second.x].filter((x) => x > from && x < to);
  const points = [...new Set([from, ...inside, to])].sort((a, b) => a - b);
  const stations = [points[0]];
  for (let i = 1; i < points.length; i++) {
    stations.push(...turningPoints(first, second, points[i - 1], points[i]), points[i]);
  }
  return stations;
}

function turningPoints(
  first: MonotoneCurve,
  second: MonotoneCurve,
  left: number,
  right: number,
): number[] {
  // The slope of the gap is a parabola a + b t + c t², t from `left`.
  const a = curveSlope(first, left) - curveSlope(second, left);
  const firstBend = bendAt(first, left);
  const secondBend = bendAt(second, left);
  const b = firstBend.second - secondBend.second;
  const c = (firstBend.third - secondBend.third) / 2;
  // A turning point that rounding puts beside an end is that end. What is no number is in no piece.
  const margin = 1e-9 * (right - left);
  return parabolaRoots(a, b, c)
    .map((t) => left + t)
    .filter((x) => x - left > margin && right - x > margin)
    .sort((p, q) => p - q);
}

/** Second and third derivative of a curve at an x. */
function bendAt(curve: MonotoneCurve, x: number): { second: number; third: number } {
  const piece = pieceOf(curve, x);
  const [, , c2, c3] = pieceCubic(curve, piece);
  return { second: 2 * c2 + 6 * c3 * (x - curve.x[piece]), third: 6 * c3 };
}

/**
 * Roots of a + b t + c t², in the form that loses no digits when c is small; not finite, or no
 * numbers, where it has none.
 */
function parabolaRoots(a: number, b: number, c: number): number[] {
  const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(b * b - 4 * a * c)) / 2;
  return [half / c, a / half];
}

/** Halves the interval until no number lies between its ends. */
function bisect(gap: (x: number) => number, left: number, right: number): number {
  let low = left;
  let high = right;
  const lowSign = Math.sign(gap(low));
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) return middle;
    if (Math.sign(gap(middle)) === lowSign) low = middle;
    else high = middle;
  }
}
